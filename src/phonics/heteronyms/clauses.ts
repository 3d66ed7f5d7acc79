// What a look-alike is by what its clause lacks without it, or has already.

import { type Clue, FINITE, hasObject, isClosing, NOMINAL } from './clue.ts'
import { isThing } from './one-thing.ts'
import { isEdge, isMark, isName, type Place } from './place.ts'
import { DESCRIBING, needsObject } from './valency.ts'
import { isOnlyPast, isPast, isPresent, isVerbal } from './verbs.ts'
import * as is from './vocabulary.ts'
import { has } from './vocabulary.ts'

const ASKING: ReadonlySet<string> = new Set('can could did do does should will would'.split(' '))
/** Begin a clause, and lead no thing: `when the spy defects`. */
const WHEN: ReadonlySet<string> = new Set('because if once unless until when whenever where while'.split(' '))
const JOINS: ReadonlySet<string> = new Set('and because but if or so that then when while'.split(' '))

/** A bare verb may stand behind: `they dare insult him`. */
const BARE: ReadonlySet<string> = new Set('come dare go helped need try'.split(' '))

const isSmall = (word: string | undefined): boolean =>
  [is.ADVERBS, is.BE, is.MODALS, is.NUMBERS, is.PLURALS, is.PREPOSITIONS, is.CLAUSE_JOINS].some((group) =>
    has(group, word),
  ) || /ly$/.test(word ?? '')

const opensClause = (word: string | undefined): boolean => isMark(word) || has(JOINS, word)

/** When it will be done: `Will the shop close tomorrow?` */
const WHEN_DONE: ReadonlySet<string> = new Set('again early first late now soon today tomorrow tonight'.split(' '))

const canFollow = (word: string | undefined): boolean => isClosing(word) || has(is.ADVERBS, word) || word === 'to'

/** `Does iron contract in the cold?`, `can your voice project to me?`: the helper that asks, who does it, and no verb yet. */
export const bareInversion: Clue = (place, inflected) => {
  const { words, index } = place
  const thing = words[index - 1] ?? ''
  const at = has(is.DETERMINERS, words[index - 2]) ? index - 3 : index - 2
  const asks = has(ASKING, words[at]) && (isMark(words[at - 1]) || has(is.QUESTIONS, words[at - 1]))
  if (inflected || !asks || !isThing(thing) || !(canFollow(words[index + 1]) || has(WHEN_DONE, words[index + 1])))
    return undefined
  // `Does the school record still stand?`
  const next = words[index + 2]
  if (has(is.ADVERBS, words[index + 1]) && !isClosing(next) && !has(WHEN_DONE, next) && !opensClause(next))
    return undefined
  const end = words.slice(index).findIndex((word) => has(is.STOPS, word))
  const rest = words.slice(index + 1, end < 0 ? undefined : index + end)
  return words[index + end] === '?' && !rest.some(isVerbal) ? ['verb'] : undefined
}

/** `when the spy defects`, `if Meg objects to it`: a clause of time has its verb here. */
export const inTime: Clue = (place, inflected) => {
  const { words, index } = place
  if (!inflected) return undefined
  const isNamed = isName(place, index - 1) && has(WHEN, words[index - 2])
  const isLed = isThing(words[index - 1] ?? '') && has(is.DETERMINERS, words[index - 2]) && has(WHEN, words[index - 3])
  return (isNamed || isLed) && isClosing(words[index + 1]) ? ['verb'] : undefined
}

const SUBORDINATE: ReadonlySet<string> = new Set(['as', 'if', 'when', 'while'])
const AND: ReadonlySet<string> = new Set(['and', 'or'])

/** `As the gap between two stones increases, the pull gets weaker`: a clause that opens the sentence so has its verb before the comma. */
export const inOpening: Clue = ({ words, index }, inflected) => {
  if (!inflected || words[index + 1] !== ',' || words.slice(index + 2, index + 4).some(isMark)) return undefined
  let start = index - 1
  while (start > 0 && !isMark(words[start - 1])) start--
  const isOpened = has(SUBORDINATE, words[start]) && has(is.DETERMINERS, words[start + 1])
  const before = words[index - 1]
  const isFree = !words.slice(start + 1, index).some((word) => isVerbal(word) || /[a-z]ing$/.test(word))
  const isLed = [is.ADJECTIVES, is.DETERMINERS, is.ALL_PREPOSITIONS, is.NUMBERS, AND].some((group) =>
    has(group, before),
  )
  return isOpened && isFree && !isLed ? ['verb'] : undefined
}

/** `They want projects`, `he hates rebels`, `we needed transport`: somebody and a verb open the clause, and what they do it to follows. */
export const takenByPerson: Clue = (place, inflected) => {
  const { words, index } = place
  const [verb, person] = [words[index - 1], words[index - 2]]
  const isTaken = needsObject(words[index] ?? '') && canFollow(words[index + 1]) && (isPast(verb) || isPresent(verb))
  const isMass = isTaken && !has(is.LET, verb) && !has(BARE, verb)
  if (!(inflected || isMass) || hasObject(place) || isSmall(verb) || isMark(verb) || !opensClause(words[index - 3]))
    return undefined
  const isOne = (person === 'he' || person === 'she' || person === 'it') && (/s$/.test(verb ?? '') || isPast(verb))
  return isOne || has(is.PLURAL_SUBJECTS, person) ? ['noun'] : undefined
}

