import { describe, expect, it } from 'vitest'
import { createVocabulary, type Shelf, toFirstPlaces, toShelf } from '../../src/shelf/index.ts'
import { toTestBook } from './engine.ts'
import { FIVE_PAGES, TIMES, TOTAL } from './five-pages.ts'

const SECOND = `---
title: The fish
step: green-1
order: 2
practises: [sh]
introduces: [said]
---

The fish is wet. Meg said: "The fish is in a dish!"
`

async function toTestShelf(books: Readonly<Record<string, string>>): Promise<Shelf> {
  const vocabulary = createVocabulary()
  const all = []
  for (const [path, text] of Object.entries(books)) all.push(await toTestBook(path, text, vocabulary))
  return toShelf(all, vocabulary)
}

const FIRST = `---\ntitle: The hat\nstep: pink-6\norder: 1\npractises: [e]\n---\n\n${FIVE_PAGES}`

describe('a shelf of two books, counted by hand', async () => {
  const shelf = await toTestShelf({ 'z.md': FIRST, 'a.md': SECOND })
  const [first, second] = shelf.books

  it('a row a book', () => {
    expect(first).toMatchObject({
      title: 'The hat',
      pages: 5,
      words: 26,
      different: 14,
      share: TOTAL.readableShare,
      earliest: { step: 'pink-5' },
    })
    expect(first?.newWords.map((word) => word.toLowerCase())).toEqual(Object.keys(TIMES))
    expect(second).toMatchObject({ title: 'The fish', pages: 1, words: 12, different: 9 })
    expect(second?.newWords).toEqual(['wet', 'Meg', 'said', 'dish'])
  })

  it('patterns, with the words that have them', () => {
    expect(first?.practises).toEqual([{ pattern: 'e', words: 4, different: 2 }])
    expect(second?.practises).toEqual([{ pattern: 'sh', words: 3, different: 2 }])
    expect(shelf.patterns).toEqual([
      { what: 'e', first: 0, times: [4, 2] },
      { what: 'sh', first: 1, times: [0, 3] },
    ])
  })

  it('sight words: where they are first met and how they come back', () => {
    expect(first?.newSightWords).toEqual(['a', 'the', 'is'])
    expect(second?.newSightWords).toEqual(['said'])
    const times = Object.fromEntries(shelf.sightWords.map((row) => [row.what, row.times]))
    expect(times).toEqual({ a: [2, 1], the: [5, 2], is: [2, 2], said: [0, 1] })
  })

  it('what is missing', () => {
    expect(shelf.neverReturning).toEqual([])
    const [steps] = shelf.missingSteps
    expect(steps?.sequence).toBe('series')
    expect(steps?.steps).not.toContain('pink-6')
    expect(steps?.steps).not.toContain('green-1')
    expect(steps?.steps).toHaveLength((first?.sequence.steps.length ?? 0) - 2)
  })
})

describe('the order of a shelf', () => {
  const toTitles = async (books: Readonly<Record<string, string>>) =>
    (await toTestShelf(books)).books.map(({ path }) => path)
  const book = (more: string) => `---\n${more}\n---\n\nTam sat.\n`

  it('is that of `order`, else of the steps, else of the file names', async () => {
    expect(
      await toTitles({
        'a.md': 'Tam sat.\n',
        'b.md': book('step: blue-1'),
        'c.md': book('step: pink-2'),
        'd.md': book('order: 2'),
        'e.md': book('order: 1\nstep: green-2'),
        'f.md': book('step: pink-2'),
      }),
    ).toEqual(['e.md', 'd.md', 'c.md', 'f.md', 'b.md', 'a.md'])
  })

  it('two books with one order are told, and both are shown', async () => {
    const shelf = await toTestShelf({ 'b.md': book('order: 1\nstep: pink-3'), 'a.md': book('order: 1\nstep: pink-4') })
    expect(shelf.books.map(({ path }) => path)).toEqual(['b.md', 'a.md'])
    expect(shelf.problems).toMatchObject([
      {
        path: 'b.md',
        message: 'b.md: `order: 1` is also that of a.md',
        note: 'They stand by step, then by file name.',
      },
    ])
  })

  it('a pattern that the sequence does not have is told', async () => {
    const shelf = await toTestShelf({ 'a.md': book('step: pink-3\npractises: [a, xz]') })
    expect(shelf.problems.map(({ message }) => message)).toEqual([
      expect.stringMatching(/ practises `xz`, which no step of the sequence `series` teaches$/),
    ])
    expect(shelf.books[0]?.practises).toEqual([
      { pattern: 'a', words: 2, different: 2 },
      { pattern: 'xz', words: 0, different: 0 },
    ])
  })

  it('a sight word of the last book is not called lost; one of an earlier book is', async () => {
    const shelf = await toTestShelf({
      'a.md': '---\nstep: pink-5\norder: 1\n---\n\nTam was sad.\n',
      'b.md': '---\nstep: pink-5\norder: 2\n---\n\nIt is the hat.\n',
    })
    expect(shelf.neverReturning).toEqual(['was'])
  })

  it('holds nothing where there is no book', () => {
    expect(toShelf([], createVocabulary())).toMatchObject({ books: [], sightWords: [], problems: [], missingSteps: [] })
  })
})

it('where each word is first used', async () => {
  const vocabulary = createVocabulary()
  const books = [
    await toTestBook('a.md', 'The hat. Tam’s hat.', vocabulary),
    await toTestBook('b.md', 'The hen.', vocabulary),
  ]
  expect(Object.fromEntries(toFirstPlaces(books, vocabulary))).toEqual({ the: 0, hat: 0, "tam's": 0, hen: 1 })
})
