// Looks things up in a sequence for messages: an example word for a sound, and the step that first teaches a thing.

import type { Capitals, Sequence, Step, TaughtCorrespondence } from './types.ts'

interface Index {
  /** The place of the step that teaches it. */
  readonly stepOf: ReadonlyMap<string, number>
  readonly byKey: ReadonlyMap<string, readonly TaughtCorrespondence[]>
  readonly bySound: ReadonlyMap<string, readonly TaughtCorrespondence[]>
}

const indexes = new WeakMap<Sequence, Index>()

/** The example by which the sequence teaches a correspondence; never the word that is talked about. */
export function findExample(sequence: Sequence, key: string, word: string): string | undefined {
  return findOther(toIndex(sequence).byKey.get(key), word)?.example
}

/** Of correspondences that would each do, the example of the one that is taught first; of those of one step, the foremost. */
export function findFirstExample(sequence: Sequence, keys: readonly string[]): string | undefined {
  const { byKey, stepOf } = toIndex(sequence)
  const toPlace = (key: string): number => stepOf.get(key) ?? Number.POSITIVE_INFINITY
  const [first] = keys.length < 2 ? keys : [...keys].sort((left, right) => toPlace(left) - toPlace(right) || 0)
  return byKey.get(first ?? '')?.[0]?.example
}

/** Any spelling that the sequence teaches for the sound of a key, to say in letters what IPA would say: `e` in `red`. */
export function findSoundExample(sequence: Sequence, key: string, word: string): TaughtCorrespondence | undefined {
  return findOther(toIndex(sequence).bySound.get(toSound(key)), word)
}

function toSound(key: string): string {
  return key.slice(key.indexOf('=') + 1)
}

/** The first step that adds what `isTaught` asks for. */
export function findStep(sequence: Sequence, isTaught: (step: Step) => boolean): string | undefined {
  return sequence.steps.find(isTaught)?.id
}

export function findCapitalStep(sequence: Sequence, wanted: Exclude<Capitals, 'none'>): string | undefined {
  return findStep(sequence, ({ adds }) => adds.capitals === 'all' || adds.capitals === wanted)
}

function findOther(taught: readonly TaughtCorrespondence[] = [], word: string): TaughtCorrespondence | undefined {
  return taught.find(({ example }) => example.toLowerCase() !== word.toLowerCase())
}

function toIndex(sequence: Sequence): Index {
  const known = indexes.get(sequence)
  if (known !== undefined) return known
  const all = sequence.steps.flatMap((step) => step.adds.correspondences)
  const index = {
    stepOf: new Map(
      sequence.steps.flatMap(({ adds }, at) => adds.correspondences.map(({ key }) => [key, at] as const)),
    ),
    byKey: toGroups(all, ({ key }) => key),
    bySound: toGroups(all, ({ key }) => toSound(key)),
  }
  indexes.set(sequence, index)
  return index
}

function toGroups(
  all: readonly TaughtCorrespondence[],
  toName: (taught: TaughtCorrespondence) => string,
): ReadonlyMap<string, readonly TaughtCorrespondence[]> {
  const groups = new Map<string, TaughtCorrespondence[]>()
  for (const taught of all) {
    const group = groups.get(toName(taught))
    if (group === undefined) groups.set(toName(taught), [taught])
    else group.push(taught)
  }
  return groups
}
