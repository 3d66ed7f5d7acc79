// Changing a sequence file from outside: one small edit for each wish, every other byte kept, and nothing that would break the file.

import { describe, expect, it } from 'vitest'
import { toProblemText } from '../../src/problem/index.ts'
import { changeSequence, type SequenceChange } from '../../src/sequence/change.ts'
import { loadSequence } from '../../src/sequence/load.ts'
import { testPhonics } from '../lexicon-for-tests.ts'

const OWN = `# ours
name: tansy-lane
steps:
  - id: one
    title: First letters # in September
    teach:
      - a as in cat # short
      - t as in cat
      - s as in sat
    sight words: [the, said]
    endings: [-s]
  - id: two # after half-term
    teach:
      - ai as in rain
`

const tools = { phonicsFor: testPhonics, path: 'ours.yaml' }

/** The file as it is then: still a sequence, and no worse than before. */
function toChanged(wish: SequenceChange, yaml = OWN): string {
  const changed = changeSequence(yaml, wish, tools)
  if (!changed.ok) throw new Error(changed.problems.map(toProblemText).join('\n'))
  expect(loadSequence(changed.value, tools).problems.map(toProblemText)).toEqual(
    loadSequence(yaml, tools).problems.map(toProblemText),
  )
  return changed.value
}

function toProblems(wish: SequenceChange, yaml = OWN): readonly string[] {
  const changed = changeSequence(yaml, wish, tools)
  if (changed.ok) throw new Error(changed.value)
  return changed.problems.map((problem) => `${problem.code}: ${toProblemText(problem)}`)
}

describe('to add', () => {
  it.each([
    ['p as in pan', '      - p as in pan\n'],
    [' ay  as  in  day ; p as in pan,\n,', '      - ay as in day\n      - p as in pan\n'],
    ['was, -ing', '    sight words:\n      - was\n    endings:\n      - -ing\n'],
    ['was\nhis', '    sight words:\n      - was\n      - his\n'],
  ])('%j puts each thing in its list', (what, lines) => {
    expect(toChanged({ kind: 'add', step: 'two', what })).toBe(OWN + lines)
  })

  it.each([
    ['two', 'p as in pan, q', '`q` stands alone'],
    ['tow', 'p as in pan', 'The sequence `tansy-lane` has no step `tow`. Did you mean `two`?'],
    ['summer', 'p as in pan', 'The sequence `tansy-lane` has no step `summer`. Its steps are one, two.'],
    ['two', 'a as in sat', '`a as in sat` is taught already, at step `one`'],
  ])('nothing is added to %s where one thing is wrong: %s', (step, what, told) => {
    expect(toProblems({ kind: 'add', step, what })).toEqual([expect.stringContaining(told)])
    expect(toProblems({ kind: 'add', step, what })[0]).toMatch(/^(?:bad-value|unknown-name|repeated): /)
  })
})

it('to a file with a mistake nothing is added', () => {
  const wrong = OWN.replace('endings: [-s]', 'endings: [-s, -x]')
  expect(toProblems({ kind: 'add', step: 'two', what: 'p as in pan' }, wrong)).toEqual([
    expect.stringContaining('`-x` is none of the endings'),
  ])
})

describe('to take away', () => {
  it.each([
    ['one', 'a as in cat', '      - a as in cat # short\n', ''],
    ['one', ' s as in sat ', '      - s as in sat\n', ''],
    ['one', 'the', '[the, said]', '[said]'],
    ['one', '-s', '[-s]', '[]'],
    ['two', 'ai as in rain', 'teach:\n      - ai as in rain', 'teach: []'],
  ])('from %s: %s', (step, what, before, after) => {
    expect(toChanged({ kind: 'remove', step, what })).toBe(OWN.replace(before, after))
  })

  it.each([
    ['two', 'a as in cat'],
    ['two', 'said'],
    ['three', 'a as in cat'],
    ['one', 'cat'],
  ])('from %s: %s is not there', (step, what) => {
    expect(toProblems({ kind: 'remove', step, what })).toEqual([
      `unknown-name: The step \`${step}\` of this file does not teach \`${what}\``,
    ])
  })

  it('a word is found as it is written, also one that YAML takes for something else', () => {
    const yaml = 'name: x\nsteps:\n  - id: one\n    sight words: [no, true]\n'
    expect(toChanged({ kind: 'remove', step: 'one', what: 'true' }, yaml)).toBe(yaml.replace(', true', ''))
  })
})

