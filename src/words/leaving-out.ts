// Whether a sentence does without a word: it stays good English and says nearly the same. The table of stand-ins says so of a
// word by `-`, with the condition under which it can go; adverbs in -ly that tell how something is done go by rule.

import { hasLetter } from '../letter-kinds.ts'
import { CONDITIONS } from './conditions.ts'
import type { PartOfSpeech, WordFacts } from './facts.ts'
import { keep } from './keep.ts'
import { MASS } from './mass.ts'
import type { StandIns } from './stand-ins.ts'
import {
  DEGREES,
  DETERMINERS,
  endsClause,
  type FactsOf,
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
  SUBJECTS,
  type Surroundings,
  toSet,
} from './surroundings.ts'
import { type PlaceTest, toPlaceTest } from './where.ts'

/** -ly words that say more than how: without them the sentence says something else. Common practice, no source. */
const NEEDED = toSet(
  'badly barely daily differently early exactly fully hardly likely monthly mostly nearly only partly rarely scarcely seldom weekly wrongly yearly',
)
/** After these a describing word cannot go, or what is left says something else: `no new hat`, `which old hat`. */
const HOLDS = /^(?:as|how|no|only|other|same|such|too|what|which|and|or|but)$/
const TOGETHER =
  /^(?:appear|cook|danc|eat|laugh|liv|play|run|sing|sit|sleep|swim|talk|travel|walk|work)(?:e?s|ed|e|ing)?$|^(?:ate|danced|ran|sang|sat|slept|swam|running|swimming)$/
const OUT =
  /^(?:call|called|calling|cried|cry|help|helped|pluck|plucked|pour|poured|scream|screamed|shout|shouted|spread|stretch|stretched)$/
const HELPS = /^(?:are|can|could|had|have|may|might|must|shall|should|were|will|would)$/
/** With these the word before says one thing: `paper bag` is a bag, `paper work` no work of paper. */
const WHOLE =
  /^(?:bank|bar|bed|bird|clip|fish|girl|boy|house|hall|man|mine|plane|room|sitter|teeth|tooth|woman|wood|work|yard)s?$/
const DOWN = /^(?:bend|bent|fall|falls|fell|kneel|knelt|lay|lie|lies|sat|sit|sits|sitting)$/

/** After these a clause needs no `that`. */
const SAYS =
  /^(?:afraid|believe|believed|bet|feel|feels|felt|find|found|glad|guess|happy|hear|heard|hope|hoped|knew|know|knows|promised|realised|realized|said|saw|say|says|see|sees|so|sorry|sure|think|thinks|thought|wish|wished)$/

