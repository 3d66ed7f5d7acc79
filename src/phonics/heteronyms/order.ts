// Whether `read` is what somebody is asked to do, or is still to come.

import { hasEarlierHelper } from './clause.ts'
import { hasObject } from './clue.ts'
import { findBefore, isMark, type Place } from './place.ts'
import { isParticiple, isPast } from './verbs.ts'
import { has, PLURAL_SUBJECTS, PREPOSITIONS, RELATIVES } from './vocabulary.ts'

export const isAsked = (place: Place): boolean => CASES.some((holds) => holds(place))

/** `Mama, read to me`, `Please, Ned, read it`: behind the one who is asked, no more than three words from the start. */
function isCalled(place: Place): boolean {
  const { words, index } = place
  if (words[index - 1] !== ',' || !(hasObject(place) || words[index + 1] === 'to')) return false
  const called = words.slice(findStart(words, index - 1), index - 1)
  return called.length > 0 && called.length <= 3 && called.every((word) => !isPast(word) && !has(PREPOSITIONS, word))
}

const CONDITIONS: ReadonlySet<string> = new Set('after before if once to unless when whenever'.split(' '))

/** `If you are lost, read the map`: nobody stands there who did it. */
function isBehindCondition(place: Place): boolean {
  const { words, index } = place
  if (words[index - 1] !== ',') return false
  let start = index - 1
  while (start > 0 && !isMark(words[start - 1])) start--
  const isFirst = start === 0 || has(STARTS, words[start - 1])
  return isFirst && has(CONDITIONS, words[start]) && !tells(place, start, index)
}

/** `The door is locked, so read the sign`: nobody stands there who did it. */
const isBehindSo = ({ words, index }: Place): boolean => words[index - 1] === 'so' && words[index - 2] === ','

const LISTEN: ReadonlySet<string> = new Set(['listen', 'listened', 'listening', 'listens'])
/** So many words at most stand for who is heard: `her old mother and father`. */
const LONGEST_HEARD = 5

/** `They loved to listen to Mum and Dad read`: nobody's past. */
function isHeard({ words, index }: Place): boolean {
  const to = words.slice(0, index).lastIndexOf('to')
  const heard = words.slice(to + 1, index)
  const isOne = heard.length > 0 && heard.length <= LONGEST_HEARD
  return (
    has(LISTEN, words[to - 1]) && isOne && !heard.some((word) => isMark(word) || isPast(word) || has(RELATIVES, word))
  )
}

const STARTS: ReadonlySet<string> = new Set(['.', '!', '?', ':', '“', '"', '‘'])

/** Where the sentence, or what somebody says in it, begins. */
function findStart(words: readonly string[], from: number): number {
  let start = from
  while (start > 0 && !has(STARTS, words[start - 1])) start--
  return start
}

/** `Read with me`: a sentence does not begin with a past. */
function isOrder(place: Place): boolean {
  const before = findBefore(place)
  return before === undefined || before === '“'
}

/** A past that is no participle, among the words from `from` to `to`. */
const tells = ({ words }: Place, from: number, to: number): boolean =>
  words.slice(from, to).some((word, i) => isPast(word) && !isParticiple(words, from + i))

/** `Have a friend read it to you.`; not `Have the boys read it?` */
function isHad(place: Place): boolean {
  const { words, index } = place
  const start = findStart(words, index)
  const end = words.slice(index).find((word) => has(ENDS, word))
  const between = words.slice(start + 1, index)
  return words[start] === 'have' && between.length > 0 && !between.some(isMark) && end !== undefined && end !== '?'
}
const ENDS: ReadonlySet<string> = new Set(['.', '!', '?'])

/** `We can sing, read, or play cards`: one of several that a helper governs. */
function isListed(place: Place): boolean {
  const { words, index } = place
  if (words[index - 1] !== ',' || !hasEarlierHelper(place) || tells(place, 0, index)) return false
  const rest = words.slice(index + 1)
  const join = rest.findIndex((word) => word === 'and' || word === 'or')
  return join >= 0 && join <= LONGEST_HEARD && rest[join - 1] === ','
}

const AHEAD: ReadonlySet<string> = new Set(
  "will shall can must let let's i'll we'll you'll they'll he'll she'll".split(' '),
)
const WHILE: ReadonlySet<string> = new Set('after before if once unless until when while'.split(' '))

/** `While you read, I will cook`: the other clause is still to come. */
function isAhead(place: Place): boolean {
  const { words, index } = place
  const isLed = has(PLURAL_SUBJECTS, findBefore(place)) && has(WHILE, findBefore(place, 2))
  return isLed && words.slice(index + 1).some((word) => has(AHEAD, word)) && !tells(place, 0, words.length)
}

const CASES = [isOrder, isCalled, isBehindCondition, isBehindSo, isHeard, isHad, isListed, isAhead]
