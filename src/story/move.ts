// The same text in another place: what was read of it, with its places moved.

import type { Inlines } from './inlines.ts'
import type { HeadingPiece, Outline, Piece, TextPiece } from './outline.ts'
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

export function movePiece(piece: Piece, shift: number): Piece {
  const start = piece.start + shift
  const end = piece.end + shift
  if (!('map' in piece)) return { kind: piece.kind, start, end }
  const { map, emphasis } = moveInlines(piece, shift)
  if (piece.kind === 'text') return { kind: 'text', map, emphasis, isListItem: piece.isListItem, start, end }
  return { kind: 'heading', map, emphasis, depth: piece.depth, isTop: piece.isTop, start, end }
}

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
  const homeToSource = home.sentences.find(({ words }) => words.length > 0)?.words[0]?.toSource
  // One method for all words of a block, as in the block that was read.
  function toSource(this: Word, from: number, to: number): Range {
    return moveRange(homeToSource?.call(this, from, to) ?? this, shift)
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

/** How far one piece stands from the other where both hold the same text in the same way; undefined where they do not. */
export function findShift(one: TextPiece | HeadingPiece, other: TextPiece | HeadingPiece): number | undefined {
  const shift = other.start - one.start
  const isSame =
    one.kind === other.kind &&
    one.end + shift === other.end &&
    isSameMap(one.map, other.map, shift) &&
    JSON.stringify(moveInlines(one, shift).emphasis) === JSON.stringify(other.emphasis)
  return isSame ? shift : undefined
}

function isSameMap(one: TextMap, other: TextMap, shift: number): boolean {
  return (
    one.text === other.text &&
    one.starts.length === other.starts.length &&
    one.starts.every((start, at) => start === other.starts[at]) &&
    one.widths.every((width, at) => width === other.widths[at]) &&
    one.sources.every((source, at) => source + shift === other.sources[at])
  )
}
