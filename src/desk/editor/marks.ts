// Marks on the very letters: a bar and a tint for those to blame, a dotted line for the whole word. Set anew only where a page has changed.

import { type Extension, type Range as Placed, StateEffect, StateField, type Text } from '@codemirror/state'
import { Decoration, type DecorationSet, EditorView } from '@codemirror/view'
import type { CheckedText, Mark } from '../core/questions.ts'

export interface NewMarks {
  /** Undefined where the text cannot be checked. */
  readonly checked: CheckedText | undefined
  /** Where a word ends that is still being typed: it is not marked yet. */
  readonly unfinished: number | undefined
}

/** The marks of just this text, and which place has its card open. */
export const setMarks = StateEffect.define<NewMarks>()
export const setOpenPlace = StateEffect.define<number | undefined>()

interface Marked {
  readonly words: DecorationSet
  readonly letters: DecorationSet
  readonly checked: CheckedText | undefined
  readonly open: DecorationSet
}

// `mark`, since a screen reader learns nothing of a styled span (tried in Chromium's accessibility tree).
const WORD = Decoration.mark({ tagName: 'mark', class: 'place' })
const LETTERS = Decoration.mark({ class: 'blamed' })
const OPEN = Decoration.mark({ class: 'place-open' })
/** A sentence or a page has other marks in it, which would cut a frame into pieces. */
const OPEN_STRETCH = Decoration.mark({ class: 'place-open stretch' })

const EMPTY: Marked = { words: Decoration.none, letters: Decoration.none, checked: undefined, open: Decoration.none }

const marked = StateField.define<Marked>({
  create: () => EMPTY,
  update(value, transaction) {
    let { words, letters, open, checked } = value
    if (transaction.docChanged) {
      words = words.map(transaction.changes)
      letters = letters.map(transaction.changes)
      open = open.map(transaction.changes)
    }
    for (const effect of transaction.effects) {
      if (effect.is(setMarks)) {
        checked = effect.value.checked
        const { doc } = transaction.state
        const marks = toFinished(effect.value)
        words = renew(words, checked, marks, 'word', doc)
        letters = renew(letters, checked, marks, 'letters', doc)
      } else if (effect.is(setOpenPlace)) {
        const place = effect.value === undefined ? undefined : checked?.places[effect.value]
        open =
          place && place.start < place.end
            ? Decoration.set([(place.word === null ? OPEN_STRETCH : OPEN).range(place.start, place.end)])
            : Decoration.none
      }
    }
    return words === value.words && letters === value.letters && open === value.open && checked === value.checked
      ? value
      : { words, letters, open, checked }
  },
})

function toFinished({ checked, unfinished }: NewMarks): readonly Mark[] {
  const { marks = [] } = checked ?? {}
  const typed = marks.find(({ kind, end }) => kind === 'word' && end === unfinished)
  return typed === undefined ? marks : marks.filter(({ place }) => place !== typed.place)
}

/** Keeps the set for every page on which nothing is marked otherwise than before: what is the same is not drawn again. */
function renew(
  old: DecorationSet,
  checked: CheckedText | undefined,
  marks: readonly Mark[],
  kind: Mark['kind'],
  doc: Text,
): DecorationSet {
  if (checked === undefined) return Decoration.none
  const deco = kind === 'word' ? WORD : LETTERS
  const wanted = marks.filter((mark) => mark.kind === kind && mark.start < mark.end && mark.end <= doc.length)
  let set = old
  let next = 0
  for (const [from, to] of toStretches(checked, doc.length)) {
    // Marks and pages are in order of place.
    const first = next
    while ((wanted[next]?.start ?? to) < to) next++
    const here = wanted.slice(first, next)
    if (isSame(set, here, from, to)) continue
    const add: Placed<Decoration>[] = here.map(({ start, end }) => deco.range(start, end))
    set = set.update({
      filterFrom: from,
      filterTo: to,
      filter: (start) => start < from || start >= to,
      add,
      sort: true,
    })
  }
  return set
}

/** From page to page without a hole, so that marks of what lies between them are renewed too. */
function toStretches({ pages }: CheckedText, length: number): readonly (readonly [number, number])[] {
  const starts = [0, ...pages.slice(1).map(({ start }) => start)]
  return starts.map((from, at) => [from, starts[at + 1] ?? length + 1])
}

function isSame(set: DecorationSet, marks: readonly Mark[], from: number, to: number): boolean {
  let at = 0
  let isEqual = true
  set.between(from, to, (start, end) => {
    if (start < from || start >= to) return
    const mark = marks[at++]
    if (mark?.start !== start || mark.end !== end) isEqual = false
    return isEqual ? undefined : false
  })
  return isEqual && at === marks.length
}

/** The place under an offset, by the last check, moved along with what was typed since. */
export function findPlaceAt(
  view: EditorView,
  offset: number,
): { readonly start: number; readonly end: number } | undefined {
  let found: { start: number; end: number } | undefined
  view.state.field(marked).words.between(offset, offset, (start, end) => {
    found = { start, end }
    return false
  })
  return found
}

/** Where the place now stands whose card is open. */
export function findOpen(view: EditorView): { readonly start: number; readonly end: number } | undefined {
  const { open } = view.state.field(marked)
  const cursor = open.iter()
  return cursor.value === null ? undefined : { start: cursor.from, end: cursor.to }
}

/** The letters lie inside the word, so the words come last: what comes first is drawn inside. */
export const storyMarks: Extension = [
  marked,
  EditorView.decorations.compute([marked], (state) => state.field(marked).letters),
  EditorView.decorations.compute([marked], (state) => state.field(marked).open),
  EditorView.decorations.compute([marked], (state) => state.field(marked).words),
]
