// At which step of a built-in sequence each word can be read that may stand for another: told when the package is built,
// since an offer asks it of many words of which one is shown.

import { findIndexOf } from '../sorted.ts'
import { splitSections } from './bytes.ts'
import { hashWord } from './fitness.ts'

/** The place of the first step at which the word is readable; Infinity where the sequence never gets there; undefined for a word that the table lacks. */
type FirstStepOf = (word: string) => number | undefined

export interface FirstSteps {
  /** By a name that `toColumn` makes; undefined where the table was not made for it. */
  find(column: string): FirstStepOf | undefined
}

export const toColumn = (sequence: string, accent: string): string => `${sequence} ${accent}`

/** Stands for no step. */
export const NO_STEP = 255

/**
 * Opens the compiled table. Its sections: the names of its columns, a line each; the hashes of the words, ascending, four
 * bytes each, least first; and for each column a byte a word, the place of its step.
 */
export function openFirstSteps(bytes: Uint8Array): FirstSteps {
  let opened:
    | { readonly names: readonly string[]; readonly hashes: Uint32Array; readonly steps: Uint8Array }
    | undefined
  return {
    find(column) {
      opened ??= open(bytes)
      const { names, hashes, steps } = opened
      const first = names.indexOf(column) * hashes.length
      if (first < 0) return undefined
      return (word) => {
        const at = findIndexOf(hashes, hashWord(word))
        const step = at < 0 ? undefined : steps[first + at]
        return step === NO_STEP ? Number.POSITIVE_INFINITY : step
      }
    },
  }
}

function open(bytes: Uint8Array) {
  const [names, hashes, steps] = splitSections(bytes, 3)
  if (!names || !hashes || !steps) throw new RangeError('the word data ends too early')
  return {
    names: new TextDecoder().decode(names).split('\n'),
    // Least byte first, as all machines have it that Node or a browser runs on.
    hashes: new Uint32Array(new Uint8Array(hashes).buffer),
    steps,
  }
}
