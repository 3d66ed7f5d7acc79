// Turns away sources that would hang or break the Markdown parser, each with a message that says why.

import type { Change } from './change.ts'
import type { Oddity } from './types.ts'

/** The longest story that is read, in UTF-16 units: as many as a file may have bytes. A picture book of 32 pages has some 5,000. */
export const maxLength = 10 * 1024 * 1024

/** How many block quotes, lists and brackets may stand in one another. */
export const maxDepth = 100

const maxIndent = 200
const longEmphasis = /\*{101}|_{501}/

/** What keeps this source from being parsed at all, if anything does. */
export function findObstacle(source: string): Oddity | undefined {
  if (source.length > maxLength) {
    const millions = Math.ceil(source.length / 100_000) / 10
    const limit = Math.floor(maxLength / 100_000) / 10
    return {
      code: 'too-large',
      message: `This file has ${millions} million characters. The longest that is read has ${limit} million.`,
      start: maxLength,
      end: source.length,
    }
  }
  return findBinary(source) ?? findDeepNesting(source)
}

/** A source that has been let through, with how many strange characters it holds. */
export interface Passed {
  readonly source: string
  readonly strange: number
}

/** What keeps the next version of a source that has been let through from being parsed: the text is looked at only where it differs. */
export function findNewObstacle(before: Passed, source: string, { start, oldEnd, newEnd }: Change): Oddity | Passed {
  const { count, nul } = countStrange(source, start, newEnd)
  const strange = before.strange - countStrange(before.source, start, oldEnd).count + count
  const mayBreak = nul >= 0 || isMostlyStrange(strange, source) || source.length > maxLength
  const obstacle = mayBreak ? findObstacle(source) : findDeepNesting(source, ...toStretch(source, start, newEnd))
  return obstacle ?? { source, strange }
}

function findBinary(source: string): Oddity | undefined {
  const { count, first, nul } = countStrange(source, 0, source.length)
  if (nul >= 0) return toBinary(nul)
  return isMostlyStrange(count, source) ? toBinary(first) : undefined
}

const isMostlyStrange = (count: number, source: string): boolean => count * 20 > source.length

/** Characters that no text holds: how many, where the first of them stands, and where the first that none may hold. */
function countStrange(source: string, from: number, to: number) {
  let count = 0
  let first = -1
  for (let at = from; at < to; at++) {
    const code = source.charCodeAt(at)
    if (code >= 0x20 && code !== 0xfffd) continue
    if (code === 0) return { count, first, nul: at }
    if (code >= 0x09 && code <= 0x0d) continue
    count++
    if (first === -1) first = at
  }
  return { count, first, nul: -1 }
}

function toBinary(at: number): Oddity {
  return { code: 'binary', message: 'This is not a text file in UTF-8.', start: at, end: at + 1 }
}

/** With its end. */
const anyLine = /[^\r\n]*(?:\r?\n|\r|$)/g

/** A blank line, or a rule: what stands on one side of it cannot make the other deeper. */
const parting = /^[ \t]*(?:([*_-])(?:[ \t]*\1)*[ \t]*)?[\r\n]*$/

/** What opens or closes any of what is counted. */
const anyMark = /[*_[\]()>+-]|\d\./

/**
 * Nesting past the limits. The parser needs seconds for some kinds of it and overflows the stack on others, so it is
 * looked for in the text before the parser sees it, line by line.
 */
function findDeepNesting(source: string, start = 0, end = source.length): Oddity | undefined {
  let open = closed
  for (const { 0: line, index } of source.slice(start, end).matchAll(anyLine)) {
    if (parting.test(line)) {
      open = closed
      continue
    }
    // Most lines have none, and to look for each of them is a twentieth of the reading of a story.
    if (!anyMark.test(line)) continue
    open = countOpen(line, open)
    const isDeep = open.deepest > maxDepth || hasDeepContainers(line) || longEmphasis.test(line)
    if (isDeep) return tooDeep(start + index, start + index + line.trimEnd().length)
  }
  return undefined
}

/** From the blank line before a place to the one after it. */
function toStretch(source: string, start: number, end: number): readonly [number, number] {
  const before = Math.max(source.lastIndexOf('\n\n', start - 1), source.lastIndexOf('\n\r\n', start - 1), 0)
  const after = source.slice(end).search(/\n\r?\n/)
  return [before, after < 0 ? source.length : end + after]
}

export function tooDeep(start: number, end: number): Oddity {
  return {
    code: 'too-deep',
    message: `Quotes, lists, brackets or emphasis stand more than ${maxDepth} deep in one another here.`,
    start,
    end,
  }
}

// > > - 1. a
// ^ ^ ^ ^
const container = /([ \t]*)(?:>|(?:[-*+]|\d{1,9}[.)])(?![^ \t\r\n]))/gy

function hasDeepContainers(line: string): boolean {
  let count = 0
  for (const found of line.matchAll(container)) {
    count++
    if (count > maxDepth || (found[1] as string).length >= maxIndent) return true
  }
  return false
}

/** What stands open at the end of a line of a paragraph, and the most that stood open in it. */
interface Open {
  readonly brackets: number
  readonly links: number
  readonly emphasis: number
  readonly deepest: number
}

const closed: Open = { brackets: 0, links: 0, emphasis: 0, deepest: 0 }
const inlineMark = /\\.|\*+|_+|\]\(|[[\])]/g

function countOpen(line: string, before: Open): Open {
  let { brackets, links, emphasis, deepest } = before
  for (const match of line.matchAll(inlineMark)) {
    const mark = match[0]
    if (mark === '[') brackets++
    else if (mark.startsWith(']')) {
      brackets = Math.max(0, brackets - 1)
      if (mark === '](') links++
    } else if (mark === ')') links = Math.max(0, links - 1)
    else if (!mark.startsWith('\\'))
      emphasis = Math.max(0, emphasis + toEmphasisStep(line, match.index, mark.length, emphasis))
    deepest = Math.max(deepest, brackets, links, emphasis)
  }
  return { brackets, links, emphasis, deepest }
}

/** 1 where a run of marks opens emphasis, -1 where it closes some, 0 where it stands alone. */
function toEmphasisStep(line: string, at: number, length: number, open: number): number {
  const isAfterText = /\S/.test(line.charAt(at - 1))
  const isBeforeText = /\S/.test(line.charAt(at + length))
  if (isAfterText && (open > 0 || !isBeforeText)) return -1
  return isBeforeText ? 1 : 0
}
