// What governs a heteronym: a helper, `to`, or a verb such as `let` that a bare verb follows.

import { type Clue, FINITE, hasObject, isClosed, isClosing, LONGEST_SUBJECT, NOMINAL, PREDICATE } from './clue.ts'
import { beforeIndex, findBefore, isEdge, isMark, isName, isTitle, type Place } from './place.ts'
import { NEEDS_NOTHING } from './valency.ts'
import * as is from './vocabulary.ts'
import { has } from './vocabulary.ts'

const ALL_THINGS: ReadonlySet<string> = new Set(['all', 'anything', 'everything', 'nothing', 'something'])

/** `Meg`, and not `Meg's`, whose thing follows. */
const isPerson = (place: Place, at: number): boolean => isName(place, at) && !/.'s$/.test(place.words[at] ?? '')

/** `to read`, `used to live`; not `next to lead`, nor `resort to insults`, which has an ending. */
export const infinitive: Clue = (place, inflected) => {
  if (findBefore(place) !== 'to') return undefined
  // `from house to house`
  const isRepeated = place.words[place.index - 2] === place.words[place.index]
  if (inflected || isRepeated || isTowards(place) || isNamed(place) || isHouse(place)) return NOMINAL
  if (has(BEFORE_THING_TO, findBefore(place, 2))) return NOMINAL
  return has(is.BEFORE_NOUN_TO, findBefore(place, 2)) ? undefined : ['verb']
}

/** Come before `to` where somebody is led or moves to a thing: `rode off to combat`, `challenged you to combat`. */
const TOWARDS: ReadonlySet<string> = new Set(
  'back down forth him me off on out over peace ready rode them us went you'.split(' '),
)

/** Behind these and `to` stands a thing: `immune to torment`, `a response to conflict`. */
const BEFORE_THING_TO: ReadonlySet<string> = new Set('accustomed immune reaction resistant response'.split(' '))

/** A fight is a thing without an article, and where nothing follows that is fought. */
const isTowards = (place: Place): boolean =>
  place.words[place.index] === 'combat' && isEdge(place.words[place.index + 1]) && has(TOWARDS, findBefore(place, 2))

/** `came to House Plum`, `sailed to Desert Rock`: two names. */
const isNamed = (place: Place): boolean =>
  isName(place, place.index) && isName(place, place.index + 1) && !isTitle(place)

/** `from barn to house`, `to house number ten`; not `it keeps us from having to house it`. */
const isHouse = (place: Place): boolean => {
  const { words, index } = place
  const [after, next] = [words[index + 1], words[index + 2]]
  if (words[index] !== 'house' || hasObject(place)) return false
  const isCounted = (has(is.NUMBERS, after) || /^\d/.test(after ?? '')) && isEdge(next)
  const from = words.slice(Math.max(0, index - 4), index - 1)
  return after === 'number' || isCounted || (from.includes('from') && !from.some((word) => /[a-z]ing$/.test(word)))
}

const ASKING: ReadonlySet<string> = new Set('can could did do does should will would'.split(' '))
const isAsked = ({ words, index }: Place): boolean => words.slice(index).find((word) => has(is.STOPS, word)) === '?'

