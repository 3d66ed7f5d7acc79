// Conditions that ask where somebody goes, or where something is.

import {
  DETERMINERS,
  endsClause,
  type FactsOf,
  isMark,
  nextOf,
  OBJECTS,
  opensObject,
  PARTICLES,
  PREPOSITIONS,
  prevOf,
  type Surroundings,
  toSet,
} from '../surroundings.ts'
import type { PlaceTest } from '../where.ts'

const ABOUT = /^(?:dream|know|sing|sang|speak|spoke|stor(?:y|ies)|talk|tell|think|thought|told)(?:s|t|ing|ed)?$/

const BACK = toSet('back down home in off out up')

const INTO =
  /^(?:climb|drop|dropp|fall|hop|hopp|jump|leap|pour|slip|slipp)(?:s|ing|ed|t)?$|^(?:fell|get|gets|got|put|puts|putting|stepped)$/

const TO_WHERE = toSet(
  'across along around away back down home in inside into off on onto out outside over to towards up',
)

/** Whether the clause tells where to. */
function goesSomewhere({ after }: Surroundings): boolean {
  const end = after.findIndex((word, at) => at > 0 && (isMark(word) || /^(?:and|but|when|who|that)$/.test(word)))
  return after.slice(1, end < 0 ? 7 : Math.min(end, 7)).some((word) => TO_WHERE.has(word))
}

const MOVES =
  /^(?:came|come|comes|coming|flew|fly|go|goes|going|gone|got|headed|heading|hurried|hurry|ran|rode|run|running|rushed|sailed|swam|walk|walked|walking|way|went)$/

const CARRIES = /^(?:bring|brings|brought|carr(?:ied|ies|y)|drag|dragged|drove|led|send|sent|take|takes|took)$/

/** A doing word in its base form. */
const isDeed = (word: string | undefined, factsOf: FactsOf): boolean => {
  const facts = factsOf(word ?? '')
  return facts?.inflection === 'none' && (facts.main === 'verb' || /^(?:be|do|have)$/.test(word ?? ''))
}

const PLACES = /^(?:bed|church|class|home|school|sleep|town|work)$/

export const WAYS: Readonly<Record<string, PlaceTest>> = {
  /** `to` and a place after it: `off to the shop`. */
  mg: ({ after }) => after[0] === 'to' && (DETERMINERS.has(after[1] ?? '') || PLACES.test(after[1] ?? '')),
  /** `to` and what one does after it: `going to sit`. */
  tv: ({ after }, factsOf) => after[0] === 'to' && isDeed(after[1], factsOf),
  /** `in the` or `into the` before it. */
  inT: ({ before }) => before.at(-1) === 'the' && /^(?:in|into)$/.test(before.at(-2) ?? ''),
  /** `in the`, `up the` before it. */
  fp: ({ before }) => before.at(-1) === 'the' && PREPOSITIONS.has(before.at(-2) ?? ''),
  /** `in` before it. */
  N: (place) => prevOf(place) === 'in',
  /** `on` before it. */
  on: (place) => prevOf(place) === 'on',
  /** `in` or `near` after it. */
  in: (place) => /^(?:in|near)$/.test(nextOf(place) ?? ''),
  /** `at`, `in` or `on` after it. */
  pr: (place) => /^(?:at|in|on)$/.test(nextOf(place) ?? ''),
  /** `for` before it. */
  for: (place) => prevOf(place) === 'for',
  /** `up` after it, and nobody after that: `woke up again`. */
  ue: ({ after }, factsOf) =>
    after[0] === 'up' &&
    (endsClause(after[1]) || PREPOSITIONS.has(after[1] ?? '') || factsOf(after[1] ?? '')?.main === 'adverb'),
  /** `up` after it, and what is taken up. */
  uo: ({ after }, factsOf) => after[0] === 'up' && opensObject(after[1], factsOf),
  /** After `put` and whom: `put it to sleep`. */
  pt: ({ before }) => before.slice(-5).some((word) => /^put(?:s|ting)?$/.test(word)),
  /** back, home, up … after it. */
  b: ({ after }) => BACK.has(after[0] ?? ''),
  /** Where to, after it: up, into, home. */
  m: ({ after }, factsOf) =>
    PARTICLES.has(after[0] ?? '') &&
    !/^(?:from|with)$/.test(after[1] ?? '') &&
    !(after[0] === 'to' && (OBJECTS.has(after[1] ?? '') || factsOf(after[1] ?? '')?.main === 'verb')),
  /** What is acted on after it, and where that goes: `the fish to the king`. */
  om: (place, factsOf) => opensObject(nextOf(place), factsOf) && goesSomewhere(place),
  /** What is acted on after it, and nothing of where that goes. */
  ob: (place, factsOf) => opensObject(nextOf(place), factsOf) && !goesSomewhere(place),
  /** Down or over what, after it: `down his face`. */
  dw: (place) => /^(?:down|from|over|through)$/.test(nextOf(place) ?? ''),
  /** `up` after it. */
  u: (place) => nextOf(place) === 'up',
  /** `to` after it. */
  to: (place) => nextOf(place) === 'to',
  /** After a fall, a leap or a step: `fell into`. */
  fi: (place, factsOf) => place.before.slice(-4).some((word) => INTO.test(word)) && opensObject(nextOf(place), factsOf),
  /** Where somebody goes, or takes what has been named: `went home`, `carried it home`. */
  hm: ({ before }) =>
    MOVES.test(before.at(-1) ?? '') ||
    (/^(?:her|him|it|me|them|us)$/.test(before.at(-1) ?? '') && CARRIES.test(before.at(-2) ?? '')),
  /** After what leaps or goes, and what is passed after it: `jumped over the fire`. */
  mv: (place, factsOf) =>
    (MOVES.test(prevOf(place) ?? '') ||
      /^(?:climb|hop|jump|leap|leapt|sprang|step)(?:s|ed|ing|ped|ping)?$/.test(prevOf(place) ?? '')) &&
    opensObject(nextOf(place), factsOf),
  /** After what is told, known, thought or dreamt: `dreaming about`. */
  ab: (place) => ABOUT.test(prevOf(place) ?? ''),
}
