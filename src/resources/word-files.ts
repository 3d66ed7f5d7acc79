// Opens what is known of words for proposing them, from the bytes of the package's files.

import { type ListTable, openListTable } from '../finder/table.ts'
import { openWordData, type WordData } from '../words/word-data.ts'

/** `words.bin`, and `lists.bin` inflated. */
export interface WordFileBytes {
  readonly words: Uint8Array
  readonly lists: Uint8Array
}

export interface WordFiles {
  readonly data: WordData
  readonly table: ListTable
}

/** @param lexiconSize to tell files that were made for another lexicon */
export const openWordFiles = ({ words, lists }: WordFileBytes, lexiconSize: number): WordFiles => ({
  data: openWordData(words, lexiconSize),
  table: openListTable(lists),
})
