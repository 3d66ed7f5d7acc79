// Keeps what was read of a story, so that of its next version only the parts that an edit touches are read.

import { findLastIndex } from '../sorted.ts'
import { type Change, findChange } from './change.ts'
import { readYamlNode } from './front-matter.ts'
import { findNewObstacle, type Passed, tooDeep } from './guard.ts'
import { createHeldPages } from './held-pages.ts'
import { addAsides, isTwin } from './move.ts'
import { addToOutline, createOutline, type HeadingPiece, type Outline, type TextPiece } from './outline.ts'
import { parseMarkdown, parsePart } from './parse.ts'
import { cutParts, isOnePart, isOnePartNow, type Part } from './parts.ts'
import { buildStory, toEmptyStory } from './read.ts'
import type { Range, Story, StoryOptions } from './types.ts'

export interface HeldStory {
  /** What `readStory` says. Blocks of parts that an edit has not touched stay the same, or are moved. */
  read(source: string, options?: StoryOptions): Story
}

/** A part of the source. It and its pieces are moved in place: there are thousands behind each letter that is typed. */
interface HeldPart {
  start: number
  end: number
  /** Its pieces stand where they stand now; all beside them where they stood when the part began at `readAt`. */
  readonly outline: Outline
  readonly readAt: number
}

interface Held extends Passed {
  /** Where the first part may start: behind the front matter. */
  readonly from: number
  readonly parts: readonly HeldPart[]
  /** Something may reach across blank lines, so that there is but one part. */
  readonly isWhole: boolean
}

const NOTHING: Held = { source: '', strange: 0, from: 0, parts: [], isWhole: true }

/** Shorter than for a whole reading: what an edit touches is parsed again and again. */
const RUN_LENGTH = 1000

/** What the work is done with; a test counts what is asked of it. */
interface Tools {
  readonly cut: typeof cutParts
  readonly parse: typeof parsePart
}

export function createHeldStory(tools: Tools = { cut: cutParts, parse: parsePart }): HeldStory {
  const pages = createHeldPages()
  let held = NOTHING
  return {
    read(source, options = {}) {
      try {
        if (source !== held.source) {
          const change = findChange(held.source, source)
          const passed = findNewObstacle(held, source, change)
          // What is held has been let through.
          if (!('strange' in passed)) return toEmptyStory(source, [passed])
          held = readAnew(tools, held, passed, change)
        }
        return buildStory(source, joinParts(held), options, pages)
      } catch (error) {
        held = NOTHING
        if (!(error instanceof RangeError)) throw error
        return toEmptyStory(source, [tooDeep(0, source.length)])
      }
    },
  }
}

function readAnew(tools: Tools, held: Held, passed: Passed, change: Change): Held {
  const { source } = passed
  const from = readYamlNode(source)?.end ?? 0
  const isWhole = held.isWhole ? isOnePart(source) : isOnePartNow(source, change)
  const canKeep = !isWhole && !held.isWhole
  const isSameTop = from === held.from && from <= change.start
  const front = canKeep && isSameTop ? countUntouched(held.parts, change) : 0
  const restart = front === 0 ? from : (held.parts[front]?.start ?? from)
  const { cut, back } = cutUntilKnown(
    tools.cut(source, restart, RUN_LENGTH, isWhole),
    held.parts,
    canKeep ? change : undefined,
  )
  const shift = change.newEnd - change.oldEnd
  const isKept = ({ end }: HeldPart): boolean => canKeep && end <= change.start
  const replaced = held.parts.slice(front, back)
  const known = new Map(replaced.filter(isKept).map((part) => [`${part.start} ${part.end}`, part]))
  const kept = cut.map((part) => known.get(`${part.start} ${part.end}`))
  // A part that stays keeps its pieces: no other may take them for its own.
  const findSame = createTwinFinder(replaced.filter((part) => !kept.includes(part)))
  const middle = cut.map((part, at) => kept[at] ?? readPart(tools, source, part, findSame))
  const tail = held.parts.slice(back)
  for (const part of tail) movePart(part, shift)
  return { ...passed, from, isWhole, parts: [...held.parts.slice(0, front), ...middle, ...tail] }
}

/**
 * How many parts at the front stay as they are. Where a part ends depends on the block after it, so the last one before
 * the part that is touched is cut again.
 */
const countUntouched = (parts: readonly Range[], { start }: Change): number =>
  Math.max(0, findLastIndex(parts.length, (at) => (parts[at] as Range).start <= start) - 1)

/**
 * Cuts parts until one begins where one began before, past the edit: how the rest is cut depends on nothing that stands
 * before it. `back` is the index of that old part. Without a change nothing is known.
 */
function cutUntilKnown(parts: Iterable<Part>, old: readonly Range[], change: Change | undefined) {
  const cut: Part[] = []
  for (const part of parts) {
    if (change && part.start >= change.newEnd) {
      const back = findPartAt(old, part.start - change.newEnd + change.oldEnd)
      if (back >= 0) return { cut, back }
    }
    cut.push(part)
  }
  return { cut, back: old.length }
}

function findPartAt(parts: readonly Range[], start: number): number {
  const at = findLastIndex(parts.length, (index) => (parts[index] as Range).start <= start)
  return parts[at]?.start === start ? at : -1
}

type FindTwin = (piece: TextPiece | HeadingPiece) => TextPiece | HeadingPiece | undefined

function readPart({ parse }: Tools, source: string, part: Part, findTwin: FindTwin): HeldPart {
  const outline = createOutline()
  addToOutline(outline, source, parse(source, part), parseMarkdown)
  for (const piece of outline.pieces) {
    if ('map' in piece) piece.home = findTwin(piece)?.home
  }
  return { start: part.start, end: part.end, outline, readAt: part.start }
}

/** Finds the old piece with the same text; each is found once. */
function createTwinFinder(parts: readonly HeldPart[]): FindTwin {
  const byText = new Map<string, (TextPiece | HeadingPiece)[]>()
  for (const { outline } of parts) {
    for (const piece of outline.pieces) {
      if (!('map' in piece)) continue
      const same = byText.get(piece.map.text)
      if (same) same.push(piece)
      else byText.set(piece.map.text, [piece])
    }
  }
  return (piece) => {
    const same = byText.get(piece.map.text)
    const at = same?.findIndex((one) => isTwin(one, piece)) ?? -1
    return at < 0 ? undefined : same?.splice(at, 1)[0]
  }
}

function movePart(part: HeldPart, shift: number): void {
  part.start += shift
  part.end += shift
  for (const piece of part.outline.pieces as Moving[]) {
    piece.start += shift
    piece.end += shift
    piece.moved = (piece.moved ?? 0) + shift
  }
}

interface Moving {
  start: number
  end: number
  moved?: number
}

function joinParts({ source, parts }: Held): Outline {
  const outline = createOutline()
  const top = readYamlNode(source)
  if (top) addToOutline(outline, source, { root: { type: 'root', children: [top.node] }, base: 0 }, parseMarkdown)
  for (const part of parts) {
    for (const piece of part.outline.pieces) outline.pieces.push(piece)
    addAsides(outline, part.outline, part.start - part.readAt)
  }
  return outline
}
