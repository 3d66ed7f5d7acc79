// Words to propose: what is known of each, which are fit for children, and which can stand for another.

export type { WordOrder } from './candidates.ts'
export { packFacts, toUseOfBits, type WordFacts, type WordFactTable } from './facts.ts'
export { toColumn } from './first-steps.ts'
export type { Fitness } from './fitness.ts'
export { type Inflection, toBases, toForm } from './inflect.ts'
export { IRREGULAR_PASTS } from './irregular-verbs.ts'
export { WORD_KINDS, type WordKind } from './kinds.ts'
export { toCaseOf } from './letter-case.ts'
export { isLittleWord } from './little.ts'
export type { Shown, ShownClass } from './showing.ts'
export { createSuggester, type Suggester, type Wanted } from './suggest.ts'
export type { FactsOf, Surroundings } from './surroundings.ts'

export { isBeing } from './who.ts'
export { openWordData, type WordData } from './word-data.ts'
