// A library of made documents checked as an engine for many machines does it: cut into shards, a process of `stream` for
// each, as many at a time as there are cores; a shard whose process died is given to another. Shows what it costs, and that
// nothing is lost when a worker is killed.
//
//   npx tsx scripts/library.ts                            100,000 documents of 2 KB, one worker killed
//   npx tsx scripts/library.ts --documents 10000 --workers 1 --kills 0

import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { createReadStream, createWriteStream, mkdirSync, mkdtempSync, renameSync, rmSync, writeFileSync } from 'node:fs'
import { availableParallelism, tmpdir } from 'node:os'
import { join } from 'node:path'
import { createInterface } from 'node:readline'
import { makeStories } from './bench/stories.ts'
import { PROGRAM, ROOT } from './root.ts'

const SIZE = 2000
const IN_SHARD = 2000
const STEP = 'green-5'
/** How many made stories lend their sentences; each document has them in an order of its own. */
const PATTERNS = 100

const toNumber = (name: string, otherwise: number): number => {
  const at = process.argv.indexOf(`--${name}`)
  return at < 0 ? otherwise : Number(process.argv[at + 1])
}

interface Shard {
  readonly input: string
  readonly output: string
  readonly from: number
  readonly to: number
}

/** Documents as lines of JSON, in files. */
function writeShards(folder: string, documents: number): readonly Shard[] {
  const bodies = makeStories(PATTERNS, 1, { size: SIZE }).map(({ text }) =>
    text.replace(/^---[\s\S]*?---\n/, '').split('\n---\n'),
  )
  const toText = (id: number): string => {
    const pages = bodies[id % PATTERNS] ?? []
    const turn = Math.floor(id / PATTERNS) % pages.length
    return [...pages.slice(turn), ...pages.slice(0, turn)].join('\n---\n')
  }
  return Array.from({ length: Math.ceil(documents / IN_SHARD) }, (_, number) => {
    const [from, to] = [number * IN_SHARD, Math.min(documents, (number + 1) * IN_SHARD)]
    const lines = Array.from({ length: to - from }, (_, at) =>
      JSON.stringify({ id: from + at, text: toText(from + at) }),
    )
    const name = String(number).padStart(5, '0')
    const shard = { input: join(folder, 'in', name), output: join(folder, 'out', name), from, to }
    writeFileSync(shard.input, `${lines.join('\n')}\n`)
    return shard
  })
}

interface Kill {
  /** Milliseconds after which the process of a shard is killed. */
  readonly after: number
}

/** Tells on the third stream how much of the processor a process has used. */
const HOOK = join(ROOT, 'scripts', 'bench', 'report-cpu.cjs')

/**
 * One shard through one process. What it wrote counts only when it has ended well: then its file gets its name.
 * @returns the milliseconds of the processor that it took; undefined where the process died
 */
async function checkShard({ input, output }: Shard, kill: Kill | undefined): Promise<number | undefined> {
  const args = ['--require', HOOK, PROGRAM, 'stream', '--step', STEP]
  const child = spawn(process.execPath, args, { stdio: ['pipe', 'pipe', 'inherit', 'pipe'] })
  let cost = ''
  child.stdio[3]?.on('data', (chunk: Buffer) => {
    cost += chunk.toString()
  })
  const part = `${output}.part`
  const written = createWriteStream(part)
  child.stdout?.pipe(written)
  // A killed process takes no more; that is told by its end.
  child.stdin?.on('error', () => undefined)
  if (child.stdin) createReadStream(input).pipe(child.stdin)
  const timer = kill && setTimeout(() => child.kill('SIGKILL'), kill.after)
  const [[code]] = await Promise.all([once(child, 'close') as Promise<[number | null]>, once(written, 'close')])
  clearTimeout(timer)
  if (code !== 0) return undefined
  renameSync(part, output)
  return Number(cost)
}

interface Run {
  /** Shards that had to be given to another process. */
  readonly again: number
  /** Milliseconds of the processor, of those processes that ended well. */
  readonly cpu: number
}

async function checkAll(shards: readonly Shard[], workers: number, kills: number): Promise<Run> {
  const waiting = [...shards]
  let left = kills
  let again = 0
  let cpu = 0
  const work = async (): Promise<void> => {
    for (let shard = waiting.shift(); shard !== undefined; shard = waiting.shift()) {
      const kill = left > 0 ? { after: 1500 } : undefined
      if (kill) left--
      const cost = await checkShard(shard, kill)
      if (cost === undefined) {
        again++
        waiting.push(shard)
      } else cpu += cost
    }
  }
  await Promise.all(Array.from({ length: workers }, work))
  return { again, cpu }
}

/** Throws where a document is missing, stands twice or could not be checked. */
async function count(shards: readonly Shard[]): Promise<{ readonly documents: number; readonly messages: number }> {
  let documents = 0
  let messages = 0
  for (const { output, from, to } of shards) {
    let next = from
    for await (const line of createInterface({ input: createReadStream(output) })) {
      const found = JSON.parse(line) as { id: number; error?: string; messages?: readonly unknown[] }
      if (found.id !== next) throw new Error(`${output}: document ${next} is missing; ${found.id} stands there`)
      if (found.error !== undefined) throw new Error(`document ${next}: ${found.error}`)
      messages += found.messages?.length ?? 0
      next++
    }
    if (next !== to) throw new Error(`${output} ends before document ${next}`)
    documents += to - from
  }
  return { documents, messages }
}

const folder = mkdtempSync(join(tmpdir(), 'battledore-library-'))
try {
  for (const inner of ['in', 'out']) mkdirSync(join(folder, inner))
  const documents = toNumber('documents', 100_000)
  const workers = toNumber('workers', availableParallelism())
  const shards = writeShards(folder, documents)
  const start = performance.now()
  const { again, cpu } = await checkAll(shards, workers, toNumber('kills', 1))
  const seconds = (performance.now() - start) / 1000
  const found = await count(shards)
  const perSecond = found.documents / seconds
  const toHours = (milliseconds: number): string => ((milliseconds * 10_000_000) / 3_600_000).toFixed(1)
  process.stdout.write(
    `${found.documents} documents of some ${SIZE / 1000} KB at ${STEP}, ${shards.length} shards, ${workers} workers: ` +
      `${seconds.toFixed(0)} s, ${perSecond.toFixed(0)} documents a second, ${(cpu / found.documents).toFixed(2)} ms of the processor for each; ${again} shards were given to another process; ` +
      `${found.messages} messages; every document is there once.\n` +
      `Ten million such documents: ${toHours(1000 / perSecond)} hours at this pace, ${toHours(cpu / found.documents)} hours of one core.\n`,
  )
} finally {
  rmSync(folder, { recursive: true, force: true })
}
