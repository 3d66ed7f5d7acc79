// Loading a sequence a teacher wrote: what comes out, and each mistake at its place.

import { describe, expect, it } from 'vitest'
import { type Problem, toProblemLine } from '../../src/problem/index.ts'
import { type LoadTools, loadSequence } from '../../src/sequence/load.ts'
import { toyPhonics } from './toy-phonics.ts'

const tools: LoadTools = { phonicsFor: toyPhonics }
const toLine = ({ place }: Problem): number | undefined => place?.start.line

const GOOD = `
name: tansy-lane
title: Tansy Lane
accent: general-american
look-alikes: [bdpq, mn]
settings:
  endings: sounded
  reduced vowels: flag
steps:
  - id: one
    title: First letters
    teach:
      - c as in cat
      - a as in cat
      - s as in his
    sight words: [the, I, no, true]
    shapes: [VC, cvc]
    marks: [full stop, ",", speech marks]
    capitals: first letter
    limits:
      letters: 3
      words in a sentence: 5
  - id: two
    teach:
      - a-e as in cake
      - nk as in bank
    shapes: any
    endings: [-s, ed]
    ending changes: [double, drop the e, y to i]
    contractions: ["can't"]
    numerals: yes
    limits: { letters: any }
`

describe('a good file', () => {
  const { sequence, problems } = loadSequence(GOOD, tools)

  it('has no problems', () => {
    expect(problems).toEqual([])
  })

  it('becomes a sequence', () => {
    expect(sequence).toMatchObject({
      name: 'tansy-lane',
      title: 'Tansy Lane',
      accent: 'general-american',
      lookAlikes: ['bdpq', 'mn'],
      endings: 'sounded',
      reducedVowels: 'flag',
    })
    expect(sequence?.steps.map(({ id, title }) => [id, title])).toEqual([
      ['one', 'First letters'],
      ['two', 'two'],
    ])
    expect(sequence?.steps[0]?.adds).toEqual({
      correspondences: [
        { letters: 'c', example: 'cat', key: 'c=k' },
        { letters: 'a', example: 'cat', key: 'a=æ' },
        { letters: 's', example: 'his', key: 's=z' },
      ],
      sightWords: ['the', 'I', 'no', 'true'],
      shapes: ['VC', 'CVC'],
      endings: [],
      endingChanges: [],
      contractions: [],
      marks: ['.', ',', '“', '”', '"', '‘', '’', "'"],
      capitals: 'first',
      numerals: undefined,
      limits: { letters: 3, sentenceWords: 5 },
    })
    expect(sequence?.steps[1]?.adds).toMatchObject({
      correspondences: [{ key: 'a_e=eɪ' }, { key: 'n=ŋ' }, { key: 'k=k' }],
      shapes: 'any',
      endings: ['-s', '-ed'],
      endingChanges: ['double', 'drop-e', 'y-to-i'],
      contractions: ["can't"],
      numerals: true,
      limits: { letters: 'any' },
    })
  })

  it('finds the base of letters that an ending changed', () => {
    const { sequence: one } = loadSequence('name: x\nsteps:\n  - id: a\n    teach: [nn as in running]\n', tools)
    expect(one?.steps[0]?.adds.correspondences).toEqual([{ letters: 'nn', example: 'running', key: 'n=n' }])
  })

  it('is read in another accent when asked', () => {
    const yaml = 'name: x\nsteps:\n  - id: a\n    teach: [a as in cat, o as in hop, a as in bath]\n'
    const toKeys = (accent?: 'southern-british') => {
      const { sequence: read, problems: found } = loadSequence(yaml, { ...tools, accent })
      return [read?.accent, found, read?.steps[0]?.adds.correspondences.map(({ key }) => key)]
    }
    expect(toKeys()).toEqual(['general-american', [], ['a=æ', 'o=ɑ']])
    expect(toKeys('southern-british')).toEqual(['southern-british', [], ['a=æ', 'o=ɒ', 'a=ɑː']])
  })
})

