// What every kind of sheet is told: the paper, the letters, how large, how cut; and what comes back.

import { fail, type Result } from '../problem/index.ts'
import type { CutWish } from './lay/marks.ts'
import type { Paper } from './lay/paper.ts'
import { LEAST } from './lay/sizes.ts'
import type { MarkedText } from './lay/words.ts'
import type { Letters } from './letters.ts'
import type { Picture, Print, Sheet } from './sheet.ts'

/** `usual` is by the step or the card; a number is the height of the small x in millimetres. */
export type SizeWish = 'small' | 'usual' | 'large' | number

export interface Ask {
  readonly paper: Paper
  readonly letters: Letters
  readonly cut: CutWish
  readonly size: SizeWish
  /** Whether the word stands on the back of its picture. */
  readonly backs: 'none' | 'words'
  /** Whether slips have a small number on their outside. */
  readonly isNumbered?: boolean
  /** How many words the step allows on a page; undefined where it sets no limit. */
  readonly pageWords: number | undefined
}

/** A picture with the words that a screen reader says in its place. */
export interface Shown {
  readonly picture: Picture
  readonly alt: string
}

export interface WordPiece {
  readonly text: MarkedText
  readonly picture?: Shown | undefined
}

/** Sheets of one kind; `counts` says what is on them, such as `6 cards`. */
export interface Laid {
  readonly sheets: readonly Sheet[]
  readonly duplex?: Print['duplex']
  readonly counts: readonly string[]
}

export const count = (number: number, one: string, many = `${one}s`): string => `${number} ${number === 1 ? one : many}`

/** The word that does not fit at the least size, told in one line. */
export function toTooWide(texts: readonly MarkedText[], letters: Letters, what: string): Result<never> {
  const widest = texts.reduce((one, other) =>
    letters.widthOf(other.text, 1) > letters.widthOf(one.text, 1) ? other : one,
  )
  return fail({
    code: 'does-not-fit',
    message: `\`${widest.text}\` is too wide for ${what}, even in the smallest letters`,
    note: 'Leave it out, or ask for larger cards with --size large.',
  })
}

/** The largest letters that are wished for, in sizes of the font; Infinity where only the card sets a limit. */
export function toMostSize(wish: SizeWish, { xHeight }: Letters): number {
  if (wish === 'small') return LEAST / xHeight
  return typeof wish === 'number' ? wish / xHeight : Infinity
}
