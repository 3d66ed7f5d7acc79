// How the open story stands on the disk, in plain sentences, and what can be done where something is in the way.

import type { ComponentChildren } from 'preact'
import type { Problem, Result } from '../../problem/index.ts'
import { saveNow } from '../actions.ts'
import { toClock } from '../clock.ts'
import { type Page, usePage } from '../page.ts'
import type { Session } from '../state.ts'
import { toAllTold, toTold, tryOut } from '../told.ts'
import { Said } from './parts.tsx'

/** One at a time, the most pressing first. */
export function Notices() {
  const page = usePage()
  const session = page.state.session.value
  return (
    <>
      {page.state.dialog.value === undefined && <Trouble />}
      {session && <StoryNotice session={session} />}
    </>
  )
}

/** Stays until it is put away; in a sheet where one lies over the page. */
export function Trouble() {
  const { state } = usePage()
  const trouble = state.trouble.value
  if (trouble === undefined) return null
  return (
    <Notice text={trouble}>
      <button
        type="button"
        onClick={() => {
          state.trouble.value = undefined
        }}
      >
        Put this away
      </button>
    </Notice>
  )
}

/** A way out of trouble. What did not work is told, and never passed over as done. */
async function take<Value>(
  page: Page,
  way: () => Promise<Result<Value>>,
  toSaid: (value: Value) => string,
): Promise<void> {
  const wrong = await tryOut(async () => {
    const done = await way()
    if (!done.ok) return toAllTold(done.problems)
    page.voice.say(toSaid(done.value))
    return undefined
  })
  if (wrong !== undefined) page.state.trouble.value = wrong
}

function Notice({ text, children }: { readonly text: string; readonly children?: ComponentChildren }) {
  return (
    <div class="notice" role="alert">
      <p>
        <Said text={text} />
      </p>
      <div class="row">{children}</div>
    </div>
  )
}

function StoryNotice({ session }: { readonly session: Session }) {
  const saved = session.saved.value
  const noDrafts = session.noDrafts.value
  if (session.draft.value) return <DraftNotice session={session} />
  if (saved.kind === 'conflict') return <ConflictNotice session={session} />
  if (saved.kind === 'lost')
    return (
      <Notice text={`${toTold(saved.problem)} Your text is still here.`}>
        <Again />
        <Download session={session} />
      </Notice>
    )
  if (saved.kind === 'read-only')
    return (
      <Notice text={toReadOnly(saved.problem)}>
        {saved.problem.code !== 'in-use' && saved.problem.code !== 'binary' && <Again />}
        <Copy session={session} />
        <Download session={session} />
      </Notice>
    )
  if (saved.kind === 'unsaved' && saved.problem)
    return (
      <Notice text={`Not saved: ${toTold(saved.problem)} ${toDraftText(noDrafts)}`}>
        <Again />
        <Copy session={session} />
        <Download session={session} />
      </Notice>
    )
  return noDrafts === undefined ? null : (
    <Notice text={`${noDrafts} Save often: a crash would take what is not saved.`} />
  )
}

/** What the file itself forbids; a problem that says what to do needs no more. */
const toReadOnly = (problem: Problem): string =>
  problem.note === undefined
    ? `${toTold(problem)} You can read it here. To write in it, allow changes to it and try again, or download it.`
    : toTold(problem)

/** Said only where it is so. */
const toDraftText = (noDrafts: string | undefined): string =>
  noDrafts === undefined
    ? 'A draft is kept in this browser.'
    : `${noDrafts.replace(/[.]?$/, '.')} Download it before you close this page.`

function DraftNotice({ session }: { readonly session: Session }) {
  const page = usePage()
  const draft = session.draft.value
  if (draft === undefined) return null
  const behind = draft.isBehind ? ' The file has been changed since by another program.' : ''
  return (
    <Notice text={`There are changes of ${toClock(draft.at)} that were not saved.${behind}`}>
      <button
        type="button"
        class="strong"
        onClick={() => take(page, session.keeper.takeDraft, () => 'Your changes are back.')}
      >
        Take them
      </button>
      <button
        type="button"
        onClick={() => {
          page.state.dialog.value = {
            kind: 'both',
            title: `Changes of ${toClock(draft.at)}`,
            names: ['Not saved', 'In the file'],
            texts: [draft.text, session.view.state.doc.toString()],
          }
        }}
      >
        Look at them
      </button>
      <button type="button" onClick={() => take(page, session.keeper.dropDraft, () => 'They are thrown away.')}>
        Throw them away
      </button>
    </Notice>
  )
}

function ConflictNotice({ session }: { readonly session: Session }) {
  const page = usePage()
  const saved = session.saved.value
  if (saved.kind !== 'conflict') return null
  const { theirs } = saved
  if (theirs === undefined)
    return (
      <Notice text="The file of this story is gone. Yours is safe here.">
        <Copy session={session} />
        <Download session={session} />
      </Notice>
    )
  return (
    <Notice text="Another program has changed this story. Yours is safe here.">
      <button
        type="button"
        onClick={() => {
          page.state.dialog.value = {
            kind: 'both',
            title: 'Two forms of this story',
            names: ['Yours', 'On the disk'],
            texts: [session.view.state.doc.toString(), theirs],
          }
        }}
      >
        Look at both
      </button>
      <Copy session={session} />
      <button
        type="button"
        onClick={() =>
          take(page, session.keeper.takeTheirs, () => 'The story is as it is on the disk. Undo brings yours back.')
        }
      >
        Take theirs
      </button>
    </Notice>
  )
}

interface SessionProps {
  readonly session: Session
}

function Again() {
  const page = usePage()
  return (
    <button type="button" onClick={() => saveNow(page)}>
      Try again
    </button>
  )
}

function Copy({ session }: SessionProps) {
  const page = usePage()
  const save = (): Promise<void> =>
    take(page, session.keeper.saveCopy, (name) => {
      page.state.shelfAge.value++
      return `Saved as ${name}.`
    })
  return (
    <button type="button" onClick={save}>
      Save mine as a copy
    </button>
  )
}

function Download({ session }: SessionProps) {
  const { tools } = usePage()
  const name = session.keeper.name.split('/').at(-1) ?? 'story.md'
  return (
    <button type="button" onClick={() => tools.download(name, session.keeper.bytes(), 'text/markdown')}>
      Download it
    </button>
  )
}
