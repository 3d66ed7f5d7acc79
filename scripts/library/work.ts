// Shards through processes of `stream`, as an engine does it: as many at a time as there are workers, a shard again where its process died.

import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { createReadStream, createWriteStream, renameSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { createInterface } from 'node:readline'
import { PROGRAM, ROOT } from '../root.ts'
import type { Shard } from './shards.ts'

export const STEP = 'green-5'

interface Kill {
  /** Milliseconds after which the process of a shard is killed. */
  readonly after: number
}

/** Tells on the third stream what a process has used. */
const HOOK = join(ROOT, 'scripts', 'library', 'report-use.cjs')

interface Use {
  /** Milliseconds of the processor. */
  readonly cpu: number
  /** Bytes of memory at the most. */
  readonly memory: number
}

/**
 * One shard through one process. What it wrote counts only when it has ended well: then its file gets its name.
 * @returns what it used; undefined where the process died
 */
async function checkShard(
  { input, output }: Shard,
  flags: readonly string[],
  kill: Kill | undefined,
): Promise<Use | undefined> {
  const args = ['--require', HOOK, PROGRAM, 'stream', '--step', STEP, ...flags]
  const child = spawn(process.execPath, args, { stdio: ['pipe', 'pipe', 'inherit', 'pipe'] })
  let used = ''
  child.stdio[3]?.on('data', (chunk: Buffer) => {
    used += chunk.toString()
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
  return JSON.parse(used) as Use
}

export interface Run {
  /** Shards that had to be given to another process. */
  readonly again: number
  /** Milliseconds of the processor, of those processes that ended well. */
  readonly cpu: number
  /** Bytes that the largest of those processes held. */
  readonly memory: number
}

export interface Way {
  readonly workers: number
  /** How many processes are killed on the way. */
  readonly kills: number
  /** Of `stream`, beside the step. */
  readonly flags: readonly string[]
}

export async function checkAll(shards: readonly Shard[], { workers, kills, flags }: Way): Promise<Run> {
  const waiting = [...shards]
  let left = kills
  let again = 0
  let [cpu, memory] = [0, 0]
  const work = async (): Promise<void> => {
    for (let shard = waiting.shift(); shard !== undefined; shard = waiting.shift()) {
      const kill = left > 0 ? { after: 1500 } : undefined
      if (kill) left--
      const used = await checkShard(shard, flags, kill)
      if (used === undefined) {
        again++
        waiting.push(shard)
      } else {
        cpu += used.cpu
        memory = Math.max(memory, used.memory)
      }
    }
  }
  await Promise.all(Array.from({ length: workers }, work))
  return { again, cpu, memory }
}

export interface Found {
  readonly documents: number
  readonly messages: number
  readonly bytesIn: number
  readonly bytesOut: number
}

/** Throws where a document is missing, stands twice or could not be checked. */
export async function count(shards: readonly Shard[]): Promise<Found> {
  let documents = 0
  let [messages, bytesIn, bytesOut] = [0, 0, 0]
  for (const { input, output, from, to } of shards) {
    bytesIn += statSync(input).size
    bytesOut += statSync(output).size
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
  return { documents, messages, bytesIn, bytesOut }
}