/** `can use`, `did not close`, `let's read`; `they do surveys` of something. */
export const helper: Clue = (place, inflected) => {
  const before = findBefore(place)
  // `Does progress matter?`; not `Do use the stairs`
  const asks = has(ASKING, before) && isMark(findBefore(place, 2)) && isAsked(place) && !hasObject(place)
  if (asks) return NOMINAL
  // `to do combat`: what is done
  if (before === 'do' && (findBefore(place, 2) === 'to' || has(is.MODALS, findBefore(place, 2)))) return NOMINAL
  if (has(is.MODALS, before) || (before !== undefined && before.length > 3 && before.endsWith("'ll")))
    return inflected ? NOMINAL : ['verb']
  // `I'd use it`, `I'd read it`: would, or had
  if (!inflected && before?.endsWith("'d") && /[a-z]'d$/.test(before)) return FINITE
  // `you had better use it`
  if (before === 'better' && /^had$|.[’']d$/.test(findBefore(place, 2) ?? '')) return ['verb']
  // `I'd rather read`
  if (before === 'rather' && /^would$|.[’']d$/.test(findBefore(place, 2) ?? '')) return ['verb']
  if (!has(is.HAVE, before)) return undefined
  // `has upset my plans`, `had aged by a year`
  return hasObject(place) || (/ed$/.test(place.words[place.index] ?? '') && isClosed(place))
    ? ['past']
    : ['past', 'noun', 'adjective']
}

/** `can help combat it`, `to help produce food`; `try and protest`; `why not use it`. */
export const helped: Clue = (place, inflected) => {
  if (inflected) return undefined
  if (place.words[place.index - 1] === 'not' && place.words[place.index - 2] === 'why') return ['verb']
  const [first, second, third] = [findBefore(place), findBefore(place, 2), findBefore(place, 3)]
  // `helped escort Meg home`
  const isTaking = hasObject(place) || (isName(place, place.index + 1) && !isName(place, place.index))
  if (has(is.HELP, first) && (has(is.MODALS, second) || second === 'to' || isTaking)) return ['verb']
  const isBare =
    third === undefined || has(is.MODALS, third) || third === 'to' || has(is.OBJECTS, third) || third === 'than'
  return first === 'and' && has(is.TRY, second) && isBare ? ['verb'] : undefined
}

/** `made the class project a success`: what something is made, and not what it does. */
function isOutcome({ words, index }: Place): boolean {
  if (words[index + 1] !== 'a' && words[index + 1] !== 'an') return false
  let at = index + 2
  while (has(is.ADJECTIVES, words[at])) at++
  return has(OUTCOMES, words[at])
}
const OUTCOMES: ReadonlySet<string> = new Set(
  'delight disaster failure flop game hit home joy mess pleasure secret success surprise treat triumph winner'.split(
    ' ',
  ),
)

/** `would let those geese lead your sister`, `let the game resume!`: behind what somebody lets or helps. */
export const letLong: Clue = (place, inflected) => {
  const isLast = isEdge(place.words[place.index + 1])
  if (inflected || !(hasObject(place) || isLast)) return undefined
  const at = findOpener(place, place.index - 1, [is.DETERMINERS, is.PLURAL_DETERMINERS])
  if (at === undefined || at === place.index - 1) return undefined
  const lead = place.words[at - 1] ?? ''
  if (/^mak(?:es?|ing)$|^made$/.test(lead) && isOutcome(place)) return NOMINAL
  if (isLast) return lead === 'let' || lead === 'lets' ? ['verb'] : undefined
  return has(is.LET, lead) || /^mak(?:es?|ing)$|^made$/.test(lead) ? ['verb'] : undefined
}

/** The last determiner up to `last` that may open the phrase before the place: neither far, nor beyond a mark or a preposition. */
function findOpener(place: Place, last: number, groups: readonly ReadonlySet<string>[]): number | undefined {
  for (let at = last; at > Math.max(0, place.index - LONGEST_SUBJECT); at--) {
    const word = place.words[at]
    if (isMark(word) || has(is.PREPOSITIONS, word)) return undefined
    if (groups.some((group) => has(group, word))) return at
  }
  return undefined
}

/** `all that lives`, `everything that objects`. */
export const relative: Clue = (place, inflected) =>
  inflected && findBefore(place) === 'that' && has(ALL_THINGS, place.words[place.index - 2]) ? ['verb'] : undefined

/** `do you live`, `are they close`, `have we read`; `can Tam bow`, `did Meg and Sid read`. */
export const inversion: Clue = (place) => {
  const isSubject = (nth: number): boolean =>
    has(is.SUBJECTS, findBefore(place, nth)) ||
    has(is.SINGULAR_SUBJECTS, findBefore(place, nth)) ||
    isPerson(place, beforeIndex(place, nth))
  if (!isSubject(1)) return undefined
  let first = 1
  while (findBefore(place, first + 1) === 'and' && isSubject(first + 2)) first += 2
  const helper = findBefore(place, first + 1)
  // `My name is Ostur and I construct ships`
  if (first > 1 && has(is.BE, helper) && !isMark(findBefore(place, first + 2))) return undefined
  if (has(is.MODALS, helper)) return ['verb']
  if (has(is.HAVE, helper)) return ['past']
  return has(is.BE, helper) ? PREDICATE : undefined
}

const CAUSES = [is.HAVE, is.LET, is.MAKE, is.PERCEIVE]

/** `let me use`, `helps his sister read`, `made it live`, `had them present their work`. */
export const causative: Clue = (place, inflected) => {
  const [first, second, third] = [findBefore(place), findBefore(place, 2), findBefore(place, 3)]
  if (inflected) return first === 'her' && (has(is.MAKE, second) || has(is.PERCEIVE, second)) ? NOMINAL : undefined
  if (!CAUSES.some((group) => has(group, second)))
    return has(is.LET, third) && has(is.POSSESSIVES, second) && !has(is.ADJECTIVES, first) ? ['verb'] : undefined
  const object = has(is.OBJECTS, first) || isPerson(place, beforeIndex(place))
  if (object && has(is.LET, second)) return ['verb']
  if (object && has(NEEDS_NOTHING, place.words[place.index]) && has(is.MAKE, second)) return ['verb']
  if (object && has(is.MAKE, second)) return hasObject(place) ? ['verb'] : ['verb', 'adjective']
  if (first === 'her' && has(is.PERCEIVE, second)) return ['verb', 'noun', 'adjective']
  if (object && first !== 'her' && has(is.HAVE, second) && hasObject(place)) return ['verb']
  // `heard him read`, `saw them close to it`
  if (/^(?:him|me|us|them)$/.test(first ?? '') && has(is.SENSE, second) && !inflected)
    return ['verb', 'adjective', 'adverb']
  return has(is.LET, third) && has(is.POSSESSIVES, second) && !has(is.ADJECTIVES, first) ? ['verb'] : undefined
}

/** `How much milk can one cow produce in a day?`: a helper and one who does it, and no verb yet. */
function isHowMuch({ words, index }: Place): boolean {
  const isOne = words[index - 2] === 'one' && has(is.MODALS, words[index - 3])
  return isOne && words[0] === 'how' && isClosing(words[index + 1]) && words.at(-1) === '?'
}

/** `how long do bears live`, `can mice use it`: behind a helper that asks and a bare plural. */
export const pluralInversion: Clue = (place, inflected) => {
  const { words, index } = place
  if (isHowMuch(place) && !inflected) return ['verb']
  const isPlural = is.looksPlural(words[index - 1]) && !has(is.MODALS, words[index - 1])
  if (inflected || !isPlural || !has(is.MODALS, words[index - 2])) return undefined
  const asked = words[index - 3]
  return isMark(asked) || has(is.QUESTIONS, asked) || words[index - 4] === 'how' ? ['verb'] : undefined
}

/** `how will the new road impact us`, `where does the fairy live?`: behind a helper and the subject that follows it. */
export const longInversion: Clue = (place, inflected) => {
  const after = place.words[place.index + 1]
  if (inflected || !(hasObject(place) || after === '?' || after === undefined)) return undefined
  // `Does a snail need any address?`
  if (has(is.DETERMINERS, findBefore(place))) return undefined
  const at = findOpener(place, place.index - 2, [is.DETERMINERS, is.PLURAL_DETERMINERS])
  if (at === undefined || !has(is.MODALS, place.words[at - 1])) return undefined
  const before = place.words[at - 2]
  // `When does the park close?`, `What time does it close?`
  const asks = has(is.QUESTIONS, before) || before === 'when' || (before === 'time' && place.words[at - 3] === 'what')
  // `How many cows can a barn house?`
  const counts = place.words[0] === 'how' && /^m(?:any|uch)$/.test(place.words[1] ?? '') && at === place.index - 2
  return isMark(before) || asks || counts ? ['verb'] : undefined
}
