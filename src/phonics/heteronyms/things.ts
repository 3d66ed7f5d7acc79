// What makes a heteronym a thing, or what describes one: a determiner, a preposition, its own verb behind it.

import { type Classes, type Clue, hasObject, isClosed, NOMINAL } from './clue.ts'
import { isAloneThing, isBehindOneThing, isOfMany, isThing, ONE } from './one-thing.ts'
import { beforeIndex, findBefore, isEdge, isMark, isName, type Place } from './place.ts'
import { isPast, isPresent, isTenseless, isVerbal } from './verbs.ts'
import * as is from './vocabulary.ts'
import { has } from './vocabulary.ts'

const SINGULAR_VERBS: ReadonlySet<string> = new Set(['has', "hasn't", 'is', "isn't", 'was', "wasn't"])
const PLURAL_VERBS: ReadonlySet<string> = new Set(['are', "aren't", 'have', "haven't", 'were', "weren't"])
const HELPERS: ReadonlySet<string> = new Set('can could may might must should will would'.split(' '))
const TIMES: ReadonlySet<string> = new Set(['as', 'because', 'before', 'if', 'since', 'until', 'when', 'while'])

/** `the floor and all objects`: no plural agrees with a verb in -s. */
export const every: Clue = (place, inflected) =>
  inflected && has(is.WHOLES, place.words[place.index - 1]) ? NOMINAL : undefined

/** `House Mouse’s tail was long`: whose it is, and no order. */
export const houseOf: Clue = (place) => {
  const { words, index } = place
  const isFirst = words[index] === 'house' && isMark(words[index - 1]) && isName(place, index + 1)
  return isFirst && /.'s$/.test(words[index + 1] ?? '') && words.slice(index + 3).some(isVerbal) ? NOMINAL : undefined
}

/** `Two record companies have it`: a number, then two nouns, then their verb. */
export const numbered: Clue = (place, inflected) => {
  const [before, after, verb] = [
    place.words[place.index - 1],
    place.words[place.index + 1],
    place.words[place.index + 2],
  ]
  const isPair = !inflected && has(is.NUMBERS, before) && /[^s]s$/.test(after ?? '')
  return isPair && (has(is.BE, verb) || has(is.HAVE, verb) || has(is.MODALS, verb)) ? NOMINAL : undefined
}

/** An adverb in -ly, which `findBefore` passes over; `only` stands before things too. */
function isMannerBefore(place: Place): boolean {
  const before = place.words[place.index - 1]
  return beforeIndex(place) < place.index - 1 && /[a-z]{3}ly$/.test(before ?? '') && before !== 'only'
}

/** `the record`, `an old record`, `Tam's record`, `five uses`. */
export const determiner: Clue = (place, inflected) => {
  const before = findBefore(place)
  // `Class Two proudly presents …`: how somebody does it stands before no thing.
  if (inflected && isMannerBefore(place)) return undefined
  const determiners = inflected ? is.PLURAL_DETERMINERS : is.DETERMINERS
  if (before === 'whose') return nominal(place)
  const loose = before === 'this' || before === 'any' || before === 'each'
  if (has(determiners, before) && !(loose && !isMark(findBefore(place, 2)))) return nominal(place)
  // `their grandparents' house`
  if (before === "'" && /s$/.test(place.words[place.index - 2] ?? '')) return NOMINAL
  if (before !== undefined && /.'s$|s'$/.test(before) && !has(is.BE, before) && before !== "let's") return NOMINAL
  return undefined
}

const ANYTHING: ReadonlySet<string> = new Set(
  'anybody anyone anything everything nobody nothing somebody someone something'.split(' '),
)

/** Before many, and never a subject: `those miserable lives`. */
const MANY_LEADS: ReadonlySet<string> = new Set('few many several these those'.split(' '))

/** `miserable` and `famous` by their ending, and not `constable`. */
export const isMadeAdjective = (word = ''): boolean =>
  /[a-z]{3}([ai]ble|ful|ial|ical|less|ous)$|^(?:normal|personal|private)$/.test(word) &&
  !/^(?:consta|sta|ta|vegeta)ble$|^(?:offic|tr)ial$/.test(word)

