// Spelling and sound: the lexicon, the engine in an accent, and the types of what it says.

export { isForeignSpelling } from './british-spellings.ts'
export { type Lexicon, openLexicon } from './lexicon/open.ts'
export { createPhonics } from './phonics.ts'
export { createSpelling, type Spelling } from './spelling.ts'
export type * from './types.ts'
