// How many, which and what a look-alike is: one, some, many of something, asked for, given or there.

import { hasHelper } from './clause.ts'
import { type Clue, FINITE, hasObject, isClosing, NOMINAL } from './clue.ts'
import { isOfMany } from './one-thing.ts'
import { beforeIndex, isEdge, isMark, isName, type Place } from './place.ts'
import { isMadeAdjective } from './things.ts'
import { DESCRIBING, needsObject } from './valency.ts'
import { isPast, isPresent, isVerbal } from './verbs.ts'
import * as is from './vocabulary.ts'
import { has } from './vocabulary.ts'

/** `Name one object that is round`; not `this one`, nor `no one present`. */
export const one: Clue = (place, inflected) => {
  const { words, index } = place
  const second = words[index - 2]
  const isPronoun = has(is.DETERMINERS, second) || second === 'that' || second === 'which' || second === 'some'
  if (inflected || words[index - 1] !== 'one' || isPronoun) return undefined
  return words[index + 1] === 'that' || !hasObject(place) ? NOMINAL : undefined
}

/** `Are there presents in it?`, `suspect number one`, `which project did you like?`, `Have you any excuses?` */
export const asked: Clue = (place, inflected) => {
  const { words, index } = place
  const [before, second, after] = [words[index - 1], words[index - 2], words[index + 1]]
  // `Suspect number one`, `You two use that table`
  if (
    after === 'number' &&
    (words[index + 2] === 'one' || has(is.NUMBERS, words[index + 2]) || /^\d/.test(words[index + 2] ?? ''))
  )
    return NOMINAL
  if (!inflected && has(is.NUMBERS, before) && (second === 'you' || second === 'we')) return FINITE
  if (before === 'there' && has(is.BE, second)) return NOMINAL
  const isHelper = [is.MODALS, is.BE, is.HAVE].some((group) => has(group, after))
  // `what uses you can find for it`; not `what upsets you most`
  const asksWhat = inflected && before === 'what' && has(is.SUBJECTS, after) && after !== 'it'
  const rest = words.slice(index + 2, index + 7)
  const isOfYou = has(is.MODALS, rest[0]) || (rest[0] === 'or' && rest.some((word) => has(is.MODALS, word)))
  if (asksWhat && (after !== 'you' || isOfYou)) return NOMINAL
  if (inflected && (before === 'any' || (before === 'what' && isEdge(after)))) return NOMINAL
  // `They neither use nor want it`, `could neither live nor die`; not `minding neither wind nor weather`
  const isDoing = has(is.SUBJECTS, second) || has(is.MODALS, second)
  const isPair = (after === 'nor' || after === 'or') && isDoing
  // `We could either use glue or tape`
  if (!inflected && before === 'either' && (has(is.MODALS, second) || second === 'to')) return ['verb']
  if (!inflected && (before === 'either' || before === 'neither')) return isPair || hasObject(place) ? FINITE : NOMINAL
  // `Insult after insult flew`
  if ((after === 'after' || after === 'by') && words[index + 2] === words[index]) return NOMINAL
  return (before === 'which' || before === 'what') && isHelper ? NOMINAL : undefined
}

/** `They gave us presents`: nobody does it who stands as `us`. */
export const given: Clue = (place, inflected) => {
  const { words, index } = place
  const lead = words[index - 2]
  const isGiven = inflected && has(DIRECT, words[index - 1]) && !has(is.ALL_PREPOSITIONS, lead)
  return isGiven && !hasObject(place) ? ['noun'] : undefined
}
const DIRECT: ReadonlySet<string> = new Set(['him', 'me', 'them', 'us'])

/** `We need more transport.` */
export const quantity: Clue = (place, inflected) => {
  const { words, index } = place
  const after = words[index + 1]
  // `They all present to the class`
  const isSubject =
    !inflected &&
    words[index - 1] === 'all' &&
    (has(is.SUBJECTS, words[index - 2]) || /[^is]s$/.test(words[index - 2] ?? ''))
  if (isSubject && (after === 'to' || (hasObject(place) && after !== 'that'))) return FINITE
  const isMeasured = has(QUANTITIES, words[index - 1]) && !isSubject && needsObject(words[index] ?? '')
  const closes = isClosing(after) || [is.BE, is.HAVE, is.MODALS].some((group) => has(group, after))
  return isMeasured && closes ? NOMINAL : undefined
}
const QUANTITIES: ReadonlySet<string> = new Set('all any enough less more most much some'.split(' '))

