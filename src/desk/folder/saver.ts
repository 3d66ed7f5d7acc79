// Saves an open story by itself, and notices what other programs do to its file. Nothing of theirs is ever written over.

import type { DraftWriter } from './draft-writer.ts'
import { isWritable, toBytes } from './open-bytes.ts'
import { isDirty, isOnDisk, isSame, reportState, type Session, settleOn } from './session.ts'
import { createTimer } from './timer.ts'
import type { FileBytes, Saved } from './types.ts'

/** After the last change, and after the first one that is not saved. */
const REST = 1500
const MOST = 10_000
/** Until a folder that did not answer, or had no room, is asked again. */
const AGAIN = 5000

export interface Saver {
  soon(): void
  /** Does nothing in a conflict: nothing is written until the maker has chosen. */
  save(): Promise<void>
  /** The file may have been changed. */
  look(): Promise<void>
  /** Runs something between saves and looks. */
  inTurn<Value>(job: () => Promise<Value>): Promise<Value>
  stop(): void
}

export function createSaver(session: Session, drafts: DraftWriter): Saver {
  const { folder, clock } = session.tools

  async function save(): Promise<void> {
    stop()
    // Somebody may have taken the lock off.
    if (session.locked && !session.tabProblem) return look()
    if (session.locked || session.conflict || !isDirty(session)) return
    // Changed and changed back: there is nothing to write, if the disk is still as it was.
    if (isOnDisk(session)) return look()
    const { revision, base, name, kept, saving: before } = session
    const bytes = toBytes(kept)
    session.saving = bytes
    void drafts.now()
    const saved = await folder.save(name, bytes, base)
    if (saved.kind === 'saved') return takeVersion({ name, bytes, version: saved.version }, revision)
    if (saved.kind === 'changed') return meet(saved.theirs, [bytes, before])
    // An answer that was lost may have been a yes: what was written stays known.
    if (saved.kind === 'refused') session.saving = before
    fail(saved)
  }

  /** The disk holds this, and it is ours. */
  function takeVersion({ bytes, version }: FileBytes, revision?: number): Promise<void> | undefined {
    Object.assign(session, { base: version, disk: bytes, saving: undefined, trouble: undefined, conflict: undefined })
    session.savedAt = clock.now()
    if (session.revision === revision || isOnDisk(session)) return settleSaved()
    session.since = clock.now()
    reportState(session)
    soon()
    return undefined
  }

  async function settleSaved(): Promise<void> {
    stop()
    session.since = undefined
    session.trouble = undefined
    reportState(session)
    await drafts.settle()
  }

  /** Other bytes on the disk than those that we changed: our own of a save whose answer was lost, or another program's. */
  function meet(theirs: FileBytes | undefined, ours: readonly (Uint8Array | undefined)[]): Promise<void> | undefined {
    if (theirs && ours.some((bytes) => isSame(theirs.bytes, bytes))) return takeVersion(theirs)
    stop()
    session.saving = undefined
    session.conflict = { theirs }
    session.trouble = undefined
    session.since ??= clock.now()
    drafts.soon()
    reportState(session)
    return undefined
  }

  function fail({ kind, problem }: Extract<Saved, { kind: 'refused' | 'lost' }>): void {
    session.trouble = { kind, problem }
    drafts.soon()
    again.start()
    reportState(session)
  }

  async function look(): Promise<void> {
    const { name, base } = session
    const read = await folder.read(name)
    if (read.ok && read.value.version === base) return findAsBefore(read.value)
    if (read.ok) {
      // Where nobody has written here, the screen shows what the disk has.
      if (session.isTouched || !settleOn(session, read.value, 'renewed'))
        await meet(read.value, [toBytes(session.kept), session.saving])
      return
    }
    const [problem] = read.problems
    if (problem?.code === 'folder-lost') fail({ kind: 'lost', problem })
    else if (problem?.code === 'missing-file' && base !== 'new' && !session.locked) await meet(undefined, [])
  }

  /** The disk holds what the text began from: still, or again. */
  async function findAsBefore({ bytes, locked }: FileBytes): Promise<void> {
    session.disk = bytes
    if (session.locked && !session.tabProblem && !locked && isWritable(session.name, bytes)) {
      session.locked = undefined
      reportState(session)
    }
    const isStuck = session.conflict !== undefined || session.trouble?.kind === 'lost'
    session.conflict = undefined
    if (isStuck) session.trouble = undefined
    if (isDirty(session) && isOnDisk(session)) return settleSaved()
    if (!isStuck) return
    if (isDirty(session)) soon()
    reportState(session)
  }

  let last: Promise<unknown> = Promise.resolve()
  /** One after another: what a look finds is no news of a save under way. */
  function inTurn<Value>(job: () => Promise<Value>): Promise<Value> {
    const done = last.then(job)
    last = done
    return done
  }
  const byItself = (): void => void inTurn(save)
  const rest = createTimer(clock, REST, byItself)
  const most = createTimer(clock, MOST, byItself)
  const again = createTimer(clock, AGAIN, () => void inTurn(isDirty(session) ? save : look))
  function soon(): void {
    // Where a save is a download, only the maker says when.
    if (session.conflict || session.locked || folder.kind === 'single') return
    rest.restart()
    most.start()
  }
  function stop(): void {
    for (const timer of [rest, most, again]) timer.stop()
  }
  return { soon, save: () => inTurn(save), look: () => inTurn(look), inTurn, stop }
}
