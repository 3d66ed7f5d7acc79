// Where a sentence does without a word that stands beside what is done: how, where to, with whom.

import {
  endsClause,
  isAfterBe,
  isAfterHave,
  isAfterLink,
  isEdge,
  isMark,
  nextOf,
  OBJECTS,
  PARTICLES,
  PREPOSITIONS,
  prevOf,
} from '../surroundings.ts'
import type { PlaceTest } from '../where.ts'
import { HELPS, isMeasured, isNegated } from './shared.ts'

const TOGETHER =
  /^(?:appear|cook|danc|eat|laugh|liv|play|run|sing|sit|sleep|swim|talk|travel|walk|work)(?:e?s|ed|e|ing)?$|^(?:ate|danced|ran|sang|sat|slept|swam|running|swimming)$/

const OUT =
  /^(?:call|called|calling|cried|cry|help|helped|pluck|plucked|pour|poured|scream|screamed|shout|shouted|spread|stretch|stretched)$/

const DOWN = /^(?:bend|bent|fall|falls|fell|kneel|knelt|lay|lie|lies|sat|sit|sits|sitting)$/

export const DEEDS: Readonly<Record<string, PlaceTest>> = {
  /** Between two that do it and what they are or do: `were both sad`. */
  bb: (place) => HELPS.test(prevOf(place) ?? '') && !isEdge(nextOf(place)),
  /** `back` before it: `back home`. */
  bk: (place) => prevOf(place) === 'back',
  /** Where to, after a fall or a rest: `sat down`. */
  dn: (place) =>
    (nextOf(place) === 'to' && prevOf(place) !== undefined && !isAfterLink(place)) ||
    (DOWN.test(prevOf(place) ?? '') && (endsClause(nextOf(place)) || PREPOSITIONS.has(nextOf(place) ?? ''))),
  /** With a voice or a hand: `called out to him`. */
  ou: (place) => OUT.test(prevOf(place) ?? '') && !isMark(nextOf(place) ?? 'x') && nextOf(place) !== 'of',
  /** `crossed over the road`, `over there`. */
  ov: (place) =>
    /^(?:cross|crossed|crosses|crossing)$/.test(prevOf(place) ?? '') || /^(?:here|there)$/.test(nextOf(place) ?? ''),
  /** After what moves: `flew around.` */
  ar: (place) =>
    /^(?:flew|flies|fly|flying|hop|hopped|jump|jumped|jumping|play|played|playing|ran|run|running|swam|swim|walk|walked|walking)$/.test(
      prevOf(place) ?? '',
    ) && endsClause(nextOf(place)),
  /** After a deed and where to: `went in quietly and sat`. */
  pa: (place, factsOf) =>
    /^(?:away|back|down|home|in|off|out|over|up)$/.test(prevOf(place) ?? '') &&
    factsOf(place.before.at(-2) ?? '')?.main === 'verb' &&
    endsClause(nextOf(place)) &&
    !isNegated(place),
  /** Before what somebody does: `he also sang`. */
  md: (place, factsOf) => {
    const prev = prevOf(place)
    if (prev === undefined || isMark(prev) || isMeasured(prev) || isNegated(place)) return false
    return factsOf(nextOf(place) ?? '')?.main === 'verb'
  },
  /** The same, after `not` too: `never even smiled`. */
  mn: (place, factsOf) => prevOf(place) !== undefined && factsOf(nextOf(place) ?? '')?.main === 'verb',
  /** Between a deed and where to or how: `climbed slowly up`. */
  vb: (place, factsOf) => {
    const [prev = '', next = ''] = [prevOf(place), nextOf(place)]
    const isDeed = factsOf(prev)?.main === 'verb' || OBJECTS.has(prev)
    return isDeed && !isAfterLink(place) && !isNegated(place) && (PREPOSITIONS.has(next) || PARTICLES.has(next))
  },
  /** Between a form of `be` or `have` and what is so: `was already there`. */
  bl: (place) => (isAfterBe(place) || isAfterHave(place)) && !isEdge(nextOf(place)),
  /** After who or what is there, before what it does: `dogs nearby ran`. */
  an: (place, factsOf) => {
    const prev = prevOf(place) ?? ''
    const isThere = factsOf(prev)?.main === 'noun' || /[a-z]{2}ing$/.test(prev)
    return (
      isThere && !isAfterBe(place) && (factsOf(nextOf(place) ?? '')?.main === 'verb' || /ly$/.test(nextOf(place) ?? ''))
    )
  },
  /** After what several do: `they played together`. */
  tg: (place) => TOGETHER.test(prevOf(place) ?? '') && endsClause(nextOf(place)),
  /** At the end of its clause, after what is put to one: `joined the parts together`. */
  jt: ({ before }) =>
    before.slice(-6).some((word) => /^(?:gather|join|mix|stick|stuck|tie|tied)(?:e?d|ed|s|ing)?$/.test(word)),
  /** At the end of what `we` or `they` do: `we will go to the pond together`. */
  wt: ({ before, after }, factsOf) =>
    before.some((word) => /^(?:they|we)$/.test(word)) &&
    isEdge(after[0]) &&
    factsOf(before.at(-1) ?? '')?.main === 'noun',
}
