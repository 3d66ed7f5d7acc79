// Reads a PDF back by another program, pdf.js: where each word stands in millimetres, how letters are drawn, and the order of reading.

import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs'
import type { TextItem } from 'pdfjs-dist/types/src/display/api.js'

export interface ReadWord {
  readonly text: string
  /** Millimetres from the top left corner of the sheet; the baseline, and from the first letter to the last. */
  readonly x: number
  readonly y: number
  readonly width: number
  /** The size of the letters, in millimetres. */
  readonly size: number
  readonly isUpsideDown: boolean
}

export interface ReadSheet {
  readonly width: number
  readonly height: number
  readonly words: readonly ReadWord[]
  /** How many glyphs are drawn. */
  readonly glyphs: number
}

export interface ReadUnit {
  readonly role: string
  readonly text: string
  readonly alt: string | undefined
}

const toMm = (points: number): number => (points * 25.4) / 72

interface Node {
  readonly role?: string
  readonly alt?: string
  readonly type?: string
  readonly id?: string
  readonly children?: readonly Node[]
}

export async function readPdf(bytes: Uint8Array) {
  const pdf = await getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise
  const sheets: ReadSheet[] = []
  const units: ReadUnit[] = []
  for (let number = 1; number <= pdf.numPages; number++) {
    const page = await pdf.getPage(number)
    const { width, height } = page.getViewport({ scale: 1 })
    const content = await page.getTextContent({ includeMarkedContent: true, disableNormalization: true })
    const texts = new Map<string, string>()
    let mark: string | undefined
    const words: ReadWord[] = []
    for (const item of content.items) {
      if ('type' in item) {
        mark = item.type === 'beginMarkedContentProps' ? (item.id ?? undefined) : undefined
        continue
      }
      if (mark !== undefined) texts.set(mark, (texts.get(mark) ?? '') + item.str + (item.hasEOL ? ' ' : ''))
      words.push(...toWords(item, height))
    }
    sheets.push({
      width: toMm(width),
      height: toMm(height),
      words,
      glyphs: countGlyphs(await page.getOperatorList()),
    })
    units.push(...listUnits((await page.getStructTree()) as Node | null, texts))
  }
  const metadata = (await pdf.getMetadata()).info as Record<string, unknown>
  return { sheets, units, metadata, markInfo: await pdf.getMarkInfo(), viewer: await pdf.getViewerPreferences() }
}

function toWords({ str, transform, width, height: size }: TextItem, height: number): ReadWord[] {
  if (str.trim() === '') return []
  const [a = 0, , , , x = 0, y = 0] = transform as number[]
  const isUpsideDown = a < 0
  const start = isUpsideDown ? x - width : x
  return [{ text: str.trim(), x: toMm(start), y: toMm(height - y), width: toMm(width), size: toMm(size), isUpsideDown }]
}

function countGlyphs({ fnArray, argsArray }: { readonly fnArray: number[]; readonly argsArray: unknown[] }): number {
  let count = 0
  fnArray.forEach((fn, at) => {
    if (fn !== OPS.showText) return
    const [glyphs] = argsArray[at] as [readonly ({ readonly unicode?: string } | number)[]]
    count += glyphs.filter((glyph) => typeof glyph === 'object' && glyph !== null && glyph.unicode !== ' ').length
  })
  return count
}

function listUnits(node: Node | null, texts: ReadonlyMap<string, string>): ReadUnit[] {
  if (!node) return []
  const toText = (one: Node): string =>
    one.type === 'content' ? (texts.get(one.id ?? '') ?? '') : (one.children ?? []).map(toText).join('')
  const { role, children = [] } = node
  if (role && ['P', 'H1', 'H2', 'Figure'].includes(role))
    return [{ role, text: toText(node).replace(/\s+/g, ' ').trim(), alt: node.alt }]
  return children.flatMap((child) => listUnits(child, texts))
}
