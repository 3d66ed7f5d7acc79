// The documents of a library, as lines of JSON in files of some thousand.

import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { makeStories } from '../bench/stories.ts'

/** Of a made document, in characters. */
const SIZE = 2000
export const IN_SHARD = 2000
/** How many made stories lend their sentences; each document has them in an order of its own. */
const PATTERNS = 100

export interface Shard {
  readonly input: string
  readonly output: string
  readonly from: number
  readonly to: number
}

/** The text of each document. */
export type ToText = (id: number) => string

/** Stories that were made for a step: one sentence of ten is astray. */
export function makeDocuments(): ToText {
  const bodies = makeStories(PATTERNS, 1, { size: SIZE }).map(({ text }) =>
    text.replace(/^---[\s\S]*?---\n/, '').split('\n---\n'),
  )
  return (id) => {
    const pages = bodies[id % PATTERNS] ?? []
    const turn = Math.floor(id / PATTERNS) % pages.length
    return [...pages.slice(turn), ...pages.slice(0, turn)].join('\n---\n')
  }
}

/** The stories of a folder, one after the other and over again. */
export function readDocuments(folder: string): ToText {
  const texts = readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.md') && !name.endsWith('README.md'))
    .sort()
    .map((name) => readFileSync(join(folder, name), 'utf8'))
  return (id) => texts[id % texts.length] ?? ''
}

/** Documents as lines of JSON, in files. */
export function writeShards(folder: string, documents: number, toText: ToText): readonly Shard[] {
  for (const inner of ['in', 'out']) mkdirSync(join(folder, inner), { recursive: true })
  return Array.from({ length: Math.ceil(documents / IN_SHARD) }, (_, number) => {
    const [from, to] = [number * IN_SHARD, Math.min(documents, (number + 1) * IN_SHARD)]
    const lines = Array.from({ length: to - from }, (_, at) => toLine(from + at, toText))
    const name = String(number).padStart(5, '0')
    const shard = { input: join(folder, 'in', name), output: join(folder, 'out', name), from, to }
    writeFileSync(shard.input, lines.join(''))
    return shard
  })
}

export const toLine = (id: number, toText: ToText): string => `${JSON.stringify({ id, text: toText(id) })}\n`
