// What a word's letters alone say of it, found once: a word is judged at one step after another.

import { rememberLast } from '../phonics/remember.ts'
import { findSqueezed } from '../phonics/stretched.ts'
import { toSightKey } from '../sequence/knowledge.ts'
import { findAbbreviation } from './abbreviations.ts'
import { findShortened, isContraction } from './apostrophe.ts'

export interface Written {
  /** As a set of sight words holds it. */
  readonly key: string
  readonly isAbbreviation: boolean
  readonly isContraction: boolean
  /** The words that it may be drawn out of, as keys: `oh` for `Ohhh`, `do` for `d-d-do`. */
  readonly drawnOut: readonly string[]
  /** The key of `they` in `they've`. */
  readonly shortened: string | undefined
  /** The keys of `friend` in `friendly`, of `careful` and `care` in `carefully`. */
  readonly stems: readonly string[]
}

export const readWritten = rememberLast((word): Written => {
  const key = toSightKey(word)
  const shortened = findShortened(word)
  return {
    key,
    isAbbreviation: findAbbreviation(word) !== undefined,
    isContraction: isContraction(word),
    drawnOut: findDrawnOut(word.toLowerCase()),
    shortened: shortened === undefined ? undefined : toSightKey(shortened),
    stems: OF_NO_STEM.has(key) ? [] : findStems(key),
  }
})

/** `d-d-do` */
const STUTTERED = /^([a-z]{1,2})-(?:\1-)*(?=\1)/

function findDrawnOut(small: string): readonly string[] {
  const calm = small.replace(STUTTERED, '')
  return calm === small ? findSqueezed(small).map((one) => toSightKey(one.word)) : [toSightKey(calm)]
}

const WITH_SUFFIX = /^(.{3,})(?:ful|less|ly|ness)$/

function findStems(key: string): readonly string[] {
  const [, stem] = WITH_SUFFIX.exec(key) ?? []
  return stem === undefined ? [] : [stem, ...findStems(stem)]
}

/** They look so only: nothing in `early` is of the ear. */
const OF_NO_STEM = new Set(['early', 'witness'])
