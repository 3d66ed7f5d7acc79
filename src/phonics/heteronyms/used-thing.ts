// Whether `used to` says what was done with a thing that stands before: `the pan she used to cook the eggs`.

import { TIMES } from './habit.ts'
import { isThing } from './one-thing.ts'
import { findEnd, isMark, isName, type Place } from './place.ts'
import { isPast, isPresent, isVerbal } from './verbs.ts'
import * as is from './vocabulary.ts'
import { has } from './vocabulary.ts'

/** Where, when and how something was done, and nothing that is used for it. */
const NO_TOOLS: ReadonlySet<string> = new Set([
  ...TIMES,
  ...is.words(
    'farm field garden hill home house lake park place pond reason river room school sea shop town village way wood yard',
  ),
])
/** Who is hardly ever put to a use. */
const PEOPLE: ReadonlySet<string> = is.words(
  'aunt baby boy brother child cousin dad father friend girl grandfather grandmother king lady man mother mum neighbour prince princess queen sister ' +
    'teacher uncle woman',
)
const TIME_JOINS: ReadonlySet<string> = is.words('after as because before if since so until when while')

/** Take two objects, so that the thing before may be the other: `the call he used to give the men`. */
const TWO_OBJECTS: ReadonlySet<string> = is.words('bring call give lend offer pay read send show sing teach tell write')

/** What follows is told: `The clock used to say that time is short`. */
const TELLS: ReadonlySet<string> = is.words('ask believe explain hope know mean say see show tell think wish')

const INSIDE: ReadonlySet<string> = is.words('across around away down home inside out there up')

/** `the pan she used to cook the eggs`, `which brush I used to paint it`, `the net that we used to catch him`. */
export function isToolOf(place: Place): boolean {
  const { words, index } = place
  const subjectAt = toSubject(place)
  // `one door which she used to get inside`
  if (words[index + 2] === 'get' && words[subjectAt - 1] === 'which' && has(INSIDE, words[index + 3])) return true
  if (has(TWO_OBJECTS, words[index + 2]) || !has(is.OBJECT_STARTS, words[index + 3])) return false
  if (has(is.PREPOSITIONS, words[findEnd(words, index) - 1])) return false
  // `a belt, which he used to tie it up`
  if (words[subjectAt - 1] === 'which' && words[subjectAt - 2] === ',') return true
  const isRelative = words[subjectAt - 1] === 'that' || words[subjectAt - 1] === 'which'
  const head = isRelative ? subjectAt - 2 : subjectAt - 1
  const thing = words[head] ?? ''
  const isMany = has(is.SUBJECTS, words[index - 1]) && isManyTools(thing)
  if (!(isTool(thing) || isMany) || isName(place, head)) return false
  let lead = head - 1
  while (has(is.ADJECTIVES, words[lead]) || words[lead] === 'very') lead--
  if (words[lead] === 'which' || words[lead] === 'what') return true
  return has(is.DETERMINERS, words[lead]) && isDone(words, lead)
}

/** `It was a long, thin pole used to reach apples`, `Keys are things often used to open doors`: what something is, and then what it is for. */
export function isNamedTool({ words, index }: Place, back = 1): boolean {
  const head = index - back
  if (!isTool(words[head] ?? '') && !isManyTools(words[head] ?? '')) return false
  let lead = head - 1
  while (has(is.ADJECTIVES, words[lead]) || (words[lead] === ',' && has(is.ADJECTIVES, words[lead - 1]))) lead--
  if (has(is.DETERMINERS, words[lead])) lead--
  return has(is.BE, words[lead])
}

/** `The trick used to scare the crows was simple`, `The rope, used to tie the bag, was red`: its own verb comes later. */
export function isToolItself({ words, index }: Place): boolean {
  const comma = words[index - 1] === ','
  const head = comma ? index - 2 : index - 1
  if (!isTool(words[head] ?? '') || !has(is.DETERMINERS, words[head - 1]) || !isMark(words[head - 2])) return false
  if (comma) return true
  const end = findEnd(words, index)
  const later = words.slice(index + 3, end)
  const at = later.findIndex((word) => has(is.BE, word))
  const joins = later.some(
    (word, i) => has(is.CLAUSE_JOINS, word) || (word === 'that' && !(i === 0 && isPointed(words, index))),
  )
  return at >= 0 && !joins && !has(is.SUBJECTS, later[at - 1])
}

