// Where a sentence does without a word that opens, joins or ends a clause.

import { hasLetter } from '../../letter-kinds.ts'
import {
  DEGREES,
  DETERMINERS,
  type FactsOf,
  isAfterLink,
  isMark,
  nextOf,
  OBJECTS,
  PREPOSITIONS,
  prevOf,
  SUBJECTS,
} from '../surroundings.ts'
import type { PlaceTest } from '../where.ts'
import { isMeasured, isNegated } from './shared.ts'

/** After these a clause needs no `that`. */
const SAYS =
  /^(?:afraid|believe|believed|bet|feel|feels|felt|find|found|glad|guess|happy|hear|heard|hope|hoped|knew|know|knows|promised|realised|realized|said|saw|say|says|see|sees|so|sorry|sure|think|thinks|thought|wish|wished)$/

/** Whoever does something, or what stands before it. */
const opensClause = (next: string | undefined, factsOf: FactsOf): boolean =>
  next !== undefined &&
  !isMark(next) &&
  next !== 'that' &&
  (SUBJECTS.has(next) || DETERMINERS.has(next) || factsOf(next)?.main === undefined)

export const CLAUSES: Readonly<Record<string, PlaceTest>> = {
  /** It opens its sentence, and whoever does something comes next: `So he sat.`, `Soon, a man came.` */
  st: ({ before, after }, factsOf) => {
    const at = after[0] === ',' ? 1 : 0
    if (!before.every(isMark)) return false
    const isNamed = factsOf(after[at] ?? '')?.main === 'noun' && factsOf(after[at + 1] ?? '')?.main === 'verb'
    return opensClause(after[at], factsOf) || isNamed
  },
  /** Between what joins two clauses and the second: `and then he sat`. */
  cn: ({ before, after }, factsOf) =>
    /^(?:and|but)$/.test(before.at(-1) ?? '') && opensClause(after[0] === ',' ? after[1] : after[0], factsOf),
  /** Before a clause that tells what was said or thought: `he felt that she was sad`. */
  tc: ({ before, after }, factsOf) => {
    const [prev = '', next = ''] = [before.at(-1), after[0]]
    const isTold = SAYS.test(prev) || (OBJECTS.has(prev) && /^(?:tell|tells|told)$/.test(before.at(-2) ?? ''))
    if (!isTold || after.length < 3) return false
    return SUBJECTS.has(next) || /^(?:her|his|my|our|the|their|your)$/.test(next) || factsOf(next)?.main === undefined
  },
  /** After `so big` or `such a cow`, before what came of it: `so big that he fell`. */
  so: ({ before, after }) => {
    const near = before.slice(-4)
    return (
      near.slice(0, -1).some((word) => /^(?:so|such)$/.test(word)) && !near.some(isMark) && SUBJECTS.has(after[0] ?? '')
    )
  },
  /** What opens what is said: `Oh, no!`, `Please come.` */
  ij: ({ before, after }, factsOf) => {
    if (!before.every(isMark)) return false
    const [next = ''] = after
    if (next === ',') return hasLetter(after[1] ?? '')
    return SUBJECTS.has(next) || /^(?:can|do|don't|let|let's|look)$/.test(next) || factsOf(next)?.main === 'verb'
  },
  /** At the end of its clause: `he sang loudly`. */
  en: (place) => {
    const prev = prevOf(place)
    if (prev === undefined || isMark(prev) || isMeasured(prev) || isAfterLink(place) || isNegated(place)) return false
    if (
      PREPOSITIONS.has(prev) ||
      /^(?:and|or|as|but|the|than)$/.test(prev) ||
      place.before.filter((word) => !isMark(word)).length < 2
    )
      return false
    const next = nextOf(place)
    return next === undefined || isMark(next) || /^(?:and|but|when|until|because)$/.test(next)
  },
  /** At the end of its clause, after `not` too: `had never seen it before`. */
  eg: (place) =>
    prevOf(place) !== undefined &&
    !isMark(prevOf(place) ?? '') &&
    (nextOf(place) === undefined || isMark(nextOf(place) ?? '')) &&
    !PREPOSITIONS.has(prevOf(place) ?? '') &&
    !DEGREES.has(prevOf(place) ?? '') &&
    !/^(?:and|or|the|as|long|day|night)$/.test(prevOf(place) ?? ''),
}
