// Finds up to five words that can stand where a child cannot read one: of the same part of speech and form, near in
// meaning, and at home between the same neighbours. Better none than one that does not fit.

import { toStraight } from '../apostrophe.ts'
import { EDGE, type Neighbours } from './company.ts'
import type { Fitness } from './fitness.ts'
import { type Inflection, toBases, toForm } from './inflect.ts'
import { toCaseOf } from './letter-case.ts'
import { isLittleWord } from './little.ts'
import { canStand } from './stand.ts'
import type { StandIn } from './stand-ins.ts'
import { CONDITIONS, type FactsOf, NOWHERE, nextOf, prevOf, SUBJECTS, type Surroundings } from './surroundings.ts'
import type { ThesaurusPart } from './thesaurus.ts'
import { findUse, type WordUse } from './use.ts'
import type { WordData } from './word-data.ts'

/** The lexicon's words in order: all that is needed of it here. */
export interface WordOrder {
  /** Place of a lower-case word, or −1. */
  indexOf(word: string): number
  wordAt(index: number): string
}

export interface SuggestSources {
  readonly data: Pick<WordData, 'facts' | 'thesaurus' | 'standIns' | 'company'>
  readonly lexicon: WordOrder
  readonly fitness: Fitness
  /** Whether the child can read the lower-case word. */
  isReadable(word: string): boolean
}

/** The word to replace, and where it stands. */
export interface Wanted {
  /** As written: `Boats`. */
  readonly word: string
  readonly place?: Surroundings
  /** Where it is known; otherwise what the words around it tell. */
  readonly use?: WordUse
}

export interface Suggester {
  /** At most five, best first, in the case of the word; several words for one: `got up`. */
  suggest(wanted: Wanted): readonly string[]
}

const MOST = 5

/** Bounds of what is near enough, found on the half of the sentences that was judged while tuning. */
const BOUNDS = { cost: 1, likeness: 0.5, loss: 4 } as const

export function createSuggester(sources: SuggestSources): Suggester {
  const { data, lexicon } = sources
  const factsOf: FactsOf = (word) => {
    const index = lexicon.indexOf(word)
    return index < 0 ? undefined : data.facts.factsAt(index)
  }
  const tools: Tools = {
    ...sources,
    factsOf: keep(factsOf),
    kinOf: keep((key) => findKin(key, tools)),
    isFit: keep(sources.fitness.isFit),
  }
  return { suggest: ({ word, place = NOWHERE, use }) => findOffers(word, place, use, tools) }
}

interface Tools extends SuggestSources {
  readonly factsOf: FactsOf
  readonly isFit: (word: string) => boolean
  /** Synonyms of a word in one use: `key` is the word, the part of speech and the inflection. */
  readonly kinOf: (key: string) => readonly Kin[]
}

/** A word's facts do not change within a run, and a story says the same words again and again. */
function keep<T>(find: (key: string) => T): (key: string) => T {
  const found = new Map<string, T>()
  return (key) => {
    const known = found.get(key)
    if (known !== undefined || found.has(key)) return known as T
    const value = find(key)
    found.set(key, value)
    return value
  }
}

