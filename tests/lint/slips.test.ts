// What is said of misspelt words in a story: that they are, before anything else.

import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { rules } from '../../rules/index.ts'
import { createStoryContext } from '../../src/lint/context.ts'
import { runRules } from '../../src/lint/run.ts'
import type { Message } from '../../src/lint/types.ts'
import { readStory } from '../../src/story/index.ts'
import { testPhonics } from '../lexicon-for-tests.ts'
import { readSequence } from '../unified/pipeline.ts'

const phonics = testPhonics('general-american')

const check = (source: string, step: string): readonly Message[] =>
  runRules(createStoryContext(readStory(source), { phonics, sequence: readSequence('series'), step }), rules)

// Common practice, no source: see the head of the table.
const ROWS = readFileSync(new URL('../phonics/data/misspellings-of-children.tsv', import.meta.url), 'utf8')
  .trimEnd()
  .split('\n')
  .filter((row) => !row.startsWith('#'))
  .slice(1)
  .map((row) => row.split('\t') as [written: string, meant: string])

describe.each(['pink-4', 'green-14'])('at %s the first that is said', (step) => {
  const messages = check(ROWS.map(([written]) => `The ${written} is big.`).join('\n\n'), step)

  it.each(ROWS)('of %s is %s', (written, meant) => {
    const first = messages.find(({ word }) => word === written)
    expect(`${first?.message} ${first?.note}`).toContain(`\`${meant}\``)
  })
})

it.each([
  // The letters of a misspelt word are never to be taught.
  ['freind', 'Did you mean `friend`? If not, use another word, or list `freind` under `sight words`.'],
  ['feild', 'Did you mean `field` or `filed`? If not, use another word, or list `feild` under `sight words`.'],
])('%s: %s', (word, note) => {
  const errors = check(`The ${word} is big.`, 'pink-4').filter(
    (message) => message.word === word && message.severity === 'error',
  )
  expect(errors.map((message) => message.note?.slice(0, note.length))).toEqual([note])
})

it.each([
  ['a name', 'I met Verry. Then Verry ran.', 'Verry'],
  ['a word that a child can read by its letters', 'The zog is big.', 'zog'],
])('%s is not told as misspelt', (_, source, word) => {
  const told = check(source, 'green-14').filter((message) => message.word === word)
  expect(told.map(({ note }) => note ?? '').join(' ')).not.toContain('Did you mean')
})
