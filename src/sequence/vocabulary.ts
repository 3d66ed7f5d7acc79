// The plain words that a sequence file is written in, and what each stands for inside the program.

import { INNER_APOSTROPHES, toStraight } from '../apostrophe.ts'
import type { Accent } from '../phonics/types.ts'
import type { Capitals, Ending, EndingChange, Limits } from './types.ts'

export const ACCENTS = ['general-american', 'southern-british'] as const satisfies readonly Accent[]

/** Their names, for people. */
export const ACCENT_NAMES: Readonly<Record<Accent, string>> = {
  'general-american': 'General American',
  'southern-british': 'Southern British',
}

export const ENDINGS = ['-s', '-es', '-ed', '-ing', '-er', '-est', "'s"] as const satisfies readonly Ending[]

export const ENDING_CHANGES = {
  double: 'double',
  'drop e': 'drop-e',
  'ie to y': 'ie-to-y',
  'y to i': 'y-to-i',
} as const satisfies Readonly<Record<string, EndingChange>>

export const CAPITALS = {
  none: 'none',
  'first letter': 'first',
  all: 'all',
} as const satisfies Readonly<Record<string, Capitals>>

export const LIMITS = {
  letters: 'letters',
  syllables: 'syllables',
  'words in a sentence': 'sentenceWords',
  'sentences on a page': 'pageSentences',
  'words on a page': 'pageWords',
} as const satisfies Readonly<Record<string, keyof Limits>>

/** A mark may be written as itself or by its name; a name brings every form of the mark. */
const MARKS: Readonly<Record<string, readonly string[]>> = {
  'full stop': ['.'],
  comma: [','],
  'question mark': ['?'],
  'exclamation mark': ['!'],
  'speech marks': ['“', '”', '"', '‘', '’', "'"],
  apostrophe: [...INNER_APOSTROPHES],
  hyphen: ['-', '‐', '‑'],
  dash: ['–', '—'],
  ellipsis: ['…', '...'],
  colon: [':'],
  semicolon: [';'],
  brackets: ['(', ')'],
}

/** Marks in American words, or by another common name. */
const MARK_SYNONYMS: Readonly<Record<string, string>> = {
  period: 'full stop',
  'quotation marks': 'speech marks',
  parentheses: 'brackets',
  '"': 'speech marks',
  "'": 'apostrophe',
  '–': 'dash',
  '…': 'ellipsis',
  '...': 'ellipsis',
}

export const MARK_NAMES: readonly string[] = [...Object.keys(MARKS), ...Object.keys(MARK_SYNONYMS)]

/** The marks that a word or a mark of a file stands for; undefined where it is neither. */
export function findMarks(written: string): readonly string[] | undefined {
  const name = MARK_SYNONYMS[written] ?? written.toLowerCase()
  const named = MARKS[name]
  if (named !== undefined) return named
  return /^[^\p{L}\p{N}\s]$/u.test(written) ? [written] : undefined
}

/** The names of the marks, in the order of the table; a mark without a name as it is. */
export function toMarkNames(marks: ReadonlySet<string>): readonly string[] {
  const named = Object.entries(MARKS).filter(([, forms]) => forms.some((form) => marks.has(form)))
  const known = new Set(named.flatMap(([, forms]) => forms))
  return [...named.map(([name]) => name), ...[...marks].filter((mark) => !known.has(mark))]
}

/** A shape as it is written: C and V in small or capital letters. Undefined where it is no shape. */
export function findShape(written: string): string | undefined {
  const shape = written.toUpperCase()
  return /^[CV]*V[CV]*$/.test(shape) ? shape : undefined
}

/** An ending as it is written: `-s` or `s`, with a straight or a curly apostrophe. */
export function findEndingName(written: string): Ending | undefined {
  const straight = toStraight(written).toLowerCase()
  return ENDINGS.find((ending) => ending === straight || ending === `-${straight}`)
}

/** A change as it is written: `drop e`, `drop-e`, `drop the e`. */
export function findChangeName(written: string): EndingChange | undefined {
  const plain = written.toLowerCase().replaceAll('-', ' ').replace(' the ', ' ')
  return (ENDING_CHANGES as Readonly<Record<string, EndingChange>>)[plain]
}
