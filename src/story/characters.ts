// Sorts characters into white space, punctuation, letters and digits, and symbols.

export const white = 0
export const punctuation = 1
export const letter = 2
export const symbol = 3
/** Seen by no reader: soft hyphens, joiners, direction marks. */
export const invisible = 4

export type CharacterClass = typeof white | typeof punctuation | typeof letter | typeof symbol | typeof invisible

const invisibles = /\p{Default_Ignorable_Code_Point}/u
// As in the Latin parser of retext, these stand for words rather than part them.
const asSymbol = /[#%&*@]/

function classify(text: string): CharacterClass {
  if (invisibles.test(text)) return invisible
  if (/\s|\u0085/u.test(text)) return white
  if (/[\p{L}\p{M}\p{N}]/u.test(text)) return letter
  return /\p{P}/u.test(text) && !asSymbol.test(text) ? punctuation : symbol
}

// Nearly all letters of a story lie here, and a table is some ten times as fast as the expressions.
const common = Uint8Array.from({ length: 0x250 }, (_, code) => classify(String.fromCharCode(code)))

export function classOf(codePoint: number): CharacterClass {
  return codePoint < 0x250 ? (common[codePoint] as CharacterClass) : classify(String.fromCodePoint(codePoint))
}

export function isInvisible(text: string): boolean {
  return invisibles.test(text)
}

const allInvisibles = new RegExp(invisibles, 'gu')

/** Text without what no reader sees. */
export function toVisible(text: string): string {
  return text.replace(allInvisibles, '')
}
