// Conditions that ask what something is done to, and who does it.

import {
  endsClause,
  type FactsOf,
  nextOf,
  OBJECTS,
  opensObject,
  PARTICLES,
  PREPOSITIONS,
  prevOf,
  SUBJECTS,
  type Surroundings,
  toSet,
} from '../surroundings.ts'
import type { PlaceTest } from '../where.ts'
import { isOneDoer, TIMES } from './shared.ts'
import { SPEECH } from './speech.ts'

const PERSONS = toSet('her him me them us you')

/** What names one that has been spoken of. */
const isKnownOne = (word: string | undefined): boolean =>
  /^(?:her|him|his|it|its|me|my|our|that|the|their|them|these|this|those|us|you|your)$|'s$/.test(word ?? '')

/** Conditions of the table of stand-ins, by their sign there. */
/** `the cow`, `playing`, and no `so much` later on. */
const isLoved = (place: Surroundings, factsOf: FactsOf): boolean =>
  !place.after.slice(0, 7).includes('much') &&
  (opensObject(nextOf(place), factsOf) || /[a-z]{2}ing$/.test(nextOf(place) ?? ''))

export const ACTED_ON: Readonly<Record<string, PlaceTest>> = {
  /** What is acted on, after it. */
  o: (place, factsOf) =>
    opensObject(nextOf(place), factsOf) &&
    !(/^a (?:bit|lot|while)$/.test(place.after.slice(0, 2).join(' ')) && place.after[2] !== 'of'),
  /** A thing that is not known yet, acted on after it: `a cow`, `some food`, `money`. */
  oa: (place, factsOf) => opensObject(nextOf(place), factsOf) && !isKnownOne(nextOf(place)),
  /** One that is known, acted on after it: `the cow`, `him`. */
  ot: (place) => isKnownOne(nextOf(place)),
  /** Nothing that is acted on after it. */
  i: ({ after }, factsOf) => {
    const [next = '', then = ''] = after
    // `looks so pretty`
    if (next === 'so' && !SUBJECTS.has(then)) return false
    if (endsClause(after[0]) || PREPOSITIONS.has(next) || PARTICLES.has(next)) return true
    if (/^(?:all|each|every|that|this)$/.test(next)) return TIMES.test(then)
    return /[a-z]ly$/.test(next) || factsOf(next)?.main === 'adverb'
  },
  /** The same, away from what somebody says. */
  iq: (place, factsOf) => ACTED_ON.i?.(place, factsOf) === true && SPEECH.q?.(place, factsOf) !== true,
  /** `it` shortly before it. */
  it: ({ before }) => before.slice(-3).some((word) => word === 'it' || word === "it's"),
  /** `it` or `them` after it, and to whom: `it to him`. */
  io: ({ after }) => /^(?:it|them)$/.test(after[0] ?? '') && after[1] === 'to',
  /** A person after it: him, them. */
  P: ({ after }) =>
    PERSONS.has(after[0] ?? '') &&
    (after[0] !== 'her' || endsClause(after[1]) || /^(?:a|an|how|not|some|that|the|to|what)$/.test(after[1] ?? '')),
  /** A person after it, and what he is given: `him a hat`. */
  Px: (place, factsOf) =>
    ACTED_ON.P?.(place, factsOf) === true && opensObject(place.after[1], factsOf) && !OBJECTS.has(place.after[1] ?? ''),
  /** A person after it, and no `to`. */
  Pn: (place, factsOf) => ACTED_ON.P?.(place, factsOf) === true && place.after[1] !== 'to',
  /** A person after it, and `to`: `him to sing`. */
  Pt: (place, factsOf) => ACTED_ON.P?.(place, factsOf) === true && place.after[1] === 'to',
  /** One that does it before it, and what it is done to or that one does it after it: `he loved the cow`. */
  lk: (place, factsOf) => {
    const prev = prevOf(place)
    // `fond of his dog so much` is no good English.
    if (place.after.slice(0, 7).includes('much')) return false
    const isOne = prev === 'i' || (prev !== undefined && factsOf(prev) === undefined) || isOneDoer(prev, factsOf)
    return isOne && (opensObject(nextOf(place), factsOf) || /[a-z]{2}ing$/.test(nextOf(place) ?? ''))
  },
  /** `I` before it, and what it is done to after it. */
  li: (place, factsOf) => prevOf(place) === 'i' && isLoved(place, factsOf),
  /** Several that do it before it, and what it is done to after it: `the boys loved the cow`. */
  lp: (place, factsOf) => {
    const prev = prevOf(place) ?? ''
    return (/^(?:they|we|you)$/.test(prev) || factsOf(prev)?.inflection === 'plural') && isLoved(place, factsOf)
  },
  /** A form in -ing after it. */
  g: ({ after }) => /[a-z]{2}ing$/.test(after[0] ?? ''),
  /** `with` after it, or the end of its clause. */
  wi: (place) => nextOf(place) === 'with' || (endsClause(nextOf(place)) && nextOf(place) !== 'to'),
  /** `after` after it. */
  af: (place) => nextOf(place) === 'after',
  /** `for` after it. */
  lf: (place) => nextOf(place) === 'for',
}
