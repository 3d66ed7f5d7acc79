// What the rules said of a word in an earlier story: most words that are hard in one book of a shelf are hard in the next,
// and the same is said of them wherever the settings are the same.

import { isSame } from '../sorted.ts'
import type { JudgedWord } from '../verdict/types.ts'
import type { Fault, Message, Rule, RuleSettings, StoryContext } from './types.ts'

export interface SaidBefore {
  find(judged: JudgedWord, faults: readonly Fault[]): readonly Message[] | undefined
  keep(judged: JudgedWord, faults: readonly Fault[], said: readonly Message[]): void
}

interface Memory extends SaidBefore {
  readonly rules: readonly Rule[]
  readonly given: RuleSettings
  readonly names: readonly string[]
  readonly settings: string
}

/** Of the settings that were last in use: a memory for each that ever was would grow with a library. */
let last: Memory | undefined

/**
 * The memory for these rules and settings. Sequence, step, reader and accent need not be told: stories that share them share
 * the judged words, and others do not.
 */
export function recallSaid(
  { names }: Pick<StoryContext, 'names'>,
  rules: readonly Rule[],
  given: RuleSettings,
): SaidBefore {
  // Stories of one folder share the very object, which need not be written out to be compared.
  if (last?.given === given && isSame(last.names, names) && isSame(last.rules, rules)) return last
  const settings = JSON.stringify([names, given])
  const memory = last?.settings === settings && isSame(last.rules, rules) ? last : createMemory()
  last = { rules, given, names, settings, find: memory.find, keep: memory.keep }
  return last
}

function createMemory(): SaidBefore {
  const known = new WeakMap<JudgedWord, Map<string, readonly Message[]>>()
  return {
    find: (judged, faults) => known.get(judged)?.get(toKey(faults)),
    keep(judged, faults, said) {
      const ofWord = known.get(judged)
      if (ofWord === undefined) known.set(judged, new Map([[toKey(faults), said]]))
      else ofWord.set(toKey(faults), said)
    },
  }
}

/** The reasons of a judged word are always the same; which further faults it has depends on the story. */
const toKey = (faults: readonly Fault[]): string => faults.map(({ code }) => code).join(' ')
