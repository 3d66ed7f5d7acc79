// What the small words round a heteronym say about its class, without a tagger.
//
// Each clue looks at one thing and answers with the classes that it leaves open, or undefined. The first answer counts, so
// the clues stand from the surest to the weakest.

import type { Place } from './place.ts'
import { beforeIndex, findBefore, isEdge, isMark, isName } from './place.ts'
import type { WordClass } from './types.ts'
import { isPast, isPresent } from './verbs.ts'
import * as is from './vocabulary.ts'
import { has } from './vocabulary.ts'

export type Classes = readonly WordClass[]
type Clue = (place: Place, inflected: boolean) => Classes | undefined

const NOMINAL: Classes = ['noun', 'adjective']
const FINITE: Classes = ['verb', 'past']
const PREDICATE: Classes = ['adjective', 'past']
const ALL_THINGS: ReadonlySet<string> = new Set(['all', 'anything', 'everything', 'nothing', 'something'])
const SINGULAR_VERBS: ReadonlySet<string> = new Set(['has', "hasn't", 'is', "isn't", 'was', "wasn't"])

/** `to read`, `used to live`; not `next to lead`, nor `resort to insults`, which has an ending. */
const infinitive: Clue = (place, inflected) => {
  if (findBefore(place) !== 'to') return undefined
  if (inflected) return NOMINAL
  return has(is.BEFORE_NOUN_TO, findBefore(place, 2)) ? undefined : ['verb']
}

/** `can use`, `did not close`, `let's read`. */
const helper: Clue = (place) => {
  const before = findBefore(place)
  if (has(is.MODALS, before)) return ['verb']
  if (!has(is.HAVE, before)) return undefined
  // `has upset my plans`, `had aged by a year`
  return hasObject(place) || (/ed$/.test(place.words[place.index] ?? '') && isClosed(place))
    ? ['past']
    : ['past', 'noun', 'adjective']
}

/** `can help combat it`, `to help produce food`; `try and protest`. */
const helped: Clue = (place, inflected) => {
  if (inflected) return undefined
  const [first, second, third] = [findBefore(place), findBefore(place, 2), findBefore(place, 3)]
  if (has(is.HELP, first) && (has(is.MODALS, second) || second === 'to' || hasObject(place))) return ['verb']
  const isBare =
    third === undefined || has(is.MODALS, third) || third === 'to' || has(is.OBJECTS, third) || third === 'than'
  return first === 'and' && has(is.TRY, second) && isBare ? ['verb'] : undefined
}

/** `the floor and all objects`: no plural agrees with a verb in -s. */
const every: Clue = (place, inflected) =>
  inflected && has(is.WHOLES, place.words[place.index - 1]) ? NOMINAL : undefined

/** `Two record companies have it`: a number, then two nouns, then their verb. */
const numbered: Clue = (place, inflected) => {
  const [before, after, verb] = [
    place.words[place.index - 1],
    place.words[place.index + 1],
    place.words[place.index + 2],
  ]
  const isPair = !inflected && has(is.NUMBERS, before) && /[^s]s$/.test(after ?? '')
  return isPair && (has(is.BE, verb) || has(is.HAVE, verb) || has(is.MODALS, verb)) ? NOMINAL : undefined
}

/** `would let those geese lead your sister`: behind what somebody lets or helps. */
const letLong: Clue = (place, inflected) => {
  if (inflected || !hasObject(place)) return undefined
  for (let at = place.index - 1; at > Math.max(0, place.index - LONGEST_SUBJECT); at--) {
    const word = place.words[at]
    if (isMark(word) || has(is.PREPOSITIONS, word)) return undefined
    if (!has(is.DETERMINERS, word) && !has(is.PLURAL_DETERMINERS, word)) continue
    return has(is.LET, place.words[at - 1]) && at < place.index - 1 ? ['verb'] : undefined
  }
  return undefined
}

/** `all that lives`, `everything that objects`. */
const relative: Clue = (place, inflected) =>
  inflected && findBefore(place) === 'that' && has(ALL_THINGS, findBefore(place, 2)) ? ['verb'] : undefined

/** `do you live`, `are they close`, `have we read`; `can Tam bow`, `did Meg and Sid read`. */
const inversion: Clue = (place) => {
  const isSubject = (nth: number): boolean =>
    has(is.SUBJECTS, findBefore(place, nth)) ||
    has(is.SINGULAR_SUBJECTS, findBefore(place, nth)) ||
    isName(place, beforeIndex(place, nth))
  if (!isSubject(1)) return undefined
  let first = 1
  while (findBefore(place, first + 1) === 'and' && isSubject(first + 2)) first += 2
  const helper = findBefore(place, first + 1)
  if (has(is.MODALS, helper)) return ['verb']
  if (has(is.HAVE, helper)) return ['past']
  return has(is.BE, helper) ? PREDICATE : undefined
}

