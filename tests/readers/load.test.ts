import { describe, expect, it } from 'vitest'
import { fail, type Problem, type Result, succeed, toProblemLine } from '../../src/problem/index.ts'
import { loadReader, type Reader } from '../../src/readers/index.ts'
import { testPhonics } from '../lexicon-for-tests.ts'
import { series } from '../shelf/engine.ts'

const load = (yaml: string) =>
  loadReader(yaml, {
    phonicsFor: testPhonics,
    sequence: (name) =>
      Promise.resolve(
        name === 'series'
          ? succeed(series)
          : fail({ code: 'unknown-name', message: `There is no sequence \`${name}\``, expected: ['series'] }),
      ),
    path: 'meg.yaml',
    defaultSequence: 'series',
  })

const problemsOf = (read: Result<Reader>): readonly Problem[] => (read.ok ? [] : read.problems)
const readerOf = (read: Result<Reader>): Reader | undefined => (read.ok ? read.value : undefined)

async function findProblem(yaml: string): Promise<string> {
  const problems = problemsOf(await load(yaml))
  expect(problems).toHaveLength(1)
  return problems.map(toProblemLine).join().replace('meg.yaml:', '').replace(': error:', '')
}

describe('a reader', () => {
  it('knows what the step has taught, more, and less', async () => {
    const read = await load(
      'name: Meg\nstep: pink-4\nknows:\n  sight words: [said, no]\n  correspondences: [sh as in ship]\nnot yet:\n  sight words: [to]\n  correspondences:\n    - b as in bat\n',
    )
    const reader = readerOf(read)
    expect(reader).toMatchObject({ name: 'Meg', step: 'pink-4', sequenceName: 'series' })
    expect(reader?.knowledge.sightWords.has('said')).toBe(true)
    expect(reader?.knowledge.sightWords.has('no')).toBe(true)
    expect(reader?.knowledge.sightWords.has('to')).toBe(false)
    expect(reader?.knowledge.correspondences.has('sh=ʃ')).toBe(true)
    expect(reader?.knowledge.correspondences.has('b=b')).toBe(false)
    expect(reader?.knowledge.correspondences.has('d=d')).toBe(true)
  })

  it('needs no more than a name and a step', async () => {
    expect(readerOf(await load('name: The duck group\nstep: BLUE-1\n'))).toMatchObject({
      name: 'The duck group',
      step: 'blue-1',
    })
  })
})

describe('what is wrong, at its place', () => {
  it.each([
    ['', '1:1 Write a reader as `name: …` and `step: …`, each on its own line'],
    ['- Meg\n', '1:1 Write a reader as `name: …` and `step: …`, each on its own line'],
    ['step: pink-4\n', '1:1 `name:` is missing here'],
    ['name: Meg\nstep: pnik-4\n', '2:7 The sequence `series` has no step `pnik-4`. Did you mean `pink-4`?'],
    ['name: Meg\nsequence: serie\nstep: pink-4\n', '2:11 There is no sequence `serie`. Did you mean `series`?'],
    [
      'name: Meg\nstep: pink-4\nknows:\n  - the\n  - was\n',
      '4:3 A list cannot stand under `knows:`. The keys here are sight words, correspondences.',
    ],
    ['name: Meg\nstep: pink-4\nknow: [a]\n', '3:1 Unknown key `know`. Did you mean `knows`?'],
    ['name: Meg\nstep: pink-4\nknow:\n  sight words: [a]\n', '3:1 Unknown key `know`. Did you mean `knows`?'],
    [
      'name: Meg\nstep: pink-4\nknows:\n  sightwords: [a]\n',
      '4:3 Unknown key `sightwords`. Did you mean `sight words`?',
    ],
    ['name: Meg\nstep: pink-4\naccent: britsh\n', '3:9 Write `general-american` or `southern-british`, not `britsh`'],
    [
      'name: Meg\nstep: pink-4\nknows:\n  correspondences: [zz as in cat]\n',
      '4:21 `cat` does not hold the letters `zz` (its letters: c, a, t)',
    ],
    [
      'name: Meg\nstep: pink-4\nnot yet:\n  sight words: [said]\n',
      '4:17 `said` is no sight word at step `pink-4`, so there is nothing to take away',
    ],
    [
      'name: Meg\nstep: pink-4\nnot yet:\n  correspondences: [sh as in ship]\n',
      '4:21 Step `pink-4` does not teach `sh as in ship`, so there is nothing to take away',
    ],
  ])('%j', async (yaml, expected) => {
    expect(await findProblem(yaml)).toBe(expected)
  })

  it('YAML that cannot be read', async () => {
    expect(problemsOf(await load('name: [Meg\nstep: pink-4\n'))[0]?.message).toMatch(
      /^This is not YAML that can be read/,
    )
  })

  it('every mistake is told', async () => {
    const read = await load(
      'name: Meg\nstep: pink-4\nknows:\n  correspondences: [zz as in cat, sh in ship]\nnot yet:\n  sight words: [said]\n',
    )
    expect(problemsOf(read).map(({ place }) => place?.start.line)).toEqual([4, 6])
  })
})
