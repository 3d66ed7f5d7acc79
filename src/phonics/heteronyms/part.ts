// The look-alike in a word: the word itself, or a part of one with hyphens, `wind-up` and `ten-minute`.

import type { Heteronym, Heteronyms } from './types.ts'

/** A look-alike, and where its letters stand in the word. */
export interface LookAlike {
  readonly row: Heteronym
  readonly from: number
  readonly to: number
}

/** Of several parts that are look-alikes, the first. */
export function findLookAlike(heteronyms: Heteronyms, word: string): LookAlike | undefined {
  const row = heteronyms.find(word)
  if (row !== undefined) return { row, from: 0, to: word.length }
  if (!word.includes('-')) return undefined
  let from = 0
  for (const part of word.split('-')) {
    const ofPart = heteronyms.find(part)
    if (ofPart !== undefined) return { row: ofPart, from, to: from + part.length }
    from += part.length + 1
  }
  return undefined
}

/** A sentence in which the parts of the word at `index` stand as words of their own, and where its look-alike stands then. */
export function cutAtHyphens(
  sentence: readonly string[],
  index: number,
  { from }: LookAlike,
): { readonly sentence: readonly string[]; readonly index: number } {
  const word = sentence[index] ?? ''
  if (!word.includes('-')) return { sentence, index }
  const parts = word.split('-').filter((part) => part !== '')
  const before = word
    .slice(0, from)
    .split('-')
    .filter((part) => part !== '').length
  return { sentence: [...sentence.slice(0, index), ...parts, ...sentence.slice(index + 1)], index: index + before }
}

/** The form that the other parts of a word with hyphens tell: a `wind-up` toy, a `ten-minute` walk. */
export function findHyphened({ forms }: Heteronym, word: string): string | undefined {
  if (!word.includes('-')) return undefined
  const isIn = (pattern: string): boolean => new RegExp(`^${pattern.replaceAll('*', '.+')}$`).test(word)
  return forms.find(({ hyphened }) => hyphened?.split(' ').some(isIn))?.form
}
