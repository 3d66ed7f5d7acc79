// `used` in a clause that has no thing of its own: `what she used to say`, `like you used`.

import { findBefore, isEdge, isMark, type Place } from './place.ts'
import { isVerbal } from './verbs.ts'
import { ADVERBS, has, RELATIVES, SUBJECTS, words as setOf } from './vocabulary.ts'

/** What is done with no tool: `what I used to do`, `what he used to say`. */
const TOOLLESS = setOf('call do feel hear say see tell')
const TIMES = setOf('daily every weekly')
const LIKENED = setOf('as like than')

/** `what she used to say to him`, `what he used to get daily`: the verb has no other object than `what`. */
export function isWhatWasDone(place: Place): boolean {
  const { words, index } = place
  if (findBefore(place, 2) !== 'what') return false
  const [verb, after] = [words[index + 2], words[index + 3]]
  return has(TOOLLESS, verb) || isEdge(after) || has(ADVERBS, after) || has(TIMES, after)
}

/** `doing everything like you used`, and `on paper like we used`: only the story tells. */
export const isLikened = (place: Place): boolean =>
  isEdge(place.words[place.index + 1]) && has(LIKENED, findBefore(place, 2)) && has(SUBJECTS, findBefore(place))

const MANNERS = setOf('how when where why')
const OF_THOUGHT = setOf('believe guess say suppose think')

/** `How do you think people used to keep warm?`, `That's how the clown used to begin`; what is asked for with `what` may be a tool. */
export function isHow({ words, index }: Place): boolean {
  const asked = words.slice(0, index - 4).some((word, at) => has(MANNERS, word) && isMark(words[at - 1]))
  if (has(OF_THOUGHT, words[index - 2]) && asked) return true
  const how = words.slice(0, index).lastIndexOf('how')
  const between = words.slice(how + 1, index)
  return how >= 0 && has(TELLS, words[how - 1]) && !between.some((word) => isVerbal(word) || has(RELATIVES, word))
}

const TELLS = setOf("is that's was it's")
