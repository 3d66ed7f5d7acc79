// Picks the form of a row that the evidence leaves, by phrase, by class and by topic, in that order of weight.

import { startsWithSmall } from '../../letter-kinds.ts'
import { hasHelper } from './clause.ts'
import { hasObject, isClosed } from './clue.ts'
import type { Classes } from './evidence.ts'
import { findLongestPhrase } from './phrases.ts'
import { beforeIndex, findBefore, isMark, isName, isTitle, type Place, toPlain } from './place.ts'
import type { Tags } from './tags.ts'
import { type Heteronym, type HeteronymForm, isInflected, type WordClass } from './types.ts'
import { needsObject } from './valency.ts'
import { isVerbal } from './verbs.ts'
import { CLAUSE_JOINS, DETERMINERS, has, MODALS, PLURAL_DETERMINERS } from './vocabulary.ts'

const NO_PHRASES: readonly string[] = []

/** A phrase this long outweighs what the neighbours say about the class. */
const LONG_PHRASE = 3

/** The forms that the classes leave open; all of them where nothing is known. */
export function toCandidates(row: Heteronym, classes: Classes | undefined): readonly HeteronymForm[] {
  if (!classes) return row.forms
  const open = row.forms.filter((form) => form.classes.some((item) => classes.includes(item)))
  // `that is abuse`: what somebody or something is may be a thing, and is never a bare verb.
  return open.length === 0 && classes.includes('adjective') && !classes.includes('adverb')
    ? row.forms.filter((form) => form.classes.includes('noun'))
    : open
}

/** The form that phrase, class and topic agree on; undefined where they are silent or differ. */
export function findForm(row: Heteronym, place: Place, classes: Classes | undefined): string | undefined {
  const candidates = toCandidates(row, classes)
  const phrase = findPhrase(row, place, candidates)
  if (phrase === 'both') return undefined
  if (phrase) {
    const isFree = phrase.length >= LONG_PHRASE || phrase.form.classes.length === 0
    return isFree || candidates.includes(phrase.form) ? phrase.form.form : undefined
  }
  if (candidates.length === 1)
    return isRareDescribed(row, place, classes)
      ? undefined
      : (findRareThing(row, place, candidates) ?? candidates[0]?.form)
  if (!classes && !hasOneClass(row)) return undefined
  return findByTopic(candidates, place)
}

/** The place of a thing, and a word of the sentence that belongs to a form so rare that it has no class: the other one, which only describes, is in doubt. */
function isRareDescribed({ forms }: Heteronym, place: Place, classes: Classes | undefined): boolean {
  if (!classes?.includes('noun') || forms.some((form) => form.classes.includes('noun'))) return false
  return forms.some((form) => form.classes.length === 0 && hasTopic(form, place))
}

/** `The boat dipped her bows`: the place of the usual thing, and only words that belong to a rare one, which the classes of its form do not name. */
function findRareThing(
  { thing, forms }: Heteronym,
  place: Place,
  [only]: readonly HeteronymForm[],
): string | undefined {
  if (only === undefined || only.form !== thing || hasTopic(only, place)) return undefined
  return forms.find((form) => form !== only && hasTopic(form, place))?.form
}

/** The usual form of a row that has one, unless a word of the sentence belongs to the rare one, or that is a verb and the word could be one here. */
export function findUsual(row: Heteronym, place: Place): string | undefined {
  const rare = row.forms.filter((form) => form.form !== row.otherwise)
  if (rare.some((form) => hasTopic(form, place)) || findLongestPhrase(row.doubts ?? NO_PHRASES, place) > 0)
    return undefined
  return couldBeVerb(place) && rare.some((form) => form.classes.includes('verb')) ? undefined : row.otherwise
}

/** The form of last resort: only where no verb, or nothing but a verb, would be strange here. */
export function findFallback(row: Heteronym, place: Place, tags?: Tags): string | undefined {
  const { fallback } = row
  if (fallback === undefined) return undefined
  const other = row.forms.filter(({ form }) => form !== fallback).flatMap(({ classes }) => classes)
  const isVerb = other.includes('verb') || other.includes('past')
  if (!isVerb) return fallback
  return (isInflected(row.word) ? isSingularVerbPlace(place, tags) : isVerbPlace(place, tags)) ? undefined : fallback
}

/** Where a verb in -s may stand: behind no other verb of its clause, before an object, or behind one person or thing that could do it. */
function isSingularVerbPlace(place: Place, tags: Tags | undefined): boolean {
  const at = beforeIndex(place)
  if (isMark(place.words[at]) || couldBeVerb(place) || !hasVerbBefore(place, tags)) return true
  const couldDo = isName(place, at) || has(DETERMINERS, place.words[at - 1])
  return couldDo && !(needsObject(place.words[place.index] ?? '') && isClosed(place))
}

/** A verb earlier in the clause, and no `that` or `who` behind it. */
function hasVerbBefore({ words, index }: Place, tags: Tags | undefined): boolean {
  for (let at = index - 1; !isMark(words[at]) && !has(CLAUSE_JOINS, words[at]) && !has(RELATIVES, words[at]); at--) {
    if (isVerbal(words[at]) || (at < index - 1 && tags?.[at]?.has('Verb'))) return true
  }
  return false
}

const RELATIVES: ReadonlySet<string> = new Set(['that', 'which', 'who', 'whom'])

/** Where a bare verb may stand: before an object, behind its subject or its like, at the start, under a helper. */
function isVerbPlace(place: Place, tags: Tags | undefined): boolean {
  const at = beforeIndex(place)
  const before = place.words[at]
  return isMark(before) || couldBeVerb(place) || has(JOINED, before) || isName(place, at) || hasFreeHelper(place, tags)
}