const isNegated = ({ before }: Surroundings): boolean =>
  before.slice(-4).some((word) => /n't$|^(?:cannot|never|no|nor|not|without)$/.test(word))

/** Whoever does something, or what stands before it. */
const opensClause = (next: string | undefined, factsOf: FactsOf): boolean =>
  next !== undefined &&
  !isMark(next) &&
  next !== 'that' &&
  (SUBJECTS.has(next) || DETERMINERS.has(next) || factsOf(next)?.main === undefined)

const TIMES = /^(?:ago|day|days|evening|morning|night|time|times|way|week|while|year|years)$/

/** `very quietly`, `more quietly`. */
const isMeasured = (prev: string): boolean => DEGREES.has(prev) || /^(?:less|more|most)$/.test(prev)

const isPlural = (facts: WordFacts | undefined): boolean => facts?.main === 'noun' && facts.inflection === 'plural'

/** Where the word can go, by the sign in the table. */
const LEAVES: Readonly<Record<string, PlaceTest>> = {
  /** A describing word before its thing: `the old man`. */
  ad: (place, factsOf) => {
    const [prev, next] = [prevOf(place), nextOf(place)]
    const second = factsOf(next ?? '')
    // `a shiny blue hat`
    const thing = second === undefined || second.main === 'adjective' ? factsOf(place.after[1] ?? '') : second
    if (TIMES.test(next ?? '')) return false
    if (thing?.main !== 'noun' || (prev !== undefined && (HOLDS.test(prev) || isMeasured(prev) || prev === ',')))
      return false
    if (/^an?$/.test(prev ?? '') && MASS.has(next ?? '')) return false
    const isLed =
      prev !== undefined && (DETERMINERS.has(prev) || /'s$/.test(prev) || factsOf(prev)?.main === 'adjective')
    return isLed || isPlural(thing)
  },
  /** `all` before what is named, or after it: `all the men`, `ate it all`. */
  al: ({ before, after }, factsOf) => {
    const [prev, next] = [before.at(-1), after[0]]
    if (
      /^(?:after|at|from|in|not|of|once|that|with)$/.test(prev ?? '') ||
      /^(?:way|time|best|same)$/.test(after[1] ?? '')
    )
      return false
    if (/^(?:her|his|its|my|our|the|their|these|those|your)$/.test(next ?? '') || /'s$/.test(next ?? '')) return true
    if (/^(?:it|them|us)$/.test(prev ?? '')) return endsClause(next) || PREPOSITIONS.has(next ?? '')
    if (HELPS.test(prev ?? '')) return /^(?:they|we|you)$/.test(before.at(-2) ?? '')
    return /^(?:they|we|you)$/.test(prev ?? '') && factsOf(next ?? '')?.main === 'verb'
  },
  /** Between two that do it and what they are or do: `were both sad`. */
  bb: (place) => HELPS.test(prevOf(place) ?? '') && !isEdge(nextOf(place)),
  /** `back` before it: `back home`. */
  bk: (place) => prevOf(place) === 'back',
  /** What a thing is made of or where it belongs, before it: `the clay pot`. */
  mo: (place, factsOf) => {
    const [prev, next] = [prevOf(place), nextOf(place)]
    if (prev === undefined || factsOf(next ?? '')?.main !== 'noun' || TIMES.test(next ?? '') || WHOLE.test(next ?? ''))
      return false
    return DETERMINERS.has(prev) || /'s$/.test(prev) || factsOf(prev)?.main === 'adjective'
  },
  /** How much, before a describing word: `very big`. */
  dg: (place, factsOf) => {
    const [prev, next] = [prevOf(place), nextOf(place)]
    if (next === undefined || /^(?:last|many|much|own|same)$/.test(next)) return false
    if (isNegated(place) || DEGREES.has(prev ?? '') || prev === 'the') return false
    // `so big that`, `so that`.
    if (place.after.slice(0, 9).some((word) => word === 'that' || word === 'as')) return false
    const facts = factsOf(next)
    if (facts?.main === 'adjective' || facts?.main === 'adverb') return true
    return facts?.partsOfSpeech.includes('adjective') === true && endsClause(place.after[1])
  },
  /** The same of `so`, which may stand for `so that` with no `that`: only where nothing follows. */
  ds: (place, factsOf) =>
    LEAVES.dg?.(place, factsOf) === true &&
    endsClause(place.after[1]) &&
    !SUBJECTS.has(place.after[1] ?? '') &&
    !/^(?:as|that)$/.test(place.after[1] ?? '') &&
    !/^(?:did|do|does|if|said|say|think)$/.test(prevOf(place) ?? ''),
  /** Where to, after a fall or a rest: `sat down`. */
  dn: (place) =>
    (nextOf(place) === 'to' && prevOf(place) !== undefined && !isAfterLink(place)) ||
    (DOWN.test(prevOf(place) ?? '') && (endsClause(nextOf(place)) || PREPOSITIONS.has(nextOf(place) ?? ''))),
  /** Between what joins two clauses and the second: `and then he sat`. */
  cn: ({ before, after }, factsOf) =>
    /^(?:and|but)$/.test(before.at(-1) ?? '') && opensClause(after[0] === ',' ? after[1] : after[0], factsOf),
  /** At the end of its clause, after `not` too: `had never seen it before`. */
  eg: (place) =>
    prevOf(place) !== undefined &&
    !isMark(prevOf(place) ?? '') &&
    (nextOf(place) === undefined || isMark(nextOf(place) ?? '')) &&
    !PREPOSITIONS.has(prevOf(place) ?? '') &&
    !DEGREES.has(prevOf(place) ?? '') &&
    !/^(?:and|or|the|as|long|day|night)$/.test(prevOf(place) ?? ''),
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
  /** What opens what is said: `Oh, no!`, `Please come.` */
  ij: ({ before, after }, factsOf) => {
    if (!before.every(isMark)) return false
    const [next = ''] = after
    if (next === ',') return hasLetter(after[1] ?? '')
    return SUBJECTS.has(next) || /^(?:can|do|don't|let|let's|look)$/.test(next) || factsOf(next)?.main === 'verb'
  },
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
  /** Before things or stuff: `some buns`. */
  sm: ({ before, after }, factsOf) => {
    if (/^(?:of|the|not)$/.test(before.at(-1) ?? '')) return false
    const at = factsOf(after[0] ?? '')?.main === 'adjective' ? 1 : 0
    const word = after[at] ?? ''
    return isPlural(factsOf(word)) || MASS.has(word)
  },
  /** It opens its sentence, and whoever does something comes next: `So he sat.`, `Soon, a man came.` */
  st: ({ before, after }, factsOf) => {
    const at = after[0] === ',' ? 1 : 0
    if (!before.every(isMark)) return false
    const isNamed = factsOf(after[at] ?? '')?.main === 'noun' && factsOf(after[at + 1] ?? '')?.main === 'verb'
    return opensClause(after[at], factsOf) || isNamed
  },
  /** Before a clause that tells what was said or thought: `he felt that she was sad`. */
  tc: ({ before, after }, factsOf) => {
    const [prev = '', next = ''] = [before.at(-1), after[0]]
    const isTold = SAYS.test(prev) || (OBJECTS.has(prev) && /^(?:tell|tells|told)$/.test(before.at(-2) ?? ''))
    if (!isTold || after.length < 3) return false
    return SUBJECTS.has(next) || /^(?:her|his|my|our|the|their|your)$/.test(next) || factsOf(next)?.main === undefined
  },
  /** Between a deed and where to or how: `climbed slowly up`. */
  vb: (place, factsOf) => {
    const [prev = '', next = ''] = [prevOf(place), nextOf(place)]
    const isDeed = factsOf(prev)?.main === 'verb' || OBJECTS.has(prev)
    return isDeed && !isAfterLink(place) && !isNegated(place) && (PREPOSITIONS.has(next) || PARTICLES.has(next))
  },
  /** After `so big` or `such a cow`, before what came of it: `so big that he fell`. */
  so: ({ before, after }) => {
    const near = before.slice(-4)
    return (
      near.slice(0, -1).some((word) => /^(?:so|such)$/.test(word)) && !near.some(isMark) && SUBJECTS.has(after[0] ?? '')
    )
  },
  /** At the end of its clause, after what is put to one: `joined the parts together`. */
  jt: ({ before }) =>
    before.slice(-6).some((word) => /^(?:gather|join|mix|stick|stuck|tie|tied)(?:e?d|ed|s|ing)?$/.test(word)),
  /** At the end of what `we` or `they` do: `we will go to the pond together`. */
  wt: ({ before, after }, factsOf) =>
    before.some((word) => /^(?:they|we)$/.test(word)) &&
    isEdge(after[0]) &&
    factsOf(before.at(-1) ?? '')?.main === 'noun',
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
}

/** What can go may be told by the conditions of what can stand, too. */
const SIGNS: Readonly<Record<string, PlaceTest>> = { ...CONDITIONS, ...LEAVES }

/** @throws RangeError for a sign that stands for no condition */
const toTest = keep((where): PlaceTest => toPlaceTest(where, SIGNS))

/** What the search knows of the word. */
export interface Leaving {
  readonly word: string
  /** Undefined for a little word, and where the sentence does not tell it. */
  readonly part: PartOfSpeech | undefined
  readonly place: Surroundings
}

export function canGo({ word, part, place }: Leaving, standIns: StandIns, factsOf: FactsOf): boolean {
  const signs = [...standIns.leaves(word, 'form'), ...(part === undefined ? [] : standIns.leaves(word, part))]
  if (signs.some((sign) => toTest(sign)(place, factsOf))) return true
  return (
    isManner(word, factsOf) && ['md', 'en', 'pa', 'st', 'vb'].some((sign) => LEAVES[sign]?.(place, factsOf) === true)
  )
}

/** Whether there is a sentence in which it could go. */
export const mayGo = (word: string, facts: WordFacts | undefined, standIns: StandIns, factsOf: FactsOf): boolean =>
  standIns.leaves(word, 'form').length > 0 ||
  facts?.partsOfSpeech.some((part) => standIns.leaves(word, part).length > 0) === true ||
  isManner(word, factsOf)

const isManner = (word: string, factsOf: FactsOf): boolean => {
  if (!/[a-z]{3}ly$/.test(word) || NEEDED.has(word)) return false
  const facts = factsOf(word)
  return facts?.main === 'adverb' && facts.partsOfSpeech.length === 1
}
