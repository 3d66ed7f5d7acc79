// Reads blocks that hold no Markdown but headings, page breaks and words in bold or italics: most of a story, and a tenth of
// the parser's time. The parser's own time for a paragraph with many such words grows with its square.

import type { PhrasingContent, RootContent } from 'mdast'
import type { Point } from 'unist'
import { createMarkedLineReader, type MarkedText } from './marked-line.ts'
import { createPlainListReader } from './plain-list.ts'

/** Nodes with places that count from the start of the block, and where the block ends in the source. */
export interface PlainBlock {
  readonly nodes: RootContent[]
  readonly end: number
}

/**
 * Letters and the marks that mean nothing to Markdown inside a line. What starts a line is narrower: a digit may number a
 * list, a dash may open one. What is not listed here is left to the Markdown parser, so the list may be too short but
 * never too long.
 */
const opens = String.raw`A-Za-z\u00C0-\u024F"'“‘(`
const holds = `${opens}0-9,.!?;:’”…–—)/-`
const text = `[${opens}](?:[ ${holds}]*[${holds}])?`
const lineEnd = String.raw`(?=\r?\n|$)`

/** One line: text, a heading with its text, a page break. Its groups: heading marks, the gap after them, heading text. */
const plainLine = new RegExp(`(?:${text}|(#{1,6})(?:( +)(${text}))?|---)${lineEnd}`, 'y')

const readMarkedLine = createMarkedLineReader(opens, holds)
const readPlainList = createPlainListReader(opens, holds)

/**
 * The block of lines that starts at an offset, as remark-parse reads it; undefined where any of it could be more than
 * plain text. The block must stand after a blank line, outside code, comments and raw HTML, at the margin.
 */
export function readPlainBlock(source: string, start: number): PlainBlock | undefined {
  const nodes: RootContent[] = []
  // Where the paragraph in hand starts and ends.
  let from: Place | undefined
  let to: Place | undefined
  let marked: PlacedText[] = []
  const closeParagraph = (): void => {
    if (from && to) nodes.push(toParagraph(source, start, from, to, marked))
    from = undefined
    marked = []
  }
  for (let at = start, line = 1; ; line++) {
    plainLine.lastIndex = at
    const found = plainLine.exec(source)
    const markedLine = found === null ? readMarkedLine(source, at) : undefined
    if (found === null && markedLine === undefined) {
      const isBelowHeading = from === undefined && nodes.at(-1)?.type === 'heading'
      const list = isBelowHeading ? readPlainList(source, { line, column: 1, offset: at - start }, start) : undefined
      return list && { nodes: [...nodes, list.node], end: start + list.end }
    }
    const [whole = source.slice(at, markedLine?.end), marks, gap = '', title = ''] = found ?? []
    const lineStart = { line, column: 1, offset: at - start }
    const lineStop = toPlace(lineStart, whole.length)
    for (const one of markedLine?.marked ?? [])
      marked.push({ ...one, from: toPlace(lineStart, one.start - at), to: toPlace(lineStart, one.end - at) })
    if (marks !== undefined) {
      closeParagraph()
      nodes.push(toHeading(marks.length, title, lineStart, marks.length + gap.length, lineStop))
    } else if (whole === '---') {
      // Below text, it makes a heading of the text.
      if (from) return undefined
      nodes.push({ type: 'thematicBreak', position: { start: lineStart, end: lineStop } })
    } else {
      from ??= lineStart
      to = lineStop
    }
    at = skipLineEnd(source, at + whole.length)
    if (isBlankLine(source, at)) {
      closeParagraph()
      return { nodes, end: start + lineStop.offset }
    }
  }
}

type Place = Point & { readonly offset: number }

const toPlace = ({ line, column, offset }: Place, further: number): Place => ({
  line,
  column: column + further,
  offset: offset + further,
})

interface PlacedText extends Pick<MarkedText, 'marks'> {
  readonly from: Place
  readonly to: Place
}

function toParagraph(
  source: string,
  start: number,
  from: Place,
  to: Place,
  marked: readonly PlacedText[],
): RootContent {
  const children: PhrasingContent[] = []
  const addText = (first: Place, last: Place, to: PhrasingContent[]): void => {
    const value = source.slice(start + first.offset, start + last.offset)
    if (value !== '') to.push({ type: 'text', value, position: { start: first, end: last } })
  }
  let at = from
  for (const one of marked) {
    addText(at, one.from, children)
    const inside: PhrasingContent[] = []
    addText(toPlace(one.from, one.marks), toPlace(one.to, -one.marks), inside)
    const type = one.marks === 1 ? 'emphasis' : 'strong'
    children.push({ type, children: inside, position: { start: one.from, end: one.to } })
    at = one.to
  }
  addText(at, to, children)
  return { type: 'paragraph', children, position: { start: from, end: to } }
}

function toHeading(marks: number, value: string, start: Place, textFrom: number, end: Place): RootContent {
  const depth = marks as 1 | 2 | 3 | 4 | 5 | 6
  const position = { start, end }
  if (value === '') return { type: 'heading', depth, children: [], position }
  const children = [{ type: 'text' as const, value, position: { start: toPlace(start, textFrom), end } }]
  return { type: 'heading', depth, children, position }
}

/** No return stands here without its line feed. */
function skipLineEnd(source: string, at: number): number {
  if (source[at] === '\r') return at + 2
  return source[at] === '\n' ? at + 1 : at
}

const blankLine = /[ \t]*(?:[\r\n]|$)/y

/** Whether the line at an offset holds nothing; so does the end of the source. */
function isBlankLine(source: string, at: number): boolean {
  blankLine.lastIndex = at
  return blankLine.test(source)
}
