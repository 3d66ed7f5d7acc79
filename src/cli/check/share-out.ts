// Hands out stories in order: to this thread, one at a time, and to workers once there are any.

import type { Result } from '../../report/reporter.ts'
import type { Task } from './task.ts'

export interface Helpers {
  /** How many stories they take at a time. */
  readonly room: number
  judge(task: Task): Promise<Result>
  end(): Promise<void>
}

type Judging = (task: Task) => Promise<Result>

export interface SharedWork {
  readonly judge: Judging
  end(): Promise<void>
}

/** @param call asked before each story of this thread until it gives helpers, or undefined for ever; undefined means not yet */
export function shareOut(here: Judging, call: () => Promise<Helpers | undefined> | undefined): SharedWork {
  const waiting: ((judge: Judging) => Promise<unknown>)[] = []
  let called: Promise<Helpers | undefined> | undefined
  let helpers: Helpers | undefined
  let [away, isBusy] = [0, false]
  const send = (): void => {
    while (helpers && away < helpers.room) {
      const next = waiting.shift()
      if (!next) return
      away++
      void next(helpers.judge).then(() => {
        away--
        send()
      })
    }
  }
  const askForHelpers = (): void => {
    called ??= call()?.then((found) => {
      helpers = found
      send()
      return found
    })
  }
  const work = async (): Promise<void> => {
    if (isBusy) return
    isBusy = true
    for (let next = waiting.shift(); next; next = waiting.shift()) {
      askForHelpers()
      await next(here)
      if (called) await turn()
    }
    isBusy = false
  }
  return {
    judge: (task) =>
      new Promise((done, fail) => {
        waiting.push((judge) => judge(task).then(done, fail))
        send()
        void work()
      }),
    end: async () => (await called)?.end(),
  }
}

/** Lets in what helpers have said. */
const turn = (): Promise<void> => new Promise((done) => setImmediate(done))
