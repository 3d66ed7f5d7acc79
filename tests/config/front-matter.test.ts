// Front matter: values with their line, clear problems at the right place, keys of other tools let through.

import { describe, expect, it } from 'vitest'
import { readFrontMatter } from '../../src/config/index.ts'
import { toProblemText } from '../../src/problem/index.ts'
import { rules } from './rules.ts'

function read(yaml: string) {
  const source = `---\n${yaml}---\n\nA hen.\n`
  const frontMatter = { start: 0, end: 8 + yaml.length, value: yaml, valueStart: 4 }
  return readFrontMatter({ path: 'hen.md', text: source }, frontMatter, rules)
}

async function problemsOf(yaml: string) {
  const { problems } = await read(yaml)
  return problems.map(
    (problem) =>
      `${problem.place?.start.line}:${problem.place?.start.column} ${problem.severity} ${toProblemText(problem)}`,
  )
}

describe('readFrontMatter', () => {
  it('reads what a story says of itself, with the line of each', async () => {
    const story = await read(
      'title: The Red Hen\nstep: pink-2\nnames: [Tam, Old Ned]\norder: 3\nintroduces: [the]\npractises: [ai]\nlayout: book\n',
    )
    expect(story.problems).toEqual([])
    expect(story.title).toEqual({
      value: 'The Red Hen',
      origin: 'top of the story, line 2',
      path: 'hen.md',
      at: { start: { line: 2, column: 8, offset: 11 }, end: { line: 2, column: 19, offset: 22 } },
    })
    expect(story.layer.step).toMatchObject({
      value: 'pink-2',
      origin: 'top of the story, line 3',
      at: { start: { offset: 29 } },
    })
    expect(story.layer.names?.map(({ value }) => value)).toEqual(['Tam', 'Old Ned'])
    expect(story.layer.names?.[1]?.at).toMatchObject({ start: { offset: 49 }, end: { offset: 56 } })
    expect(story.order?.value).toBe(3)
    expect(story.introduces.map(({ value }) => value)).toEqual(['the'])
    expect(story.practises.map(({ value }) => value)).toEqual(['ai'])
    expect(story.raw.layout).toBe('book')
  })

  it.each([
    ['sight-words: [the]\n', { sightWords: ['the'] }],
    ['sight_words: the, said\n', { sightWords: ['the', 'said'] }],
    ['sightWords:\n  - the\n', { sightWords: ['the'] }],
    ['readable share: 90%\n', { readableShare: 0.9 }],
    ['readable share: 0.95\n', { readableShare: 0.95 }],
    ['paper: letter\n', { paper: 'letter' }],
    ['pages: 2\n', { pages: 2 }],
    ['step: 1.10\n', { step: '1.10' }],
    ['step:\n', {}],
    ['reduced vowels: flag\naccent: southern-british\n', { reducedVowels: 'flag', accent: 'southern-british' }],
  ])('reads %j', async (yaml, values) => {
    const { layer, problems } = await read(yaml)
    expect(problems).toEqual([])
    const plain = Object.entries(layer).map(([key, sourced]) => [
      key,
      Array.isArray(sourced) ? sourced.map(({ value }) => value) : sourced.value,
    ])
    expect(Object.fromEntries(plain)).toEqual(values)
  })

  it.each([
    ['stpe: pink-2\n', ['2:1 warning `stpe` is not a setting. Did you mean `step`?']],
    ['author: Meg\npage: 3\nlayout: book\ntags: [a]\n', []],
    [
      'title: Hen\naccent: southern-britsh\n',
      [
        '3:9 error `accent` must be general-american or southern-british, not `southern-britsh`. Did you mean `southern-british`?',
      ],
    ],
    ['names: [Tam, 5]\n', ['2:14 error `names` must be a list of names, such as [Tam, Old Ned], not `5`']],
    ['readable share: 90\n', ['2:17 error `readable share` must be a share such as 90% or 0.9, not `90`']],
    ['count title: maybe\n', ['2:14 error `count title` must be true or false, not `maybe`']],
    ['step: [a]\n', ['2:7 error `step` must be the id of a step, such as pink-2, not `[a]`']],
    ['step: a\nstep: b\n', ['3:1 error this key is given twice: the first one counts']],
    [
      'sight words: [a]\nsight-words: [b]\n',
      ['3:1 error `sight-words` is the same setting as `sight words`, which counts'],
    ],
    [
      'title: Pip: a hen\n',
      [
        '2:8 error The lines at the top of the story cannot be read: a colon too many on this line: put the text in quotes',
      ],
    ],
    [
      'names: [Tam\n',
      [
        '2:12 error The lines at the top of the story cannot be read: the list that `[` opens is not closed: put a `]` here',
      ],
    ],
    [
      'step: pink-2\nrules: {\n',
      [
        '3:9 error The lines at the top of the story cannot be read: the map that `{` opens is not closed: put a `}` here',
      ],
    ],
    [
      'step: a\nstep: b\nnames: [Tam\n',
      [
        '4:12 error The lines at the top of the story cannot be read: the list that `[` opens is not closed: put a `]` here',
      ],
    ],
    ['just some words\n', ['2:1 error this must be a list of keys with values, such as `sequence: …`']],
    ['rules:\n  max-sent: off\n', ['3:3 error There is no rule `max-sent`. Did you mean `max-sentence-words`?']],
    ['rules:\n  no-nmu: off\n', ['3:3 error There is no rule `no-nmu`. Did you mean `no-numeral`?']],
    [
      'rules:\n  swans: off\n',
      ['3:3 error There is no rule `swans`. `battledore check --print-config STORY` shows all rules.'],
    ],
    ['rules:\n  no-numerals: off\n', ['3:3 error There is no rule `no-numerals`. Did you mean `no-numeral`?']],
  ])('%j → %j', async (yaml, problems) => {
    expect(await problemsOf(yaml)).toEqual(problems)
  })

  it('keeps the good values beside a bad one', async () => {
    const { layer, problems } = await read('step: pink-2\npages: seven\nnames: [Tam]\n')
    expect(problems).toHaveLength(1)
    expect(layer.step?.value).toBe('pink-2')
    expect(layer.pages).toBeUndefined()
    expect(layer.names?.map(({ value }) => value)).toEqual(['Tam'])
  })

  it('points at rules and options', async () => {
    const problems = await problemsOf('rules:\n  no-numeral: warn\n  max-sentence-words:\n    max: 900\n    mux: 3\n')
    expect(problems.map((line) => line.split(' ')[0])).toEqual(['3:15', '5:10', '6:5'])
    expect(problems[0]).toContain('Did you mean `warning`?')
    expect(problems[2]).toContain('Did you mean `max`?')
  })

  it('survives nesting, alias bombs and odd keys', async () => {
    const deep = await problemsOf(`a: ${'['.repeat(20000)}${']'.repeat(20000)}\n`)
    expect(deep).toEqual([expect.stringContaining('nested too deep')])
    const bomb = Array.from(
      { length: 12 },
      (_, n) =>
        `k${n}: &a${n} [${
          n
            ? Array(9)
                .fill(`*a${n - 1}`)
                .join(', ')
            : 'x'
        }]\n`,
    )
    expect((await read(bomb.join(''))).problems).toEqual([])
    expect((await read('? [a, b]\n: c\n__proto__: d\n1: e\n')).problems).toEqual([])
  })
})
