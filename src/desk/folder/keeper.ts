// One open story: it saves by itself, keeps a draft of what is in no file, and never writes over another program's change.

import { toMissing, toShownPath } from '../../files/index.ts'
import { fail, type Problem, type Result, succeed, toProblem } from '../../problem/index.ts'
import { createDraftWriter } from './draft-writer.ts'
import { createKnownTexts } from './known-texts.ts'
import { changeText, openText } from './line-ends.ts'
import { type OpenedText, openBytes, toBytes } from './open-bytes.ts'
import { createSaver } from './saver.ts'
import { isDirty, isSame, reportState, type Session, toState } from './session.ts'
import type { Draft, FileBytes, Keeper, KeeperEvent, KeeperTools, OpenKeeper } from './types.ts'
import { createWaysOut } from './ways-out.ts'

export const openKeeper: OpenKeeper = async (name, tools, fresh) => {
  const { folder, locks } = tools
  const release = await locks.take(`${folder.id}/${name}`)
  const opened = await open(name, tools, release === undefined, fresh)
  if (opened.ok) return succeed(keep(opened.value, release ?? (() => undefined)))
  release?.()
  return opened
}

interface Opened {
  readonly session: Session
  /** Why there are no drafts. */
  readonly noDrafts: readonly Problem[]
}

async function open(name: string, tools: KeeperTools, isTaken: boolean, fresh?: string): Promise<Result<Opened>> {
  const { folder, drafts } = tools
  const read = await folder.read(name)
  const isMissing = !read.ok && read.problems[0]?.code === 'missing-file'
  if (!read.ok && !isMissing) return read
  if (read.ok && fresh !== undefined)
    return fail({ code: 'foreign-file', message: `${toShownPath(name)} is there already` })
  const file = read.ok ? read.value : undefined
  const listed = isTaken ? succeed<readonly Draft[]>([]) : await drafts.list(folder.id)
  const left = listed.ok ? listed.value.filter((draft) => draft.name === name) : []
  const noDrafts = listed.ok ? [] : listed.problems
  const own = left.filter(({ bytes }) => !isSame(bytes, file?.bytes))
  for (const { id, bytes } of left) if (isSame(bytes, file?.bytes)) await drafts.remove(id)
  const session = toSession(name, tools, isTaken)
  if (file) {
    const opened = openBytes(name, file.bytes)
    if (!opened.ok) return opened
    begin(session, opened.value, file, own)
  } else if (fresh !== undefined) {
    Object.assign(session, { kept: openText(fresh), since: tools.clock.now(), isTouched: true, found: own })
  } else {
    const [first, ...others] = own
    if (!first) return fail(toMissing(name))
    const opened = openBytes(name, first.bytes)
    if (!opened.ok) return opened
    beginWithDraft(session, opened.value, first, others)
  }
  return succeed({ session, noDrafts })
}

function toSession(name: string, tools: KeeperTools, isTaken: boolean): Session {
  const message = `${toShownPath(name)} is open in another tab or window`
  const note = 'It can be read here. Close it there to write here.'
  const tabProblem = isTaken ? toProblem({ code: 'in-use', message, note }) : undefined
  const nothing = {
    isTouched: false,
    since: undefined,
    savedAt: undefined,
    saving: undefined,
    conflict: undefined,
    trouble: undefined,
  }
  return {
    ...{ tools, name, id: tools.createId(), kept: openText(''), base: 'new', disk: undefined, revision: 0 },
    ...{ ...nothing, locked: tabProblem, tabProblem, found: [], known: createKnownTexts(), emit: () => undefined },
  }
}

function begin(session: Session, { kept, locked }: OpenedText, file: FileBytes, found: readonly Draft[]): void {
  const { version: base, bytes: disk } = file
  Object.assign(session, { kept, base, disk, found, locked: session.tabProblem ?? locked ?? file.locked })
}

/** A story of which there is only a draft: it was never saved, or is gone from the disk. */
function beginWithDraft(session: Session, { kept }: OpenedText, draft: Draft, found: readonly Draft[]): void {
  const { base, id, at: since } = draft
  const conflict = base === 'new' ? undefined : { theirs: undefined }
  Object.assign(session, { kept, base, id, since, isTouched: true, found, conflict })
}

function keep({ session, noDrafts }: Opened, release: () => void): Keeper {
  const { folder } = session.tools
  const listeners = new Set<(event: KeeperEvent) => void>()
  session.emit = (event) => {
    for (const listener of [...listeners]) listener(event)
  }
  const drafts = createDraftWriter(session)
  const saver = createSaver(session, drafts)
  const original = session.kept.text
  session.known.remember(session.kept)
  const unwatch = folder.watch((names) => {
    if (names === undefined || names.includes(session.name)) void saver.look()
  })
  const soon = (): void => {
    drafts.soon()
    saver.soon()
  }
  if (isDirty(session)) soon()
  return {
    name: session.name,
    original,
    text: () => session.kept.text,
    state: () => toState(session),
    bytes: () => toBytes(session.kept),
    change(edits) {
      if (session.locked || edits.length === 0) return
      const { text } = session.kept
      if (edits.some(({ start, end, text: put }) => `${text.slice(start, end)}${put}`.includes('\n')))
        session.known.remember(session.kept)
      session.kept = session.known.recall(changeText(session.kept, edits))
      session.revision++
      session.isTouched = true
      const before = session.since
      session.since ??= session.tools.clock.now()
      soon()
      if (before === undefined) reportState(session)
    },
    async save() {
      await saver.save()
      return toState(session)
    },
    ...createWaysOut(session, saver, drafts),
    subscribe(listener) {
      listeners.add(listener)
      for (const problem of noDrafts) listener({ kind: 'no-drafts', problem })
      return () => listeners.delete(listener)
    },
    async close() {
      unwatch()
      if (folder.kind !== 'single') await saver.save()
      saver.stop()
      drafts.stop()
      await drafts.now()
      listeners.clear()
      release()
    },
  }
}