/** Stand between a person and the verb: `we each present it`, `you guys use it`. */
const BETWEEN: ReadonlySet<string> = new Set(
  'children each first girls guys boys kids lot ourselves themselves too'.split(' '),
)

/** `They first present it to the king`, `I too suspect him`. */
export const personApart: Clue = ({ words, index }, inflected) => {
  const isApart = has(BETWEEN, words[index - 1]) && has(is.PLURAL_SUBJECTS, words[index - 2])
  const isPlain = !inflected && !has(DESCRIBING, words[index])
  return isPlain && isApart && opensClause(words[index - 3]) ? FINITE : undefined
}

/** `They sing and record songs`, `we love and separate them`: joined to the verb that follows a person. */
export const joinedToPerson: Clue = ({ words, index }, inflected) => {
  const [join, verb, person] = [words[index - 1], words[index - 2], words[index - 3]]
  const isJoined = (join === 'and' || join === 'or') && has(is.PLURAL_SUBJECTS, person)
  return !inflected && isJoined && !isSmall(verb) && !has(is.HAVE, verb) ? FINITE : undefined
}

/** `People import parrots`, `men and women refuse`: many with no -s open the clause, and lead no thing. */
export const firstMany: Clue = (place: Place, inflected) => {
  const { words, index } = place
  const isPair = words[index - 2] === 'and' && has(is.PLURALS, words[index - 3])
  const start = isPair ? words[index - 4] : words[index - 2]
  const isFirst = has(is.PLURALS, words[index - 1]) && opensClause(start) && words[index] !== 'present'
  return !inflected && isFirst && !isEdge(words[index + 1]) && !isVerbal(words[index + 1]) ? FINITE : undefined
}

/** `such as rain, snow and wind`: a list of things. */
export const listed: Clue = ({ words, index }) => {
  const before = words[index - 1]
  const isListed = (before === 'and' || before === 'or' || before === ',') && isEdge(words[index + 1])
  if (!isListed) return undefined
  const at = words.lastIndexOf('such', index)
  return words[at + 1] === 'as' && !words.slice(at, index).some(isVerbal) ? NOMINAL : undefined
}

/** `Swimming conflicts with the party`: the only verb behind what somebody does. */
export const afterDoing: Clue = ({ words, index }, inflected) => {
  const opens = index === 1 && /[aeiouy].*ing$/.test(words[0] ?? '') && words[2] === 'with'
  if (!inflected || !opens) return undefined
  const end = words.findIndex((word, at) => at > index && (isMark(word) || has(is.CLAUSE_JOINS, word)))
  return !words.slice(index + 1, end < 0 ? undefined : end).some(isVerbal) ? ['verb'] : undefined
}

/** `The nursery graduates sang`: right behind a thing and before its own verb; not `the pan Meg uses fell`. */
export const beforePast: Clue = (place, inflected) => {
  const { words, index } = place
  const isThingBefore = isThing(words[index - 1] ?? '') && !isName(place, index - 1) && words[index] !== 'uses'
  return inflected && isThingBefore && isOnlyPast(words[index + 1]) ? ['noun'] : undefined
}

/** Hardly ever done to nothing, beside what never is: `searching the records`. */
const MOSTLY_WITH_OBJECT: ReadonlySet<string> = new Set('contracts excuses houses records uses'.split(' '))
const LOOKED: ReadonlySet<string> = new Set('among at in into over through'.split(' '))

/** `searching through the old Tansy Lane records, she …`, `She looked through the mill records.`: nobody does it there. */
export const lookedThrough: Clue = (place, inflected) => {
  const { words, index } = place
  const word = words[index] ?? ''
  const fits = inflected && isEdge(words[index + 1]) && (needsObject(word) || MOSTLY_WITH_OBJECT.has(word))
  if (!fits) return undefined
  let at = index - 1
  while (at > index - 6 && !isLead(words[at]) && !isMark(words[at])) at--
  if (!isLead(words[at]) || !has(LOOKED, words[at - 1]) || !isLooking(words, at - 2)) return undefined
  return isOneThing(place, at + 1) ? ['noun'] : undefined
}

const isLead = (word: string | undefined): boolean => has(is.DETERMINERS, word) || word === 'those' || word === 'these'

/** `after searching`, `she looked`: nobody else stands before who may do it. */
const isLooking = (words: readonly string[], at: number): boolean => {
  const before = words[at - 1]
  if (/..ing$/.test(words[at] ?? '')) return isMark(before) || isSmall(before) || before === 'after'
  return isPast(words[at]) && has(is.SUBJECTS, before)
}

/** Names at the end, behind words that describe, or one thing alone: `the old Tansy Lane records`, `the mill records`. */
function isOneThing(place: Place, from: number): boolean {
  const { words, index } = place
  const chain = words.slice(from, index)
  if (chain.length === 0 || chain.some((word) => isSmall(word) || has(is.SUBJECTS, word))) return false
  const names = chain.filter((_, i) => isName(place, from + i)).length
  const rest = chain.filter((word, i) => !isName(place, from + i) && !has(is.ADJECTIVES, word)).length
  if (names > 0 && !isName(place, index - 1)) return false
  return names === 0 ? rest === 1 && isThing(words[index - 1] ?? '') : rest === 0 || (rest === 1 && names > 1)
}
