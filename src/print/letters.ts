// The letters of a font, measured from its bytes: how wide a text is, how high its letters stand, which letters it lacks.

import * as fontkit from 'fontkit'
import { fail, type Result, succeed } from '../problem/index.ts'
import type { Face } from './sheet.ts'

export interface FontFiles {
  readonly plain: Uint8Array
  /** Where there is none, bold letters are drawn with a thicker line. */
  readonly bold?: Uint8Array | undefined
}

export interface Letters {
  readonly files: FontFiles
  readonly family: string
  /** Of the font's square: the small x, the tallest letter, the deepest. */
  readonly xHeight: number
  readonly ascent: number
  readonly descent: number
  /** What the font is told when it draws: letters are never joined, and shapes as they were chosen. */
  readonly features: Readonly<Record<string, boolean>>
  /** Air after each letter, in shares of the font's square. */
  readonly spacing: number
  /** Millimetres, at a size in millimetres. */
  widthOf(text: string, size: number, face?: Face): number
  readonly unitsPerEm: number
  /** The shapes of a text's letters, in units of the font, with the places where they stand. */
  outlinesOf(text: string, face: Face): readonly Outline[]
  /** The letters of the texts that the font does not have, each once. */
  findMissing(texts: Iterable<string>): readonly string[]
}

interface Outline {
  /** The same for the same shape. */
  readonly name: string
  readonly path: string
  readonly at: number
}

const TALL = 'bdfhklABCDEFGHIJKLMNOPQRSTUVWXYZ'
const DEEP = 'gjpqy'

/** A child must see each letter, so none is joined or moved by its neighbours. */
const APART = { liga: false, clig: false, dlig: false, calt: false, kern: false }

/** @param shapes features of the font that choose shapes, such as `cv56` */
export function openLetters(files: FontFiles, shapes: readonly string[] = [], spacing = 0): Result<Letters> {
  const opened = openFont(files.plain)
  if (!opened.ok) return opened
  const openedBold = files.bold === undefined ? opened : openFont(files.bold)
  if (!openedBold.ok) return openedBold
  const [plain, bold] = [opened.value, openedBold.value]
  const missing = shapes.filter((tag) => !plain.availableFeatures.includes(tag))
  if (missing.length > 0) return toBad('has no other shapes for these letters: only Andika has')
  const features = { ...APART, ...Object.fromEntries(shapes.map((tag) => [tag, true])) }
  const toExtent = (letters: string, side: 'maxY' | 'minY'): number[] =>
    [...letters].map((letter) => plain.glyphForCodePoint(letter.codePointAt(0) ?? 0).bbox[side] / plain.unitsPerEm)
  const known: Record<Face, Map<string, number>> = { plain: new Map(), bold: new Map() }
  return succeed({
    files,
    family: plain.familyName ?? 'the font',
    xHeight: plain.glyphForCodePoint(0x78).bbox.maxY / plain.unitsPerEm,
    ascent: Math.max(...toExtent(TALL, 'maxY')),
    descent: -Math.min(...toExtent(DEEP, 'minY')),
    features,
    spacing,
    widthOf(text, size, face = 'plain') {
      const share = known[face].get(text) ?? measure(face === 'bold' ? bold : plain, text, shapes, features)
      known[face].set(text, share)
      return (share + spacing * [...text].length) * size
    },
    unitsPerEm: plain.unitsPerEm,
    outlinesOf: (text, face) => toOutlines(face === 'bold' ? bold : plain, text, features, spacing),
    findMissing(texts) {
      const letters = new Set([...texts].flatMap((text) => [...text]))
      return [...letters].filter(
        (letter) => /\S/.test(letter) && !plain.hasGlyphForCodePoint(letter.codePointAt(0) ?? 0),
      )
    },
  })
}

/** In shares of the font's square. Without chosen shapes a text is as wide as its letters, and nothing need be laid out. */
function measure(
  font: fontkit.Font,
  text: string,
  shapes: readonly string[],
  features: Readonly<Record<string, boolean>>,
): number {
  if (shapes.length > 0) return font.layout(text, features).advanceWidth / font.unitsPerEm
  let width = 0
  for (const letter of text) width += font.glyphForCodePoint(letter.codePointAt(0) ?? 0).advanceWidth
  return width / font.unitsPerEm
}

const toBad = (message: string): Result<never> => fail({ code: 'bad-font', message: `the font ${message}` })

function toOutlines(
  font: fontkit.Font,
  text: string,
  features: Readonly<Record<string, boolean>>,
  spacing: number,
): readonly Outline[] {
  const { glyphs, positions } = font.layout(text, features)
  let at = 0
  return glyphs.flatMap((glyph, index) => {
    const start = at
    at += (positions[index]?.xAdvance ?? glyph.advanceWidth) + spacing * font.unitsPerEm
    const path = glyph.path.toSVG()
    return path === '' ? [] : [{ name: String(glyph.id), path, at: start }]
  })
}

function openFont(bytes: Uint8Array): Result<fontkit.Font> {
  const signature = String.fromCharCode(...bytes.subarray(0, 4))
  // Both were seen to print scraps of letters, or to stop, through the PDF library.
  if (signature === 'wOF2') return toBad('is a WOFF2 font: take the TTF or WOFF file of the same font')
  if (signature === 'OTTO') return toBad('holds its letters in a way (CFF) that prints badly: take a TTF file')
  if (signature === 'ttcf') return toBad('holds several fonts: take a TTF file of one')
  try {
    const font = fontkit.create(bytes)
    if (!('glyphForCodePoint' in font)) return toBad('is not a font of one kind of letters: take a TTF file')
    if ('CFF ' in font.directory.tables)
      return toBad('holds its letters in a way (CFF) that prints badly: take a TTF file')
    // Reads the tables that a broken file lacks.
    if (!(font.glyphForCodePoint(0x78).bbox.maxY > 0)) return toBad('has no letter x')
    return succeed(font)
  } catch {
    return toBad('is no font that can be read: take a TTF or WOFF file')
  }
}
