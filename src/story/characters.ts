// Sorts characters into white space, punctuation, letters and digits, and symbols.

import { isPlainText } from '../letter-kinds.ts'

export const white = 0
export const punctuation = 1
export const letter = 2
export const symbol = 3
/** Seen by no reader: soft hyphens, joiners, direction marks. */
export const invisible = 4

export type CharacterClass = typeof white | typeof punctuation | typeof letter | typeof symbol | typeof invisible

// As in the Latin parser of retext, these stand for words rather than part them.
const asSymbol = /[#%&*@]/

function classify(text: string): CharacterClass {
  if (/\p{Default_Ignorable_Code_Point}/u.test(text)) return invisible
  if (/\s|\u0085/u.test(text)) return white
  if (/[\p{L}\p{M}\p{N}]/u.test(text)) return letter
  return /\p{P}/u.test(text) && !asSymbol.test(text) ? punctuation : symbol
}

/** A letter is written so: `a`, `?`, a space, and what is none of these. */
function classifyPlain(text: string): CharacterClass {
  if (/[A-Za-z0-9]/.test(text)) return letter
  if (/\s/.test(text)) return white
  return /[!"'(),\-./:;?[\\\]_{}\u2010-\u2027]/.test(text) ? punctuation : symbol
}

// Nearly all letters of a story lie here, and a table is some ten times as fast as the expressions. It is filled as a story
// asks: Unicode's classes take longer to make than a story takes to read.
const unknown = 255
const common = new Uint8Array(0x2050).fill(unknown)

export function classOf(codePoint: number): CharacterClass {
  const known = codePoint < common.length ? (common[codePoint] as number) : unknown
  return known === unknown ? findClass(codePoint) : (known as CharacterClass)
}

function findClass(codePoint: number): CharacterClass {
  const text = String.fromCodePoint(codePoint)
  const found = isPlainText(text) ? classifyPlain(text) : classify(text)
  // What lies beyond the table is not kept.
  common[codePoint] = found
  return found
}

export const isInvisible = (text: string): boolean =>
  !isPlainText(text) && /\p{Default_Ignorable_Code_Point}/u.test(text)

/** Text without what no reader sees. */
export function toVisible(text: string): string {
  return isPlainText(text) ? text : text.replace(/\p{Default_Ignorable_Code_Point}/gu, '')
}
