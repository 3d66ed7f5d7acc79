// Where the files lie that the package is built with: the lexicon and the built-in sequences.

import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { findNearest } from '../nearest.ts'
import { createPhonics, createSpelling, type Lexicon, openLexicon, type Spelling } from '../phonics/index.ts'
import type { Accent, Phonics } from '../phonics/types.ts'
import { type CompiledSequence, sequenceFromJson } from '../sequence/index.ts'
import type { Sequence } from '../sequence/types.ts'

const here = dirname(fileURLToPath(import.meta.url))

/** Beside the bundle, a folder above a part of it, or in dist/ when the program runs from its sources. */
export const DATA_FOLDER: string =
  [here, dirname(here)].find((folder) => existsSync(join(folder, 'lexicon.bin'))) ?? join(here, '..', '..', 'dist')

let lexicon: Lexicon | undefined
let spelling: Spelling | undefined
const engines = new Map<Accent, Phonics>()
const sequences = new Map<string, Sequence>()

export function loadLexicon(): Lexicon {
  lexicon ??= openLexicon(readFileSync(join(DATA_FOLDER, 'lexicon.bin')))
  return lexicon
}

/** How words are cut, whatever the accent; made once. */
export function loadSpelling(): Spelling {
  spelling ??= createSpelling(loadLexicon())
  return spelling
}

/** The engine in an accent; made once. */
export function loadPhonics(accent: Accent): Phonics {
  const known = engines.get(accent)
  if (known) return known
  const engine = createPhonics(loadLexicon(), accent, loadSpelling())
  engines.set(accent, engine)
  return engine
}

/** A built-in sequence; undefined where there is none of that name. */
export function loadBuiltIn(name: string, accent?: Accent): Sequence | undefined {
  const key = `${name} ${accent ?? ''}`
  const known = sequences.get(key)
  if (known) return known
  const path = join(DATA_FOLDER, 'sequences', `${name}.json`)
  if (!/^[\w-]+$/.test(name) || !existsSync(path)) return undefined
  const json = JSON.parse(readFileSync(path, 'utf8')) as CompiledSequence
  const sequence = sequenceFromJson(json, accent ?? json.accent)
  sequences.set(key, sequence)
  return sequence
}

/** Whether a sequence is a built-in one, unchanged: this very object was loaded here. */
export const isBuiltIn = (sequence: Sequence): boolean => [...sequences.values()].includes(sequence)

export const listBuiltIns = (): string[] =>
  readdirSync(join(DATA_FOLDER, 'sequences'))
    .map((file) => file.replace(/\.json$/, ''))
    .sort()

export const findBuiltInNearest = (name: string): string | undefined => findNearest(name, listBuiltIns())
