// Writes the lexicon file from aligned words. Used when the package is built.

import { CLOSE } from '../lattice.ts'
import { toU24 } from '../u24.ts'
import { BLOCK, CLOSE_CODE, HEADER, INFLECTED, MAGIC, VERSION, WIDE } from './format.ts'

export type LexiconEntry =
  | {
      readonly word: string
      readonly pronunciations: readonly { readonly stress: string; readonly path: readonly number[] }[]
    }
  | { readonly word: string; readonly ending: number; readonly change: number; readonly mask: number }

/** How far a word goes with others as the first or the last part of a compound: 0 not, 1 with strong parts, 2 with any, 3 (the last) with a strong one for sure. */
interface CompoundPart {
  readonly word: string
  readonly first: number
  readonly last: number
}

export interface LexiconSource {
  /** Row lines `letters TAB sounds`, by row id. */
  readonly rows: readonly string[]
  /** In order of their words. */
  readonly entries: readonly LexiconEntry[]
  /** Makes the guesser's model, given the place of each row in the file. */
  readonly toModel: (places: ReadonlyMap<number, number>) => Uint8Array
  /** See `measureBoth`; empty while it is not measured yet. */
  readonly ordinary?: string
  readonly parts: readonly CompoundPart[]
  /** See `writeHeteronyms`. */
  readonly heteronyms?: string
  /** As `openWeights` reads them. */
  readonly weights?: Uint8Array
  /** Words whose pronunciation is not sure: see `createNameDoubts`. */
  readonly unsure?: ReadonlySet<string>
  /** Rare words that are somebody's name, said otherwise, where they have a capital. */
  readonly unsureAsName?: ReadonlySet<string>
  /** By word: see `RawPronunciation`. */
  readonly seams?: ReadonlyMap<string, readonly number[]>
  /** See `writeSlips`. */
  readonly slips?: string
}

/** The bytes of the lexicon file. Throws where a table outgrows its field: the format must then change. */
export function encodeLexicon(source: LexiconSource): Uint8Array {
  const codes = toCodes(source)
  const patterns = toPatterns(source.entries)
  if (patterns.length >= INFLECTED) throw new Error(`${patterns.length} stress patterns do not fit one byte`)
  const { words, blocks } = encodeWords(source.entries, codes, patterns)
  const text = new TextEncoder()
  const byCode = [...codes].sort((x, y) => x[1] - y[1]).map(([id]) => source.rows[id] ?? '')
  return join([
    text.encode(byCode.join('\n')),
    text.encode(patterns.join('\n')),
    blocks,
    words,
    source.toModel(toPlaces(codes)),
    text.encode(source.ordinary ?? ''),
    encodeParts(source),
    text.encode(source.heteronyms ?? ''),
    encodeUnsure(source),
    encodeSeams(source),
    source.weights ?? new Uint8Array(),
    text.encode(source.slips ?? ''),
  ])
}

/** Codes from 1, the most used row first, so that most take one byte. */
function toCodes(source: LexiconSource): Map<number, number> {
  const counts = source.rows.map((_, id) => ({ id, count: 0 }))
  for (const entry of source.entries) {
    if (!('pronunciations' in entry)) continue
    for (const { path } of entry.pronunciations)
      for (const id of path) if (id !== CLOSE) (counts[id] as { count: number }).count++
  }
  return new Map(counts.sort((x, y) => y.count - x.count || x.id - y.id).map(({ id }, at) => [id, at + 1]))
}

/** The opened file numbers its rows from 0 in the order of their codes. */
const toPlaces = (codes: ReadonlyMap<number, number>): ReadonlyMap<number, number> =>
  new Map([...codes].map(([id, code]) => [id, code - 1]))

function toPatterns(entries: readonly LexiconEntry[]): string[] {
  const counts = new Map<string, number>()
  for (const entry of entries) {
    if ('pronunciations' in entry)
      for (const { stress } of entry.pronunciations) counts.set(stress, (counts.get(stress) ?? 0) + 1)
  }
  return [...counts].sort((x, y) => y[1] - x[1] || (x[0] < y[0] ? -1 : 1)).map(([pattern]) => pattern)
}

