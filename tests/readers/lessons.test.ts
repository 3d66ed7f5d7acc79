// A record of lessons, and what is known on a day. Record then judge equals judge then record.

import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { succeed, toProblemLine } from '../../src/problem/index.ts'
import { loadReader, type Reader } from '../../src/readers/index.ts'
import { knowledgeAt } from '../../src/sequence/knowledge.ts'
import { withReader } from '../../src/sequence/reader.ts'
import { testPhonics } from '../lexicon-for-tests.ts'
import { series } from '../shelf/engine.ts'

const tools = {
  phonicsFor: testPhonics,
  sequence: () => Promise.resolve(succeed(series)),
  defaultSequence: 'series',
  path: 'meg.yaml',
}

async function load(yaml: string, on?: string, files: Readonly<Record<string, string>> = {}): Promise<Reader> {
  const member = (path: string) => loadReader(files[path] ?? '', { ...tools, path, on })
  const result = await loadReader(yaml, { ...tools, on, member })
  if (!result.ok) throw new Error(result.problems.map(toProblemLine).join('\n'))
  return result.value
}

const MEG = `name: Meg
step: pink-4
lessons:
  - date: 2026-09-14
    step: pink-5
  - date: 2026-09-28
    taught: [sh as in ship, said, -ed]
  - date: 2026-09-21   # written down later
    taught: [they]
    secure: no
  - date: 2026-10-05
    taught: [they]
`

describe('what is known on a day', () => {
  it.each<readonly [on: string | undefined, step: string, known: readonly string[], not: readonly string[]]>([
    ['2026-09-01', 'pink-4', [], ['said', 'they']],
    ['2026-09-14', 'pink-5', [], ['said', 'they']],
    ['2026-09-28', 'pink-5', ['said'], ['they']],
    ['2026-10-05', 'pink-5', ['said', 'they'], []],
    [undefined, 'pink-5', ['said', 'they'], []],
  ])('%s', async (on, step, known, not) => {
    const reader = await load(MEG, on)
    expect(reader.step).toBe(step)
    expect(known.filter((word) => !reader.knowledge.sightWords.has(word))).toEqual([])
    expect(not.filter((word) => reader.knowledge.sightWords.has(word))).toEqual([])
    expect(reader.knowledge.correspondences.has('sh=ʃ')).toBe(known.includes('said'))
    expect(reader.knowledge.endings.has('-ed')).toBe(known.includes('said'))
  })

  it('what is not secure is taken from the step too, and stands in the record with its last day', async () => {
    const reader = await load(
      'name: Meg\nstep: pink-4\nlessons:\n  - { date: 2026-09-14, taught: [b as in bat], secure: no }\n',
    )
    expect(knowledgeAt(series, 'pink-4').correspondences.has('b=b')).toBe(true)
    expect(reader.knowledge.correspondences.has('b=b')).toBe(false)
    expect(reader.record?.items).toMatchObject([
      { item: { written: 'b as in bat' }, last: '2026-09-14', isSecure: false },
    ])
  })
})

const ITEMS = ['sh as in ship', 'ai as in rain', 'said', 'they', '-ed', '-ing', 'ch as in chip'] as const
const lesson = fc.record({
  date: fc.integer({ min: 1, max: 28 }).map((day) => `2026-09-${String(day).padStart(2, '0')}`),
  taught: fc.uniqueArray(fc.constantFrom(...ITEMS), { minLength: 1, maxLength: 3 }),
  secure: fc.boolean(),
})
const toYaml = (lessons: readonly { date: string; taught: readonly string[]; secure: boolean }[]): string =>
  `name: Meg\nstep: pink-4\nlessons: ${JSON.stringify(lessons.map((one) => ({ ...one, secure: one.secure ? 'yes' : 'no' })))}\n`

