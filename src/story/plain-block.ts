// Builds a block of plain text at once, without the parser: half of what it takes to read a story. The same block as by `toBlock`, which a
// property test holds it to.

import { mayKeepStop } from './abbreviations.ts'
import { createBlock, type Shared, toShared, toWord } from './block.ts'
import { longest } from './english.ts'
import type { Inlines } from './inlines.ts'
import { type TextMap, toSourceEnd, toSourceStart } from './text-map.ts'
import type { Block, Mark, Range, Sentence, Word } from './types.ts'

/**
 * Words of plain letters with apostrophes and hyphens inside, commas and their like, quotes before words and behind them; and stops of
 * which each either ends a sentence, since a capital follows, or stands in speech before a small letter: `“Stop!” said Tam.`
 */
const plain = new RegExp(
  `^["“]?[A-Za-z](?:${[
    '[A-Za-z, ]',
    '\\n(?!\\s)',
    "(?<=[A-Za-z])['’-](?=[A-Za-z])",
    // the “big” cat, “No,” said Tam
    '(?<=[ \\n])["“](?=[A-Za-z])',
    '(?<=[A-Za-z,])["”](?=$|[ \\n])',
    '(?<=[A-Za-z])[;:](?=[ \\n])',
    '(?<=[A-Za-z])(?:[–—](?=[A-Za-z])| [–—] (?=[A-Za-z]))',
    '[.!?](?=$|[ \\n]["“]?[A-Z]|["”](?:$|[ \\n](?:[a-z]|["“]?[A-Z])))["”]?',
  ].join('|')})*(?<!\\s)$`,
)

/** Undefined for text that is not plain, or that the parser is given in parts. */
export function toPlainBlock(
  kind: Block['kind'],
  map: TextMap,
  range: Range & Partial<Pick<Inlines, 'emphasis'>>,
  page: number,
): Block | undefined {
  const { text } = map
  if (text.length > longest || !plain.test(text) || mayKeepStop(text)) return undefined
  const sentences: Sentence[] = []
  const block = createBlock(kind, map, sentences, range)
  const shared = toShared(map, page)
  for (let at = 0; at < text.length; ) {
    const sentence = readSentence(block, at, shared)
    sentences.push(sentence)
    at = sentence.textEnd + 1
  }
  return block
}

function readSentence(block: Block, from: number, shared: Shared): Sentence {
  const { map } = shared
  const { text } = map
  const words: Word[] = []
  const marks: Mark[] = []
  let at = from
  for (let isOpen = true; isOpen && at < text.length; ) {
    const code = text.charCodeAt(at)
    if (isLetter(code)) {
      const end = findWordEnd(text, at)
      words.push(toWord(text.slice(at, end), 'word', at, end, shared))
      at = end
    } else {
      if (!isSpace(code)) marks.push(toMark(map, at))
      at++
      if (!isStop(code)) continue
      if (isCloser(text.charCodeAt(at))) marks.push(toMark(map, at++))
      // `“Stop!” said Tam.` goes on.
      isOpen = isSmall(text.charCodeAt(at + 1))
    }
  }
  return {
    block,
    textStart: from,
    textEnd: at,
    words,
    marks,
    start: toSourceStart(map, from),
    end: toSourceEnd(map, at),
  }
}

const toMark = (map: TextMap, at: number): Mark => ({
  text: map.text.charAt(at),
  start: toSourceStart(map, at),
  end: toSourceEnd(map, at + 1),
})

/** Apostrophes and hyphens stand inside words alone. */
function findWordEnd(text: string, from: number): number {
  let at = from + 1
  for (; at < text.length; at++) {
    const code = text.charCodeAt(at)
    if (!isLetter(code) && !isInner(code)) break
  }
  return at
}

const isSmall = (code: number): boolean => code >= 97 && code <= 122
const isLetter = (code: number): boolean => isSmall(code | 32)
const isSpace = (code: number): boolean => code === 32 || code === 10
const isInner = (code: number): boolean => code === 39 || code === 0x2019 || code === 45
const isStop = (code: number): boolean => code === 46 || code === 33 || code === 63
const isCloser = (code: number): boolean => code === 34 || code === 0x201d
