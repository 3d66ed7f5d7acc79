// Breaks a text into lines as it is read aloud: no word is broken, `the` and `a` stay with their word, no word stands alone.

import type { Letters } from '../letters.ts'
import { type MarkedText, type Ranges, toWidth } from './words.ts'

export interface Line {
  readonly text: MarkedText
  /** Whether it ends the text or stands before a break that the writer made. */
  readonly isLast: boolean
}

interface Token {
  readonly from: number
  readonly to: number
  readonly width: number
}

/** Words that belong to the next one. */
const LEADING = new Set([
  'a',
  'an',
  'the',
  'i',
  'my',
  'his',
  'her',
  'to',
  'of',
  'in',
  'on',
  'at',
  'mr.',
  'mrs.',
  'ms.',
  'dr.',
])
const ARTICLES = new Set(['a', 'an', 'the'])

/** Costs of a bad break: the first is as good as forbidden. */
const PARTED = 1e6
const ALONE = 1e4
const LOOSE = 0.15

/** The lines of a text; undefined where a word is wider than a line. Newlines are breaks that the writer made. */
export function toLines(text: MarkedText, width: number, size: number, letters: Letters): readonly Line[] | undefined {
  const lines: Line[] = []
  let at = 0
  for (const part of text.text.split('\n')) {
    const whole = cut(text, at, at + part.length)
    at += part.length + 1
    const tokens = toTokens(whole, size, letters)
    if (tokens.some((token) => token.width > width + 1e-6)) return undefined
    const breaks = findBreaks(tokens, whole.text, width, letters.widthOf(' ', size))
    breaks.forEach((first, row) => {
      const next = breaks[row + 1] ?? tokens.length
      const [from, to] = [tokens[first]?.from ?? 0, tokens[next - 1]?.to ?? 0]
      if (to > from) lines.push({ text: cut(whole, from, to), isLast: next === tokens.length })
    })
  }
  return lines
}

/** A stretch of a text with its marks. */
export function cut({ text, marked, bold }: MarkedText, from: number, to: number): MarkedText {
  const move = (ranges: Ranges): Ranges =>
    ranges.flatMap(([start, end]): [number, number][] => {
      const [own, ownEnd] = [Math.max(start, from) - from, Math.min(end, to) - from]
      return ownEnd > own ? [[own, ownEnd]] : []
    })
  return { text: text.slice(from, to), marked: move(marked), ...(bold && { bold: move(bold) }) }
}

function toTokens(text: MarkedText, size: number, letters: Letters): readonly Token[] {
  return [...text.text.matchAll(/\S+/g)].map(({ 0: word, index }) => ({
    from: index,
    to: index + word.length,
    width: toWidth(cut(text, index, index + word.length), size, letters),
  }))
}

/** The first word of each line, by the least sum of costs over all ways to break. */
function findBreaks(tokens: readonly Token[], text: string, width: number, space: number): readonly number[] {
  const best: { cost: number; before: number }[] = [{ cost: 0, before: 0 }]
  const toWord = (at: number): string => text.slice(tokens[at]?.from ?? 0, tokens[at]?.to ?? 0).toLowerCase()
  for (let end = 1; end <= tokens.length; end++) {
    let [cost, before] = [Number.POSITIVE_INFINITY, end - 1]
    let filled = -space
    for (let first = end - 1; first >= 0; first--) {
      filled += space + (tokens[first]?.width ?? 0)
      if (filled > width + 1e-6) break
      const slack = (width - filled) / width
      const isEnd = end === tokens.length
      const own =
        (best[first]?.cost ?? 0) +
        1 +
        slack * slack * (isEnd ? LOOSE : 1) +
        (isEnd ? 0 : toBreakCost(toWord(end - 1))) +
        (end - first === 1 && tokens.length >= 4 ? ALONE : 0)
      if (own < cost) [cost, before] = [own, first]
    }
    best[end] = { cost, before }
  }
  const breaks: number[] = []
  for (let at = tokens.length; at > 0; at = best[at]?.before ?? 0) breaks.unshift(best[at]?.before ?? 0)
  return breaks
}

/** What it costs to end a line after a word. */
function toBreakCost(word: string): number {
  if (ARTICLES.has(word)) return PARTED
  if (LEADING.has(word)) return 0.5
  return /[.,;:!?]["”’']?$/.test(word) ? -0.2 : 0
}
