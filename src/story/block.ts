// Builds a block: its text, and the sentences, words and marks in it.

import type { Nodes, Paragraph, Sentence as SentenceNode } from 'nlcst'
import { INNER_APOSTROPHES } from '../apostrophe.ts'
import { hasLetterOrDigit, isPlainText } from '../letter-kinds.ts'
import { isInvisible, toVisible } from './characters.ts'
import { placeEmphasis } from './emphasis.ts'
import type { Inlines } from './inlines.ts'
import { toWordText } from './mend-words.ts'
import { type TextMap, toSourceEnd, toSourceStart } from './text-map.ts'
import type { Block, Mark, Range, Sentence, Word } from './types.ts'

/** What the words of a block share. */
export interface Shared {
  readonly map: TextMap
  readonly page: number
  readonly toSource: Word['toSource']
}

/** Build a block from its text and its parsed sentences. */
export function toBlock(
  kind: Block['kind'],
  map: TextMap,
  paragraph: Paragraph,
  range: Range & Partial<Pick<Inlines, 'emphasis'>>,
  page: number,
): Block {
  const sentences: Sentence[] = []
  const block = createBlock(kind, map, sentences, range)
  const shared = toShared(map, page)
  let at = 0
  for (const child of paragraph.children) {
    const length = nodeLength(child)
    if (child.type === 'SentenceNode') sentences.push(toSentence(child, at, at + length, block, shared))
    at += length
  }
  return block
}

/** @param sentences may still be empty */
export const createBlock = (
  kind: Block['kind'],
  map: TextMap,
  sentences: readonly Sentence[],
  range: Range & Partial<Pick<Inlines, 'emphasis'>>,
): Block => ({
  kind,
  text: map.text,
  sentences,
  emphasis: placeEmphasis(range.emphasis ?? [], map),
  toSource: (offset) => toSourceStart(map, offset),
  start: range.start,
  end: range.end,
})

export const toShared = (map: TextMap, page: number): Shared => ({
  map,
  page,
  // One method for all words of a block: a closure for each would be most of a word's memory.
  toSource(this: Word, first, last) {
    return toLetterRange(map, this.textStart, first, last)
  },
})

function toSentence(node: SentenceNode, from: number, to: number, block: Block, shared: Shared): Sentence {
  const { map } = shared
  const words: Word[] = []
  const marks: Mark[] = []
  let at = from
  for (const child of node.children) {
    if (child.type === 'WordNode') {
      const value = toWordText(child)
      addWord(value, at, shared, words, marks)
      at += value.length
    } else {
      if (child.type !== 'WhiteSpaceNode') addMarks(child.value, at, map, marks)
      at += child.value.length
    }
  }
  const start = toSourceStart(map, from)
  const end = toSourceEnd(map, to)
  return { block, textStart: from, textEnd: to, words, marks, start, end }
}

const plain = new RegExp(`^[A-Za-z${INNER_APOSTROPHES}-]*[A-Za-z]$`)
const numeral = new RegExp(`^[${INNER_APOSTROPHES}]?\\d`)

function addWord(value: string, from: number, shared: Shared, words: Word[], marks: Mark[]): void {
  if (plain.test(value)) {
    words.push(toWord(value, 'word', from, from + value.length, shared))
    return
  }
  const text = toVisible(value)
  // Mr.
  //   ^ a mark of its own for the child, though the parser keeps it in the word
  const bare = text.endsWith('.') ? text.slice(0, -1) : text
  if (!hasLetterOrDigit(bare)) {
    addMarks(value, from, shared.map, marks)
    return
  }
  let start = 0
  let end = value.length
  while (isInvisible(value.charAt(start))) start++
  while (isInvisible(value.charAt(end - 1))) end--
  if (bare !== text) {
    end = value.lastIndexOf('.')
    addMarks('.', from + end, shared.map, marks)
  }
  words.push(toWord(bare, toForm(bare), from + start, from + end, shared))
}

export function toWord(text: string, form: Word['form'], from: number, to: number, shared: Shared): Word {
  const { map, page, toSource } = shared
  return { text, form, textStart: from, page, start: toSourceStart(map, from), end: toSourceEnd(map, to), toSource }
}

function toForm(text: string): Word['form'] {
  if (numeral.test(text)) return 'numeral'
  if (isPlainText(text)) return 'word'
  if (new RegExp(`^[${INNER_APOSTROPHES}]?\\p{N}`, 'u').test(text)) return 'numeral'
  return /[^\p{Script=Latin}\p{Script=Common}\p{Script=Inherited}]/u.test(text) ? 'foreign' : 'word'
}

function toLetterRange(map: TextMap, wordStart: number, first: number, last: number): Range {
  const from = skipInvisible(map.text, wordStart, first)
  const start = toSourceStart(map, from)
  return { start, end: last > first ? toSourceEnd(map, skipInvisible(map.text, wordStart, last - 1) + 1) : start }
}

// sh⏐eep with a soft hyphen: letter 2 stands at offset 3
function skipInvisible(text: string, wordStart: number, letters: number): number {
  let at = wordStart
  for (let left = letters; at < text.length; at++) {
    if (isInvisible(text.charAt(at))) continue
    if (left-- === 0) break
  }
  return at
}

/** All that Unicode counts as punctuation, which leaves out `$+<=>^`|~`. */
const isPunctuation = (text: string): boolean =>
  isPlainText(text) ? /^[!-#%-*,-/:;?@[-\]_{}‐-‧]+$/.test(text) : /^\p{P}+$/u.test(text)

/** Runs stay whole where the run is the mark (`...`, `--`, an emoji); `!!` is two marks. */
function addMarks(value: string, from: number, map: TextMap, marks: Mark[]): void {
  if (toVisible(value) === '') return
  const isWhole = /^(?:\.+|-+|`+)$/.test(value) || !isPunctuation(toVisible(value))
  let at = from
  for (const part of isWhole ? [value] : value) {
    const start = toSourceStart(map, at)
    at += part.length
    if (!isInvisible(part) || isWhole) marks.push({ text: part, start, end: toSourceEnd(map, at) })
  }
}

function nodeLength(node: Nodes): number {
  if ('value' in node) return node.value.length
  let length = 0
  for (const child of node.children) length += nodeLength(child)
  return length
}
