// Stories judged by workers, one for each core. This file is both sides: what starts them, and what each runs.

import * as fs from 'node:fs'
import { fileURLToPath } from 'node:url'
import { fromRecord, type StoryRecord, toRecord } from '../../check/record.ts'
import { isChecked, type UncheckedStory } from '../../check/result.ts'
import type { Result } from '../../report/reporter.ts'
import type { Io } from '../io.ts'
import { type Circumstances, createJudge, type Judge } from './judge.ts'
import { createTaskMaker, type Task } from './task.ts'

/** What each worker is told once. */
interface Orders {
  readonly cwd: string
  readonly circumstances: Circumstances
}

/** A story as it crosses to a worker. The worker finds the config again: it holds functions, which cannot cross. */
type Order = Omit<Task, 'chain'>

/** Judges here what a worker could not: a worker that dies loses no story. Undefined where there is one core or no pool to be had. */
export async function createPoolJudge(
  circumstances: Circumstances,
  io: Io,
  threads: number,
): Promise<Judge | undefined> {
  if (threads < 2) return undefined
  const { Tinypool } = await import('tinypool')
  const orders: Orders = { cwd: io.cwd, circumstances }
  const pool = new Tinypool({
    filename: fileURLToPath(import.meta.url),
    name: 'judgeOrder',
    minThreads: threads,
    maxThreads: threads,
    workerData: orders,
    trackUnmanagedFds: false,
  })
  let here: Judge | undefined
  return {
    ahead: threads * 4,
    async judge(task) {
      try {
        const { path, storyPath, source } = task
        const record = JSON.parse((await pool.run({ path, storyPath, source } satisfies Order)) as string) as
          | StoryRecord
          | UncheckedStory
        return 'problems' in record ? record : fromRecord(record, path, source)
      } catch {
        here ??= createJudge(circumstances, io)
        return here.judge(task)
      }
    },
    end: () => pool.destroy(),
  }
}

let start: ((order: Order) => Promise<Result>) | undefined

/** Run in the worker. A text crosses faster than the many small objects of a result. */
export async function judgeOrder(order: Order): Promise<string> {
  start ??= createWorker()
  const result = await start(order)
  return JSON.stringify(isChecked(result) ? toRecord(result) : result)
}

function createWorker(): (order: Order) => Promise<Result> {
  const { cwd, circumstances } = readOrders()
  const io = createSilentIo(cwd)
  const tasks = createTaskMaker(io, circumstances)
  const judge = createJudge(circumstances, io)
  return async (order) => judge.judge({ ...order, chain: await tasks.findChain(order.storyPath) })
}

/** Where the pool leaves the data of a worker. */
const readOrders = (): Orders =>
  (process as unknown as { __tinypool_state__: { workerData: Orders } }).__tinypool_state__.workerData

/** What is wrong with a config was told by the one who gave the orders. */
function createSilentIo(cwd: string): Io {
  const silent = { write: () => undefined, isTTY: false, columns: undefined }
  return {
    cwd,
    env: {},
    fs,
    stdin: async function* () {},
    stdinIsTTY: false,
    stdout: silent,
    stderr: silent,
    now: () => performance.now(),
  }
}
