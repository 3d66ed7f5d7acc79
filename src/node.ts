// What the package ships as files, for programs on Node: the lexicon and the built-in sequences, opened.

export { listBuiltIns, loadBuiltIn, loadLexicon, loadPhonics } from './cli/data.ts'
