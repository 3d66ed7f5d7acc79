// What several clues ask of the tagger's word for a place.

import { hasObject } from './clue.ts'
import type { Classes } from './evidence.ts'
import { isEdge, isMark, type Place } from './place.ts'
import { isVerbal } from './verbs.ts'
import * as is from './vocabulary.ts'
import { has } from './vocabulary.ts'

export type Tags = readonly ReadonlySet<string>[]
export type TaggedClue = (place: Place, tags: Tags, inflected: boolean) => Classes | undefined

/** Whether the word at a place has a tag; beyond the edge of the sentence none has. */
export const hasTag = (tags: Tags, at: number, tag: string): boolean => tags[at]?.has(tag) === true
export const isNoun = (tags: Tags, at: number): boolean => hasTag(tags, at, 'Noun') && !hasTag(tags, at, 'Pronoun')
export const isPlural = (tags: Tags, at: number, word: string): boolean =>
  hasTag(tags, at, 'Plural') || is.PLURALS.has(word)
export const isJoin = (word: string | undefined): boolean => word === 'and' || word === 'or'
export const isVerbWord = (words: readonly string[], tags: Tags, at: number): boolean =>
  hasTag(tags, at, 'Verb') || isVerbal(words[at])

/** Behind these an object may be missing: `the play that the school will present at once`. */
export const GAPS: ReadonlySet<string> = new Set('as how than that to what where which who whom whose'.split(' '))

/** A verb behind the place, in the clause. */
export function hasVerbAfter({ words, index }: Place, tags: Tags): boolean {
  for (let at = index + 1; !isMark(words[at]) && !has(is.CLAUSE_JOINS, words[at]); at++)
    if (isVerbWord(words, tags, at)) return true
  return false
}

/** True where the noun at `at` is plural, or the second of two joined by `and`. */
export function isPluralAt(place: Place, tags: Tags, at: number): boolean {
  if (hasTag(tags, at, 'Plural') || has(is.PLURALS, place.words[at])) return true
  const joined = place.words.slice(Math.max(0, at - 3), at).includes('and')
  return joined && tags.slice(Math.max(0, at - 5), at - 1).some((tag) => tag.has('Noun'))
}

/** True where none of the tags stands between the start of the clause and the noun at `at`, which is then its subject. */
export function opensClause(place: Place, tags: Tags, at: number, barred: readonly string[]): boolean {
  for (let i = at - 1; i >= 0; i--) {
    const word = place.words[i]
    if (isMark(word) || has(is.CLAUSE_JOINS, word)) return true
    if (barred.some((tag) => hasTag(tags, i, tag))) return false
  }
  return true
}

/** What can come after a verb: its object, a phrase, an adverb or the end, but no further verb. */
export function canFollowVerb(place: Place, tags: Tags): boolean {
  if (isEdge(place.words[place.index + 1]) || hasObject(place)) return true
  return !hasTag(tags, place.index + 1, 'Verb') || hasTag(tags, place.index + 1, 'Particle')
}

/** In the clause of the place; `and` may join things: `won the egg and spoon contest`. */
export function hasOtherVerb({ words, index }: Place, tags: Tags): boolean {
  const isEnd = (word: string | undefined): boolean => isMark(word) || (has(is.CLAUSE_JOINS, word) && word !== 'and')
  let [start, end] = [index, index]
  while (!isEnd(words[start - 1])) start--
  while (!isEnd(words[end + 1])) end++
  return tags.slice(start, end + 1).some((tag, i) => start + i !== index && tag.has('Verb') && !tag.has('Particle'))
}
