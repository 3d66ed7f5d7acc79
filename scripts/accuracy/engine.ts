// The engine as it is shipped, for measuring.

import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { DATA_FOLDER, loadBuiltIn, loadLexicon, loadPhonics, loadSpelling } from '../../src/packaged/data.ts'
import type { Accent, Lexicon, Phonics, Spelling } from '../../src/phonics/index.ts'
import type { Sequence } from '../../src/sequence/index.ts'
import { openWordData, type WordData } from '../../src/words/index.ts'

export interface Engine {
  readonly lexicon: Lexicon
  readonly spelling: Spelling
  readonly phonics: Readonly<Record<Accent, Phonics>>
}

/** Opens dist/lexicon.bin. Throws where it is not built. */
export function openEngine(): Engine {
  return {
    lexicon: loadLexicon(),
    spelling: loadSpelling(),
    phonics: {
      'general-american': loadPhonics('general-american'),
      'southern-british': loadPhonics('southern-british'),
    },
  }
}

/** A built-in sequence; in its own accent where none is named. Throws where dist/sequences is not built. */
export function openSequence(name: string, accent?: Accent): Sequence {
  const sequence = loadBuiltIn(name, accent)
  if (!sequence) throw new Error('dist/sequences is not built: run `npm run compile` first')
  return sequence
}

/** What is known of words, and the default sequence. */
export function openWords(lexicon: Lexicon): { readonly data: WordData; readonly sequence: Sequence } {
  const data = openWordData(readFileSync(join(DATA_FOLDER, 'words.bin')), lexicon.size)
  return { data, sequence: openSequence('series') }
}
