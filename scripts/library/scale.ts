// How much faster GNU parallel gets a stream done with a process for each core than with one process.

import { spawnSync } from 'node:child_process'
import { closeSync, openSync, rmSync, writeFileSync } from 'node:fs'
import { availableParallelism } from 'node:os'
import { join } from 'node:path'
import { pair } from '../bench/measure.ts'
import { PROGRAM } from '../root.ts'
import { type ToText, toLine } from './shards.ts'
import { STEP } from './work.ts'

/** One for each process; smaller than docs/streams.md advises, for a measurement of a minute. */
const BLOCK = 4 * 1024 * 1024
const TURNS = 3

export interface Scale {
  readonly processes: number
  /** How many times as fast as one process: the median of the turns. */
  readonly ratio: number
}

/** Undefined where GNU parallel is not installed. */
export async function measureScale(folder: string, toText: ToText): Promise<Scale | undefined> {
  if (spawnSync('parallel', ['--version']).status !== 0) return undefined
  const processes = availableParallelism()
  const input = join(folder, 'scale.ndjson')
  let all = ''
  // A little less than the blocks hold, or a last one would come of the rest.
  for (let id = 0; all.length < BLOCK * processes * 0.98; id++) all += toLine(id, toText)
  writeFileSync(input, all)
  try {
    const { ratio } = await pair(
      () => run(input, 1),
      () => run(input, processes),
      TURNS,
      0,
    )
    return { processes, ratio }
  } finally {
    rmSync(input)
  }
}

function run(input: string, jobs: number): void {
  const stdin = openSync(input, 'r')
  const program = [process.execPath, PROGRAM, 'stream', '--step', STEP].join(' ')
  const args = ['--will-cite', '--pipe', '--keep-order', '--jobs', `${jobs}`, '--block', `${BLOCK}`, program]
  const { status, stderr } = spawnSync('parallel', args, { stdio: [stdin, 'ignore', 'pipe'] })
  closeSync(stdin)
  if (status !== 0) throw new Error(`parallel: ${stderr}`)
}