it('record then judge equals judge then record', async () => {
  await fc.assert(
    fc.asyncProperty(fc.array(lesson, { maxLength: 4 }), lesson, async (before, last) => {
      const day = '2026-09-29'
      const recorded = await load(toYaml([...before, { ...last, date: day }]))
      const one = await load(toYaml([{ ...last, date: day }]))
      const then = withReader((await load(toYaml(before))).knowledge, one.extra)
      for (const part of ['sightWords', 'correspondences', 'endings'] as const)
        expect([...recorded.knowledge[part]].sort()).toEqual([...then[part]].sort())
    }),
    { numRuns: 60 },
  )
})

it('lessons after a day change nothing on it', async () => {
  await fc.assert(
    fc.asyncProperty(fc.array(lesson, { minLength: 1, maxLength: 5 }), async (lessons) => {
      const day = '2026-09-15'
      const then = await load(toYaml(lessons), day)
      const cut = await load(toYaml(lessons.filter(({ date }) => date <= day)))
      expect([...then.knowledge.sightWords].sort()).toEqual([...cut.knowledge.sightWords].sort())
    }),
    { numRuns: 40 },
  )
})

describe('a group', () => {
  const files = {
    'meg.yaml': MEG,
    'sid.yaml': 'name: Sid\nstep: blue-1\nknows:\n  sight words: [said]\nnot yet:\n  sight words: [to]\n',
  }
  const group = 'name: The ducks\nmembers: [meg.yaml, sid.yaml]\n'

  it('knows what all of its members know, at the earliest step of them', async () => {
    const floor = await load(group, undefined, files)
    expect(floor.step).toBe('pink-5')
    expect(floor.knowledge.sightWords.has('said')).toBe(true)
    expect(floor.knowledge.sightWords.has('to')).toBe(false)
    expect(floor.knowledge.sightWords.has('they')).toBe(false)
    const members = floor.members ?? []
    expect(members.map(({ name }) => name)).toEqual(['Meg', 'Sid'])
    for (const part of ['sightWords', 'correspondences', 'endings'] as const) {
      const shared = [...(members[0]?.knowledge[part] ?? [])].filter((item) =>
        members.every(({ knowledge }) => (knowledge[part] as ReadonlySet<string>).has(item)),
      )
      expect([...floor.knowledge[part]].sort()).toEqual(shared.sort())
    }
  })

  it.each([
    ['name: The ducks\nmembers: [no.yaml]\n', 'no.yaml:1:1'],
    [
      'name: The ducks\nmembers: [group.yaml]\n',
      'group.yaml:2:1: error: This is a group itself: name its members instead',
    ],
    [
      'name: The ducks\nstep: pink-1\nmembers: [sid.yaml]\n',
      'meg.yaml:2:1: error: A group has only `name:` and `members:`',
    ],
  ])('%j is told at its place', async (yaml, told) => {
    const member = (path: string) => loadReader({ ...files, 'group.yaml': group }[path] ?? '', { ...tools, path })
    const result = await loadReader(yaml, { ...tools, member })
    expect(result.ok ? '' : result.problems.map(toProblemLine).join('\n')).toContain(told)
  })
})

describe('what is wrong with a lesson', () => {
  it.each([
    ['  - date: 2026-13-01\n    step: pink-5\n', 'meg.yaml:4:11: error: Write the day as `2026-09-14`'],
    ['  - date: 2026-09-14\n', 'meg.yaml:4:5: error: This lesson says nothing'],
    ['  - { date: 2026-09-14, step: pnik-5 }\n', 'Did you mean `pink-5`?'],
    ['  - { date: 2026-09-14, taught: [sh in cat] }\n', 'meg.yaml:4:34: error: '],
    [
      '  - { date: 2026-09-14, taught: [-edd] }\n',
      'meg.yaml:4:34: error: `-edd` is no ending that can be taught. Did you mean `-ed`?',
    ],
    ['  - { date: 2026-09-14, taught: [saidd] }\n', 'meg.yaml:4:34: error: `saidd` is not in the dictionary'],
  ])('%j', async (lessons, told) => {
    const result = await loadReader(`name: Meg\nstep: pink-4\nlessons:\n${lessons}`, tools)
    expect(result.ok ? '' : result.problems.map(toProblemLine).join('\n')).toContain(told)
  })
})
