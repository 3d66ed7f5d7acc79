// How a sentence uses a word: as which part of speech, and in which inflected form.

import type { PartOfSpeech, WordFacts } from './facts.ts'
import { type Inflection, toBases } from './inflect.ts'

export interface WordUse {
  readonly part: PartOfSpeech
  readonly inflection: Inflection
}

/** Words that stand before a naming word (or before a describing word and one), and before a doing word. */
const BEFORE_NOUN: ReadonlySet<string> = new Set(
  'a an another any both each every her his its my no our some that the their these this those three two your'.split(' '),
)
const BEFORE_VERB: ReadonlySet<string> = new Set(
  "can can't could did didn't do does doesn't don't he i let's may must not she should they to we will won't would you".split(' '),
)

/**
 * What the word is by itself and by the word before it; undefined where that does not tell, and a tagger has to.
 * @param before the word before it in the sentence, as written
 */
export function findUse(word: string, { partsOfSpeech, main, inflection }: WordFacts, before: string | undefined): WordUse | undefined {
  if (main === undefined) return undefined
  const open = partsOfSpeech.filter((part) => part !== 'adverb')
  if (partsOfSpeech.length === 1 || open.length === 1) return { part: main, inflection }
  const lower = before?.toLowerCase().replaceAll('’', "'") ?? ''
  if (BEFORE_VERB.has(lower) && open.includes('verb')) return toUse(word, 'verb', { main, inflection })
  // After `the`, a word that can be an adjective too may be either: `the light`, `the light box`.
  if (BEFORE_NOUN.has(lower) && open.includes('noun') && !open.includes('adjective')) return toUse(word, 'noun', { main, inflection })
  return undefined
}

/** @param tags what a tagger says of the word, as compromise names it */
export function toTaggedUse(word: string, tags: ReadonlySet<string>, facts: WordFacts): WordUse | undefined {
  const part = tags.has('Verb') ? 'verb' : tags.has('Noun') ? 'noun' : tags.has('Adjective') ? 'adjective' : tags.has('Adverb') ? 'adverb' : undefined
  if (part === undefined || !facts.partsOfSpeech.includes(part)) {
    return facts.main === undefined ? undefined : { part: facts.main, inflection: facts.inflection }
  }
  return toUse(word, part, facts)
}

const FORMS: Readonly<Record<'noun' | 'verb' | 'adjective' | 'adverb' | 'little', readonly Inflection[]>> = {
  noun: ['plural'],
  verb: ['third', 'past', 'participle', 'ing'],
  adjective: ['comparative', 'superlative'],
  adverb: ['comparative', 'superlative'],
  little: [],
}

function toUse(word: string, part: PartOfSpeech, { main, inflection }: Pick<WordFacts, 'main' | 'inflection'>): WordUse {
  if (part === main) return { part, inflection }
  const found = toBases(word.toLowerCase()).find((base) => FORMS[part].includes(base.inflection))
  return { part, inflection: inflection === 'none' ? 'none' : (found?.inflection ?? 'none') }
}
