// Draws sheets as one PDF: tagged in the order of reading, fonts inside, the same bytes for the same sheets.
//
// The only file that knows pdfkit. Points, 72 to the inch, are used nowhere else.

import PDFDocument from 'pdfkit'
import drawSvg from 'svg-to-pdfkit'
import type { Letters } from '../letters.ts'
import type { FrameItem, GroupItem, Item, LineItem, Picture, PictureItem, Print, Sheet, TextItem } from '../sheet.ts'
import { PRODUCER } from './producer.ts'
import { createReadOrder, type ReadOrder } from './reading-order.ts'
import { FRAMES, INKS, LINES, type Stroke, THICKER } from './strokes.ts'

type Document = PDFKit.PDFDocument

interface Pen {
  readonly document: Document
  readonly letters: Letters
  readonly order: ReadOrder<unknown>
  /** Photographs that stand in the document already, so that each is stored once. */
  readonly stored: Map<Uint8Array, unknown>
}

const toPoints = (millimetres: number): number => (millimetres * 72) / 25.4

/** Fonts by the names that they have in the document. */
const PLAIN = 'plain'
const BOLD = 'bold'

export function drawPdf(print: Print, letters: Letters): Promise<Uint8Array> {
  const document = createDocument(print, letters)
  const bytes = collect(document)
  const pen: Pen = { document, letters, order: createReadOrder(), stored: new Map() }
  for (const sheet of print.sheets) drawSheet(sheet, pen)
  addStructure(pen)
  setHints(document, print)
  document.end()
  return bytes
}

/** Whether the drawer gets to the end of a picture: tried on a sheet that is thrown away.
 *  @param font for the words that stand in it */
export function canDraw(picture: Picture, font: Uint8Array): boolean {
  const document = new PDFDocument({ font: null as unknown as string, margin: 0 })
  document.registerFont(PLAIN, font as Buffer)
  try {
    if (picture.kind === 'svg') drawDrawing(picture, document, { x: 0, y: 0, width: 50, height: 50 })
    else document.image(picture.bytes as Buffer, 0, 0, { width: 50 })
    return true
  } catch {
    return false
  }
}

function createDocument({ title }: Print, { files }: Letters): Document {
  const document = new PDFDocument({
    // pdfkit would otherwise look for Helvetica, which a bundle does not hold.
    font: null as unknown as string,
    autoFirstPage: false,
    pdfVersion: '1.7',
    lang: 'en',
    tagged: true,
    displayTitle: true,
    info: { Title: title, Producer: PRODUCER, Creator: PRODUCER, CreationDate: new Date(0) },
  })
  // Needed above to number the document; a date would be untrue, and the true one would change every run.
  delete document.info.CreationDate
  // The second set of the same facts, as XML: it wants a date, and does not escape a title.
  Object.assign(document, { endMetadata: () => undefined })
  document.registerFont(PLAIN, files.plain as Buffer)
  if (files.bold) document.registerFont(BOLD, files.bold as Buffer)
  return document
}

function collect(document: Document): Promise<Uint8Array> {
  const chunks: Uint8Array[] = []
  return new Promise((done, fail) => {
    document.on('data', (chunk: Uint8Array) => chunks.push(chunk))
    document.on('error', fail)
    document.on('end', () => {
      const whole = new Uint8Array(chunks.reduce((sum, { length }) => sum + length, 0))
      let at = 0
      for (const chunk of chunks) {
        whole.set(chunk, at)
        at += chunk.length
      }
      done(whole)
    })
  })
}

function drawSheet({ width, height, items }: Sheet, pen: Pen): void {
  const { document } = pen
  document.addPage({ size: [toPoints(width), toPoints(height)], margin: 0 })
  // A screen reader follows the structure, never the place on the sheet.
  ;(document.page.dictionary as unknown as { data: Record<string, string> }).data['Tabs'] = 'S'
  for (const item of items) drawItem(item, pen)
}

function drawItem(item: Item, pen: Pen): void {
  if (item.kind === 'group') {
    drawGroup(item, pen)
    return
  }
  const { document, order } = pen
  const readAs = item.kind === 'line' ? undefined : item.readAs
  if (readAs) order.add(readAs, document.markStructureContent(readAs.role))
  else document.markContent('Artifact', { type: 'Layout' })
  if (item.kind === 'text') drawText(item, pen)
  else if (item.kind === 'picture') drawPicture(item, pen)
  else if (item.kind === 'line') drawLine(item, document)
  else drawFrame(item, document)
  document.endMarkedContent()
}

