// Conditions that ask for a helping word, or a form of `be` or `have`.

import {
  BEFORE_BASE,
  endsClause,
  isAfterBe,
  isAfterHave,
  isAfterLink,
  nextOf,
  opensObject,
  prevOf,
} from '../surroundings.ts'
import type { PlaceTest } from '../where.ts'

/** A helping word that does not say no. */
const isHelping = (word: string | undefined): boolean =>
  /^(?:can|could|might|must|shall|should|will|would)$|'ll$/.test(word ?? '')

export const HELPING: Readonly<Record<string, PlaceTest>> = {
  /** After a form of `be`. */
  B: isAfterBe,
  /** After a form of `have`. */
  h: isAfterHave,
  /** A form of `have` before it, and the end of its clause after it. */
  hv: (place) => isAfterHave(place) && endsClause(nextOf(place)),
  /** After a helping word that does not say no: `will love him`. */
  hp: (place, factsOf) => isHelping(prevOf(place)) && opensObject(nextOf(place), factsOf),
  /** The same with `always` between: `will always love him`. */
  hp2: (place, factsOf) =>
    /^(?:always|still)$/.test(prevOf(place) ?? '') &&
    isHelping(place.before.at(-2)) &&
    opensObject(nextOf(place), factsOf),
  /** After any helping word. */
  hb: (place) => BEFORE_BASE.has(prevOf(place) ?? ''),
  /** Asked or helped with: `do you know`. */
  hq: ({ before }) => BEFORE_BASE.has(before.at(-2) ?? ''),
  /** A form of `be` before it, and the end of its clause after it. */
  be: (place) => isAfterBe(place) && (endsClause(nextOf(place)) || nextOf(place) === 'to'),
  /** A helping word before it, and no `ever` after it: `had never seen`. */
  ax: (place) =>
    /^(?:can|could|did|does|had|has|have|is|are|must|should|was|were|will|would)$|'ll$/.test(prevOf(place) ?? '') &&
    nextOf(place) !== 'ever',
  /** Nothing after it that makes `'s` a short `has`. */
  nb: ({ after }, factsOf) =>
    !/^(?:been|got|had|gone|just|never)$/.test(after[0] ?? '') &&
    !/^(?:past|participle)$/.test(factsOf(after[0] ?? '')?.inflection ?? ''),
  /** After a form of `be` or `get`, and for what after it: `ready to go`. */
  rd: (place) => isAfterLink(place) && /^(?:for|to)$/.test(nextOf(place) ?? ''),
  /** A `not` before it, in its clause. */
  ng: ({ before, after }) =>
    before.slice(-6).some((word) => /n't$|^(?:cannot|never|not)$/.test(word)) && after[0] !== 'else',
}
