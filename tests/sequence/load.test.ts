// Loading a sequence a teacher wrote: what comes out, and each mistake at its place.

import { describe, expect, it } from 'vitest'
import { type Problem, toProblemLine, toProblemText } from '../../src/problem/index.ts'
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
    'ai as in rain',
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

  const step = (line: string) => `name: x\nsteps:\n  - id: a\n    ${line}\n`
  it.each([
    ['name: x\nsteps: a', 'Write a list of steps, each as `- id: …`, not `a`'],
    ['name: x\nsteps:\n  - a', 'Write a step as `- id: …` with its lines below, not `a`'],
    ['name: [x]\nsteps:\n  - id: a', 'Write a name, as `name: our-school`'],
    ['name: " "\nsteps:\n  - id: a', 'Write a name, as `name: our-school`, not ` `'],
    ['name: x\ntitle: " "\nsteps:\n  - id: a', 'Write the title as words, not ` `'],
    ['name: x\nextends: 7\nsteps:\n  - id: a', 'Write the name of a sequence, not `7`'],
    [
      'name: x\nsettings: flag\nsteps:\n  - id: a',
      'Write settings as `endings: taught`, each on its own line, not `flag`',
    ],
    [
      'name: x\nsettings:\n  reduced vowels: flags\nsteps:\n  - id: a',
      'Write `accept` or `flag`, not `flags`. Did you mean `flag`?',
    ],
    ['name: x\nlook-alikes: bd\nsteps:\n  - id: a', 'Write a list, as `[bdpq, mn]`, not `bd`'],
    ['name: x\nsteps:\n  - id: 1', 'Give the step an id, as `id: pink-1`, not `1`'],
    ['name: x\nsteps:\n  - id: a b', 'Write the id without spaces, as `pink-1`, not `a b`'],
    [step('title: []'), 'Write the title as words'],
    [step('after: ""'), 'Write the id of a step'],
    [step('teach: ai as in rain'), 'Write a list, as `- ai as in rain`, not `ai as in rain`'],
    [step('teach: [[a]]'), 'Write plain words in the list, as `- ai as in rain`'],
    [step('teach:'), 'Write a list, as `- ai as in rain`'],
    [step('sight words: the'), 'Write a list, as `[the, is]`, not `the`'],
    [step('shapes: CVC'), 'Write a list, as `[VC, CVC]`, or `any`, not `CVC`'],
    [step('endings: -s'), 'Write a list, as `[-s, -ed]`, not `-s`'],
    [step('ending changes: double'), 'Write a list, as `[double, drop e]`, not `double`'],
    [step('contractions: x'), "Write a list, as `[can't, it's]`, or `any`, not `x`"],
    [step('marks: ","'), 'Write a list, as `[full stop, comma]`, or `any`, not `,`'],
    [step('capitals: first'), 'Write `none`, `first letter` or `all`, not `first`. Did you mean `first letter`?'],
    [step('numerals: maybe'), 'Write `yes` or `no`, not `maybe`'],
    [step('limits: 3'), 'Write limits as `letters: 3`, each on its own line, not `3`'],
    [step('limits: {words on a page: 0}'), 'Write a whole number from 1, or `any` to lift the limit, not `0`'],
  ])('say what to write, and what stood there: %j', (yaml, told) => {
    expect(loadSequence(yaml, tools).problems.map(toProblemText)).toEqual([told])
  })

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

  const CODES: readonly (readonly [code: string, ...names: readonly string[]])[] = [
    ['bad-example', 'a line with no example', 'an example without the letters', 'an example of several sounds'],
    ['bad-value', 'an unknown accent', 'a limit below one', 'an id with a space', 'a list for a file'],
    ['missing-key', 'no steps', 'no name', 'a step with no id'],
    ['repeated', 'an id twice', 'letters taught twice', 'a sight word twice', 'an ending twice'],
    ['taken-back', 'a limit grown tighter', 'a limit after none', 'numerals taken back', 'capitals taken back'],
    ['unknown-key', 'an unknown key', 'an unknown limit'],
    ['unknown-name', 'an unknown ending', 'an unknown mark', 'a step after none', 'an unknown sequence to extend'],
  ]
  it.each(CODES)('%s is told to programs', (code, ...names) => {
    for (const name of names) {
      const [, marked = ''] = MISTAKES.find(([other]) => other === name) ?? []
      const { problems } = loadSequence(marked.replace(/^\s*\^+\n?/mu, ''), tools)
      expect([name, problems.map((problem) => problem.code)]).toEqual([name, [code]])
    }
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

it('a later step may say again what is known, allow more, or lift what was limited', () => {
  const yaml = `name: x
steps:
  - id: a
    capitals: first letter
    numerals: no
    limits: {letters: 3, syllables: 1}
  - id: b
    capitals: first letter
    numerals: yes
    limits: {letters: 3}
  - id: c
    capitals: all
    numerals: yes
    limits: {letters: 5, syllables: any}
`
  expect(loadSequence(yaml, tools).problems).toEqual([])
  const back = yaml + '  - id: d\n    limits: {syllables: 9, letters: 4}\n'
  expect(loadSequence(back, tools).problems.map(toProblemText)).toEqual([
    'A later step cannot allow less: `syllables: 9` here, but the steps before have no such limit',
    'A later step cannot allow less: `letters: 4` here, but a step before allows 5',
  ])
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

  it('adds shapes, marks and contractions to those of the step, and `any` stays any', () => {
    const of = (lines: string) => `  - id: a\n${lines}`
    const join = (base: string, own: string) => {
      const resolve = () => `name: base\nsteps:\n${of(base)}`
      return loadSequence(`name: own\nextends: base\nsteps:\n${of(own)}`, { ...tools, resolve }).sequence?.steps[0]
        ?.adds
    }
    const listed = '    shapes: [CVC]\n    marks: [comma]\n    contractions: ["can\'t"]\n'
    const any = '    shapes: any\n    marks: any\n    contractions: any\n'
    const anything = { shapes: 'any', marks: 'any', contractions: 'any' }
    expect(join(listed, any)).toMatchObject(anything)
    expect(join(any, listed)).toMatchObject(anything)
    const more =
      '    shapes: [CV]\n    marks: [colon]\n    contractions: ["it\'s"]\n    endings: [-s]\n    ending changes: [double]\n'
    expect(join(listed, more)).toMatchObject({
      shapes: ['CVC', 'CV'],
      marks: [',', ':'],
      contractions: ["can't", "it's"],
      endings: ['-s'],
      endingChanges: ['double'],
    })
  })

  it('the file has the last word on title, limits, capitals and numerals, and else the base keeps its own', () => {
    const base =
      'name: base\nsettings: {endings: taught, reduced vowels: flag}\nsteps:\n  - id: a\n    title: A\n    capitals: none\n    numerals: no\n    limits: {letters: 3, syllables: 1}\n'
    const open = (own: string, head = '') =>
      loadSequence(`name: own\n${head}extends: base\nsteps:\n  - id: a\n${own}`, { ...tools, resolve: () => base })
        .sequence
    const before = { capitals: 'none', numerals: false, limits: { letters: 3, syllables: 1 } }
    expect(open('    sight words: [cat]\n')).toMatchObject({
      title: 'own',
      endings: 'taught',
      reducedVowels: 'flag',
      steps: [{ title: 'A', adds: before }],
    })
    const own = '    title: B\n    capitals: all\n    numerals: yes\n    limits: {letters: 4}\n'
    expect(open(own, 'title: Own\nsettings: {endings: sounded, reduced vowels: accept}\n')).toMatchObject({
      title: 'Own',
      endings: 'sounded',
      reducedVowels: 'accept',
      steps: [{ title: 'B', adds: { capitals: 'all', numerals: true, limits: { letters: 4, syllables: 1 } } }],
    })
  })

  it('reports words and endings that the extended sequence teaches already', () => {
    const lists = '    sight words: [cat]\n    endings: [-s]\n    contractions: ["can\'t"]\n'
    const { problems } = loadSequence(`name: own\nextends: base\nsteps:\n  - id: b\n${lists.replace('cat', 'Cat')}`, {
      ...tools,
      resolve: () => `name: base\nsteps:\n  - id: a\n${lists}`,
    })
    expect(problems.map(toProblemText)).toEqual(
      ['cat', '-s', "can't"].map((item) => `\`${item}\` is taught already, at step \`a\``),
    )
    expect(problems.map(toLine)).toEqual([5, 6, 7])
  })

  it('a step of one id in two cases is the same step twice, and the second adds nothing', () => {
    const { sequence, problems } = loadSequence(
      'name: x\nsteps:\n  - id: a\n  - id: A\n    teach: [a as in cat]\n',
      tools,
    )
    expect(problems.map(toProblemText)).toEqual(['The id `A` is already used on line 3'])
    expect(sequence?.steps.map(({ id, adds }) => [id, adds.correspondences])).toEqual([['a', []]])
  })

  it('a new step may follow one of the same file, wherever that stands, and the nearest is offered where it is not there', () => {
    const yaml = (after: string) => `name: x\nsteps:\n  - id: one\n  - id: three\n  - id: two\n    after: ${after}\n`
    expect(loadSequence(yaml('one'), tools).sequence?.steps.map(({ id }) => id)).toEqual(['one', 'two', 'three'])
    const wrong = loadSequence(yaml('thre'), tools)
    expect(wrong.problems.map(toProblemText)).toEqual([
      'There is no step `thre` before this one. Did you mean `three`?',
    ])
    expect(wrong.sequence?.steps.map(({ id }) => id)).toEqual(['one', 'three', 'two'])
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
    expect(own('loop').map(toProblemText)).toEqual([
      // What is wrong there is told here by its own words.
      expect.stringMatching(
        /`loop` has a mistake on line 2: .*`pool` has a mistake on line 2: .*`loop` extends itself/,
      ),
    ])
    expect(own('bad')[0]).toMatchObject({
      place: { start: { line: 2, column: 10 } },
      message: expect.stringMatching(/`bad` has a mistake on line 4: `-x` is none of the endings/),
      code: 'unknown-name',
    })
    expect(own('nothing')[0]).toMatchObject({ code: 'unknown-name', expected: [] })
    expect(own('nothing')[0]).not.toHaveProperty('note')
    const listed = loadSequence('name: own\nextends: zzz\nsteps:\n  - id: z\n', {
      ...withFiles,
      names: () => ['base', 'bad'],
    })
    expect(listed.problems.map(toProblemText)).toEqual([
      'There is no sequence `zzz` to extend. Those to extend are base, bad.',
    ])
  })
})

describe('what a line teaches', () => {
  const teach = (line: string) => {
    const { sequence, problems } = loadSequence(`name: x\nsteps:\n  - id: a\n    teach: ["${line}"]\n`, tools)
    return problems.length > 0
      ? problems.map(toProblemText)
      : sequence?.steps[0]?.adds.correspondences.map(({ letters, example, key }) => `${letters} ${example} ${key}`)
  }

  it.each([
    ['ai as in rain', ['ai rain ai=eɪ']],
    ['ai in rain', ['ai rain ai=eɪ']],
    [' ai   as  in   rain ', ['ai rain ai=eɪ']],
    ['AI as in rain', ['ai rain ai=eɪ']],
    ['a_e as in cake', ['a_e cake a_e=eɪ']],
    ['A-E as in cake', ['a_e cake a_e=eɪ']],
    // Letters that are said in several parts teach each part, and hold one vowel at most.
    ['nk as in bank', ['n bank n=ŋ', 'k bank k=k']],
    ['ank as in bank', ['a bank a=æ', 'n bank n=ŋ', 'k bank k=k']],
    ['bank as in bank', ['b bank b=b', 'a bank a=æ', 'n bank n=ŋ', 'k bank k=k']],
    // Both ways to say it have this sound.
    ['r as in read', ['r read r=r']],
    ['n as in running', ['n running n=n']],
  ])('%j', (line, taught) => {
    expect(teach(line)).toEqual(taught)
  })

  it.each([
    ...(['like', 'for', 'as', 'as like', 'is', '=', '-', '→', ''] as const).map((between) => {
      const line = `sh ${between} ship`
      return [line, `\`${line}\` cannot be read: write letters and an example word. Did you mean \`sh as in ship\`?`]
    }),
    ['sh (ship)', '`sh (ship)` cannot be read: write letters and an example word. Did you mean `sh as in ship`?'],
    ['a_e/cake', '`a_e/cake` cannot be read: write letters and an example word. Did you mean `a_e as in cake`?'],
    ['sh like cat', '`sh like cat` cannot be read: write letters and an example word. Did you mean `ai as in rain`?'],
    ['ai as rain', '`ai as rain` cannot be read: write letters and an example word. Did you mean `ai as in rain`?'],
    [
      'a i as in rain',
      '`a i as in rain` cannot be read: write letters and an example word. Did you mean `ai as in rain`?',
    ],
    [
      'ai as in rain or so',
      '`ai as in rain or so` cannot be read: write letters and an example word. Did you mean `ai as in rain`?',
    ],
    ['z as in zub', '`zub` is not in the dictionary, so it cannot show what `z` says. Take another word.'],
    [
      'ea as in read',
      '`read` can be said in more than one way, so it does not show what `ea` says. Take another word.',
    ],
    ['a as in banana', 'In `banana` the letters `a` say more than one sound. Take a word where they say one.'],
    ['ana as in banana', 'In `banana` the letters `ana` do not say one sound together (it is cut as b, a, n, a, n, a)'],
    ['i_e as in rain', '`rain` does not hold the letters `i_e` (its letters: r, ai, n)'],
    ['r_n as in rain', 'In `rain` the letters `r_n` do not say one sound together (it is cut as r, ai, n)'],
    ['rn as in rain', '`rain` does not hold the letters `rn` (its letters: r, ai, n). Did you mean `r as in rain`?'],
  ])('%j does not', (line, told) => {
    expect(teach(line)).toEqual([told])
  })

  it('tells nothing where only a part of it is new', () => {
    const { sequence, problems } = loadSequence(
      'name: x\nsteps:\n  - id: a\n    teach: [k as in cake, nk as in bank]\n',
      tools,
    )
    expect(problems).toEqual([])
    expect(sequence?.steps[0]?.adds.correspondences.map(({ key }) => key)).toEqual(['k=k', 'n=ŋ'])
  })
})
