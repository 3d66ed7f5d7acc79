import { afterAll, describe, expect, it } from 'vitest'
import { compileSchema, createVocabularyWorld, readCsv } from '../vocabulary-world.ts'

const world = createVocabularyWorld({
  'other/lost.yaml': 'name: Ned\nsequence: serie\nstep: pink-1\n',
  'other/sid.yaml': 'name: Sid\nstep: green-1\n',
  'none/x.txt': '',
})
afterAll(() => world.remove())

interface Report {
  readonly note: string
  readonly readers: readonly { readonly name: string }[]
  readonly books: readonly {
    readonly path: string
    readonly words: number
    readonly readers: readonly {
      readonly readableShare: number
      readonly state: string
      readonly teach: readonly unknown[]
    }[]
  }[]
}

const toReport = async (...args: readonly string[]): Promise<Report> =>
  JSON.parse((await world.run('match', ...args, '--format', 'json')).out)

describe('books and readers', () => {
  it('as its schema says', async () => {
    const validate = compileSchema('match')
    const report = await toReport('books', '--readers', 'class', '--teach', '4')
    validate(report)
    expect(validate.errors ?? []).toEqual([])
    expect(report.readers.map(({ name }) => name)).toEqual(['Meg', 'Sid'])
    expect(report.books.flatMap(({ readers }) => readers.flatMap(({ teach }) => teach)).length).toBeGreaterThan(0)
  })

  // By hand: Meg, at pink-6 with `said`, cannot read fish (twice) and dish: 9 of 12. `sh` makes both readable but for their four letters.
  it('the figures of one book, counted by hand', async () => {
    const { books } = await toReport('books/fish.md', '--readers', 'class/meg.yaml')
    expect(books).toMatchObject([
      {
        words: 12,
        readers: [
          { readable: 9, readableShare: 0.75, state: 'nearly', teach: [{ kind: 'word', word: 'fish', times: 2 }] },
        ],
      },
    ])
  })

  it('gives the share that a check for the same reader gives', async () => {
    const { books } = await toReport('books', '--readers', 'class')
    for (const [at, file] of ['class/meg.yaml', 'class/sid.yaml'].entries()) {
      const { out, err } = await world.run('check', 'books', '--reader', file, '--format', 'json')
      const shares = JSON.parse(out).files.map((one: { totals: { readableShare: number } }) => one.totals.readableShare)
      expect(books.map(({ readers }) => readers[at]?.readableShare)).toEqual(shares)
      expect(err).toContain('It assesses no child and tests for no condition.')
    }
  })

  it('shows what is ready, nearly ready and what to teach first, best first, within 80 columns', async () => {
    const { code, out } = await world.run('match', 'books', '--readers', 'class')
    expect(code).toBe(0)
    expect(out.replace(/\s+/g, ' ')).toContain(
      'It assesses no child and tests for no condition. Names stay on this machine.',
    )
    expect(out).toContain('Meg, at pink-6\n  Ready now: The hat (100 %).\n')
    expect(out).toContain('Nearly ready: The fish (75 %). Teach first: the word fish.')
    expect(out.split('\n').every((line) => line.length <= 80)).toBe(true)
    expect(out).not.toContain('\u001b')
  })

  it('a table for a spreadsheet', async () => {
    const rows = readCsv((await world.run('match', 'books', '--readers', 'class', '--format', 'csv')).out)
    expect(rows[0]).toEqual(['path', 'title', 'words', 'Meg (pink-6)', 'Sid (green-1)'])
    expect(rows[2]).toEqual(['books/fish.md', 'The fish', '12', '0.75', '1'])
  })
})

describe('what is wrong', () => {
  it('a reader of an unknown sequence is told in one line, and the others are matched', async () => {
    const { code, out, err } = await world.run('match', 'books/hat.md', '--readers', 'other', '--format', 'csv')
    expect([code, err]).toEqual([
      2,
      'battledore: other/lost.yaml:2:11: error: There is no sequence `serie`. Did you mean `series`?\n',
    ])
    expect(readCsv(out)[0]).toContain('Sid (green-1)')
  })

  it.each([
    ['missing', 'There is no file or folder `missing`.'],
    ['none', 'There are no readers (files that end in .yaml) in `none`.'],
  ])('readers in %s', async (readers, message) => {
    const { code, err } = await world.run('match', 'books', '--readers', readers)
    expect([code, err]).toEqual([2, `battledore: ${message}\n`])
  })

  it('too much to teach', async () => {
    expect((await world.run('match', 'books', '--readers', 'class', '--teach', '99')).err).toContain(
      '--teach is a whole number from 0 to 8',
    )
  })
})

it('a sequence of one’s own is found from the reader file', async () => {
  world.write({
    'own/steps.yaml': 'name: own\nsteps:\n  - id: one\n    teach: [a as in cat, t as in cat, s as in sat]\n',
    'own/readers/ned.yaml': 'name: Ned\nsequence: ../steps.yaml\nstep: one\n',
    'own/sat.md': 'Sat at a tap.\n',
  })
  const { books } = await toReport('own/sat.md', '--readers', 'own/readers')
  const { out } = await world.run('check', 'own/sat.md', '--reader', 'own/readers/ned.yaml', '--format', 'json')
  expect(books[0]?.readers[0]?.readableShare).toBe(0.5)
  expect(JSON.parse(out).files[0]).toMatchObject({ sequence: 'own', totals: { readableShare: 0.5 } })
})

describe('check --reader', () => {
  it('says of what the reader lacks that it was taught', async () => {
    world.write({
      'bat.md': 'A bad cat sat.\n',
      'ned.yaml': 'name: Ned\nstep: pink-6\nnot yet:\n  correspondences: [b as in bat]\n  sight words: [a]\n',
    })
    const { code, out } = await world.run('check', 'bat.md', '--reader', 'ned.yaml', '--format', 'line')
    expect(code).toBe(1)
    expect(out).toContain('`bad` has `b` as in `bat`, taught at step pink-2, which this reader does not know yet')
    expect(out).toContain('`A` is a sight word taught at step pink-2, which this reader does not know yet')
  })

  it('is overruled by a flag, and refuses many readers', async () => {
    const { out } = await world.run(
      'check',
      'books/hat.md',
      '--reader',
      'class/meg.yaml',
      '--step',
      'pink-1',
      '--format',
      'json',
    )
    expect(JSON.parse(out).files[0].step).toBe('pink-1')
    expect((await world.run('check', 'books', '--reader', 'class')).err).toContain(
      '--reader takes one reader file; class holds 2.',
    )
  })
})
