// The card of a place: opened, closed, and asked for anew when the text has changed.

import { batch, effect } from '@preact/signals'
import { whenAsked } from './asked.ts'
import type { Card, CheckAnswer } from './core/questions.ts'
import { setOpenPlace } from './editor/marks.ts'
import type { Asker, Session } from './state.ts'

/** The narrowest place around an offset: a word before the sentence that it stands in. */
export function findPlaceAround(answer: CheckAnswer | undefined, offset: number): number {
  const places = answer?.checked ? answer.places : []
  const around = places.flatMap(({ start, end }, at) =>
    start <= offset && offset <= end ? [{ at, size: end - start }] : [],
  )
  return around.sort((left, right) => left.size - right.size)[0]?.at ?? -1
}

export interface CardTools extends Asker {
  onFault(error: unknown): void
}

/** Opens the card of a place; the text keeps its cursor. */
export function openPlace(session: Session, at: number, tools: CardTools): void {
  batch(() => {
    session.card.value = undefined
    session.opening.value++
  })
  askCard(session, at, tools)
}

/** The card that is open stays until the new one is there. Numbers of places are those of the last check: where the text has moved on, the check that is under way asks again. */
export function askCard(session: Session, at: number, tools: CardTools): void {
  session.place.value = at
  session.view.dispatch({ effects: setOpenPlace.of(at) })
  const story = session.toStory()
  if (session.check.peek()?.version !== story.version) return
  whenAsked(tools.ask({ kind: 'card', story, place: at })).then((answer) => {
    if (session.place.peek() !== at || session.version.peek() !== story.version) return
    session.card.value = answer?.ok ? answer.value : undefined
  }, tools.onFault)
}

/** The open card as the newest text has it; undefined where its place is gone, or another card is open. */
export function whenRenewed(session: Session): Promise<Card | undefined> {
  const opening = session.opening.peek()
  return new Promise((done) => {
    const stop = effect(() => {
      const card = session.card.value
      const isGone = session.place.value === undefined || session.opening.value !== opening
      if (!isGone && card?.version !== session.version.value) return
      done(isGone ? undefined : card)
      queueMicrotask(() => stop())
    })
  })
}

export function closePlace(session: Session): void {
  batch(() => {
    session.place.value = undefined
    session.card.value = undefined
  })
  session.view.dispatch({ effects: setOpenPlace.of(undefined) })
}
