// Checks the text of an open story after each change, and shows what comes back: heads, marks, the card that is open.

import { redoDepth, undoDepth } from '@codemirror/commands'
import { batch } from '@preact/signals'
import { whenAsked } from './asked.ts'
import { askCard, type CardTools, closePlace, openPlace } from './cards.ts'
import type { CheckAnswer, Place } from './core/questions.ts'
import { findOpen, setMarks } from './editor/marks.ts'
import { setPages } from './editor/shown.ts'
import type { Session } from './state.ts'
import { findTitle } from './title.ts'

/** After so much rest a text is checked; while somebody types on, at least as often as the second. In milliseconds. */
const REST = 80
const LONGEST = 400

/** A word at whose end somebody has just typed is not marked before so much rest: most are not finished. */
const UNFINISHED = 600

const NEVER = Number.NEGATIVE_INFINITY

export interface CheckTools extends CardTools {
  /** Another number of places asks for a look than before the typing. */
  onCount(places: number): void
}

export interface Checking {
  readonly session: Session
  readonly tools: CheckTools
  timer: ReturnType<typeof setTimeout> | undefined
  /** When the oldest change was made that no check has seen. */
  waiting: number | undefined
  /** When somebody last typed, and how many places were told of before. */
  typed: number
  count: number | undefined
}

export const toChecking = (session: Session, tools: CheckTools): Checking => ({
  ...{ session, tools, timer: undefined, waiting: undefined },
  ...{ typed: NEVER, count: undefined },
})

export function follow(inner: Checking): void {
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

export async function check(inner: Checking): Promise<void> {
  const { session, tools } = inner
  inner.waiting = undefined
  const story = session.toStory()
  try {
    const answer = await whenAsked(tools.ask({ kind: 'check', story }))
    if (answer === undefined || answer.version !== session.version.peek()) return
    show(answer, inner)
  } catch (error) {
    tools.onFault(error)
  }
}

function show(answer: CheckAnswer, inner: Checking): void {
  const { session, tools } = inner
  const { view } = session
  const open = session.place.peek()
  const anchor = findOpen(view)
  const isTyping = performance.now() - inner.typed < UNFINISHED
  const checked = answer.checked ? answer : undefined
  const unfinished = isTyping ? view.state.selection.main.head : undefined
  view.dispatch({ effects: [setPages.of(checked?.pages), setMarks.of({ checked, unfinished })] })
  if (isTyping) inner.timer = setTimeout(() => markRest(answer, session), UNFINISHED)
  countPlaces(checked?.places.length, inner)
  session.check.value = answer
  if (open === undefined) return
  const places = answer.checked ? answer.places : []
  const same = places.findIndex(({ start, end }) => start === anchor?.start && end === anchor.end)
  const goesOn = session.goesOn.peek()
  session.goesOn.value = false
  if (same >= 0) askCard(session, same, tools)
  else if (goesOn && places.length > 0) openPlace(session, findNext(places, anchor?.start ?? 0), tools)
  else closePlace(session)
}

/** Nobody has typed on: the last word is marked like all others. */
function markRest(answer: CheckAnswer, { view, version }: Session): void {
  if (!answer.checked || answer.version !== version.peek()) return
  view.dispatch({ effects: setMarks.of({ checked: answer, unfinished: undefined }) })
}

/** After typing, a changed number is told once there is rest. */
function countPlaces(count: number | undefined, inner: Checking): void {
  const isNew = count !== undefined && inner.count !== undefined && count !== inner.count
  if (isNew && performance.now() - inner.typed < 2 * LONGEST) inner.tools.onCount(count)
  inner.count = count
}

/** Where somebody goes from place to place, the next one; after the last, the last that is left. */
function findNext(places: readonly Place[], from: number): number {
  const next = places.findIndex(({ start }) => start >= from)
  return next >= 0 ? next : places.length - 1
}
