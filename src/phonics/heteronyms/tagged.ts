// What the tagger says about a heteronym's class, believed only where the neighbours bear it out.

import { hasHelper } from './clause.ts'
import { hasObject } from './clue.ts'
import type { Classes } from './evidence.ts'
import type { Place } from './place.ts'
import { beforeIndex, isEdge, isMark, isName } from './place.ts'
import * as objects from './tagged-objects.ts'
import * as verbs from './tagged-only.ts'
import {
  type TaggedClue as Clue,
  canFollowVerb,
  hasOtherVerb,
  hasTag,
  isPluralAt,
  opensClause,
  type Tags,
} from './tags.ts'
import { LEADING } from './valency.ts'
import { BE, CLAUSE_JOINS, DETERMINERS, HAVE, has, MODALS, PLURAL_DETERMINERS, PREPOSITIONS } from './vocabulary.ts'

/** Plural in form, and often a describing word: `sports contest`. */
const DESCRIBING_PLURALS = new Set('sports games goods clothes arms sales savings news'.split(' '))
const HERE = new Set(['here', 'nearby', 'there', 'today'])
/** Words before a thing that is no subject. */
const LEADS = new Set([...PREPOSITIONS, 'against', 'before', 'after', 'between', 'during', 'to', 'through', 'over'])
const DESCRIBING = ['Adjective', 'Determiner', 'Possessive', 'Preposition', 'Value']

/** `Hens produce eggs`, `The boys bow to her`: a plural subject, and this word or no other is its verb. */
const pluralSubject: Clue = (place, tags, inflected) => {
  const last = beforeIndex(place)
  // `People here use it`
  const at = has(HERE, place.words[last]) ? last - 1 : last
  if (inflected || !isThing(tags[at]) || !isPluralAt(place, tags, at)) return undefined
  // `The Three Bears Project` is a title
  const isTitle = isName(place, place.index) && has(LEADING, place.words[place.index])
  if (has(DESCRIBING_PLURALS, place.words[at]) || isTitle) return undefined
  if (!opensClause(place, tags, at, ['Verb'])) return undefined
  const ownVerb = hasTag(tags, place.index, 'Verb') && canFollowVerb(place, tags)
  return ownVerb || !hasOtherVerb(place, tags) ? ['verb', 'past'] : undefined
}

/** `Ned winds his watch`; `Meg wound the wool`, where a present would have its -s. */
const singularSubject: Clue = (place, tags, inflected) => {
  const at = beforeIndex(place)
  const fits = isThing(tags[at]) && !isPluralAt(place, tags, at) && canFollowVerb(place, tags)
  if (!fits || !hasTag(tags, place.index, 'Verb')) return undefined
  if (inflected) return opensClause(place, tags, at, ['Verb']) ? ['verb'] : undefined
  return !hasHelper(place) && opensClause(place, tags, at, ['Verb', 'Preposition']) ? ['past'] : undefined
}

/** `Did the band record a song?` */
const question: Clue = (place, tags) => {
  if (!hasObject(place)) return undefined
  let at = place.index - 1
  while (!hasTag(tags, at, 'Verb') && !isMark(place.words[at])) at--
  const opens = isMark(place.words[at - 1]) || has(CLAUSE_JOINS, place.words[at - 1])
  return opens && has(MODALS, place.words[at]) ? ['verb'] : undefined
}

/** `the dog contest`: a singular noun takes no bare verb, so the two are one thing, or the second is a past. */
const compound: Clue = (place, tags, inflected) => {
  const at = beforeIndex(place)
  const isPair = isThing(tags[at]) && !isPluralAt(place, tags, at) && hasTag(tags, place.index, 'Noun')
  const led = has(DETERMINERS, place.words[at - 1])
  return !inflected && isPair && led && !hasHelper(place) && !hasObject(place) ? ['noun', 'past'] : undefined
}

/** Verbs that need no object, so that a thing before them may be their subject: `the man in the hat objects`. */
const NEEDS_NO_OBJECT = new Set(
  'conflicts contracts contrasts decreases increases objects progresses projects protests rebels resumes'.split(' '),
)

/** `of insurance contracts`, `by bank transfer`, `in our parish records`, `for a pay increase`, `of steady use`: led by a preposition. */
const led: Clue = (place, tags, inflected) => {
  const [before, after] = [beforeIndex(place), place.words[place.index + 1]]
  const isClosed =
    isEdge(after) ||
    (has(PREPOSITIONS, after) && after !== 'with') ||
    after === 'only' ||
    after === 'or' ||
    after === 'to'
  if (!isClosed || (!isThing(tags[before]) && !hasTag(tags, before, 'Adjective'))) return undefined
  // `in the barn Ned records`
  if (inflected && isName(place, before) && !isName(place, before - 1) && isThing(tags[before - 1])) return undefined
  let at = before
  while (isDescribing(tags[at]) && !has(PREPOSITIONS, place.words[at])) at--
  const isLed = has(DETERMINERS, place.words[at]) || has(PLURAL_DETERMINERS, place.words[at])
  const start = place.words[isLed ? at - 1 : at]
  if (!has(LEADS, start) || place.words[before] === start) return undefined
  if (isLed && inflected && has(NEEDS_NO_OBJECT, place.words[place.index])) return undefined
  return isLed && !inflected && isPluralAt(place, tags, before) ? undefined : ['noun']
}

