// A sequence in the making: a line of a list is judged as soon as it is written, and what is right of it stays.

import { describe, expect, it } from 'vitest'
import { toProblemText } from '../../src/problem/index.ts'
import { type DraftStep, judgeLine, type SequenceDraft, toSequenceYaml } from '../../src/sequence/draft.ts'
import { loadSequence } from '../../src/sequence/load.ts'
import type { TaughtCorrespondence } from '../../src/sequence/types.ts'
import { testPhonics } from '../lexicon-for-tests.ts'

const examples: readonly TaughtCorrespondence[] = [{ letters: 'm', example: 'map', key: 'm=m' }]
const tools = { phonicsFor: testPhonics, examples }
const EMPTY: SequenceDraft = { name: 'own', title: 'Own', accent: 'general-american', steps: [] }

const judge = (line: string, draft = EMPTY, kept?: DraftStep) => judgeLine(line, 'next', draft, tools, kept)
const toWritten = ({ items }: DraftStep): readonly string[] => items.map(({ written }) => written)

function toDraft(...lines: readonly string[]): SequenceDraft {
  const steps: DraftStep[] = []
  for (const [at, line] of lines.entries())
    steps.push(judgeLine(line, `step-${at + 1}`, { ...EMPTY, steps }, tools).step)
  return { ...EMPTY, steps }
}

describe('a line', () => {
  it.each([
    ['a as in cat, -s; the', ['a as in cat', '-s', 'the'], undefined],
    [' , a as in cat,;  ', ['a as in cat'], undefined],
    [' Autumn : a as in cat', ['a as in cat'], 'Autumn'],
    ['Autumn:', [], 'Autumn'],
    // What follows a comma is no title.
    ['the, was', ['the', 'was'], undefined],
  ])('%j', (line, written, title) => {
    const { step, problems } = judge(line)
    expect(problems).toEqual([])
    expect([step.id, toWritten(step), step.title]).toEqual(['next', written, title])
    expect('title' in step).toBe(title !== undefined)
  })

  it('goes on with what was right of the step before, and keeps its title unless it has one of its own', () => {
    const kept = judge('Autumn: a as in cat').step
    expect(toWritten(judge('t as in cat', EMPTY, kept).step)).toEqual(['a as in cat', 't as in cat'])
    expect(judge('t as in cat', EMPTY, kept).step.title).toBe('Autumn')
    expect(judge('Winter: t as in cat', EMPTY, kept).step.title).toBe('Winter')
  })

  it('leaves out what is wrong, tells it with the nearest right thing, and keeps the rest', () => {
    const { step, problems } = judge('a as in cat, m, thier, -ign, t as in cat')
    expect(toWritten(step)).toEqual(['a as in cat', 'thier', 't as in cat'])
    expect(problems.map(({ severity }) => severity)).toEqual(['error', 'warning', 'error'])
    expect(problems.map(toProblemText)).toEqual([
      expect.stringContaining('`m as in map`?'),
      expect.stringContaining('`their`?'),
      expect.stringContaining('`-ing`?'),
    ])
  })

  it('takes a word that nobody knows, and says so', () => {
    const { step, problems } = judge('zubrick, the')
    expect(toWritten(step)).toEqual(['zubrick', 'the'])
    expect(problems.map((problem) => [problem.severity, toProblemText(problem)])).toEqual([
      ['warning', expect.stringContaining('it is taken as you wrote it')],
    ])
  })

  it('leaves out what this step or one before it teaches already, without a place in a file that nobody has seen', () => {
    const before = toDraft('a as in cat, the')
    const { step, problems } = judge('t as in cat, a as in sat, t as in tap, The', before)
    expect(toWritten(step)).toEqual(['t as in cat'])
    expect(problems.map(toProblemText)).toEqual([
      '`a as in sat` is taught already, at step `step-1`',
      '`t as in tap` is taught already, at step `next`',
      '`the` is taught already, at step `step-1`',
    ])
    expect(problems.filter((problem) => 'place' in problem)).toEqual([])
  })

  it('tells what is doubtful once, where it came up', () => {
    const before = toDraft('zog, thier')
    expect(judge('the', before).problems).toEqual([])
  })
})

describe('the file', () => {
  const draft = toDraft('Autumn: a as in cat, b as in bat, the, -ed', "can't, c as in cat")

  it('has each thing in its list, and nothing of what nobody mentioned', () => {
    const lines = toSequenceYaml(draft).split('\n')
    expect(lines.filter((line) => !line.startsWith('#'))).toEqual([
      'name: own',
      'title: Own',
      'accent: general-american',
      'steps:',
      '  - id: step-1',
      '    title: Autumn',
      '    teach:',
      '      - a as in cat',
      '      - b as in bat',
      '    sight words: [the]',
      '    endings: [-ed]',
      '  - id: step-2',
      '    teach:',
      '      - c as in cat',
      "    contractions: [can't]",
      '',
    ])
  })

  it('tells whoever opens it what it is and how to go on', () => {
    const notes = toSequenceYaml(draft)
      .split('\n')
      .filter((line) => line.startsWith('#'))
    expect(notes.join(' ')).toMatch(/`battledore sequence`.*`battledore sequence add`/)
  })

  it('limits nothing that nobody mentioned', () => {
    const { sequence } = loadSequence(toSequenceYaml(draft), tools)
    for (const { adds } of sequence?.steps ?? [])
      expect(adds).toMatchObject({ shapes: [], marks: [], capitals: undefined, numerals: undefined, limits: {} })
  })
})
