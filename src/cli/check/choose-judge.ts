// One judge here, or a pool of them, by how much there is to do.

import { availableParallelism } from 'node:os'
import type { Io } from '../io.ts'
import { createJudge, type Judge, type RunSettings } from './judge.ts'
import type { Task } from './task.ts'

/**
 * What is left must be so many milliseconds of work for one judge before workers are called: each starts anew and meets the
 * words that stories share for itself. Of 1,000 real stories, 5 s for one judge, two workers took 1.7 times the processor's
 * time. `--workers` asks for them at any amount.
 */
const WORTH = 8000

/** How many stories the work is measured on: the first are slower than those that follow. */
const MEASURED = 32

/** Stories that are enough work for one more worker. */
const STORIES_FOR_ONE = 32

/** Texts held at a time: enough to keep many cores at work, little beside the results. */
const AHEAD = 32

export interface Work {
  readonly stories: number
  /** How many workers are wished for; undefined: as many as there are cores. */
  readonly workers: number | undefined
}

export function chooseJudge({ stories, workers }: Work, runSettings: RunSettings, io: Io): Judge {
  const here = createJudge(runSettings, io)
  const isPossible = workers === undefined ? stories > MEASURED : workers > 1
  if (!isPossible || runSettings.findEarlierWords) return here
  const wanted = workers ?? Math.min(availableParallelism(), Math.ceil(stories / STORIES_FOR_ONE))
  if (wanted < 2) return here
  const isWorthIt = workers === undefined ? createMeter(stories, io.now) : () => true
  let pool: Promise<Judge> | undefined
  const judgeIn = (task: Task) => {
    if (pool === undefined && !isWorthIt()) return here.judge(task)
    pool ??= startPool(runSettings, io, wanted).then((started) => started ?? here)
    return pool.then((judge) => judge.judge(task))
  }
  return { ahead: AHEAD, judge: judgeIn, end: async () => (await pool)?.end() }
}

/**
 * Asked before each story that must be judged: whether what is left is worth workers, by the time that the last stories took.
 * What a cache knows is never asked about, so a shelf with few changes is done before there is anything to measure.
 */
export function createMeter(stories: number, now: () => number): () => boolean {
  const times: number[] = []
  return () => {
    times.push(now())
    const from = times.length - 1 - MEASURED
    if (from < 0) return false
    const each = ((times.at(-1) ?? 0) - (times[from] ?? 0)) / MEASURED
    return each * (stories - times.length) > WORTH
  }
}

/** Undefined where this machine or this Node cannot have one. */
async function startPool(runSettings: RunSettings, io: Io, workers: number): Promise<Judge | undefined> {
  try {
    const { createPoolJudge } = await import('./pool.ts')
    return await createPoolJudge(runSettings, io, workers)
  } catch {
    return undefined
  }
}
