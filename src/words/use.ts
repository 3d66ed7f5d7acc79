// How a sentence uses a word: as which part of speech, and in which inflected form.

import { toStraight } from '../apostrophe.ts'
import type { PartOfSpeech, WordFacts } from './facts.ts'
import { type Inflection, toBases } from './inflect.ts'

export interface WordUse {
  readonly part: PartOfSpeech
  readonly inflection: Inflection
}

/** The word before in the sentence, as written, and what is known of it; undefined at the start. */
export interface WordBefore {
  readonly word: string
  readonly facts: WordFacts | undefined
}

/** Words that stand before a naming word, or before a describing word and one. */
const BEFORE_NOUN: ReadonlySet<string> = new Set(
  'a an another any both each every her his its my no our some that the their these this those three two your'.split(
    ' ',
  ),
)
/** Words that stand before a doing word in its base form, and those before one in any form. */
const BEFORE_BASE: ReadonlySet<string> = new Set(
  "can can't could did didn't do does doesn't don't let's may must not should to will won't would".split(' '),
)
const DOERS: ReadonlySet<string> = new Set('he i it she they we who you'.split(' '))

const VERB_FORMS: ReadonlySet<Inflection> = new Set(['third', 'past', 'participle', 'ing'])

/**
 * What the word is by itself and by the word before it; undefined where that does not tell, and a tagger has to.
 * A form that only doing words have (`jumped`) settles it; so does what stands before a word and can only go with one part
 * of speech (`to play`, `a play`, `they play`, `big play`).
 */
export function findUse(word: string, facts: WordFacts, before: WordBefore | undefined): WordUse | undefined {
  const { partsOfSpeech, main, inflection } = facts
  if (main === undefined) return undefined
  const open: readonly PartOfSpeech[] = partsOfSpeech.filter((part) => part !== 'adverb')
  if (partsOfSpeech.length === 1 || open.length === 1) return { part: main, inflection }
  const is = (part: PartOfSpeech): WordUse | undefined => (open.includes(part) ? toUse(word, part, facts) : undefined)
  const lower = toStraight(before?.word.toLowerCase() ?? '')
  const isAdjective = open.includes('adjective')
  if (BEFORE_BASE.has(lower)) return is('verb')
  if (DOERS.has(lower) && !isAdjective) return is('verb')
  // After `the`, a word that can describe too may be either: `the light`, `the light box`.
  if (BEFORE_NOUN.has(lower) && !isAdjective) return is('noun')
  if (before?.facts?.main === 'adjective' && !isAdjective) return is('noun')
  return main === 'verb' && VERB_FORMS.has(inflection) && inflection !== 'ing' && !isAdjective
    ? { part: main, inflection }
    : undefined
}

/** @param tags what a tagger says of the word, as compromise names it */
export function toTaggedUse(word: string, tags: ReadonlySet<string>, facts: WordFacts): WordUse | undefined {
  const part = tags.has('Verb')
    ? 'verb'
    : tags.has('Noun')
      ? 'noun'
      : tags.has('Adjective')
        ? 'adjective'
        : tags.has('Adverb')
          ? 'adverb'
          : undefined
  if (part !== undefined && facts.partsOfSpeech.includes(part)) return toUse(word, part, facts)
  return facts.main === undefined ? undefined : { part: facts.main, inflection: facts.inflection }
}

const FORMS: Readonly<Record<PartOfSpeech, readonly Inflection[]>> = {
  noun: ['plural'],
  verb: ['third', 'past', 'participle', 'ing'],
  adjective: ['comparative', 'superlative'],
  adverb: ['comparative', 'superlative'],
  little: [],
}

/** The form of a part of speech that the word has, where it is not its main one: `runs` as a naming word is a plural. */
function toUse(word: string, part: PartOfSpeech, { main, inflection }: WordFacts): WordUse {
  if (part === main || inflection === 'none') return { part, inflection: part === main ? inflection : 'none' }
  const found = toBases(word.toLowerCase()).find((base) => FORMS[part].includes(base.inflection))
  return { part, inflection: found?.inflection ?? 'none' }
}