/** Each file has one mistake; the caret line shows where it must be reported. */
type Mistake = readonly [name: string, yaml: string, message: RegExp, suggestion?: string]
const MISTAKES: readonly Mistake[] = [
  ['broken YAML', 'name: x\nsteps: [a\n         ^', /not YAML/],
  ['no steps', 'name: x\n^^^^^^^', /`steps:` is missing/],
  ['an empty list of steps', 'name: x\nsteps: []\n       ^^', /at least one step/],
  ['no name', 'steps:\n^^^^^\n  - id: a', /`name:` is missing/],
  ['a list for a file', '- a\n^^^', /Write a sequence as/],
  ['an unknown key', 'name: x\nacent: y\n^^^^^\nsteps:\n  - id: a', /Unknown key `acent`/, 'accent'],
  [
    'an unknown key in a step',
    'name: x\nsteps:\n  - id: a\n    sightwords: [a]\n    ^^^^^^^^^^',
    /Unknown key `sightwords`/,
    'sight words',
  ],
  [
    'an unknown limit',
    'name: x\nsteps:\n  - id: a\n    limits:\n      letter: 3\n      ^^^^^^',
    /Unknown key `letter`/,
    'letters',
  ],
  [
    'an unknown accent',
    'name: x\naccent: american\n        ^^^^^^^^\nsteps:\n  - id: a',
    /`general-american` or `southern-british`, not `american`/,
  ],
  [
    'a misspelt setting',
    'name: x\nsettings:\n  endings: teached\n           ^^^^^^^\nsteps:\n  - id: a',
    /`taught` or `sounded`/,
  ],
  ['a step with no id', 'name: x\nsteps:\n  - title: y\n    ^^^^^^^^', /`id:` is missing/],
  ['an id with a space', 'name: x\nsteps:\n  - id: pink 1\n        ^^^^^^', /without spaces/],
  [
    'a word where a list should be',
    'name: x\nsteps:\n  - id: a\n    sight words: the\n                 ^^^',
    /Write a list/,
  ],
  [
    'a limit that is no figure',
    'name: x\nsteps:\n  - id: a\n    limits:\n      letters: few\n               ^^^',
    /whole number from 1/,
  ],
  [
    'a limit below one',
    'name: x\nsteps:\n  - id: a\n    limits:\n      letters: -1\n               ^^',
    /^Write a whole number from 1, or `any` to lift the limit, not `-1`$/,
  ],
  [
    'a limit that is no whole number',
    'name: x\nsteps:\n  - id: a\n    limits:\n      letters: 2.5\n               ^^^',
    /^Write a whole number from 1, or `any` to lift the limit, not `2.5`$/,
  ],
  [
    'a colon too many',
    'name: x: y\n      ^\nsteps:\n  - id: a',
    /^This is not YAML that can be read: a colon too many on this line: put the text in quotes$/,
  ],
  ['a list that is not closed', 'name: x\nlook-alikes: [bd\n                ^\nsteps:\n  - id: a', /put a `\]` here/],
  ['an id twice', 'name: x\nsteps:\n  - id: a\n  - id: a\n        ^', /already used on line 3/],
  [
    'a line with no example',
    'name: x\nsteps:\n  - id: a\n    teach:\n      - ai\n        ^^',
    /write letters and an example/,
    'ai as in rain',
  ],
  [
    'letters taught twice',
    'name: x\nsteps:\n  - id: a\n    teach: [a as in cat]\n  - id: b\n    teach: [a as in sat]\n            ^^^^^^^^^^^',
    /taught already, at step `a`/,
  ],
  [
    'an example without the letters',
    'name: x\nsteps:\n  - id: a\n    teach: [a_e as in rain]\n            ^^^^^^^^^^^^^^',
    /`rain` does not hold the letters `a_e` \(its letters: r, ai, n\)/,
  ],
  [
    'letters that are near',
    'name: x\nsteps:\n  - id: a\n    teach: [ia as in rain]\n            ^^^^^^^^^^^^^',
    /does not hold/,
    'ai as in rain',
  ],
  [
    'letters cut otherwise',
    'name: x\nsteps:\n  - id: a\n    teach: [ai as in naive]\n            ^^^^^^^^^^^^^^',
    /do not say one sound/,
  ],
  [
    'an example of several sounds',
    'name: x\nsteps:\n  - id: a\n    teach: [a as in banana]\n            ^^^^^^^^^^^^^^',
    /more than one sound/,
  ],
  [
    'an example said in two ways',
    'name: x\nsteps:\n  - id: a\n    teach: [ea as in read]\n            ^^^^^^^^^^^^^',
    /more than one way/,
  ],
  [
    'an example not in the dictionary',
    'name: x\nsteps:\n  - id: a\n    teach: [z as in zub]\n            ^^^^^^^^^^^',
    /`zub` is not in the dictionary/,
  ],
  [
    'an unknown ending',
    'name: x\nsteps:\n  - id: a\n    endings: [-ings]\n              ^^^^^',
    /none of the endings/,
    '-ing',
  ],
  [
    'an unknown change',
    'name: x\nsteps:\n  - id: a\n    ending changes: [drop a]\n                     ^^^^^^',
    /none of the ending changes/,
    'drop e',
  ],
  ['an unknown shape', 'name: x\nsteps:\n  - id: a\n    shapes: [CVX]\n             ^^^', /none of the shapes/, 'CVC'],
  ['an unknown mark', 'name: x\nsteps:\n  - id: a\n    marks: [coma]\n            ^^^^', /none of the marks/, 'comma'],
  [
    'unknown capitals',
    'name: x\nsteps:\n  - id: a\n    capitals: some\n              ^^^^',
    /`none`, `first letter` or `all`/,
  ],
  [
    'a sight word twice',
    'name: x\nsteps:\n  - id: a\n    sight words: [the]\n  - id: b\n    sight words: [The]\n                  ^^^',
    /taught already, at step `a`/,
  ],
  ['an ending twice', 'name: x\nsteps:\n  - id: a\n    endings: [-s, -s]\n                  ^^', /taught already/],
  [
    'an unknown sequence to extend',
    'name: x\nextends: serie\n         ^^^^^\nsteps:\n  - id: a',
    /no sequence `serie` to extend/,
  ],
  ['a step after none', 'name: x\nsteps:\n  - id: a\n  - id: b\n    after: c\n           ^', /no step `c`/, 'a'],
  [
    'a limit grown tighter',
    'name: x\nsteps:\n  - id: a\n    limits: {letters: 4}\n  - id: b\n    limits: {letters: 3}\n                      ^',
    /cannot allow less/,
  ],
  [
    'a limit after none',
    'name: x\nsteps:\n  - id: a\n  - id: b\n    limits: {syllables: 1}\n                        ^',
    /no such limit/,
  ],
  [
    'numerals taken back',
    'name: x\nsteps:\n  - id: a\n    numerals: true\n  - id: b\n  - id: c\n    numerals: false\n              ^^^^^',
    /take numerals back/,
  ],
  [
    'capitals taken back',
    'name: x\nsteps:\n  - id: a\n    capitals: all\n  - id: b\n    capitals: none\n              ^^^^',
    /take capitals back/,
  ],
]

