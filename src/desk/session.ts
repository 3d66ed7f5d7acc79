// One open story: its editor, its keeper, and the checks that follow the typing.

import { redoDepth, undoDepth } from '@codemirror/commands'
import type { EditorView } from '@codemirror/view'
import { batch, signal } from '@preact/signals'
import type { Range } from '../problem/index.ts'
import type { Card, CheckAnswer, CheckedText, StoryText } from './core/questions.ts'
import { createEditor, putEdits, setReadOnly } from './editor/editor.ts'
import { findOpen, setMarks, setOpenPlace } from './editor/marks.ts'
import { setPages } from './editor/shown.ts'
import type { Keeper, KeeperEvent } from './folder/types.ts'
import type { Asker, Session } from './state.ts'

/** After so much rest a text is checked; while somebody types on, at least as often as the second. In milliseconds. */
const REST = 80
const LONGEST = 400

export interface SessionTools extends Asker {
  readonly cspNonce: string | undefined
  /** A marked word was pressed. */
  onPlace(): void
  /** Somebody has typed: nothing is said aloud for a while. */
  onTyping(): void
  onFault(error: unknown): void
  /** After the disk has a new version. */
  onSaved(path: string): void
}

interface Inner {
  readonly session: Session
  readonly tools: SessionTools
  timer: ReturnType<typeof setTimeout> | undefined
  /** When the oldest change was made that no check has seen. */
  waiting: number | undefined
}

export function openSession(keeper: Keeper, tools: SessionTools): Session {
  const stops: (() => void)[] = []
  const view = createEditor({
    text: keeper.text(),
    isReadOnly: keeper.state().kind === 'read-only',
    cspNonce: tools.cspNonce,
    complete: (at) => whenAsked(tools.ask({ kind: 'complete', story: session.toStory(), at })),
    onEdits(edits) {
      tools.onTyping()
      keeper.change(edits)
    },
    onText: () => follow(inner),
    onPlace: (start) => openPlaceAt(start, session, tools),
  })
  const session = toSession(keeper, view, {
    recheck: () => follow(inner),
    stop() {
      clearTimeout(inner.timer)
      for (const one of stops) one()
    },
  })
  const inner: Inner = { session, tools, timer: undefined, waiting: undefined }
  stops.push(keeper.subscribe((event) => hear(event, session, tools)))
  void check(inner)
  return session
}

