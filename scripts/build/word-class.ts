// Which parts of speech a word is used as, and which one mainly: from WordNet's sense counts, the endings, and the
// table of little words.

import type { PartOfSpeech } from '../../src/words/facts.ts'
import { type Inflection, toBases } from '../../src/words/inflect.ts'
import { isLittleWord } from '../../src/words/little.ts'
import type { ChildWords } from './children.ts'
import type { Sense, WordNet, WordNetPos } from './wordnet.ts'

/** One way a word is used. */
export interface Use {
  readonly part: PartOfSpeech
  readonly inflection: Inflection
  readonly base: string
  /** How often, in tags of WordNet; half a tag for a use that was never tagged. */
  readonly weight: number
}

const PART_OF: Readonly<Record<WordNetPos, PartOfSpeech>> = {
  noun: 'noun',
  verb: 'verb',
  adj: 'adjective',
  adv: 'adverb',
}

// Tags are counted on the base form for all its forms together; these are the shares of each form, a rough guess of the
// project's own.
const ENDING_OF: Readonly<Record<Exclude<Inflection, 'none'>, { readonly pos: WordNetPos; readonly share: number }>> = {
  plural: { pos: 'noun', share: 0.25 },
  third: { pos: 'verb', share: 0.1 },
  past: { pos: 'verb', share: 0.35 },
  participle: { pos: 'verb', share: 0.2 },
  ing: { pos: 'verb', share: 0.2 },
  comparative: { pos: 'adj', share: 0.1 },
  superlative: { pos: 'adj', share: 0.1 },
}

/** A use below this share of the main one is not listed: `boat` is no doing word to a child. */
const LEAST_SHARE = 0.04

/** A little word is listed as anything else only from this many tags: `can`, but not `a`. */
const LEAST_TAGS_OF_LITTLE = 5

/**
 * WordNet tagged texts for adults: in a story for children `duck` is likelier the bird, and `train` what runs on rails.
 */
const MORE_LIKELY: Readonly<Record<string, number>> = { animal: 4, artifact: 1.5, food: 1.5, plant: 1.5 }

const LIVING: ReadonlySet<string> = new Set(['animal', 'food', 'plant'])

/** Uses of a lower-case word, most frequent first; empty for names and for words that WordNet lacks. */
export function findUses(word: string, wordnet: WordNet, children: ChildWords): readonly Use[] {
  if (/n't$|'(?:ll|ve|re|m|d)$/.test(word)) return [{ part: 'little', inflection: 'none', base: word, weight: 1 }]
  const isName = children.isCapital(word) && children.knownGrade(word) < 2
  const uses: Use[] = []
  for (const pos of ['noun', 'verb', 'adj', 'adv'] as const) {
    const weight = weigh(word, pos, wordnet, children)
    if (weight > 0) uses.push({ part: PART_OF[pos], inflection: 'none', base: word, weight })
  }
  const own = uses.length === 0 ? children.partOf(word) : undefined
  if (own !== undefined) uses.push({ part: own, inflection: 'none', base: word, weight: 1 })
  for (const { base, inflection } of toBases(word)) {
    if (base === word || inflection === 'none') continue
    const { pos, share } = ENDING_OF[inflection]
    const weight = weigh(base, pos, wordnet, children) * share
    if (weight > 0) uses.push({ part: PART_OF[pos], inflection, base, weight })
  }
  // `Tam` and `Pat`: what the frequency list writes with a capital must have been met as a word,
  // or be an animal, a plant or food: `Fern`, `Robin`.
  const met = isName && !LIVING.has(wordnet.lexFile(word) ?? '') ? uses.filter((use) => use.weight >= 1) : uses
  return choose(word, toDeeds(word, mergeForms(met), children), wordnet.lexFile(word) === 'artifact')
}

// WordNet has some inflected forms as lemmas of their own: `men`, `better`, `glasses`. They are inflected forms all the
// same.
function mergeForms(uses: readonly Use[]): Use[] {
  const form = (use: Use): boolean => ['plural', 'comparative', 'superlative'].includes(use.inflection)
  return uses.flatMap((use) => {
    const own = uses.find((other) => other.part === use.part && other.inflection === 'none')
    if (form(use) && own !== undefined) return [{ ...use, weight: use.weight + own.weight }]
    return use === own && uses.some((other) => other.part === use.part && form(other)) ? [] : [use]
  })
}

/** `mopping` is what somebody does, though WordNet has it as a thing too; `painting` is a thing that children know by this name. */
function toDeeds(word: string, uses: readonly Use[], children: ChildWords): readonly Use[] {
  const deed = uses.find(({ inflection }) => inflection === 'ing')
  const noun = uses.find(({ part }) => part === 'noun')
  if (deed === undefined || noun === undefined) return uses
  if (children.isCapital(word) || children.ownGrade(word) >= 2) return uses
  return uses.map((use) => (use === deed ? { ...deed, weight: Math.max(deed.weight, noun.weight + 1) } : use))
}

function choose(word: string, uses: readonly Use[], isThing: boolean): readonly Use[] {
  const sorted = [...uses].sort((a, b) => b.weight - a.weight)
  if (isLittleWord(word)) {
    const little: Use = { part: 'little', inflection: 'none', base: word, weight: Number.MAX_SAFE_INTEGER }
    return [little, ...sorted.filter((use) => use.weight >= LEAST_TAGS_OF_LITTLE || (use.part === 'noun' && isThing))]
  }
  const most = sorted[0]?.weight ?? 0
  return sorted.filter((use) => use.weight >= LEAST_SHARE * most)
}

// Senses written with a capital are names: they do not count, but for a word that children learn to read, as Christmas.
function weigh(lemma: string, pos: WordNetPos, wordnet: WordNet, children: ChildWords): number {
  const all = wordnet.senses(lemma, pos)
  const small = all.filter((sense: Sense) => wordnet.synset(pos, sense.offset).words.includes(lemma))
  const senses = small.length > 0 || children.knownGrade(lemma) < 2 ? small : all
  const factor = (senses[0]?.tags ?? 0) > 0 ? (MORE_LIKELY[senses[0]?.lexFile ?? ''] ?? 1) : 1
  return senses.length === 0 ? 0 : factor * senses.reduce((sum, sense) => sum + sense.tags, 0.5)
}
