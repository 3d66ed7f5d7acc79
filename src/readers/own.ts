// What a reader file says of one child by itself: what is known beyond the step, what is not, and the lessons.

import type { CorrespondenceKey, Phonics } from '../phonics/types.ts'
import type { Problem } from '../problem/index.ts'
import { resolveCorrespondence } from '../sequence/correspondence.ts'
import { resolveItem } from '../sequence/item.ts'
import { findStep, toSightKey } from '../sequence/knowledge.ts'
import type { ReaderExtra } from '../sequence/reader.ts'
import type { Path, Source } from '../sequence/source.ts'
import type { Knowledge, Sequence } from '../sequence/types.ts'
import { toStepUnknown } from '../sequence/unknown-step.ts'
import type { Lesson } from './lessons.ts'
import type { ReaderFile } from './schema.ts'

export interface Own<Value> {
  readonly value: Value
  readonly problems: readonly Problem[]
}

/** `knows` and `not yet`. @param step with its knowledge: what is not taught there cannot be taken away */
export function readOwn(
  file: ReaderFile,
  { step, taught }: { readonly step: string; readonly taught: Knowledge },
  phonics: Phonics,
  source: Source,
): Own<ReaderExtra> {
  const problems: Problem[] = []
  const readKeys = (part: 'knows' | 'not yet'): readonly CorrespondenceKey[] =>
    (file[part]?.correspondences ?? []).flatMap((written, at) => {
      const path: Path = [part, 'correspondences', at]
      const found = resolveCorrespondence(written, phonics)
      if ('problem' in found) {
        problems.push(source.problemAt(path, found.problem))
        return []
      }
      const keys = found.taught.map(({ key }) => key)
      if (part === 'not yet' && !keys.some((key) => taught.correspondences.has(key))) {
        const message = `Step \`${step}\` does not teach \`${written}\`, so there is nothing to take away`
        problems.push(source.problemAt(path, { code: 'bad-value', message }))
      }
      return keys
    })
  const notYet = file['not yet']?.['sight words'] ?? []
  for (const [at, word] of notYet.entries()) {
    if (taught.sightWords.has(toSightKey(word))) continue
    const message = `\`${word}\` is no sight word at step \`${step}\`, so there is nothing to take away`
    problems.push(source.problemAt(['not yet', 'sight words', at], { code: 'bad-value', message }))
  }
  const value: ReaderExtra = {
    sightWords: file.knows?.['sight words'] ?? [],
    sightWordsNotYet: notYet,
    correspondences: readKeys('knows'),
    correspondencesNotYet: readKeys('not yet'),
  }
  return { value, problems }
}

export function readLessons(
  file: ReaderFile,
  sequence: Sequence,
  phonics: Phonics,
  source: Source,
): Own<readonly Lesson[]> {
  const problems: Problem[] = []
  const value = (file.lessons ?? []).map((lesson, at): Lesson => {
    const { date, secure, taught = [] } = lesson
    const step = lesson.step === undefined ? undefined : findStep(sequence, lesson.step)
    if (lesson.step !== undefined && step === undefined) {
      problems.push(source.problemAt(['lessons', at, 'step'], toStepUnknown(lesson.step, sequence)))
    }
    const items = taught.flatMap((written, index) => {
      const resolved = resolveItem(written, phonics)
      if ('item' in resolved) return [resolved.item]
      problems.push(source.problemAt(['lessons', at, 'taught', index], resolved.problem))
      return []
    })
    if (lesson.step === undefined && taught.length === 0) {
      const message = 'This lesson says nothing: write `taught: [sh as in ship]` or `step: pink-4` below its date'
      problems.push(source.problemAt(['lessons', at], { code: 'missing-key', message }))
    }
    return { date, step: step?.id, items, isSecure: secure !== 'no' && secure !== false }
  })
  return { value, problems }
}
