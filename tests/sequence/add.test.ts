// Writing sequences: what the built-in sequences teach, written as a list or added piece by piece, is taught by the file that comes of it.
// The material is that of the built-in sequences (for England's, the national curriculum, English Appendix 1), drawn with a seed.

import { describe, expect, it } from 'vitest'
import { shuffle } from '../../src/finder/order.ts'
import { loadBuiltIn, loadPhonics } from '../../src/packaged/data.ts'
import { addToSequence } from '../../src/sequence/add.ts'
import { judgeLine, type SequenceDraft, toSequenceYaml } from '../../src/sequence/draft.ts'
import { loadSequence } from '../../src/sequence/load.ts'
import type { Sequence, Step } from '../../src/sequence/types.ts'

const BUILT_IN = ['series', 'england', 'common-core'] as const
const tools = { phonicsFor: loadPhonics, resolve: loadBuiltIn, examples: [] }

const open = (name: string): Sequence => {
  const sequence = loadBuiltIn(name)
  if (!sequence) throw new Error(name)
  return sequence
}

/** As a teacher would write it. */
const toItems = ({ adds }: Step): readonly string[] => [
  ...adds.correspondences.map(({ letters, example }) => `${letters} as in ${example}`),
  ...adds.sightWords,
  ...adds.endings,
  ...(adds.contractions === 'any' ? [] : adds.contractions),
]

const toKeys = ({ adds }: Step): readonly string[] =>
  [...adds.correspondences.map(({ key }) => key), ...adds.sightWords, ...adds.endings, ...adds.contractions].sort()

/** The file as it was: what was put in is taken out again, the last first. */
const withoutInsertions = (
  text: string,
  insertions: readonly { readonly at: number; readonly text: string }[],
): string =>
  insertions.reduceRight((sum, one) => {
    expect(sum.slice(one.at, one.at + one.text.length)).toBe(one.text)
    return sum.slice(0, one.at) + sum.slice(one.at + one.text.length)
  }, text)

describe.each(BUILT_IN)('%s', (name) => {
  const sequence = open(name)

  it('written line by line, teaches the same step by step', () => {
    let draft: SequenceDraft = { name: 'own', title: 'Own: a # title', accent: sequence.accent, steps: [] }
    const written = sequence.steps.filter((step) => toItems(step).length > 0)
    for (const [at, step] of written.entries()) {
      const judged = judgeLine(toItems(step).join(', '), `step-${at + 1}`, draft, tools)
      expect(judged.problems).toEqual([])
      draft = { ...draft, steps: [...draft.steps, judged.step] }
    }
    const loaded = loadSequence(toSequenceYaml(draft), tools)
    expect(loaded.problems).toEqual([])
    expect(loaded.sequence?.title).toBe('Own: a # title')
    const toOwn = (step: Step) => toKeys({ ...step, adds: { ...step.adds, contractions: toNamed(step) } })
    expect(loaded.sequence?.steps.map(toOwn)).toEqual(written.map(toOwn))
  })

  it.each([1, 2, 3, 4])(
    'added in any order to a file in any hand, is taught there, and every other byte stays (seed %i)',
    (seed) => {
      const newline = seed % 2 === 0 ? '\r\n' : '\n'
      const flow = seed > 2
      const own = [
        '# ours',
        'name: own # the name',
        `accent: ${sequence.accent}`,
        'steps:',
        '  - id: one',
        ...(flow
          ? ['    sight words: [mum] # by heart']
          : ['    sight words:', '      - mum # by heart', '      # more to come']),
        '  - id: two # later',
        '',
        '# the end',
        '',
      ].join(newline)
      const items = shuffle([...new Set(sequence.steps.flatMap(toItems))], seed)
        .filter((item) => item !== 'mum')
        .slice(0, 25)
      const parts = [items.slice(0, 12), items.slice(12)] as const
      const first = addToSequence(own, parts[0], tools, 'two')
      if (!first.ok) throw new Error(JSON.stringify(first.problems))
      const second = addToSequence(first.value.text, parts[1], tools, 'ONE')
      if (!second.ok) throw new Error(JSON.stringify(second.problems))
      expect(withoutInsertions(second.value.text, second.value.insertions)).toBe(first.value.text)
      expect(withoutInsertions(first.value.text, first.value.insertions)).toBe(own)
      expect(second.value.text.replaceAll('\r\n', '\n').includes('\r')).toBe(false)
      if (newline === '\r\n') expect(second.value.text.replaceAll('\r\n', '')).not.toContain('\n')
      const count = (step: Step | undefined) => (step ? new Set(toItems(step)).size : 0)
      const [one, two] = second.value.sequence.steps
      expect(count(one) + count(two)).toBeGreaterThanOrEqual(items.length + 1)
      for (const item of [...items, 'mum'])
        expect([...(one ? toItems(one) : []), ...(two ? toItems(two) : [])]).toContain(item)
      // Twice is a mistake, and nothing is added.
      expect(addToSequence(second.value.text, ['zoo', items[0] ?? ''], tools).ok).toBe(false)
    },
  )
})

const toNamed = ({ adds }: Step): readonly string[] => (adds.contractions === 'any' ? [] : adds.contractions)
