// Finds up to five words that can stand where a child cannot read one: of the same part of speech and form, and near in
// meaning. Better none than one that does not fit.

import { hasApostrophe } from '../apostrophe.ts'
import { startsWithCapital } from '../letter-kinds.ts'
import { type Candidates, createCandidates, type SuggestSources } from './candidates.ts'
import type { WordFacts } from './facts.ts'
import { keep } from './keep.ts'
import { findLeaving, type Leaving, NO_LEAVING } from './leaving-out.ts'
import { toCaseOf } from './letter-case.ts'
import { findNature, type Nature } from './nature.ts'
import { createStandTest, isBound } from './stand.ts'
import type { StandIn } from './stand-ins.ts'
import {
  type FactsOf,
  isAfterBe,
  isMark,
  NOWHERE,
  nextOf,
  prevOf,
  SUBJECTS,
  type Surroundings,
} from './surroundings.ts'
import { findUse, toUses, type WordUse } from './use.ts'
import { isBeing } from './who.ts'
import type { WordData } from './word-data.ts'

/** The word to replace, and where it stands. */
export interface Wanted {
  /** As written: `Boats`. */
  readonly word: string
  readonly place?: Surroundings
}

export interface Suggester {
  /** At most five, best first, in the case of the word; several words for one: `got up`. */
  suggest(wanted: Wanted): readonly string[]
  /** Whether the sentence does without the word. */
  canGo(wanted: Wanted): boolean
  /** Whether anything could be offered for the word in any sentence, or it could go: spares the look at the sentence. */
  mayHelp(word: string): boolean
}

const MOST = 5

export interface SuggesterSources extends SuggestSources {
  /** What `mayHelp` says of a word without an owner's ending, in small letters, where that was told beforehand. */
  readonly isHelped?: (word: string) => boolean
}

export function createSuggester(sources: SuggesterSources): Suggester {
  const candidates = createCandidates(sources)
  const { data, isHelped } = sources
  const knownOf = (written: string): Told => {
    if (isHelped === undefined || hasApostrophe(written)) return findKnown(written, candidates, data)
    return isHelped(written.toLowerCase()) ? { ...findKnown(written, candidates, data), isHelped: true } : NOTHING
  }
  const mayHelp = keep((word) => {
    const known = tools.knownOf(word)
    return known.leaving.mayGo || findAllStandIns(known, candidates).length > 0
  })
  const tools: Tools = {
    ...sources,
    candidates,
    knownOf: keepLastOf(keep(knownOf)),
    useIn: keepLast((word, facts, place) => findUse(word, facts, place, candidates.factsOf)),
  }
  return {
    suggest: ({ word, place = NOWHERE }) => findOffers(word, place, tools),
    canGo: ({ word, place = NOWHERE }) => canGoHere(word, place, tools),
    mayHelp: (word) => tools.knownOf(word).isHelped ?? mayHelp(word),
  }
}

/** All that the table could put for a word, in any sentence. */
export function findAllStandIns({ whole, way, stem, facts }: Known, candidates: Candidates): readonly StandIn[] {
  if (way === 'written-out' || way === 'as-it-is') return candidates.asItIs(whole)
  return facts === undefined ? [] : toUses(stem, facts).flatMap((use) => candidates.listed(stem, use))
}

/** What is known of a word as it is written, wherever it stands. */
export interface Known extends Nature {
  /** Of a word that others can stand for. */
  readonly facts: WordFacts | undefined
  readonly leaving: Leaving
}

/** The same, and whether anything could be said for it at all, where that was told beforehand. */
interface Told extends Known {
  readonly isHelped?: boolean
}

/** Of a word that nothing can be said for. */
const NOTHING: Told = {
  ...{ whole: '', stem: '', owner: '', way: 'none' },
  ...{ facts: undefined, leaving: NO_LEAVING, isHelped: false },
}

export function findKnown(written: string, candidates: Candidates, { standIns }: Pick<WordData, 'standIns'>): Known {
  const nature = findNature(written, candidates, { standIns })
  const { whole, stem, way, owner } = nature
  const facts = way === 'replaced' ? candidates.factsOf(stem) : undefined
  const leaving = owner === '' ? findLeaving(whole, facts, standIns, candidates.factsOf) : NO_LEAVING
  return { ...nature, facts, leaving }
}

type FindUse = (word: string, facts: WordFacts, place: Surroundings) => WordUse | undefined

/** Of one word several things are asked in turn. */
function keepLastOf<Value>(find: (key: string) => Value): (key: string) => Value {
  let last: { readonly key: string; readonly value: Value } | undefined
  return (key) => {
    if (last?.key !== key) last = { key, value: find(key) }
    return last.value
  }
}

/** Of one place two things are asked: what can stand there, and whether the word can go. */
function keepLast(find: FindUse): FindUse {
  let last: { word: string; place: Surroundings; use: WordUse | undefined } | undefined
  return (word, facts, place) => {
    if (last?.place !== place || last.word !== word) last = { word, place, use: find(word, facts, place) }
    return last.use
  }
}

function canGoHere(written: string, place: Surroundings, tools: Tools): boolean {
  const { whole, facts, leaving } = tools.knownOf(written)
  if (!leaving.mayGo) return false
  const use = facts && tools.useIn(whole, facts, place)
  // What only stands before a thing describes it, though the sentence does not tell what else it might be.
  const part = use?.part ?? (facts?.main === 'adjective' ? facts.main : undefined)
  return leaving.canGo(part, place)
}

