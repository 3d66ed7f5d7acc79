// Whether `read` is present or past where its place allows both: `they read the book`.
//
// Only other words can tell: a verb joined to it (`sat and read`), a time (`yesterday`, `every day`), the verb of a clause
// joined to its own (`we read until it got dark`), and the verbs of the sentences before.

import { hasHelper } from './clause.ts'
import { hasPresentCondition, hasPresentCustom, hasPresentTime, WEEKDAYS } from './custom.ts'
import { CLAUSES, isJoined, isSameVoice, PLACES, RELATIVES } from './joined-clause.ts'
import { isBehindOneThing, isThing } from './one-thing.ts'
import { isBehindPerson } from './person.ts'
import type { Place } from './place.ts'
import { findEnd, isName, toQuoted } from './place.ts'
import { withoutSpeech } from './speech.ts'
import type { Tags } from './tags.ts'
import { isParticiple, isPast, isPresent, isTenseless } from './verbs.ts'
import { ADVERBS, BE, DETERMINERS, HAVE, has, MODALS, PLURAL_SUBJECTS, SINGULAR_SUBJECTS, STOPS } from './vocabulary.ts'

export type Tense = 'present' | 'past'

/** `last night`, `every day`. */
const LAST = new Set(['night', 'week', 'year', 'month', 'summer', 'winter', 'spring', 'autumn', 'time', ...WEEKDAYS])

/** The tense that times and clauses of the sentence show; undefined where they show none, or both. */
export function findTense(place: Place): Tense | undefined {
  const main = findMainTense(place)
  if (main !== undefined) return main
  const past = hasPastTime(place) || isJustDone(place) || isBeforePast(place) || hasPastClause(place)
  const present = hasPresentTime(place) || hasPresentCondition(place) || (!past && hasPresentCustom(place))
  if (past === present) return undefined
  return past ? 'past' : 'present'
}

/** The tense of the sentences before, where at least two verbs agree and none differs. */
export function findContextTense(before: readonly (readonly string[])[]): Tense | undefined {
  const words = before.flatMap((sentence) => withoutSpeech(toQuoted(sentence)))
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

const NO_NAMES = new Set(['now', 'today', 'everybody', 'everyone'])

/** `Mole put it on`: by a capital, or as the first of its sentence. */
function isNamed(place: Place, at: number): boolean {
  const word = place.words[at] ?? ''
  return isName(place, at) || (at === 0 && isThing(word) && !has(ADVERBS, word) && !has(NO_NAMES, word))
}

/** `Grandpa put on his hat`: the present of one person would have its -s. */
function isPastByOne(place: Place, at: number): boolean {
  const before = place.words[at - 1]
  if (!isTenseless(place.words[at]) || hasHelper({ ...place, index: at })) return false
  const here = { ...place, index: at }
  return has(SINGULAR_SUBJECTS, before) || isNamed(place, at - 1) || isBehindPerson(here) || isBehindOneThing(here)
}

/** `People who read maps never get lost`, `those who read it were glad`: the one verb behind shows the tense of both. */
function findMainTense({ words, index }: Place): Tense | undefined {
  if (words[index - 1] !== 'who') return undefined
  const rest = words.slice(index + 1, findEnd(words, index))
  if (rest.some((word) => RELATIVES.has(word) || has(PLURAL_SUBJECTS, word))) return undefined
  const isShown = (at: number): boolean => !isParticiple(rest, at)
  const [past, present] = [rest.some((word, at) => isPast(word) && isShown(at)), rest.some(isPresent)]
  if (past === present) return undefined
  return past ? 'past' : 'present'
}

export function hasPastTime({ words }: Place): boolean {
  return words.some((word, i) => {
    const next = words[i + 1]
    if (word === 'this') return next === 'morning'
    if (word === 'those') return next === 'days'
    return word === 'yesterday' || word === 'ago' || (word === 'last' && has(LAST, next))
  })
}

/** `the tale that I read made me cry`: at the end of a clause, before the past of the main one. */
const isBeforePast = ({ words, index }: Place): boolean =>
  has(PLURAL_SUBJECTS, words[index - 1]) && isPast(words[index + 1]) && !/ed$/.test(words[index + 1] ?? '')

/** `you just read my diary`: only now. */
const isJustDone = ({ words, index }: Place): boolean =>
  words[index - 1] === 'just' && has(PLURAL_SUBJECTS, words[index - 2])

/** `we read until it got dark`: a past verb of the same voice, with a join or a mark between, in no relative clause. */
function hasPastClause(place: Place): boolean {
  return place.words.some(
    (word, at) => isPast(word) && !isParticiple(place.words, at) && isSameVoice(place, at) && isJoined(place, at),
  )
}
