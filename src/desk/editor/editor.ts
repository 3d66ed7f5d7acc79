// The text of a story as an editor: the Markdown file itself, folded and marked, with undo that never ends.

import { defaultKeymap, history, historyKeymap } from '@codemirror/commands'
import { Annotation, Compartment, EditorState, type Extension, Prec, Transaction } from '@codemirror/state'
import { drawSelection, EditorView, keymap } from '@codemirror/view'
import type { TextEdit } from '../folder/types.ts'
import { type AskCompletions, completion } from './complete.ts'
import { findPlaceAt, storyMarks } from './marks.ts'
import { type FindPicture, findPicture } from './picture.ts'
import { shown } from './shown.ts'
import { joinAfter, joinBefore, newPage, newParagraph, stillFolds } from './still.ts'

/** On changes that come from the disk or from a draft: they are not told to whoever gave them. */
const fromOutside = Annotation.define<boolean>()

const writable = new Compartment()

export interface EditorTools {
  readonly text: string
  readonly isReadOnly: boolean
  /** Of the strict content policy. */
  readonly cspNonce: string | undefined
  readonly complete: AskCompletions
  readonly picture: FindPicture
  /** All edits of one change, in order; not those that came from outside. */
  onEdits(edits: readonly TextEdit[], isTyped: boolean): void
  /** After every change of the text, from wherever. */
  onText(): void
  /** A marked word was clicked or tapped. */
  onPlace(start: number): void
}

export function createEditor(tools: EditorTools): EditorView {
  const extensions: Extension = [
    history({ minDepth: Number.MAX_SAFE_INTEGER }),
    Prec.high(
      keymap.of([
        { key: 'Enter', run: newParagraph },
        { key: 'Mod-Enter', run: newPage },
        { key: 'Backspace', run: joinBefore },
        { key: 'Delete', run: joinAfter },
      ]),
    ),
    keymap.of([...historyKeymap, ...defaultKeymap.filter(({ key }) => key !== 'Mod-Enter')]),
    drawSelection(),
    EditorView.lineWrapping,
    EditorView.contentAttributes.of({
      'aria-label': 'The story',
      autocapitalize: 'sentences',
      autocorrect: 'off',
      spellcheck: 'false',
      // The text scrolls: what scrolls must be reached by Tab, and say so.
      tabindex: '0',
    }),
    ...(tools.cspNonce === undefined ? [] : [EditorView.cspNonce.of(tools.cspNonce)]),
    completion(tools.complete),
    findPicture.of(tools.picture),
    shown,
    stillFolds,
    storyMarks,
    writable.of(EditorState.readOnly.of(tools.isReadOnly)),
    listen(tools),
  ]
  return new EditorView({ state: EditorState.create({ doc: tools.text, extensions }) })
}

function listen(tools: EditorTools): Extension {
  return [
    EditorView.updateListener.of(({ docChanged, transactions }) => {
      for (const transaction of transactions)
        if (transaction.docChanged && !transaction.annotation(fromOutside))
          tools.onEdits(toEdits(transaction), transaction.isUserEvent('input') || transaction.isUserEvent('delete'))
      if (docChanged) tools.onText()
    }),
    EditorView.domEventHandlers({
      click(event, view) {
        const offset = view.posAtCoords({ x: event.clientX, y: event.clientY })
        const isMark = event.target instanceof Element && event.target.closest('mark') !== null
        const place = isMark && offset !== null ? findPlaceAt(view, offset) : undefined
        if (place && view.state.selection.main.empty) tools.onPlace(place.start)
        return false
      },
    }),
  ]
}

function toEdits({ changes }: Transaction): readonly TextEdit[] {
  const edits: TextEdit[] = []
  changes.iterChanges((start, end, _from, _to, inserted) => edits.push({ start, end, text: inserted.toString() }))
  return edits
}

/** One step of undo, wherever the edits came from. */
export function putEdits(view: EditorView, edits: readonly TextEdit[], isFromOutside = false): void {
  view.dispatch({
    changes: edits.map(({ start, end, text }) => ({ from: start, to: end, insert: text })),
    annotations: [fromOutside.of(isFromOutside), Transaction.userEvent.of('desk')],
  })
}

export function setReadOnly(view: EditorView, isReadOnly: boolean): void {
  if (view.state.readOnly !== isReadOnly)
    view.dispatch({ effects: writable.reconfigure(EditorState.readOnly.of(isReadOnly)) })
}
