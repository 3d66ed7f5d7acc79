// The lexicon file: what its bytes mean. Written when the package is built, read in place without parsing.
//
//   "BTDL" · version u8 · 3 zero bytes · twelve section ends u32 · sections
//   rows     text: letters TAB sounds, a line a row, in order of their codes (line 0 is code 1)
//   stress   text: a pattern a line, a digit a vowel sound (`10`)
//   blocks   u32 each: where in `words` the block of 32 words begins
//   words    per word: letters shared with the word before u8, further letters u8, those letters, payload length u8, payload
//   model    the guesser's model
//   ordinary text: for each accent its name, then the spellings that English ordinarily uses, a line each; an empty line between
//   parts    which words make compounds, in order: places gone on since the last u8 (255: and more), first × 4 + last u8
//   heteronyms text: a word, a tab, its row as JSON, a line each
//   unsure   a bit a word, in order: names that their bearers may say otherwise; then another bit a word: rare words that are such names with a capital
//   seams    in order of their words: the word's place u24, u24 with a bit for each letter before which a syllable begins
//   weights  what the model of look-alikes learned: see `openWeights`
//   slips    lines in order of their keys: see `writeSlips`
//
// Payload of a plain word: per pronunciation a stress number u8 and codes until the word's letters are used up.
// Payload of an inflected word: 255, ending × 8 + change, mask of the stem's pronunciations.
// A code is one byte below 240, else two: 240 + high, low. Code 0 is the silent e that closes a split grapheme.

export const MAGIC = [0x42, 0x54, 0x44, 0x4c] as const
export const VERSION = 13
export const BLOCK = 32
export const WIDE = 240
export const INFLECTED = 255
export const HEADER = 8 + 12 * 4
export const CLOSE_CODE = 0
/** Bytes of a record of `seams`. */
export const SEAM = 6
