// What a look-alike is in a clause about the thing or the many that stand before it.

import { type Clue, FINITE, hasObject, isClosing } from './clue.ts'
import { isThing } from './one-thing.ts'
import { isMark, isName } from './place.ts'
import { DESCRIBING, LEADING } from './valency.ts'
import { isPast, isVerbal } from './verbs.ts'
import * as is from './vocabulary.ts'
import { has } from './vocabulary.ts'

const ARE = is.words("are aren't have haven't were weren't")

/** `machines which extract and clean the oil`: behind many and `which`, and joined to its like. */
export const relativePair: Clue = ({ words, index }, inflected) => {
  const join = words[index + 1]
  const isRelative = has(is.RELATIVES, words[index - 1])
  const isPlain = !inflected && !has(DESCRIBING, words[index])
  return isPlain && isRelative && is.isMany(words[index - 2]) && (join === 'and' || join === 'or') ? FINITE : undefined
}

const AGES = is.words('days hours minutes months nights seasons seconds times weeks years')
const TELL = is.words('ask asked promise promised remind reminded show showed shown shows tell tells told warn warned')
/** Behind a thing and before no bare verb: `told the boys that combat was over`. */
const OF_THING = is.words("can can't could had has hasn't is isn't might must of should was wasn't will would")

/** `toys that approximate tools`, `nails that project are a danger`: many, and what they do. */
export const relativeMany: Clue = ({ words, index }, inflected) => {
  const after = words[index + 1]
  const isRelative = words[index - 1] === 'that' || words[index - 1] === 'which'
  if (inflected || !isRelative || !is.isMany(words[index - 2])) return undefined
  const lead = words.slice(Math.max(0, index - 6), index - 2)
  // `For ten years that record stood`
  const isOneThing = has(OF_THING, after) || isPast(after) || has(AGES, words[index - 2])
  const isNoun = isOneThing || (has(LEADING, words[index]) && !has(ARE, after))
  const isSaid = lead.some((word) => has(TELL, word)) || has(DESCRIBING, words[index])
  return isNoun || isSaid || words[index] === 'present' ? undefined : FINITE
}

/** `more than your hens produce`, `the stone the giants use for it`: many, and what they do to what was named before. */
export const ofNamed: Clue = (place, inflected) => {
  const { words, index } = place
  const isPlain = !inflected && !has(DESCRIBING, words[index])
  if (!isPlain || !is.isMany(words[index - 1]) || !has(is.DETERMINERS, words[index - 2]) || hasObject(place))
    return undefined
  const named = words[index - 3]
  if (named === 'than') return isClosing(words[index + 1]) ? FINITE : undefined
  const isStone = isThing(named ?? '') && has(is.DETERMINERS, words[index - 4])
  return words[index] === 'use' && isStone && words[index + 1] === 'for' ? FINITE : undefined
}

const IS = is.words("has hasn't is isn't was wasn't")
const TROUPES = is.words('band choir class club family group team')
const NAMING = is.words('all everything that thing what which')

/** `The stick the giant uses is a tree`, `the tools that Ned uses are old`: one does it to what was named before, and the verb of that follows. */
export const ofNamedByOne: Clue = (place, inflected) => {
  const { words, index } = place
  if (!inflected || !(has(IS, words[index + 1]) || (has(ARE, words[index + 1]) && words[index] === 'uses')))
    return undefined
  // `Red Hill Objects is a shop`
  if (isName(place, index)) return undefined
  let at = index - 1
  if (isName(place, at)) at--
  else {
    if (!isThing(words[at] ?? '') && !has(TROUPES, words[at])) return undefined
    at--
    while (has(is.ADJECTIVES, words[at])) at--
    if (!has(is.DETERMINERS, words[at])) return undefined
    at--
  }
  const named = words[at] ?? ''
  const isNamed = has(NAMING, named) || is.isMany(named) || (!isMark(named) && isThing(named) && !isVerbal(named))
  return isNamed && !isName(place, at) && !has(is.ALL_PREPOSITIONS, named) ? ['verb'] : undefined
}

/** `Men and women alike use it`. */
export const alike: Clue = ({ words, index }, inflected) =>
  !inflected && words[index - 1] === 'alike' && is.isMany(words[index - 2]) && !has(is.BE, words[index - 3])
    ? FINITE
    : undefined

/** `They present themselves to the king`. */
export const themselves: Clue = ({ words, index }, inflected) =>
  !inflected && /^(?:our|them|your)selves$/.test(words[index + 1] ?? '') && !has(is.DETERMINERS, words[index - 1])
    ? FINITE
    : undefined
