// One judge here, or a pool of them, by how much there is to do.

import { availableParallelism } from 'node:os'
import type { Io } from '../io.ts'
import { createJudge, type Judge, type RunSettings } from './judge.ts'
import type { Task } from './task.ts'

/**
 * Below this many stories the workers cost more than they save on two cores: each starts anew and meets the words that
 * stories share for itself. Measured with stories of 5 KB, one process ÷ two workers: 0.87 × at 400, 1.19 × at 800,
 * 1.24 × at 1,600. `--workers` asks for them at any number.
 */
export const POOL_FROM = 512

/** Stories that are enough work for one more worker. */
const STORIES_FOR_ONE = 32

/** Stories that a cache may lack before workers are called. */
const PATIENCE = 12

/** Texts held at a time: enough to keep many cores at work, little beside the results. */
const AHEAD = 32

export interface Work {
  readonly stories: number
  readonly hasCache: boolean
  /** How many workers are wished for; undefined: as many as there are cores. */
  readonly workers: number | undefined
}

export function chooseJudge({ stories, hasCache, workers }: Work, runSettings: RunSettings, io: Io): Judge {
  const here = createJudge(runSettings, io)
  const isLarge = workers === undefined ? stories >= POOL_FROM : workers > 1
  if (!isLarge || runSettings.findEarlierWords) return here
  let pool: Promise<Judge> | undefined
  let asked = 0
  const judgeIn = (task: Task) => {
    asked++
    if (hasCache && workers === undefined && asked <= PATIENCE) return here.judge(task)
    pool ??= startPool(runSettings, io, workers ?? toWorkers(stories)).then((started) => started ?? here)
    return pool.then((judge) => judge.judge(task))
  }
  return { ahead: AHEAD, judge: judgeIn, end: async () => (await pool)?.end() }
}

/** One for each core, and no more than there is work for. */
const toWorkers = (stories: number): number => Math.min(availableParallelism(), Math.ceil(stories / STORIES_FOR_ONE))

/** Undefined where this machine or this Node cannot have one. */
async function startPool(runSettings: RunSettings, io: Io, workers: number): Promise<Judge | undefined> {
  try {
    const { createPoolJudge } = await import('./pool.ts')
    return await createPoolJudge(runSettings, io, workers)
  } catch {
    return undefined
  }
}
