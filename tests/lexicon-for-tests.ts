// The real engine for tests: the built lexicon, read once a test file. Run `npm run compile` first.

import { existsSync, readFileSync } from 'node:fs'
import {
  type Accent,
  createPhonics,
  createSpelling,
  type Lexicon,
  openLexicon,
  type Phonics,
  type Spelling,
} from '../src/phonics/index.ts'

const FILE = new URL('../dist/lexicon.bin', import.meta.url)

let lexicon: Lexicon | undefined
let spelling: Spelling | undefined
const engines = new Map<Accent, Phonics>()

export function testLexicon(): Lexicon {
  if (!existsSync(FILE)) throw new Error('dist/lexicon.bin is not built: run `npm run compile` first')
  lexicon ??= openLexicon(readFileSync(FILE))
  return lexicon
}

export function testSpelling(): Spelling {
  spelling ??= createSpelling(testLexicon())
  return spelling
}

export function testPhonics(accent: Accent): Phonics {
  let engine = engines.get(accent)
  if (!engine) {
    engine = createPhonics(testLexicon(), accent, testSpelling())
    engines.set(accent, engine)
  }
  return engine
}
