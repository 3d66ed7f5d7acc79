// Writes what is on the screen and in no file into the browser, soon after each change, and takes it away when a file has it.

import { toBytes } from './open-bytes.ts'
import { isDirty, type Session } from './session.ts'
import { createTimer } from './timer.ts'

/** So that a draft stands within half a second, the writing among it. */
const DELAY = 200

export interface DraftWriter {
  /** Something was changed, or the version that it changes. */
  soon(): void
  now(): Promise<void>
  /** The text is in a file; whatever is written meanwhile stays. */
  settle(): Promise<void>
  stop(): void
}

export function createDraftWriter(session: Session): DraftWriter {
  const { drafts, clock, folder } = session.tools
  let last: Promise<void> = Promise.resolve()
  let isPut = false
  let hasFailed = false
  /** One after another, so that an older draft never comes last. */
  const inTurn = (job: () => Promise<void>): Promise<void> => (last = last.then(job))

  async function put(): Promise<void> {
    if (!isDirty(session)) return
    const { id, name, kept, base, saving, revision } = session
    const draft = { id, folder: folder.id, name, bytes: toBytes(kept), base, at: clock.now() }
    isPut = true
    const done = await drafts.put(saving ? { ...draft, saving } : draft)
    if (!done.ok && !hasFailed) for (const problem of done.problems) session.emit({ kind: 'no-drafts', problem })
    hasFailed = !done.ok
    if (session.revision !== revision) timer.start()
  }
  const timer = createTimer(clock, DELAY, () => void inTurn(put))
  return {
    soon: timer.start,
    now: () => inTurn(put),
    settle: () =>
      inTurn(async () => {
        if (isDirty(session) || !isPut) return
        timer.stop()
        const done = await drafts.remove(session.id)
        if (done.ok) isPut = false
        if (isDirty(session)) timer.start()
      }),
    stop: timer.stop,
  }
}
