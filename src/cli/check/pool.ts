// Stories judged by this thread and by workers beside it. This file is both sides: what starts them, and what each runs.

import * as fs from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { fromRecord, type StoryRecord, toRecord } from '../../check/record.ts'
import { isChecked, type UncheckedStory } from '../../check/result.ts'
import type { Result } from '../../report/reporter.ts'
import { type Io, now, today } from '../io.ts'
import { createJudge, type Judge, type RunSettings } from './judge.ts'
import type { Helpers } from './share-out.ts'
import { createTaskMaker, type Task } from './task.ts'

/** What each worker is told once. */
interface WorkerInput {
  readonly cwd: string
  readonly runSettings: RunSettings
}

/** A story as it crosses to a worker. The worker finds the config again: it holds functions, which cannot cross. */
type Order = Omit<Task, 'chain'>

/** Stories on their way to a worker: enough that it need not wait while this thread judges one. */
const QUEUED = 8

/** Workers beside this thread, whose judge judges what they could not: one that dies loses no story. */
export async function startHelpers(
  runSettings: RunSettings,
  io: Io,
  { workers, here }: { readonly workers: number; readonly here: Judge },
): Promise<Helpers> {
  const { Tinypool } = await import('tinypool')
  const input: WorkerInput = { cwd: io.cwd, runSettings }
  const pool = new Tinypool({
    filename: join(dirname(fileURLToPath(import.meta.url)), '..', 'worker.cjs'),
    name: 'judgeOrder',
    minThreads: workers,
    maxThreads: workers,
    concurrentTasksPerWorker: QUEUED,
    workerData: input,
    trackUnmanagedFds: false,
  })
  return {
    room: workers * QUEUED,
    async judge(task) {
      try {
        const { path, storyPath, source } = task
        const record = JSON.parse((await pool.run({ path, storyPath, source } satisfies Order)) as string) as
          | StoryRecord
          | UncheckedStory
        return 'problems' in record ? record : fromRecord(record, path, source)
      } catch {
        return here.judge(task)
      }
    },
    end: () => pool.destroy(),
  }
}

let start: ((order: Order) => Promise<Result>) | undefined

/**
 * Run in the worker, which asks for it by name. A text crosses faster than the many small objects of a result.
 * @public
 */
export async function judgeOrder(order: Order): Promise<string> {
  start ??= createWorker()
  const result = await start(order)
  return JSON.stringify(isChecked(result) ? toRecord(result) : result)
}

function createWorker(): (order: Order) => Promise<Result> {
  const { cwd, runSettings } = readWorkerInput()
  const io = createSilentIo(cwd)
  const tasks = createTaskMaker(io, runSettings)
  const judge = createJudge(runSettings, io)
  return async (order) => judge.judge({ ...order, chain: await tasks.findChain(order.storyPath) })
}

/** Where the pool leaves the data of a worker. */
const readWorkerInput = (): WorkerInput =>
  (process as unknown as { __tinypool_state__: { workerData: WorkerInput } }).__tinypool_state__.workerData

/** What is wrong with a config was told by the thread that started this one. */
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
    now,
    today,
  }
}
