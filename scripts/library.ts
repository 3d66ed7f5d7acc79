// A library of documents checked as an engine for many machines does it: cut into shards, a process of `stream` for each, as many
// at a time as there are cores; a shard whose process died is given to another. Shows what it costs, and that nothing is lost when
// a worker is killed.
//
//   npx tsx scripts/library.ts                            100,000 made documents of 2 KB, one worker killed
//   npx tsx scripts/library.ts --documents 10000 --workers 1 --kills 0
//   npx tsx scripts/library.ts --corpus DIR               and the stories of a folder, a fifth as many
//   npx tsx scripts/library.ts --scale                    and GNU parallel with one process and with one for each core
//   npx tsx scripts/library.ts --corpus DIR --scale --page    puts what it measured into docs/streams.md

import { mkdtempSync, rmSync } from 'node:fs'
import { availableParallelism, tmpdir } from 'node:os'
import { join } from 'node:path'
import { parseArgs } from 'node:util'
import { type Measured, toPassage, writePassage } from './library/page.ts'
import { measureScale } from './library/scale.ts'
import { makeDocuments, readDocuments, type ToText, writeShards } from './library/shards.ts'
import { checkAll, count, type Way } from './library/work.ts'

const { values } = parseArgs({
  options: {
    documents: { type: 'string', default: '100000' },
    workers: { type: 'string', default: String(availableParallelism()) },
    kills: { type: 'string', default: '1' },
    corpus: { type: 'string' },
    scale: { type: 'boolean', default: false },
    page: { type: 'boolean', default: false },
  },
})
const documents = Number(values.documents)
const workers = Number(values.workers)

async function measure(folder: string, many: number, toText: ToText, given: Partial<Way> = {}): Promise<Measured> {
  const shards = writeShards(folder, many, toText)
  const run = await checkAll(shards, { workers, kills: 0, flags: [], ...given })
  return { ...run, ...(await count(shards)), workers }
}

const folder = mkdtempSync(join(tmpdir(), 'battledore-library-'))
try {
  const start = performance.now()
  const made = await measure(join(folder, 'made'), documents, makeDocuments(), { kills: Number(values.kills) })
  const seconds = (performance.now() - start) / 1000
  const { corpus } = values
  const toReal = (name: string, flags: readonly string[]): Promise<Measured | undefined> | undefined =>
    corpus ? measure(join(folder, name), Math.ceil(documents / 5), readDocuments(corpus), { flags }) : undefined
  const real = await toReal('real', [])
  const totals = await toReal('totals', ['--totals'])
  const scale = values.scale ? await measureScale(folder, makeDocuments()) : undefined
  const passage = toPassage({ made, real, totals, scale })
  process.stdout.write(
    `${passage}\n${made.documents} made documents took ${seconds.toFixed(0)} s by the clock, their making and counting included.\n`,
  )
  if (values.page) writePassage(passage)
} finally {
  rmSync(folder, { recursive: true, force: true })
}
