// What sheets are made of, beside words: who reads, what is wished for; and what comes of it before it is drawn.

import type { PreparedStory } from '../check/check-story.ts'
import type { WrittenQuery } from '../finder/index.ts'
import type { Phonics } from '../phonics/types.ts'
import type { CutWish, Laid, MarkWish, PaperName, Shown, SizeWish } from '../print/index.ts'
import type { Result } from '../problem/index.ts'
import type { ReaderExtra } from '../sequence/reader.ts'
import type { Sequence } from '../sequence/types.ts'
import type { Lines, Picture } from '../story/index.ts'

export const SHEET_KINDS = ['tags', 'cards', 'list', 'slips', 'sight', 'strips', 'wall', 'bank', 'book', 'set'] as const
export type SheetKind = (typeof SHEET_KINDS)[number]
export type StorySheetKind = 'book' | 'strips' | 'slips'
export type WordSheetKind = Exclude<SheetKind, 'bank' | 'book' | 'strips' | 'set'>

export interface Wishes {
  readonly paper: PaperName | undefined
  readonly size: SizeWish
  readonly mark: MarkWish
  readonly cut: CutWish
  /** Whether strips come once more in loose words. */
  readonly isCutInWords: boolean
  readonly backs: 'none' | 'words'
  readonly fold: 'staple' | 'one-sheet' | 'none'
  readonly sides: 'both' | 'fronts' | 'backs'
  readonly turn: 'short-edge' | 'long-edge' | undefined
  readonly isGrey: boolean
}

/** Who is to read the words. */
export interface SheetReader {
  readonly sequence: Sequence
  readonly step: string
  readonly isStepNamed: boolean
  readonly extra: ReaderExtra | undefined
  readonly phonics: Phonics
}

/** What the words were asked for by, as written. */
export type AskedWords = Pick<
  WrittenQuery,
  'vowel' | 'first' | 'last' | 'with' | 'family' | 'rhymesWith' | 'kind' | 'newAtStep'
>

export interface StoryToPrint extends PreparedStory {
  /** As shown to people. */
  readonly path: string
  /** The name of its file without the ending; `story` where it has none. */
  readonly name: string
  readonly lines: Lines
  readonly phonics: Phonics
  /** For whom it is judged, where a reader's file is given. */
  readonly notice: string | undefined
  readonly readerPath: string | undefined
}

export interface StoryPicture {
  readonly shown: Shown
  readonly picture: Picture
}

/** Undefined where there is no picture of a word; a problem where there is one that cannot be printed. */
export type FindPicture = (word: string) => Result<Shown | undefined>

/** What a kind of sheet comes to, before it is drawn. */
export interface Prepared {
  readonly laid: Laid
  readonly title: string
  /** Parts of the file's name. */
  readonly name: readonly (string | undefined)[]
  /** What the maker must know, one line each. */
  readonly notices: readonly string[]
  /** Whether a story holds words that cannot be read. */
  readonly hasUnreadable?: boolean
}
