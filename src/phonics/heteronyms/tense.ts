// Whether `read` is present or past where its place allows both: `they read the book`.
//
// Only other words can tell: a verb joined to it (`sat and read`), a time (`yesterday`, `every day`), the verb of a clause
// joined to its own (`we read until it got dark`), and the verbs of the sentences before.

import { hasHelper } from './clause.ts'
import { isBehindOneThing } from './one-thing.ts'
import type { Place } from './place.ts'
import { beforeIndex, isMark, isName } from './place.ts'
import { isSpoken, withoutSpeech } from './speech.ts'
import type { Tags } from './tagged.ts'
import { isPast, isPresent, isTenseless } from './verbs.ts'
import {
  ADJECTIVES,
  ADVERBS,
  BE,
  CLAUSE_JOINS,
  DETERMINERS,
  HAVE,
  has,
  MODALS,
  NUMBERS,
  OBJECT_STARTS,
  OBJECTS,
  PLURAL_SUBJECTS,
  PREPOSITIONS,
  SINGULAR_SUBJECTS,
  STOPS,
  SUBJECTS,
} from './vocabulary.ts'

export type Tense = 'present' | 'past'

const RELATIVES = new Set(['that', 'which', 'who', 'whose', 'what'])
const CLAUSES = new Set('but because so if where when that which who while as until till before after'.split(' '))
const CONDITIONS = new Set(['when', 'whenever', 'if'])
const WEEKDAYS = ['monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday']
/** `last night`, `every day`. */
const LAST = new Set(['night', 'week', 'year', 'month', 'summer', 'winter', 'spring', 'autumn', 'time', ...WEEKDAYS])
const EVERY = new Set(['day', 'night', 'week', 'morning', 'evening', 'afternoon', 'time', 'year', ...WEEKDAYS])
/** `to the pond`, `to bed`: no verb. */
const PLACES = new Set('the a an my his her its our their your bed school town'.split(' '))

const TITLES = new Set(
  'miss mr mrs ms dr sir aunt auntie uncle king queen prince princess captain chief old little big'.split(' '),
)
/** One person, whose present has its -s: `Mother read to us every night`. */
const PERSONS = new Set(
  'aunt auntie boy brother child cousin dad daddy father girl gran grandfather grandma grandmother grandpa granny king lady man mother mum mummy papa mamma princess prince queen sister teacher uncle woman'.split(
    ' ',
  ),
)

/** Not `Mother and Father read`, nor `I saw Mother read`. */
export function isBehindPerson(place: Place): boolean {
  const at = beforeIndex(place)
  if (!isName(place, at) && !PERSONS.has(place.words[at] ?? '')) return false
  let lead = at - 1
  while ([ADJECTIVES, DETERMINERS, TITLES].some((group) => has(group, place.words[lead]))) lead--
  return isMark(place.words[lead]) || (has(CLAUSE_JOINS, place.words[lead]) && place.words[lead] !== 'and')
}

/** The tense that times and clauses of the sentence show; undefined where they show none, or both. */
export function findTense(place: Place): Tense | undefined {
  const past = hasPastTime(place) || isJustDone(place) || hasPastClause(place)
  const present = hasPresentTime(place) || hasPresentCondition(place) || (!past && hasPresentCustom(place))
  if (past === present) return undefined
  return past ? 'past' : 'present'
}

/** The tense of the sentences before, where at least two verbs agree and none differs. */
export function findContextTense(before: readonly (readonly string[])[]): Tense | undefined {
  const words = before.flatMap((sentence) => withoutSpeech(sentence.map((word) => word.toLowerCase())))
  const [past, present] = [words.filter(isPast).length, words.filter(isPresent).length]
  if (past >= 2 && present === 0) return 'past'
  return present >= 2 && past === 0 ? 'present' : undefined
}

/** The tense of a verb that is joined behind it: `I read, and sew a little`, `they read to him, or sing`. */
export function findFollowingTense({ words, index }: Place, tags: Tags): Tense | undefined {
  for (let at = index + 1; at < words.length; at++) {
    const word = words[at]
    if (has(STOPS, word) || has(CLAUSES, word)) return undefined
    if (word !== 'and' && word !== 'or') continue
    const [next, tag] = [words[at + 1], tags[at + 1]]
    if (isPast(next)) return 'past'
    if (tag?.has('Verb') && !isTenseless(next) && (tag.has('PresentTense') || tag.has('Infinitive'))) return 'present'
  }
  return undefined
}

