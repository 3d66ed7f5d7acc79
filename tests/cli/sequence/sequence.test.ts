// `battledore sequence`: what it shows of a sequence, and what it says of a file with mistakes.

import { afterAll, expect, it } from 'vitest'
import { createVocabularyWorld } from '../vocabulary-world.ts'

const ONE = `name: one
steps:
  - id: first
    teach: [a as in cat, t as in cat]
    limits:
      letters: 1
      syllables: 1
      words in a sentence: 1
      sentences on a page: 1
      words on a page: any
`
const world = createVocabularyWorld({
  'one.yaml': ONE,
  'two.yaml': `${ONE}  - id: second\n    limits: {letters: 2, syllables: any}\n`,
  'near.yaml': 'name: own\nextends: serie\nsteps:\n  - id: mine\n',
  'far.yaml': 'name: own\nextends: phonics\nsteps:\n  - id: mine\n',
})
afterAll(() => world.remove())

it('says one step, one letter, one sentence', async () => {
  const { code, out } = await world.run('sequence', 'one.yaml')
  expect(code).toBe(0)
  expect(out).toContain('one: one\n1 step.\n')
  expect(out.replace(/\s+/g, ' ')).toContain(
    'limits: 1 letter in a word, 1 syllable in a word, 1 word in a sentence, 1 sentence on a page and any number of words on a page',
  )
})

it('says two steps, two letters', async () => {
  const { out } = await world.run('sequence', 'two.yaml')
  expect(out).toContain('one: one\n2 steps. Each step knows all before it.\n')
  expect(out).toContain('limits: 2 letters in a word and any number of syllables in a word')
})

it('offers the nearest sequence to extend, or all of them', async () => {
  expect((await world.run('sequence', 'near.yaml')).err).toBe(
    'battledore: near.yaml:2:10: error: There is no sequence `serie` to extend. Did you mean `series`?\n',
  )
  expect((await world.run('sequence', 'far.yaml')).err).toBe(
    'battledore: far.yaml:2:10: error: There is no sequence `phonics` to extend. Those to extend are common-core, england, series.\n',
  )
})
