// Draws one sheet as an SVG: the same shapes as the PDF, letters as outlines, so that it needs no font where it is shown.

import type { Letters } from '../letters.ts'
import type { FrameItem, GroupItem, Item, LineItem, PictureItem, Print, Sheet, TextItem } from '../sheet.ts'
import { PRODUCER } from './producer.ts'
import { FRAMES, INKS, LINES, type Stroke, THICKER } from './strokes.ts'

interface Pen {
  readonly letters: Letters
  /** Outlines by their names, each once. */
  readonly outlines: Map<string, string>
  /** How many drawings there are so far: their own names must not meet. */
  drawings: number
}

/** One SVG a sheet, in millimetres. */
export const drawSvgs = (print: Print, letters: Letters): readonly string[] =>
  print.sheets.map((sheet, at) => drawSheet(sheet, `${print.title}, sheet ${at + 1}`, letters))

function drawSheet({ width, height, items }: Sheet, title: string, letters: Letters): string {
  const pen: Pen = { letters, outlines: new Map(), drawings: 0 }
  const body = items.map((item) => draw(item, pen)).join('\n')
  const outlines = [...pen.outlines].map(([name, path]) => `<path id="${name}" d="${path}"/>`).join('')
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}" role="img" data-producer="${PRODUCER}">`,
    `<title>${toSafe(title)}</title>`,
    `<defs>${outlines}</defs>`,
    `<rect width="${width}" height="${height}" fill="#fff"/>`,
    body,
    '</svg>\n',
  ].join('\n')
}

function draw(item: Item, pen: Pen): string {
  switch (item.kind) {
    case 'text':
      return drawText(item, pen)
    case 'picture':
      return drawPicture(item, pen)
    case 'line':
      return drawLine(item)
    case 'frame':
      return drawFrame(item)
    default:
      return drawGroup(item, pen)
  }
}

const drawGroup = ({ x, y, turn, items }: GroupItem, pen: Pen): string =>
  `<g transform="translate(${x} ${y})${turn === 0 ? '' : ` rotate(${turn})`}">${items.map((item) => draw(item, pen)).join('')}</g>`

function drawText({ text, face, ink, size, x, baseline }: TextItem, { letters, outlines }: Pen): string {
  const isThickened = face === 'bold' && letters.files.bold === undefined
  const uses = letters.outlinesOf(text, face).map(({ name, path, at }) => {
    const id = `${face}-${name}`
    outlines.set(id, path)
    return `<use href="#${id}" x="${at}"/>`
  })
  const scale = size / letters.unitsPerEm
  const thick = isThickened ? ` stroke="${INKS[ink]}" stroke-width="${THICKER * letters.unitsPerEm}"` : ''
  return `<g aria-label="${toSafe(text.trim())}" fill="${INKS[ink]}"${thick} transform="translate(${x} ${baseline}) scale(${scale} ${-scale})">${uses.join('')}</g>`
}

function toStroke({ width, colour, dash, round }: Stroke): string {
  const dashes = dash ? ` stroke-dasharray="${dash.join(' ')}"` : ''
  const cap = round || dash ? ' stroke-linecap="round"' : ''
  return `fill="none" stroke="${colour}" stroke-width="${width}"${dashes}${cap}`
}

const drawLine = ({ use, from, to }: LineItem): string =>
  `<path d="M${from.join(' ')}L${to.join(' ')}" ${toStroke(LINES[use])}/>`

function drawFrame({ use, x, y, width, height }: FrameItem): string {
  const { corner, ...stroke } = FRAMES[use]
  return `<rect x="${x}" y="${y}" width="${width}" height="${height}" rx="${corner}" ${toStroke(stroke)}/>`
}

function drawPicture({ picture, x, y, width, height, readAs }: PictureItem, pen: Pen): string {
  const place = `x="${x}" y="${y}" width="${width}" height="${height}" aria-label="${toSafe(readAs?.alt ?? '')}"`
  if (picture.kind !== 'svg')
    return `<image ${place} href="data:image/${picture.kind};base64,${toBase64(picture.bytes)}"/>`
  return withOwnNames(picture.svg.replace(/^[\s\S]*?<svg\b/, `<svg ${place}`), `d${pen.drawings++}-`)
}

/** Gradients and the like are named within their drawing; two drawings on a sheet may use the same names. */
const withOwnNames = (svg: string, mark: string): string =>
  svg
    .replace(/\bid="([^"]*)"/g, `id="${mark}$1"`)
    .replace(/url\((["']?)#/g, `url($1#${mark}`)
    .replace(/href="#/g, `href="#${mark}`)

function toBase64(bytes: Uint8Array): string {
  let text = ''
  for (let at = 0; at < bytes.length; at += 0x8000) text += String.fromCharCode(...bytes.subarray(at, at + 0x8000))
  return btoa(text)
}

const toSafe = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;')
