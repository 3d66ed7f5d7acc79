// The compiled data of the word finder for tests. Run `npm run compile` first.

import { readFileSync } from 'node:fs'
import { inflateSync } from 'node:zlib'
import {
  createPool,
  findSpelling,
  type ListTable,
  openListTable,
  type Pool,
  type Spelling,
} from '../../src/finder/index.ts'
import type { Accent } from '../../src/phonics/types.ts'
import { type CompiledSequence, type Sequence, sequenceFromJson } from '../../src/sequence/index.ts'
import { openWordData, type WordData } from '../../src/words/index.ts'
import { testLexicon, testPhonics } from '../lexicon-for-tests.ts'

export const SEQUENCES = ['series', 'england', 'common-core'] as const
export const ACCENTS = ['general-american', 'southern-british'] as const satisfies readonly Accent[]

const read = (file: string): Buffer => readFileSync(new URL(`../../dist/${file}`, import.meta.url))

let data: WordData | undefined
let table: ListTable | undefined

export function testWords(): WordData {
  data ??= openWordData(read('words.bin'), testLexicon().size)
  return data
}

export function testTable(): ListTable {
  table ??= openListTable(inflateSync(read('lists.bin')))
  return table
}

/** In the sequence's own accent where none is asked for. */
export function testSequence(name: string, accent?: Accent): Sequence {
  const json = JSON.parse(read(`sequences/${name}.json`).toString('utf8')) as CompiledSequence
  return sequenceFromJson(json, accent ?? json.accent)
}

export function testPool(
  sequence: Sequence,
  step: string,
  more: { readonly extra?: Parameters<typeof createPool>[1]['extra']; readonly isOwn?: boolean } = {},
): Pool {
  const sources = {
    table: testTable(),
    facts: testWords().facts,
    lexicon: testLexicon(),
    phonics: testPhonics(sequence.accent),
  }
  return createPool(sources, { sequence, step, builtIn: more.isOwn ? undefined : sequence.name, extra: more.extra })
}

export function testSpellingOf(written: string, sequence: Sequence): Spelling {
  const found = findSpelling(written, sequence, testPhonics(sequence.accent))
  if ('problem' in found) throw new Error(found.problem)
  return found.spelling
}
