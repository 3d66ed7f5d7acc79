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

/** What the search knows of the word. */
export interface Leaving {
  readonly word: string
  /** Undefined for a little word, and where the sentence does not tell it. */
  readonly part: PartOfSpeech | undefined
  readonly place: Surroundings
}

export function canGo({ word, part, place }: Leaving, standIns: StandIns, factsOf: FactsOf): boolean {
  const signs = [...standIns.leaves(word, 'form'), ...(part === undefined ? [] : standIns.leaves(word, part))]
  if (signs.some((sign) => toTest(sign)(place, factsOf))) return true
  return (
    isManner(word, factsOf) && ['md', 'en', 'pa', 'st', 'vb'].some((sign) => LEAVES[sign]?.(place, factsOf) === true)
  )
}

/** Whether there is a sentence in which it could go. */
export const mayGo = (word: string, facts: WordFacts | undefined, standIns: StandIns, factsOf: FactsOf): boolean =>
  standIns.leaves(word, 'form').length > 0 ||
  facts?.partsOfSpeech.some((part) => standIns.leaves(word, part).length > 0) === true ||
  isManner(word, factsOf)

const isManner = (word: string, factsOf: FactsOf): boolean => {
  if (!/[a-z]{3}ly$/.test(word) || NEEDED.has(word)) return false
  const facts = factsOf(word)
  return facts?.main === 'adverb' && facts.partsOfSpeech.length === 1
}