interface Tools extends SuggestSources {
  readonly candidates: Candidates
  readonly knownOf: (written: string) => Told
  readonly useIn: FindUse
}

function findOffers(written: string, place: Surroundings, tools: Tools): string[] {
  const { whole, way, stem, owner, facts } = tools.knownOf(written)
  const { factsOf } = tools.candidates
  if (way === 'written-out') return writeOut(written, whole, place, tools)
  if (way === 'as-it-is') return findAsItIs(whole, place, tools).map((text) => toCaseOf(written, text))
  if (facts === undefined) return []
  const use = owner === '' ? tools.useIn(stem, facts, place) : toOwner(facts)
  // What was judged for just this form and these neighbours needs no part of speech.
  if (use === undefined && owner === '') return findAsItIs(whole, place, tools).map((text) => toCaseOf(written, text))
  if (use === undefined || use.part === 'little') return []
  const listed = tools.candidates.listed(stem, use)
  if (listed.length === 0 || isBound(stem, use, place)) return []
  const offers: string[] = []
  const isCharacter = isBeing(stem) && startsWithCapital(written) && isCalledSo(place, factsOf)
  const end = owner === '' ? place : { ...place, after: [] }
  const holdsHere = toTableTest(use, place, tools)
  const canStand = createStandTest(use, end, factsOf)
  for (const standIn of listed) {
    if (offers.length === MOST) break
    if (!holdsHere(standIn)) continue
    const { text, where, ofForm } = standIn
    if (text === stem) continue
    const isPlaced = (ofForm === true && where !== undefined) || (isCharacter && text !== 'beast' && text !== 'bug')
    const offer = owner === '' ? text : withOwner(text, owner)
    if (canStand(standIn, isPlaced) && !offers.includes(offer)) offers.push(offer)
  }
  return offers.map((offer) => toCaseOf(written, offer))
}

/** `When Fox came`, `Fox ran`: a character is called so, without an article. */
const isCalledSo = (place: Surroundings, factsOf: FactsOf): boolean =>
  !place.before.every(isMark) || factsOf(nextOf(place) ?? '')?.main === 'verb'

/** What stands in the table for just this form and can stand here. */
function findAsItIs(word: string, place: Surroundings, tools: Tools): string[] {
  const [prev, next] = [prevOf(place), nextOf(place)]
  return tools.candidates
    .asItIs(word)
    .filter((standIn) => standIn.words[0] !== prev && standIn.words.at(-1) !== next)
    .filter(({ test }) => test?.(place, tools.candidates.factsOf) ?? true)
    .map(({ text }) => text)
}

/** Whether the table asks for this sign, among others. */
const asks =
  (sign: string) =>
  ({ where }: StandIn): boolean =>
    where !== undefined && `+${where}+`.includes(`+${sign}+`)

/** What the table says of the word after a form of `be`. */
const isForBe = asks('B')
const isForSpeech = asks('q')

/** What is acted on stands before it, `he was chased`, so that only what acts on something can stand here. */
const isPassive = ({ part, inflection }: WordUse, place: Surroundings): boolean =>
  part === 'verb' && inflection === 'participle' && isAfterBe(place)

/** Right after what somebody says only saying stands: `“No!” thought Ann.` */
const isAfterSpeech = ({ before }: Surroundings): boolean => {
  const last = before.at(-1)
  if (last !== '"') return before.length > 1 && (last === '”' || last === '»')
  // An even number of plain marks: the last one closes.
  return before.filter((word) => word === '"').length % 2 === 0
}

/** One word, or one with where to: `was put up`; not `was run after`. */
const actsAlone = ({ text, where }: StandIn): boolean =>
  (where === undefined || where === 'o' || where === 'P') &&
  /^(?!get|got|ha[ds]|have|having|let)[^ ]+(?: (?:away|back|down|in|off|out|up))?$/.test(text)

/** `didn't` → `did not`; not where a question turns the two words round: `didn't he`. */
function writeOut(written: string, word: string, place: Surroundings, tools: Tools): string[] {
  if (SUBJECTS.has(nextOf(place) ?? '')) return []
  // `Don't these men …?`
  if (/n't$/.test(word) && place.before.every(isMark) && place.after.includes('?')) return []
  return findAsItIs(word, place, tools)
    .map((text) => toCaseOf(written, text))
    .slice(0, 1)
}

/** `children's` is said of several. */
const toOwner = ({ inflection }: WordFacts): WordUse => ({
  part: 'noun',
  inflection: inflection === 'plural' ? 'plural' : 'none',
})

/** `kids'`, `men's`, `boss's`. */
const withOwner = (text: string, owner: string): string =>
  owner !== '' && /[^s]s$/.test(text) ? `${text}'` : text + owner

/** Whether the table lets a word stand here. */
function toTableTest(use: WordUse, place: Surroundings, tools: Tools): (standIn: StandIn) => boolean {
  const isDone = isPassive(use, place)
  const isSaid = use.part === 'verb' && isAfterSpeech(place)
  const { factsOf } = tools.candidates
  return (standIn) => {
    if (isSaid && !isForSpeech(standIn)) return false
    if (isDone && !isForBe(standIn)) return actsAlone(standIn)
    return standIn.test === undefined || standIn.test(place, factsOf)
  }
}
