// `had used to`, `he’d used to`: what was done with a thing that stands before, or a habit told from later on.

import { isThing } from './one-thing.ts'
import { isMark, isName, type Place } from './place.ts'
import { isNoTool } from './used-thing.ts'
import { isPast, isPresent } from './verbs.ts'
import * as is from './vocabulary.ts'
import { has } from './vocabulary.ts'

/** What is no work with a tool. */
const STATES: ReadonlySet<string> = is.words('be believe belong fancy hate have know like live love think want wish')
/** What may itself be said, sung or given, so that the thing before is no tool. */
const TAKEN: ReadonlySet<string> = is.words('bring call do give hear read say sell send sing tell')
/** Whom one tells or asks has used nothing: `Meg told the cook he’d used to fish`. */
const TELL: ReadonlySet<string> = is.words('ask asked asks hears hopes remind reminded reminds tell tells thinks told')
const ANY_THING: ReadonlySet<string> = is.words('everything nothing one ones something what which')

export const isHad = (word: string | undefined): boolean => has(is.HAVE, word) || isShortHad(word)

const isShortHad = (word: string | undefined): boolean => /^(?:i|you|he|she|it|we|they|who)'d$/.test(word ?? '')

/** The form behind `had`, which stands at `had`; undefined where nothing before could have been used. */
export function findBehindHad(place: Place, had: number): 'verb' | 'used-to' | undefined {
  const { words, index } = place
  const work = words[index + 2]
  if (has(STATES, work)) return 'used-to'
  if (has(TAKEN, work)) return undefined
  let at = isShortHad(words[had]) ? had : had - 1
  if (words[at] === 'who' || words[at] === "who'd") return undefined
  const isOne = has(is.SUBJECTS, words[at]) || isShortHad(words[at]) || isName(place, at)
  while (isName(place, at) && isName(place, at - 1)) at--
  if (!isOne) while (has(is.ADJECTIVES, words[at - 1])) at--
  if (has(is.DETERMINERS, words[at - 1]) || has(is.PLURAL_DETERMINERS, words[at - 1])) at--
  const before = words[at - 1]
  if (before === 'that') return isUsable(place, at - 2) ? 'verb' : undefined
  if (has(ANY_THING, before)) return 'verb'
  return isUsable(place, at - 1) ? 'verb' : undefined
}

/** A thing with its `the`, or many things: it may have been used. */
function isUsable(place: Place, at: number): boolean {
  const word = place.words[at] ?? ''
  if (isMark(word) || isName(place, at) || isNoTool(word) || isPast(word) || isPresent(word) || has(TELL, word))
    return false
  // `they talked of tools they had used to dig`
  if (is.looksPlural(word) && has(is.PREPOSITIONS, place.words[at - 1])) return true
  let lead = at - 1
  while (lead > at - 5 && !isMark(place.words[lead]) && !isLed(place.words[lead])) lead--
  return isLed(place.words[lead]) && !has(TELL, place.words[lead - 1]) && (isThing(word) || is.looksPlural(word))
}

const isLed = (word: string | undefined): boolean => has(is.DETERMINERS, word) || has(is.PLURAL_DETERMINERS, word)