/** `an old record`, `a valuable present`, `strong winds`; not `the old read the news`, nor `the red contrasts with it`. */
export const adjective: Clue = (place, inflected) => {
  const [before, second] = [findBefore(place), findBefore(place, 2)]
  const led = has(is.DETERMINERS, second) || has(is.PLURAL_DETERMINERS, second) || has(is.ADJECTIVES, second)
  const isMany = !inflected || has(is.POSSESSIVES, second) || has(MANY_LEADS, second)
  // `it has historical content`; not `it is careful`
  const isTaken = !inflected && isClosed(place) && !isMark(second) && !has(is.BE, second) && !has(is.LINKING, second)
  const isMade = (led || isTaken) && isMany && isMadeAdjective(before)
  if (!isMade && (!has(is.ADJECTIVES, before) || (inflected && has(is.LOOSE_ADJECTIVES, before)))) return undefined
  // `the man in black objects`
  if (inflected && second === 'in' && has(is.COLOURS, before)) return undefined
  // `something big lives there`
  if (has(ANYTHING, second)) return inflected ? ['verb'] : undefined
  const after = place.words[place.index + 1]
  // `Our school permits dogs`
  if (inflected && is.looksPlural(after) && !isVerbal(after)) return undefined
  // `lovely presents you sent me`
  if (inflected && has(is.SUBJECTS, after) && isPast(place.words[place.index + 2])) return ['noun']
  if (hasObject(place) || (inflected && isWith(place)) || (!inflected && isOfMany(place))) return undefined
  if (led) return nominal(place)
  // `stripes of gold and green alternate`
  if (second === 'and' && has(is.COLOURS, before)) return undefined
  const loose = has(is.LOOSE_ADJECTIVES, before) || has(is.BE, second) || has(is.LINKING, second)
  return inflected || !loose ? nominal(place) : undefined
}

/** `contrasts with it`, `contrasts strongly with it` */
const isWith = ({ words, index }: Place): boolean =>
  words[index + 1] === 'with' || (/..ly$/.test(words[index + 1] ?? '') && words[index + 2] === 'with')

/** After `a`, `the` or an adjective: a noun where nothing that it could describe follows. */
function nominal(place: Place): Classes {
  const after = place.words[place.index + 1]
  const closed = isEdge(after) || has(is.BE, after) || has(is.HAVE, after) || has(is.MODALS, after)
  return closed ||
    has(is.PREPOSITIONS, after) ||
    has(is.SUBJECTS, after) ||
    has(is.CLAUSE_JOINS, after) ||
    after === 'to'
    ? ['noun']
    : NOMINAL
}

/** `of use`, `in tears`, `nothing but abuse`, `no such object`. */
export const preposition: Clue = (place) => {
  const isOnly = findBefore(place) === 'but' && findBefore(place, 2) === 'nothing'
  if (isOnly && hasObject(place)) return undefined
  return isOnly || findBefore(place) === 'such' || has(is.PREPOSITIONS, findBefore(place)) ? NOMINAL : undefined
}

/** `scant progress has been made`, `some other suspect must be found`: what stands before `has` or `must` is its subject. */
export const beforeSingular: Clue = (place, inflected) => {
  const after = place.words[place.index + 1]
  // `those that rebel must flee`
  if (has(is.RELATIVES, findBefore(place))) return undefined
  const isSubject = !inflected && (has(SINGULAR_VERBS, after) || (has(HELPERS, after) && !isBehindDoer(place)))
  return isSubject && !has(is.SUBJECTS, findBefore(place)) ? ['noun'] : undefined
}

/** Many, or somebody by name, who may do it: `the tools farmers use will last`. */
const isBehindDoer = (place: Place): boolean => {
  const at = beforeIndex(place)
  return isName(place, at) || is.isMany(place.words[at])
}

/** `their future lives are`, `the records were`, `presents that were left`: no verb in -s stands before the verb of many. */
export const beforePlural: Clue = ({ words, index }, inflected) => {
  const after = has(is.RELATIVES, words[index + 1]) ? words[index + 2] : words[index + 1]
  return inflected && has(PLURAL_VERBS, after) ? ['noun'] : undefined
}

const SUBJECT_NEXT: ReadonlySet<string> = new Set(
  'although because if since though unless until when whenever while'.split(' '),
)

/** `because increases in it are rare`: nobody stands there who does it. */
export const joinedFirst: Clue = ({ words, index }, inflected) =>
  inflected && has(SUBJECT_NEXT, words[index - 1]) ? ['noun'] : undefined

