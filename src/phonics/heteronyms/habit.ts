// Whether `used to` tells of a habit: nothing in its clause could have been used.
//
// A thing that was used stands right before the subject (`the stick the boys used to drive them`, `the stick that boys used to …`), or it
// is the object of another verb (`he had a knife used to cut bread`). Where neither is there, it was so before.

import { isMark, isName, type Place } from './place.ts'
import { isPast, isVerbal } from './verbs.ts'
import * as is from './vocabulary.ts'
import { has } from './vocabulary.ts'

const JOINS: ReadonlySet<string> = is.words('but because ’cause when so if where since as while although though')
const RELATIVES: ReadonlySet<string> = is.words('that which who whom what whose')
/** Stand before the words that open a thing, where no verb takes it and no clause hangs on the thing before. */
const LEADS: ReadonlySet<string> = is.words(
  'about after against all among and around at before behind both between by cause during for from in into like many near of on or over round through to ' +
    'under with without',
)
const PLACES: ReadonlySet<string> = is.words('here there then thus')
/** Begin a clause of time, which the clause of a habit may follow without a comma. */
const TIME_JOINS: ReadonlySet<string> = is.words('when if as since while')
/** End a clause or a phrase of time before its main clause: `when the sun came up he used to …`. */
const ENDS: ReadonlySet<string> = is.words('again away down home out there up')
/** What came before it or lasted with it: `before the war he used to …`. */
const SPANS: ReadonlySet<string> = is.words('after before during until till')
/** What happens at a time, and what nobody uses: `at night he used to hide`. */
export const TIMES: ReadonlySet<string> = is.words(
  'afternoon autumn day days dusk evening evenings first morning mornings night nights noon once often spring summer sometimes sunday ' +
    'sundays then time times weather winter year years',
)
/** Who is hardly ever put to a use. */
export const PERSONS: ReadonlySet<string> = is.words('i you he she they we who')

/** `The bird that had come out of the book used to sing`, `He was careless, and used to cut himself`. */
export function isHabit(place: Place): boolean {
  const { words, index } = place
  if (words[index - 1] === 'and') return isJoinedToPerson(place)
  if (isWhereUsed(place)) return true
  let start = index
  while (start > 0 && !isMark(words[start - 1]) && !has(JOINS, words[start - 1])) start--
  if (opensMain(place, start)) return true
  const result = words.slice(start, index).findIndex((word, i) => word === 'that' && isResult(words, start + i))
  return start < index && hasNothingUsed(place, start + result + 1)
}

/** `the river in which the king used to fish`: what stands before `in which` is no object. */
function isWhereUsed({ words, index }: Place): boolean {
  const at = [2, 3, 4].map((nth) => index - nth).find((nth) => words[nth] === 'which' || words[nth] === 'whom')
  // `gold, some of which she used to buy a cow`
  return at !== undefined && has(LEADS, words[at - 1]) && words[at - 1] !== 'of'
}

/** `when the sun came up he …`, `when they were restless she …`, `before the war he …`: one person, right before `used`, opens the main clause. */
function opensMain({ words, index }: Place, start: number): boolean {
  if (!has(is.SUBJECTS, words[index - 1])) return false
  const [end, verb] = [words[index - 2], words[index - 3]]
  const isAfterClause = has(ENDS, end) || isPast(end) || has(is.BE, verb)
  return (has(TIME_JOINS, words[start - 1]) && isAfterClause) || has(SPANS, words[start])
}

/** `so skilful that people …`, `it was here that …` */
const isResult = (words: readonly string[], at: number): boolean => {
  const before = words.slice(Math.max(0, at - 4), at)
  return before.includes('so') || before.includes('such') || has(PLACES, words[at - 1])
}

function hasNothingUsed(place: Place, start: number): boolean {
  const { words, index } = place
  let [verbs, relatives] = [0, 0]
  for (let at = start; at < index; at++) {
    const [word, before] = [words[at], words[at - 1]]
    if (at > start && has(RELATIVES, word)) {
      if (!isVerbal(words[at + 1])) return false
      relatives++
    }
    if (isVerbal(word) && !isVerbal(before)) verbs++
    if (at > start && isOpener(place, at) && !isLed(before, relatives)) return false
  }
  return verbs === relatives && (relatives > 0 || !isBehindLed(place, start))
}

/** `bears play with the dogs used to …`: behind a preposition, and more than one thing before it; not `the men of the hill used to …`. */
function isBehindLed(place: Place, start: number): boolean {
  const { words, index } = place
  const at = words.slice(start, index).findLastIndex((_, i) => isOpener(place, start + i)) + start
  if (at <= start || !has(LEADS, words[at - 1]) || has(TIMES, words[index - 1]) || has(LEADS, words[start]))
    return false
  let from = at - 2
  while (from >= start && !has(is.DETERMINERS, words[from]) && !has(is.PLURAL_DETERMINERS, words[from])) from--
  const chain = words.slice(from + 1, at - 1).filter((word) => !has(is.ADJECTIVES, word))
  return chain.length > 1 && !chain.includes('and')
}

const isOpener = (place: Place, at: number): boolean =>
  has(is.DETERMINERS, place.words[at]) ||
  has(is.SUBJECTS, place.words[at]) ||
  (isName(place, at) && !isName(place, at - 1))

const isLed = (before: string | undefined, relatives: number): boolean =>
  has(LEADS, before) || has(TIMES, before) || has(is.DETERMINERS, before) || (relatives > 0 && isVerbal(before))

/** `he was careless, and used to …`: a person is the subject of both, and nothing else was made or done between. */
function isJoinedToPerson({ words, index }: Place): boolean {
  const at = words.slice(0, index - 1).findLastIndex((word) => has(is.SUBJECTS, word) || has(is.STOPS, word))
  return has(PERSONS, words[at]) && !words.slice(at + 2, index).some((word) => has(is.BE, word))
}
