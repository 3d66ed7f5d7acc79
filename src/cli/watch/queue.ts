// Gathers what has changed for a moment, then hands it on; while that is worked on, new changes wait their turn.

export interface Queue {
  add(items: Iterable<string>): void
  /** Waits until nothing is left to do. */
  idle(): Promise<void>
}

/** Milliseconds: an editor that empties a file and then fills it needs a moment. */
const SETTLE = 10

/** `work` is never run twice at once, and gets every item once however often it was added meanwhile. */
export function createQueue(work: (items: readonly string[]) => Promise<void>): Queue {
  const waiting = new Set<string>()
  let running: Promise<void> | undefined

  async function run(): Promise<void> {
    while (waiting.size > 0) {
      await new Promise((done) => setTimeout(done, SETTLE))
      const items = [...waiting]
      waiting.clear()
      await work(items)
    }
    running = undefined
  }
  return {
    add(items) {
      for (const item of items) waiting.add(item)
      if (waiting.size > 0) running ??= run()
    },
    idle: async () => {
      while (running) await running
    },
  }
}