/** `a stork lives`, `every wise old owl objects`: behind one thing that `a` or `every` leads stands no plural. */
export const behindOne: Clue = (place, inflected) => {
  const thing = beforeIndex(place)
  if (!inflected || thing !== place.index - 1 || !isThing(place.words[thing] ?? '')) return undefined
  let at = thing - 1
  while (has(is.ADJECTIVES, place.words[at])) at--
  return has(ONE, place.words[at]) ? ['verb'] : undefined
}

/** `Lead is soft`, `Tears were in his eyes`, `Tears blurred it`, `when winds blew`. */
export const firstSubject: Clue = (place, inflected) => {
  const after = place.words[place.index + 1]
  if (inflected && has(TIMES, findBefore(place)) && (isPast(after) || isTenseless(after))) return ['noun']
  if (!isMark(findBefore(place))) return undefined
  if (inflected && findBefore(place) === undefined && isPast(after)) return ['noun']
  // `Wind turns the blades`
  const isSubject =
    !inflected && /[a-z]{2}[^su']s$/.test(after ?? '') && has(is.OBJECT_STARTS, place.words[place.index + 2])
  if (isSubject && findBefore(place) === undefined) return ['noun']
  return has(is.BE, after) || has(is.HAVE, after) || has(is.MODALS, after) ? ['noun'] : undefined
}

/** `record of`, `uses of`. */
export const followedByOf: Clue = (place) => (place.words[place.index + 1] === 'of' ? ['noun'] : undefined)

/** `yelled insults at him`, `keeps records in it`: after a verb that has its tense, and before no object, stands a noun. */
export const afterVerb: Clue = (place, inflected) => {
  const [before, after] = [findBefore(place), place.words[place.index + 1]]
  if (!inflected || !(isPast(before) || isPresent(before)) || isNameFirst(place)) return undefined
  // `love that is shared increases`
  if (has(is.BE, findBefore(place, 2))) return undefined
  return isEdge(after) || (has(is.PREPOSITIONS, after) && after !== 'with') ? ['noun'] : undefined
}

/** Of one who does it, and no plural of a thing: `collects`, and not `guides`. */
const TAKES: ReadonlySet<string> = new Set(
  (
    'brings buys carries collects contains eats enjoys finds gets gives hates hears holds keeps knows likes loves needs owns prefers provides receives ' +
    'sells sends shows spreads steals throws uses wants wears'
  ).split(' '),
)

/** `The lorry collects refuse`, `Dad gets upset`: no bare verb stands behind one in -s, and no verb in -s either. */
export const takenByOne: Clue = ({ words, index }, inflected) => {
  // `the man who sells uses a cart`
  if (!has(TAKES, words[index - 1]) || has(is.RELATIVES, words[index - 2])) return undefined
  return inflected ? ['noun'] : ['noun', 'adjective', 'adverb', 'past']
}

/** `With squeals and protests the pigs ran`: before the first comma or subject stand things. */
export const ledPair: Clue = ({ words, index }, inflected) => {
  const isLed = has(is.ALL_PREPOSITIONS, words[index - 3]) && isMark(words[index - 4])
  const isPair = has(AND, words[index - 1]) && is.looksPlural(words[index - 2])
  const after = words[index + 1]
  return inflected && isLed && isPair && (has(is.DETERMINERS, after) || has(is.SUBJECTS, after)) ? ['noun'] : undefined
}
const AND: ReadonlySet<string> = new Set(['and', 'or'])

/** `The clock, which records the time, is old`. */
export const behindWhich: Clue = ({ words, index }, inflected) => {
  const isAside = words[index - 1] === 'which' && words[index - 2] === ','
  const after = words[index + 1]
  return inflected && isAside && !isVerbal(after) && !isEdge(after) ? ['verb'] : undefined
}

/** `Fred sows in May`: a sentence hardly begins with a past in -ed. */
const isNameFirst = (place: Place): boolean => {
  const at = beforeIndex(place)
  return isMark(place.words[at - 1]) && /ed$/.test(place.words[at] ?? '')
}

/** `tools for home use`: nobody uses it there. */
export const useOfThing: Clue = (place) =>
  place.words[place.index] === 'use' && isClosed(place) && isAloneThing(place, place.index - 1) ? ['noun'] : undefined

/** `what a queer house this is`: behind one thing stands no bare verb. */
export const behindOneThing: Clue = (place, inflected) =>
  !inflected && isBehindOneThing(place) ? ['noun', 'adjective', 'past'] : undefined
