// Keeps what was read of a story, so that of its next version only the parts that an edit touches are read.

import { findLastIndex } from '../sorted.ts'
import { type Change, findChange } from './change.ts'
import { readYamlNode } from './front-matter.ts'
import { findObstacle, tooDeep } from './guard.ts'
import { addAsides, findShift, moveBlock, movePiece } from './move.ts'
import {
  addToOutline,
  createOutline,
  type HeadingPiece,
  type Origin,
  type Outline,
  type Piece,
  type TextPiece,
} from './outline.ts'
import { parseMarkdown, parsePart } from './parse.ts'
import { cutParts, isOnePart, type Part } from './parts.ts'
import { type BlockMaker, buildStory, countWords, makeBlock, toEmptyStory } from './read.ts'
import type { Block, Range, Story, StoryOptions } from './types.ts'

/** A block as it was first read, and how far from there it stands now. */
interface Home {
  readonly block: Block
  readonly shift: number
}

export interface HeldStory {
  /** What `readStory` says. Blocks of parts that an edit has not touched stay the same, or are moved. */
  read(source: string, options?: StoryOptions): Story
  /** Of a block of the last version: the same object for as long as its text stays, wherever it is moved. */
  homeOf(block: Block): Home
}

/** A part of the source with its pieces as they stand now. */
interface HeldPart extends Range {
  readonly pieces: readonly Piece[]
  /** As it was read, when the part stood at `readAt`. */
  readonly outline: Outline
  readonly readAt: number
}

interface Held {
  readonly source: string
  /** Where the first part may start: behind the front matter. */
  readonly from: number
  readonly parts: readonly HeldPart[]
  /** Something may reach across blank lines, so that there is but one part. */
  readonly isWhole: boolean
}

const NOTHING: Held = { source: '', from: 0, parts: [], isWhole: true }

/** Shorter than for a whole reading: what an edit touches is parsed again and again. */
const RUN_LENGTH = 1000

export function createHeldStory(): HeldStory {
  const blocks = createBlocks()
  let held = NOTHING
  return {
    read(source, options = {}) {
      // What is held has been let through.
      const obstacle = source === held.source ? undefined : findObstacle(source)
      if (obstacle) return toEmptyStory(source, [obstacle])
      try {
        if (source !== held.source) held = readAnew(held, source)
        blocks.forget()
        return buildStory(source, joinParts(held), options, blocks.maker)
      } catch (error) {
        held = NOTHING
        if (!(error instanceof RangeError)) throw error
        return toEmptyStory(source, [tooDeep(0, source.length)])
      }
    },
    homeOf: blocks.homeOf,
  }
}

function readAnew(held: Held, source: string): Held {
  const from = readYamlNode(source)?.end ?? 0
  const isWhole = isOnePart(source)
  const change = findChange(held.source, source)
  const canKeep = !isWhole && !held.isWhole
  const isSameTop = from === held.from && from <= change.start
  const front = canKeep && isSameTop ? countUntouched(held.parts, change) : 0
  const restart = front === 0 ? from : (held.parts[front]?.start ?? from)
  const { cut, back } = cutUntilKnown({ source, isWhole }, restart, held.parts, canKeep ? change : undefined)
  const shift = change.newEnd - change.oldEnd
  const isKept = ({ end }: Range): boolean => canKeep && end <= change.start
  const replaced = held.parts.slice(front, back)
  const known = new Map(replaced.filter(isKept).map((part) => [`${part.start} ${part.end}`, part]))
  const kept = cut.map((part) => known.get(`${part.start} ${part.end}`))
  // A part that stays keeps its pieces: no other may take them for its own.
  const findSame = createTwinFinder(replaced.filter((part) => !kept.includes(part)))
  const middle = cut.map((part, at) => kept[at] ?? readPart(source, part, findSame))
  const tail = held.parts.slice(back).map((part) => movePart(part, shift))
  return { source, from, isWhole, parts: [...held.parts.slice(0, front), ...middle, ...tail] }
}

/**
 * How many parts at the front stay as they are. Where a part ends depends on the block after it, so the last one before
 * the part that is touched is cut again.
 */
const countUntouched = (parts: readonly Range[], { start }: Change): number =>
  Math.max(0, findLastIndex(parts.length, (at) => (parts[at]?.start ?? 0) <= start) - 1)

/**
 * Cuts parts until one begins where one began before, past the edit: how the rest is cut depends on nothing that stands
 * before it. `back` is the index of that old part. Without a change nothing is known.
 */
