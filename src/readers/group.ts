// What all readers of a group know: the floor on which a book for the whole group stands.

import { knowledgeAt, toStepIndex } from '../sequence/knowledge.ts'
import { type ReaderExtra, withReader } from '../sequence/reader.ts'
import type { Reader } from './types.ts'

/**
 * A reader of the group's name who is at the earliest step of its members, and knows just what every one of them knows.
 * The members follow one sequence in one accent; there is at least one.
 */
export function toFloor(name: string, members: readonly Reader[]): Reader {
  const [first, ...others] = members
  if (first === undefined) throw new RangeError('A group has at least one member.')
  const { sequence } = first
  const lowest = others.reduce(
    (low, reader) => (toStepIndex(sequence, reader.step) < toStepIndex(sequence, low.step) ? reader : low),
    first,
  )
  const taught = knowledgeAt(sequence, lowest.step)
  const sight = split(
    taught.sightWords,
    members.map(({ knowledge }) => knowledge.sightWords),
  )
  const sounds = split(
    taught.correspondences,
    members.map(({ knowledge }) => knowledge.correspondences),
  )
  const endings = split(
    taught.endings,
    members.map(({ knowledge }) => knowledge.endings),
  )
  const extra: ReaderExtra = {
    sightWords: sight.more,
    sightWordsNotYet: sight.less,
    correspondences: sounds.more,
    correspondencesNotYet: sounds.less,
    endings: endings.more,
    endingsNotYet: endings.less,
  }
  return { ...first, name, step: lowest.step, extra, knowledge: withReader(taught, extra), record: undefined, members }
}

/** What all the sets share beyond the step, and what the step has and not all of them. */
function split<Item>(
  step: ReadonlySet<Item>,
  [first = new Set(), ...others]: readonly ReadonlySet<Item>[],
): { readonly more: readonly Item[]; readonly less: readonly Item[] } {
  const shared = new Set([...first].filter((item) => others.every((set) => set.has(item))))
  return { more: [...shared].filter((item) => !step.has(item)), less: [...step].filter((item) => !shared.has(item)) }
}
