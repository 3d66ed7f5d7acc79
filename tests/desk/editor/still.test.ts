// Keys in the folded story: what they change, what they leave alone, where the cursor may stand.

import { history, undo } from '@codemirror/commands'
import { EditorState, type TransactionSpec } from '@codemirror/state'
import type { EditorView } from '@codemirror/view'
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { showFile, shown } from '../../../src/desk/editor/shown.ts'
import { joinAfter, joinBefore, newPage, newParagraph, stillFolds } from '../../../src/desk/editor/still.ts'

/** As much of a view as a command asks for: there is no page here. `|` is the cursor. */
function open(marked: string): { readonly view: EditorView; show(): string } {
  const at = marked.indexOf('|')
  const view = {
    state: EditorState.create({
      doc: marked.replace('|', ''),
      selection: { anchor: Math.max(0, at) },
      extensions: [shown, stillFolds, history()],
    }),
    dispatch(spec: TransactionSpec) {
      view.state = view.state.update(spec).state
    },
    focus() {},
  }
  const show = (): string => {
    const { head } = view.state.selection.main
    const text = view.state.doc.toString()
    return `${text.slice(0, head)}|${text.slice(head)}`
  }
  return { view: view as unknown as EditorView, show }
}

const TOP = '---\nstep: pink-4\n---\n\n'

it('Enter makes a paragraph, as it will be in the book', () => {
  const { view, show } = open('Tam sat.|')
  newParagraph(view)
  expect(show()).toBe('Tam sat.\n\n|')
})

it('Backspace at the top of a page joins it to the one before, and then the paragraphs', () => {
  const { view, show } = open('Tam sat.\n\n---\n\n|Zub ran.')
  joinBefore(view)
  expect(show()).toBe('Tam sat.\n\n|Zub ran.')
  joinBefore(view)
  expect(show()).toBe('Tam sat.| Zub ran.')
  undo(view)
  undo(view)
  expect(show().replace('|', '')).toBe('Tam sat.\n\n---\n\nZub ran.')
})

it('Delete at the end of a page joins the next one to it', () => {
  const { view, show } = open('Tam sat.|\n\n---\n\nZub ran.')
  joinAfter(view)
  expect(show().replace('|', '')).toBe('Tam sat.\n\nZub ran.')
})

it('Backspace leaves the settings alone, and takes the sign of a title', () => {
  const { view, show } = open(`${TOP}# |Tam`)
  joinBefore(view)
  expect(show()).toBe(`${TOP}|Tam`)
  joinBefore(view)
  expect(show()).toBe(`${TOP}|Tam`)
})

it('a new page stands below the one of the cursor, wherever that is', () => {
  const { view, show } = open('Tam| sat.\n\n---\n\nZub ran.\n')
  newPage(view)
  expect(show()).toBe('Tam sat.\n\n---\n\n|\n\n---\n\nZub ran.\n')
  const last = open('Tam sat.\n\n---\n\nZub| ran.\n')
  newPage(last.view)
  expect(last.show()).toBe('Tam sat.\n\n---\n\nZub ran.\n\n---\n\n|\n')
})

it('what is typed over everything leaves the settings', () => {
  const { view, show } = open(`${TOP}Tam sat.`)
  view.dispatch({ selection: { anchor: 0, head: view.state.doc.length }, userEvent: 'select' })
  view.dispatch({ ...view.state.replaceSelection('Zub'), userEvent: 'input.type' })
  expect(show().replace('|', '')).toBe(`${TOP}Zub`)
})

it('in the file as it is, everything can be changed', () => {
  const { view, show } = open(`${TOP}Tam sat.`)
  view.dispatch({ effects: showFile.of(true) })
  view.dispatch({ changes: { from: 4, to: 16 }, userEvent: 'delete' })
  expect(show().replace('|', '')).toBe('---\n\n---\n\nTam sat.')
  expect(newParagraph(view)).toBe(false)
})

it('the cursor never stands on what is folded', () => {
  const line = fc.constantFrom(
    'Tam sat.',
    '',
    '---',
    '# Tam',
    '> Read it.',
    '<!-- battledore ignore no-irregular-word -->',
  )
  const story = fc.array(line, { minLength: 1, maxLength: 12 }).map((lines) => `${TOP}Tam\n${lines.join('\n')}\nZub`)
  fc.assert(
    fc.property(story, fc.nat(200), fc.nat(200), (text, from, to) => {
      const { view } = open(text)
      for (const anchor of [from, to]) {
        view.dispatch({ selection: { anchor: anchor % (text.length + 1) }, userEvent: 'select' })
        const { head } = view.state.selection.main
        const { hidden } = view.state.field(shown).shape
        expect(hidden.some((one) => one.from <= head && head <= one.to)).toBe(false)
      }
    }),
    { numRuns: 1000 },
  )
})
