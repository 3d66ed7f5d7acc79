// Sheets of words and stories, laid out from what has been read: for the command line and the page in the browser alike.

export { toAdvice } from './advice.ts'
export { toFileName } from './file-name.ts'
export { layLessonSet } from './lesson-set.ts'
export { findMissingLetters } from './missing-letters.ts'
export { toShownFirst } from './shown-first.ts'
export { layStory, layStoryPages, toPlaceText } from './story-sheets.ts'
export {
  type Prepared,
  SHEET_KINDS,
  type SheetKind,
  type StoryPicture,
  type StorySheetKind,
  type StoryToPrint,
  type Wishes,
  type WordSheetKind,
} from './types.ts'
export { layWords, toAskedFor } from './word-sheets.ts'
