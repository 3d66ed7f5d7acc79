// Whether what stands before a word is one person, whose present has its -s.

import type { Place } from './place.ts'
import { beforeIndex, isMark, isName } from './place.ts'
import { ADJECTIVES, CLAUSE_JOINS, DETERMINERS, has } from './vocabulary.ts'

const TITLES = new Set(
  'miss mr mrs ms dr sir aunt auntie uncle king queen prince princess captain chief old little big'.split(' '),
)
/** One person, whose present has its -s: `Mother read to us every night`. */
const PERSONS = new Set(
  'aunt auntie boy brother child cousin dad daddy father girl gran grandfather grandma grandmother grandpa granny king lady man mother mum mummy papa mamma princess prince queen sister teacher uncle woman'.split(
    ' ',
  ),
)

/** Not `Mother and Father read`, nor `I saw Mother read`. */
export function isBehindPerson(place: Place): boolean {
  const at = beforeIndex(place)
  if (!isName(place, at) && !PERSONS.has(place.words[at] ?? '')) return false
  let lead = at - 1
  while ([ADJECTIVES, DETERMINERS, TITLES].some((group) => has(group, place.words[lead]))) lead--
  return isMark(place.words[lead]) || (has(CLAUSE_JOINS, place.words[lead]) && place.words[lead] !== 'and')
}
