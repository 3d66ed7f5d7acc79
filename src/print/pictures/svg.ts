// Reads an SVG drawing: its size, whether it is whole, and that it names nothing outside itself.

import type { Picture } from '../sheet.ts'

/** More is a map or a photograph in disguise, and takes minutes to draw. */
const LONGEST = 2_000_000

type Drawing = Picture & { readonly kind: 'svg' }

/** `broken` finishes `NAME …`. */
export function readSvg(text: string): Drawing | { readonly broken: string } {
  if (text.length > LONGEST) return { broken: 'is too large to print: it has more than 2 million letters' }
  const body = text.replace(/<!--[\s\S]*?-->|<\?[\s\S]*?\?>|<!DOCTYPE[^>[]*>/g, '')
  // Entities of one's own can name files, and can be made to grow without end.
  if (/<!DOCTYPE|<!ENTITY/i.test(body)) return { broken: 'has a document type of its own, which is never read' }
  const named = findNamed(body)
  if (named !== undefined)
    return { broken: `names something outside itself (\`${named.slice(0, 60)}\`), which is never read` }
  const root = /<svg\b[^>]*>/.exec(body)
  if (!root || !isWhole(body)) return { broken: 'is broken: a part of it is missing' }
  const box = toBox(root[0])
  if (!box) return { broken: 'is broken: it has no size' }
  const svg = body.replace(root[0], toPlainRoot(root[0], box)).replaceAll('currentColor', '#000').trim()
  return { kind: 'svg', svg, width: box.width, height: box.height }
}

/** What an image, a use, a style or a fill points at, other than a part of the drawing. A link that is clicked is nothing to print. */
function findNamed(body: string): string | undefined {
  const linked = /<(?!a[\s>])[^>]*?\b(?:href|src)\s*=\s*["']\s*(?!#)([^"']*)/i.exec(body)
  const styled = /url\(\s*["']?(?!["']?#)([^)"']*)|@import\s+["']?([^"';]*)/i.exec(body)
  return linked?.[1] ?? styled?.[1] ?? styled?.[2]
}

/** Whether each element that is opened is closed. */
function isWhole(body: string): boolean {
  const open: string[] = []
  for (const [, close, name = '', single] of body.matchAll(
    /<(\/?)([\w:.-]+)(?:\s(?:[^"'>]|"[^"]*"|'[^']*')*?)?(\/?)>/g,
  )) {
    if (close) {
      if (open.pop() !== name) return false
    } else if (!single) open.push(name)
  }
  return open.length === 0 && body.includes('</svg>')
}

interface Box {
  readonly text: string
  readonly width: number
  readonly height: number
}

function toBox(root: string): Box | undefined {
  const toNumber = (name: string): number => Number.parseFloat(toAttribute(root, name) ?? '')
  const box = toAttribute(root, 'viewBox')
  const [, , width = Number.NaN, height = Number.NaN] = (box ?? '')
    .trim()
    .split(/[\s,]+/)
    .map(Number)
  if (box !== undefined && width > 0 && height > 0) return { text: box, width, height }
  const size = { width: toNumber('width'), height: toNumber('height') }
  return size.width > 0 && size.height > 0 ? { ...size, text: `0 0 ${size.width} ${size.height}` } : undefined
}

const toAttribute = (root: string, name: string): string | undefined =>
  new RegExp(`\\s${name}\\s*=\\s*["']([^"']*)["']`).exec(root)?.[1]

/** With a width and a height at its root, a drawing is drawn at the wrong scale. */
const toPlainRoot = (root: string, { text }: Box): string =>
  root
    .replace(/\s(?:width|height|viewBox|x|y)\s*=\s*(?:"[^"]*"|'[^']*')/g, '')
    .replace(/^<svg\b/, `<svg viewBox="${text}"`)
