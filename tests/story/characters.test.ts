// Source: Unicode's properties as the engine's own expressions have them, for every code point below U+3000.

import { expect, test } from 'vitest'
import {
  classOf,
  invisible,
  isInvisible,
  letter,
  punctuation,
  symbol,
  toVisible,
  white,
} from '../../src/story/characters.ts'

const CODES = [...Array(0x3000).keys(), 0xfb01, 0xfe0f, 0x1f414, 0xe0041]

/** What the Latin parser of retext takes for part of a word, though Unicode calls it punctuation. */
const SYMBOLS = '#%&*@'

function toClass(text: string) {
  if (/\p{Default_Ignorable_Code_Point}/u.test(text)) return invisible
  if (/[\s\u0085]/u.test(text)) return white
  if (/[\p{L}\p{M}\p{N}]/u.test(text)) return letter
  return /\p{P}/u.test(text) && !SYMBOLS.includes(text) ? punctuation : symbol
}

test('every character has the class that Unicode gives it, asked once and again', () => {
  for (const _ of ['first', 'again'])
    expect(CODES.filter((code) => classOf(code) !== toClass(String.fromCodePoint(code)))).toEqual([])
})

test('what no reader sees is left out of a text, whatever stands beside it', () => {
  const wrong = CODES.filter((code) => {
    const one = String.fromCodePoint(code)
    const isUnseen = /\p{Default_Ignorable_Code_Point}/u.test(one)
    return isInvisible(one) !== isUnseen || toVisible(`a${one}’`) !== (isUnseen ? 'a’' : `a${one}’`)
  })
  expect(wrong).toEqual([])
})
