// `used`: with /zd/ as the verb, with /st/ before `to` where something was so before or is not strange any more.

import { isClosing } from './clue.ts'
import { isHabit, PERSONS, TIMES } from './habit.ts'
import { isThing as isOneThing } from './one-thing.ts'
import { TITLES } from './person.ts'
import { beforeIndex, findBefore, isEdge, isMark, isName, type Place } from './place.ts'
import type { Tags } from './tags.ts'
import { findBehindHad, isHad } from './used-had.ts'
import { ALL_OF_IT, isMadeUsed, isNamedTool, isToolItself, isToolOf, mayBeTool } from './used-thing.ts'
import { isHow, isLikened, isWhatWasDone } from './used-what.ts'
import * as is from './vocabulary.ts'

export type Used = 'verb' | 'used-to'

const GROW = new Set('get gets got gotten getting become became becoming grow grew grown growing quite'.split(' '))
/** `so used to it`: what is strange or not has degrees, and what is put to a use has none. */
const DEGREES = new Set('so very more pretty rather too less much'.split(' '))
const OFTEN = new Set('always frequently never often sometimes still usually'.split(' '))
const HOW_WELL = new Set('already fully long perfectly quite well'.split(' '))
/** Nobody uses a thing to be or to sleep: before these, `used to` is always the old habit. */
const STATES = new Set(
  (
    'be believe belong come cry dance dream exist fancy feel go grow hate have know laugh lie like live look love sing sit sleep smile ' +
    'stay swim talk think use visit wait wake want wish wonder work'
  ).split(' '),
)
const GAPS = new Set(
  (
    'admire bake bring build buy call carry chase climb cook do eat feed give grow have hear hum keep like love make play see sing say sell share sow ' +
    'take tell tend visit watch wear weave'
  ).split(' '),
)
const AFTER_GAP = new Set(
  'about and are as at before but every for from in into is on so to was were when while with'.split(' '),
)
/** May go without an object, so that `the words he used to call for help` are no calls. */
const ALONE = new Set(['call', 'climb', 'cook', 'watch'])
const TOLD = new Set('poem poems song songs stories story tale tales'.split(' '))
/** Begin what somebody is used to, beside the words that begin any object. */
const THING_STARTS = new Set(
  'all bad big bright cold dark early fine good great hard heavy hot late little long loud many much new nice noisy other people rough small so soft strange such sweet these those'.split(
    ' ',
  ),
)
/** What somebody is used to, though it may also be done: `The hens are used to rain`. */
const BORNE = new Set(
  'company dust fog frost hail heat hunger ice mud noise rain sand smoke snow trouble wind work'.split(' '),
)
const AFTER = new Set(['after', 'before', 'until'])
const JOINS = new Set(
  'and but because how when so if like where since as than while although though afterwards who'.split(' '),
)

/** The form of `used` at the place; undefined where it cannot be told from the small words alone. */
export function findUsed(place: Place): Used | undefined {
  const next = place.words[place.index + 2]
  const before = findBefore(place)
  if (isLikened(place)) return undefined
  if (place.words[place.index + 1] !== 'to') {
    // `the boys used often to come`
    if (is.has(OFTEN, place.words[place.index + 1]) && next === 'to' && !is.has(is.BE, before)) return 'used-to'
    const odd = findWithoutTo(place)
    if (odd !== undefined) return odd === 'open' ? undefined : odd
    return (is.has(DEGREES, before) && hasToLater(place)) || isLedByTo(place) ? 'used-to' : 'verb'
  }
  // `which he used to good purpose`
  if ([3, 4].some((nth) => is.has(PURPOSES, place.words[place.index + nth]))) return 'verb'
  // `a noise that he was used to`
  if (isEdge(next) && !isHad(before)) return 'used-to'
  if (is.has(GROW, before) || is.has(DEGREES, before)) return 'used-to'
  // `the goat always used to guide her kids`; not `the knife was always used to cut`
  if (is.has(OFTEN, place.words[place.index - 1]) && !is.has(is.BE, before) && !isHad(before))
    return isNamedTool(place, 2) ? 'verb' : 'used-to'
  const isBe = is.has(is.BE, before) || (is.has(HOW_WELL, before) && is.has(is.BE, findBefore(place, 2)))
  // `The cave is used to this day`
  if (isBe && next === 'this' && place.words[place.index + 3] === 'day') return 'verb'
  if (isBe && (isWorkOfTool(place) || isPossible(place))) return 'verb'
  if (isBe && is.has(TO_THE_END, place.words[place.index + 3])) return undefined
  if (isBe && is.has(BORNE, next) && isClosing(place.words[place.index + 3])) return 'used-to'
  if (isBe) return isThing(next) || next === 'be' ? 'used-to' : undefined
  if (isHad(before)) return findBehindHad(place, beforeIndex(place))
  // `are you used to it`
  if (is.has(is.SUBJECTS, before) && is.has(is.BE, findBefore(place, 2))) return isThing(next) ? 'used-to' : undefined
  if (before === 'there' || isWhatWasDone(place) || isHow(place) || is.has(STATES, next)) return 'used-to'
  // `a mole, whom she used to feed`; `Didn't your gran used to sing?` is a slip
  if (findBefore(place, 2) === 'whom' || isAskedSlip(place)) return 'used-to'
  // `They used to actually be cold`
  if (/[a-z]ly$/.test(next ?? '') && is.has(STATES, place.words[place.index + 3])) return 'used-to'
  // `the shop that used to sell kites`
  if (before === 'that' || before === 'which') return 'used-to'
  // `a gull, used to the noise`
  if (isMark(before) && is.has(is.DETERMINERS, next) && !is.has(ALL_OF_IT, place.words[place.index + 3]))
    return 'used-to'
  const isListed = place.words[place.index - 2] === 'as'
  // `tools such as spades used to dig`, and open in `Ned as well as others used to sing`
  if (isListed && place.words[place.index - 3] === 'such' && !isThing(next)) return 'verb'
  if (isListed && place.words[place.index - 3] === 'well') return undefined
  if (isToolItself(place) || (isNamedTool(place) && !isThing(next))) return 'verb'
  if (isMadeUsed(place)) return 'used-to'
  if (mayBeTool(place)) return undefined
  if (hasPlainSubject(place) || isGap(place) || isHabit(place)) return 'used-to'
  return isToolOf(place) ? 'verb' : undefined
}

