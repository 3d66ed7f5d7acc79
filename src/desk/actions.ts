// What the maker does with the open story: put something in, go to the next place, save, undo.

import { redo, undo } from '@codemirror/commands'
import { EditorView } from '@codemirror/view'
import { batch } from '@preact/signals'
import { closePlace, findPlaceAround, openPlace } from './cards.ts'
import { toClock } from './clock.ts'
import type { Changed, Place } from './core/questions.ts'
import { putEdits } from './editor/editor.ts'
import { showFile } from './editor/shown.ts'
import { changeFile } from './files.ts'
import type { Page } from './page.ts'
import type { PanelName, PlaceName } from './state.ts'
import { toFaultText } from './told.ts'

export function goTo(page: Page, place: PlaceName): void {
  const { state } = page
  if (place !== 'shelf' && state.session.peek() === undefined) return
  state.place.value = place
}

export function showPanel({ state }: Page, panel: PanelName): void {
  batch(() => {
    state.panel.value = panel
    state.isPanelUp.value = true
  })
}

export const toFault =
  (page: Page) =>
  (error: unknown): void => {
    page.state.trouble.value = toFaultText(error)
  }

/** The one way in which anything but typing changes a file. False where it could not be done; why is told. */
export async function applyChange(page: Page, change: Changed, said: string): Promise<boolean> {
  const session = page.state.session.peek()
  if (session?.keeper.name !== change.path) {
    const done = await changeFile(page, change)
    if (!done) return false
  } else {
    if (session.view.state.readOnly || session.view.state.doc.toString() !== change.before) {
      page.voice.say('The text has changed in between. Please press it again.')
      return false
    }
    putEdits(session.view, change.edits)
  }
  page.voice.say(said)
  return true
}

/** At once; whoever asked for it is told. */
export async function saveNow(page: Page): Promise<void> {
  try {
    const saved = await page.state.session.peek()?.keeper.save()
    if (saved?.kind === 'saved')
      page.voice.say(saved.at === undefined ? 'Nothing to save.' : `Saved ${toClock(saved.at)}.`)
  } catch (error) {
    toFault(page)(error)
  }
}

export function toggleFile(page: Page): void {
  const session = page.state.session.peek()
  if (session === undefined) return
  session.isFile.value = !session.isFile.peek()
  session.view.dispatch({ effects: showFile.of(session.isFile.peek()) })
  page.voice.say(session.isFile.peek() ? 'The file is shown as it is.' : 'The settings are folded away.')
}

export function takeBack(page: Page): void {
  const session = page.state.session.peek()
  if (session && undo(session.view)) session.view.dispatch({ scrollIntoView: true })
}

export function bringBack(page: Page): void {
  const session = page.state.session.peek()
  if (session && redo(session.view)) session.view.dispatch({ scrollIntoView: true })
}

/** Opens the card of a place and brings the word into view. */
export function showPlace(page: Page, at: number): void {
  const session = page.state.session.peek()
  const place = findPlaces(page)[at]
  if (session === undefined || place === undefined) return
  batch(() => {
    page.state.place.value = 'write'
    showPanel(page, 'places')
  })
  const isHidden = session.view.state.doc.length < place.end
  if (!isHidden) session.view.dispatch({ effects: EditorView.scrollIntoView(place.start, { y: 'center' }) })
  openPlace(session, at, { ask: page.tools.ask, onFault: toFault(page) })
}

export function findPlaces({ state }: Page): readonly Place[] {
  const check = state.session.value?.check.value
  return check?.checked ? check.places : []
}

/** From the open card, or from the cursor where none is open; round and round. */
export function stepPlace(page: Page, by: 1 | -1): void {
  const session = page.state.session.peek()
  const places = findPlaces(page)
  if (session === undefined || places.length === 0) {
    page.voice.say(session?.check.peek()?.checked ? 'No place asks for a look.' : '')
    return
  }
  const open = session.place.peek()
  const cursor = session.view.state.selection.main.head
  const from =
    open ??
    (by > 0
      ? places.findIndex(({ start }) => start >= cursor) - 1
      : places.findLastIndex(({ end }) => end < cursor) + 1)
  const before = open === undefined && by > 0 && from === -2 ? -1 : from
  showPlace(page, (before + by + places.length) % places.length)
}

/** The card of the word at the cursor. */
export function cardAtCursor(page: Page): void {
  const session = page.state.session.peek()
  if (session === undefined) return
  const at = findPlaceAround(session.check.peek(), session.view.state.selection.main.head)
  if (at >= 0) showPlace(page, at)
  else page.voice.say('Nothing is marked at the cursor.')
}

/** Back to the text, at the same place. */
export function backToText(page: Page): void {
  const session = page.state.session.peek()
  if (session === undefined) return
  page.state.place.value = 'write'
  if (session.place.peek() !== undefined) closePlace(session)
  session.view.focus()
}

/** A word of the bank, at the cursor, with a space where two words would touch. */
export function putWord(page: Page, word: string): void {
  const session = page.state.session.peek()
  if (session === undefined || session.view.state.readOnly) return
  const { state } = session.view
  const { from, to } = state.selection.main
  const before = /[\p{L}\p{N}.,!?]$/u.test(state.sliceDoc(Math.max(0, from - 1), from)) ? ' ' : ''
  const after = /^[\p{L}\p{N}]/u.test(state.sliceDoc(to, to + 1)) ? ' ' : ''
  const insert = `${before}${word}${after}`
  session.view.dispatch({
    changes: { from, to, insert },
    selection: { anchor: from + before.length + word.length },
    userEvent: 'input.word',
    scrollIntoView: true,
  })
  page.voice.say(`${word} is put in.`)
}
