// Finds words that a reader can read, for boxes, cards, lists and slips.

export { asksForSounds, findKind, type Span, type WordFilters, type WordKind } from './filters.ts'
export { type FoundWord, type FoundWords, findWords, type WordQuery } from './find.ts'
export { isReadableInAllForms } from './forms.ts'
export { isInUse } from './in-use.ts'
export type { WordOrderName } from './order.ts'
export { createPool, type FinderSources, type ListReader, type Pool } from './pool.ts'
export { findRime, toLetterPattern, toListPronunciation, toSoundPattern, toSounds } from './pronunciation.ts'
export { type QueryTools, readQuery, type WrittenQuery } from './query.ts'
export {
  type LookAlikes,
  type Pair,
  type ProposedSet,
  proposeBox,
  proposeMixed,
  proposePairs,
  type Relaxed,
} from './sets.ts'
export { KINDS, type SheetPart, toSheet } from './sheet.ts'
export { findShown, proposeByClass, type ShowAs } from './shown.ts'
export { findSpelling, type Spelling } from './spelling.ts'
export { type ListPronunciation, type ListTable, type ListUnit, openListTable } from './table.ts'
export { isUnhelpful } from './unhelpful.ts'
