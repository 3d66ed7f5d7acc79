// Words that a child can read and that could stand for a word in one use, whatever its sentence: found once for each use.

import type { Fitness } from './fitness.ts'
import { type Inflection, toBases, toForm } from './inflect.ts'
import { keep } from './keep.ts'
import type { StandIn } from './stand-ins.ts'
import type { FactsOf } from './surroundings.ts'
import type { ThesaurusPart } from './thesaurus.ts'
import type { WordUse } from './use.ts'
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

export interface Candidates {
  readonly factsOf: FactsOf
  /** What the table says of just this form. */
  asItIs(word: string): readonly StandIn[]
  /** What the table says of a word, in the form that is wanted. */
  listed(word: string, use: WordUse): readonly StandIn[]
  /** Synonyms alike enough, the most alike first. */
  kin(word: string, use: WordUse): readonly Kin[]
}

/** A synonym in the form that is wanted, with its place in the lexicon. */
interface Kin {
  readonly form: string
  readonly at: number
}

/** Bounds of what is near enough, found on the half of the sentences that was judged while tuning. */
const BOUNDS = { cost: 1, likeness: 0.5 } as const

export function createCandidates(sources: SuggestSources): Candidates {
  const { data, lexicon } = sources
  const tools: Tools = { ...sources, isFit: keep(sources.fitness.isFit) }
  const factsOf: FactsOf = (word) => {
    const index = lexicon.indexOf(word)
    return index < 0 ? undefined : data.facts.factsAt(index)
  }
  const listed = keep((key) => findListed(key, tools))
  // What the table says nothing of, whatever the child can read: the tree is dear, and finds next to nothing for words that were judged.
  const kin = keep((key) => (isListed(key, tools) ? [] : findKin(key, tools)))
  return {
    factsOf: keep(factsOf),
    asItIs: keep((word) => data.standIns.find(word, 'form').filter(({ text }) => canBeRead(text, tools))),
    listed: (word, use) => listed(toKey(word, use)),
    kin: (word, use) => kin(toKey(word, use)),
  }
}

interface Tools extends SuggestSources {
  readonly isFit: (word: string) => boolean
}

/** Fit in a list, where a teacher knows which is meant; as an offer they would say the other thing. */
const ONLY_LISTED = /^(?:shoots?|shots?)$/

const canBeRead = (text: string, { isReadable, isFit }: Tools): boolean =>
  text !== '' && text.split(' ').every((part) => isReadable(part) && isFit(part) && !ONLY_LISTED.test(part))

const toKey = (word: string, { part, inflection }: WordUse): string => `${word} ${part} ${inflection}`

function fromKey(key: string): { readonly word: string; readonly use: WordUse } {
  const [word = '', part, inflection] = key.split(' ')
  return { word, use: { part, inflection } as WordUse }
}

/** In the form that is wanted, those that can be read. */
function findListed(key: string, tools: Tools): readonly StandIn[] {
  const { word, use } = fromKey(key)
  const { standIns } = tools.data
  const found = toOwnBases(word, use).flatMap((base) => standIns.find(base, use.part))
  const inflected = found.map(({ text, where }) => ({ text: inflect(text, use), where }))
  return [...standIns.find(word, 'form'), ...inflected].filter(({ text }) => canBeRead(text, tools))
}

function isListed(key: string, { data: { standIns } }: Tools): boolean {
  const { word, use } = fromKey(key)
  return toOwnBases(word, use).some((base) => standIns.find(base, use.part).length > 0)
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

function findKin(key: string, tools: Tools): readonly Kin[] {
  const { word, use } = fromKey(key)
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
  return nearest.filter(({ form }) => canBeRead(form, tools))
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
