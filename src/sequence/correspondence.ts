// Finds what letters say from an example word: `ai as in rain` → `ai=eɪ`. No phonetic letters are asked of a teacher.

import { APOSTROPHES, toStraight } from '../apostrophe.ts'
import { isPlainText } from '../letter-kinds.ts'
import { findNearest } from '../nearest.ts'
import type { Phonics, Pronunciation, Unit } from '../phonics/types.ts'
import { type Problem, toExpected, toProblem } from '../problem/index.ts'
import { toFirstLine } from './first-examples.ts'
import { findMeantWord } from './slips.ts'
import type { TaughtCorrespondence } from './types.ts'

/** What a line teaches, or what is wrong with it. */
export type Resolved =
  | { readonly taught: readonly TaughtCorrespondence[] }
  /** Without a place. */
  | { readonly problem: Problem }

const fail = (message: string, more: Pick<Partial<Problem>, 'expected' | 'note'> = {}): Resolved => ({
  problem: toProblem({ code: 'bad-example', message, ...more }),
})

const TAKE_ANOTHER = { note: 'Take another word.' }

/** The word that was meant by a misspelt one, where it can show the letters. */
function toOther(letters: string, example: string, phonics: Phonics): Pick<Partial<Problem>, 'expected' | 'note'> {
  const meant = findMeantWord(example.toLowerCase(), phonics)
  const line = `${letters} as in ${meant}`
  return meant === undefined || 'problem' in resolveCorrespondence(line, phonics) ? TAKE_ANOTHER : { expected: [line] }
}

/** Made when a line is first read: most runs take a built-in sequence, and its expressions are slow to make. */
let form: RegExp | undefined
const toForm = (): RegExp =>
  (form ??= new RegExp(`^([\\p{L}${APOSTROPHES}_-]+)\\s+(?:as\\s+)?in\\s+([\\p{L}${APOSTROPHES}-]+)$`, 'u'))

/**
 * Reads `ai as in rain`. The example is read in the accent of `phonics`; the letters must stand in it and say one sound
 * there. Letters that are said in several parts (`nk as in bank`) teach each part, as long as they hold one vowel at most.
 */
export function resolveCorrespondence(written: string, phonics: Phonics): Resolved {
  const [, letters, example] = toForm().exec(written.trim()) ?? []
  if (letters === undefined || example === undefined) {
    return fail(`\`${written}\` cannot be read: write letters and an example word`, {
      expected: [toRightForm(written)],
    })
  }
  const grapheme = toGrapheme(letters)
  const pronunciations = phonics.read(example)
  const pronunciation = pronunciations.pronunciations[0]
  if (pronunciations.source === 'guess' || pronunciation === undefined) {
    return fail(
      `\`${example}\` is not in the dictionary, so it cannot show what \`${letters}\` says`,
      toOther(letters, example, phonics),
    )
  }
  if (
    pronunciations.heteronym &&
    new Set(pronunciations.pronunciations.map((one) => toKeys(one, grapheme).join())).size > 1
  ) {
    return fail(
      `\`${example}\` can be said in more than one way, so it does not show what \`${letters}\` says`,
      TAKE_ANOTHER,
    )
  }
  return findTaught(grapheme, example, pronunciation)
}

const toNearly = (): RegExp =>
  new RegExp(
    `^([\\p{L}${APOSTROPHES}_-]+?)(?:\\s+(?:as|as for|as like|for|is|like|says)\\s+|\\s*[:=/(>→–-]+\\s*|\\s+)([\\p{L}${APOSTROPHES}]+)\\)?$`,
    'u',
  )

/** `sh like ship`, `sh = ship`, `sh (ship)`: what was meant, where the letters stand in the word. */
function toRightForm(written: string): string {
  const [, letters = '', example = ''] = toNearly().exec(written.trim()) ?? []
  if (letters !== '' && isSpelt(example, toGrapheme(letters))) return `${letters} as in ${example}`
  return toFirstLine(toGrapheme(written.trim())) ?? 'ai as in rain'
}

function findTaught(grapheme: string, example: string, pronunciation: Pronunciation): Resolved {
  const keys = new Set(toKeys(pronunciation, grapheme))
  const [key] = keys
  if (keys.size > 1) {
    return fail(`In \`${example}\` the letters \`${grapheme}\` say more than one sound`, {
      note: 'Take a word where they say one.',
    })
  }
  if (key !== undefined) return { taught: [{ letters: grapheme, example, key }] }
  const run = findRun(pronunciation.units, grapheme)
  if (run !== undefined) {
    return { taught: run.map((unit) => ({ letters: unit.base ?? unit.letters, example, key: unit.key })) }
  }
  return toMissing(grapheme, example, pronunciation)
}

function toMissing(grapheme: string, example: string, pronunciation: Pronunciation): Resolved {
  const units = pronunciation.units.map((unit) => unit.base ?? unit.letters)
  const parts = units.join(', ')
  if (!isSpelt(example, grapheme)) {
    const nearest = findNearest(grapheme, units)
    return fail(`\`${example}\` does not hold the letters \`${grapheme}\` (its letters: ${parts})`, {
      expected: toExpected(nearest && `${nearest} as in ${example}`),
    })
  }
  return fail(`In \`${example}\` the letters \`${grapheme}\` do not say one sound together (it is cut as ${parts})`, {
    expected: toExpected(toFirstLine(grapheme)),
  })
}

function toKeys(pronunciation: Pronunciation, grapheme: string): readonly Unit['key'][] {
  return pronunciation.units
    .filter((unit) => toGrapheme(unit.letters) === grapheme || unit.base === grapheme)
    .map((unit) => unit.key)
}

// A chain of neighbouring units that together have just these letters; two vowels would be two syllables.
function findRun(units: readonly Unit[], grapheme: string): readonly Unit[] | undefined {
  for (const start of units.keys()) {
    let letters = ''
    for (let end = start; end < units.length && letters.length < grapheme.length; end++) {
      letters += units[end]?.letters ?? ''
      const run = units.slice(start, end + 1)
      if (letters === grapheme && run.filter((unit) => unit.vowel).length <= 1) return run
    }
  }
  return undefined
}

/** Whether the letters stand in a word: `a_e` in `cake`. */
export function isSpelt(example: string, grapheme: string): boolean {
  const whole = example.toLowerCase()
  if (/^[a-z]+$/.test(grapheme)) return whole.includes(grapheme)
  const parts = grapheme.split('_').map((part) => part.replace(/[^\p{L}]/gu, ''))
  return new RegExp(parts.join(isPlainText(example) ? '[a-z]+' : '\\p{L}+'), isPlainText(example) ? 'i' : 'iu').test(
    example,
  )
}

// `a-e` is another common way to write `a_e`.
function toGrapheme(letters: string): string {
  return toStraight(letters.toLowerCase()).replace(/^(\p{L}+)-(\p{L}+)$/u, '$1_$2')
}
