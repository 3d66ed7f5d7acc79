// The keys of the page, wherever the cursor is. Tab is left alone: it leaves the text.

import { backToText, bringBack, cardAtCursor, saveNow, showPanel, stepPlace, takeBack } from './actions.ts'
import type { Page } from './page.ts'

/** @returns a function that stops it */
export function listenToKeys(page: Page): () => void {
  const hear = (event: KeyboardEvent): void => {
    const run = find(event, page)
    if (run === undefined) return
    event.preventDefault()
    run()
  }
  document.addEventListener('keydown', hear)
  return () => document.removeEventListener('keydown', hear)
}

function find(event: KeyboardEvent, page: Page): (() => void) | undefined {
  const { key, shiftKey, altKey } = event
  const isCtrl = event.ctrlKey || event.metaKey
  const session = page.state.session.peek()
  if (event.defaultPrevented || altKey || session === undefined || page.state.dialog.peek() !== undefined)
    return undefined
  if (key === 'F8') return () => aloud(page, () => stepPlace(page, shiftKey ? -1 : 1))
  if (key === 'F6') return () => toNextArea(shiftKey ? -1 : 1)
  if (key === 'Escape') return () => backToText(page)
  if (!isCtrl) return undefined
  if (key === '.') return () => aloud(page, () => cardAtCursor(page))
  if (key.toLowerCase() === 's' && !shiftKey) return () => void saveNow(page)
  if (isInField(event)) return undefined
  if (key.toLowerCase() === 'z') return () => (shiftKey ? bringBack(page) : takeBack(page))
  if (key.toLowerCase() === 'y') return () => bringBack(page)
  return undefined
}

/** A card that was asked for by a key takes the keys, so that it is read out and its buttons are near. */
function aloud(page: Page, show: () => void): void {
  page.state.wantsCard.value = true
  showPanel(page, 'places')
  show()
}

/** Fields have an undo of their own; the editor hears the keys itself. */
const isInField = ({ target }: Event): boolean =>
  target instanceof Element && target.closest('input, textarea, select, [contenteditable]') !== null

function toNextArea(by: 1 | -1): void {
  const areas = [...document.querySelectorAll('[data-area]')]
  const at = areas.findIndex((area) => area.contains(document.activeElement))
  const next = areas[(at + by + areas.length) % areas.length]
  next?.querySelector<HTMLElement>('.cm-content, [aria-current], [aria-selected=true], button, input')?.focus()
}
