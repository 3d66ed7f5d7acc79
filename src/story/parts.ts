// Cuts a Markdown source into parts that can be read one by one: plain blocks, and what the Markdown parser must see.

import type { RootContent } from 'mdast'
import type { Change } from './change.ts'
import { findInlineCuts, type Gap } from './inline-cuts.ts'
import { findNumberedItem } from './numbered.ts'
import { readPlainBlock } from './plain.ts'

/** A stretch of the source. Blank lines between parts belong to none. */
export interface Part {
  readonly start: number
  readonly end: number
  /** What stands there, with places that count from `start`; undefined where the Markdown parser must say. */
  readonly nodes: RootContent[] | undefined
  /** Where a long paragraph, which is all of the part, can be cut for the parser. */
  readonly cuts?: readonly Gap[]
}

/** A run for the parser is long enough that the parser's fixed cost does not show, short enough that its growth does not. */
const runLength = 4096

/** A gap of so many blank characters parts two runs, wherever the next text stands. */
const longGap = 500

const hasCode = /`{3}|~{3}/
const hasRawHtml = /<(?:script|pre|style|textarea|[?!](?!--))/i
const hasDefinition = /\]:/
const hasLoneReturn = /\r(?!\n)/

const reachesAcross = [hasCode, hasRawHtml, hasDefinition, hasLoneReturn]

/** Whether something in the source may reach across blank lines, so that it cannot be cut. */
export const isOnePart = (source: string): boolean => reachesAcross.some((it) => it.test(source))

/** Longer than the longest of what reaches across. */
const REACH = 16

/** The same for the next version of a source that could be cut: all that is new stands at the change. */
export const isOnePartNow = (source: string, { start, newEnd }: Change): boolean =>
  isOnePart(source.slice(Math.max(0, start - REACH), newEnd + REACH)) && isOnePart(source)

/**
 * The parts of a source from an offset on. They read as the whole would: a part starts after a blank line, at the
 * margin or after a very long gap, outside comments. What reaches across blank lines in other ways (code, raw HTML, link
 * definitions) is rare in a story; a source that holds any is one part.
 * @param length how long a run for the parser may grow
 * @param isWhole `isOnePart` of the source, where it has been asked
 */
export function* cutParts(
  source: string,
  from: number,
  length = runLength,
  isWhole = isOnePart(source),
): Generator<Part> {
  if (isWhole) {
    yield { start: from, end: source.length, nodes: undefined }
    return
  }
  let run: Part | undefined
  let block: LongBlock = { end: 0, itemsEnd: 0 }
  for (let at = skipBlankLines(source, from); at < source.length; ) {
    const plain = readPlainBlock(source, at)
    if (!plain && at >= block.end) block = toBlock(source, at)
    const end = plain?.end ?? findCut(source, at, length, block)
    const next = skipBlankLines(source, end)
    // What stands in an indent may belong to the last item of a list.
    const isLong = !plain && end - at > 2 * length && !isIndented(source, next)
    const cuts = isLong ? findInlineCuts(source, at, end, length) : []
    if (run && (plain || cuts.length > 0 || isCut(source, run, at, length))) {
      yield run
      run = undefined
    }
    if (plain) yield { start: at, end, nodes: plain.nodes }
    else if (cuts.length > 0) yield { start: at, end, nodes: undefined, cuts }
    else run = { start: run?.start ?? at, end, nodes: undefined }
    at = next
  }
  if (run) yield run
}

/** A block that the parser must see, and up to where it can be cut between its lines. */
interface LongBlock {
  readonly end: number
  readonly itemsEnd: number
}

function toBlock(source: string, start: number): LongBlock {
  const end = findBlockEnd(source, start)
  const html = source.slice(start, end).indexOf('<')
  return { end, itemsEnd: html === -1 ? end : start + html }
}

/**
 * Before what ends all that stands before it but HTML: the next item of a list at the margin, a heading, a line after a page
 * break, a quote after a blank line of a quote.
 */
const lineCut = /\n(?:(?=[-*+] {1,4}\S|#{1,6} +\S)|-{3,}[ \t]*\r?\n(?=[^\s])|>[ \t]*\r?\n(?=> ?[^\s]))/

/**
 * Where the part that begins at an offset of a block ends. Long blocks are cut: of a list as a whole the parser makes two
 * thousand times as much in memory, and its time for lists in lists and for quotes grows with the square of their number. What
 * is long in itself stands alone.
 */
function findCut(source: string, at: number, length: number, { end, itemsEnd }: LongBlock): number {
  const next = findNextCut(source, at, at + length, itemsEnd) ?? end
  return next - at > 2 * length ? (findNextCut(source, at, at + 1, itemsEnd) ?? end) : next
}

function findNextCut(source: string, at: number, from: number, end: number): number | undefined {
  const found = lineCut.exec(source.slice(from - 1, end))
  const cut = found ? from - 1 + found.index + found[0].length : undefined
  return findNumberedItem(source, at, from, cut ?? end) ?? cut
}

/** Whether the parser's run ends before the block at an offset. */
function isCut(source: string, run: Part, at: number, length: number): boolean {
  return at - run.end > longGap || (at - run.start >= length && !isIndented(source, at))
}

const isIndented = (source: string, at: number): boolean => /\s/.test(source.charAt(at))

const blankLines = /(?:[ \t]*\r?\n)*(?:[ \t]*$)?/y

/** The start of the next line that holds something, its indent included. */
function skipBlankLines(source: string, from: number): number {
  blankLines.lastIndex = from
  blankLines.test(source)
  return blankLines.lastIndex
}

/** A line end before a blank line; or a comment as a whole, which may hold blank lines. */
const endOrComment = /\n(?=[ \t]*(?:[\r\n]|$))|<!--[\s\S]*?(?:-->|$)/g

/** The end of the last line before the next blank one, its line end with it; a comment that is open there reaches further. */
function findBlockEnd(source: string, start: number): number {
  endOrComment.lastIndex = start
  for (let found = endOrComment.exec(source); found; found = endOrComment.exec(source))
    if (found[0] === '\n') return endOrComment.lastIndex
  return source.length
}
