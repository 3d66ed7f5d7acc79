// One judge here, or workers beside it, by how much there is to do.

import { availableParallelism } from 'node:os'
import type { Io } from '../io.ts'
import { createJudge, type Judge, type RunSettings } from './judge.ts'
import { type Helpers, shareOut } from './share-out.ts'

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

/** Texts held at a time for each worker: this thread goes on while a worker starts and meets its first stories. */
const AHEAD = 128

export interface Work {
  readonly stories: number
  /** How many threads are to judge, this one among them; undefined: as many as there are cores. */
  readonly workers: number | undefined
}

export function chooseJudge({ stories, workers }: Work, runSettings: RunSettings, io: Io): Judge {
  const here = createJudge(runSettings, io)
  const isPossible = workers === undefined ? stories > MEASURED : workers > 1
  if (!isPossible || runSettings.findEarlierWords) return here
  const wanted = workers ?? Math.min(availableParallelism(), Math.ceil(stories / STORIES_FOR_ONE))
  if (wanted < 2) return here
  const isWorthIt = workers === undefined ? createMeter(stories, io.now) : () => true
  const call = () => (isWorthIt() ? callHelpers(runSettings, io, { workers: wanted - 1, here }) : undefined)
  return { ahead: AHEAD * (wanted - 1), ...shareOut((task) => here.judge(task), call) }
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
async function callHelpers(
  runSettings: RunSettings,
  io: Io,
  hands: { readonly workers: number; readonly here: Judge },
): Promise<Helpers | undefined> {
  try {
    const { startHelpers } = await import('./pool.ts')
    return await startHelpers(runSettings, io, hands)
  } catch {
    return undefined
  }
}
