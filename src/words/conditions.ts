// Where a word of the table of stand-ins can stand: conditions on the words around, each by its sign there.

import { hasLetter } from '../letter-kinds.ts'
import {
  BEFORE_BASE,
  DEGREES,
  DETERMINERS,
  endsClause,
  type FactsOf,
  isAfterBe,
  isAfterDegree,
  isAfterHave,
  isAfterLink,
  isDetermined,
  isEdge,
  isMark,
  nextOf,
  OBJECTS,
  opensObject,
  PARTICLES,
  PREPOSITIONS,
  prevOf,
  SUBJECTS,
  type Surroundings,
  toSet,
} from './surroundings.ts'
import type { PlaceTest } from './where.ts'
import { WHO } from './who.ts'

const PERSONS = toSet('her him me them us you')
const BACK = toSet('back down home in off out up')

const ABOUT = /^(?:dream|know|sing|sang|speak|spoke|stor(?:y|ies)|talk|tell|think|thought|told)(?:s|t|ing|ed)?$/
const INTO =
  /^(?:climb|drop|dropp|fall|hop|hopp|jump|leap|pour|slip|slipp)(?:s|ing|ed|t)?$|^(?:fell|get|gets|got|put|puts|putting|stepped)$/
/** What is somebody's own, so that it is told whose. */
const OWN =
  /^(?:age|arm|aunt|back|body|boss|brother|child|children|dad|daughter|ear|eye|face|family|father|feet|finger|foot|friend|gran|grand[a-z]+|hair|hand|head|heart|home|hope|husband|joy|knee|leg|life|lip|live|love|mind|mom|mother|mouth|mum|name|nose|pal|parent|skin|sister|son|stomach|surprise|teacher|teeth|thank|tooth|turn|uncle|way|wife|wish|work)s?$/

const TIMES = /^(?:afternoon|day|evening|moment|month|morning|night|time|week|year)s?$/

/** Whether the clause tells where to. */
function goesSomewhere({ after }: Surroundings): boolean {
  const end = after.findIndex((word, at) => at > 0 && (isMark(word) || /^(?:and|but|when|who|that)$/.test(word)))
  return after.slice(1, end < 0 ? 7 : Math.min(end, 7)).some((word) => TO_WHERE.has(word))
}

const TO_WHERE = toSet(
  'across along around away back down home in inside into off on onto out outside over to towards up',
)