function findOffers(written: string, place: Surroundings, given: WordUse | undefined, tools: Tools): string[] {
  const whole = toStraight(written.toLowerCase())
  const [, stem = whole, owner = ''] = /^(.+)('s)$/.exec(whole) ?? []
  if (/'/.test(whole) && writesOut(whole, tools)) return writeOut(written, whole, place, tools)
  if (/'/.test(whole) && owner === '') return []
  // A little word has only what the table says of it as it is: `until`, `till`.
  if (isLittleWord(whole)) return asItIs(whole, place, tools).map((text) => toCaseOf(written, text))
  if (isLittleWord(stem)) return []
  const facts = tools.factsOf(stem)
  if (facts?.main === undefined || facts.main === 'little') return []
  const use = owner === '' ? (given ?? findUse(stem, facts, place, tools.factsOf)) : OWNER
  if (use === undefined || use.part === 'little') return []
  const offers: string[] = []
  const end = owner === '' ? place : { ...place, after: [] }
  for (const find of [fromTable, fromTree])
    for (const text of find(stem, use, place, tools)) {
      if (offers.length === MOST) return offers
      const offer = toCaseOf(written, text + owner)
      if (!offers.includes(offer) && isOffered(stem, text, use, end, tools)) offers.push(offer)
    }
  return offers
}

/** What stands in the table for just this form and can stand here. */
function asItIs(word: string, place: Surroundings, tools: Tools): string[] {
  const [prev, next] = [prevOf(place), nextOf(place)]
  return tools.data.standIns
    .find(word, 'form')
    .filter(({ where }) => where === undefined || CONDITIONS[where]?.(place, tools.factsOf) === true)
    .map(({ text }) => text)
    .filter((text) => {
      const parts = text.split(' ')
      return (
        parts[0] !== prev && parts.at(-1) !== next && parts.every((one) => tools.isReadable(one) && tools.isFit(one))
      )
    })
}

const writesOut = (word: string, { data }: Tools): boolean => data.standIns.find(word, 'form').length > 0

/** `didn't` → `did not`; not where a question turns the two words round: `didn't he`. */
function writeOut(written: string, word: string, place: Surroundings, tools: Tools): string[] {
  if (SUBJECTS.has(nextOf(place) ?? '')) return []
  return asItIs(word, place, tools)
    .map((text) => toCaseOf(written, text))
    .slice(0, 1)
}

const OWNER: WordUse = { part: 'noun', inflection: 'none' }

function isOffered(word: string, text: string, use: WordUse, place: Surroundings, tools: Tools): boolean {
  const parts = text.split(' ')
  return (
    text !== word &&
    text !== '' &&
    parts.every((part) => tools.isReadable(part) && tools.isFit(part)) &&
    canStand(text, use, place, tools.factsOf)
  )
}

function fromTable(word: string, use: WordUse, place: Surroundings, { data, factsOf }: Tools): string[] {
  const holds = ({ where }: StandIn): boolean => where === undefined || CONDITIONS[where]?.(place, factsOf) === true
  const forms = data.standIns.find(word, 'form').filter(holds)
  const found = toOwnBases(word, use).flatMap((base) => data.standIns.find(base, use.part).filter(holds))
  return [...forms.map(({ text }) => text), ...found.map(({ text }) => inflect(text, use))]
}

/** Of several doing words the first is inflected, of others the last: `got up`, `bad men`. */
function inflect(text: string, { part, inflection }: WordUse): string {
  if (inflection === 'none') return text
  // Its forms are those of another meaning: less and least.
  if (text === 'little') return ''
  const words = text.split(' ')
  const at = part === 'verb' ? 0 : words.length - 1
  return words.map((word, i) => (i === at ? toForm(word, inflection) : word)).join(' ')
}

function fromTree(word: string, use: WordUse, place: Surroundings, tools: Tools): string[] {
  // What a doing word asks for on its right is not told by its meaning: `says` and `tells`.
  if (use.part === 'verb') return []
  const kin = tools.kinOf(`${word} ${use.part} ${use.inflection}`)
  if (kin.length === 0) return []
  const { company } = tools.data
  const neighbours = toNeighbours(place)
  const ownFit = company.fit(tools.lexicon.indexOf(word), neighbours)
  if (ownFit === undefined) return []
  return kin
    .filter(({ at }) => (company.fit(at, neighbours) ?? Number.NEGATIVE_INFINITY) >= ownFit - BOUNDS.loss)
    .map(({ form }) => form)
}

/** A synonym in the form that is wanted, with its place in the lexicon. */
interface Kin {
  readonly form: string
  readonly at: number
}

/** What does not depend on the sentence: the synonyms alike enough that can be read, the most alike first. */
function findKin(key: string, tools: Tools): readonly Kin[] {
  const [word = '', part, inflection] = key.split(' ')
  const use = { part, inflection } as WordUse
  const { data, lexicon } = tools
  const own = lexicon.indexOf(word)
  const found = new Map<string, Kin & { readonly distance: number }>()
  for (const base of toOwnBases(word, use)) {
    const index = lexicon.indexOf(base)
    if (index < 0) continue
    for (const near of data.thesaurus.near(index, use.part as ThesaurusPart, BOUNDS.cost)) {
      const facts = data.facts.factsAt(near.index)
      if (facts.known < 2 || facts.main !== use.part) continue
      const form = inflect(lexicon.wordAt(near.index), use)
      const at = lexicon.indexOf(form)
      if (at < 0 || found.has(form)) continue
      const likeness = data.company.likeness(own, at)
      if (likeness === undefined || likeness < BOUNDS.likeness) continue
      found.set(form, { form, at, distance: near.cost / 10 - likeness })
    }
  }
  const nearest = [...found.values()].sort((a, b) => a.distance - b.distance)
  return nearest.filter(({ form }) => tools.isReadable(form) && tools.isFit(form))
}

function toOwnBases(word: string, { inflection }: WordUse): string[] {
  if (inflection === 'none') return [word]
  const bases = toBases(word).filter((one) => isSameForm(one.inflection, inflection))
  return [...new Set(bases.map(({ base }) => base))]
}

// The past and the participle are one form of most words.
function isSameForm(a: Inflection, b: Inflection): boolean {
  const name = (inflection: Inflection): Inflection => (inflection === 'participle' ? 'past' : inflection)
  return name(a) === name(b)
}

function toNeighbours({ before, after }: Surroundings): Neighbours {
  const isWord = (token: string | undefined): token is string => token !== undefined && /\p{L}/u.test(token)
  const pick = (near: string | undefined, far: string | undefined) => {
    if (!isWord(near)) return [EDGE, undefined] as const
    return [near, isWord(far) ? far : EDGE] as const
  }
  const [left, left2] = pick(before.at(-1), before.at(-2))
  const [right, right2] = pick(after[0], after[1])
  return { left, left2, right, right2 }
}
