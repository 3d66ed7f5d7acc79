// Cuts a Markdown source into parts that can be read one by one: plain blocks, and what the Markdown parser must see.

import type { RootContent } from 'mdast'
import type { Change } from './change.ts'
import { readPlainBlock } from './plain.ts'

/** A stretch of the source. Blank lines between parts belong to none. */
export interface Part {
  readonly start: number
  readonly end: number
  /** What stands there, with places that count from `start`; undefined where the Markdown parser must say. */
  readonly nodes: RootContent[] | undefined
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
    const end = plain?.end ?? findItem(source, at + length, block) ?? block.end
    if (run && (plain || isCut(source, run, at, length))) {
      yield run
      run = undefined
    }
    if (plain) yield { start: at, end, nodes: plain.nodes }
    else run = { start: run?.start ?? at, end, nodes: undefined }
    at = skipBlankLines(source, end)
  }
  if (run) yield run
}

/** A block that the parser must see, and up to where a list in it can be cut. */
interface LongBlock {
  readonly end: number
  readonly itemsEnd: number
}

function toBlock(source: string, start: number): LongBlock {
  const end = findBlockEnd(source, start)
  const html = source.slice(start, end).indexOf('<')
  return { end, itemsEnd: html === -1 ? end : start + html }
}

const itemStart = /\n(?=[-*+] {1,4}\S)/

/**
 * Where in a block the next item of a list begins: at the margin it ends all that stands before it but HTML, so that a long
 * list can be cut there. Of a list as a whole the parser makes two thousand times as much in memory.
 */
function findItem(source: string, from: number, { itemsEnd }: LongBlock): number | undefined {
  if (from >= itemsEnd) return undefined
  const found = source.slice(from - 1, itemsEnd).search(itemStart)
  return found === -1 ? undefined : from + found
}

/** Whether the parser's run ends before the block at an offset. */
function isCut(source: string, run: Part, at: number, length: number): boolean {
  return at - run.end > longGap || (at - run.start >= length && !/\s/.test(source[at] ?? ''))
}

const blankLines = /(?:[ \t]*\r?\n)*(?:[ \t]*$)?/y

/** The start of the next line that holds something, its indent included. */
function skipBlankLines(source: string, from: number): number {
  blankLines.lastIndex = from
  blankLines.test(source)
  return blankLines.lastIndex
}

/** The end of the last line before the next blank one, its line end with it; a comment that is open there reaches further. */
function findBlockEnd(source: string, start: number): number {
  const blank = /\n(?=[ \t]*(?:[\r\n]|$))/g
  let seen = start
  for (let from = start; ; ) {
    blank.lastIndex = from
    const end = blank.test(source) ? blank.lastIndex : source.length
    const close = findOpenComment(source, seen, end)
    if (close === undefined) return end
    seen = close
    from = close
  }
}

/** Where the comment that is open at `end` closes, past `end`; undefined where none is open. */
function findOpenComment(source: string, from: number, end: number): number | undefined {
  for (let open = source.indexOf('<!--', from); open !== -1 && open < end; ) {
    const close = source.indexOf('-->', open + 4)
    if (close === -1) return source.length
    if (close + 3 > end) return close + 3
    open = source.indexOf('<!--', close + 3)
  }
  return undefined
}
