// `read`, whose past is spelt like its present: the step that looks for the tense.

import { startsWithCapital } from '../../letter-kinds.ts'
import { hasHelper } from './clause.ts'
import { hasObject } from './clue.ts'
import type { Classes } from './evidence.ts'
import { isBehindPerson } from './person.ts'
import { findBefore, isMark, type Place } from './place.ts'
import { isSpoken } from './speech.ts'
import type { Tags } from './tags.ts'
import { findContextTense, findFollowingTense, findJoinedTense, findTense, hasPastTime, type Tense } from './tense.ts'
import type { Heteronym } from './types.ts'
import { isParticiple, isPast } from './verbs.ts'
import { has, MODALS, PREPOSITIONS, RELATIVES } from './vocabulary.ts'

/**
 * For `read`, the form of the tense that sentence and story show. Where its neighbours say nothing of its class, the clause
 * must hold no helper that could govern it (`did the children read`).
 */
export function findTenseForm(
  row: Heteronym,
  place: Place,
  classes: Classes | undefined,
  before: readonly (readonly string[])[] | undefined,
  tags?: Tags,
): Tense | undefined {
  if (row.word !== 'read' || (classes && !classes.includes('verb'))) return undefined
  if (isBehindSpeech(place)) return 'past'
  if (isOrder(place) || isCalled(place) || isBehindCondition(place) || isHeard(place)) return 'present'
  if (isCustom(place)) return 'present'
  const joined = findJoinedTense(place, tags)
  if (joined) return joined
  if (!classes && hasHelper(place)) return undefined
  if (!classes && (isBehindPerson(place) || isBeforeQuotation(place))) return 'past'
  const own = findTense(place) ?? (tags && findFollowingTense(place, tags))
  const story = before && !isSpoken(place.words, place.index) ? findContextTense(before) : undefined
  return own && story && own !== story ? undefined : (own ?? story)
}

/** `The sign on the gate read “No dogs”`. */
const isBeforeQuotation = ({ words, index }: Place): boolean =>
  !isMark(words[index - 1]) && has(QUOTES, words[words[index + 1] === ',' ? index + 2 : index + 1])

const QUOTES: ReadonlySet<string> = new Set(['"', '“', ':'])

/** `as you may think when you read it`: what anybody does; not `I was glad when you read it`. */
function isCustom(place: Place): boolean {
  const lead = findBefore(place, 2)
  const isAnybody = findBefore(place) === 'you' && (lead === 'when' || lead === 'whenever' || lead === 'if')
  if (!isAnybody || hasPastTime(place)) return false
  const before = place.words.slice(0, place.index)
  const main = before.slice(before.findLastIndex(isMark) + 1)
  const isOnce = lead === 'when' && main.some(isPast)
  return !isOnce || main.some((word) => has(MODALS, word))
}

/** `“I am lost,” read the note`: in small letters behind what is said. `“All clear,” Pip read`: of one, whose present has its -s. */
function isBehindSpeech({ words, written, index }: Place): boolean {
  const isOne = has(ONE, words[index - 1]) || startsWithCapital(written[index - 1] ?? '')
  const at = isOne && isAfterSpeech(words, index - 1) ? index - 1 : index
  return isAfterSpeech(words, at) && !isSpoken(words, index) && written[index] === words[index]
}

const isAfterSpeech = (words: readonly string[], at: number): boolean =>
  has(CLOSERS, words[at - 1]) && isMark(words[at - 2])

const ONE: ReadonlySet<string> = new Set(['he', 'she', 'it'])
const CLOSERS: ReadonlySet<string> = new Set(['"', '”', "'"])

/** `Mama, read to me`, `Please, Ned, read it`: behind the one who is asked, no more than three words from the start. */
function isCalled(place: Place): boolean {
  const { words, index } = place
  if (words[index - 1] !== ',' || !(hasObject(place) || words[index + 1] === 'to')) return false
  let start = index - 1
  while (start > 0 && !has(STARTS, words[start - 1])) start--
  const called = words.slice(start, index - 1)
  return called.length > 0 && called.length <= 3 && called.every((word) => !isPast(word) && !has(PREPOSITIONS, word))
}

const CONDITIONS: ReadonlySet<string> = new Set('after before if once to unless when whenever'.split(' '))

/** `If you are lost, read the map`: nobody stands there who did it. */
function isBehindCondition({ words, index }: Place): boolean {
  if (words[index - 1] !== ',') return false
  let start = index - 1
  while (start > 0 && !isMark(words[start - 1])) start--
  const isFirst = start === 0 || has(STARTS, words[start - 1])
  const isTold = words.slice(start, index).some((word, i) => isPast(word) && !isParticiple(words, start + i))
  return isFirst && has(CONDITIONS, words[start]) && !isTold
}

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

/** `Read with me`: a sentence does not begin with a past. */
function isOrder(place: Place): boolean {
  const before = findBefore(place)
  return before === undefined || before === '“'
}