describe('mistakes', () => {
  it.each(MISTAKES.map((mistake) => ({ name: mistake[0], mistake })))(
    '$name',
    ({ mistake: [, marked, message, suggestion] }) => {
      const lines = marked.split('\n')
      const caretLine = lines.findIndex((line) => /^\s*\^+$/.test(line))
      const yaml = lines.filter((_, index) => index !== caretLine).join('\n')
      const { problems } = loadSequence(yaml, tools)
      expect(problems).toHaveLength(1)
      const [problem] = problems
      expect(problem?.message).toMatch(message)
      expect(problem?.expected).toEqual(suggestion === undefined ? [] : [suggestion])
      const caret = lines[caretLine]?.indexOf('^') ?? -1
      const width = lines[caretLine]?.trim().length ?? 0
      expect(problem?.place?.start).toMatchObject({ line: caretLine, column: caret + 1 })
      if (!/YAML|missing|Write a sequence/.test(problem?.message ?? ''))
        expect(problem?.place?.end.column).toBe(caret + 1 + width)
    },
  )

  it('are told in our own words, whatever stands where', () => {
    const values = ['-1', '0', '2.5', 'true', '~', '[]', '[[a]]', '[{a: b}]', '{a: b}', '"x y"', '.nan', '2020-01-01']
    const top = ['name', 'steps', 'title', 'accent', 'extends', 'look-alikes', 'settings']
    const own = ['id', 'title', 'after', 'teach', 'sight words', 'shapes', 'endings', 'ending changes', 'marks']
    const files = values.flatMap((value) => [
      ...top.map((key) => `${key}: ${value}\n`),
      `name: x\nsettings:\n  endings: ${value}\n  reduced vowels: ${value}\nsteps:\n  - id: a\n`,
      ...[...own, 'contractions', 'capitals', 'numerals', 'limits'].map(
        (key) => `name: x\nsteps:\n  - ${key}: ${value}\n`,
      ),
      `name: x\nsteps:\n  - id: a\n    limits:\n      letters: ${value}\n`,
    ])
    const told = files.flatMap((yaml) => loadSequence(yaml, tools).problems.map(({ message }) => message))
    expect(told.length).toBeGreaterThan(100)
    expect(told.filter((message) => /Invalid|Expected|received/i.test(message))).toEqual([])
  })

  it('of a file nested too deep are told as that', () => {
    const { problems } = loadSequence(`name: ${'['.repeat(20000)}${']'.repeat(20000)}\n`, tools)
    expect(problems.map(({ message }) => message)).toEqual([expect.stringContaining('nested too deep')])
  })

  it('all unknown keys of a map are told in one run, and mistakes below them', () => {
    const yaml =
      'name: x\ncolour: red\nsteps:\n  - id: a\n    sightwords: [a]\n    maks: any\n    zub: 1\n    limits:\n      letter: 3\n      pages: 2\n      syllables: 0\nlookalikes: [bd]\n'
    const { problems } = loadSequence(yaml, { ...tools, path: 'Year (1)/mine.yaml' })
    expect(problems.map(toProblemLine)).toEqual([
      'Year (1)/mine.yaml:2:1: error: Unknown key `colour`. The keys here are name, title, accent, extends, look-alikes, settings, steps.',
      'Year (1)/mine.yaml:5:5: error: Unknown key `sightwords`. Did you mean `sight words`?',
      'Year (1)/mine.yaml:6:5: error: Unknown key `maks`. Did you mean `marks`?',
      expect.stringContaining('Year (1)/mine.yaml:7:5: error: Unknown key `zub`. The keys here are id, title, after,'),
      'Year (1)/mine.yaml:9:7: error: Unknown key `letter`. Did you mean `letters`?',
      expect.stringContaining('Year (1)/mine.yaml:10:7: error: Unknown key `pages`. The keys here are letters,'),
      expect.stringContaining('Year (1)/mine.yaml:11:18: error: Write a whole number from 1'),
      'Year (1)/mine.yaml:12:1: error: Unknown key `lookalikes`. Did you mean `look-alikes`?',
    ])
  })

  it('are all told at once, in order of place, and the rest is still read', () => {
    const yaml = 'name: x\ncolour: red\nsteps:\n  - id: a\n    teach: [c as in cat, q as in cat]\n    marks: [coma]\n'
    const { sequence, problems } = loadSequence(yaml, tools)
    expect(problems.map(toLine)).toEqual([2, 5, 6])
    expect(sequence?.steps[0]?.adds.correspondences).toHaveLength(1)
  })

  it.each([
    '',
    '\n',
    '# nothing\n',
    'null',
    '42',
    '"text"',
    '\uFEFF',
    '[',
    '&a [*a]',
    '? a\n: b',
    '\0',
    'name: x\r\nsteps:\r\n',
  ])('never throws: %j', (yaml) => {
    const { sequence, problems } = loadSequence(yaml, tools)
    expect(sequence).toBeUndefined()
    expect(problems.length).toBeGreaterThan(0)
  })
})

