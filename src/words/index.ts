// Words to propose: what is known of each, which are fit for children, and which can stand for another.

export { type PartOfSpeech, packFacts, toUseOfBits, type WordFacts, type WordFactTable } from './facts.ts'
export type { Fitness, FitnessKind, FitnessOptions, UnfitKind } from './fitness.ts'
export { type Base, type Inflection, toBases, toForm } from './inflect.ts'
export { toCaseOf } from './letter-case.ts'
export { isLittleWord, LITTLE_WORDS, type LittleClass } from './little.ts'
export type { Shown, ShownClass } from './showing.ts'
export { createSuggester, type Suggester, type SuggestSources, type Wanted, type WordOrder } from './suggest.ts'
export { type FactsOf, NOWHERE, type Surroundings } from './surroundings.ts'
export type { NearWord, Thesaurus, ThesaurusPart } from './thesaurus.ts'
export { findUse, type WordUse } from './use.ts'
export { openWordData, type WordData } from './word-data.ts'