/** `The ink had been used to the end`. */
const TO_THE_END = new Set(['end', 'full', 'limit', 'utmost'])
const PERSON = new Set('he i she they we'.split(' '))
/** Hardly ever things, so that `we used go there` is a slip. */
const BARE = new Set('come do eat get give go have hear know say see sit take tell think'.split(' '))

const TIMES_OF_HABIT = new Set(
  'afternoon autumn day evening morning night spring summer sunday week winter year'.split(' '),
)

/** `he used not to`, `Used she to sing?`, and the slip `it used be`; open where that is not sure. */
function findWithoutTo(place: Place): Used | 'open' | undefined {
  const { words, index } = place
  const [after, next, before] = [words[index + 1], words[index + 2], findBefore(place)]
  if (after === 'not' && next === 'to') {
    const isPut =
      is.has(is.BE, before) ||
      isHad(before) ||
      words.some((word, at) => at > index && word === 'but' && !isMark(words[at - 1]))
    return isPut ? 'open' : 'used-to'
  }
  if (is.has(PERSON, after) && next === 'to' && isMark(before)) return 'used-to'
  const isBare = !is.has(is.BE, before) && !isHad(before)
  // `and used every evening to dance on the green`
  const isTime = (after === 'every' || after === 'each') && is.has(TIMES_OF_HABIT, next)
  if (isTime && words[index + 3] === 'to') return isBare ? 'used-to' : 'verb'
  if (after === 'be' && isBare) return is.has(is.SUBJECTS, before) || before === 'there' ? toSlip(place) : 'open'
  return isBare && is.has(is.SUBJECTS, before) && is.has(BARE, after) ? 'open' : undefined
}

/** `as strong as they used be`; open in `the words that it used be said again`. */
const toSlip = (place: Place): Used | 'open' =>
  place.words[place.index - 2] === 'that' || place.words.slice(0, place.index).some((word) => is.has(LET_BE, word))
    ? 'open'
    : 'used-to'

const LET_BE = new Set('ask asked let lets may must should suggest suggested'.split(' '))

const PURPOSES = new Set(['advantage', 'effect', 'extent', 'purpose'])
/** What is done with a tool: `They are used to carry goods`. */
const TOOL_WORK = new Set(
  (
    'build carry catch chop clean climb collect connect cook cover cut dig dry fasten feed fill grind help hold keep lift light make mark measure mix move play ' +
    'protect pull push scare send separate show stir store sweep tie tell transport wash weigh'
  ).split(' '),
)
/** Who may be used to something, and is never put to a use. */
const SOMEBODY = new Set('he i she we who you'.split(' '))

function isWorkOfTool(place: Place): boolean {
  const [work, after] = [place.words[place.index + 2], place.words[place.index + 3]]
  return is.has(TOOL_WORK, work) && !isEdge(after) && ![2, 3].some((nth) => is.has(SOMEBODY, findBefore(place, nth)))
}

