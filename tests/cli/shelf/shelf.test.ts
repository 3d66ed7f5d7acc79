import { afterAll, describe, expect, it } from 'vitest'
import { compileSchema, createVocabularyWorld, readCsv } from '../vocabulary-world.ts'

const world = createVocabularyWorld({ 'empty/readme.txt': '' })
afterAll(() => world.remove())

const toReport = async (...args: readonly string[]) =>
  JSON.parse((await world.run('shelf', ...args, '--format', 'json')).out)

describe('a shelf', () => {
  it('as its schema says', async () => {
    const validate = compileSchema('shelf')
    const report = await toReport('books')
    validate(report)
    expect(validate.errors ?? []).toEqual([])
    expect(validate({ ...report, books: [{ ...report.books[0], pages: '2' }] })).toBe(false)
  })

  // Night cannot be read before green-10 in the series, and `I read it` does not tell which of two words it has.
  it('says where the words stand that make a book too hard for its step, or unsure', async () => {
    world.write({
      'held/hard.md': '---\nstep: pink-4\n---\n\nTam had a nap at night.\n',
      'held/open.md': '---\nstep: green-2\n---\n\nI had a nap.\n\nI read it.\n',
    })
    const { out } = await world.run('shelf', 'held')
    expect(out).toMatch(/^ {2}night once at held\/hard\.md:5:18 \(green-\d+\)$/m)
    expect(out).toContain('read once at held/open.md:7:3 (green-13, not settled)')
    const { books } = await toReport('held')
    expect(books.map(({ heldBackBy }: { heldBackBy: unknown[] }) => heldBackBy)).toMatchObject([
      [{ word: 'night', times: 1, line: 5, column: 18 }],
      [{ word: 'read', readableAt: 'green-13', line: 7, column: 3, unsettled: true }],
    ])
  })

  // By hand: hat 11 words (tam had a hat the hat is red meg met tam), 9 different; fish 12 words (the fish is wet meg said the fish is in a dish), 9 different, 5 of them new.
  it('the figures, counted by hand', async () => {
    const { books, sightWords } = await toReport('books')
    expect(books[0]).toMatchObject({
      place: 1,
      title: 'The hat',
      pages: 2,
      words: 11,
      different: 9,
      readableShare: 1,
      earliestStep: 'pink-5',
    })
    expect(books[0].practises).toEqual([{ pattern: 'e', words: 3, different: 3 }])
    expect(books[1]).toMatchObject({
      place: 2,
      words: 12,
      different: 9,
      newWords: ['fish', 'wet', 'said', 'in', 'dish'],
    })
    expect(sightWords.find(({ word }: { word: string }) => word === 'the')).toEqual({
      word: 'the',
      firstBook: 1,
      times: [1, 2, 1],
    })
  })

  it('within 80 columns and without colour', async () => {
    const narrow = createVocabularyWorld({}, 80)
    const { code, out } = await narrow.run('shelf', 'books')
    narrow.remove()
    expect(code).toBe(0)
    expect(out.split('\n').every((line) => line.length <= 80)).toBe(true)
    expect(out).not.toContain('\u001b')
    expect(out).toMatch(/\n {2}the +1 2 1 {2}4 times, back in 2 of 2 later books\n/)
    expect(out).toMatch(/\n {2}sh +- 3 0 {2}3 times, back in 0 of 1 later book\n/)
  })

  it('a table for a spreadsheet, in which a title is no formula', async () => {
    const { out } = await world.run('shelf', 'books', '--format', 'csv')
    expect(out.endsWith('\r\n')).toBe(true)
    expect(out.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/)
    const rows = readCsv(out)
    expect(rows.map(({ length }) => length)).toEqual([14, 14, 14, 14])
    expect(rows[3]?.[2]).toBe(`'=SUM(A1), "the boat"`)
    expect(rows[1]?.[7]).toBe('11')
  })

  it('squeezes many books into the width', async () => {
    const many = createVocabularyWorld(
      Object.fromEntries(
        Array.from({ length: 150 }, (_, at) => [
          `many/${at}.md`,
          `---\nstep: pink-6\norder: ${at}\n---\n\nThe hat is red.\n`,
        ]),
      ),
      80,
    )
    const { out } = await many.run('shelf', 'many')
    many.remove()
    expect(out).toMatch(/Each column stands for \d+ books, in order/)
    expect(out.split('\n').every((line) => line.length <= 80)).toBe(true)
  })
})

describe('what is wrong is told in one line each, and the rest is shown', () => {
  it('an empty shelf', async () => {
    const { code, out, err } = await world.run('shelf', 'empty')
    expect([code, out, err]).toEqual([2, '', 'battledore: There are no stories (files that end in .md) in `empty`.\n'])
  })

  it('two books with one order, a pattern that the sequence lacks, a step that it lacks, a file that is no text', async () => {
    const bad = createVocabularyWorld({
      'bad/a.md': '---\nstep: pink-6\norder: 1\npractises: [xz]\n---\n\nTam sat.\n',
      'bad/b.md': '---\nstep: pink-6\norder: 1\n---\n\nTam sat.\n',
      'bad/c.md': '---\nstep: pink-99\n---\n\nTam sat.\n',
      'bad/d.md': '\u0000',
      'bad/e.md': 'Tam sat.\n',
    })
    const { code, out, err } = await bad.run('shelf', 'bad', '--format', 'csv')
    bad.remove()
    expect(code).toBe(2)
    expect(err.trim().split('\n')).toEqual([
      'battledore: bad/c.md:2:7: error: The sequence `series` has no step `pink-99`, so the book stands here without a step',
      'battledore: `bad/d.md` is not a text: it holds bytes that no text has.',
      'battledore: bad/a.md: `order: 1` is also that of bad/b.md. They stand by step, then by file name.',
      'battledore: bad/a.md practises `xz`, which no step of the sequence `series` teaches.',
    ])
    expect(
      readCsv(out)
        .slice(1)
        .map((row) => row[1]),
    ).toEqual(['bad/a.md', 'bad/b.md', 'bad/c.md', 'bad/e.md'])
  })

  it('is a finding where all could be read', async () => {
    world.write({
      'twins/a.md': '---\nstep: pink-6\norder: 1\n---\n\nTam sat.\n',
      'twins/b.md': '---\nstep: pink-6\norder: 1\n---\n\nTam sat.\n',
    })
    expect((await world.run('shelf', 'twins')).code).toBe(1)
  })
})

it('check --shelf: what earlier books have used is not new', async () => {
  world.write({
    'books/battledore.yaml':
      'names: [Tam, Meg, Sid, Zub]\nrules:\n  max-new-words: { severity: warning, page: 0, book: 1 }\n',
  })
  const alone = await world.run('check', 'books/fish.md', '--format', 'line')
  const after = await world.run('check', 'books/fish.md', '--shelf', 'books', '--format', 'line')
  expect(alone.out).toContain('The book brings 9 new words; your settings allow at most 1')
  expect(after.out).toContain(
    'The book brings 5 new words; your settings allow at most 1: `fish`, `wet`, `said`, `in`, `dish`',
  )
})

it('check --shelf --cache: a change of an earlier book is seen', async () => {
  const args = ['check', 'books/fish.md', '--shelf', 'books', '--cache-file', 'kept.json', '--format', 'line']
  const first = await world.run(...args)
  expect((await world.run(...args)).out).toBe(first.out)
  world.write({ 'books/hat.md': '---\nstep: pink-6\norder: 1\n---\n\nThe wet fish.\n' })
  expect((await world.run(...args)).out).toContain('The book brings 6 new words')
})