/** `let me use`, `helps his sister read`, `made it live`. */
const causative: Clue = (place) => {
  const [first, second, third] = [findBefore(place), findBefore(place, 2), findBefore(place, 3)]
  const object = has(is.OBJECTS, first) || isName(place, beforeIndex(place))
  if (object && has(is.LET, second)) return ['verb']
  if (object && has(is.MAKE, second)) return ['verb', 'adjective']
  if (first === 'her' && has(is.PERCEIVE, second)) return ['verb', 'noun', 'adjective']
  return has(is.LET, third) && has(is.POSSESSIVES, second) && !has(is.ADJECTIVES, first) ? ['verb'] : undefined
}

/** `the record`, `an old record`, `Tam's record`, `five uses`. */
const determiner: Clue = (place, inflected) => {
  const before = findBefore(place)
  const determiners = inflected ? is.PLURAL_DETERMINERS : is.DETERMINERS
  const loose = before === 'this' || before === 'any' || before === 'each'
  if (has(determiners, before) && !(loose && !isMark(findBefore(place, 2)))) return nominal(place)
  if (before !== undefined && /.'s$|s'$/.test(before) && !has(is.BE, before) && before !== "let's") return NOMINAL
  return undefined
}

/** `an old record`, `strong winds`; not `the old read the news`, nor `the red contrasts with it`. */
const adjective: Clue = (place, inflected) => {
  const before = findBefore(place)
  if (!has(is.ADJECTIVES, before) || (inflected && has(is.LOOSE_ADJECTIVES, before))) return undefined
  if (hasObject(place) || (inflected && place.words[place.index + 1] === 'with')) return undefined
  const second = findBefore(place, 2)
  const led = has(is.DETERMINERS, second) || has(is.PLURAL_DETERMINERS, second) || has(is.ADJECTIVES, second)
  if (led) return nominal(place)
  const loose = has(is.LOOSE_ADJECTIVES, before) || has(is.BE, second) || has(is.LINKING, second)
  return inflected || !loose ? nominal(place) : undefined
}

const isClosed = (place: Place): boolean => {
  const after = place.words[place.index + 1]
  return isEdge(after) || has(is.PREPOSITIONS, after) || has(is.ADVERBS, after) || after === 'well'
}

function hasObject(place: Place): boolean {
  return has(is.OBJECT_STARTS, place.words[place.index + 1])
}

function isDemonstrative(word: string | undefined): boolean {
  return word === 'this' || word === 'that' || word === 'which'
}

/** After `a`, `the` or an adjective: a noun where nothing that it could describe follows. */
function nominal(place: Place): Classes {
  const after = place.words[place.index + 1]
  const closed = isEdge(after) || has(is.BE, after) || has(is.HAVE, after) || has(is.MODALS, after)
  return closed || has(is.PREPOSITIONS, after) || after === 'and' || after === 'to' ? ['noun'] : NOMINAL
}

/** `of use`, `in tears`, `nothing but abuse`. */
const preposition: Clue = (place) => {
  const isOnly = findBefore(place) === 'but' && findBefore(place, 2) === 'nothing'
  return isOnly || has(is.PREPOSITIONS, findBefore(place)) ? NOMINAL : undefined
}

/** `shouting only compounds the trouble`, `which just upsets her`: between a small adverb and an object stands a verb. */
const adverb: Clue = (place, inflected) =>
  inflected && has(is.ADVERBS, place.words[place.index - 1]) && hasObject(place) ? ['verb'] : undefined

/** `is close`, `was read`, `are records of it`; after `there is` a noun; nothing after `all they do is`. */
const copula: Clue = (place, inflected) => {
  if (!has(is.BE, findBefore(place))) return undefined
  const second = findBefore(place, 2)
  if (second === 'do' || second === 'does' || second === 'did') return undefined
  return inflected || second === 'there' || findBefore(place) === "there's" ? NOMINAL : PREDICATE
}

