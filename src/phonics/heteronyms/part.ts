// The look-alike in a word: the word itself, a part of one with hyphens, `wind-up` and `ten-minute`, or what comes before the 's of an owner.

import type { Heteronym, Heteronyms } from './types.ts'

/** A look-alike, and where its letters stand in the word. */
export interface LookAlike {
  readonly row: Heteronym
  readonly from: number
  readonly to: number
}

/** `wind` in `wind's`: of the wind, or the wind is. */
const toOwner = (word: string): string | undefined => (/.['’]s$/i.test(word) ? word.slice(0, -2) : undefined)

/** Of several parts that are look-alikes, the first. */
export function findLookAlike(heteronyms: Heteronyms, word: string): LookAlike | undefined {
  const row = heteronyms.find(word)
  if (row !== undefined) return { row, from: 0, to: word.length }
  const owner = toOwner(word)
  const ofOwner = owner === undefined ? undefined : heteronyms.find(owner)
  if (owner !== undefined && ofOwner !== undefined) return { row: ofOwner, from: 0, to: owner.length }
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
  { from, to }: LookAlike,
): { readonly sentence: readonly string[]; readonly index: number } {
  const word = sentence[index] ?? ''
  if (!word.includes('-')) {
    if (to === word.length) return { sentence, index }
    return { sentence: [...sentence.slice(0, index), word.slice(from, to), ...sentence.slice(index + 1)], index }
  }
  const parts = word.split('-').filter((part) => part !== '')
  const before = word
    .slice(0, from)
    .split('-')
    .filter((part) => part !== '').length
  return { sentence: [...sentence.slice(0, index), ...parts, ...sentence.slice(index + 1)], index: index + before }
}

/** The form that the rest of the word tells: a `wind-up` toy, a `ten-minute` walk; the `wind's` howl, where one form alone is a thing. */
export function findToldByRest({ forms }: Heteronym, word: string): string | undefined {
  if (toOwner(word) !== undefined) {
    const [thing, ...others] = forms.filter(({ classes, written }) => classes.includes('noun') || written !== undefined)
    return others.length > 0 || thing?.written !== undefined ? undefined : thing?.form
  }
  if (!word.includes('-')) return undefined
  const isIn = (pattern: string): boolean => new RegExp(`^${pattern.replaceAll('*', '.+')}$`).test(word)
  return forms.find(({ hyphened }) => hyphened?.split(' ').some(isIn))?.form
}
