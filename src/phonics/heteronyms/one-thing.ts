// Where no bare verb can stand: right behind one thing, which takes its verb with an -s.

import { isTold } from './clause.ts'
import { hasCountedObject, hasObject } from './clue.ts'
import { beforeIndex, isMark, isName, type Place } from './place.ts'
import { isVerbal } from './verbs.ts'
import * as is from './vocabulary.ts'

const AND = new Set(['and', 'or', 'nor'])
export const ONE: ReadonlySet<string> = new Set('a an another each every this'.split(' '))
const A: ReadonlySet<string> = new Set(['a', 'an', 'each', 'every'])
/** Behind these an adjective may be many: `the old live here`. */
const ONE_OR_MORE = new Set('the my your his her its our their'.split(' '))
/** One in form, and with the verb of many: `a few live here`, `the police record it`, `a family live there`. */
const GROUPS = new Set(
  (
    'army audience band bunch cattle choir class clan committee council couple crew crowd deer dozen elderly enemy family few fish flock folk gang group herd hundred lot majority men mice navy number others pack pair ' +
    'party people police poultry public rest score sheep staff swarm team thousand tribe women children geese oxen teeth feet youth'
  ).split(' '),
)
const HAVE = new Set(['had', 'has', 'have'])
const ASKS_THAT = new Set('ask asked asks begged demanded demands insist insisted insists ordered requests'.split(' '))
const GOVERNORS = [is.LET, is.MAKE, is.PERCEIVE, is.HELP]

/** `what a queer house this is`, `know this house`, `what excuse she made`, `our own sober present`. */
export function isBehindOneThing(place: Place): boolean {
  const before = beforeIndex(place)
  // `a sign that read`
  const isRelative = is.has(is.RELATIVES, place.words[before])
  const last = isRelative ? before - 1 : before
  const word = place.words[last]
  if (word === undefined || isMark(word) || (!isRelative && isGoverned(place))) return false
  if (isOfMany(place) || isBehindMany(place)) return false
  // `every night close the shutters`, `one day please use it`
  const isWhen = is.has(TIMES, word) && is.has(ONE, place.words[last - 1]) && hasObject(place)
  if (isWhen || place.words[place.index - 1] === 'please') return false
  if (hasCountedObject(place)) return false
  if (word === 'this' || word === 'what') return !isRelative && place.words[last - 1] !== 'like'
  // `a police escort`: what is many leads a thing behind `a`
  const isLeading = is.PLURALS.has(word) && /^an?$/.test(place.words[last - 1] ?? '')
  if (!(isThing(word) || isLeading) || isName(place, last)) return false
  let at = last - 1
  while (at >= 0 && isDescribing(place.words[at])) at--
  const led = place.words[at]
  // `and by its aid transport your uncle`
  if (hasObject(place) && is.has(is.PREPOSITIONS, place.words[at - 1])) return false
  // `a cat and a dog live here`, `the king and all the court use it`
  if (is.has(AND, place.words[place.words[at - 1] === 'all' ? at - 2 : at - 1])) return false
  // `a total marshmallow addict`
  if (isThing(led ?? '') && ![led, word].some(isVerbal) && is.has(A, place.words[at - 1])) return true
  return is.has(ONE, led) || (is.has(ONE_OR_MORE, led) && !is.ADJECTIVES.has(word))
}

/** Stand before the many that do something: `then the men on the farm use it`. */
const BEFORE_MANY: ReadonlySet<string> = is.words(
  'also maybe now often perhaps sometimes soon still then today usually yesterday',
)
const TIMES: ReadonlySet<string> = is.words('autumn day evening morning night spring summer time week winter year')

/** A clause, or who does something in it, may begin at `at`. */
export function isOpen(words: readonly string[], at: number): boolean {
  const before = words[at - 1]
  if (isMark(before) || is.has(is.CLAUSE_JOINS, before) || is.has(BEFORE_MANY, before)) return true
  // `every day the men on the farm use it`
  return is.has(TIMES, before) && (is.has(is.PLURAL_DETERMINERS, words[at]) || is.looksPlural(words[at]))
}

/** `all of them`, `the birds in the tree`, `herds of elephants in the park`: many open the clause, with what is said of them before the place. */
export function isOfMany({ words, index }: Place): boolean {
  let start = index
  while (!isOpen(words, start) && words[start - 1] !== 'that') start--
  let at = start
  while ([is.PLURAL_DETERMINERS, is.ADJECTIVES].some((group) => is.has(group, words[at])) && !isHead(words, at)) at++
  const many = words[at] ?? ''
  const isMany = [is.PLURALS, is.NUMBERS, is.MANY].some((group) => group.has(many)) || is.looksPlural(many)
  // `people all over the world`
  const led = words[at + 1] === 'all' ? words[at + 2] : words[at + 1]
  if (at >= index - 2 || !isMany || !is.has(is.ALL_PREPOSITIONS, led)) return false
  return !words.slice(at + 1, index).some(isVerbal) && !is.has(is.ALL_PREPOSITIONS, words[index - 1])
}

