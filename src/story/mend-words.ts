// Mends words that the parser glued to their marks: `sat.`, `sat.The`, `wait-`, `&Sam`.

import type { SentenceContent, Word, WordContent } from 'nlcst'
import { INNER_APOSTROPHES } from '../apostrophe.ts'
import { toStopKind } from './abbreviations.ts'
import { toSpan } from './span.ts'

/** The text of a word node. */
export function toWordText(word: Word): string {
  let text = ''
  for (const child of word.children) text += child.value
  return text
}

const apostrophe = new RegExp(`^[${INNER_APOSTROPHES}]$`)
const doubtful = new RegExp(`^[${INNER_APOSTROPHES}](?:e[mr]|im|cause)$`, 'i')
const innerMark = /^(?:['’ʼ\-‐‑·‧@]|_+)$/
const digits = /^\p{N}+$/u

/** Whether every mark in a word belongs to it, so that nothing needs mending. */
export function isSoundWord(word: Word): boolean {
  const { children } = word
  return children.every((_, index) => belongs(children, index)) && !isDoubtful(word)
}

/** `'Er`, `'Em`, `'Im`: a dropped letter, or a quote that opens on a word. */
const isDoubtful = (word: Word): boolean => doubtful.test(toWordText(word))

/** Whether a word starts with a mark that could as well be an opening quote. */
export function hasDoubtfulQuote(node: SentenceContent): node is Word {
  return node.type === 'WordNode' && isDoubtful(node)
}

/** Cut a word at the marks that do not belong to it. */
export function mendWord(word: Word): SentenceContent[] {
  const result: SentenceContent[] = []
  let current: WordContent[] = []
  word.children.forEach((child, index) => {
    if (belongs(word.children, index)) {
      current.push(child)
      return
    }
    if (current.length > 0) result.push(toWord(current))
    current = []
    result.push(child as SentenceContent)
  })
  if (current.length > 0) result.push(toWord(current))
  return result
}

export function toWord(children: WordContent[]): Word {
  return { type: 'WordNode', children, ...toSpan(children) }
}

function belongs(children: readonly WordContent[], index: number): boolean {
  const child = children[index] as WordContent
  if (child.type === 'TextNode') return true
  const before = children[index - 1]
  const after = children[index + 1]
  if (before?.type === 'TextNode' && after?.type === 'TextNode') return joins(before.value, child.value, after.value)
  // 'tis, ol', 'n'
  if (apostrophe.test(child.value)) return (before ?? after)?.type === 'TextNode'
  if (child.value !== '.' || after !== undefined) return false
  const kind = toStopKind(toTextBefore(children, index))
  return kind !== 'word' && kind !== 'initial'
}

function joins(before: string, mark: string, after: string): boolean {
  if (innerMark.test(mark)) return true
  const isNumber = digits.test(before) && digits.test(after)
  if (mark === '.') return isNumber || (before.length === 1 && after.length === 1)
  if (mark === '&') return before.length === 1 && after.length === 1
  return isNumber && (mark === ':' || mark === '/')
}

function toTextBefore(children: readonly WordContent[], index: number): string {
  return toWordText({ type: 'WordNode', children: children.slice(0, index) })
}
