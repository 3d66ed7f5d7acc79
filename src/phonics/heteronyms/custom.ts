// Whether a sentence tells of what is so at any time, or now: times, conditions, habits, and what anybody does.

import { hasObject } from './clue.ts'
import { CLAUSES, isJoined, isSameVoice } from './joined-clause.ts'
import { isThing } from './one-thing.ts'
import type { Place } from './place.ts'
import { isMark } from './place.ts'
import { isParticiple, isPast, isPresent, isTenseless } from './verbs.ts'
import {
  ADJECTIVES,
  ADVERBS,
  CLAUSE_JOINS,
  DETERMINERS,
  HAVE,
  has,
  MODALS,
  NUMBERS,
  OBJECT_STARTS,
  PLURAL_SUBJECTS,
  PLURALS,
  PREPOSITIONS,
  STOPS,
  SUBJECTS,
} from './vocabulary.ts'

const CONDITIONS = new Set(['when', 'whenever', 'if'])
export const WEEKDAYS = ['monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday']
const EVERY = new Set(['day', 'night', 'week', 'morning', 'evening', 'afternoon', 'time', 'year', ...WEEKDAYS])

/** `every day`, `usually`, `now`. */
export function hasPresentTime({ words }: Place): boolean {
  return words.some((word, i) => {
    if (word === 'now') return isMark(words[i + 1])
    return word === 'usually' || ((word === 'every' || word === 'each') && has(EVERY, words[i + 1]))
  })
}

/** What the story tells in the past is no sign for what somebody says in it. */
const hasPast = (place: Place): boolean =>
  place.words.some((word, at) => isPast(word) && !isParticiple(place.words, at) && isSameVoice(place, at))

/** `when it is wet we read`. */
export function hasPresentCondition(place: Place): boolean {
  const from = place.words.findIndex((word) => CONDITIONS.has(word))
  return from >= 0 && place.words.slice(from + 1).some(isPresent) && !hasPast(place)
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
export function hasPresentCustom(place: Place): boolean {
  const { words, index } = place
  if (hasPast(place) || isOfOneThing(place)) return false
  if (isOfAnybody(place)) return true
  const [first, second] = [words[index - 2], words[index - 1]]
  const isOften =
    (has(OFTEN, second) && has(PLURAL_SUBJECTS, first)) || (has(OFTEN, first) && has(PLURAL_SUBJECTS, second))
  // `I never read the end of it`: perhaps only once
  if (isOften && !(second === 'never' && hasObject(place))) return true
  return words.some((word, at) => has(WEEKLY, word) || word === 'reads' || isJoinedPresent(place, at))
}

/** `The card I read says that we must wait`: read once, though what it says is so now. */
const isOfOneThing = ({ words, index }: Place): boolean =>
  has(PLURAL_SUBJECTS, words[index - 1]) &&
  isThing(words[index - 2] ?? '') &&
  (has(DETERMINERS, words[index - 3]) || has(ADJECTIVES, words[index - 3]))

/** Show by themselves that somebody tells of now, or of always. */
const FINITE = new Set(
  "comes does doesn't don't gets goes has is isn't keeps knows likes loves makes says sits wants".split(' '),
)

const REASONS = new Set(['because', 'but', 'so'])

function isJoinedPresent(place: Place, at: number): boolean {
  const { words, index } = place
  const subject = has(OFTEN, words[at - 1]) ? at - 2 : at - 1
  if (!has(FINITE, words[at]) && !(has(SUBJECTS, words[subject]) && isPresentBehind(words, at, subject))) return false
  const between = words.slice(Math.min(at, index), Math.max(at, index))
  // `I read the book, so I know how it ends`: read once
  const join = between.find((word) => CLAUSES.has(word))
  if (at > index && has(REASONS, join) && hasObject(place)) return false
  // `I don't look, I read`
  const isClause = between.some((word) => has(CLAUSES, word)) || (words[at] === "don't" && at < index)
  return isClause && isSameVoice(place, at) && isJoined(place, at)
}

/** Stand behind a subject and are no verb that shows its tense. */
const NO_VERBS = [ADVERBS, CLAUSE_JOINS, DETERMINERS, MODALS, NUMBERS, OBJECT_STARTS, PREPOSITIONS]

/** `before I eat`, `when they want it`: behind its subject, and no past. */
function isPresentBehind(words: readonly string[], at: number, subject: number): boolean {
  const word = words[at]
  if (isPresent(word)) return true
  if (isTenseless(word) || isMark(word) || NO_VERBS.some((group) => has(group, word))) return false
  return has(PLURAL_SUBJECTS, words[subject]) && !has(HAVE, word)
}

/** `Doctors read X-rays`, `Some people read palms`: a bare plural that begins a sentence is anybody of that kind. */
const ANY_OF_THEM = new Set(['all', 'many', 'most', 'some'])
function isOfAnybody({ words, index }: Place): boolean {
  const [before = '', second] = [words[index - 1], words[index - 2]]
  const isPlural = has(PLURALS, before) || (/[a-z]{2}[^isu']s$/.test(before) && !isPresent(before))
  const start = has(ADJECTIVES, second) || has(ANY_OF_THEM, second) ? words[index - 3] : second
  return isPlural && (start === undefined || has(STOPS, start))
}
