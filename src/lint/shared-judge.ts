// One memory of verdicts for all stories of one sequence, step and reader: most words of a shelf are in many of its books.

import type { Phonics } from '../phonics/types.ts'
import type { ReaderExtra } from '../sequence/reader.ts'
import type { Sequence } from '../sequence/types.ts'
import { toBareName } from '../usage/likely-names.ts'
import { createWordJudge, isAllowedName, type WordJudge } from '../verdict/index.ts'

const shared = new WeakMap<Phonics, WeakMap<Sequence, Map<string, WordJudge>>>()

/** The judge without names. Engines and sequences that are let go take their verdicts with them. */
export function findSharedJudge(phonics: Phonics, sequence: Sequence, step: string, reader?: ReaderExtra): WordJudge {
  const bySequence = shared.get(phonics) ?? new WeakMap<Sequence, Map<string, WordJudge>>()
  shared.set(phonics, bySequence)
  const judges = bySequence.get(sequence) ?? new Map<string, WordJudge>()
  bySequence.set(sequence, judges)
  const key = `${step}\n${JSON.stringify(reader ?? {})}`
  const judge = judges.get(key) ?? createWordJudge(sequence, step, reader === undefined ? {} : { reader })
  judges.set(key, judge)
  return judge
}

/** Whether the names of a story can matter to a word, asked once for each different word. */
export function createNameTest(names: readonly string[]): (text: string) => boolean {
  if (names.length === 0) return () => false
  const known = new Map<string, boolean>()
  return (text) => {
    let isName = known.get(text)
    if (isName === undefined) {
      isName = isAllowedName(text, names) || isAllowedName(toBareName(text), names)
      known.set(text, isName)
    }
    return isName
  }
}