/** A helper that has no verb of its own between; in `can lift any metal object` it has. */
function hasFreeHelper(place: Place, tags: Tags | undefined): boolean {
  if (!hasHelper(place)) return false
  const at = place.words.slice(0, place.index).findLastIndex((word) => has(MODALS, word))
  return at < 0 || !tags?.slice(at + 1, place.index - 1).some((tag) => tag.has('Infinitive'))
}

/** Before such a word stands its like, or its subject. */
const JOINED: ReadonlySet<string> = new Set('and or to nor men women children people mice geese sheep folk'.split(' '))

/** Before an object, or after what looks like a plural. */
function couldBeVerb(place: Place): boolean {
  const before = findBefore(place)
  if (hasObject(place)) return true
  return before !== undefined && /[a-z]{2}[^s']s$/.test(before) && !PLURAL_DETERMINERS.has(before)
}

/** The form that the capital shows: `polish` or `Polish`; undefined at the start of a sentence and in titles. */
export function findByCase(row: Heteronym, place: Place): string | undefined {
  const proper = row.forms.find((form) => form.written === 'capital')
  const written = place.written[place.index]
  if (!proper || written === undefined) return undefined
  if (startsWithSmall(written)) return row.forms.find((form) => form !== proper)?.form
  if (isRareBeside(proper, place)) return undefined
  return isName(place, place.index) && !isTitle(place) ? proper.form : undefined
}

/** The town of Reading is rare beside the Reading Corner. */
const isRareBeside = (proper: HeteronymForm, place: Place): boolean =>
  proper.classes.length === 0 && isName(place, place.index + 1)

/** `Reading Station` or `Reading Corner`, in mid-sentence: only a phrase tells the town from the books, and the usual word is no answer. */
export function isOpenName(row: Heteronym, place: Place): boolean {
  const proper = row.forms.find((form) => form.written === 'capital')
  return proper !== undefined && isRareBeside(proper, place) && isName(place, place.index) && !isTitle(place)
}

function hasOneClass(row: Heteronym): boolean {
  const [first, ...rest] = row.forms.map((form) => [...form.classes].sort().join())
  return rest.every((classes) => classes === first)
}

/** The form whose phrase stands there; undefined for none and for two. */
export function findByPhrase(row: Heteronym, place: Place): string | undefined {
  const found = findPhrase(row, place)
  return found === 'both' ? undefined : found?.form.form
}

/** Of two phrases of one length the one whose form the classes leave open. */
function findPhrase(
  row: Heteronym,
  place: Place,
  open: readonly HeteronymForm[] = row.forms,
): { readonly form: HeteronymForm; readonly length: number } | 'both' | undefined {
  let best: { readonly form: HeteronymForm; readonly length: number } | 'both' | undefined
  let longest = 0
  for (const form of row.forms) {
    const length = form.phrases ? findLongestPhrase(form.phrases, place) : 0
    if (length === 0 || length < longest) continue
    if (length > longest || best === undefined || best === 'both') best = { form, length }
    else if (open.includes(best.form) === open.includes(form)) best = 'both'
    else if (open.includes(form)) best = { form, length }
    longest = length
  }
  return best
}

/**
 * The usual one of two things, where the word is one and nothing in the sentence speaks for the other. Where the other may also
 * describe a thing (`the lead roof`), the word must be the thing itself.
 */
export function findThing(row: Heteronym, place: Place, classes: Classes | undefined): string | undefined {
  const { thing, doubts, forms } = row
  if (thing === undefined || classes === undefined) return undefined
  if (findPhrase(row, place, toCandidates(row, classes)) || findLongestPhrase(doubts ?? NO_PHRASES, place) > 0)
    return undefined
  const others = forms.filter(({ form }) => form !== thing)
  const isOpen = (item: WordClass): boolean => forms.some((form) => form.classes.includes(item))
  const isThing = (item: WordClass): boolean =>
    item === 'noun' || (item === 'adjective' && !others.some((form) => form.classes.includes(item))) || !isOpen(item)
  return classes.every(isThing) && !others.some((form) => hasTopic(form, place)) ? thing : undefined
}

function hasTopic(form: HeteronymForm, place: Place): boolean {
  const topics = toTopics(form)
  return topics.size > 0 && place.words.some((word, i) => i !== place.index && topics.has(word))
}

const known = new WeakMap<HeteronymForm, ReadonlySet<string>>()

function toTopics(form: HeteronymForm): ReadonlySet<string> {
  const found = known.get(form) ?? new Set(form.topics?.split(' '))
  known.set(form, found)
  return found
}

/** The form of the topic of the sentences before, where the word itself does not stand in them: it may be the other one there. */
export function findByTopicBefore(
  row: Heteronym,
  classes: Classes | undefined,
  before: readonly (readonly string[])[] | undefined,
): string | undefined {
  const candidates = toCandidates(row, classes)
  if (!before || candidates.length < 2 || (!classes && !hasOneClass(row))) return undefined
  const words = before.flatMap((sentence) => sentence.map(toPlain))
  if (words.includes(row.word)) return undefined
  const spoken = candidates.filter((form) => words.some((word) => toTopics(form).has(word)))
  return spoken.length === 1 ? spoken[0]?.form : undefined
}

function findByTopic(candidates: readonly HeteronymForm[], place: Place): string | undefined {
  // Two of the same word in a sentence may be said differently: what speaks for one must not sway the other.
  const spelt = place.words[place.index]
  if (place.words.filter((word) => word === spelt).length > 1) return undefined
  const spoken = candidates.filter((form) => hasTopic(form, place))
  return spoken.length === 1 ? spoken[0]?.form : undefined
}