/** `people who live in the desert`, `people like my mum`: many open the clause, and their verb may be still to come. */
function isBehindMany({ words, index }: Place): boolean {
  let at = index - 1
  while (!isOpen(words, at)) at--
  while (at < index && [is.DETERMINERS, is.PLURAL_DETERMINERS, is.ADJECTIVES].some((group) => is.has(group, words[at])))
    at++
  // `Those who hate the king use the back door`
  if (words[at - 1] === 'those' && words[at] === 'who') return true
  const isMany = [is.PLURALS, is.MANY].some((group) => is.has(group, words[at])) || is.looksPlural(words[at])
  return isMany && (is.has(is.RELATIVES, words[at + 1]) || words[at + 1] === 'like')
}

/** `all of them`, `two of them`: it leads nothing. */
const isHead = (words: readonly string[], at: number): boolean => words[at + 1] === 'of'

export const isThing = (word: string): boolean =>
  !/[^s]s$|[aeiouy].*ing$|ly$/.test(word) &&
  !GROUPS.has(word) &&
  !is.isManyPeople(word) &&
  !SMALL.some((group) => group.has(word)) &&
  !is.LOOSE_ADJECTIVES.has(word)

const SMALL = [
  is.DETERMINERS,
  is.SUBJECTS,
  is.OBJECTS,
  is.PREPOSITIONS,
  is.MODALS,
  is.BE,
  is.HAVE,
  is.CLAUSE_JOINS,
  is.CLAUSE_STARTS,
  is.NUMBERS,
]

const isDescribing = (word: string | undefined): boolean =>
  is.has(is.ADJECTIVES, word) ||
  is.has(is.DEGREES, word) ||
  /[a-z]{3}(?:est|able|ible|ful|less|ous|ish|cret)$|dden$/.test(word ?? '')

/** `let a dog lead`, `saw this close`, `did this lead`; a helper that has its own verb governs nothing: `will not know this house`. */
function isGoverned(place: Place): boolean {
  for (let at = place.index - 1; ; at--) {
    const word = place.words[at]
    if (isMark(word) || is.has(is.CLAUSE_JOINS, word)) return false
    // `he asked that the boy use it`
    if (word === 'that' && is.has(ASKS_THAT, place.words[at - 1])) return true
    // `has a kite contest`, and `had a man escort her`
    const isFree = is.has(HAVE, word) && !hasObject(place)
    const isFed = isFree || hasOwnVerb(place, at) || hasOwnThing(place, at)
    if (!isFed && GOVERNORS.some((group) => is.has(group, word))) return true
    if (is.has(is.MODALS, word) && opens(place, at) && !hasOwnVerb(place, at)) return true
  }
}

/** `Did you finish your weather project?`: behind the person stands the verb that is governed. */
const hasOwnVerb = ({ words, index }: Place, at: number): boolean => {
  const [person, verb] = [words[at + 1], words[at + 2]]
  const isPerson = is.has(is.SUBJECTS, person) || is.has(is.OBJECTS, person)
  return isPerson && at + 2 < index - 1 && !is.has(is.DETERMINERS, verb) && !is.has(is.ADVERBS, verb)
}

/** `makes building the tree house a joy`, `made no fuss about being in a dog show`: the verb has its own thing, and another verb follows. */
const hasOwnThing = ({ words, index }: Place, at: number): boolean =>
  words.slice(at + 1, index - 1).some((word) => /[aeiouy].*ing$/.test(word) && !/thing$|^king$/.test(word))

/** A helper before its subject: `Did this …`, `how can a dog …`. */
const opens = (place: Place, at: number): boolean => {
  const [before, after] = [place.words[at - 1], place.words[at + 1]]
  const isAsked = isMark(before) || is.has(is.QUESTIONS, before) || is.has(is.CLAUSE_JOINS, before)
  // `Do your holiday project!`
  if (place.words[at] === 'do' && isTold(place)) return false
  return isAsked || is.has(is.DETERMINERS, after) || is.has(ONE_OR_MORE, after)
}

/** True where a word at `at` is one thing in a clause whose helpers govern nothing: `joy` in `hope and joy and progress`. */
export function isAloneThing(place: Place, at: number): boolean {
  const word = place.words[at]
  if (isMark(word) || isUnderHelper(place) || isName(place, at)) return false
  return (
    isThing(word ?? '') &&
    !NO_THINGS.has(word ?? '') &&
    !is.has(is.ADVERBS, word) &&
    !is.has(is.ADJECTIVES, word) &&
    !isVerbal(word)
  )
}

const NO_THINGS: ReadonlySet<string> = is.words(
  'and as both but even ever here how just never nor not or than that there to today together tomorrow too what where which who whom whose why yet',
)

/** A helper in the clause before that bare verbs follow. */
export function isUnderHelper({ words, index }: Place): boolean {
  for (let at = index - 1; !isMark(words[at]); at--) {
    if ([is.MODALS, is.LET, is.MAKE, is.PERCEIVE].some((group) => is.has(group, words[at]))) return true
  }
  return false
}
