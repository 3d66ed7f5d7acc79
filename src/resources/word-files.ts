// Opens what is known of words for proposing them, from the bytes of the package's files.

import { type ListTable, openListTable } from '../finder/table.ts'
import { openWordData, type WordData } from '../words/word-data.ts'

/** `words.bin`, and `lists.bin` inflated; a function is called when the lists are first asked for, since offers need none of them. */
export interface WordFileBytes {
  readonly words: Uint8Array
  readonly lists: Uint8Array | (() => Uint8Array)
}

export interface WordFiles {
  readonly data: WordData
  /** Opened when it is first asked for. */
  readonly table: ListTable
}

/** @param lexiconSize to tell files that were made for another lexicon */
export function openWordFiles({ words, lists }: WordFileBytes, lexiconSize: number): WordFiles {
  let table: ListTable | undefined
  return {
    data: openWordData(words, lexiconSize),
    get table() {
      table ??= openListTable(typeof lists === 'function' ? lists() : lists)
      return table
    },
  }
}