const isOpenMark = (token: string): boolean => /^[“”"«»]+$/.test(token)

const MOVES =
  /^(?:came|come|comes|coming|flew|fly|go|goes|going|gone|got|headed|heading|hurried|hurry|ran|rode|run|running|rushed|sailed|swam|walk|walked|walking|way|went)$/
const CARRIES = /^(?:bring|brings|brought|carr(?:ied|ies|y)|drag|dragged|drove|led|send|sent|take|takes|took)$/
/** After these a person comes first and a thing next: `gave her food`. */
const GIVES =
  /^(?:ask|asked|bring|bought|brought|buy|call|called|give|gave|gives|had|help|helped|let|made|make|named|offered|see|sent|send|show|showed|taught|teach|tell|told)$/

/** What names one that has been spoken of. */
const isKnownOne = (word: string | undefined): boolean =>
  /^(?:her|him|his|it|its|me|my|our|that|the|their|them|these|this|those|us|you|your)$|'s$/.test(word ?? '')

/** A helping word that does not say no. */
const isHelping = (word: string | undefined): boolean =>
  /^(?:can|could|might|must|shall|should|will|would)$|'ll$/.test(word ?? '')

/** A doing word in its base form. */
const isDeed = (word: string | undefined, factsOf: FactsOf): boolean => {
  const facts = factsOf(word ?? '')
  return facts?.inflection === 'none' && (facts.main === 'verb' || /^(?:be|do|have)$/.test(word ?? ''))
}

const PLACES = /^(?:bed|church|class|home|school|sleep|town|work)$/

/** What somebody says ends right before the place, with this mark. */
const closesSpeech = ({ before }: Surroundings, mark: string): boolean =>
  /^["”»]$/.test(before.at(-1) ?? '') && (before.at(-2) ?? '').endsWith(mark)

/** Conditions of the table of stand-ins, by their sign there. */
export const CONDITIONS: Readonly<Record<string, PlaceTest>> = {
  ...WHO,
  /** After a form of `be`. */
  B: isAfterBe,
  /** After a form of `have`. */
  h: isAfterHave,
  /** After a helping word that does not say no: `will love him`. */
  hp: (place, factsOf) => isHelping(prevOf(place)) && opensObject(nextOf(place), factsOf),
  /** The same with `always` between: `will always love him`. */
  hp2: (place, factsOf) =>
    /^(?:always|still)$/.test(prevOf(place) ?? '') &&
    isHelping(place.before.at(-2)) &&
    opensObject(nextOf(place), factsOf),
  /** After any helping word. */
  hb: (place) => BEFORE_BASE.has(prevOf(place) ?? ''),
  /** `to` and a place after it: `off to the shop`. */
  mg: ({ after }) => after[0] === 'to' && (DETERMINERS.has(after[1] ?? '') || PLACES.test(after[1] ?? '')),
  /** Asked or helped with: `do you know`. */
  hq: ({ before }) => BEFORE_BASE.has(before.at(-2) ?? ''),
  /** The end of its sentence, or a mark. */
  E: (place) => isEdge(nextOf(place)),
  /** Asked of somebody: it opens its sentence, or what is said, and somebody comes next: `Could you …` */
  qs: ({ before, after }) =>
    /^["“‘,]?$/.test(before.at(-1) ?? '') && SUBJECTS.has(after[0] ?? '') && after.includes('?'),
  /** `to` and what one does after it: `going to sit`. */
  tv: ({ after }, factsOf) => after[0] === 'to' && isDeed(after[1], factsOf),
  /** A describing word before it. */
  aj: (place, factsOf) => factsOf(prevOf(place) ?? '')?.main === 'adjective',
  /** `in the` or `into the` before it. */
  inT: ({ before }) => before.at(-1) === 'the' && /^(?:in|into)$/.test(before.at(-2) ?? ''),
  /** `in the`, `up the` before it. */
  fp: ({ before }) => before.at(-1) === 'the' && PREPOSITIONS.has(before.at(-2) ?? ''),
  /** Right after a cry: `“Stop!” he said`. */
  ex: (place) => closesSpeech(place, '!'),
  /** Right after a question. */
  eq: (place) => closesSpeech(place, '?'),
  /** Inside its sentence, and a clause after it: `for he was sad`. */
  fr: ({ before, after }) =>
    (before.at(-1) === ',' || hasLetter(before.at(-1) ?? '')) &&
    !/^(?:and|is|just|not|only|or|was)$/.test(before.at(-1) ?? '') &&
    (SUBJECTS.has(after[0] ?? '') || DETERMINERS.has(after[0] ?? '')),
  /** `up` after it, and nobody after that: `woke up again`. */
  ue: ({ after }, factsOf) =>
    after[0] === 'up' &&
    (endsClause(after[1]) || PREPOSITIONS.has(after[1] ?? '') || factsOf(after[1] ?? '')?.main === 'adverb'),
  /** `up` after it, and what is taken up. */
  uo: ({ after }, factsOf) => after[0] === 'up' && opensObject(after[1], factsOf),
  /** `where` or `what` somewhere before it. */
  wq: ({ before }) => before.some((word) => /^(?:what|where|which)$/.test(word)),
  /** After `put` and whom: `put it to sleep`. */
  pt: ({ before }) => before.slice(-5).some((word) => /^put(?:s|ting)?$/.test(word)),
  /** A comma before it. */
  cm: (place) => prevOf(place) === ',',
  /** A doing word after it. */
  nv: (place, factsOf) => factsOf(nextOf(place) ?? '')?.main === 'verb',
  /** `a` before it. */
  A: (place) => prevOf(place) === 'a',
  /** A determiner or a describing word before it. */
  D: isDetermined,
  /** `in` before it. */
  N: (place) => prevOf(place) === 'in',
  /** A person after it, and what he is given: `him a hat`. */
  Px: (place, factsOf) =>
    CONDITIONS.P?.(place, factsOf) === true &&
    opensObject(place.after[1], factsOf) &&
    !OBJECTS.has(place.after[1] ?? ''),
  /** A person after it: him, them. */
  P: ({ after }) =>
    PERSONS.has(after[0] ?? '') &&
    (after[0] !== 'her' || endsClause(after[1]) || /^(?:a|an|how|not|some|that|the|to|what)$/.test(after[1] ?? '')),
  /** `the` before it. */
  T: (place) => prevOf(place) === 'the',
  /** A describing word after it, and nothing that this describes. */
  a: ({ after }, factsOf) => {
    const at = DEGREES.has(after[0] ?? '') ? 1 : 0
    const then = after[at + 1]
    return (
      factsOf(after[at] ?? '')?.main === 'adjective' && (endsClause(then) || /^(?:at|in|on|with)$/.test(then ?? ''))
    )
  },
  /** back, home, up … after it. */
  b: ({ after }) => BACK.has(after[0] ?? ''),
  /** A form of `be` before it, and the end of its clause after it. */
  be: (place) => isAfterBe(place) && (endsClause(nextOf(place)) || nextOf(place) === 'to'),
  /** A clause after it: he, they, we … */
  c: ({ after }) => SUBJECTS.has(after[0] ?? '') && after[0] !== 'who',
  /** The end of its clause after it. */
  e: (place) => endsClause(nextOf(place)),
  /** A form in -ing after it. */
  g: ({ after }) => /[a-z]{2}ing$/.test(after[0] ?? ''),
  /** Nothing that is acted on after it. */
  i: ({ after }, factsOf) => {
    const [next = '', then = ''] = after
    // `looks so pretty`
    if (next === 'so' && !SUBJECTS.has(then)) return false
    if (endsClause(after[0]) || PREPOSITIONS.has(next) || PARTICLES.has(next)) return true
    if (/^(?:all|each|every|that|this)$/.test(next)) return TIMES.test(then)
    return /[a-z]ly$/.test(next) || factsOf(next)?.main === 'adverb'
  },
  /** `it` or `them` after it, and to whom: `it to him`. */
  io: ({ after }) => /^(?:it|them)$/.test(after[0] ?? '') && after[1] === 'to',
  /** `it` shortly before it. */
  it: ({ before }) => before.slice(-3).some((word) => word === 'it' || word === "it's"),
  /** Where to, after it: up, into, home. */
  m: ({ after }, factsOf) =>
    PARTICLES.has(after[0] ?? '') &&
    !/^(?:from|with)$/.test(after[1] ?? '') &&
    !(after[0] === 'to' && (OBJECTS.has(after[1] ?? '') || factsOf(after[1] ?? '')?.main === 'verb')),
  /** What is acted on, after it. */
  o: (place, factsOf) =>
    opensObject(nextOf(place), factsOf) &&
    !(/^a (?:bit|lot|while)$/.test(place.after.slice(0, 2).join(' ')) && place.after[2] !== 'of'),
  /** A thing that is not known yet, acted on after it: `a cow`, `some food`, `money`. */
  oa: (place, factsOf) => opensObject(nextOf(place), factsOf) && !isKnownOne(nextOf(place)),
  /** One that is known, acted on after it: `the cow`, `him`. */
  ot: (place) => isKnownOne(nextOf(place)),
  /** What is acted on after it, and where that goes: `the fish to the king`. */
  om: (place, factsOf) => opensObject(nextOf(place), factsOf) && goesSomewhere(place),
  /** What is acted on after it, and nothing of where that goes. */
  ob: (place, factsOf) => opensObject(nextOf(place), factsOf) && !goesSomewhere(place),
  /** Down or over what, after it: `down his face`. */
  dw: (place) => /^(?:down|from|over|through)$/.test(nextOf(place) ?? ''),
  /** The same, away from what somebody says. */
  iq: (place, factsOf) => CONDITIONS.i?.(place, factsOf) === true && CONDITIONS.q?.(place, factsOf) !== true,
  /** A person after it, and no `to`. */
  Pn: (place, factsOf) => CONDITIONS.P?.(place, factsOf) === true && place.after[1] !== 'to',
  /** A person after it, and `to`: `him to sing`. */
  Pt: (place, factsOf) => CONDITIONS.P?.(place, factsOf) === true && place.after[1] === 'to',
  /** A clause after it that opens with what it is about: `felt the hens were sad`. */
  cc: (place, factsOf) =>
    opensObject(nextOf(place), factsOf) &&
    place.after.slice(1, 5).some((word) => /^(?:are|can|could|had|has|is|must|was|were|will|would)$/.test(word)),
  /** `with` after it, or the end of its clause. */
  wi: (place) => nextOf(place) === 'with' || (endsClause(nextOf(place)) && nextOf(place) !== 'to'),
  /** `after` after it. */
  af: (place) => nextOf(place) === 'after',
  /** `at`, `in` or `on` after it. */
  pr: (place) => /^(?:at|in|on)$/.test(nextOf(place) ?? ''),
  /** Stuff or things after it that nothing opens: `without water`. */
  bz: ({ after }, factsOf) => {
    const facts = factsOf(after[0] ?? '')
    return facts?.main === 'noun' && !/ing$/.test(after[0] ?? '')
  },
  /** A mark before it, and a clause of its own after it: `, so he ran`. */
  cl: ({ before, after }) =>
    before.at(-1) === ',' && /^(?:he|i|it|she|the|they|we|you)$/.test(after[0] ?? '') && after[1] !== 'that',
  /** `the` or somebody's after it. */
  dd: (place) => /^(?:her|his|its|my|our|the|their|your)$/.test(nextOf(place) ?? ''),
  /** A name after it: `a man called Ben`. */
  nm: ({ before, after }, factsOf) =>
    factsOf(before.at(-1) ?? '')?.main === 'noun' &&
    hasLetter(after[0] ?? '') &&
    factsOf(after[0] ?? '')?.main === undefined,
  /** Opens its sentence, and what was done comes next: `Everybody ran`. */
  sp: ({ before, after }, factsOf) =>
    (before.every(isMark) || /^(?:and|but)$/.test(before.at(-1) ?? '')) &&
    factsOf(after[0] ?? '')?.inflection === 'past' &&
    !/^(?:did|had|was)$/.test(after[0] ?? ''),
  /** Opens a clause that tells what was so then: `while she sat`. */
  wc: (place) => SUBJECTS.has(nextOf(place) ?? '') && !/^(?:a|for|little|long|once|the)$/.test(prevOf(place) ?? ''),
  /** `of` after it. */
  of: (place) => nextOf(place) === 'of',
  /** The thing that it describes after it, maybe described once more: `an important man`. */
  bn: ({ after }, factsOf) => {
    const at = factsOf(after[0] ?? '')?.main === 'adjective' ? 1 : 0
    return factsOf(after[at] ?? '')?.main === 'noun'
  },
  /** Nothing that it describes after it. */
  p: (place) => {
    const next = nextOf(place)
    return endsClause(next) || PREPOSITIONS.has(next ?? '') || next === 'that'
  },
  /** Beside what somebody says. */
  q: ({ before, after }) => before.slice(-4).some(isOpenMark) || after.slice(0, 4).some(isOpenMark),
  /** `for` before it. */
  for: (place) => prevOf(place) === 'for',
  /** `in` or `near` after it. */
  in: (place) => /^(?:in|near)$/.test(nextOf(place) ?? ''),
  /** A describing word after it. */
  j: ({ after }, factsOf) => factsOf(after[0] ?? '')?.main === 'adjective',
  /** Things of which there are several after it. */
  n: (place, factsOf) => !isAfterDegree(place) && factsOf(nextOf(place) ?? '')?.inflection === 'plural',
  /** No word of degree before it. */
  nd: (place) => !isAfterDegree(place),
  /** `on` before it. */
  on: (place) => prevOf(place) === 'on',
  /** The beginning of its sentence. */
  s: ({ before }) => before.every(isMark),
  /** One who does it before it, and a describing word after it: `he looked sad`. */
  sa: (place, factsOf) => CONDITIONS.a?.(place, factsOf) === true && isOneDoer(prevOf(place), factsOf),
  /** After what is told, known, thought or dreamt: `dreaming about`. */
  ab: (place) => ABOUT.test(prevOf(place) ?? ''),
  /** After a fall, a leap or a step: `fell into`. */
  fi: (place, factsOf) => place.before.slice(-4).some((word) => INTO.test(word)) && opensObject(nextOf(place), factsOf),
  /** Where somebody goes, or takes what has been named: `went home`, `carried it home`. */
  hm: ({ before }) =>
    MOVES.test(before.at(-1) ?? '') ||
    (/^(?:her|him|it|me|them|us)$/.test(before.at(-1) ?? '') && CARRIES.test(before.at(-2) ?? '')),
  /** A form of `have` before it, and the end of its clause after it. */
  hv: (place) => isAfterHave(place) && endsClause(nextOf(place)),
  /** Nothing after it that makes `'s` a short `has`. */
  nb: ({ after }, factsOf) =>
    !/^(?:been|got|had|gone|just|never)$/.test(after[0] ?? '') &&
    !/^(?:past|participle)$/.test(factsOf(after[0] ?? '')?.inflection ?? ''),
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
  /** Opens a clause of its own that tells what happened then: `as she went`. */
  ac: ({ before, after }, factsOf) =>
    !/^(?:as|just|same|so|such)$/.test(before.at(-1) ?? '') &&
    SUBJECTS.has(after[0] ?? '') &&
    factsOf(after[1] ?? '')?.inflection === 'past' &&
    !/^(?:did|had|was|were)$/.test(after[1] ?? ''),
  /** A word before it that opens the phrase of one thing: not `some`, not `more`. */
  Ds: (place, factsOf) =>
    isDetermined(place, factsOf) &&
    !place.before.slice(-3).some((word) => /^(?:any|enough|more|much|no|some)$/.test(word)),
  /** Things or stuff after it, of which there is more: not `more than`, `some more`. */
  mx: ({ before, after }, factsOf) =>
    factsOf(after[0] ?? '')?.main === 'noun' &&
    !after.slice(0, 5).includes('than') &&
    !/^(?:any|far|few|many|much|no|once|some|the)$/.test(before.at(-1) ?? ''),
  /** `the` before it and several things after it: `the other birds`. */
  ox: (place, factsOf) => prevOf(place) === 'the' && factsOf(nextOf(place) ?? '')?.inflection === 'plural',
  /** A helping word before it, and no `ever` after it: `had never seen`. */
  ax: (place) =>
    /^(?:can|could|did|does|had|has|have|is|are|must|should|was|were|will|would)$|'ll$/.test(prevOf(place) ?? '') &&
    nextOf(place) !== 'ever',
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
  /** After a form of `be` or `get`, and for what after it: `ready to go`. */
  rd: (place) => isAfterLink(place) && /^(?:for|to)$/.test(nextOf(place) ?? ''),
  /** After what leaps or goes, and what is passed after it: `jumped over the fire`. */
  mv: (place, factsOf) =>
    (MOVES.test(prevOf(place) ?? '') ||
      /^(?:climb|hop|jump|leap|leapt|sprang|step)(?:s|ed|ing|ped|ping)?$/.test(prevOf(place) ?? '')) &&
    opensObject(nextOf(place), factsOf),
  /** `for` after it. */
  lf: (place) => nextOf(place) === 'for',
  /** One thing after it, that `a` can stand before. */
  na: ({ after }, factsOf) => {
    const facts = factsOf(after[0] ?? '')
    const isOne = facts?.main === 'noun' && facts.inflection === 'none' && !TIMES.test(after[0] ?? '')
    return isOne && /^[^aeiouh]/.test(after[0] ?? '')
  },
  /** No word that opens a phrase before it. */
  nD: (place, factsOf) => !isDetermined(place, factsOf),
  /** A `not` before it, in its clause. */
  ng: ({ before, after }) =>
    before.slice(-6).some((word) => /n't$|^(?:cannot|never|not)$/.test(word)) && after[0] !== 'else',
  /** The same of `her`, which may be the one who is given something. */
  nh: (place, factsOf) => CONDITIONS.nx?.(place, factsOf) === true && !GIVES.test(prevOf(place) ?? ''),
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
  /** No `of` after it. */
  nof: (place) => nextOf(place) !== 'of',
  /** `that` after it. */
  t: (place) => nextOf(place) === 'that',
  /** `to` after it. */
  to: (place) => nextOf(place) === 'to',
  /** `up` after it. */
  u: (place) => nextOf(place) === 'up',
  /** `there` before it and one thing after it: `there lived a man`. */
  th: (place) => prevOf(place) === 'there' && /^(?:a|an|another|one)$/.test(nextOf(place) ?? ''),
  /** how, what, where … after it, and a clause: not `where to`. */
  w: ({ after }) => /^(?:how|what|where|which|who|why)$/.test(after[0] ?? '') && after[1] !== 'to',
}

/** `the cow`, `playing`, and no `so much` later on. */
const isLoved = (place: Surroundings, factsOf: FactsOf): boolean =>
  !place.after.slice(0, 7).includes('much') &&
  (opensObject(nextOf(place), factsOf) || /[a-z]{2}ing$/.test(nextOf(place) ?? ''))

const isOneDoer = (prev: string | undefined, factsOf: FactsOf): boolean => {
  if (prev === undefined || /^(?:he|it|she)$/.test(prev)) return prev !== undefined
  const facts = factsOf(prev)
  return facts?.main === 'noun' && facts.inflection === 'none'
}
