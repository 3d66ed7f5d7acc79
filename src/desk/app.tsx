// The page: a bar with the three places, the place that is looked at, and one status line.

import { render } from 'preact'
import { useEffect } from 'preact/hooks'
import { bringBack, goTo, saveNow, takeBack } from './actions.ts'
import { BookPlace } from './book/spread.tsx'
import { listenToKeys } from './keys.ts'
import { type Page, PageContext, type PageTools, usePage } from './page.ts'
import { Dialogs } from './panels/dialogs.tsx'
import { Said } from './panels/parts.tsx'
import { SaveState } from './panels/save-state.tsx'
import { Notices } from './panels/saving.tsx'
import { Shelf } from './panels/shelf.tsx'
import { Write } from './panels/write.tsx'
import { createState, type PlaceName } from './state.ts'
import { createVoice } from './voice.ts'

/** Draws the page into an element. `onPage` hands it to tests and to whoever starts it. */
export function mount(root: Element, tools: PageTools): Page {
  const page: Page = { state: createState(), tools, voice: createVoice() }
  render(
    <PageContext.Provider value={page}>
      <Desk />
    </PageContext.Provider>,
    root,
  )
  return page
}

function Desk() {
  const page = usePage()
  const { place } = page.state
  useEffect(() => listenToKeys(page), [page])
  useEffect(() => {
    const title = page.state.title.value
    document.title = title === undefined ? 'The writing desk' : `${title}, the writing desk`
  })
  return (
    <div class="desk">
      <Bar />
      <div class="notices">
        <Notices />
      </div>
      <main class={`place-${place.value}`}>
        {place.value === 'shelf' && <Shelf />}
        {place.value === 'write' && <Write />}
        {place.value === 'book' && <BookPlace />}
      </main>
      <p class="status" role="status">
        <Said text={page.voice.said.value} />
      </p>
      <Dialogs />
    </div>
  )
}

const PLACES: readonly (readonly [PlaceName, string])[] = [
  ['shelf', 'Shelf'],
  ['write', 'Write'],
  ['book', 'Book'],
]

function Bar() {
  const page = usePage()
  const { place, session, title, dialog } = page.state
  const open = session.value
  return (
    <header class="bar" data-area="bar">
      <nav aria-label="Places">
        {PLACES.map(([name, label]) => (
          <button
            type="button"
            key={name}
            aria-current={place.value === name ? 'page' : undefined}
            disabled={name !== 'shelf' && open === undefined}
            onClick={() => goTo(page, name)}
          >
            {label}
          </button>
        ))}
      </nav>
      <h1>{title.value ?? 'The writing desk'}</h1>
      {open && (
        <>
          <SaveState />
          <div class="tools">
            {page.tools.folder.kind === 'single' && (
              <button type="button" onClick={() => saveNow(page)}>
                Save
              </button>
            )}
            <button type="button" disabled={!open.canUndo.value} onClick={() => takeBack(page)}>
              Undo
            </button>
            <button type="button" disabled={!open.canRedo.value} onClick={() => bringBack(page)}>
              Redo
            </button>
            <button
              type="button"
              onClick={() => {
                dialog.value = { kind: 'print' }
              }}
            >
              Print
            </button>
          </div>
        </>
      )}
    </header>
  )
}
