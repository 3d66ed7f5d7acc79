// Write: the story on the left, on the right one panel; on a narrow screen the panel lies below.

import { EditorView } from '@codemirror/view'
import { useEffect, useRef } from 'preact/hooks'
import { showPanel } from '../actions.ts'
import { findOpen } from '../editor/marks.ts'
import { newPage, toggleNote } from '../editor/still.ts'
import { usePage } from '../page.ts'
import type { PanelName } from '../state.ts'
import { About } from './about.tsx'
import { Places } from './places.tsx'
import { Words } from './words.tsx'

export function Write() {
  const { state } = usePage()
  const session = state.session.value
  const place = useRef<HTMLDivElement>(null)
  useEffect(() => {
    if (!session || !place.current) return
    place.current.append(session.view.dom)
    // Where there is a keyboard; on a tablet the keys of the screen would cover the story.
    if (matchMedia('(pointer: fine)').matches) session.view.focus()
  }, [session])
  const isUp = state.isPanelUp.value
  const opening = session?.opening.value
  // On a narrow screen the panel comes up over the lower half: what it is about must still be seen.
  useEffect(() => {
    const open = session && findOpen(session.view)
    if (open) session.view.dispatch({ effects: EditorView.scrollIntoView(open.start, { y: 'nearest', yMargin: 40 }) })
  }, [session, isUp, opening])
  if (session === undefined) return null
  const isLocked = session.saved.value.kind === 'read-only'
  return (
    <>
      <section class="story" aria-label="Story" data-area="text">
        <div class="who-row">
          <WhoReads />
          <div class="row">
            <button type="button" onClick={() => toggleNote(session.view)} disabled={isLocked}>
              For the grown-up
            </button>
            <button
              type="button"
              onClick={() => newPage(session.view)}
              aria-keyshortcuts="Control+Enter"
              disabled={isLocked}
            >
              New page below
            </button>
          </div>
        </div>
        <div class="sheet" ref={place} />
      </section>
      <Panel />
    </>
  )
}

function WhoReads() {
  const { state } = usePage()
  const check = state.session.value?.check.value
  if (!check?.checked)
    return <p class="who">{check === undefined ? 'The story is being read.' : 'The step is not known yet.'}</p>
  const { step, reader } = check
  return (
    <p class="who">
      <span>
        Step: <b>{step.id}</b>
        {step.title !== step.id && <i>, {step.title}</i>}
      </span>
      {reader && (
        <span>
          Reader: <b>{reader.name}</b>
        </span>
      )}
    </p>
  )
}

const PANELS: readonly (readonly [PanelName, string])[] = [
  ['places', 'Places'],
  ['words', 'Words'],
  ['about', 'About'],
]

function Panel() {
  const page = usePage()
  const { panel, isPanelUp, session } = page.state
  const check = session.value?.check.value
  const count = check?.checked ? ` (${check.places.length})` : ''
  const name = PANELS.find(([one]) => one === panel.value)?.[1] ?? ''
  return (
    <aside class={isPanelUp.value ? 'panel' : 'panel away'} aria-label="Panel" data-area="panel">
      <div class="tabs">
        <div
          role="tablist"
          aria-label="Panel"
          onKeyDown={(event) => turn(event, (by) => showPanel(page, toNeighbour(panel.peek(), by)))}
        >
          {PANELS.map(([one, label]) => (
            <button
              type="button"
              role="tab"
              key={one}
              id={`tab-${one}`}
              aria-selected={panel.value === one}
              aria-controls="panel-body"
              tabIndex={panel.value === one ? 0 : -1}
              onClick={() => showPanel(page, one)}
            >
              {label}
              {one === 'places' ? count : ''}
            </button>
          ))}
        </div>
        <button
          type="button"
          class="up-down"
          aria-expanded={isPanelUp.value}
          aria-controls="panel-body"
          onClick={() => {
            isPanelUp.value = !isPanelUp.value
          }}
        >
          {isPanelUp.value ? 'Put away' : 'Bring up'}
        </button>
      </div>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by the keys */}
      <div id="panel-body" role="tabpanel" aria-labelledby={`tab-${panel.value}`} tabIndex={0}>
        <h2 class="unseen">{name}</h2>
        {panel.value === 'places' && <Places />}
        {panel.value === 'words' && <Words />}
        {panel.value === 'about' && <About />}
      </div>
    </aside>
  )
}

function toNeighbour(panel: PanelName, by: 1 | -1): PanelName {
  const at = PANELS.findIndex(([one]) => one === panel)
  return PANELS[(at + by + PANELS.length) % PANELS.length]?.[0] ?? panel
}

/** The arrow keys go from tab to tab. */
function turn(event: KeyboardEvent, go: (by: 1 | -1) => void): void {
  const by = event.key === 'ArrowRight' ? 1 : event.key === 'ArrowLeft' ? -1 : undefined
  if (by === undefined) return
  event.preventDefault()
  const list = event.currentTarget as HTMLElement
  go(by)
  requestAnimationFrame(() => list.querySelector<HTMLElement>('[aria-selected=true]')?.focus())
}
