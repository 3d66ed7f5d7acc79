// `read`, whose past is spelt like its present: the step that looks for the tense.

import { startsWithCapital } from '../../letter-kinds.ts'
import { hasHelper } from './clause.ts'
import type { Classes } from './evidence.ts'
import { isAsked } from './order.ts'
import { isBehindPerson } from './person.ts'
import { findBefore, findEnd, isMark, type Place } from './place.ts'
import { isSpoken } from './speech.ts'
import type { Tags } from './tags.ts'
import { findContextTense, findFollowingTense, findJoinedTense, findTense, hasPastTime, type Tense } from './tense.ts'
import type { Heteronym } from './types.ts'
import { isPast } from './verbs.ts'
import { CLAUSE_JOINS, has, MODALS, PLURAL_SUBJECTS } from './vocabulary.ts'

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
  if (isAsked(place)) return 'present'
  if (isOnePerson(place) || isSupposed(place) || isAfterHad(place)) return 'past'
  if (isCustom(place)) return 'present'
  const joined = findJoinedTense(place, tags)
  if (joined) return joined
  if (!classes && hasHelper(place)) return undefined
  if (!classes && (isBehindPerson(place) || isBeforeQuotation(place))) return 'past'
  const own = findTense(place) ?? (tags && findFollowingTense(place, tags))
  const story = before && !isSpoken(place.words, place.index) ? findContextTense(before) : undefined
  return own && story && own !== story ? undefined : (own ?? story)
}

const SOMEBODY: ReadonlySet<string> = new Set(
  'anybody anyone everybody everyone nobody one somebody someone'.split(' '),
)

/** `the only one who read it`: the present of one has its -s. */
const isOnePerson = ({ words, index }: Place): boolean =>
  words[index - 1] === 'who' && has(SOMEBODY, words[index - 2]) && !has(MODALS, words[index - 3])

/** `The sign on the gate read “No dogs”`. */
const isBeforeQuotation = ({ words, index }: Place): boolean =>
  !isMark(words[index - 1]) && has(QUOTES, words[words[index + 1] === ',' ? index + 2 : index + 1])

const QUOTES: ReadonlySet<string> = new Set(['"', '“', ':'])

const isWould = (word: string): boolean => /^(?:would|could|might)$|^(?:i|you|he|she|it|we|they)'d$/.test(word)

/** `If they read it, they would laugh`: a past in form, as it is with `wrote`. */
function isSupposed({ words, index }: Place): boolean {
  const isLed = has(PLURAL_SUBJECTS, words[index - 1]) && words[index - 2] === 'if'
  return isLed && words.slice(index + 1).some(isWould)
}

/** `I read the note that the witch had left`. */
function isAfterHad({ words, index }: Place): boolean {
  const clause = words.slice(index + 1, findEnd(words, index))
  return (
    has(PLURAL_SUBJECTS, words[index - 1]) && clause.includes('had') && !clause.some((word) => has(CLAUSE_JOINS, word))
  )
}

/** `as you may think when you read it`: what anybody does; not `I was glad when you read it`. */
function isCustom(place: Place): boolean {
  const lead = findBefore(place, 2)
  const isAnybody = findBefore(place) === 'you' && (lead === 'when' || lead === 'whenever' || lead === 'if')
  if (!isAnybody || hasPastTime(place)) return false
  const before = place.words.slice(0, place.index)
  const main = before.slice(before.findLastIndex(isMark) + 1)
  // `I would be glad if you read it`
  if (lead === 'if' && place.words.some((word) => isWould(word))) return false
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
