// Opens the built-in sequences, each from its compiled JSON and once for each accent.

import { findNearest } from '../nearest.ts'
import type { Accent } from '../phonics/types.ts'
import { type CompiledSequence, sequenceFromJson } from '../sequence/index.ts'
import type { Sequence } from '../sequence/types.ts'

export interface BuiltIns {
  /** In order of name. */
  list(): readonly string[]
  /** In the accent that it was written for or in another; undefined where there is none of that name. */
  load(name: string, accent?: Accent): Sequence | undefined
  findNearest(name: string): string | undefined
  /** Whether a sequence is a built-in one, unchanged: this very object was loaded here. */
  has(sequence: Sequence): boolean
}

export interface BuiltInFiles {
  list(): readonly string[]
  /** The text of a compiled sequence; undefined where there is none of that name. */
  read(name: string): string | undefined
}

export function createBuiltIns(files: BuiltInFiles): BuiltIns {
  const known = new Map<string, Sequence>()
  const list = (): readonly string[] => [...files.list()].sort()
  return {
    list,
    load(name, accent) {
      const key = `${name} ${accent ?? ''}`
      const before = known.get(key)
      if (before) return before
      const text = files.read(name)
      if (text === undefined) return undefined
      const json = JSON.parse(text) as CompiledSequence
      const sequence = sequenceFromJson(json, accent ?? json.accent)
      known.set(key, sequence)
      return sequence
    },
    findNearest: (name) => findNearest(name, list()),
    has: (sequence) => [...known.values()].includes(sequence),
  }
}
