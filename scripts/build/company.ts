// Lays out the vectors of company.bin by the places of the lexicon, for the shipped file.

import { readFileSync } from 'node:fs'
import { toBytes } from '../../src/words/bytes.ts'

const read = (name: string): Buffer => readFileSync(new URL(`data/${name}`, import.meta.url))

/** @param words the lexicon's words in its own order. Words that it lacks are left out. */
export function buildCompany(words: readonly string[]): Uint8Array {
  const data = read('company.bin')
  const [rows, columns, dims] = [data.readUInt32LE(0), data.readUInt32LE(4), data.readUInt32LE(8)]
  const scale = (data.readFloatLE(12) * data.readFloatLE(16)) / 127 ** 2
  const [listed = '', neighbours = ''] = read('company-words.txt').toString('utf8').trim().split('\n\n')
  const row = new Map(listed.split('\n').map((word, at) => [word, at]))
  if (row.size !== rows) throw new Error('company-words.txt does not belong to company.bin')
  const start = 20
  const kept = words.flatMap((word, place) => {
    const at = row.get(word)
    return at === undefined ? [] : [{ place, vector: data.subarray(start + at * dims, start + (at + 1) * dims) }]
  })
  const deltas = kept.map(({ place }, i) => place - (kept[i - 1]?.place ?? 0))
  const names = Buffer.from(neighbours.split('\n').join(' '))
  const head = toBytes([kept.length, ...deltas, dims, Math.round(scale * 1e9), names.length])
  const rest = data.subarray(start + rows * dims, start + (rows + 4 * columns) * dims)
  return Buffer.concat([head, names, ...kept.map(({ vector }) => vector), rest])
}

/** The table of stand-ins without its comments. */
export function buildStandIns(): Uint8Array {
  const text = readFileSync(new URL('../../src/words/data/stand-ins.tsv', import.meta.url), 'utf8')
  return new TextEncoder().encode(text.replace(/^#.*\n/gm, ''))
}
