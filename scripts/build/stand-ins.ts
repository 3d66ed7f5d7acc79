// The table of what could stand for a word, for the shipped file.

import { readFileSync } from 'node:fs'

/** Without its comments. */
export function buildStandIns(): Uint8Array {
  const text = readFileSync(new URL('../../src/words/data/stand-ins.tsv', import.meta.url), 'utf8')
  return new TextEncoder().encode(text.replace(/^#.*\n/gm, ''))
}
