// Source: Unicode's general categories as the engine's own expressions have them, for every code point below U+3000 and a few beyond.

import { describe, expect, test } from 'vitest'
import {
  hasCapital,
  hasLetter,
  hasLetterOrDigit,
  isCapitalised,
  isPlainText,
  startsWithCapital,
  startsWithSmall,
} from '../src/letter-kinds.ts'

const CHARACTERS = [...Array(0x3000).keys(), 0x4e2d, 0xd800, 0xfb01, 0x10400, 0x10428, 0x1d7d8, 0x1f414].map((code) =>
  String.fromCodePoint(code),
)
/** As a story has them: alone, before and behind a plain letter, a stop and a letter with a mark. */
const TEXTS = CHARACTERS.flatMap((one) => [one, `${one}a`, `A${one}`, `.${one}`, `${one}é`, `’${one}`])

const CHECKS = [
  ['hasLetter', hasLetter, /\p{L}/u],
  ['hasLetterOrDigit', hasLetterOrDigit, /[\p{L}\p{N}]/u],
  ['hasCapital', hasCapital, /\p{Lu}/u],
  ['startsWithCapital', startsWithCapital, /^\p{Lu}/u],
  ['startsWithSmall', startsWithSmall, /^\p{Ll}/u],
  ['isCapitalised', isCapitalised, /^\p{Lu}\p{Ll}/u],
] as const

describe('letters by their codes', () => {
  test.each(CHECKS)('%s says what Unicode says', (_, ask, class_) => {
    expect(TEXTS.filter((text) => ask(text) !== class_.test(text))).toEqual([])
    expect(ask('')).toBe(false)
  })

  test('plain text holds no letter, mark or digit but those of ASCII', () => {
    const beyond = CHARACTERS.filter((one) => one > '\u007f' && isPlainText(one))
    expect(beyond.map((one) => one.codePointAt(0)?.toString(16))).toEqual(
      [...Array(0x18).keys()].map((at) => (0x2010 + at).toString(16)),
    )
    expect(beyond.filter((one) => !/^\p{P}$/u.test(one))).toEqual([])
  })
})
