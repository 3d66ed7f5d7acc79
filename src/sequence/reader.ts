// What one child or group knows beyond or short of the step it is at.

import type { CorrespondenceKey } from '../phonics/types.ts'
import { toSightKey } from './knowledge.ts'
import type { Ending, Knowledge } from './types.ts'

/** A reader's own more and less. Words in any case. */
export interface ReaderExtra {
  /** Sight words known that the step does not teach. */
  readonly sightWords?: readonly string[]
  /** Sight words that the step has taught and this reader does not know yet. */
  readonly sightWordsNotYet?: readonly string[]
  readonly correspondences?: readonly CorrespondenceKey[]
  readonly correspondencesNotYet?: readonly CorrespondenceKey[]
  readonly endings?: readonly Ending[]
  readonly endingsNotYet?: readonly Ending[]
}

const changed = new WeakMap<ReaderExtra, WeakMap<Knowledge, Knowledge>>()

/**
 * The knowledge of a step with a reader's own added, and then what the reader does not know yet taken away. Remembered
 * for each reader and step: hand in the same objects.
 */
export function withReader(knowledge: Knowledge, extra: ReaderExtra): Knowledge {
  const bySteps = changed.get(extra) ?? new WeakMap<Knowledge, Knowledge>()
  changed.set(extra, bySteps)
  const result = bySteps.get(knowledge) ?? apply(knowledge, extra)
  bySteps.set(knowledge, result)
  return result
}

function apply(knowledge: Knowledge, extra: ReaderExtra): Knowledge {
  return {
    ...knowledge,
    sightWords: change(
      knowledge.sightWords,
      extra.sightWords?.map(toSightKey),
      extra.sightWordsNotYet?.map(toSightKey),
    ),
    correspondences: change(knowledge.correspondences, extra.correspondences, extra.correspondencesNotYet),
    endings: change(knowledge.endings, extra.endings, extra.endingsNotYet),
  }
}

function change<Item>(
  before: ReadonlySet<Item>,
  more: readonly Item[] = [],
  less: readonly Item[] = [],
): ReadonlySet<Item> {
  const after = new Set([...before, ...more])
  for (const item of less) after.delete(item)
  return after
}
