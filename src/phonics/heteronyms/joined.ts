// What joins or governs a look-alike from further off: its like before `and`, a helper, a verb that has taken it.

import { hasEarlierHelper } from './clause.ts'
import { type Clue, hasObject, isClosing } from './clue.ts'
import { isThing } from './one-thing.ts'
import { isMark } from './place.ts'
import { NEEDS_NOTHING, needsObject } from './valency.ts'
import { isPast, isTenseless } from './verbs.ts'
import * as is from './vocabulary.ts'
import { has } from './vocabulary.ts'

const isJoin = (word: string | undefined): boolean => word === 'and' || word === 'or'

/** `wrapped presents all evening`: behind a verb that has its past. */
export const afterPast: Clue = (place, inflected) => {
  const { words, index } = place
  const after = words[index + 1]
  const isThing = inflected && isPast(words[index - 1]) && needsObject(words[index] ?? '')
  return isThing &&
    !hasObject(place) &&
    !has(is.HAVE, words[index - 1]) &&
    !has(is.BE, words[index - 2]) &&
    after !== undefined
    ? ['noun']
    : undefined
}

/** `Let's collect insults!`: the verb that the helper governs stands between. */
export const underHelper: Clue = (place, inflected) => {
  const { words, index } = place
  const isGoverned = inflected && has(is.MODALS, words[index - 2]) && !isMark(words[index - 1])
  return isGoverned && !hasObject(place) ? ['noun'] : undefined
}

/** `sweets and presents for all`, `balloons, presents and games`: joined to its like, and before no object. */
export const joinedPlural: Clue = ({ words, index }, inflected) => {
  const [before, after] = [words[index - 1], words[index + 1]]
  // `sack races and pie-eating contests`
  const isLedPair = isJoin(words[index - 2]) && isThing(before ?? '') && is.looksPlural(words[index - 3])
  if (inflected && isLedPair && isClosing(after) && needsObject(words[index] ?? '')) return ['noun']
  const isJoined = isJoin(before) && isClosing(after)
  const isListed = before === ',' && isJoin(after)
  if (!inflected || !(isJoined || isListed) || !needsObject(words[index] ?? '')) return undefined
  const like = words[index - 2] === ',' ? words[index - 3] : words[index - 2]
  // `full of food and presents`
  const isLedLike = like === words[index - 2] && isThing(like ?? '') && has(is.ALL_PREPOSITIONS, words[index - 3])
  return is.looksPlural(like) || isLedLike ? ['noun'] : undefined
}

/** `with all the air currents and winds nothing could stop it`: what a preposition governs is one thing and another. */
export const joinedUnderPreposition: Clue = (place, inflected) => {
  const { words, index } = place
  if (!inflected || !isJoin(words[index - 1]) || !is.looksPlural(words[index - 2])) return undefined
  const isLed = [3, 4, 5].some(
    (back) => has(is.DETERMINERS, words[index - back]) && has(is.ALL_PREPOSITIONS, words[index - back - 1]),
  )
  const isLedByAll = [4, 5, 6].some(
    (back) => words[index - back] === 'all' && has(is.ALL_PREPOSITIONS, words[index - back - 1]),
  )
  // `Down the hill turns and winds a path`
  return isLedByAll || (isLed && !hasObject(place)) ? ['noun'] : undefined
}

/** What an object begins with, and no clause about the thing before: `gifts and presents each child loved`. */
const SURE_STARTS: ReadonlySet<string> = is.words('a an the it him them my his her our your their')

/** `opens wide for mango but rejects every spoonful`: joined to what was done before, and with an object. */
export const joinedBeforeObject: Clue = (place, inflected) => {
  const [before, after] = [place.words[place.index - 1], place.words[place.index + 1]]
  const isTurn = before === 'but' || before === 'then'
  return inflected && (isTurn ? hasObject(place) : before === 'and' && has(SURE_STARTS, after)) ? ['verb'] : undefined
}

/** `We will work and graduate.`, `finish school, graduate and find work`: governed by the helper of the verbs it is joined to. */
export const joinedUnderHelper: Clue = (place, inflected) => {
  const { words, index } = place
  if (inflected || !has(NEEDS_NOTHING, words[index])) return undefined
  const [before, after] = [words[index - 1], words[index + 1]]
  // `the event or object`: one determiner may lead both.
  const isLed = has(is.DETERMINERS, words[index - 3])
  const isJoined = !isLed && isJoin(before) && isClosing(after)
  const isListed = before === ',' && (isJoin(after) || after === ',')
  return (isJoined || isListed) && hasEarlierHelper(place) ? ['verb'] : undefined
}

/** What two things do to one another: `the game and the party conflict`. */
const BOTH_DO: ReadonlySet<string> = is.words('alternate combine conflict contrast converse')

/** `My game and Anna's party conflict, so I stay`: behind two things, each with what leads it. */
export const doneByPair: Clue = ({ words, index }, inflected) => {
  const lead = words[index - 2]
  const isLed = has(is.DETERMINERS, lead) || /.'s$/.test(lead ?? '')
  const isPair = isLed && words[index - 3] === 'and' && !isMark(words[index - 4])
  const closes = isClosing(words[index + 1]) && words[index + 1] !== 'of'
  return !inflected && has(BOTH_DO, words[index]) && isPair && closes && !isMark(words[index - 1])
    ? ['verb']
    : undefined
}

/** Behind these a clause may stand with no `that`: `knew our dog objects`. */
const OF_THOUGHT: ReadonlySet<string> = is.words(
  'believed felt guessed heard hoped knew know said say saw see think thought wished',
)

const PARTICLES: ReadonlySet<string> = is.words('at away down in off on out up')

/** `We pinned our space projects up`, `Otto put on his old jazz records`: what was done to it stands before. */
export const takenByPast: Clue = (place, inflected) => {
  const { words, index } = place
  let at = index - 2
  while (has(is.ADJECTIVES, words[at])) at--
  const opener = words[at]
  at -= has(PARTICLES, words[at - 1]) ? 2 : 1
  const [thing = '', verb] = [words[index - 1], words[at]]
  const isDone = isPast(verb) || isTenseless(verb)
  const isLed = has(is.DETERMINERS, opener) && isThing(thing) && isDone && !has(OF_THOUGHT, verb)
  // `The boy who lost his turn protests`
  const isRelative = /^(?:who|that|which)$/.test(words[at - 1] ?? '')
  const isHelper = has(is.BE, verb) || has(is.HAVE, verb)
  return inflected && isLed && !isHelper && !isRelative && !hasObject(place) ? ['noun'] : undefined
}