const isAskedSlip = ({ words, index }: Place): boolean => {
  const at = [2, 3].map((back) => index - back).find((one) => is.has(DID, words[one]))
  return at !== undefined && isMark(words[at - 1]) && (at === index - 2 || is.has(is.DETERMINERS, words[at + 1]))
}
const DID = new Set(['did', "didn't"])

const CAN = new Set(['can', 'could', 'may', 'might'])

/** `The can may be used to water plants`: nobody says so of what is not strange. */
const isPossible = (place: Place): boolean =>
  findBefore(place) === 'be' &&
  [2, 3].some((nth) => is.has(CAN, findBefore(place, nth))) &&
  ![3, 4].some((nth) => is.has(SOMEBODY, findBefore(place, nth))) &&
  !isThing(place.words[place.index + 2])

/** `a noise to which he was used` */
function isLedByTo({ words, index }: Place): boolean {
  if (!isEdge(words[index + 1])) return false
  return words
    .slice(0, index)
    .some((word, at) => word === 'to' && (words[at + 1] === 'which' || words[at + 1] === 'whom'))
}

/** `so used all his life to hear it` */
function hasToLater({ words, index }: Place): boolean {
  const rest = words.slice(index + 1)
  const end = rest.findIndex(isMark)
  return rest.slice(0, end < 0 ? undefined : end).includes('to')
}

/**
 * `the song she used to sing`, `the ones she used to do at school`: what comes before is what was sung, so nobody used it. These verbs
 * are always done to something.
 */
function isGap(place: Place): boolean {
  const { words, index } = place
  const [verb, after] = [words[index + 2], words[index + 3]]
  // `the tales his gran used to tell him`
  const isTold = words.slice(Math.max(0, index - 4), index).some((word) => is.has(TOLD, word))
  if (isTold && verb === 'tell' && is.has(is.OBJECTS, after) && isEdge(words[index + 4])) return true
  if (is.has(ALONE, verb) && is.has(is.PREPOSITIONS, after)) return false
  return is.has(GAPS, verb) && (isEdge(after) || is.has(AFTER_GAP, after))
}

/** Whether a tagger has anything to say: only of what somebody or something is used to. */
export const canTagUsed = (place: Place): boolean => is.has(is.BE, findBefore(place))

/** `is used to catch fish` against `is used to noise`: what the tagger says of the word after `to`. */
export function findTaggedUsed(place: Place, tags: Tags): Used | undefined {
  if (!canTagUsed(place)) return undefined
  const next = tags[place.index + 2]
  // `is used to fill the sack`, whatever the tagger calls it
  const isFilled = is.has(is.DETERMINERS, place.words[place.index + 3])
  if (isFilled || next?.has('Infinitive'))
    return [2, 3].some((nth) => is.has(PERSONS, findBefore(place, nth))) ? undefined : 'verb'
  return next?.has('Noun') ? 'used-to' : undefined
}

/** `used to the cold`, `used to such noise`, `used to bumps`, `used to swimming`. */
function isThing(next: string | undefined): boolean {
  return (
    next !== undefined &&
    (is.OBJECT_STARTS.has(next) || THING_STARTS.has(next) || /[aeiouy].*ing$|[a-z]{2}[^aius']s$/.test(next))
  )
}

/** A subject with nothing before it that could be the thing used: `we used to`, not `the net we used to catch it`. */
function hasPlainSubject(place: Place): boolean {
  let at = beforeIndex(place)
  const word = place.words[at]
  if (isMark(word)) return false
  if (is.has(JOINS, word)) return word === 'who'
  const bare = is.has(is.SUBJECTS, word) || isName(place, at) || at === 0
  if (!bare) while (at > 0 && is.has(is.ADJECTIVES, place.words[at - 1])) at--
  // `Old Mr Fox used to`
  if (isName(place, at)) while (isName(place, at - 1) || is.has(TITLES, place.words[at - 1])) at--
  // `Tam Hill used to`, first of all
  if (at === 1 && isName(place, at) && isOneThing(place.words[0] ?? '')) return true
  // `his Aunt used to`
  if ((!bare || isName(place, at)) && is.has(is.DETERMINERS, place.words[at - 1])) at--
  // `Then they used to swim`
  while (is.has(is.ADVERBS, place.words[at - 1])) at--
  const edge = place.words[at - 1]
  if (bare && is.has(TIMES, edge)) return true
  // `After this Katy used to go`
  if ((edge === 'this' || edge === 'that') && is.has(AFTER, place.words[at - 2])) return true
  return isMark(edge) || is.has(JOINS, edge)
}
