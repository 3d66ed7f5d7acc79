// What docs/streams.md says of the cost of a library: the words around measured figures.

import { readFileSync, writeFileSync } from 'node:fs'
import { availableParallelism } from 'node:os'
import { join } from 'node:path'
import { ROOT } from '../root.ts'
import type { Scale } from './scale.ts'
import { IN_SHARD } from './shards.ts'
import { type Found, type Run, STEP } from './work.ts'

export interface Measured extends Run, Found {
  readonly workers: number
}

const MANY = 10_000_000

/** Milliseconds of the processor for a document. */
const toEach = ({ cpu, documents }: Measured): number => cpu / documents
const toHours = (milliseconds: number): string => `${((milliseconds * MANY) / 3_600_000).toFixed(1)} hours`
const toKilobytes = (bytes: number): string => (bytes / 1000).toFixed(1)
const toCount = (count: number): string => count.toLocaleString('en-GB')

function toLoad(measured: Measured): string {
  const { documents, bytesIn, bytesOut, messages } = measured
  const told = messages === 0 ? '' : ` with ${Math.round(messages / documents)} messages`
  return (
    `${toEach(measured).toFixed(2)} ms of one core for a document of ${toKilobytes(bytesIn / documents)} KB${told}, and ${toKilobytes(bytesOut / documents)} KB of JSON come out; ` +
    `ten million are ${toHours(toEach(measured))} of one core and ${toCount(Math.round((bytesOut / documents / 1e9) * MANY))} GB`
  )
}

interface Costs {
  readonly made: Measured
  readonly real: Measured | undefined
  /** The same stories with --totals. */
  readonly totals: Measured | undefined
  readonly scale: Scale | undefined
}

export function toPassage({ made, real, totals, scale }: Costs): string {
  const memory = Math.max(made.memory, real?.memory ?? 0, totals?.memory ?? 0)
  const lines = [
    `- Stories made for a step, with one sentence in ten astray (${toCount(made.documents)} at ${STEP}, ${made.workers} processes at a time): ${toLoad(made)}.`,
    ...(real
      ? [
          `- Open stories that nobody wrote for a step (${toCount(real.documents)}, read over and over): ${toLoad(real)}.`,
        ]
      : []),
    ...(totals ? [`- The same with \`--totals\`: ${toLoad(totals)}.`] : []),
    `- No process held more than ${Math.round(memory / 1e6)} MB, with shards of ${toCount(IN_SHARD)} documents.`,
    `- ${made.again === 1 ? 'One process was' : `${made.again} processes were`} killed on the way; the shard was given to another, and every document was there once.`,
    ...(scale
      ? [
          `- ${scale.processes} processes under GNU parallel were ${scale.ratio.toFixed(2)} times as fast as one, on a machine of ${availableParallelism()} cores: ` +
            `ten million of the made stories are ${toHours(toEach(made) / scale.ratio)} there.`,
        ]
      : []),
  ]
  return lines.join('\n')
}

const PAGE = join(ROOT, 'docs', 'streams.md')
const PASSAGE = /(<!-- measured -->\n)[\s\S]*?(<!-- \/measured -->)/

export function writePassage(passage: string): void {
  const page = readFileSync(PAGE, 'utf8')
  if (!PASSAGE.test(page)) throw new Error(`${PAGE}: <!-- measured --> is not there`)
  writeFileSync(
    PAGE,
    page.replace(PASSAGE, (_, start: string, end: string) => `${start}${passage}\n${end}`),
  )
}
