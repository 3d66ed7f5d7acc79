// The text of a block, and where each of its letters stands in the source.

import { findLastIndex } from '../sorted.ts'

/**
 * Segments in order of place, as parallel lists. A segment whose width is its length in the text stands letter for
 * letter in the source; any other (a character reference, an escape, a line break with its quote mark) is one piece.
 */
export interface TextMap {
  readonly text: string
  /** Text offset of each segment's start. */
  readonly starts: readonly number[]
  /** Source offset of each segment's start. */
  readonly sources: readonly number[]
  /** Length of each segment in the source. */
  readonly widths: readonly number[]
}

export interface TextMapBuilder extends TextMap {
  text: string
  /** Whether the text ends with a blank; to look at a text that still grows costs as much as it is long. */
  isBlankAtEnd: boolean
  readonly starts: number[]
  readonly sources: number[]
  readonly widths: number[]
}

export function createTextMap(): TextMapBuilder {
  return { text: '', isBlankAtEnd: false, starts: [], sources: [], widths: [] }
}

/** Add text that stands in the source at `source`, `width` UTF-16 units wide. */
export function appendText(map: TextMapBuilder, text: string, source: number, width: number): void {
  if (text === '') return
  map.starts.push(map.text.length)
  map.sources.push(source)
  map.widths.push(width)
  map.text += text
  map.isBlankAtEnd = /\s$/.test(text.slice(-1))
}

/** The source offset at which the letter at `offset` of the text starts; past the text, where its last letter ends. */
export function toSourceStart(map: TextMap, offset: number): number {
  if (offset <= 0) return map.sources[0] ?? 0
  if (offset >= map.text.length) return toSourceEnd(map, map.text.length)
  const index = findSegment(map, offset)
  const source = map.sources[index] as number
  return isLiteralSegment(map, index) ? source + offset - (map.starts[index] as number) : source
}

/** The source offset at which the letter before `offset` of the text ends. */
export function toSourceEnd(map: TextMap, offset: number): number {
  if (offset <= 0) return map.sources[0] ?? 0
  const index = findSegment(map, offset - 1)
  const source = map.sources[index] as number
  if (!isLiteralSegment(map, index)) return source + (map.widths[index] as number)
  return source + Math.min(offset, map.text.length) - (map.starts[index] as number)
}

function isLiteralSegment(map: TextMap, index: number): boolean {
  return map.widths[index] === (map.starts[index + 1] ?? map.text.length) - (map.starts[index] as number)
}

/** The offset of the first letter of the text that stands at a source offset or after it. */
export function toTextOffset(map: TextMap, source: number): number {
  const index = findLastIndex(map.sources.length, (at) => (map.sources[at] as number) < source)
  if (index < 0) return 0
  const start = map.starts[index] as number
  const end = map.starts[index + 1] ?? map.text.length
  return isLiteralSegment(map, index) ? Math.min(end, start + source - (map.sources[index] as number)) : end
}

function findSegment(map: TextMap, offset: number): number {
  return findLastIndex(map.starts.length, (at) => (map.starts[at] as number) <= offset)
}