/** `A tool used to dig soil lay there`, `The cups used to fill the pot were red`: a thing, and a second verb comes later. */
export function mayBeTool({ words, index }: Place): boolean {
  const thing = words[index - 1] ?? ''
  // `The wood used to build the house was old`
  if (!isTool(thing) && !isManyTools(thing) && !has(STUFF, thing)) return false
  const later = words.slice(index + 3, findEnd(words, index))
  const isSecond = (word: string): boolean => [is.BE, is.MODALS].some((group) => has(group, word)) || isPast(word)
  const at = later.findIndex((word) => word !== 'used' && (isSecond(word) || isOfOne(word)))
  const from = isPointed(words, index) ? 1 : 0
  const joins = later.slice(from, at).some((word) => has(is.CLAUSE_JOINS, word) || has(OPENERS, word))
  return at > 0 && !joins && !has(ACTORS, later[at - 1])
}

/** `The paint used to make that boat`, and not `used to say that he fell`. */
const isPointed = (words: readonly string[], index: number): boolean =>
  words[index + 3] === 'that' && !has(TELLS, words[index + 2]) && !has(is.SUBJECTS, words[index + 4])

/** Places that are also what something is made of, or a means. */
const STUFF: ReadonlySet<string> = is.words('way wood')
/** `comes`, `has`: a second verb, and not `go get it`. */
const isOfOne = (word: string): boolean => word === 'has' || (/s$/.test(word) && isPresent(word))

/** Do something, and are no object: `it were gone` may be the end of two. */
const ACTORS: ReadonlySet<string> = is.words('he i she they we')
const OPENERS: ReadonlySet<string> = is.words('how that what which who whom whose why')

/** A time, a place or somebody. */
export const isNoTool = (word: string): boolean =>
  NO_TOOLS.has(word) || PEOPLE.has(word) || /(?:mother|father|man)$/.test(word)

/** `the words he used to end it`. */
const isManyTools = (word: string): boolean =>
  is.looksPlural(word) && !is.isManyPeople(word) && !isNoTool(word) && !isNoTool(word.replace(/s$/, ''))

const isTool = (word: string): boolean => isThing(word) && !isNoTool(word)

/** Where the one who used it begins: `she`, `Ned`, `the boys`. */
function toSubject({ words, index }: Place): number {
  let at = index - 1
  if (has(is.SUBJECTS, words[at])) return at
  if (has(is.DETERMINERS, words[at - 1]) || has(is.PLURAL_DETERMINERS, words[at - 1])) at--
  return at
}

/** A verb stands before, in a clause that is none of time. */
function isDone(words: readonly string[], lead: number): boolean {
  let start = lead
  while (!isMark(words[start - 1]) && !has(TIME_JOINS, words[start - 1])) start--
  return !has(TIME_JOINS, words[start - 1]) && words.slice(start, lead).some(isVerbal)
}

/** `used to the full`, `used to the delight of all`. */
export const ALL_OF_IT: ReadonlySet<string> = is.words('delight end full horror joy last limit utmost')

/** `Get the dog used to the noise`, `Is the dog used to a lead?`: an article or what one does behind `to` is no work with it. */
export function isMadeUsed({ words, index }: Place): boolean {
  const next = words[index + 2] ?? ''
  if (!(next === 'a' || next === 'the' || /[aeiouy].*ing$/.test(next)) || has(ALL_OF_IT, words[index + 3])) return false
  const led = words.slice(0, index).findLastIndex((word) => has(is.DETERMINERS, word))
  const verb = words[led - 1]
  return led > 0 && led > index - 4 && (has(is.BE, verb) || /^g[eo]t(?:ting)?$/.test(verb ?? ''))
}
