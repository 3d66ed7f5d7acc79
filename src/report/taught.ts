// What `taught` writes into a reader file, and what it tells of it.

import { stringify } from 'yaml'
import type { Reader } from '../readers/index.ts'
import type { TaughtItem } from '../sequence/item.ts'
import { toSightKey, toStepIndex } from '../sequence/knowledge.ts'
import { toList, toPrintable, wrap } from './text.ts'

interface Lesson {
  readonly date: string
  readonly step: string | undefined
  readonly items: readonly TaughtItem[]
  readonly isSecure: boolean
}

/** The lesson as lines of YAML, without the dash. */
export function toLessonLines({ date, step, items, isSecure }: Lesson): readonly string[] {
  const taught = items.map(({ written }) => written)
  return [
    `date: ${date}`,
    ...(step === undefined ? [] : [`step: ${step}`]),
    ...(taught.length === 0 ? [] : [`taught: ${toFlow(taught)}`]),
    ...(isSecure ? [] : ['secure: no']),
  ]
}

const toFlow = (items: readonly string[]): string =>
  stringify(items, { collectionStyle: 'flow', flowCollectionPadding: false, lineWidth: 0 }).trim()

interface TaughtChange {
  readonly before: Reader
  readonly after: Reader
  readonly lesson: Lesson
}

export function toTaughtLine({ before, after, lesson }: TaughtChange, width: number): readonly string[] {
  const { date, step, items, isSecure } = lesson
  const name = toPrintable(after.name)
  const what = [...items.map(({ written }) => written), ...(step === undefined ? [] : [`step ${step}`])]
  const known = items.filter((item) => isKnown(item, before)).map(({ written }) => written)
  const isBack = step !== undefined && toStepIndex(after.sequence, step) < toStepIndex(before.sequence, before.step)
  const text = [
    `${name}, ${date}: ${isSecure ? '' : 'met '}${toList(what)}.`,
    ...(known.length > 0 && isSecure ? [`Known before: ${toList(known)}.`] : []),
    ...(isBack ? [`That is before ${before.step}, where ${name} was.`] : []),
    ...(isSecure ? [] : ['It is not counted on in a book until it is taught again without --not-secure.']),
  ].join(' ')
  return wrap(text, width)
}

function isKnown(item: TaughtItem, { knowledge }: Reader): boolean {
  if (item.kind === 'correspondence') return item.keys.every((key) => knowledge.correspondences.has(key))
  return item.kind === 'ending'
    ? knowledge.endings.has(item.ending)
    : knowledge.sightWords.has(toSightKey(item.written))
}
