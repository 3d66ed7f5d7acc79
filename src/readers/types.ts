// A reader as the rest of the program sees it.

import type { ReaderExtra } from '../sequence/reader.ts'
import type { Knowledge, Sequence } from '../sequence/types.ts'
import type { LessonRecord } from './lessons.ts'

/** One child, or a group that is taught together. */
export interface Reader {
  readonly name: string
  /** In the reader's accent. */
  readonly sequence: Sequence
  /** The name or path by which the sequence was asked for. */
  readonly sequenceName: string
  /** The id of the step that has been taught last. */
  readonly step: string
  /** What the reader knows beyond or short of the step. */
  readonly extra: ReaderExtra
  /** The sum of the step and the reader's own. */
  readonly knowledge: Knowledge
  /** What dated lessons have taught; undefined where the file has none, and for a group. */
  readonly record?: LessonRecord | undefined
  /** Those of a group: the reader is then what all of them know. */
  readonly members?: readonly Reader[]
}
