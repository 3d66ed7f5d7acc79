// Tells which texts need no more than the parser's first steps: most of a story, and the rest takes a third of its time.

import { isPlainText } from '../letter-kinds.ts'
import { mayKeepStop } from './abbreviations.ts'

const plainInnerMark = /['’&\-/@=_·‐‑‧\u00AD]|[.:?][A-Za-z0-9]/

/** The parser's steps for sentences join words with the marks in them, and do nothing where there are none. */
export const hasInnerMark = (text: string): boolean =>
  plainInnerMark.test(text) || (!isPlainText(text) && /[.:?][\p{L}\p{M}\p{N}]/u.test(text))

const plainSentences = /^[A-Za-z](?:[A-Za-z, ]|\n(?!\n)|[.!?](?=$|[ \n][A-Z]))*$/

/** `The cat sat. Did it sit?`: each stop ends a sentence, and the parser's steps that join sentences change nothing. */
export const arePlainSentences = (text: string): boolean => plainSentences.test(text) && !mayKeepStop(text)
