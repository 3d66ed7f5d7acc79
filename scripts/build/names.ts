// Which words are names to a reader, though WordNet has them in small letters too: `jimmy` is a burglar's bar, and a boy.

import nlp from 'compromise'
import type { ChildWords } from './children.ts'
import type { WordNet } from './wordnet.ts'

/** A word met less often than this in small letters is no word to a child where many bear it as a name. Tags of WordNet. */
const MOST_TAGS_OF_NAME = 2

/** A name is met this many times as often as the word: `august`, but not `west`. */
const MOSTLY_NAME = 3

/** Whether lists leave the word out: a name, a day or a month, which has no place there in small letters. */
export function isMostlyName(word: string, wordnet: WordNet, children: ChildWords): boolean {
  if (!children.isCapital(word)) return false
  const senses = wordnet.senses(word)
  const isSmall = (sense: (typeof senses)[number]): boolean =>
    wordnet.synset(sense.pos, sense.offset).words.includes(word)
  const tags = (isMeant: boolean): number =>
    senses.filter((sense) => isSmall(sense) === isMeant).reduce((sum, sense) => sum + sense.tags, 0)
  if (senses.length > 0 && !senses.some(isSmall)) return true
  if (tags(true) * MOSTLY_NAME < tags(false)) return true
  return children.ownGrade(word) < 2 && tags(true) <= MOST_TAGS_OF_NAME && isBorne(word)
}

/** Whether people bear it, by the names that npm `compromise` knows. */
function isBorne(word: string): boolean {
  const name = word.charAt(0).toUpperCase() + word.slice(1)
  const found = nlp(`I saw ${name}`).match(name)
  return found.has('#FirstName') || found.has('#LastName')
}
