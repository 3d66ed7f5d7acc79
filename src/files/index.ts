// How paths are joined and texts are asked for, without a file system: the core also runs where there is none.

export { decodeUtf8, MAX_BYTES, toTooLarge } from './decode.ts'
export { findBelow, findParent, isAbsolute, isSequencePath, joinPath, toFolder } from './paths.ts'
export { toMissing, toShownPath } from './shown.ts'
export { isForAdults, STORY_NAME } from './stories.ts'
export type { ReadText, TextFiles } from './types.ts'
