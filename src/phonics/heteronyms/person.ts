// Whether what stands before a word is one person, whose present has its -s.

import type { Place } from './place.ts'
import { beforeIndex, isMark, isName } from './place.ts'
import { isPast, isPresent } from './verbs.ts'
import { ADJECTIVES, CLAUSE_JOINS, DETERMINERS, has, MODALS, PREPOSITIONS } from './vocabulary.ts'

/** Before a name. */
export const TITLES: ReadonlySet<string> = new Set(
  'miss mr mrs ms dr sir aunt auntie uncle brother sister father mother king queen prince princess captain chief old little big'.split(
    ' ',
  ),
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
  return isPersonFirst(place, at) || isPersonWithMore(place, at)
}

function isPersonFirst(place: Place, at: number): boolean {
  if (!isName(place, at) && !PERSONS.has(place.words[at] ?? '')) return false
  let lead = at - 1
  while ([ADJECTIVES, DETERMINERS, TITLES].some((group) => has(group, place.words[lead]))) lead--
  return isMark(place.words[lead]) || (has(CLAUSE_JOINS, place.words[lead]) && place.words[lead] !== 'and')
}

const LONGEST = 6

/** `Brother Joe at the mill read it`, `the king of the frogs read it`. */
function isPersonWithMore(place: Place, last: number): boolean {
  for (let at = last; at > Math.max(0, last - LONGEST); at--) {
    const word = place.words[at]
    if (isMark(word) || isPast(word) || isPresent(word) || [CLAUSE_JOINS, MODALS].some((group) => has(group, word)))
      return false
    if (has(PREPOSITIONS, word)) return isPersonFirst(place, at - 1)
  }
  return false
}
