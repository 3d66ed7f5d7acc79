// Ways out of trouble that the maker chooses: take what the disk has, save mine as a copy, take a draft or throw it away.

import { fail, type Result, succeed } from '../../problem/index.ts'
import type { DraftWriter } from './draft-writer.ts'
import { openBytes, toBytes } from './open-bytes.ts'
import type { Saver } from './saver.ts'
import { isDirty, isSame, reportState, type Session, settleOn, showText } from './session.ts'
import type { Draft, FileBytes, FoundDraft, Keeper } from './types.ts'

/** More copies of one story than anybody makes. */
const MOST_COPIES = 99

type WaysOut = Pick<Keeper, 'takeTheirs' | 'saveCopy' | 'takeDraft' | 'dropDraft' | 'found'>

export function createWaysOut(session: Session, saver: Saver, drafts: DraftWriter): WaysOut {
  const { tools, name } = session
  const { folder, clock } = tools

  async function takeTheirs(): Promise<Result<undefined>> {
    const read = await folder.read(name)
    if (!read.ok) return read
    if (!settleOn(session, read.value, 'theirs')) return openBytes(name, read.value.bytes) as Result<undefined>
    saver.stop()
    await drafts.settle()
    return succeed(undefined)
  }

  async function saveCopy(): Promise<Result<string>> {
    const { revision } = session
    const bytes = toBytes(session.kept)
    for (const copy of toCopyNames(session)) {
      const saved = await folder.save(copy, bytes, 'new')
      if (saved.kind === 'changed') continue
      if (saved.kind !== 'saved') return { ok: false, problems: [saved.problem] }
      if (copy === name) {
        settleOn(session, { name, bytes, version: saved.version }, 'theirs')
        session.savedAt = clock.now()
        reportState(session)
        await drafts.settle()
      } else if (!session.tabProblem && session.revision === revision) await takeTheirs()
      return succeed(copy)
    }
    return fail({ code: 'foreign-file', message: `There are ${MOST_COPIES} copies of this story already` })
  }

  function found(): FoundDraft | undefined {
    const [first] = session.found
    if (!first) return undefined
    const opened = openBytes(name, first.bytes)
    const text = opened.ok ? opened.value.kept.text : ''
    return { text, at: first.at, isBehind: isBehind(first, session) }
  }

  async function takeDraft(): Promise<Result<undefined>> {
    const [first, ...others] = session.found
    if (!first) return fail({ code: 'missing-file', message: 'There is no draft to take' })
    const opened = openBytes(name, first.bytes)
    if (!opened.ok) return opened
    const parked = await park()
    if (!parked.ok) return parked
    session.found = [...(parked.value ? [parked.value] : []), ...others]
    if (!session.conflict && isBehind(first, session)) session.conflict = { theirs: toOnDisk(session) }
    // What the disk held of that version is not known.
    if (session.conflict) Object.assign(session, { base: first.base, disk: undefined })
    session.since = clock.now()
    session.isTouched = true
    showText(session, opened.value.kept, 'draft')
    await drafts.now()
    await tools.drafts.remove(first.id)
    session.emit({ kind: 'draft-settled' })
    reportState(session)
    saver.soon()
    return succeed(undefined)
  }

  /** What is on the screen and in no file, as a draft of its own. */
  async function park(): Promise<Result<Draft | undefined>> {
    if (!isDirty(session)) return succeed(undefined)
    const id = tools.createId()
    const draft = { id, folder: folder.id, name, bytes: toBytes(session.kept), base: session.base, at: clock.now() }
    const done = await tools.drafts.put(draft)
    return done.ok ? succeed(draft) : done
  }

  async function dropDraft(): Promise<Result<undefined>> {
    const [first, ...others] = session.found
    if (!first) return succeed(undefined)
    const removed = await tools.drafts.remove(first.id)
    // It is not offered again at this opening, whatever the browser says.
    session.found = others
    session.emit({ kind: 'draft-settled' })
    return removed
  }

  const { inTurn } = saver
  return {
    found,
    takeTheirs: () => inTurn(takeTheirs),
    saveCopy: () => inTurn(saveCopy),
    takeDraft: () => (session.locked ? Promise.resolve(toLocked(session)) : inTurn(takeDraft)),
    dropDraft: () => inTurn(dropDraft),
  }
}

const toLocked = ({ locked }: Session): Result<undefined> => ({ ok: false, problems: locked ? [locked] : [] })

/** Whether the disk holds other bytes than those that the draft changes, and than those that a last save was writing. */
const isBehind = ({ base, saving }: Draft, session: Session): boolean =>
  base !== session.base && !isSame(saving, session.disk)

const toOnDisk = ({ name, base, disk }: Session): FileBytes | undefined => disk && { name, bytes: disk, version: base }

function* toCopyNames({ name, conflict, base }: Session): Generator<string> {
  if (base !== 'new' && conflict && conflict.theirs === undefined) yield name
  const [, stem = name, ending = ''] = /^(.*?)(\.[^./]+)?$/.exec(name) ?? []
  for (let number = 1; number <= MOST_COPIES; number++)
    yield `${stem} (my copy${number === 1 ? '' : ` ${number}`})${ending}`
}
