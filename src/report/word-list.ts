// What was asked of the words of a step and what was found: the one record from which every output is made.

import type { FoundWord, Pair, Relaxed, ShowAs } from '../finder/index.ts'
import type { WordBank } from './bank.ts'

export interface WordList {
  readonly as: 'list' | 'box' | 'contrast' | 'mixed' | 'sheet'
  readonly sequence: { readonly name: string; readonly title: string }
  readonly step: { readonly id: string; readonly title: string }
  readonly accent: string
  /** The name of the reader, where a reader's file was given. */
  readonly reader: string | null
  readonly words: readonly FoundWord[]
  /** Of `contrast`: the words two by two. */
  readonly pairs: readonly Pair[]
  /** Whether more words fit than were asked for. */
  readonly more: boolean
  readonly relaxed: readonly Relaxed[]
  /** Whether small objects are listed. */
  readonly hasObjects: boolean
  /** Whether a set holds every word that fits, so that no rule of the set has kept one out. */
  readonly isAll: boolean
  /** As what the words are to be shown, where that was asked for. */
  readonly showAs: ShowAs | null
  /** What a set that came out empty could be instead. */
  readonly instead: string | null
  /** Of `sheet`: the words by part, and what else can be used. */
  readonly bank: WordBank | null
  /** Spellings asked for that the reader has not been taught, each with the step that teaches it. */
  readonly untaught: readonly { readonly spelling: string; readonly step: string | undefined }[]
}

/** No caution over nothing. */
export const hasCaution = ({ hasObjects, words }: WordList): boolean => hasObjects && words.length > 0
