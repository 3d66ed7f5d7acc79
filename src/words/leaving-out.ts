// Whether a sentence does without a word: it stays good English and says nearly the same. The table of stand-ins says so of a
// word by `-`, with the condition under which it can go; adverbs in -ly that tell how something is done go by rule.

import { CONDITIONS } from './conditions/index.ts'
import type { PartOfSpeech, WordFacts } from './facts.ts'
import { keep } from './keep.ts'
import { LEAVES } from './leaves/index.ts'
import type { StandIns } from './stand-ins.ts'
import { type FactsOf, type Surroundings, toSet } from './surroundings.ts'
import { type PlaceTest, toPlaceTest } from './where.ts'

/** -ly words that say more than how: without them the sentence says something else. Common practice, no source. */
const NEEDED = toSet(
  'badly barely daily differently early exactly fully hardly likely monthly mostly nearly only partly rarely scarcely seldom weekly wrongly yearly',
)

/** What can go may be told by the conditions of what can stand, too. */
const SIGNS: Readonly<Record<string, PlaceTest>> = { ...CONDITIONS, ...LEAVES }

/** @throws RangeError for a sign that stands for no condition */
const toTest = keep((where): PlaceTest => toPlaceTest(where, SIGNS))

/** Where sentences do without a word. */
export interface Leaving {
  /** Whether there is a sentence in which it could go. */
  readonly mayGo: boolean
  /** @param part undefined for a little word, and where the sentence does not tell it */
  canGo(part: PartOfSpeech | undefined, place: Surroundings): boolean
}

export const NO_LEAVING: Leaving = { mayGo: false, canGo: () => false }

/** What the table says of a word, looked up once. */
export function findLeaving(word: string, facts: WordFacts | undefined, standIns: StandIns, factsOf: FactsOf): Leaving {
  const ofForm = standIns.leaves(word, 'form').map(toTest)
  const ofParts = (facts?.partsOfSpeech ?? []).map((part) => ({ part, tests: standIns.leaves(word, part).map(toTest) }))
  const always = [...ofForm, ...(isManner(word, factsOf) ? MANNER : [])]
  if (always.length === 0 && ofParts.every(({ tests }) => tests.length === 0)) return NO_LEAVING
  return {
    mayGo: true,
    canGo(part, place) {
      const holds = (test: PlaceTest): boolean => test(place, factsOf)
      return always.some(holds) || ofParts.some((one) => one.part === part && one.tests.some(holds))
    },
  }
}

/** Where a word in -ly that says how can go. */
const MANNER = ['md', 'en', 'pa', 'st', 'vb'].map(toTest)

const isManner = (word: string, factsOf: FactsOf): boolean => {
  if (!/[a-z]{3}ly$/.test(word) || NEEDED.has(word)) return false
  const facts = factsOf(word)
  return facts?.main === 'adverb' && facts.partsOfSpeech.length === 1
}