/** The tense of the verb joined to it: `sat by the pond and read`, `will sit and read`. */
export function findJoinedTense(place: Place, tags?: Tags): Tense | undefined {
  const before = place.words[place.index - 1]
  if (before !== 'and' && before !== 'then' && before !== 'or') return undefined
  const isJoinedToParticiple = /[a-z](?:ed|en|wn)$/.test(place.words[place.index - 2] ?? '')
  for (let at = place.index - 2; at >= 0; at--) {
    const word = place.words[at]
    // `wants it to be written and read`
    if (isJoinedToParticiple && has(BE, word)) return 'past'
    if (has(RELATIVES, word) || has(HAVE, word) || has(STOPS, word)) return undefined
    if (word === 'to' && has(PLACES, place.words[at + 1])) continue
    if (word === 'to' || has(MODALS, word)) return 'present'
    if (isPast(word) || isPastByOne(place, at)) return 'past'
    // `his glasses`
    if (has(DETERMINERS, place.words[at - 1])) continue
    const tag = tags?.[at]
    if (tag?.has('Verb') && !tag.has('Gerund') && !isTenseless(word)) return tag.has('PastTense') ? 'past' : 'present'
  }
  return undefined
}

/** `Grandpa put on his hat`: the present of one person would have its -s. */
function isPastByOne(place: Place, at: number): boolean {
  const before = place.words[at - 1]
  if (!isTenseless(place.words[at]) || hasHelper({ ...place, index: at })) return false
  const here = { ...place, index: at }
  return has(SINGULAR_SUBJECTS, before) || isName(place, at - 1) || isBehindPerson(here) || isBehindOneThing(here)
}

export function hasPastTime({ words }: Place): boolean {
  return words.some((word, i) => word === 'yesterday' || word === 'ago' || (word === 'last' && has(LAST, words[i + 1])))
}

/** `you just read my diary`: only now. */
const isJustDone = ({ words, index }: Place): boolean =>
  words[index - 1] === 'just' && has(PLURAL_SUBJECTS, words[index - 2])

function hasPresentTime({ words }: Place): boolean {
  return words.some((word, i) => {
    if (word === 'now') return isMark(words[i + 1])
    return word === 'usually' || ((word === 'every' || word === 'each') && has(EVERY, words[i + 1]))
  })
}

/** `we read until it got dark`: a past verb of the same voice, with a join or a mark between, in no relative clause. */
function hasPastClause(place: Place): boolean {
  return place.words.some((word, at) => isPast(word) && isSameVoice(place, at) && isJoined(place, at))
}

/** `when it is wet we read`. */
function hasPresentCondition(place: Place): boolean {
  const from = place.words.findIndex((word) => CONDITIONS.has(word))
  return from >= 0 && place.words.slice(from + 1).some(isPresent) && !place.words.some(isPast)
}

const OFTEN = new Set(['always', 'never', 'often', 'sometimes'])
const WEEKLY = new Set([
  'mondays',
  'tuesdays',
  'wednesdays',
  'thursdays',
  'fridays',
  'saturdays',
  'sundays',
  'weekends',
])

/** `I often read to Sid`, `on Sundays we read`, `we read because we love it`: where nothing in the sentence is past. */
function hasPresentCustom(place: Place): boolean {
  const { words, index } = place
  if (words.some(isPast)) return false
  if (has(OFTEN, words[index - 1]) && has(PLURAL_SUBJECTS, words[index - 2])) return true
  const isJoinedPresent = (at: number): boolean => {
    const isClause = words.slice(Math.min(at, index), Math.max(at, index)).some((word) => has(CLAUSES, word))
    return (
      isClause &&
      has(SUBJECTS, words[at - 1]) &&
      isPresentBehind(words, at) &&
      isSameVoice(place, at) &&
      isJoined(place, at)
    )
  }
  return words.some((word, at) => has(WEEKLY, word) || word === 'reads' || isJoinedPresent(at))
}

/** Stand behind a subject and are no verb that shows its tense. */
const NO_VERBS = [ADVERBS, CLAUSE_JOINS, DETERMINERS, MODALS, NUMBERS, OBJECT_STARTS, PREPOSITIONS]

/** `before I eat`, `when they want it`: behind its subject, and no past. */
function isPresentBehind(words: readonly string[], at: number): boolean {
  const [word, before] = [words[at], words[at - 1]]
  if (isPresent(word)) return true
  if (isTenseless(word) || isMark(word) || NO_VERBS.some((group) => has(group, word))) return false
  return has(PLURAL_SUBJECTS, before) && !has(HAVE, word)
}

function isSameVoice(place: Place, at: number): boolean {
  return isSpoken(place.words, at) === isSpoken(place.words, place.index)
}

/** `read to us`, `went to the pond`: behind `to` stands no verb. */
const isThingNext = (word: string | undefined): boolean => has(PLACES, word) || has(OBJECTS, word)

function isJoined(place: Place, at: number): boolean {
  const between = place.words.slice(Math.min(at, place.index) + 1, Math.max(at, place.index))
  if (between.some((word, i) => RELATIVES.has(word) || (word === 'to' && !isThingNext(between[i + 1])))) return false
  return between.some((word) => CLAUSE_JOINS.has(word) || word === 'then' || isMark(word))
}
