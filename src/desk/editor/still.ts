// Keeps the cursor and the keys out of what is folded: settings, rules between pages, the blank line between paragraphs.

import {
  type ChangeSpec,
  EditorSelection,
  EditorState,
  type Extension,
  type Line,
  type SelectionRange,
  type Text,
  type Transaction,
} from '@codemirror/state'
import type { Command, EditorView } from '@codemirror/view'
import type { Hidden } from './lines.ts'
import { shown } from './shown.ts'

/** The nearest place that can be written on, in the direction of the move. */
function toOpen(at: number, isForward: boolean, hidden: readonly Hidden[], doc: Text): number {
  let place = at
  const step = (forward: boolean): boolean => {
    for (let tries = 0; tries <= hidden.length; tries++) {
      const over = hidden.find(({ from, to }) => from <= place && place <= to)
      if (over === undefined) return true
      const next = forward ? over.to + 1 : over.from - 1
      if (next < 0 || next > doc.length) return false
      place = next
    }
    return false
  }
  if (step(isForward)) return place
  place = at
  return step(!isForward) ? place : at
}

const clampSelection = EditorState.transactionFilter.of((transaction) => {
  const { selection } = transaction
  if (selection === undefined && !transaction.docChanged) return transaction
  const { isFile, shape } = transaction.state.field(shown)
  if (isFile || shape.hidden.length === 0) return transaction
  const before = transaction.startState.selection.main.head
  const old = transaction.docChanged ? transaction.changes.mapPos(before, 1) : before
  const { doc } = transaction.state
  let isMoved = false
  const ranges = transaction.newSelection.ranges.map((range): SelectionRange => {
    const head = toOpen(range.head, range.head >= old, shape.hidden, doc)
    const anchor = range.empty ? head : toOpen(range.anchor, range.anchor < range.head, shape.hidden, doc)
    if (head === range.head && anchor === range.anchor) return range
    isMoved = true
    return EditorSelection.range(anchor, head)
  })
  if (!isMoved) return transaction
  return [
    transaction,
    { selection: EditorSelection.create(ranges, transaction.newSelection.mainIndex), sequential: true },
  ]
})

/** What is typed or deleted over a folded top leaves it alone; the panel changes it by name. */
const keepFront = EditorState.changeFilter.of((transaction: Transaction) => {
  const { isFile, shape } = transaction.startState.field(shown)
  if (isFile || shape.front === undefined || !isTyped(transaction)) return true
  return [0, shape.front.to + 1]
})

const isTyped = (transaction: Transaction): boolean =>
  ['input', 'delete', 'move'].some((event) => transaction.isUserEvent(event))

const PARAGRAPH = '\n\n'

/** In the folded view a new line is a new paragraph, as it will be in the book. */
export const newParagraph: Command = (view) => {
  const { state } = view
  if (state.readOnly || state.field(shown).isFile) return false
  const { from } = state.selection.main
  const line = state.doc.lineAt(from)
  const insert = line.text.trim() === '' ? '\n' : PARAGRAPH
  return put(view, { from, to: state.selection.main.to, insert }, from + insert.length, 'input')
}

/** At the top of a page or paragraph: joins it to the one before. */
export const joinBefore: Command = (view) => {
  const { state } = view
  const { main } = state.selection
  const { isFile, shape } = state.field(shown)
  if (isFile || !main.empty || state.readOnly) return false
  const over = shape.hidden.find(({ to }) => to + 1 === main.from)
  if (over === undefined) return false
  if (over === shape.front) return true
  return join(view, over)
}

export const joinAfter: Command = (view) => {
  const { state } = view
  const { main } = state.selection
  const { isFile, shape } = state.field(shown)
  if (isFile || !main.empty || state.readOnly) return false
  const over = shape.hidden.find(({ from }) => from - 1 === main.from)
  return over === undefined || over === shape.front ? false : join(view, over)
}

/** Signs and switches go by themselves. Two pages become one with two paragraphs; two paragraphs become one with a space between. */
function join(view: EditorView, over: Hidden): boolean {
  const { state } = view
  if (over.kind === 'prefix') return put(view, { from: over.from, to: over.to + 1 }, over.from, 'delete')
  if (over.kind === 'switch') return put(view, { from: over.from, to: over.to + 1 }, over.from, 'delete')
  const isPage = over.kind === 'break'
  const start = over.from - 1
  const end = over.to + 1
  if (start < 0) return true
  const isBlank = (at: number): boolean => state.doc.lineAt(at).text.trim() === ''
  const isNextBlank = isBlank(end)
  const insert = isNextBlank || isBlank(start) ? '' : isPage ? PARAGRAPH : needsSpace(state, start, end) ? ' ' : ''
  return put(view, { from: start, to: end, insert }, start + (isPage ? insert.length : 0), 'delete')
}

const needsSpace = ({ doc }: EditorState, start: number, end: number): boolean =>
  !/\s/.test(doc.sliceString(start - 1, start)) && !/\s/.test(doc.sliceString(end, end + 1))

function put(view: EditorView, changes: ChangeSpec, anchor: number, userEvent: string): boolean {
  view.dispatch({ changes, selection: { anchor }, userEvent, scrollIntoView: true })
  return true
}

/** What the cursor's paragraph says is for the grown-up, or no longer. */
export const toggleNote: Command = (view) => {
  const { state } = view
  if (state.readOnly) return false
  const { from, to } = state.selection.main
  const { kinds } = state.field(shown).shape
  const lines: Line[] = []
  for (let at = state.doc.lineAt(from).number; at <= state.doc.lineAt(to).number; at++) {
    const kind = kinds[at - 1]
    if (kind === 'text' || kind === 'note') lines.push(state.doc.line(at))
  }
  const isNote = lines.every(({ number }) => kinds[number - 1] === 'note')
  const changes = lines.map((line): ChangeSpec => {
    const sign = /^\s*> ?/.exec(line.text)?.[0]
    if (isNote) return { from: line.from, to: line.from + (sign?.length ?? 0) }
    return sign === undefined ? { from: line.from, insert: '> ' } : []
  })
  view.dispatch({ changes, userEvent: 'input.note' })
  view.focus()
  return true
}

/** A page below that of the cursor, empty, with the cursor on it. */
export const newPage: Command = (view) => {
  const { state } = view
  if (state.readOnly) return false
  const { shape } = state.field(shown)
  const { head } = state.selection.main
  const next = shape.breaks.find(({ from }) => from > head)
  const at = next === undefined ? state.doc.length : next.from - 1
  const before = state.doc.sliceString(0, at)
  const lead = before.endsWith('\n\n') || before === '' ? '' : before.endsWith('\n') ? '\n' : PARAGRAPH
  const top = `${lead}---\n\n`
  // A file that ended with its line ends so again.
  const insert = next === undefined && before.endsWith('\n') ? `${top}\n` : top
  view.dispatch({
    changes: { from: at, insert },
    selection: { anchor: at + top.length },
    userEvent: 'input.page',
    scrollIntoView: true,
  })
  view.focus()
  return true
}

export const stillFolds: Extension = [clampSelection, keepFront]
