// `read`, whose past is spelt like its present: the step that looks for the tense.

import { hasHelper } from './clause.ts'
import type { Classes } from './evidence.ts'
import { beforeIndex, findBefore, isMark, type Place } from './place.ts'
import { isSpoken } from './speech.ts'
import type { Tags } from './tagged.ts'
import { findContextTense, findFollowingTense, findJoinedTense, findTense, hasPastTime, type Tense } from './tense.ts'
import type { Heteronym } from './types.ts'
import { ADJECTIVES, CLAUSE_JOINS, DETERMINERS, has } from './vocabulary.ts'

/**
 * For `read`, the form of the tense that sentence and story show. Where its neighbours say nothing of its class, the clause
 * must hold no helper that could govern it (`did the children read`).
 */
export function findTenseForm(
  row: Heteronym,
  place: Place,
  classes: Classes | undefined,
  before: readonly (readonly string[])[] | undefined,
  tags?: Tags,
): Tense | undefined {
  if (row.word !== 'read' || (classes && !classes.includes('verb'))) return undefined
  if (isOrder(place)) return 'present'
  if (isCustom(place)) return 'present'
  const joined = findJoinedTense(place, tags)
  if (joined) return joined
  if (!classes && hasHelper(place)) return undefined
  if (!classes && isBehindPerson(place)) return 'past'
  const own = findTense(place) ?? (tags && findFollowingTense(place, tags))
  const story = before && !isSpoken(place.words, place.index) ? findContextTense(before) : undefined
  return own && story && own !== story ? undefined : (own ?? story)
}

/** One person, whose present has its -s: `Mother read to us every night`. */
const PERSONS = new Set(
  'aunt auntie boy brother child cousin dad daddy father girl gran grandfather grandma grandmother grandpa granny king lady man mother mum mummy papa mamma princess prince queen sister teacher uncle woman'.split(
    ' ',
  ),
)

/** Not `Mother and Father read`, nor `I saw Mother read`. */
function isBehindPerson(place: Place): boolean {
  const at = beforeIndex(place)
  if (!PERSONS.has(place.words[at] ?? '')) return false
  let lead = at - 1
  while (has(DETERMINERS, place.words[lead]) || has(ADJECTIVES, place.words[lead])) lead--
  return isMark(place.words[lead]) || (has(CLAUSE_JOINS, place.words[lead]) && place.words[lead] !== 'and')
}

/** `as you may think when you read it`: what anybody does. */
function isCustom(place: Place): boolean {
  const lead = findBefore(place, 2)
  return findBefore(place) === 'you' && (lead === 'when' || lead === 'whenever' || lead === 'if') && !hasPastTime(place)
}

/** `Read with me`: a sentence does not begin with a past. */
function isOrder(place: Place): boolean {
  const before = findBefore(place)
  return before === undefined || before === '“'
}
