// From dated lessons to what a reader knows on a day: which step has been reached, what is known beyond it, what is not secure.

import type { CorrespondenceKey } from '../phonics/types.ts'
import type { TaughtItem } from '../sequence/item.ts'
import type { ReaderExtra } from '../sequence/reader.ts'
import type { Ending } from '../sequence/types.ts'

/** A lesson as the reader file has it. */
export interface Lesson {
  /** `2026-09-14`. */
  readonly date: string
  /** The step that was reached with it. */
  readonly step: string | undefined
  readonly items: readonly TaughtItem[]
  /** Whether what was taught can be relied on in a book. */
  readonly isSecure: boolean
}

/** What was taught, when it was taught last, and whether it is secure by now. */
interface ItemRecord {
  readonly item: TaughtItem
  readonly last: string
  readonly isSecure: boolean
}

export interface LessonRecord {
  /** Of the last lesson that names one; undefined where none does. */
  readonly step: string | undefined
  /** In order of the day on which each was taught last. */
  readonly items: readonly ItemRecord[]
  readonly lastLesson: string | undefined
}

/** @param on a day as `2026-09-14`: later lessons do not count. Undefined: all count. */
export function toRecord(lessons: readonly Lesson[], on: string | undefined): LessonRecord {
  const past = lessons
    .filter(({ date }) => on === undefined || date <= on)
    .sort((one, other) => (one.date < other.date ? -1 : one.date > other.date ? 1 : 0))
  const items = new Map<string, ItemRecord>()
  for (const { date, items: taught, isSecure } of past) {
    for (const item of taught) {
      const key = toItemKey(item)
      // What is taught again stands at its last day.
      items.delete(key)
      items.set(key, { item, last: date, isSecure })
    }
  }
  return {
    step: past.findLast(({ step }) => step !== undefined)?.step,
    items: [...items.values()],
    lastLesson: past.at(-1)?.date,
  }
}

/** What the record adds to the step, and what it holds back: what is not secure is not counted on. */
export function toExtra({ items }: LessonRecord): Required<ReaderExtra> {
  const secure = items.filter(({ isSecure }) => isSecure)
  const open = items.filter(({ isSecure }) => !isSecure)
  return {
    sightWords: listWords(secure),
    sightWordsNotYet: listWords(open),
    correspondences: listKeys(secure),
    correspondencesNotYet: listKeys(open),
    endings: listEndings(secure),
    endingsNotYet: listEndings(open),
  }
}

const toItemKey = (item: TaughtItem): string =>
  item.kind === 'correspondence'
    ? `=${[...item.keys].sort().join()}`
    : item.kind === 'ending'
      ? item.ending
      : item.written.toLowerCase()

const listWords = (records: readonly ItemRecord[]): readonly string[] =>
  records.flatMap(({ item }) => (item.kind === 'word' ? [item.written] : []))

const listKeys = (records: readonly ItemRecord[]): readonly CorrespondenceKey[] =>
  records.flatMap(({ item }) => (item.kind === 'correspondence' ? item.keys : []))

const listEndings = (records: readonly ItemRecord[]): readonly Ending[] =>
  records.flatMap(({ item }) => (item.kind === 'ending' ? [item.ending] : []))
