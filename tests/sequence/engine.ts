// The real engine and the built-in sequences, for tests on real words.

import { existsSync, readFileSync } from 'node:fs'
import { buildLexicon } from '../../scripts/build/lexicon.ts'
import { createPhonics, createSpelling, openLexicon } from '../../src/phonics/index.ts'
import type { Accent, Phonics } from '../../src/phonics/types.ts'
import { type LoadedSequence, loadSequence } from '../../src/sequence/load.ts'

const BUILT = new URL('../../dist/lexicon.bin', import.meta.url)
const lexicon = openLexicon(existsSync(BUILT) ? readFileSync(BUILT) : buildLexicon().bytes)
const spelling = createSpelling(lexicon)
const engines = new Map<Accent, Phonics>()

export function phonicsFor(accent: Accent): Phonics {
  const engine = engines.get(accent) ?? createPhonics(lexicon, accent, spelling)
  engines.set(accent, engine)
  return engine
}

export type BuiltIn = 'series' | 'england' | 'common-core'

export function readBuiltIn(name: BuiltIn): string {
  return readFileSync(new URL(`../../src/sequence/built-in/${name}.yaml`, import.meta.url), 'utf8')
}

export function loadBuiltIn(name: BuiltIn, accent?: Accent): LoadedSequence {
  return loadSequence(readBuiltIn(name), { phonicsFor, accent, isForEveryAccent: true })
}
