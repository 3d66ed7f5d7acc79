// What a look-alike is behind a long subject.

import { type Clue, isClosing } from './clue.ts'
import { isOpen, isThing } from './one-thing.ts'
import { isEdge, isMark, isName } from './place.ts'
import { isTenseless, isVerbal } from './verbs.ts'
import * as is from './vocabulary.ts'
import { has } from './vocabulary.ts'

/** Are measured: there is one of each, so that its verb has an -s. */
const MEASURED = is.words(
  'amount cost crowd depth height heap heat length noise number pile power price risk size sound speed strength value weight width',
)
const GROWS = is.words('decreases increases')

/** `No more increases!` */
const MORE = is.words('big further huge large less many more new other small such')
const AS = is.words('as if until when whenever while')

/** `As noise increases`, `The cold increases.`: one thing opens the clause, and nothing else could be its verb. */
function isShort(words: readonly string[], index: number): boolean {
  if (!isThing(words[index - 1] ?? '') || isMark(words[index - 1]) || has(MORE, words[index - 1])) return false
  const isLed = has(is.DETERMINERS, words[index - 2])
  const at = isLed ? index - 3 : index - 2
  // `the more his tummy increases`, and not `more price increases`
  if ((has(AS, words[at]) && words[at - 1] !== 'such') || (isLed && (words[at] === 'more' || words[at] === 'less')))
    return true
  const after = words[index + 1]
  const ends = has(is.STOPS, after) || (after === ',' && has(is.CLAUSE_STARTS, words[index + 2]))
  return isLed && ends && (isMark(words[at]) || has(is.CLAUSE_STARTS, words[at]))
}

/** `The length of his tail increases, which …`: what is measured opens the clause, and no verb stands before. */
export const growing: Clue = ({ words, index }, inflected) => {
  if (!inflected || !has(GROWS, words[index])) return undefined
  if (isShort(words, index)) return ['verb']
  if (!isClosing(words[index + 1])) return undefined
  let start = index
  while (!isOpen(words, start) && words[start - 1] !== 'that') start--
  const lead = words.slice(start, index)
  const of = lead.indexOf('of')
  const isMeasured = of > 0 && of < 4 && has(MEASURED, lead[of - 1]) && has(is.DETERMINERS, lead[0])
  return isMeasured && !lead.some(isVerbal) ? ['verb'] : undefined
}

/** `at the edge of the Tansy Lane protests`: a place names it. */
export const behindPlace: Clue = (place, inflected) => {
  const { words, index } = place
  const isPlaced = isName(place, index - 1) && isName(place, index - 2) && words[index - 3] === 'the'
  return inflected && isPlaced && has(is.PREPOSITIONS, words[index - 4]) && isEdge(words[index + 1])
    ? ['noun']
    : undefined
}

const SAY = is.words('feared hear heard hope hoped knew know knows said say says see sees think thinks thought')

/** `They say that her fear increases with every step`: the clause has no other verb. */
export const onlyInThat: Clue = ({ words, index }, inflected) => {
  if (!inflected || !isThing(words[index - 1] ?? '')) return undefined
  let at = index - 2
  while (has(is.ADJECTIVES, words[at])) at--
  const isLed = has(is.DETERMINERS, words[at]) && words[at - 1] === 'that' && has(SAY, words[at - 2])
  const end = words.findIndex((word, i) => i > index && (isMark(word) || has(is.CLAUSE_JOINS, word)))
  const rest = words.slice(index + 1, end < 0 ? undefined : end)
  return isLed && !rest.some((word) => isVerbal(word) || isTenseless(word)) ? ['verb'] : undefined
}
