// In which meanings a word may be offered, or looked for: the usual ones, and none that is unkind.

import { type Branch, toOffsets } from './branches.ts'
import type { Sense, WordNet, WordNetPos } from './wordnet.ts'

/** Meanings used less often than this, of all uses of the word, would bring odd neighbours. */
const LEAST_SHARE = 0.12
const MOST_SENSES = 4

/** A person below one of these is called names. Lemma, noun sense, reason. Sorted. */
export const UNKIND_BRANCHES = [
  ['bad person', 1, 'a quack, a crook, a rat'],
  ['simpleton', 1, 'a nut, a goose'],
  ['unpleasant person', 1, 'a pig, a brat'],
] as const satisfies readonly Branch[]

/** What a person is called by after something else: a doll, a chick, a cow. */
const NOT_PERSONS: ReadonlySet<string> = new Set(['animal', 'artifact', 'body', 'food', 'plant', 'substance'])

export type UsualSenses = (word: string, pos: WordNetPos) => readonly Sense[]

export function openUsualSenses(wordnet: WordNet): UsualSenses {
  const unkind = toOffsets(UNKIND_BRANCHES, wordnet)
  const isBelow = (offset: number): boolean =>
    unkind.has(offset) || wordnet.synset('noun', offset).pointers.some((p) => p.symbol === '@' && isBelow(p.offset))
  const isKind = (sense: Sense, first: Sense | undefined): boolean => {
    if (sense.pos !== 'noun' || sense.lexFile !== 'person') return true
    return !NOT_PERSONS.has(first?.lexFile ?? '') && !isBelow(sense.offset)
  }
  const isUncapped = (sense: Sense, word: string): boolean =>
    wordnet.synset(sense.pos, sense.offset).words.includes(word)
  return (word, pos) => {
    const senses = wordnet.senses(word, pos)
    const all = senses.reduce((sum, sense) => sum + sense.tags + 1, 0)
    return senses
      .filter((sense) => isUncapped(sense, word) && isKind(sense, senses[0]))
      .filter((sense, i) => i === 0 || sense.tags + 1 >= LEAST_SHARE * all)
      .slice(0, MOST_SENSES)
  }
}
