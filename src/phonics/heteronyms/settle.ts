// Which of its spoken words a heteronym is in one sentence, or that it cannot be told.
//
// A wrong silent choice is worse than none, so every step answers only where nothing speaks against it. The cheap steps
// come first: what words of the sentence tell by rules, then what a small model has learned to hold likely. The tagger is
// asked for only where both are silent, since loading it costs more than all the rest.

import {
  findByCase,
  findByPhrase,
  findByTopicBefore,
  findFallback,
  findForm,
  findThing,
  findUsual,
  isOpenName,
  toCandidates,
} from './choose.ts'
import { hasObject } from './clue.ts'
import { type Classes, findClasses } from './evidence.ts'
import { fits } from './learned/fits.ts'
import { cutAtHyphens, findLookAlike, findToldByRest } from './part.ts'
import { type Place, toPlace, toPlain } from './place.ts'
import { findTenseForm } from './read.ts'
import { findTaggedClasses } from './tagged.ts'
import type { Tagger } from './tagger.ts'
import type { Tags } from './tags.ts'
import { type Heteronym, type Heteronyms, isInflected, type Likely } from './types.ts'
import { canTagUsed, findTaggedUsed, findUsed } from './used.ts'

export type Settlement =
  | { readonly kind: 'settled'; readonly form: string }
  /** The small words do not tell; ask again with a tagger. */
  | { readonly kind: 'tagger-needed' }
  | { readonly kind: 'unsettled' }

export interface SettleOptions {
  readonly tagger?: Tagger | undefined
  /** The sentences just before, as words and marks; they show the tense of a story. */
  readonly before?: readonly (readonly string[])[] | undefined
}

/**
 * Settles the heteronym at `index` of a sentence given as words and marks, each a string of its own, in any case. A word with hyphens
 * that has one among its parts is settled by it.
 * Pure; never throws. A word that is no heteronym is unsettled.
 */
export function settle(
  heteronyms: Heteronyms,
  sentence: readonly string[],
  index: number,
  options: SettleOptions = {},
): Settlement {
  const word = toPlain(sentence[index] ?? '')
  const found = findLookAlike(heteronyms, word)
  if (!found) return { kind: 'unsettled' }
  const { row } = found
  const byRest = findToldByRest(row, word)
  if (byRest !== undefined) return toSettlement(byRest)
  const cut = cutAtHyphens(sentence, index, found)
  const place = toPlace(cut.sentence, cut.index)
  const cased = findByCase(row, place)
  if (cased !== undefined) return toSettlement(cased)
  if (isOpenName(row, place)) return toSettlement(findByPhrase(row, place))
  const told = findToldForm(row, place, options)
  if (told !== undefined) return toSettlement(told)
  const likely = heteronyms.weigh?.(row, place)
  const isSure = likely !== undefined && likely.share >= ENOUGH
  if (isSure && fits(row, place, likely.form)) return toSettlement(likely.form)
  const usual = row.word === 'used' ? undefined : findUsual(row, place)
  if (usual !== undefined) return toSettlement(isDoubted(usual, likely) ? undefined : usual)
  if (row.word === 'used' && !canTagUsed(place)) return { kind: 'unsettled' }
  if (!options.tagger && canTaggerHelp(row, place)) return { kind: 'tagger-needed' }
  const last = options.tagger ? findTaggedForm(row, place, options.tagger, options) : findFallback(row, place)
  const isLikely = last === undefined && likely !== undefined && likely.share >= LIKELY
  if (isLikely && fits(row, place, likely.form)) return toSettlement(likely.form)
  const isStrange = isSure && last === likely.form
  return toSettlement(isStrange || isDoubted(last, likely) ? undefined : last)
}

const toSettlement = (form: string | undefined): Settlement =>
  form === undefined ? { kind: 'unsettled' } : { kind: 'settled', form }

/** How sure the model must be to speak where no word tells. */
const ENOUGH = 0.97
/** How sure, where the tagger has been asked too and nothing speaks against it. */
const LIKELY = 0.85
/** How sure, to silence a form that is only the usual one, or that only the tagger holds for right. */
const DOUBT = 0.7

/** Two opinions are none: a wrong form that is taken in silence is worse. */
const isDoubted = (form: string | undefined, likely: Likely | undefined): boolean =>
  likely !== undefined && likely.form !== form && likely.share >= DOUBT

/** What the words of the sentence, and those before it, tell. */
function findToldForm(row: Heteronym, place: Place, { before }: SettleOptions): string | undefined {
  if (row.word === 'used') return findUsed(place)
  const classes = findClasses(place, isInflected(row.word))
  return (
    findForm(row, place, classes) ??
    findTenseForm(row, place, classes, before) ??
    findByTopicBefore(row, classes, before) ??
    findThing(row, place, classes)
  )
}

function findTaggedForm(row: Heteronym, place: Place, tagger: Tagger, { before }: SettleOptions): string | undefined {
  const tags = tagger(place.written)
  if (row.word === 'used') return findTaggedUsed(place, tags)
  const local = findClasses(place, isInflected(row.word))
  // `read` is no thing: a tagger that sees one there has not seen that it is a past either.
  const isBlind = row.word === 'read' && tags[place.index]?.has('Noun') === true
  const tagged = isBlind ? undefined : findTaggedClasses(place, tags, isInflected(row.word))
  const classes = local || !isBareLive(row, place, tags, tagged) ? narrow(local, tagged) : undefined
  const form =
    (classes && findForm(row, place, classes)) ??
    findTenseForm(row, place, classes, before, tags) ??
    // That a tagger says that the word is a thing is too little for the usual one.
    (local && (findByTopicBefore(row, classes, before) ?? findThing(row, place, classes)))
  const last = form ?? findFallback(row, place, tags)
  return form === undefined && tags[place.index]?.has('Verb') && !isVerbHere(row, last, place) ? undefined : last
}

/** True where the form is a verb with its object, one in -s, or as well what somebody is: `agitated and upset`. */
function isVerbHere(row: Heteronym, name: string | undefined, place: Place): boolean {
  const classes = row.forms.find(({ form }) => form === name)?.classes ?? []
  const fits = hasObject(place) || isInflected(row.word) || classes.includes('adjective')
  return classes.includes('verb') && fits
}

/** The tagger's word alone makes no adjective of `live` where nothing follows that it could describe: `the Giants live back of us`. */
function isBareLive(row: Heteronym, place: Place, tags: Tags, tagged: Classes | undefined): boolean {
  const after = tags[place.index + 1]
  const isAdjective = row.word === 'live' && tagged?.includes('adjective') === true
  return isAdjective && !(after?.has('Noun') || after?.has('Adjective') || after?.has('Gerund'))
}

/** What both leave open; the tagger's word alone where the neighbours say nothing, and nothing where the two differ. */
function narrow(local: Classes | undefined, tagged: Classes | undefined): Classes | undefined {
  if (!local || !tagged) return tagged
  const both = local.filter((item) => tagged.includes(item))
  return both.length > 0 ? both : undefined
}

/** False where the forms still open are of the same class here, so that a part of speech tells nothing. */
function canTaggerHelp(row: Heteronym, place: Place): boolean {
  const local = findClasses(place, isInflected(row.word))
  const open = toCandidates(row, local)
  const kinds = open.map((form) =>
    form.classes
      .filter((item) => local?.includes(item) ?? true)
      .sort()
      .join(),
  )
  return open.length === 0 || new Set(kinds).size > 1
}
