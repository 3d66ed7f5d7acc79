// Slips that are no mistake of form, each told with the nearest right thing: a step that is another's but for a dash, words
// that are no words.

import { APOSTROPHES, hasApostrophe, toStraight } from '../apostrophe.ts'
import { countEdits } from '../edits.ts'
import { findSlip } from '../phonics/slip.ts'
import type { Phonics } from '../phonics/types.ts'
import type { Found, Problem } from '../problem/index.ts'
import type { StepFile } from './schema.ts'
import type { Path, Source } from './source.ts'

/** `pink1`, `Pink_01` and `pink-1` are one to a hasty hand. */
const toPlainId = (id: string): string =>
  id
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]/gu, '')
    .replace(/(?<!\p{N})0+(?=\p{N})/gu, '')

/** The step of the extended sequence that a new one was most likely to be. */
export function findMeantStep(id: string, ids: readonly string[]): string | undefined {
  return ids.find((other) => other !== id && toPlainId(other) === toPlainId(id))
}

const LEAST_FOR_EDITS = 4

/** What a new step may have been meant to be: `green-3` for `geen-3`, whose letters are one slip away. */
export function findNearStep(id: string, ids: readonly string[]): string | undefined {
  const [letters, rest] = cutId(id)
  return ids.find((other) => {
    const [otherLetters, otherRest] = cutId(other)
    const isLong = Math.max(letters.length, otherLetters.length) >= LEAST_FOR_EDITS
    return isLong && otherRest === rest && countEdits(letters, otherLetters, { swaps: true }) === 1
  })
}

/** The last step of a series that a new one goes on with: `green-15` for `green-16`. */
export function findSeriesBefore(id: string, ids: readonly string[]): string | undefined {
  const [, head = '', number] = /^(.*?)(\d+)$/u.exec(id.toLowerCase()) ?? []
  return number === undefined ? undefined : ids.find((other) => other.toLowerCase() === `${head}${Number(number) - 1}`)
}

/** `geen` and `3`. */
const cutId = (id: string): readonly [string, string] => {
  const plain = toPlainId(id)
  const [letters = ''] = /^\p{L}*/u.exec(plain) ?? []
  return [letters, plain.slice(letters.length)]
}

/** Sight words and contractions that are most likely misspelt. A word with a capital is taken for a name. */
export function findMisspelt(own: StepFile, path: Path, source: Source, phonics: Phonics): readonly Problem[] {
  return (['sight words', 'contractions'] as const).flatMap((key) => {
    const written = own[key] ?? []
    if (written === 'any') return []
    const find = key === 'contractions' ? findContractionSlip : findWordSlip
    return [...written.entries()].flatMap(([at, word]) => {
      const found = word === word.toLowerCase() || hasApostrophe(word) ? find(word, phonics) : undefined
      // A maker's own word is never refused.
      return found === undefined ? [] : [source.problemAt([...path, key, at], { ...found, severity: 'warning' })]
    })
  })
}

function findWordSlip(word: string, phonics: Phonics): Found | undefined {
  const meant = findLostApostrophe(word, phonics) ?? findMeantWord(word, phonics)
  if (meant === undefined) return undefined
  // `thier` can be made of thy, but the dictionary lacks it; it has `bizzy` as somebody's name.
  const isName = phonics.isListed(word) && phonics.read(word).pronunciations[0]?.units.every(({ base }) => base !== 'y')
  const fault = isName ? 'is most likely misspelt' : 'is not a word that the dictionary knows'
  return { code: 'unknown-name', message: `\`${word}\` ${fault}`, expected: [meant] }
}

/** The word that was most likely meant; undefined for a word that is known, and where nothing is near. */
export const findMeantWord = (written: string, phonics: Phonics): string | undefined =>
  findSlip(toStraight(written), phonics, { isCommon: true })

function findContractionSlip(written: string, phonics: Phonics): Found | undefined {
  const word = toStraight(written)
  const isShort = /^\p{L}+'\p{L}+$/u.test(word) && phonics.isListed(word)
  if (isShort) return undefined
  const letters = word.toLowerCase().replace(new RegExp(`[\\s${APOSTROPHES}-]`, 'gu'), '')
  const meant = toShortened(letters, phonics) ?? toShortened(findSlip(word, phonics)?.replace("'", '') ?? '', phonics)
  if (meant !== undefined) {
    return { code: 'unknown-name', message: `\`${written}\` is no shortened word`, expected: [meant] }
  }
  if (hasApostrophe(word) && !word.endsWith("'")) return undefined
  const message = `\`${written}\` is no shortened word: those have an apostrophe where letters are left out`
  return { code: 'bad-value', message, note: 'A word known by heart goes under `sight words`.' }
}

/** `don't` for `dont` among the words learnt by heart, where the letters alone are no word: `well` and `shed` are. */
const findLostApostrophe = (word: string, phonics: Phonics): string | undefined =>
  /^[a-z]{3,}$/.test(word) && !phonics.isListed(word) ? toShortened(word, phonics) : undefined

/** `can't` of `cant`, `I'm` of `im`; undefined where no apostrophe makes a word of it. */
function toShortened(letters: string, { isListed }: Phonics): string | undefined {
  const [, head, tail] = /^(.*n)(t)$/.exec(letters) ?? /^(.+)(ll|re|ve|d|m|s)$/.exec(letters) ?? []
  if (head === undefined || tail === undefined) return undefined
  const found = `${head}'${tail}`
  // `dog's` is the dog's own.
  const isOwner = tail === 's' && !SHORTENED_BEFORE_S.has(head)
  if (isOwner || !isListed(found)) return undefined
  return head === 'i' ? `I'${tail}` : found
}

const SHORTENED_BEFORE_S: ReadonlySet<string> = new Set(
  'he here how it let she that there this what when where who why'.split(' '),
)