/** `a small, round object lay there`, `a small, intimate party`, `from her generous, deliberate ways` */
export const describedTwice: Clue = (place, inflected) => {
  const { words, index } = place
  const comma = words[index - 1] === ',' ? index - 1 : index - 2
  const isLed = comma === index - 2 || has(is.DETERMINERS, words[index - 3])
  const first = words[comma - 1]
  const isTwice = words[comma] === ',' && (has(is.ADJECTIVES, first) || isMadeAdjective(first)) && isLed
  if (inflected || !isTwice || (comma === index - 2 && !has(is.ADJECTIVES, words[index - 1]))) return undefined
  return hasObject(place) ? undefined : NOMINAL
}

/** `There were price increases`: behind what is there stands no verb in -s. */
export const thereAre: Clue = (place, inflected) => {
  const { words, index } = place
  if (!inflected) return undefined
  let at = index - 1
  for (; !isMark(words[at]) && !has(is.BE, words[at]); at--) if (has(is.RELATIVES, words[at])) return undefined
  return words[at - 1] === 'there' && has(is.BE, words[at]) && !hasObject(place) ? NOMINAL : undefined
}

/** `the dogs that use it`: behind many and `that`. */
export const relativePlural: Clue = (place, inflected) => {
  const { words, index } = place
  const many = words[index - 2]
  const isRelative = words[index - 1] === 'that' || words[index - 1] === 'which'
  // `the walls which separate Tam and Ned`
  const isTaking = hasObject(place) || (has(DESCRIBING, words[index]) && isName(place, index + 1))
  if (inflected || !isRelative || !isTaking) return undefined
  return is.isMany(many) ? FINITE : undefined
}

/** Lead many things, so that no one thing stands behind them: `many use soap`. */
const ONLY_MANY: ReadonlySet<string> = new Set(['few', 'many', 'several'])

/** `Some protest, others sleep`, and neither is a thing. */
export const someOthers: Clue = ({ words, index }, inflected) => {
  const [before, rest] = [words[index - 1], words.slice(index + 1)]
  const isSome = before === 'some' && rest.includes('others')
  const isOthers = before === 'others' || (before === 'some' && words.slice(0, index - 1).includes('some'))
  const fits = !inflected && isEdge(words[index + 1]) && !has(DESCRIBING, words[index])
  return fits && (isSome || isOthers) ? FINITE : undefined
}

/** `Many attribute the rain to him`, `many use soap`, and not `many record shops`; `some object that fell` is one, and `the few present` are there. */
export const many: Clue = (place, inflected) => {
  const [before, after] = [place.words[place.index - 1], place.words[place.index + 1]]
  if (inflected || place.words[place.index] === 'present') return undefined
  if (has(ONLY_MANY, before) && place.words[place.index] === 'use') return FINITE
  return has(is.MANY, before) && hasObject(place) && after !== 'that' ? FINITE : undefined
}

/** `into that house`, `wanted that present`: behind a preposition or a verb it is a thing that is pointed at. */
export const pointed: Clue = (place, inflected) => {
  const { words, index } = place
  const [before, second] = [words[index - 1], words[index - 2]]
  const isLed = has(is.PREPOSITIONS, second) || second === 'to'
  const isTaken = before === 'that' && (isPast(second) || isPresent(second)) && !has(is.BE, second) && second !== 'like'
  const isOne = (isLed && (before === 'that' || before === 'this')) || isTaken
  return !inflected && isOne && words[index] !== 'minute' ? NOMINAL : undefined
}

const ANYBODY: ReadonlySet<string> = new Set(
  'all anybody anyone everybody everyone nobody somebody someone those'.split(' '),
)

