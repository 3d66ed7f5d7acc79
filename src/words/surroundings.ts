// The words and marks around a word in its sentence, and what they say of the word's place there.

import type { PartOfSpeech, WordFacts } from './facts.ts'

export interface Surroundings {
  /** Words in lower case and marks, in order, up to the word. */
  readonly before: readonly string[]
  /** The same after it. */
  readonly after: readonly string[]
}

export type FactsOf = (word: string) => WordFacts | undefined

export const NOWHERE: Surroundings = { before: [], after: [] }

const toSet = (words: string): ReadonlySet<string> => new Set(words.split(' '))

/** Words that open a noun phrase. */
export const DETERMINERS = toSet(
  'a an another any both each every five four her his its many my no one our six some ten that the their these this those three two your',
)
export const SUBJECTS = toSet('he i it she they we who you there')
const OBJECTS = toSet('her him it me them us you')
const PERSONS = toSet('her him me them us you')
/** After these a doing word stands in its base form. */
export const BEFORE_BASE = toSet(
  "can can't could couldn't did didn't do does doesn't don't let's may might must not shall should to will won't would wouldn't",
)
const BE = toSet("am are be been being i'm is isn't it's was wasn't were weren't we're you're they're he's she's")
const HAVE = toSet("had hadn't has hasn't have haven't having i've they've we've you've i'd he'd she'd they'd we'd")
export const PREPOSITIONS = toSet(
  'about above across after against along among around at before behind below beneath beside between by down during for from in inside into near of off on onto out outside over past round through to toward towards under until up upon with within without',
)
const PARTICLES = toSet(
  'across along around away back down home in inside into off on onto out outside over past through to toward towards under up',
)
const BACK = toSet('back down home in off out up')
const JOINING = toSet('after and as because before but if or so than then though until when where while')
/** Words that say how much: `very big`. */
export const DEGREES = toSet('as how pretty quite rather really so too very')
const LINKING = toSet('became become felt feel feels get gets got look looked looks seem seemed seems stay stayed')
const GLUE = toSet('a_bit all also always at_last even ever just never not now often only really soon still then')

const ABOUT = /^(?:dream|know|sing|sang|speak|spoke|stor(?:y|ies)|talk|tell|think|thought|told)(?:s|t|ing|ed)?$/
const INTO =
  /^(?:climb|drop|dropp|fall|hop|hopp|jump|leap|pour|slip|slipp)(?:s|ing|ed|t)?$|^(?:fell|get|gets|got|put|puts|putting|stepped)$/
/** What is somebody's own, so that it is told whose. */
const OWN =
  /^(?:age|arm|aunt|back|body|boss|brother|child|children|dad|daughter|ear|eye|face|family|father|feet|finger|foot|friend|gran|grand[a-z]+|hair|hand|head|heart|home|hope|husband|joy|knee|leg|life|lip|live|love|mind|mom|mother|mouth|mum|name|nose|pal|parent|skin|sister|son|stomach|surprise|teacher|teeth|thank|tooth|turn|uncle|way|wife|wish|work)s?$/

const TIMES = /^(?:afternoon|day|evening|moment|month|morning|night|time|week|year)s?$/

