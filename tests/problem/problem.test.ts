// Problems in words: nothing is glued together, nothing is said twice, and places stay numbers.

import { describe, expect, it } from 'vitest'
import {
  inOrder,
  type Place,
  toProblem,
  toProblemKey,
  toProblemLine,
  toProblemText,
  withOrigin,
} from '../../src/problem/index.ts'

const place = (line: number, column: number, offset = line * 100 + column): Place => ({
  start: { line, column, offset },
  end: { line, column: column + 3, offset: offset + 3 },
})

const missing = toProblem({ code: 'missing-file', message: '`mine.yaml` is not there', path: 'mine.yaml' })
const misspelt = toProblem({
  code: 'unknown-key',
  message: 'Unknown key `sightwords`',
  expected: ['sight words'],
  path: 'Year (1)/mine.yaml',
  place: place(6, 9),
})

describe('in words', () => {
  it.each([
    [missing, '`mine.yaml` is not there'],
    [{ ...missing, setBy: { origin: '--sequence' } }, '`mine.yaml` is not there (set in --sequence)'],
    [{ ...missing, setBy: { origin: 'default' } }, '`mine.yaml` is not there (the default)'],
    [{ ...missing, note: 'Name a file.' }, '`mine.yaml` is not there. Name a file.'],
    [misspelt, 'Unknown key `sightwords`. Did you mean `sight words`?'],
    [
      { ...misspelt, setBy: { origin: '--sequence' }, note: 'See the page on sequences.' },
      'Unknown key `sightwords`. Did you mean `sight words`? See the page on sequences.',
    ],
  ])('%#', (problem, text) => {
    expect(toProblemText(problem)).toBe(text)
  })

  it('has a place, or is a whole sentence', () => {
    expect(toProblemLine(misspelt)).toBe(
      'Year (1)/mine.yaml:6:9: error: Unknown key `sightwords`. Did you mean `sight words`?',
    )
    expect(toProblemLine({ ...missing, setBy: { origin: '--sequence' } })).toBe(
      '`mine.yaml` is not there (set in --sequence).',
    )
  })
})

describe('an origin', () => {
  const inStory = { origin: 'top of the story, line 2', path: 'a.md', at: place(2, 7) }

  it('gives its place to a problem that has none', () => {
    const { path, place: at } = withOrigin(missing, inStory)
    expect([path, at]).toEqual(['a.md', inStory.at])
    expect(toProblemLine(withOrigin(missing, inStory))).toBe('a.md:2:7: error: `mine.yaml` is not there')
  })

  it('leaves a place as it is', () => {
    const { path, place: at, setBy } = withOrigin(misspelt, inStory)
    expect([path, at, setBy]).toEqual(['Year (1)/mine.yaml', misspelt.place, inStory])
  })

  it('has no place where a flag set the value', () => {
    expect(withOrigin(missing, { origin: '--sequence' })).toEqual({ ...missing, setBy: { origin: '--sequence' } })
  })
})

it('problems are put in order of place', () => {
  const at = (line: number) => ({ ...misspelt, place: place(line, 1) })
  expect(inOrder([at(3), missing, at(1)])).toEqual([missing, at(1), at(3)])
})

it('the same mistake has the same key, whoever set the value', () => {
  expect(toProblemKey(withOrigin(misspelt, { origin: '--sequence' }))).toBe(toProblemKey(misspelt))
  expect(toProblemKey({ ...misspelt, place: place(7, 9) })).not.toBe(toProblemKey(misspelt))
})
