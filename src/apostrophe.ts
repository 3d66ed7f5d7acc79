// Apostrophes: one set of characters for the whole program, and the straight one that all tables hold.

import { isPlainText } from './letter-kinds.ts'

/** Straight, curly either way as word processors set it, and the letter that Unicode has for it (U+02BC). */
export const APOSTROPHES = "'’‘ʼ"

/** The same within a running text, where ‘ opens a quotation. */
export const INNER_APOSTROPHES = "'’ʼ"

const ANY = new RegExp(`[${APOSTROPHES}]`)
const CURLY = /[’‘ʼ]/
const ALL_CURLY = /[’‘ʼ]/g

/** A word or a text with straight apostrophes. Asked of every word, and nearly none has another. */
export const toStraight = (text: string): string => (CURLY.test(text) ? text.replace(ALL_CURLY, "'") : text)

/** Where the first one stands; -1 where there is none. */
export const findApostrophe = (word: string): number => word.search(ANY)

export const hasApostrophe = (word: string): boolean => ANY.test(word)

/** The letters of a word, without its apostrophes: Unicode counts U+02BC among the letters. */
export const toLetters = (word: string): readonly string[] =>
  toStraight(word).match(isPlainText(word) ? /[A-Za-z]/g : /\p{L}/gu) ?? []
