// Own sequences are read, written and checked step by step, each change as one small edit of the file.

import fc from 'fast-check'
import { expect, it } from 'vitest'
import { parse } from 'yaml'
import type { SequenceEdit } from '../../../src/desk/core/questions.ts'
import { applyEdits } from '../../../src/fix/index.ts'
import { filesInMemory, openDesk } from './host.ts'

const OURS = `# Our words, autumn
name: ours
title: Our own words
steps:
  - id: one   # September
    teach:
      - a as in cat   # first
      - c as in cat
      - t as in cat
    sight words: [the, "a"]
  - id: two
    title: Hats
    teach:
      - h as in hat
    endings: [-s]
`
const MORE = 'name: more\nextends: series\nsteps:\n  - id: pink-1\n    sight words: [said]\n'
const FILES = {
  'ours.yaml': OURS,
  'more.yaml': MORE,
  'wrong.yaml': OURS.replace('c as in cat', 'c as in dog').replace('hat\n', 'hat\n      - zz as in hat\n'),
}
const desk = await openDesk(filesInMemory(FILES))
const edit = (wish: SequenceEdit, text = OURS) =>
  desk.ask({ kind: 'edit sequence', path: 'ours.yaml', text, edit: wish })

it('reads built-in sequences, own ones and those that add to another', async () => {
  const series = await desk.ask({ kind: 'sequence', name: 'series' })
  expect(series).toMatchObject({ path: null, problems: [], extends: null })
  expect(series.steps[0]?.items[0]).toEqual({
    kind: 'sound',
    written: 'a as in cat',
    letters: 'a',
    example: 'cat',
    isOwn: false,
  })
  expect(series.steps[0]?.more.join()).toContain('Words built like')
  const ours = await desk.ask({ kind: 'sequence', name: 'ours.yaml' })
  expect(ours.steps.map(({ items }) => items.map(({ written }) => written))).toEqual([
    ['a as in cat', 'c as in cat', 't as in cat', 'the', 'a'],
    ['h as in hat', '-s'],
  ])
  expect(ours.steps.every(({ items }) => items.every(({ isOwn }) => isOwn))).toBe(true)
  const more = await desk.ask({ kind: 'sequence', name: 'more.yaml' })
  expect(more).toMatchObject({ extends: 'series', path: 'more.yaml' })
  expect(more.steps[0]?.items.filter(({ isOwn }) => isOwn).map(({ written }) => written)).toEqual(['said'])
  expect(more.steps).toHaveLength(series.steps.length)
})

it('tells mistakes at their steps, and what is not there', async () => {
  const wrong = await desk.ask({ kind: 'sequence', name: 'wrong.yaml' })
  expect(wrong.steps.map(({ problems }) => problems.map(({ place }) => place?.start.line))).toEqual([[8], [15]])
  expect((await desk.ask({ kind: 'sequence', name: 'none.yaml' })).problems).toMatchObject([{ code: 'missing-file' }])
  expect((await desk.ask({ kind: 'sequence', name: 'none' })).problems).toMatchObject([{ code: 'unknown-name' }])
})

const CHANGES: readonly (readonly [SequenceEdit, string, string])[] = [
  [{ kind: 'add', step: 'two', what: 'm as in mat' }, '- h as in hat\n', '- h as in hat\n      - m as in mat\n'],
  [{ kind: 'remove', step: 'one', what: 'a as in cat' }, '      - a as in cat   # first\n', ''],
  [{ kind: 'remove', step: 'one', what: 'a' }, '[the, "a"]', '[the]'],
  [{ kind: 'remove', step: 'two', what: 'h as in hat' }, 'teach:\n      - h as in hat\n', 'teach: []\n'],
  [{ kind: 'change', step: 'one', what: 't as in cat', to: 't as in tap' }, '- t as in cat', '- t as in tap'],
  [{ kind: 'title', step: 'two', title: 'Hats: all of them' }, 'title: Hats', 'title: "Hats: all of them"'],
  [
    { kind: 'title', step: 'one', title: 'First' },
    'id: one   # September\n',
    'id: one   # September\n    title: First\n',
  ],
  [
    { kind: 'add step', title: 'Mats', what: ['m as in mat', '-ed, said'] },
    'endings: [-s]\n',
    'endings: [-s]\n  - id: two-2\n    title: Mats\n    teach:\n      - m as in mat\n    sight words: [said]\n    endings: [-ed]\n',
  ],
]