describe('to put in the place of another', () => {
  it.each([
    ['one', 'a as in cat', 'a as in sat', '- a as in cat #', '- a as in sat #'],
    ['one', 'said', ' was ', 'said', 'was'],
    ['one', '-s', '-ed', '[-s]', '[-ed]'],
  ])('in %s: %s → %s', (step, what, to, before, after) => {
    expect(toChanged({ kind: 'change', step, what, to })).toBe(OWN.replace(before, after))
  })

  it.each([
    ['two', 'ai as in rain', 'a as in sat', 'is taught already, at step `one`'],
    ['two', 'ai as in rain', 'ai', '`ai` stands alone'],
    // Sounds that this file teaches are offered by its own examples.
    ['one', 'said', 's', 'Did you mean `s as in sat`?'],
    ['one', 'said', 'thier', 'Did you mean `their`?'],
    ['one', 'said', '-ed', '`-ed` is of another kind than `said`: take that away, and add this'],
    ['one', 'mum', 'dad', 'does not teach `mum`'],
  ])('in %s: not %s → %s', (step, what, to, told) => {
    expect(toProblems({ kind: 'change', step, what, to })).toEqual([expect.stringContaining(told)])
  })

  it('tells no place of what is wrong in a file that nobody has seen', () => {
    const changed = changeSequence(
      OWN,
      { kind: 'change', step: 'two', what: 'ai as in rain', to: 'a as in sat' },
      tools,
    )
    expect(changed).toMatchObject({ ok: false, problems: [{ path: 'ours.yaml' }] })
    expect(changed).not.toHaveProperty('problems.0.place')
  })
})

describe('to give a title', () => {
  it.each([
    ['one', ' Autumn ', 'First letters', 'Autumn'],
    ['one', 'Autumn: a, t', 'First letters', '"Autumn: a, t"'],
    ['two', 'Spring', '- id: two # after half-term', '- id: two # after half-term\n    title: Spring'],
  ])('%s: %s', (step, title, before, after) => {
    expect(toChanged({ kind: 'title', step, title })).toBe(OWN.replace(before, after))
  })

  it.each([
    ['one', ' ', 'bad-value: Give the step a title of a few words'],
    ['three', 'Spring', 'unknown-name: The step `three` of this file does not teach `Spring`'],
  ])('%s: not %j', (step, title, told) => {
    expect(toProblems({ kind: 'title', step, title })).toEqual([told])
  })
})

describe('to add a step', () => {
  it('at the end, with its title and each thing in its list', () => {
    const wish = { kind: 'add step', title: ' More ', what: ['p as in pan; was', "can't, -ed"] } as const
    const lines = [
      '  - id: two-2',
      '    title: More',
      '    teach:',
      '      - p as in pan',
      '    sight words: [was]',
      '    endings: [-ed]',
      "    contractions: [can't]",
    ]
    expect(toChanged(wish)).toBe(`${OWN}${lines.join('\n')}\n`)
  })

  it.each([
    [['step-3'], 'step-4'],
    [['a1', 'b9'], 'b10'],
    [['two'], 'two-2'],
    [['y1-2', 'Y1-4', 'y1-3'], 'y1-5'],
    // A figure must stay a name.
    [['"9"'], '"10"'],
  ])('after %j it is %s', (ids, next) => {
    const yaml = `name: x\nsteps:\n${ids.map((id) => `  - id: ${id}\n`).join('')}`
    const changed = toChanged({ kind: 'add step', title: ' ', what: ['was'] }, yaml)
    expect(changed).toBe(`${yaml}  - id: ${next}\n    sight words: [was]\n`)
  })

  it.each([
    [[], 'Say what the step teaches, such as `sh as in ship` or `said`'],
    [[' , '], 'Say what the step teaches, such as `sh as in ship` or `said`'],
    [['zubrick'], '`zubrick` is not in the dictionary'],
    [['a as in sat'], 'is taught already'],
  ])('that teaches %j is none', (what, told) => {
    expect(toProblems({ kind: 'add step', title: 'More', what })).toEqual([expect.stringContaining(told)])
  })
})

describe('a file that is not built in lines', () => {
  const FLOW = 'name: x\nsteps: [{ id: one, "sight words": [the] }]\n'

  it.each<SequenceChange>([
    { kind: 'add step', title: 'More', what: ['was'] },
    { kind: 'title', step: 'one', title: 'More' },
  ])('is left alone: $kind', (wish) => {
    expect(toProblems(wish, FLOW)).toEqual([
      'bad-value: This step is not built so that it can be changed from here. Change it in its file.',
    ])
  })

  it('is changed where one word is put for another', () => {
    expect(toChanged({ kind: 'change', step: 'one', what: 'the', to: 'was' }, FLOW)).toBe(FLOW.replace('the', 'was'))
  })
})

describe('a file with a mistake', () => {
  const WRONG = OWN.replace('endings: [-s]', 'endings: [-s, -x]')

  it('can be changed elsewhere all the same', () => {
    expect(toChanged({ kind: 'remove', step: 'one', what: 'said' }, WRONG)).toBe(WRONG.replace(', said', ''))
  })

  it('can be put right by a change', () => {
    const changed = changeSequence(WRONG, { kind: 'change', step: 'one', what: '-x', to: '-ed' }, tools)
    expect(changed).toEqual({ ok: true, value: WRONG.replace('-x', '-ed') })
  })

  it('that cannot be read at all is told', () => {
    expect(toProblems({ kind: 'remove', step: 'one', what: 'the' }, 'steps: [')).toEqual([
      expect.stringContaining('not YAML'),
    ])
    const yaml = 'name: x\nsteps:\n  - id: one\n    sight words: the\n'
    expect(toProblems({ kind: 'remove', step: 'one', what: 'the' }, yaml)).toEqual([
      expect.stringContaining('Write a list'),
    ])
  })
})