/** As a maker knows the story: the title in the settings, the first heading, or the name of the file. */
function findTitle({ name, text }: Pick<Keeper, 'name' | 'text'>): string {
  const source = text()
  const [, own] = /^---\n(?:.*\n)*?title:[ \t]*(\S.*)\n(?:.*\n)*?---$/m.exec(source) ?? []
  const [, heading] = /^# +(\S.*)$/m.exec(source) ?? []
  return own?.replace(/^(["'])(.*)\1$/, '$2') ?? heading ?? name
}

function toSession(keeper: Keeper, view: EditorView, { recheck, stop }: { recheck(): void; stop(): void }): Session {
  const version = signal(1)
  const reader = signal<string | undefined>(undefined)
  return {
    keeper,
    view,
    version,
    reader,
    title: signal(findTitle(keeper)),
    saved: signal(keeper.state()),
    check: signal<CheckAnswer | undefined>(undefined),
    place: signal<number | undefined>(undefined),
    card: signal<Card | undefined>(undefined),
    goesOn: signal(false),
    isFile: signal(false),
    canUndo: signal(false),
    canRedo: signal(false),
    draft: signal(keeper.found()),
    noDrafts: signal<string | undefined>(undefined),
    toStory(): StoryText {
      const chosen = reader.peek()
      const text = view.state.doc.toString()
      return { path: keeper.name, text, version: version.peek(), ...(chosen !== undefined && { reader: chosen }) }
    },
    recheck,
    async close() {
      stop()
      await keeper.close()
      view.destroy()
    },
  }
}

function hear(event: KeeperEvent, session: Session, tools: SessionTools): void {
  if (event.kind === 'state') {
    const before = session.saved.peek()
    session.saved.value = event.state
    setReadOnly(session.view, event.state.kind === 'read-only')
    if (event.state.kind === 'saved' && event.state.at !== undefined && before !== event.state)
      tools.onSaved(session.keeper.name)
  } else if (event.kind === 'text') putEdits(session.view, event.edits, true)
  else if (event.kind === 'draft-settled') session.draft.value = session.keeper.found()
  else session.noDrafts.value = event.problem.message
}

function follow(inner: Inner): void {
  const { session } = inner
  const { state } = session.view
  batch(() => {
    session.version.value++
    session.title.value = findTitle({ name: session.keeper.name, text: () => state.doc.sliceString(0, 4000) })
    session.canUndo.value = undoDepth(state) > 0
    session.canRedo.value = redoDepth(state) > 0
  })
  const now = performance.now()
  inner.waiting ??= now
  clearTimeout(inner.timer)
  inner.timer = setTimeout(() => void check(inner), Math.max(0, Math.min(REST, inner.waiting + LONGEST - now)))
}

async function check(inner: Inner): Promise<void> {
  const { session, tools } = inner
  inner.waiting = undefined
  const story = session.toStory()
  try {
    const answer = await whenAsked(tools.ask({ kind: 'check', story }))
    if (answer === undefined || answer.version !== session.version.peek()) return
    show(answer, session, tools)
  } catch (error) {
    tools.onFault(error)
  }
}

function show(answer: CheckAnswer, session: Session, tools: SessionTools): void {
  const { view } = session
  const open = session.place.peek()
  const anchor = findOpen(view)
  const pages = answer.checked ? answer.pages : undefined
  view.dispatch({ effects: [setPages.of(pages), setMarks.of(answer.checked ? answer : undefined)] })
  session.check.value = answer
  if (open === undefined) return
  const at = answer.checked ? findNext(answer, anchor ?? { start: 0, end: 0 }, session.goesOn.peek()) : -1
  session.goesOn.value = false
  if (at >= 0) openPlace(session, at, tools)
  else closePlace(session)
}

/** The same place; where it is gone and somebody goes from place to place, the next one. */
function findNext({ places }: CheckedText, anchor: Range, goesOn: boolean): number {
  const same = places.findIndex(({ start, end }) => start === anchor.start && end === anchor.end)
  if (same >= 0 || !goesOn) return same
  const next = places.findIndex(({ start }) => start >= anchor.start)
  return next >= 0 ? next : places.length - 1
}

function openPlaceAt(start: number, session: Session, tools: SessionTools): void {
  const answer = session.check.peek()
  const at = answer?.checked ? answer.places.findIndex((place) => place.start <= start && start <= place.end) : -1
  if (at < 0) return
  openPlace(session, at, tools)
  tools.onPlace()
}

/** Opens the card of a place; the text keeps its cursor. */
export function openPlace(session: Session, at: number, tools: Asker & Pick<SessionTools, 'onFault'>): void {
  session.place.value = at
  session.view.dispatch({ effects: setOpenPlace.of(at) })
  const story = session.toStory()
  whenAsked(tools.ask({ kind: 'card', story, place: at })).then((answer) => {
    if (session.place.peek() !== at || session.version.peek() !== story.version) return
    session.card.value = answer?.ok ? answer.value : undefined
  }, tools.onFault)
}

export function closePlace(session: Session): void {
  batch(() => {
    session.place.value = undefined
    session.card.value = undefined
  })
  session.view.dispatch({ effects: setOpenPlace.of(undefined) })
}

/** Undefined where a newer question has taken its place: then there is a newer answer. */
export async function whenAsked<Value>(asked: Promise<Value>): Promise<Value | undefined> {
  try {
    return await asked
  } catch (error) {
    if (error instanceof Error && error.name === 'Dropped') return undefined
    throw error
  }
}
