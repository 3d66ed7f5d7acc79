// Which words can be a part of a compound: words in use, none that is an ending or a beginning.

import { isLittleWord } from '../../src/words/little.ts'
import { frequencyRank } from './frequency.ts'
import type { WordNet } from './wordnet.ts'

const IN_USE = 15_000
export const LEAST_LETTERS = 3

/** Words that stand where an ending or a beginning stands, and are no part of a compound: each with a word that shows it. */
const AFFIXES: ReadonlyMap<string, string> = new Map([
  ['ability', 'dependability'],
  ['able', 'reachable'],
  ['age', 'spillage'],
  ['ally', 'plastically'],
  ['ant', 'retreatant'],
  ['con', 'conform'],
  ['counter', 'counteract'],
  ['ding', 'sledding'],
  ['hood', 'childhood'],
  ['ion', 'champion'],
  ['king', 'baking'],
  ['less', 'harmless'],
  ['let', 'booklet'],
  ['ling', 'duckling'],
  ['men', 'regimen'],
  ['miss', 'dismiss'],
  ['ness', 'dampness'],
  ['per', 'scamper'],
  ['ping', 'stamping'],
  ['pro', 'protest'],
  ['rep', 'represent'],
  ['ring', 'scaring'],
  ['ted', 'wanted'],
  ['ting', 'planting'],
  ['ton', 'simpleton'],
  ['trans', 'transplant'],
  ['ward', 'homeward'],
  ['way', 'anyway'],
])

export function isPart(word: string, wordnet: WordNet): boolean {
  if (word.length < LEAST_LETTERS || AFFIXES.has(word) || isLittleWord(word) || wordnet.isName(word)) return false
  if ((frequencyRank.get(word) ?? Infinity) > IN_USE) return false
  return wordnet.isNoun(word) || wordnet.isVerb(word) || wordnet.isAdjective(word)
}