it.each(CHANGES)('%j', async (wish, from, to) => {
  const answer = await edit(wish)
  if (!answer.ok) throw new Error(answer.problems[0]?.message)
  expect(applyEdits(OURS, answer.value.edits)).toBe(OURS.replace(from, to))
  expect(answer.value).toMatchObject({
    path: 'ours.yaml',
    before: OURS,
    shown: { problems: [], text: OURS.replace(from, to) },
  })
})

it('judges each before it goes in', async () => {
  const wishes: readonly (readonly [SequenceEdit, RegExp])[] = [
    [{ kind: 'add', step: 'two', what: 'zz as in hat' }, /zz/],
    [{ kind: 'add', step: 'two', what: 'm' }, /stands alone/],
    [{ kind: 'add', step: 'three', what: 'm as in mat' }, /three/],
    [{ kind: 'change', step: 'one', what: 't as in cat', to: 'said' }, /another kind/],
    [{ kind: 'remove', step: 'two', what: 'm as in mat' }, /does not teach/],
    [{ kind: 'add step', title: 'None', what: [''] }, /Say what the step teaches/],
  ]
  for (const [wish, message] of wishes)
    expect(await edit(wish), JSON.stringify(wish)).toMatchObject({
      ok: false,
      problems: [{ message: expect.stringMatching(message) }],
    })
})

it('takes away any item of generated files, and nothing else', async () => {
  const items = ['a as in cat', 'b as in bat', 'c as in cat', 'd as in dad']
  const lists = fc
    .shuffledSubarray(items, { minLength: 1 })
    .chain((own) =>
      fc
        .constantFrom(
          `    teach: [${own.join(', ')}]\n`,
          `    teach:\n${own.map((one) => `      - ${one}  # ${one.length}\n`).join('')}`,
          `    teach:\n${own.map((one) => `    - "${one}"\n`).join('')}`,
          `    teach:\n${own.map((one) => `      - ${one}\n`).join('\n')}`,
        )
        .map((text) => ({ own, text })),
    )
  const files = fc.record({
    list: lists,
    crlf: fc.boolean(),
    end: fc.constantFrom('', '    sight words: [the]\n', '  - id: two\n    sight words: [the]\n'),
  })
  await fc.assert(
    fc.asyncProperty(files, fc.nat(), async ({ list, crlf, end }, number) => {
      const plain = `name: ours\nsteps:\n  - id: one\n${list.text}${end}`
      const text = crlf ? plain.replaceAll('\n', '\r\n') : plain
      const what = list.own[number % list.own.length] ?? ''
      const answer = await edit({ kind: 'remove', step: 'one', what }, text)
      expect(answer.ok, text).toBe(true)
      const after = applyEdits(text, answer.ok ? answer.value.edits : [])
      const expected = parse(text)
      expected.steps[0].teach = expected.steps[0].teach.filter((one: string) => one !== what)
      expect(parse(after), after).toEqual(expected)
    }),
    { numRuns: 200 },
  )
})

it('makes a new one from a line a step, and tells mistakes with their step', async () => {
  const steps = ['a as in cat, m as in mat, t as in tap', 'Autumn: s as in sat, the', '']
  const sequence = { path: 'words/new.yaml', title: 'New words', accent: 'southern-british', steps } as const
  const made = await desk.ask({ kind: 'new sequence', sequence })
  if (!made.ok) throw new Error(made.problems[0]?.message)
  expect(made.value).toMatchObject({
    path: 'words/new.yaml',
    before: null,
    shown: { problems: [], title: 'New words' },
  })
  const yaml = parse(applyEdits('', made.value.edits))
  expect(yaml).toMatchObject({
    name: 'new',
    accent: 'southern-british',
    steps: [{ id: 'step-1' }, { title: 'Autumn' }],
  })
  const wrong = { ...sequence, steps: ['a as in cat', 'zz as in hat'] }
  expect(await desk.ask({ kind: 'new sequence', sequence: wrong })).toMatchObject({
    ok: false,
    problems: [{ message: expect.stringMatching(/^Step 2: /) }],
  })
  for (const path of ['ours.yaml', 'new', '../new.yaml', '/new.yaml'])
    expect(await desk.ask({ kind: 'new sequence', sequence: { ...sequence, path } }), path).toMatchObject({ ok: false })
})
