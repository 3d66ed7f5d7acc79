// Reads the files of words that the package ships, when a command or a message first needs them.

import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { inflateSync } from 'node:zlib'
import type { WordFileBytes } from '../resources/word-files.ts'

export const readWordFiles = (folder: string): WordFileBytes => ({
  words: readFileSync(join(folder, 'words.bin')),
  lists: () => inflateSync(readFileSync(join(folder, 'lists.bin'))),
})
