// Words that a child can read and that could stand for a word in one use, whatever its sentence: found once for each use.

import type { Fitness } from './fitness.ts'
import { type Inflection, toBases, toForm } from './inflect.ts'
import { keep } from './keep.ts'
import type { StandIn } from './stand-ins.ts'
import type { FactsOf } from './surroundings.ts'
import type { WordUse } from './use.ts'
import type { WordData } from './word-data.ts'

/** The lexicon's words in order: all that is needed of it here. */
export interface WordOrder {
  /** Place of a lower-case word, or −1. */
  indexOf(word: string): number
}

export interface SuggestSources {
  readonly data: Pick<WordData, 'facts' | 'standIns'>
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
}

export function createCandidates(sources: SuggestSources): Candidates {
  const { data, lexicon } = sources
  const tools: Tools = { ...sources, mayStandFor: keep(sources.fitness.mayStandFor) }
  const factsOf: FactsOf = (word) => {
    const index = lexicon.indexOf(word)
    return index < 0 ? undefined : data.facts.factsAt(index)
  }
  const listed = keep((key) => findListed(key, tools))
  return {
    factsOf: keep(factsOf),
    asItIs: keep((word) => data.standIns.find(word, 'form').filter(({ text }) => canBeRead(text, tools))),
    listed: (word, use) => listed(toKey(word, use)),
  }
}

interface Tools extends SuggestSources {
  readonly mayStandFor: (word: string) => boolean
}

const canBeRead = (text: string, { isReadable, mayStandFor }: Tools): boolean =>
  text !== '' && text.split(' ').every((part) => isReadable(part) && mayStandFor(part))

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

/** Of several doing words the first is inflected, of others the last: `got up`, `bad men`. */
function inflect(text: string, { part, inflection }: WordUse): string {
  if (inflection === 'none') return text
  // Its forms are those of another meaning: less and least.
  if (text === 'little') return ''
  const words = text.split(' ')
  const at = part === 'verb' ? 0 : words.length - 1
  return words.map((word, i) => (i === at ? toForm(word, inflection) : word)).join(' ')
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
