// Conditions that ask which thing stands beside the place, and what opens or describes it.

import { hasLetter } from '../../letter-kinds.ts'
import {
  DEGREES,
  endsClause,
  isAfterDegree,
  isDetermined,
  isMark,
  nextOf,
  PREPOSITIONS,
  prevOf,
} from '../surroundings.ts'
import type { PlaceTest } from '../where.ts'
import { isOneDoer, TIMES } from './shared.ts'

/** What is somebody's own, so that it is told whose. */
const OWN =
  /^(?:age|arm|aunt|back|body|boss|brother|child|children|dad|daughter|ear|eye|face|family|father|feet|finger|foot|friend|gran|grand[a-z]+|hair|hand|head|heart|home|hope|husband|joy|knee|leg|life|lip|live|love|mind|mom|mother|mouth|mum|name|nose|pal|parent|skin|sister|son|stomach|surprise|teacher|teeth|thank|tooth|turn|uncle|way|wife|wish|work)s?$/

/** After these a person comes first and a thing next: `gave her food`. */
const GIVES =
  /^(?:ask|asked|bring|bought|brought|buy|call|called|give|gave|gives|had|help|helped|let|made|make|named|offered|see|sent|send|show|showed|taught|teach|tell|told)$/

export const THINGS: Readonly<Record<string, PlaceTest>> = {
  /** `a` before it. */
  A: (place) => prevOf(place) === 'a',
  /** `the` before it. */
  T: (place) => prevOf(place) === 'the',
  /** A determiner or a describing word before it. */
  D: isDetermined,
  /** A word before it that opens the phrase of one thing: not `some`, not `more`. */
  Ds: (place, factsOf) =>
    isDetermined(place, factsOf) &&
    !place.before.slice(-3).some((word) => /^(?:any|enough|more|much|no|some)$/.test(word)),
  /** No word that opens a phrase before it. */
  nD: (place, factsOf) => !isDetermined(place, factsOf),
  /** A describing word before it. */
  aj: (place, factsOf) => factsOf(prevOf(place) ?? '')?.main === 'adjective',
  /** A describing word after it. */
  j: ({ after }, factsOf) => factsOf(after[0] ?? '')?.main === 'adjective',
  /** A describing word after it, and nothing that this describes. */
  a: ({ after }, factsOf) => {
    const at = DEGREES.has(after[0] ?? '') ? 1 : 0
    const then = after[at + 1]
    return (
      factsOf(after[at] ?? '')?.main === 'adjective' && (endsClause(then) || /^(?:at|in|on|with)$/.test(then ?? ''))
    )
  },
  /** One who does it before it, and a describing word after it: `he looked sad`. */
  sa: (place, factsOf) => THINGS.a?.(place, factsOf) === true && isOneDoer(prevOf(place), factsOf),
  /** Nothing that it describes after it. */
  p: (place) => {
    const next = nextOf(place)
    return endsClause(next) || PREPOSITIONS.has(next ?? '') || next === 'that'
  },
  /** The thing that it describes after it, maybe described once more: `an important man`. */
  bn: ({ after }, factsOf) => {
    const at = factsOf(after[0] ?? '')?.main === 'adjective' ? 1 : 0
    return factsOf(after[at] ?? '')?.main === 'noun'
  },
  /** No word of degree before it. */
  nd: (place) => !isAfterDegree(place),
  /** Things of which there are several after it. */
  n: (place, factsOf) => !isAfterDegree(place) && factsOf(nextOf(place) ?? '')?.inflection === 'plural',
  /** Naming words for one or several things after it, maybe described: `these big men`. */
  nn: ({ after }, factsOf) => {
    const at = factsOf(after[0] ?? '')?.main === 'adjective' ? 1 : 0
    const facts = factsOf(after[at] ?? '')
    return facts?.main === 'noun' && !TIMES.test(after[at] ?? '')
  },
  /** One thing after it. */
  no: ({ after }, factsOf) => {
    const facts = factsOf(after[0] ?? '')
    return facts?.main === 'noun' && facts.inflection === 'none'
  },
  /** One thing after it, that `a` can stand before. */
  na: ({ after }, factsOf) => {
    const facts = factsOf(after[0] ?? '')
    const isOne = facts?.main === 'noun' && facts.inflection === 'none' && !TIMES.test(after[0] ?? '')
    return isOne && /^[^aeiouh]/.test(after[0] ?? '')
  },
  /** One thing after it, and no clause: `that man`; not `he said that men …`, `the dog that bit`. */
  nt: (place, factsOf) => {
    const prev = prevOf(place)
    const facts = factsOf(nextOf(place) ?? '')
    const isFree = prev === undefined || isMark(prev) || PREPOSITIONS.has(prev)
    return isFree && facts?.main === 'noun' && facts.inflection === 'none' && !TIMES.test(nextOf(place) ?? '')
  },
  /** A thing after it, maybe described, that is nobody's father, hand or name. */
  nx: (place, factsOf) => {
    const { after } = place
    const at = factsOf(after[0] ?? '')?.main === 'adjective' ? 1 : 0
    const word = after[at] ?? ''
    return prevOf(place) !== 'to' && factsOf(word)?.main === 'noun' && !TIMES.test(word) && !OWN.test(word)
  },
  /** The same of `her`, which may be the one who is given something. */
  nh: (place, factsOf) => THINGS.nx?.(place, factsOf) === true && !GIVES.test(prevOf(place) ?? ''),
  /** `the` before it and several things after it: `the other birds`. */
  ox: (place, factsOf) => prevOf(place) === 'the' && factsOf(nextOf(place) ?? '')?.inflection === 'plural',
  /** Things or stuff after it, of which there is more: not `more than`, `some more`. */
  mx: ({ before, after }, factsOf) =>
    factsOf(after[0] ?? '')?.main === 'noun' &&
    !after.slice(0, 5).includes('than') &&
    !/^(?:any|far|few|many|much|no|once|some|the)$/.test(before.at(-1) ?? ''),
  /** Stuff or things after it that nothing opens: `without water`. */
  bz: ({ after }, factsOf) => {
    const facts = factsOf(after[0] ?? '')
    return facts?.main === 'noun' && !/ing$/.test(after[0] ?? '')
  },
  /** A name after it: `a man called Ben`. */
  nm: ({ before, after }, factsOf) =>
    factsOf(before.at(-1) ?? '')?.main === 'noun' &&
    hasLetter(after[0] ?? '') &&
    factsOf(after[0] ?? '')?.main === undefined,
  /** `the` or somebody's after it. */
  dd: (place) => /^(?:her|his|its|my|our|the|their|your)$/.test(nextOf(place) ?? ''),
  /** `of` after it. */
  of: (place) => nextOf(place) === 'of',
  /** No `of` after it. */
  nof: (place) => nextOf(place) !== 'of',
  /** A doing word after it. */
  nv: (place, factsOf) => factsOf(nextOf(place) ?? '')?.main === 'verb',
}