function drawGroup({ x, y, turn, items }: GroupItem, pen: Pen): void {
  const { document } = pen
  document.save()
  document.translate(toPoints(x), toPoints(y))
  if (turn !== 0) document.rotate(turn)
  for (const item of items) drawItem(item, pen)
  document.restore()
}

function drawText({ text, face, ink, size, x, baseline }: TextItem, { document, letters }: Pen): void {
  const isThickened = face === 'bold' && letters.files.bold === undefined
  document.font(face === 'bold' && !isThickened ? BOLD : PLAIN, toPoints(size)).fillColor(INKS[ink])
  if (isThickened) document.lineWidth(toPoints(size * THICKER)).strokeColor(INKS[ink])
  document.text(text, toPoints(x), toPoints(baseline), {
    lineBreak: false,
    baseline: 'alphabetic',
    characterSpacing: toPoints(size * letters.spacing),
    features: letters.features as unknown as PDFKit.Mixins.OpenTypeFeatures[],
    ...(isThickened && { fill: true, stroke: true }),
  })
}

function setStroke({ width, colour, dash, round }: Stroke, document: Document): void {
  document.lineWidth(toPoints(width)).strokeColor(colour)
  document.lineCap(round || dash ? 'round' : 'butt')
  if (dash) document.dash(toPoints(dash[0]), { space: toPoints(dash[1]) })
  else document.undash()
}

function drawLine({ use, from, to }: LineItem, document: Document): void {
  setStroke(LINES[use], document)
  document.moveTo(toPoints(from[0]), toPoints(from[1])).lineTo(toPoints(to[0]), toPoints(to[1])).stroke()
}

function drawFrame({ use, x, y, width, height }: FrameItem, document: Document): void {
  const { corner, ...stroke } = FRAMES[use]
  setStroke(stroke, document)
  document.roundedRect(toPoints(x), toPoints(y), toPoints(width), toPoints(height), toPoints(corner)).stroke()
}

function drawPicture({ picture, ...place }: PictureItem, { document, stored }: Pen): void {
  const [x, y, width, height] = [place.x, place.y, place.width, place.height].map(toPoints) as [
    number,
    number,
    number,
    number,
  ]
  if (picture.kind === 'svg') {
    drawDrawing(picture, document, { x, y, width, height })
    return
  }
  const { openImage } = document as unknown as { openImage: (bytes: Uint8Array) => unknown }
  const image = stored.get(picture.bytes) ?? openImage.call(document, picture.bytes)
  stored.set(picture.bytes, image)
  document.image(image as Buffer, x, y, { width, height })
}

/** Nothing that a drawing names is opened: no picture, no font, no other file, no link. */
function drawDrawing(
  { svg }: Picture & { readonly kind: 'svg' },
  document: Document,
  { x, y, width, height }: { readonly x: number; readonly y: number; readonly width: number; readonly height: number },
): void {
  const { annotations } = document.page as unknown as { readonly annotations: unknown[] }
  const before = annotations.length
  document.save()
  drawSvg(document, svg, x, y, {
    width,
    height,
    assumePt: true,
    imageCallback: () => '',
    documentCallback: () => undefined,
    fontCallback: () => PLAIN,
    warningCallback: () => undefined,
  })
  document.restore()
  annotations.length = before
}

function addStructure({ document, order }: Pen): void {
  const whole = document.struct('Document')
  for (const units of order.parts()) {
    const part = document.struct('Sect')
    for (const { readAs, marks } of units) {
      const alt = readAs.alt === undefined ? {} : { alt: readAs.alt }
      part.add(document.struct(readAs.role, alt, marks as Parameters<Document['struct']>[2]))
    }
    whole.add(part)
  }
  document.addStructure(whole)
  whole.end()
}

/** No scaling, and how the paper is turned; a printer's own dialogue may still do otherwise, so each sheet says it too. */
function setHints(document: Document, { duplex }: Print): void {
  const { _root } = document as unknown as { _root: { data: { ViewerPreferences: { data: Record<string, unknown> } } } }
  const hints = _root.data.ViewerPreferences.data
  hints['PrintScaling'] = 'None'
  hints['Duplex'] =
    duplex === undefined ? 'Simplex' : duplex === 'short-edge' ? 'DuplexFlipShortEdge' : 'DuplexFlipLongEdge'
}
