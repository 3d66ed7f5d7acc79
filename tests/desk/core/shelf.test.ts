// The shelf of the desk has the figures of `battledore shelf --format json`, and reads again only what has changed.

import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, expect, it } from 'vitest'
import { main } from '../../../src/cli/main.ts'
import { createWorld } from '../../cli/io.ts'
import { ROOT } from '../../console.ts'
import { filesInMemory, openDesk } from './host.ts'

const FOLDER = join(ROOT, 'fixtures', 'shelf')
const shelf = Object.fromEntries(readdirSync(FOLDER).map((name) => [name, readFileSync(join(FOLDER, name), 'utf8')]))
const files = {
  ...shelf,
  'README.md': '# For adults\n',
  'broken.md': '\u0000\u0001',
  'no-step.md': '# A Cat\n\nA cat sat.\n',
}

const world = createWorld(files)
afterAll(() => world.remove())

it('has the figures of the command', async () => {
  await main(['shelf', '.', '--share', '1', '--format', 'json'], world.io)
  const said = JSON.parse(world.out())
  const desk = await openDesk(filesInMemory(files))
  const answer = await desk.ask({ kind: 'shelf' })
  expect(answer.books.length).toBeGreaterThan(3)
  expect(
    answer.books.map(
      ({
        path,
        order,
        step,
        pages,
        words,
        different,
        newWords,
        readableShare,
        earliestStep,
        practises,
        newSightWords,
      }) => ({
        ...{ path, order, pages, words, different, newWords, readableShare, earliestStep, practises, newSightWords },
        step: step?.id ?? null,
      }),
    ),
  ).toEqual(
    said.books.map(
      // What holds a book back is told by the page of the book itself.
      ({
        place: _,
        title: _title,
        sequence: _sequence,
        accent: _accent,
        heldBackBy: _held,
        ...book
      }: Record<string, unknown>) => book,
    ),
  )
  expect(answer.missingSteps).toMatchObject(said.missing.steps)
  expect(answer.neverReturning).toEqual(said.missing.sightWords)
  expect(answer.unread).toMatchObject([
    { path: 'broken.md', problems: [{ message: expect.stringContaining('not a text') }] },
  ])
  const returns = answer.books.flatMap((book, at) => book.returns.map(({ word, times }) => [word, at, times]))
  const byCommand = said.sightWords.flatMap(
    ({ word, firstBook, times }: { word: string; firstBook: number; times: number[] }) =>
      times.flatMap((count, at) => (at > firstBook - 1 && count > 0 ? [[word, at, count]] : [])),
  )
  expect(returns.sort()).toEqual(byCommand.sort())
})

it('holds what the folder says stands on it, and no other story', async () => {
  const { list: _, ...memory } = filesInMemory(files)
  const stories = ['README.md', '01-tam-and-the-hat.md']
  const desk = await openDesk({ ...memory, list: async () => ({ list: Object.keys(files), stories }) })
  const { books, unread } = await desk.ask({ kind: 'shelf' })
  expect([...books, ...unread].map(({ path }) => path).sort()).toEqual([...stories].sort())
})

it('takes the text on the screen for the file of that name', async () => {
  const desk = await openDesk(filesInMemory(files))
  const path = '01-tam-and-the-hat.md'
  const text = '---\nstep: pink-4\n---\n\n# The Hat\n\nTam won it.\n'
  const answer = await desk.ask({ kind: 'shelf', open: { path, text, version: 4 } })
  expect(answer.books.find((book) => book.path === path)).toMatchObject({
    title: 'The Hat',
    words: 5,
    notYet: expect.any(Number),
  })
  const check = await desk.ask({ kind: 'check', story: { path, text, version: 4 } })
  expect(answer.books.find((book) => book.path === path)?.notYet).toBe(check.checked && check.total.notYet)
})
