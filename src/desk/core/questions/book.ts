// The book as it will be printed, and the PDF.

import type { BankWish } from './words.ts'

export type LettersSize = 'small' | 'usual' | 'large'

export interface BookWish {
  readonly paper: 'a4' | 'letter'
  /** One of `Opened.letters`. */
  readonly letters: string
  readonly size: LettersSize
  readonly fold: 'staple' | 'one-sheet'
}

export interface Book {
  readonly version: number
  /** Each page by itself: cover, pages, the page for the grown-up. As an SVG text, for an image. */
  readonly pages: readonly string[]
  /** Width over height of a page. */
  readonly ratio: number
  /** The pages that lie open together, as numbers in `pages`; the cover lies alone. */
  readonly spreads: readonly Spread[]
  readonly marks: readonly SpreadMark[]
  /** What does not fit or is missing, in one line each. */
  readonly told: readonly string[]
}

export interface Spread {
  readonly left: number | null
  readonly right: number | null
  /** As it is read out: `Pages 2 and 3`. */
  readonly name: string
}

/** Where a word with a place stands on a page, in shares of its width and height. */
export interface SpreadMark {
  /** The number of the page in `pages`. */
  readonly page: number
  /** The number of the place in the check of this version. */
  readonly place: number
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}

export type PrintKind =
  | 'booklet'
  | 'one-sheet booklet'
  | 'pages'
  | 'strips'
  | 'tags'
  | 'cards'
  | 'list'
  | 'slips'
  | 'sight words'
  | 'word wall'
  | 'lesson set'

export interface PrintWish {
  readonly kind: PrintKind
  readonly paper: 'a4' | 'letter'
  readonly letters: string
  readonly size: LettersSize
  /** What of the letters is bold. */
  readonly mark: 'none' | 'practised' | 'by-heart'
  /** For sheets of words: these, or those that the bank finds. */
  readonly words?: readonly string[]
  readonly bank?: BankWish
  /** Of a word wall; by first letter where nobody says. */
  readonly group?: 'letter' | 'ending'
}

export interface Printed {
  readonly pdf: Uint8Array
  /** For saving: `tam-and-the-hat-booklet.pdf`. */
  readonly fileName: string
  readonly sheets: number
  /** How to print and fold, and what the maker must know: one line each. */
  readonly told: readonly string[]
}
