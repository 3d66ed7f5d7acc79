// Finds words that a reader can read, for boxes, cards, lists and slips.

export { WORD_KINDS as KINDS } from '../words/index.ts'
export { makeBox } from './box.ts'
export { findEndings, type ShownEnding } from './endings.ts'
export type { WordFilters } from './filters.ts'
export { type FoundWord, type FoundWords, findWords, type WordQuery } from './find.ts'
export { isReadableInAllForms } from './forms.ts'
export { findLeading } from './lead.ts'
export { createPool, type ListReader, type Pool } from './pool.ts'
export { findRime, toLetterPattern, toListPronunciation, toSoundPattern } from './pronunciation.ts'
export { readQuery } from './query.ts'
export type { WrittenQuery } from './query-tools.ts'
export {
  type Pair,
  proposeBox,
  proposeMixed,
  proposePairs,
  type Relaxed,
} from './sets.ts'
export { openSheet, type SheetKind, type SheetPart } from './sheet.ts'
export type { ShowAs } from './shown.ts'
export { findSpelling, type Spelling } from './spelling.ts'
export { type ListTable, type ListUnit, openListTable } from './table.ts'
export { isUnhelpful } from './unhelpful.ts'
