// One thing that is to be done after a while, and can be put off or called off.

import type { Clock } from './types.ts'

export interface Timer {
  /** From now on; an earlier start no longer counts. */
  restart(): void
  /** Unless it is running already. */
  start(): void
  stop(): void
}

export function createTimer(clock: Clock, milliseconds: number, run: () => void): Timer {
  let callOff: (() => void) | undefined
  const stop = (): void => {
    callOff?.()
    callOff = undefined
  }
  const start = (): void => {
    callOff ??= clock.after(milliseconds, () => {
      callOff = undefined
      run()
    })
  }
  return {
    start,
    stop,
    restart() {
      stop()
      start()
    },
  }
}
