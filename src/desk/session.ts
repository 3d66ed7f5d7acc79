// One open story: its editor, its keeper, and the checks that follow the typing.

import type { EditorView } from '@codemirror/view'
import { signal } from '@preact/signals'
import { whenAsked } from './asked.ts'
import { findPlaceAround, openPlace } from './cards.ts'
import { type CheckTools, check, follow, toChecking } from './checks.ts'
import type { Card, CheckAnswer, StoryText } from './core/questions.ts'
import { createEditor, putEdits, setReadOnly } from './editor/editor.ts'
import type { FindPicture } from './editor/picture.ts'
import type { Keeper, KeeperEvent } from './folder/types.ts'
import type { Session } from './state.ts'
import { findTitle } from './title.ts'

export interface SessionTools extends CheckTools {
  readonly cspNonce: string | undefined
  readonly picture: FindPicture
  /** A marked word was pressed. */
  onPlace(): void
  /** Somebody has typed: nothing is said aloud for a while. */
  onTyping(): void
  /** After the disk has a new version. */
  onSaved(path: string): void
}

export function openSession(keeper: Keeper, tools: SessionTools): Session {
  const stops: (() => void)[] = []
  const view = createEditor({
    text: keeper.text(),
    isReadOnly: keeper.state().kind === 'read-only',
    cspNonce: tools.cspNonce,
    picture: tools.picture,
    complete: (at) => whenAsked(tools.ask({ kind: 'complete', story: session.toStory(), at })),
    onEdits(edits, isTyped) {
      if (isTyped) inner.typed = performance.now()
      if (isTyped) tools.onTyping()
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
  const inner = toChecking(session, tools)
  stops.push(keeper.subscribe((event) => hear(event, session, tools)))
  void check(inner)
  return session
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
    opening: signal(0),
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

function openPlaceAt(start: number, session: Session, tools: SessionTools): void {
  const at = findPlaceAround(session.check.peek(), start)
  if (at < 0) return
  openPlace(session, at, tools)
  tools.onPlace()
}