const isMark = (token: string): boolean => !/[\p{L}\p{N}]/u.test(token)
const isOpenMark = (token: string): boolean => /^[“"”«»]+$/.test(token)

export const prevOf = ({ before }: Surroundings): string | undefined => before.at(-1)
export const nextOf = ({ after }: Surroundings): string | undefined => after[0]

/** The last word before that is no adverb in between: `was` in `was just`. */
function ruler({ before }: Surroundings): string | undefined {
  for (let i = before.length - 1; i >= 0; i--) {
    const word = before[i] ?? ''
    if (!GLUE.has(word) && !/ly$/.test(word) && !DEGREES.has(word)) return word
  }
  return undefined
}

const endsClause = (next: string | undefined): boolean => next === undefined || isMark(next) || JOINING.has(next)

/** Whether what follows can be what is acted on: `him`, `the cow`, `red hens`. */
function opensObject(next: string | undefined, factsOf: FactsOf): boolean {
  if (next === undefined || isMark(next)) return false
  if (next === 'that') return false
  if (DETERMINERS.has(next) || OBJECTS.has(next) || /'s$/.test(next)) return true
  if (PREPOSITIONS.has(next) || JOINING.has(next) || PARTICLES.has(next)) return false
  const main = factsOf(next)?.main
  return main === 'noun' || main === 'adjective' || main === undefined
}

/** A noun with a determiner before it, other words that describe it in between: `the neighbouring village`. */
export const isDetermined = ({ before }: Surroundings, factsOf: FactsOf): boolean => {
  for (const word of before.slice(-4).reverse()) {
    if (DETERMINERS.has(word) || /'s$/.test(word)) return true
    if (isMark(word) || PREPOSITIONS.has(word) || JOINING.has(word) || BE.has(word)) return false
    if (factsOf(word)?.main === 'verb' && !/(?:ed|ing)$/.test(word)) return false
  }
  return false
}

/** After `did`, `will` and their like a doing word stands in its base form, with little words between: `did not even smile`. */
export const isAfterHelper = (place: Surroundings): boolean => BEFORE_BASE.has(ruler(place) ?? '')
export const isAfterHave = (place: Surroundings): boolean => HAVE.has(ruler(place) ?? '')
export const isAfterBe = (place: Surroundings): boolean => BE.has(ruler(place) ?? '')
export const isAfterLink = (place: Surroundings): boolean => isAfterBe(place) || LINKING.has(ruler(place) ?? '')
export const isAfterDegree = (place: Surroundings): boolean => DEGREES.has(prevOf(place) ?? '')

/** Conditions of the table of stand-ins, by their sign there. */
export const CONDITIONS: Readonly<Record<string, (place: Surroundings, factsOf: FactsOf) => boolean>> = {
  /** `a` before it. */
  A: (place) => prevOf(place) === 'a',
  /** A determiner or a describing word before it. */
  D: isDetermined,
  /** `in` before it. */
  N: (place) => prevOf(place) === 'in',
  /** A person after it: him, them. */
  P: ({ after }) => PERSONS.has(after[0] ?? '') && !(after[0] === 'her' && after[1] !== undefined && !isMark(after[1])),
  /** `the` before it. */
  T: (place) => prevOf(place) === 'the',
  /** A describing word after it, and nothing that this describes. */
  a: ({ after }, factsOf) => {
    const at = DEGREES.has(after[0] ?? '') ? 1 : 0
    return factsOf(after[at] ?? '')?.main === 'adjective' && (endsClause(after[at + 1]) || after[at + 1] === 'with')
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
  i: (place) => {
    const next = nextOf(place)
    return endsClause(next) || PREPOSITIONS.has(next ?? '') || PARTICLES.has(next ?? '') || /[a-z]ly$/.test(next ?? '')
  },
  /** `it` shortly before it. */
  it: ({ before }) => before.slice(-3).some((word) => word === 'it' || word === "it's"),
  /** Where to, after it: up, into, home. */
  m: ({ after }) =>
    PARTICLES.has(after[0] ?? '') &&
    !/^(?:from|with)$/.test(after[1] ?? '') &&
    !(after[0] === 'to' && OBJECTS.has(after[1] ?? '')),
  /** What is acted on, after it. */
  o: (place, factsOf) => opensObject(nextOf(place), factsOf),
  /** `of` after it. */
  of: (place) => nextOf(place) === 'of',
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
  /** After a form of `go` or `come`, to the end of its clause: `went home`. */
  hm: (place) =>
    /^(?:go|goes|going|gone|went|came|come|comes|coming|ran|run)$/.test(prevOf(place) ?? '') &&
    (endsClause(nextOf(place)) || /^(?:again|alone|early|late|soon|to|with)$/.test(nextOf(place) ?? '')),
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
    /^(?:can|could|did|does|had|has|have|is|are|must|should|was|were|will|would)$/.test(prevOf(place) ?? '') &&
    nextOf(place) !== 'ever',
  /** One that does it before it, and what it is done to or that one does it after it: `he loved the cow`. */
  lk: (place, factsOf) => {
    const prev = prevOf(place)
    // `fond of his dog so much` is no good English.
    if (place.after.slice(0, 7).includes('much')) return false
    const isOne = prev === 'i' || (prev !== undefined && factsOf(prev) === undefined) || isOneDoer(prev, factsOf)
    return isOne && (opensObject(nextOf(place), factsOf) || /[a-z]{2}ing$/.test(nextOf(place) ?? ''))
  },
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
    before.slice(-4).some((word) => /n't$|^(?:cannot|never|not)$/.test(word)) && after[0] !== 'else',
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
  /** how, what, where … after it. */
  w: ({ after }) => /^(?:how|what|where|which|who|why)$/.test(after[0] ?? ''),
}

const isOneDoer = (prev: string | undefined, factsOf: FactsOf): boolean => {
  if (prev === undefined || /^(?:he|it|she)$/.test(prev)) return prev !== undefined
  const facts = factsOf(prev)
  return facts?.main === 'noun' && facts.inflection === 'none'
}

/** Which part of speech a word is asked for as, where nothing before it speaks against that. */
export const mayStandAs = (part: PartOfSpeech, place: Surroundings): boolean =>
  !(part === 'noun' && isAfterDegree(place))
