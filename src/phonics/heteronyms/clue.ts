// What a clue to a heteronym's class is, and what several of them ask.

import { isEdge, isName, type Place } from './place.ts'
import type { WordClass } from './types.ts'
import * as is from './vocabulary.ts'
import { has } from './vocabulary.ts'

export type Classes = readonly WordClass[]
/** The classes that the place leaves open; undefined where it says nothing. `inflected`: the word ends in its own -s. */
export type Clue = (place: Place, inflected: boolean) => Classes | undefined

export const NOMINAL: Classes = ['noun', 'adjective']
export const FINITE: Classes = ['verb', 'past']
export const PREDICATE: Classes = ['adjective', 'past']

export const isClosed = (place: Place): boolean => {
  const after = place.words[place.index + 1]
  return isEdge(after) || has(is.PREPOSITIONS, after) || has(is.ADVERBS, after) || after === 'well'
}

/** What lasts or comes round, and is done nothing to: `clean house every Friday`. */
const TIMES: ReadonlySet<string> = is.words(
  'afternoon day evening friday hour minute moment monday month morning night saturday second spring summer sunday thursday time ' +
    'tuesday wednesday week weekend winter year',
)
const BEFORE_TIMES: ReadonlySet<string> = is.words('each every that this')
const NEXT: ReadonlySet<string> = is.words('following next same')

/** `presents a week ago`, `presents the next day`: when, and nothing that it is done to. */
function isWhen({ words, index }: Place): boolean {
  const [after, next, third] = [words[index + 1], words[index + 2], words[index + 3]]
  if (has(BEFORE_TIMES, after) && has(TIMES, next)) return true
  if (after === 'the' && has(TIMES, next)) return (third === 'before' || third === 'after') && isEdge(words[index + 4])
  if (after === 'the' && has(NEXT, next)) return has(TIMES, third)
  return (after === 'a' || after === 'an') && words.slice(index + 3, index + 5).includes('ago')
}

/** `close the gate`, `upset it`, `upset Ned's plans`; not `contest every year`. */
export function hasObject(place: Place): boolean {
  const after = place.words[place.index + 1]
  if (isWhen(place)) return false
  return has(is.OBJECT_STARTS, after) || (isName(place, place.index + 1) && /.'s$/.test(after ?? ''))
}

export const LONGEST_SUBJECT = 5

/** An order may begin right behind these. */
export const OPENERS: ReadonlySet<string> = is.words('. ! ? : “ "')

const SOMEBODY: ReadonlySet<string> = is.words('anyone everybody everyone nobody somebody someone')

const SURE_OBJECTS: ReadonlySet<string> = is.words('him me us them yourself yourselves')

/** `contests it.`, `upsets them`: an object that cannot be the subject of what comes after. */
export function hasSureObject({ words, index }: Place): boolean {
  const [after, next] = [words[index + 1], words[index + 2]]
  if (has(SURE_OBJECTS, after)) return true
  const closes = isEdge(next) || [is.PREPOSITIONS, is.CLAUSE_JOINS, is.ADVERBS].some((group) => has(group, next))
  return closes && (after === 'it' || after === 'you' || has(SOMEBODY, after))
}

/** Before the end of a clause or a preposition: what needs an object has none. */
export const isClosing = (word: string | undefined): boolean => isEdge(word) || has(is.PREPOSITIONS, word)

/** `uses three eggs`; not `two days ago`. */
export function hasCountedObject({ words, index }: Place): boolean {
  const [after = '', next = ''] = [words[index + 1], words[index + 2]]
  const isTime = has(TIMES, next.replace(/s$/, ''))
  return (has(is.NUMBERS, after) || /^\d/.test(after)) && is.looksPlural(next) && !isTime
}
