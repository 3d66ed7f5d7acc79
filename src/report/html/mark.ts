// The text of a block with what a child cannot read marked on its letters.
//
//   At night      the word is a <mark>, the letters to blame are underlined in it,
//      ‾‾‾2       and a number leads to the note
//
// So nothing hangs on colour, and a screen reader says "note 2" after the word.

import { findLastIndex } from '../../sorted.ts'
import type { Block, Range } from '../../story/types.ts'
import { escapeHtml } from './escape.ts'

export interface Marking extends Range {
  /** The number of the note, from 1 in each story. */
  readonly note: number
  /** Ranges of the source. */
  readonly letters: readonly Range[]
  /** Whether the text is marked; else only the number stands where it begins. */
  readonly isMarked: boolean
}

interface Piece {
  /** Text offsets. */
  readonly start: number
  end: number
  readonly letters: (readonly [number, number])[]
  readonly notes: number[]
}

/** HTML of the block's text. `toNoteId` gives the id of a note's element. */
export function toMarkedText(block: Block, markings: readonly Marking[], toNoteId: (note: number) => string): string {
  let html = ''
  let at = 0
  for (const piece of toPieces(block, markings)) {
    const isPoint = piece.start === piece.end
    html += toText(block, at, piece.start)
    const notes = piece.notes
      .map((note) => `<a class="note" href="#${toNoteId(note)}" aria-label="note ${note}">${note}</a>`)
      .join('')
    html += isPoint ? notes : `<mark>${toLetters(block, piece)}</mark>${notes}`
    at = piece.end
  }
  return html + toText(block, at, block.text.length)
}

/** In order, none over another: markings that overlap make one piece. */
function toPieces(block: Block, markings: readonly Marking[]): Piece[] {
  const pieces: Piece[] = []
  for (const marking of markings.toSorted((left, right) => left.start - right.start)) {
    const start = toTextOffset(block, marking.start)
    const end = marking.isMarked ? toTextOffset(block, marking.end) : start
    const letters = marking.letters.map(
      (range) => [toTextOffset(block, range.start), toTextOffset(block, range.end)] as const,
    )
    const last = pieces.at(-1)
    if (last && (start < last.end || (start === last.start && end === last.end))) {
      last.end = Math.max(last.end, end)
      last.letters.push(...letters)
      if (!last.notes.includes(marking.note)) last.notes.push(marking.note)
    } else pieces.push({ start, end, letters: [...letters], notes: [marking.note] })
  }
  return pieces
}

function toLetters(block: Block, { start, end, letters }: Piece): string {
  const isBlamed = (at: number): boolean => letters.some(([from, to]) => at >= from && at < to)
  let html = ''
  for (let at = start; at < end; ) {
    const blamed = isBlamed(at)
    let stop = at + 1
    while (stop < end && isBlamed(stop) === blamed) stop++
    html += blamed ? `<u>${toText(block, at, stop)}</u>` : toText(block, at, stop)
    at = stop
  }
  return html
}

/** The first letter of the text that stands at or after a place of the source. */
const toTextOffset = ({ text, toSource }: Block, source: number): number =>
  findLastIndex(text.length, (offset) => toSource(offset) < source) + 1

/** A stretch of the text, with the letters that the maker has set in bold or italics. */
function toText({ text, emphasis }: Block, from: number, to: number): string {
  const toTags = (at: number): string =>
    emphasis
      .filter(({ textStart, textEnd }) => at >= textStart && at < textEnd)
      .map(({ kind }) => (kind === 'strong' ? 'b' : 'i'))
      .join()
  let html = ''
  for (let at = from; at < to; ) {
    const tags = toTags(at)
    let stop = at + 1
    while (stop < to && toTags(stop) === tags) stop++
    const names = [...new Set(tags.split(',').filter((one) => one !== ''))]
    const inner = escapeHtml(text.slice(at, stop)).replaceAll('\n', '<br>')
    html += names.reduceRight((inside, name) => `<${name}>${inside}</${name}>`, inner)
    at = stop
  }
  return html
}
