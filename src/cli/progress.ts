// A bar on stderr for work that takes longer than half a second on a terminal; nothing anywhere else.

import type { Io } from './io.ts'

export interface Progress {
  step(done: number, what: string): void
  /** Clears the line before something else is printed. */
  hide(): void
  end(): void
}

const PATIENCE = 500
/** Milliseconds between drawings. */
const PACE = 100
const WIDTH = 24

export function createProgress(io: Io, total: number): Progress {
  const isShown = total > 1 && !io.env['CI'] && io.stderr.isTTY
  const start = io.now()
  let last = -Infinity
  let isDrawn = false
  const hide = () => {
    if (!isDrawn) return
    io.stderr.write('\r\u001b[K')
    isDrawn = false
  }
  return {
    step(done, what) {
      const now = io.now()
      if (!isShown || now - start < PATIENCE || now - last < PACE) return
      last = now
      const full = Math.round((done / total) * WIDTH)
      const name = what.replace(/[\u0000-\u001f\u007f-\u009f]/g, '?').slice(-30)
      io.stderr.write(`\r\u001b[K[${'#'.repeat(full)}${'.'.repeat(WIDTH - full)}] ${done} of ${total}  ${name}`)
      isDrawn = true
    },
    hide,
    end: hide,
  }
}
