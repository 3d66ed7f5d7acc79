// What can be told of offers when the package is built, for each built-in sequence: from which step a word can stand for
// another, and from which step anything can be said for a word. A check asks it of many words and shows few.

import { hashText } from '../hash.ts'
import { findIndexOf } from '../sorted.ts'
import { splitSections } from './bytes.ts'

interface StepColumn {
  /**
   * The place of the first step at which a child can read the word and it may stand for another; Infinity where the
   * sequence never gets there, or the word is not fit for it; undefined for a word that the table lacks.
   */
  standsFrom(word: string): number | undefined
  /**
   * The place of the first step at which another word may be offered for this one, or its sentence may do without it;
   * Infinity where there is none.
   * @param word in small letters, without an owner's ending
   */
  isHelpedFrom(word: string): number
}

export interface FirstSteps {
  /** By a name that `toColumn` makes; undefined where the table was not made for it. */
  find(column: string): StepColumn | undefined
}

export const toColumn = (sequence: string, accent: string): string => `${sequence} ${accent}`

/** Stands for no step. */
export const NO_STEP = 255

/** Words and, for each column, a byte a word: the place of its step. */
interface StepTable {
  /** Ascending. */
  readonly hashes: Uint32Array
  readonly steps: Uint8Array
}

/**
 * Opens the compiled table. Its sections: the names of its columns, a line each; the hashes of the words that stand for
 * others, ascending, four bytes each, least first, and their steps; the same of the words that others stand for.
 */
export function openFirstSteps(bytes: Uint8Array): FirstSteps {
  let opened: Opened | undefined
  return {
    find(column) {
      opened ??= open(bytes)
      const { names, standing, helped } = opened
      const at = names.indexOf(column)
      if (at < 0) return undefined
      const [standsFrom, isHelpedFrom] = [toFinder(standing, at), toFinder(helped, at)]
      return { standsFrom, isHelpedFrom: (word) => isHelpedFrom(word) ?? Number.POSITIVE_INFINITY }
    },
  }
}

interface Opened {
  readonly names: readonly string[]
  readonly standing: StepTable
  readonly helped: StepTable
}

function toFinder({ hashes, steps }: StepTable, column: number): (word: string) => number | undefined {
  const first = column * hashes.length
  return (word) => {
    const at = findIndexOf(hashes, hashText(word))
    const step = at < 0 ? undefined : steps[first + at]
    return step === NO_STEP ? Number.POSITIVE_INFINITY : step
  }
}

function open(bytes: Uint8Array): Opened {
  const [names, standing, standsFrom, helped, helpedFrom] = splitSections(bytes, 5)
  if (!names || !standing || !standsFrom || !helped || !helpedFrom) throw new RangeError('the word data ends too early')
  return {
    names: new TextDecoder().decode(names).split('\n'),
    standing: { hashes: toHashes(standing), steps: standsFrom },
    helped: { hashes: toHashes(helped), steps: helpedFrom },
  }
}

/** Least byte first, as all machines have it that Node or a browser runs on. */
const toHashes = (bytes: Uint8Array): Uint32Array => new Uint32Array(new Uint8Array(bytes).buffer)
