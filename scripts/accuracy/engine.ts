// The engine as it is shipped, for measuring.

import { readFileSync } from 'node:fs'
import {
  type Accent,
  createPhonics,
  createSpelling,
  type Lexicon,
  openLexicon,
  type Phonics,
  type Spelling,
} from '../../src/phonics/index.ts'
import { type CompiledSequence, type Sequence, sequenceFromJson } from '../../src/sequence/index.ts'
import { openWordData, type WordData } from '../../src/words/index.ts'

export interface Engine {
  readonly lexicon: Lexicon
  readonly spelling: Spelling
  readonly phonics: Readonly<Record<Accent, Phonics>>
}

/** Opens dist/lexicon.bin. Throws where it is not built. */
export function openEngine(): Engine {
  const lexicon = openLexicon(readFileSync(new URL('../../dist/lexicon.bin', import.meta.url)))
  const spelling = createSpelling(lexicon)
  return {
    lexicon,
    spelling,
    phonics: {
      'general-american': createPhonics(lexicon, 'general-american', spelling),
      'southern-british': createPhonics(lexicon, 'southern-british', spelling),
    },
  }
}

/** What is known of words, and the default sequence. */
export function openWords(lexicon: Lexicon): { readonly data: WordData; readonly sequence: Sequence } {
  const read = (file: string): Buffer => readFileSync(new URL(`../../dist/${file}`, import.meta.url))
  const json = JSON.parse(read('sequences/series.json').toString('utf8')) as CompiledSequence
  return { data: openWordData(read('words.bin'), lexicon.size), sequence: sequenceFromJson(json, json.accent) }
}