/** `I use`, `they read`, `she reads`, `he wound`; not `brought to you live`. */
const subject: Clue = (place, inflected) => {
  const [before, second] = [findBefore(place), findBefore(place, 2)]
  if (second === 'to' || has(is.PREPOSITIONS, second)) return undefined
  if (has(is.SINGULAR_SUBJECTS, before)) return inflected ? ['verb'] : ['past']
  if (inflected) return before === 'who' || (isDemonstrative(before) && hasObject(place)) ? ['verb'] : undefined
  return has(is.PLURAL_SUBJECTS, before) || before === 'who' ? FINITE : undefined
}

/** `Wind the wool`, `ran up and wound it`. */
const order: Clue = (place, inflected) => {
  const [before, after] = [findBefore(place), place.words[place.index + 1]]
  const first = before === undefined || /^[.!?:“"]$/.test(before)
  if (!inflected && first && has(is.QUESTIONS, after)) return ['verb']
  if (inflected || !hasObject(place)) return undefined
  if (first) return ['verb']
  return isMark(before) || has(is.CLAUSE_STARTS, before) ? FINITE : undefined
}

/** `scant progress has been made`: what stands before `has` or `is` is its subject. */
const beforeSingular: Clue = (place, inflected) => {
  const isSubject = !inflected && has(SINGULAR_VERBS, place.words[place.index + 1])
  return isSubject && !has(is.SUBJECTS, findBefore(place)) ? ['noun'] : undefined
}

/** `Lead is soft`, `Tears were in his eyes`, `Tears blurred it`. */
const firstSubject: Clue = (place, inflected) => {
  if (!isMark(findBefore(place))) return undefined
  const after = place.words[place.index + 1]
  if (inflected && findBefore(place) === undefined && isPast(after)) return ['noun']
  return has(is.BE, after) || has(is.HAVE, after) || has(is.MODALS, after) ? ['noun'] : undefined
}

/** `record of`, `uses of`. */
const followedByOf: Clue = (place) => (place.words[place.index + 1] === 'of' ? ['noun'] : undefined)

/** `came close`, `looked content`; not `come read it`. */
const linking: Clue = (place, inflected) =>
  !inflected && has(is.LINKING, findBefore(place)) && !hasObject(place) ? ['adjective', 'adverb'] : undefined

/** `very close`, `too minute`. */
const degree: Clue = (place) => (has(is.DEGREES, findBefore(place)) ? ['adjective', 'adverb'] : undefined)

/** `yelled insults at him`, `keeps records in it`: after a verb that has its tense, and before no object, stands a noun. */
const afterVerb: Clue = (place, inflected) => {
  const [before, after] = [findBefore(place), place.words[place.index + 1]]
  if (!inflected || !(isPast(before) || isPresent(before))) return undefined
  return isEdge(after) || (has(is.PREPOSITIONS, after) && after !== 'with') ? ['noun'] : undefined
}

/** `Gran attributes her long life to it`, `a warm bath contents the baby`: an object cannot follow a plural. */
const beforeObject: Clue = (place, inflected) => {
  const after = place.words[place.index + 1]
  const isObject = has(is.POSSESSIVES, after) || after === 'the' || after === 'a' || after === 'an'
  return inflected && isObject && !isMark(findBefore(place)) ? ['verb'] : undefined
}

/** `how will the new road impact us`: behind a helper and the subject that follows it. */
const longInversion: Clue = (place, inflected) => {
  if (inflected || !hasObject(place)) return undefined
  for (let at = place.index - 2; at > Math.max(0, place.index - LONGEST_SUBJECT); at--) {
    const word = place.words[at]
    if (isMark(word) || has(is.PREPOSITIONS, word)) return undefined
    if (!has(is.DETERMINERS, word)) continue
    const helper = place.words[at - 1]
    const before = place.words[at - 2]
    return has(is.MODALS, helper) && (isMark(before) || has(is.QUESTIONS, before)) ? ['verb'] : undefined
  }
  return undefined
}

const LONGEST_SUBJECT = 5

const CLUES: readonly Clue[] = [
  infinitive,
  inversion,
  causative,
  helper,
  helped,
  letLong,
  relative,
  every,
  numbered,
  longInversion,
  adverb,
  determiner,
  adjective,
  degree,
  preposition,
  copula,
  subject,
  order,
  firstSubject,
  beforeSingular,
  followedByOf,
  linking,
  afterVerb,
  beforeObject,
]

/** The classes that the neighbours leave open; undefined where they say nothing. `inflected`: the word ends in its own -s. */
export function findClasses(place: Place, inflected: boolean): Classes | undefined {
  for (const clue of CLUES) {
    const classes = clue(place, inflected)
    if (classes) return classes
  }
  return undefined
}
