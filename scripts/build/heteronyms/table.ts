// All heteronyms, from the files in src/phonics/heteronyms/data, by kind and in order of spelling inside a kind.

import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { openWeights } from '../../../src/phonics/heteronyms/learned/weights.ts'
import { openHeteronyms, writeHeteronyms } from '../../../src/phonics/heteronyms/table.ts'
import type { Heteronyms, Weigh, WrittenHeteronym } from '../../../src/phonics/heteronyms/types.ts'
import { toProblemLine } from '../../../src/problem/index.ts'
import { ROOT } from '../../root.ts'
import { readExamples } from './examples.ts'
import { readHeteronyms } from './read.ts'
import { teach } from './teach.ts'

const KINDS = ['read', 'senses', 'use', 'ate', 'stress'] as const
const FOLDER = 'src/phonics/heteronyms/data'

/** Throws with every mistake of every file: such a table must not ship. */
function loadHeteronyms(): readonly WrittenHeteronym[] {
  const files = KINDS.map((kind) => {
    const path = `${FOLDER}/${kind}.yaml`
    return readHeteronyms(readFileSync(join(ROOT, path), 'utf8'), path)
  })
  const problems = files.flatMap((file) => file.problems)
  if (problems.length > 0) throw new Error(problems.map(toProblemLine).join('\n'))
  const rows = files.flatMap((file) => file.rows)
  const twice = rows.find(({ word }, at) => rows.findIndex((other) => other.word === word) !== at)
  if (twice !== undefined) throw new Error(`\`${twice.word}\` stands in two files of ${FOLDER}`)
  return rows
}

export const heteronyms: readonly WrittenHeteronym[] = loadHeteronyms()

const text = writeHeteronyms(heteronyms)

/** The table without what a model has learned: what the rules alone say. */
export const rules: Heteronyms = openHeteronyms(text)
let taught: Uint8Array | undefined

/** What the model learned from the judged sentences; it takes two seconds. */
export const teachWeights = (): Uint8Array => (taught ??= teach(readExamples(rules)))

let opened: Weigh | undefined

/** As the lexicon file holds it; the model is taught when it is first asked. */
export const table: Heteronyms = {
  find: rules.find,
  weigh: (row, place) => (opened ??= openWeights(teachWeights()))(row, place),
}
