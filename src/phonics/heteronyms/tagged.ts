// What the tagger says about a heteronym's class, believed only where the neighbours bear it out.

import type { Classes } from './evidence.ts'
import type { Place } from './place.ts'
import { beforeIndex, isEdge, isMark } from './place.ts'
import * as is from './vocabulary.ts'

export type Tags = readonly ReadonlySet<string>[]

/** The classes left open; undefined where the tagger is not to be believed. `inflected`: the word ends in its own -s. */
export function findTaggedClasses(place: Place, tags: Tags, inflected: boolean): Classes | undefined {
  const own = tags[place.index]
  if (!own) return undefined
  if (own.has('Verb')) return hasSubject(place, tags, inflected) ? (inflected ? ['verb'] : ['verb', 'past']) : undefined
  if (own.has('Noun')) return isNounPlace(place, tags) ? ['noun'] : undefined
  if (own.has('Adjective')) return isAdjectivePlace(place, tags) ? ['adjective'] : undefined
  return undefined
}

/** A plural subject before a bare verb (`Hens produce eggs`), a singular one before an -s form (`Ned winds it`). */
function hasSubject(place: Place, tags: Tags, inflected: boolean): boolean {
  const at = beforeIndex(place)
  const before = tags[at]
  if (!before?.has('Noun') || before.has('Pronoun') || !canFollowVerb(place, tags)) return false
  return inflected ? isSingular(before) : isPluralAt(place, tags, at)
}

/** True where the noun at `at` is plural, or the second of two joined by `and`. */
export function isPluralAt(place: Place, tags: Tags, at: number): boolean {
  if (tags[at]?.has('Plural') || PLURALS.has(place.words[at] ?? '')) return true
  const joined = place.words.slice(Math.max(0, at - 3), at).includes('and')
  return joined && tags.slice(Math.max(0, at - 5), at - 1).some((tag) => tag.has('Noun'))
}

const PLURALS = new Set('children people men women mice geese sheep fish police'.split(' '))

export function isSingular(tags: ReadonlySet<string>): boolean {
  return !tags.has('Plural') && (tags.has('Singular') || tags.has('ProperNoun') || tags.has('Person') || tags.has('Noun'))
}

/** What comes after a verb: its object, a phrase with a preposition, an adverb, or the end; not a further verb. */
function canFollowVerb(place: Place, tags: Tags): boolean {
  const after = place.words[place.index + 1]
  if (isEdge(after) || is.OBJECT_STARTS.has(after ?? '')) return true
  const tag = tags[place.index + 1]
  return !tag?.has('Verb') || tag.has('Particle')
}

/** After a describing word or a verb, and before anything but an object of its own. */
function isNounPlace(place: Place, tags: Tags): boolean {
  const after = place.words[place.index + 1]
  if (after !== undefined && is.OBJECT_STARTS.has(after)) return false
  const before = tags[beforeIndex(place)]
  if (!before || isMark(place.words[beforeIndex(place)])) return tags[place.index + 1]?.has('Verb') ?? false
  return ['Adjective', 'Determiner', 'Possessive', 'Preposition', 'Value'].some((tag) => before.has(tag)) || before.has('Verb')
}

/** Before the noun that it describes, or at the end of its clause. */
function isAdjectivePlace(place: Place, tags: Tags): boolean {
  const after = place.words[place.index + 1]
  return isEdge(after) || (tags[place.index + 1]?.has('Noun') ?? false)
}
