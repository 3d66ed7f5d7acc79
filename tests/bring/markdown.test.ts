// Text that is brought in comes out word for word, and page for page, when the story is read.

import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { toPlain, toStory } from '../../src/bring/markdown.ts'
import { cutPages } from '../../src/bring/pages.ts'
import { tidyRuns } from '../../src/bring/runs.ts'
import type { Piece } from '../../src/bring/types.ts'
import { readStory } from '../../src/story/index.ts'

const toRuns = (text: string) => [{ text, bold: false, italic: false }]
const toSpaces = (text: string): string => text.replace(/[\s\u00a0]+/g, ' ').trim()

/** What Markdown would take for a mark of its own, in the midst of words. No `@`: a child does not read addresses. */
const AWKWARD =
  '# ## - + * ** _ __ ~ ~~~ ` ``` > < <b> </b> <!-- --> & &amp; &#65; [ ] ( ) ![x](y) [a]: 1. 1) 10. | \\ \\* = === --- *** ___ : :: { } ^ $ % ! ? … “ ” ’ ‘ " \' é ñ 3'.split(
    ' ',
  )
const token = fc.oneof(
  { weight: 3, arbitrary: fc.constantFrom('Zub', 'had', 'a', 'hat', 'sheep', 'I', "isn't", 'Mr.', 'the') },
  { weight: 2, arbitrary: fc.constantFrom(...AWKWARD) },
)
const run = fc.record({
  text: fc
    .array(fc.tuple(token, fc.constantFrom(' ', ' ', '', '\n')), { minLength: 1, maxLength: 6 })
    .map((parts) => parts.flat().join('')),
  bold: fc.boolean(),
  italic: fc.boolean(),
})
const paragraph = fc
  .array(run, { minLength: 1, maxLength: 4 })
  .map((runs) => tidyRuns([{ text: 'Zub ', bold: false, italic: false }, ...runs]))
const pages = fc.array(fc.array(paragraph, { minLength: 1, maxLength: 3 }), { minLength: 1, maxLength: 4 })

describe('generated texts', () => {
  it('come out word for word on the same pages', () => {
    fc.assert(
      fc.property(pages, (wanted) => {
        const pieces = wanted.map((page) => page.map((runs): Piece => ({ kind: 'text', runs })))
        const story = readStory(toStory(pieces, { title: 'Zub: a "hat"' }, () => ''))
        const texts = story.pages.map((page) => page.blocks.map(({ text }) => toSpaces(text)))
        expect(texts).toEqual(wanted.map((page) => page.map((runs) => toSpaces(toPlain(runs)))))
      }),
      { numRuns: 300 },
    )
  })
})

const text = (words: string): Piece => ({ kind: 'text', runs: toRuns(words) })
const heading = (words: string): Piece => ({ kind: 'heading', runs: toRuns(words) })
const picture: Piece = { kind: 'picture', picture: { alt: 'a hat', source: 'hat.png', content: undefined } }
const page: Piece = { kind: 'break' }
const gap: Piece = { kind: 'gap' }

// One page where the source has one: page break, form feed, heading, picture (issue text; common practice, no source).
const CASES: readonly (readonly [what: string, pieces: readonly Piece[], pages: number])[] = [
  ['nothing marks a page', [text('a'), text('b')], 1],
  ['page breaks', [text('a'), page, text('b'), page, text('c')], 3],
  ['a page break before the first and after the last page', [page, text('a'), page, text('b'), page], 2],
  ['two page breaks in a row leave no empty page', [text('a'), page, page, text('b')], 2],
  ['a title is no page', [heading('The hat'), text('a'), page, text('b')], 2],
  [
    'a title and a picture alone on the first sheet are its cover',
    [heading('The hat'), picture, page, text('a'), page, text('b')],
    2,
  ],
  ['headings after the title', [heading('The hat'), text('a'), heading('Two'), text('b')], 2],
  ['a heading right after a page break', [text('a'), page, heading('Two'), text('b')], 2],
  ['one picture is no mark', [picture, text('a'), text('b')], 1],
  ['pictures above their text', [heading('The hat'), picture, text('a'), picture, text('b'), picture, text('c')], 3],
  ['pictures below their text', [text('a'), picture, text('b'), picture], 2],
  ['pictures do not count where pages are marked', [picture, text('a'), picture, page, text('b')], 2],
  ['three empty lines', [text('a'), gap, gap, gap, text('b')], 2],
  ['two empty lines', [text('a'), gap, gap, text('b')], 1],
  ['empty lines do not count where pages are marked', [text('a'), gap, gap, gap, text('b'), page, text('c')], 2],
]

it.each(CASES)('%s', (_, pieces, wanted) => {
  const cut = cutPages(pieces)
  expect(cut.pages).toHaveLength(wanted)
  const story = readStory(toStory(cut.pages, {}, () => 'hat.png'))
  expect(story.pages).toHaveLength(wanted)
})

it('says where pages were found otherwise than by a mark', () => {
  expect(cutPages([picture, text('a'), picture, text('b')]).notes).toEqual([{ code: 'pictures-are-pages', count: 1 }])
  expect(cutPages([text('a'), gap, gap, gap, text('b')]).notes).toEqual([{ code: 'empty-lines-are-pages', count: 1 }])
  expect(cutPages([text('a'), page, text('b')]).notes).toEqual([])
})

it('writes one look of letters as plain text, and keeps marked letters', () => {
  const bold = { bold: true, italic: false }
  const plain = { bold: false, italic: false }
  const all: Piece = { kind: 'text', runs: [{ text: 'A hat.', ...bold }] }
  const some: Piece = {
    kind: 'text',
    runs: [
      { text: 'sh', ...plain },
      { text: 'ee', ...bold },
      { text: 'p', ...plain },
    ],
  }
  expect(toStory([[all, some]], {}, () => '')).toBe('A hat.\n\nsh**ee**p\n')
})
