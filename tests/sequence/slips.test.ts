// Slips of a maker's own file that are no mistake of form: each is told with the nearest right thing.

import { describe, expect, it } from 'vitest'
import { type Problem, toProblemText } from '../../src/problem/index.ts'
import { loadSequence } from '../../src/sequence/load.ts'
import { testPhonics } from '../lexicon-for-tests.ts'
import { readBuiltIn } from './engine.ts'

const load = (steps: string): readonly string[] =>
  loadSequence(`name: ours\nextends: series\nsteps:\n${steps}`, {
    phonicsFor: testPhonics,
    resolve: () => readBuiltIn('series'),
  }).problems.map((problem) => toProblemText(problem))

it.each([
  ['a step that is another but for a dash', '  - id: pink1\n', '`pink-1`?'],
  ['the same with a nought', '  - id: Pink_01\n', '`pink-1`?'],
  ['a step that cannot move', '  - id: pink-2\n    after: pink-5\n', 'Leave out `after`'],
  ['a sight word with two letters swapped', '  - id: more\n    sight words: [thier]\n', '`their`?'],
  ['a contraction without its apostrophe', '  - id: more\n    contractions: [dont]\n', "`don't`?"],
  ['a sound taught twice', '  - id: more\n    teach: [sh as in fish]\n', 'taught already, at step `green-1`'],
  ['an example that is another step’s', '  - id: more\n    teach: [n in net]\n', 'taught already, at step `pink-1`'],
  ['a contraction taught twice', '  - id: more\n    contractions: ["it\'s"]\n', 'taught already, at step `green-4`'],
])('%s', (_, steps, told) => {
  const problems = load(steps)
  expect(problems).toHaveLength(1)
  expect(problems[0]).toContain(told)
})

it('a word that is most likely misspelt is told, and taught all the same', () => {
  const { sequence, problems } = loadSequence('name: ours\nsteps:\n  - id: one\n    sight words: [thier]\n', {
    phonicsFor: testPhonics,
  })
  expect(problems.map(({ severity }) => severity)).toEqual(['warning'])
  expect(sequence?.steps[0]?.adds.sightWords).toEqual(['thier'])
})

it.each([
  ['a new step with a number of its own', '  - id: pink-7\n    after: pink-6\n'],
  ['an invented word and a name', '  - id: more\n    sight words: [zog, Tansy]\n'],
  ['what the series teaches later', '  - id: pink-2\n    sight words: [my]\n'],
])('%s is right', (_, steps) => {
  expect(load(steps)).toEqual([])
})

describe('an example that Britain says otherwise, in an American file,', () => {
  const read = (head: string, line: string) => {
    const yaml = `name: ours\n${head}steps:\n  - id: one\n    teach: [a as in cat, ${line}]\n`
    return loadSequence(yaml, { phonicsFor: testPhonics }).problems
  }

  it.each([
    ['', 'a as in bath', '`a as in cat`'],
    ['accent: general-american\n', 'a as in bath', '`a as in cat`'],
    ['accent: general-american\n', 'a as in plant', '`a as in cat`'],
    // /ɑ/ in America, the vowel of GOAT in Britain.
    ['accent: general-american\n', 'o as in process', '`o as in hot`'],
    ['', 'ew as in new', '`ew as in grew`'],
  ])('is told with the nearest right thing: %j %s', (head, line, told) => {
    const problems = read(head, line)
    expect(problems.map(({ severity }) => severity)).toEqual(['warning'])
    expect(toProblemText(problems[0] as Problem)).toContain(told)
    expect(toProblemText(problems[0] as Problem)).toContain('`accent: southern-british`')
  })

  it.each([
    ['accent: southern-british\n', 'a as in bath'],
    ['accent: general-american\n', 'ew as in new'],
    ['', 'o as in dog'],
    ['', 'er as in sister'],
    ['', 'or as in fork'],
    ['', 'ew as in few'],
  ])('and nothing else is: %j %s', (head, line) => {
    expect(read(head, line)).toEqual([])
  })
})