function encodeWords(
  entries: readonly LexiconEntry[],
  codes: ReadonlyMap<number, number>,
  patterns: readonly string[],
) {
  const number = new Map(patterns.map((pattern, at) => [pattern, at]))
  const bytes: number[] = []
  const offsets: number[] = []
  let before = ''
  entries.forEach((entry, index) => {
    if (index % BLOCK === 0) {
      offsets.push(bytes.length)
      before = ''
    }
    let shared = 0
    while (shared < before.length && before[shared] === entry.word[shared]) shared++
    const payload =
      'pronunciations' in entry
        ? entry.pronunciations.flatMap(({ stress, path }) => [
            number.get(stress) ?? 0,
            ...path.flatMap((id) => toBytes(id, codes)),
          ])
        : [INFLECTED, entry.ending * 8 + entry.change, entry.mask]
    bytes.push(
      shared,
      entry.word.length - shared,
      ...[...entry.word.slice(shared)].map((c) => c.charCodeAt(0)),
      payload.length,
      ...payload,
    )
    before = entry.word
  })
  const blocks = new Uint8Array(offsets.length * 4)
  const view = new DataView(blocks.buffer)
  offsets.forEach((offset, at) => {
    view.setUint32(at * 4, offset, true)
  })
  return { words: Uint8Array.from(bytes), blocks }
}

function encodeParts({ entries, parts }: LexiconSource): Uint8Array {
  const byWord = new Map(parts.map((part) => [part.word, part]))
  const bytes: number[] = []
  let last = 0
  entries.forEach(({ word }, at) => {
    const part = byWord.get(word)
    if (!part) return
    for (; at - last >= 255; last += 255) bytes.push(255)
    bytes.push(at - last, part.first * 4 + part.last)
    last = at
  })
  return Uint8Array.from(bytes)
}

function encodeUnsure({ entries, unsure = new Set(), unsureAsName = new Set() }: LexiconSource): Uint8Array {
  const length = unsure.size + unsureAsName.size === 0 ? 0 : Math.ceil(entries.length / 8)
  const bits = new Uint8Array(2 * length)
  const set = (at: number, start: number) => {
    bits[start + (at >> 3)] = (bits[start + (at >> 3)] ?? 0) | (1 << (at & 7))
  }
  entries.forEach(({ word }, at) => {
    if (unsure.has(word)) set(at, 0)
    if (unsureAsName.has(word)) set(at, length)
  })
  return bits
}

/** A seam further on than the bits reach is left out: the letters alone say where such a word is cut there. */
const MOST_SEAM = 23

function encodeSeams({ entries, seams }: LexiconSource): Uint8Array {
  return Uint8Array.from(
    entries.flatMap(({ word }, at) => {
      const mask = (seams?.get(word) ?? []).reduce((sum, seam) => (seam > MOST_SEAM ? sum : sum | (1 << seam)), 0)
      return mask === 0 ? [] : [...toU24(at), ...toU24(mask)]
    }),
  )
}

function toBytes(id: number, codes: ReadonlyMap<number, number>): number[] {
  const code = id === CLOSE ? CLOSE_CODE : (codes.get(id) ?? 0)
  return code < WIDE ? [code] : [WIDE + ((code - WIDE) >> 8), (code - WIDE) & 255]
}

function join(sections: readonly Uint8Array[]): Uint8Array {
  const length = sections.reduce((sum, section) => sum + section.length, HEADER)
  const bytes = new Uint8Array(length)
  bytes.set([...MAGIC, VERSION])
  const view = new DataView(bytes.buffer)
  let at = HEADER
  sections.forEach((section, k) => {
    bytes.set(section, at)
    at += section.length
    view.setUint32(8 + k * 4, at, true)
  })
  return bytes
}