describe('extending', () => {
  const files: Readonly<Record<string, string>> = {
    base: 'name: base\naccent: southern-british\nlook-alikes: [bd]\nsteps:\n  - id: a\n    title: A\n    teach: [c as in cat]\n    sight words: [the]\n    limits: {letters: 3}\n  - id: b\n    teach: [a as in cat]\n',
    loop: 'name: loop\nextends: pool\nsteps:\n  - id: a\n',
    pool: 'name: pool\nextends: loop\nsteps:\n  - id: a\n',
    bad: 'name: bad\nsteps:\n  - id: a\n    endings: [-x]\n',
  }
  const withFiles: LoadTools = { ...tools, resolve: (name) => files[name] }

  it('adds to steps of the same id, puts a step after another, and others at the end', () => {
    const yaml = `name: own
extends: base
steps:
  - id: c
    teach: [o as in hop]
  - id: a
    teach: [t as in cat]
    sight words: [is]
    limits: {letters: 4}
  - id: a-more
    after: a
    sight words: [his]
`
    const { sequence, problems } = loadSequence(yaml, withFiles)
    expect(problems).toEqual([])
    expect(sequence?.steps.map(({ id }) => id)).toEqual(['a', 'a-more', 'b', 'c'])
    expect(sequence?.accent).toBe('southern-british')
    expect(sequence?.lookAlikes).toEqual(['bd'])
    expect(sequence?.steps[0]).toMatchObject({
      title: 'A',
      adds: { sightWords: ['the', 'is'], limits: { letters: 4 } },
    })
    expect(sequence?.steps[0]?.adds.correspondences.map(({ key }) => key)).toEqual(['c=k', 't=t'])
    expect(sequence?.steps[3]?.adds.correspondences.map(({ key }) => key)).toEqual(['o=ɒ'])
  })

  it('takes a sequence ready-made', () => {
    const ready = loadSequence(files.base ?? '', tools).sequence
    const own = loadSequence('name: own\nextends: base\nsteps:\n  - id: c\n', { ...tools, resolve: () => ready })
    expect(own.problems).toEqual([])
    expect(own.sequence?.steps.map(({ id }) => id)).toEqual(['a', 'b', 'c'])
  })

  it('reports what the extended sequence teaches already', () => {
    const { problems } = loadSequence(
      'name: own\nextends: base\nsteps:\n  - id: c\n    teach: [c as in cake]\n',
      withFiles,
    )
    expect(problems.map((problem) => [toLine(problem), problem.message])).toEqual([
      [5, '`c as in cake` is taught already, at step `a`'],
    ])
  })

  it('a misspelt sequence to extend is one mistake, whatever rests on it', () => {
    const steps = ['b', 'c', 'd'].map((id) => `  - id: ${id}-more\n    after: ${id}\n    limits: {letters: 3}\n`)
    const { problems } = loadSequence(`name: own\nextends: bass\nsteps:\n${steps.join('')}`, {
      ...withFiles,
      names: () => Object.keys(files),
    })
    expect(problems.map(toProblemLine)).toEqual(['There is no sequence `bass` to extend. Did you mean `base`?'])
    expect(problems[0]?.place?.start).toMatchObject({ line: 2, column: 10 })
  })

  it('reports a circle, and a mistake in the extended file', () => {
    const own = (name: string) => loadSequence(`name: own\nextends: ${name}\nsteps:\n  - id: z\n`, withFiles).problems
    expect(own('loop')[0]?.message).toMatch(/extends itself/)
    expect(own('bad')[0]).toMatchObject({
      place: { start: { line: 2, column: 10 } },
      message: expect.stringMatching(/`bad` has a mistake on line 4/),
    })
  })
})