function cutUntilKnown(
  { source, isWhole }: Pick<Held, 'source' | 'isWhole'>,
  from: number,
  old: readonly Range[],
  change: Change | undefined,
) {
  const cut: Part[] = []
  for (const part of cutParts(source, from, RUN_LENGTH, isWhole)) {
    if (change && part.start >= change.newEnd) {
      const back = findPartAt(old, part.start - change.newEnd + change.oldEnd)
      if (back >= 0) return { cut, back }
    }
    cut.push(part)
  }
  return { cut, back: old.length }
}

function findPartAt(parts: readonly Range[], start: number): number {
  const at = findLastIndex(parts.length, (index) => (parts[index]?.start ?? 0) <= start)
  return parts[at]?.start === start ? at : -1
}

type FindTwin = (piece: TextPiece | HeadingPiece) => TextPiece | HeadingPiece | undefined

function readPart(source: string, part: Part, findTwin: FindTwin): HeldPart {
  const outline = createOutline()
  addToOutline(outline, source, parsePart(source, part), parseMarkdown)
  for (const piece of outline.pieces) {
    const twin = 'map' in piece ? findTwin(piece) : undefined
    if ('map' in piece && twin) piece.origin = toOrigin(twin, piece.start - twin.start)
  }
  return { start: part.start, end: part.end, pieces: outline.pieces, outline, readAt: part.start }
}

/** Finds the old piece with the same text; each is found once. */
function createTwinFinder(parts: readonly HeldPart[]): FindTwin {
  const byText = new Map<string, (TextPiece | HeadingPiece)[]>()
  for (const { pieces } of parts) {
    for (const piece of pieces) {
      if (!('map' in piece)) continue
      const same = byText.get(piece.map.text)
      if (same) same.push(piece)
      else byText.set(piece.map.text, [piece])
    }
  }
  return (piece) => {
    const same = byText.get(piece.map.text) ?? []
    const at = same.findIndex((one) => findShift(one, piece) !== undefined)
    return at < 0 ? undefined : same.splice(at, 1)[0]
  }
}

function movePart({ start, end, outline, readAt, ...part }: HeldPart, by: number): HeldPart {
  if (by === 0) return { start, end, outline, readAt, ...part }
  const shift = start + by - readAt
  const pieces = shift === 0 ? outline.pieces : outline.pieces.map((piece) => moveHeld(piece, shift))
  return { start: start + by, end: end + by, pieces, outline, readAt }
}

function moveHeld(piece: Piece, shift: number): Piece {
  const moved = movePiece(piece, shift)
  if ('map' in moved && 'map' in piece) moved.origin = toOrigin(piece, shift)
  return moved
}

function joinParts({ source, parts }: Held): Outline {
  const outline = createOutline()
  const top = readYamlNode(source)
  if (top) addToOutline(outline, source, { root: { type: 'root', children: [top.node] }, base: 0 }, parseMarkdown)
  for (const part of parts) {
    for (const piece of part.pieces) outline.pieces.push(piece)
    addAsides(outline, part.outline, part.start - part.readAt)
  }
  return outline
}

function toOrigin(from: TextPiece | HeadingPiece, shift: number): Origin {
  const origin = originOf(from)
  return { piece: origin.piece, shift: origin.shift + shift }
}

const originOf = (piece: TextPiece | HeadingPiece): Origin => piece.origin ?? { piece, shift: 0 }

interface HeldBlock {
  readonly block: Block
  readonly page: number
  last?: { readonly shift: number; readonly page: number; readonly block: Block }
}

function createBlocks() {
  const known = new WeakMap<Piece, HeldBlock>()
  const counts = new WeakMap<Block, ReturnType<typeof countWords>>()
  // Of one version only: a lasting memory of so many blocks would be a burden at each keystroke.
  const homes = new Map<Block, Home>()
  const homeOf = (block: Block): Home => homes.get(block) ?? { block, shift: 0 }
  const make: BlockMaker['make'] = (kind, piece, page) => {
    const { piece: origin, shift } = originOf(piece)
    let held = known.get(origin)
    if (held?.block.kind !== kind) {
      held = { block: makeBlock(kind, origin, page).block, page }
      known.set(origin, held)
    }
    if (shift === 0 && page === held.page) return held.block
    if (held.last?.shift !== shift || held.last.page !== page)
      held.last = { shift, page, block: moveBlock(held.block, shift, page) }
    homes.set(held.last.block, { block: held.block, shift })
    return held.last.block
  }
  const count: BlockMaker['count'] = (block) => {
    const home = homeOf(block).block
    const found = counts.get(home) ?? countWords(home)
    counts.set(home, found)
    return found
  }
  return { maker: { make, count }, homeOf, forget: () => homes.clear() }
}
