// The same text in another place: what was read of it, with its places moved.

import { isSame } from '../sorted.ts'
import type { Inlines } from './inlines.ts'
import type { HeadingPiece, Outline, TextPiece } from './outline.ts'
import type { TextMap } from './text-map.ts'
import type { Block, Range, Sentence, Word } from './types.ts'

const moveRange = <Held extends Range>(one: Held, shift: number): Held => ({
  ...one,
  start: one.start + shift,
  end: one.end + shift,
})

const moveMap = ({ text, starts, sources, widths }: TextMap, shift: number): TextMap => ({
  text,
  starts,
  sources: sources.map((source) => source + shift),
  widths,
})

/** Text and emphasis of a piece, with their places where it stands now. */
export const toStanding = (piece: Inlines & Pick<TextPiece, 'moved'>): Inlines =>
  piece.moved ? moveInlines(piece, piece.moved) : piece

const moveInlines = ({ map, emphasis }: Inlines, shift: number): Inlines => ({
  map: moveMap(map, shift),
  emphasis: emphasis.map((one) => ({ ...moveRange(one, shift), inside: moveRange(one.inside, shift) })),
})

/** Adds to an outline what stands in another beside its pieces. */
export function addAsides(outline: Outline, { pictures, notes, comments, problems }: Outline, shift: number): void {
  for (const one of pictures) outline.pictures.push(moveRange(one, shift))
  for (const one of notes) outline.notes.push({ ...moveRange(one, shift), ...moveInlines(one, shift) })
  for (const one of comments) outline.comments.push({ ...moveRange(one, shift), valueStart: one.valueStart + shift })
  for (const one of problems) {
    // Of all that stands too deep, the first is told.
    const isKnown = one.code === 'too-deep' && outline.problems.some(({ code }) => code === one.code)
    if (!isKnown) outline.problems.push(moveRange(one, shift))
  }
}

/** Its sentences are moved when they are first asked for: most are not, as what was said of them is known. */
export function moveBlock(home: Block, shift: number, page: number): Block {
  let sentences: readonly Sentence[] | undefined
  const block: Block = {
    kind: home.kind,
    text: home.text,
    get sentences() {
      sentences ??= moveSentences(home, block, shift, page)
      return sentences
    },
    emphasis: home.emphasis.map((one) => moveRange(one, shift)),
    toSource: (offset) => home.toSource(offset) + shift,
    start: home.start + shift,
    end: home.end + shift,
  }
  return block
}

function moveSentences(home: Block, block: Block, shift: number, page: number): readonly Sentence[] {
  const first = home.sentences.find(({ words }) => words.length > 0)?.words[0]
  // One method for all words of a block, as in the block that was read.
  function toSource(this: Word, from: number, to: number): Range {
    return moveRange((first as Word).toSource.call(this, from, to), shift)
  }
  return home.sentences.map((sentence) => ({
    ...moveRange(sentence, shift),
    block,
    words: sentence.words.map(({ text, form, textStart, start, end }) => ({
      text,
      form,
      textStart,
      page,
      start: start + shift,
      end: end + shift,
      toSource,
    })),
    marks: sentence.marks.map((mark) => moveRange(mark, shift)),
  }))
}

/** Whether a piece, wherever it stands now, holds its text in the same way as one of the same text that has just been read. */
export function isTwin(one: TextPiece | HeadingPiece, other: TextPiece | HeadingPiece): boolean {
  const shift = other.start - one.start
  const fromRead = shift + (one.moved ?? 0)
  return (
    one.end + shift === other.end &&
    isSameMap(one.map, other.map, fromRead) &&
    JSON.stringify(moveInlines(one, fromRead).emphasis) === JSON.stringify(other.emphasis)
  )
}

function isSameMap(one: TextMap, other: TextMap, shift: number): boolean {
  return (
    isSame(one.starts, other.starts) &&
    isSame(one.widths, other.widths) &&
    one.sources.every((source, at) => source + shift === other.sources[at])
  )
}
