// Mends sentences that the parser merged or parted wrongly for the text of early readers.

import type { Paragraph, Sentence, SentenceContent, WhiteSpace, Word, WordContent } from 'nlcst'
import { isPlainText, startsWithCapital, startsWithSmall } from '../letter-kinds.ts'
import { toStopKind } from './abbreviations.ts'
import { hasDoubtfulQuote, isSoundWord, mendWord, toWord, toWordText } from './mend-words.ts'
import { toSpan } from './span.ts'

const stop = /^[.!?…‽]+$/
const closer = /^["'”’)\]»›.!?…‽]+$/
const opener = /^["'“‘([«‹]+$/
const dash = /^[-–—―]+$/

const isMark = (node: SentenceContent | undefined, pattern: RegExp): boolean =>
  node !== undefined && node.type !== 'WordNode' && pattern.test(node.value)

const isDash = (node: SentenceContent | undefined): boolean => isMark(node, dash)

const isFullStop = (node: SentenceContent | undefined): boolean => isMark(node, /^\.$/)

const isWord = (node: SentenceContent): node is Word => node.type === 'WordNode'

const isNoSpace = (node: SentenceContent): boolean => node.type !== 'WhiteSpaceNode'

/** Mend a paragraph in place. Most need nothing, and are looked at once. */
export function mendParagraph(paragraph: Paragraph): void {
  if (!paragraph.children.some((it) => it.type === 'SentenceNode' && needsMending(it))) return
  const { tokens, ends } = flatten(paragraph)
  for (let index = 0; index < tokens.length; index++) {
    const token = tokens[index]
    if (isMark(token, stop)) {
      const last = skipClosers(tokens, index)
      if (endsHere(tokens, index, last, ends)) ends.add(last)
      else if (isDash(tokens[last + 2])) ends.delete(last)
      index = last
    } else if (token?.type === 'WordNode' && keepsStop(token)) {
      if (endsAtKeptStop(token, tokens.slice(index + 1))) ends.add(index)
      else ends.delete(skipClosers(tokens, index))
    }
  }
  paragraph.children = toSentences(tokens, ends)
}

function needsMending(sentence: Sentence): boolean {
  const nodes = sentence.children
  if (isDash(nodes[0])) return true
  let hasStop = false
  for (const node of nodes) {
    if (node.type === 'WordNode') {
      if (hasStop || !isSoundWord(node) || keepsStop(node)) return true
    } else if (isMark(node, stop)) hasStop = true
  }
  // Prof⏐. Hen: an abbreviation that the parser does not know
  const before = nodes.at(-2)
  return hasStop && before?.type === 'WordNode' && toStopKind(toWordText(before)) !== 'word'
}

interface Flat {
  readonly tokens: SentenceContent[]
  /** Indexes of the tokens that end a sentence. */
  readonly ends: Set<number>
}

/** All tokens in a row, marks parted from words or joined to abbreviations, and the ends that the parser found. */
function flatten(paragraph: Paragraph): Flat {
  const loose: { readonly node: SentenceContent; readonly isEnd: boolean }[] = []
  for (const child of paragraph.children) {
    if (child.type === 'WhiteSpaceNode') loose.push({ node: child, isEnd: false })
    if (child.type !== 'SentenceNode') continue
    const nodes = child.children.flatMap((it) => (isWord(it) ? mendWord(it) : [it]))
    for (const [index, node] of nodes.entries()) loose.push({ node, isEnd: index === nodes.length - 1 })
  }
  const all = loose.map((it) => it.node)
  const tokens: SentenceContent[] = []
  const ends = new Set<number>()
  loose.forEach(({ node, isEnd }, index) => {
    const before = tokens.at(-1)
    if (isFullStop(node) && before?.type === 'WordNode' && joinsStop(before, tokens, all, index)) {
      tokens[tokens.length - 1] = toWord([...before.children, node as WordContent])
    } else if (hasDoubtfulQuote(node) && closesLater(all, index)) {
      const [mark, ...rest] = node.children
      tokens.push(mark as SentenceContent, toWord(rest))
    } else {
      tokens.push(node)
    }
    if (isEnd) ends.add(tokens.length - 1)
  })
  return { tokens, ends }
}

/** Whether a word has kept its full stop: `Mr.` */
function keepsStop(word: Word): boolean {
  return word.children.at(-1)?.value === '.'
}

function joinsStop(
  word: Word,
  before: readonly SentenceContent[],
  all: readonly SentenceContent[],
  index: number,
): boolean {
  const kind = toStopKind(toWordText(word))
  if (kind !== 'initial') return kind !== 'word'
  // Tom T. Hen, A. A. Hen: but `She got an A. Tam got a B.`
  const name = before.slice(0, -1).findLast(isNoSpace)
  const next = all.slice(index + 1, index + 3).find(isWord)
  const isAfterName = name?.type !== 'WordNode' || startsWithCapital(toWordText(name))
  return isAfterName && next !== undefined && startsWithCapital(toWordText(next))
}

/** A single quote further on, after a mark, closes the one that may have opened here. */
function closesLater(all: readonly SentenceContent[], index: number): boolean {
  return all.some((node, at) => at > index && isMark(node, /^['’]$/) && isMark(all[at - 1], /^[,.!?…]+$/))
}

function skipClosers(tokens: readonly SentenceContent[], index: number): number {
  let last = index
  while (isMark(tokens[last + 1], closer)) last++
  return last
}

function endsHere(tokens: readonly SentenceContent[], index: number, last: number, ends: Set<number>): boolean {
  const isGlued = tokens[last + 1]?.type !== 'WhiteSpaceNode'
  const at = isGlued ? last + 1 : last + 2
  const next = tokens[at]
  if (!tokens.slice(at, at + 50).some(isWord)) return false
  if (isCount(tokens, index, ends)) return false
  const word = isDash(next) ? tokens.slice(at + 1).find(isNoSpace) : next
  const isLower = word?.type === 'WordNode' && isSmall(toWordText(word))
  if (isGlued) return next?.type === 'WordNode' && !isLower
  // `The cat sat. the dog ran.` is two sentences; `“Stop.” said Tam`, `“Stop!” – said Tam` and `Stop! said Tam` are one.
  if (isLower) return last === index && isFullStop(tokens[index])
  return !isMark(next, /^[,;]$/)
}

/** `the`, `’tis` */
const isSmall = (word: string): boolean => startsWithSmall(/^['’]/.test(word) ? word.slice(1) : word)

const isNumberOrLetter = (word: string): boolean =>
  isPlainText(word) ? /^(?:\d{1,3}|[a-z])$/.test(word) : /^\p{N}{1,3}$/u.test(word)

// 1. Get a pan.
// ^ the number of a step, not a sentence
function isCount(tokens: readonly SentenceContent[], index: number, ends: Set<number>): boolean {
  const word = tokens[index - 1]
  if (word?.type !== 'WordNode' || !isNumberOrLetter(toWordText(word))) return false
  let at = index - 2
  while (tokens[at]?.type === 'WhiteSpaceNode') at--
  return at < 0 || ends.has(at)
}

function endsAtKeptStop(word: Word, behind: readonly SentenceContent[]): boolean {
  if (toStopKind(toWordText(word).slice(0, -1)) !== 'tail') return false
  const next = behind.find((it) => isNoSpace(it) && !isMark(it, opener))
  return next?.type === 'WordNode' && !isSmall(toWordText(next))
}

function toSentences(tokens: readonly SentenceContent[], ends: ReadonlySet<number>): Paragraph['children'] {
  const result: Paragraph['children'] = []
  let current: SentenceContent[] = []
  tokens.forEach((token, index) => {
    if (current.length === 0 && token.type === 'WhiteSpaceNode') {
      result.push(token)
      return
    }
    current.push(token)
    if (!ends.has(index) && index < tokens.length - 1) return
    const space = current.at(-1)?.type === 'WhiteSpaceNode' ? (current.pop() as WhiteSpace) : undefined
    result.push(toSentence(current))
    if (space) result.push(space)
    current = []
  })
  return result
}

function toSentence(children: SentenceContent[]): Sentence {
  return { type: 'SentenceNode', children, ...toSpan(children) }
}