/** Behind many, with a verb before or `with all his friends`, and nothing that asks or tells which. */
function isPresentThere({ words, index }: Place): boolean {
  let start = index
  while (!isMark(words[start - 1])) start--
  const before = words.slice(start, index)
  const isMany = is.isMany(before.at(-1))
  const isFree = !before.some((word) => has(GAPS, word) || has(is.LET, word) || has(is.MODALS, word))
  const isLed = before.includes('with') && isEdge(words[index + 1])
  return isMany && isFree && (isLed || before.slice(0, -1).some((word) => isVerbal(word) || word === 'having'))
}
const GAPS: ReadonlySet<string> = new Set('how than that to what when where which who whom whose while'.split(' '))

/** `Everybody present must stand.` */
export const anybody: Clue = (place, inflected) => {
  const { words, index } = place
  const [word, after] = [words[index], words[index + 1]]
  const closes = isClosing(after) || [is.MODALS, is.BE, is.HAVE, is.CLAUSE_JOINS].some((group) => has(group, after))
  // `The boys and girls present cheered`
  if (word === 'present' && is.looksPlural(words[index - 1]) && isPast(after)) return NOMINAL
  // `There were boys present at the feast`
  if (word === 'present' && isClosing(after) && isPresentThere(place)) return NOMINAL
  const isBehind = word === 'present' && has(ANYBODY, words[index - 1]) && !has(is.SUBJECTS, words[index - 2])
  return !inflected && isBehind && closes && !hasHelper(place) ? NOMINAL : undefined
}

/** `The doctors and nurses use masks`; not `for sports use`, nor `he finds use for it`. */
export const useOfMany: Clue = ({ words, index }) => {
  if (words[index] !== 'use') return undefined
  const [before = '', second] = [words[index - 1], words[index - 2]]
  const isSmall = [is.ADVERBS, is.BE, is.HAVE, is.MODALS].some((group) => has(group, before)) || isPresent(before)
  const isMany = has(is.PLURALS, before) || (is.looksPlural(before) && !isSmall)
  // `the word people use for it`
  const isThing = /^(?:of|for)$/.test(words[index + 1] ?? '') && !/^(?:people|children|men|women)$/.test(before)
  return !isThing && isMany && !has(is.PREPOSITIONS, second) ? FINITE : undefined
}

const CLASSES: ReadonlySet<string> = new Set('class form grade group team year'.split(' '))

/** `netted 20 suspects`; not `Class 2 presents a play`. */
export const counted: Clue = (place, inflected) => {
  const { words, index } = place
  const isCounted = inflected && /^\d/.test(words[index - 1] ?? '') && !isName(place, index - 2)
  // `Class Two presents a play`, and not `The Four Winds told it`
  if (inflected && has(is.NUMBERS, words[index - 1]) && isName(place, index - 1))
    return (index === 2 && !has(is.DETERMINERS, words[0])) || has(CLASSES, words[index - 2]) ? ['verb'] : undefined
  return isCounted && !hasObject(place) ? NOMINAL : undefined
}

/** `All of them use it`, `the birds in the tree use it`. */
export const ofMany: Clue = (place, inflected) =>
  !inflected && (hasObject(place) || has(GROWS, place.words[place.index])) && isOfMany(place) ? FINITE : undefined

/** What many do, with nothing that it is done to: `piles of snow decrease`. */
const GROWS: ReadonlySet<string> = new Set(['decrease', 'increase'])

/** `One sister nods, the other objects.` */
export const theOther: Clue = ({ words, index }, inflected) => {
  const isOther = inflected && words[index - 1] === 'other' && words[index - 2] === 'the'
  return isOther && words.slice(0, index - 2).includes('one') ? ['verb'] : undefined
}

/** `Red and orange contrast`, `yellow and purple strongly clash`: two colours open the clause. */
export const colours: Clue = (place, inflected) => {
  const at = beforeIndex(place)
  const pair = [at, at - 2].every((one) => has(is.COLOURS, place.words[one]))
  return !inflected && pair && place.words[at - 1] === 'and' && isMark(place.words[at - 3]) ? FINITE : undefined
}
