// What the editor folds away: settings, rules between pages, blank lines between paragraphs; held against the story model.

import { EditorState, Text } from '@codemirror/state'
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { moveShape, toShape } from '../../../src/desk/editor/lines.ts'
import { toHeads } from '../../../src/desk/editor/page-heads.ts'
import { readStory } from '../../../src/story/index.ts'

const toText = (source: string): Text => Text.of(source.split('\n'))

/** Each line with the first letter of its kind before it. */
const draw = (source: string): string =>
  [...toText(source).iterLines()]
    .map((line, at) => `${toShape(toText(source)).kinds[at]?.slice(0, 2)} ${line}`)
    .join('\n')

it('folds the settings, the rules and the blank lines between', () => {
  expect(draw('---\nstep: pink-4\n---\n\n# Tam\n\n> Read it.\n\nTam sat.\n\nHe ran.\n\n---\n\nZub ran.\n')).toBe(
    [
      ...['fr ---', 'fr step: pink-4', 'fr ---', 'fr ', 'ti # Tam', 'ga ', 'no > Read it.', 'ga ', 'te Tam sat.'],
      ...['ga ', 'te He ran.', 'br ', 'br ---', 'br ', 'te Zub ran.', 'ga '],
    ].join('\n'),
  )
})

it('leaves a line to write on in an empty page, between two paragraphs and at the end', () => {
  expect(draw('A\n\n---\n\n\n\n---\n\nB')).toBe('te A\nbr \nbr ---\nbr \nte \nbr \nbr ---\nbr \nte B')
  expect(draw('A\n\n\n\nB')).toBe('te A\nga \nte \nga \nte B')
  expect(draw('A\n\n---\n\n')).toBe('te A\nbr \nbr ---\nbr \nte ')
  expect(draw('---\nstep: pink-4\n---\n')).toBe('fr ---\nfr step: pink-4\nfr ---\nte ')
})

it('folds nothing that would leave no line to write on', () => {
  expect(draw('---\nstep: pink-4\n---')).toBe('te ---\nte step: pink-4\nte ---')
  expect(draw('A\n\n---')).toBe('te A\nga \nte ---')
})

it('takes dashes right below a text for what they are: a heading of that text', () => {
  expect(draw('A\n---\nB')).toBe('te A\nte ---\nte B')
})

const line = fc.constantFrom(
  'Tam sat.',
  '',
  '',
  '---',
  '***',
  '# Tam',
  '> Read it.',
  '![a hat](hat.svg)',
  '  ',
  'a - b',
)
const source = fc.array(line, { minLength: 1, maxLength: 14 }).map((lines) => lines.join('\n'))

it('never hides what somebody wrote', () => {
  fc.assert(
    fc.property(source, (text) => {
      const doc = toText(text)
      const { hidden, front } = toShape(doc)
      for (const { kind, from, to } of hidden) {
        const away = doc.sliceString(from, kind === 'prefix' ? to + 1 : to)
        if (kind === 'prefix') expect(away).toMatch(/^\s*(?:#+|>) ?$/)
        else if (kind === 'break') expect(away).toMatch(/^[\s*_-]*$/)
        else if (kind === 'gap') expect(away.trim()).toBe('')
        else expect(front).toMatchObject({ from, to })
      }
      for (let at = 1; at < hidden.length; at++) expect(hidden[at - 1]!.to).toBeLessThan(hidden[at]!.from)
    }),
    { numRuns: 2000 },
  )
})

it('has a head for each page of the story model', () => {
  const paragraph = fc.constantFrom('Tam sat.', 'Zub ran.\n\nTam sat.', '> Read it.\n\nTam had a hat.')
  const story = fc.array(paragraph, { minLength: 1, maxLength: 6 }).map((pages) => pages.join('\n\n---\n\n'))
  fc.assert(
    fc.property(story, fc.constantFrom('', '---\nstep: pink-4\n---\n\n'), (body, front) => {
      const doc = toText(front + body)
      const pages = readStory(front + body).pages.map((page) => ({ ...page, words: 1, notYet: 0 }))
      const heads = toHeads(doc, toShape(doc), pages)
      expect(heads.map(({ number }) => number)).toEqual(pages.map(({ number }) => number))
      for (const head of heads) expect(head.page).toBeDefined()
    }),
    { numRuns: 500 },
  )
})

it('a key within a line of text moves what was found, and finds what would be found anew', () => {
  let moves = 0
  fc.assert(
    fc.property(
      fc.array(line, { maxLength: 14 }),
      fc.nat(),
      fc.nat(3),
      fc.constantFrom('a', ' ', 'Tam ran.', '-', '#', '>', '!', '-->', '\n', ''),
      (lines, place, length, insert) => {
        const state = EditorState.create({ doc: lines.join('\n') })
        const from = place % (state.doc.length + 1)
        const to = Math.min(from + length, state.doc.length)
        const transaction = state.update({ changes: { from, to, insert } })
        const moved = transaction.docChanged ? moveShape(toShape(state.doc), transaction) : undefined
        if (moved === undefined) return
        moves++
        expect(moved).toEqual(toShape(transaction.newDoc))
      },
    ),
    { numRuns: 5000 },
  )
  expect(moves).toBeGreaterThan(500)
})
