// The words and marks around a word in its sentence, and what they say of the word's place there.

import { hasLetterOrDigit } from '../letter-kinds.ts'
import type { PartOfSpeech, WordFacts } from './facts.ts'

export interface Surroundings {
  /** Words in lower case and marks, in order, up to the word. */
  readonly before: readonly string[]
  /** The same after it. */
  readonly after: readonly string[]
}

export type FactsOf = (word: string) => WordFacts | undefined

export const NOWHERE: Surroundings = { before: [], after: [] }

export const toSet = (words: string): ReadonlySet<string> => new Set(words.split(' '))

/** Words that open a noun phrase. */
export const DETERMINERS = toSet(
  'a an another any both each every five four her his its many my no one our six some ten that the their these this those three two your',
)
export const SUBJECTS = toSet('he i it she they we who you there')
export const OBJECTS = toSet('her him it me them us you')
/** After these a doing word stands in its base form. */
export const BEFORE_BASE = toSet(
  "can can't could couldn't did didn't do does doesn't don't let's may might must not shall should to will won't would wouldn't he'll i'll it'll she'll that'll there'll they'll we'll who'll you'll",
)
const BE = toSet("am are be been being i'm is isn't it's was wasn't were weren't we're you're they're he's she's")
const HAVE = toSet("had hadn't has hasn't have haven't having i've they've we've you've i'd he'd she'd they'd we'd")
export const PREPOSITIONS = toSet(
  'about above across after against along among around at before behind below beneath beside between by down during for from in inside into near of off on onto out outside over past round through to toward towards under until up upon with within without',
)
export const PARTICLES = toSet(
  'across along around away back down home in inside into off on onto out outside over past through to toward towards under up',
)
const JOINING = toSet('after and as because before but if or so than then though until when where while')
/** Words that say how much: `very big`. */
export const DEGREES = toSet('as how pretty quite rather really so too very')
const LINKING = toSet(
  'became become felt feel feels get gets getting got keep keeps kept look looked looks seem seemed seems stay stayed',
)
const GLUE = toSet('a_bit all also always at_last even ever just never not now often only really soon still then')

export const isMark = (token: string): boolean => !hasLetterOrDigit(token)

/** A mark, or the edge of the sentence. */
export const isEdge = (token: string | undefined): boolean => token === undefined || isMark(token)

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

/** What can only begin another clause: `when they came he sat`. */
const BEGINS_CLAUSE = toSet('he i she they we')
/** What may come last in a clause, after what the clause needs: `he sat again`. */
const LAST = toSet(
  'again alone anymore anyway early either here late now soon there today together tomorrow tonight too yesterday yet',
)

export const endsClause = (next: string | undefined): boolean =>
  next === undefined || isMark(next) || JOINING.has(next) || BEGINS_CLAUSE.has(next) || LAST.has(next)

/** Whether what follows can be what is acted on: `him`, `the cow`, `red hens`. */
export function opensObject(next: string | undefined, factsOf: FactsOf): boolean {
  if (next === undefined || isMark(next)) return false
  if (next === 'that') return false
  if (DETERMINERS.has(next) || OBJECTS.has(next) || /'s$/.test(next)) return true
  if (PREPOSITIONS.has(next) || JOINING.has(next) || PARTICLES.has(next)) return false
  const main = factsOf(next)?.main
  return main === 'noun' || main === 'adjective' || main === undefined
}

const isDoer = (word: string | undefined, factsOf: FactsOf): boolean =>
  word !== undefined && !isMark(word) && (SUBJECTS.has(word) || /^(?:noun|undefined)$/.test(`${factsOf(word)?.main}`))

/** A noun with a determiner before it, other words that describe it in between: `the neighbouring village`. */
export const isDetermined = ({ before }: Surroundings, factsOf: FactsOf): boolean => {
  for (let at = before.length - 1; at >= 0 && at >= before.length - 4; at--) {
    const word = before[at] ?? ''
    if (DETERMINERS.has(word) || /'s$/.test(word) || /^(?:what|which)$/.test(word)) return true
    // `a big, big hat`
    if (word === ',' && factsOf(before[at - 1] ?? '')?.main === 'adjective') continue
    if (isMark(word) || PREPOSITIONS.has(word) || JOINING.has(word) || BE.has(word)) return false
    // `the burned skin`, but `his father returned home`
    const isDeed = factsOf(word)?.main === 'verb' && (!/(?:ed|ing)$/.test(word) || isDoer(before[at - 1], factsOf))
    if (isDeed) return false
  }
  return false
}

/** After `did`, `will` and their like a doing word stands in its base form, with little words between: `did not even smile`. */
export const isAfterHelper = (place: Surroundings): boolean => BEFORE_BASE.has(ruler(place) ?? '')
export const isAfterHave = (place: Surroundings): boolean => HAVE.has(ruler(place) ?? '')
export const isAfterBe = (place: Surroundings): boolean => BE.has(ruler(place) ?? '')
export const isAfterLink = (place: Surroundings): boolean => isAfterBe(place) || LINKING.has(ruler(place) ?? '')
export const isAfterDegree = (place: Surroundings): boolean => DEGREES.has(prevOf(place) ?? '')

/** Which part of speech a word is asked for as, where nothing before it speaks against that. */
export const mayStandAs = (part: PartOfSpeech, place: Surroundings): boolean =>
  !(part === 'noun' && isAfterDegree(place))
