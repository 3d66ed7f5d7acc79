// Opens what is known of words for proposing them, when a command or a message first needs it.

import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { inflateSync } from 'node:zlib'
import { type ListTable, openListTable } from '../finder/table.ts'
import { openWordData, type WordData } from '../words/word-data.ts'

export interface WordFiles {
  readonly data: WordData
  readonly table: ListTable
}

/** @param lexiconSize to tell files that were made for another lexicon */
export function openWordFiles(folder: string, lexiconSize: number): WordFiles {
  return {
    data: openWordData(readFileSync(join(folder, 'words.bin')), lexiconSize),
    table: openListTable(inflateSync(readFileSync(join(folder, 'lists.bin')))),
  }
}
