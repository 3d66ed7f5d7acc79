// What the small words round a heteronym say about its class, without a tagger.
//
// Each clue looks at one thing and answers with the classes that it leaves open, or undefined. The first answer counts, so
// the clues stand from the surest to the weakest.

import type { Place } from './place.ts'
import { beforeIndex, findBefore, isEdge, isMark, isName } from './place.ts'
import type { WordClass } from './types.ts'
import { isPast, isPresent } from './verbs.ts'
import * as is from './vocabulary.ts'

export type Classes = readonly WordClass[]
type Clue = (place: Place, inflected: boolean) => Classes | undefined

const NOMINAL: Classes = ['noun', 'adjective']
const FINITE: Classes = ['verb', 'past']
const PREDICATE: Classes = ['adjective', 'past']
const has = (group: ReadonlySet<string>, word: string | undefined): boolean => word !== undefined && group.has(word)

/** `to read`, `used to live`; not `next to lead`. */
const infinitive: Clue = (place) =>
  findBefore(place) === 'to' && !has(is.BEFORE_NOUN_TO, findBefore(place, 2)) ? ['verb'] : undefined

/** `can use`, `did not close`, `let's read`. */
const helper: Clue = (place) => {
  const before = findBefore(place)
  if (has(is.MODALS, before)) return ['verb']
  return has(is.HAVE, before) ? ['past', 'noun', 'adjective'] : undefined
}

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

/** `Lead is soft`, `Tears were in his eyes`. */
const firstSubject: Clue = (place) => {
  if (!isMark(findBefore(place))) return undefined
  const after = place.words[place.index + 1]
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
  const [before, after] = [findBefore(place) ?? '', place.words[place.index + 1]]
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
