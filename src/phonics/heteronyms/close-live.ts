// `close` and `live` behind a verb, a particle or a place: near, or having one's home there.

import { type Clue, hasObject } from './clue.ts'
import { isThing } from './one-thing.ts'
import { findBefore, isEdge, isMark, type Place } from './place.ts'
import { isPast, isVerbal } from './verbs.ts'
import * as is from './vocabulary.ts'
import { has } from './vocabulary.ts'

const PARTICLES: ReadonlySet<string> = new Set('along back down in there together up'.split(' '))
const MANY: ReadonlySet<string> = new Set('many several some'.split(' '))
const DIRECT: ReadonlySet<string> = new Set('him me them us'.split(' '))

/** What is shut, so that a bare `close` behind it, and before nothing, is done by it. */
const SHUT: ReadonlySet<string> = new Set(
  'beak curtains door doors eyes gate gates jaws lid lids mouth mouths petals shop shops shutters teeth window windows'.split(
    ' ',
  ),
)

const WHEN: ReadonlySet<string> = new Set(['after', 'again', 'as', 'before', 'if', 'when', 'while'])

/** `heard the front door close`, `when the teeth close`. */
export const shut: Clue = (place) => {
  const { words, index } = place
  const before = findBefore(place)
  const isLast = isEdge(words[index + 1]) || has(WHEN, words[index + 1])
  return words[index] === 'close' && has(SHUT, before) && isLast ? ['verb'] : undefined
}

/** `snuggle down close`, `stood close`, `wrap me close`: behind a verb that has its tense, a particle or its object. */
export const placed: Clue = (place) => {
  const before = place.words[place.index - 1]
  if (place.words[place.index] !== 'close' || hasObject(place)) return undefined
  const isAfterVerb = isPast(before) || /[a-z]{2}ing$/.test(before ?? '') || has(PARTICLES, before)
  return (isAfterVerb && !has(is.BE, before) && !has(is.HAVE, before) && !has(is.MODALS, before)) ||
    (has(DIRECT, before) && !isMark(place.words[place.index - 2]))
    ? ['adjective', 'adverb']
    : undefined
}

/** `the world in which the spirits of the sea live`, to the end of its clause. */
function isInWhich({ words, index }: Place): boolean {
  for (let at = index - 1; at > 0 && !isMark(words[at]); at--) {
    if (words[at] === 'which' && has(is.PREPOSITIONS, words[at - 1])) return true
  }
  return false
}

const BEHIND_MANY: ReadonlySet<string> = new Set(['and', 'of', 'that', 'who', 'with'])

/** `Under the bridge live trolls.`: where something is opens the sentence, many follow, and nothing else is a verb. */
function isBehindPlace({ words, index }: Place): boolean {
  const opens = has(is.ALL_PREPOSITIONS, words[0]) && has(is.DETERMINERS, words[1]) && index > 2
  const isClear = words.slice(0, index).every((word) => !isMark(word) && !isVerbal(word))
  if (!opens || !isClear || !isThing(words[index - 1] ?? '') || has(is.ADJECTIVES, words[index - 1])) return false
  const [many, next] = [words[index + 1], words[index + 2]]
  return is.looksPlural(many) && (isEdge(next) || has(BEHIND_MANY, next)) && !words.slice(index + 2).some(isVerbal)
}

/** `in the oak live three owls`: no number and no article stands behind what describes a thing; `Something live!` does not live. */
export const inverted: Clue = (place) => {
  const after = place.words[place.index + 1]
  if (place.words[place.index] !== 'live' || has(is.BE, findBefore(place))) return undefined
  if (place.index === 1 && isEdge(after) && /^(?:any|every|no|some)thing$/.test(place.words[0] ?? ''))
    return ['adjective']
  if (isEdge(after) && isInWhich(place)) return ['verb']
  if (isBehindPlace(place)) return ['verb']
  return has(is.NUMBERS, after) || has(MANY, after) || has(is.DETERMINERS, after) ? ['verb'] : undefined
}
