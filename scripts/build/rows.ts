// Reads the tables of src/words/data: a head, a row a line, comments that begin with #.

import { readFileSync } from 'node:fs'

/** The rows below the head, in the order of the file. @param name `showing.tsv` */
export const readRows = (name: string): readonly string[] =>
  readFileSync(new URL(`../../src/words/data/${name}`, import.meta.url), 'utf8')
    .trimEnd()
    .split('\n')
    .filter((row) => !row.startsWith('#'))
    .slice(1)
