// Finds sentences and words with retext's English parser, set up for the text of early readers.

import type { Paragraph, Sentence } from 'nlcst'
import { ParseEnglish } from 'parse-english'
import { endsInTitle } from './abbreviations.ts'
import type { Lines } from './lines.ts'
import { mendParagraph } from './mend.ts'
import { arePlainSentences, hasInnerMark } from './plain-english.ts'
import { toSpan } from './span.ts'
import type { TextMap } from './text-map.ts'
import { tokenize } from './tokens.ts'

/** The parser's time grows with the square of the length, so longer text is given to it in parts. */
export const longest = 6000

/**
 * The sentences of a block, and the white space between them. Nodes get their places in the source where `lines` are
 * given; our own checks need none, and places take half of the memory.
 */
export function parseEnglish(map: TextMap, lines?: Lines): Paragraph {
  const children: Paragraph['children'] = []
  for (let from = 0; from < map.text.length; ) {
    const to = findCut(map.text, from)
    for (const child of parsePart(map, from, to, lines).children) children.push(child)
    from = to
  }
  return { type: 'ParagraphNode', children, ...toSpan(children) }
}

function parsePart(map: TextMap, from: number, to: number, lines?: Lines): Paragraph {
  const parser = new ParseEnglish()
  const text = map.text.slice(from, to)
  parser.tokenize = () => tokenize(map, from, to, lines)
  if (!hasInnerMark(text)) parser.tokenizeSentencePlugins = []
  const isShort = arePlainSentences(text)
  parser.tokenizeParagraphPlugins = isShort ? [liftSpace] : paragraphSteps
  const paragraph = parser.tokenizeParagraph(text)
  if (!isShort) mendParagraph(paragraph)
  return paragraph
}

/**
 * The parser's first step keeps a full stop in words of lists that are not for children (`sat`, `sun`, `in`, Northants), and
 * took `He ran in.“Go!”` for one sentence. `mendParagraph` has a list of its own; and the expressions of that step take a
 * millisecond to make.
 */
const paragraphSteps = ParseEnglish.prototype.tokenizeParagraphPlugins.slice(1)

/** White space between sentences stands beside them, not in them. */
function liftSpace(paragraph: Paragraph): void {
  const children: Paragraph['children'] = []
  for (const sentence of paragraph.children as Sentence[]) {
    const [first, second] = sentence.children
    if (first?.type === 'WhiteSpaceNode') {
      children.push(first)
      sentence.children.shift()
      if (sentence.position && second?.position) sentence.position.start = second.position.start
    }
    if (sentence.children.length > 0) children.push(sentence)
  }
  paragraph.children = children
}

/** Where the next part ends: after a sentence, else at white space, else anywhere. */
function findCut(text: string, from: number): number {
  if (text.length - from <= longest) return text.length
  const part = text.slice(from, from + longest)
  const sentenceEnd = /[.!?…]["'”’)\]]*\s+(?=["'“‘([]*\p{Lu})/gu
  sentenceEnd.lastIndex = longest >> 1
  for (let found = sentenceEnd.exec(part); found; found = sentenceEnd.exec(part)) {
    if (!endsInTitle(part.slice(0, found.index))) return from + found.index + found[0].length
  }
  const space = part.search(/\s\S*$/)
  if (space > 0) return from + space
  return from + (/[\uD800-\uDBFF]$/.test(part) ? longest - 1 : longest)
}