const isDescribing = (tags: ReadonlySet<string> | undefined): boolean =>
  tags !== undefined && (isThing(tags) || tags.has('Adjective') || tags.has('Value')) && !tags.has('Determiner')

/** `for storage and transport`, `great pain and torment`: joined to a bare thing that a preposition or an adjective leads. */
const joined: Clue = (place, tags, inflected) => {
  const [lead, , and] = place.words.slice(Math.max(0, place.index - 3), place.index)
  const isLed = has(LEADS, lead) || hasTag(tags, place.index - 3, 'Adjective')
  const isJoined = and === 'and' && isThing(tags[place.index - 2]) && isLed
  if (!isJoined || !isEdge(place.words[place.index + 1]) || lead === 'to') return undefined
  return !inflected || isPluralAt(place, tags, place.index - 2) ? ['noun'] : undefined
}

/** `gave them costly presents`: what is described before and closes its clause is a thing. */
const describedPlural: Clue = (place, tags, inflected) => {
  const at = beforeIndex(place)
  const isAlone = hasTag(tags, at, 'Adjective') && !hasTag(tags, at, 'Noun')
  return inflected && isAlone && isEdge(place.words[place.index + 1]) ? ['noun'] : undefined
}

/** `Transfer rates are high`: first, before a thing that has its own verb. */
const firstOfTwo: Clue = (place, tags, inflected) => {
  const [after, verb] = [tags[place.index + 1], place.words[place.index + 2]]
  const isFirst = !inflected && isMark(place.words[place.index - 1]) && isThing(after)
  return isFirst && (has(BE, verb) || has(HAVE, verb) || has(MODALS, verb)) ? ['noun', 'adjective'] : undefined
}

/** `a clever dove sat`: described before, and the verb comes after. */
const described: Clue = (place, tags) => {
  const at = beforeIndex(place)
  const led = hasTag(tags, at, 'Adjective') && has(DETERMINERS, place.words[at - 1])
  return led && hasTag(tags, place.index + 1, 'Verb') ? ['noun'] : undefined
}

/** The tagger's noun after a word that describes or governs one, and before anything but an object. */
const noun: Clue = (place, tags, inflected) => {
  if (!hasTag(tags, place.index, 'Noun') || hasObject(place) || isName(place, place.index + 1)) return undefined
  if (inflected && place.words[place.index + 1] === 'with') return undefined
  const at = beforeIndex(place)
  const before = tags[at]
  if (isThing(tags[place.index + 1])) return inflected ? undefined : ['noun', 'adjective']
  if (!before || isMark(place.words[at])) return hasTag(tags, place.index + 1, 'Verb') ? ['noun'] : undefined
  return before.has('Verb') || DESCRIBING.some((tag) => before.has(tag)) ? ['noun'] : undefined
}

/** The tagger's adjective, before the noun that it describes or at the end of its clause; not alone as an order. */
const adjective: Clue = (place, tags) => {
  if (!hasTag(tags, place.index, 'Adjective') || isMark(place.words[beforeIndex(place)])) return undefined
  return isEdge(place.words[place.index + 1]) || isThing(tags[place.index + 1]) ? ['adjective'] : undefined
}

const CLUES: readonly Clue[] = [
  question,
  verbs.joinedVerb,
  verbs.bareOrder,
  verbs.orderBehind,
  objects.objectPlural,
  objects.ledObjectPlural,
  verbs.joinedToVerb,
  verbs.listedVerb,
  verbs.madeTo,
  objects.takenPlural,
  objects.needing,
  objects.joinedThing,
  objects.pointedAt,
  verbs.askedVerb,
  verbs.subjectOfPast,
  verbs.onlyVerb,
  verbs.onlyVerbOfMany,
  verbs.onlyBareVerb,
  led,
  joined,
  describedPlural,
  firstOfTwo,
  pluralSubject,
  singularSubject,
  compound,
  described,
  noun,
  adjective,
]

/** The classes left open; undefined where the tagger is not to be believed. `inflected`: the word ends in its own -s. */
export function findTaggedClasses(place: Place, tags: Tags, inflected: boolean): Classes | undefined {
  for (const clue of CLUES) {
    const classes = clue(place, tags, inflected)
    if (classes) return classes
  }
  return undefined
}

function isThing(tags: ReadonlySet<string> | undefined): boolean {
  return tags?.has('Noun') === true && !tags.has('Pronoun')
}
