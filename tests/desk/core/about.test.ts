// About this story: what is set is what is then said, in a story of the folder with and without settings of its own.

import { expect, it } from 'vitest'
import type { AboutEdit, SettingKey } from '../../../src/desk/core/questions.ts'
import { applyEdits } from '../../../src/fix/index.ts'
import { filesInMemory, openDesk } from './host.ts'

const OURS = 'name: ours\ntitle: Our own words\nsteps:\n  - id: one\n    teach:\n      - a as in cat\n'
const desk = await openDesk(
  filesInMemory({
    'battledore.yaml': 'step: pink-4\nnames: [Tam, Old Ned]\n',
    'words/ours.yaml': OURS,
    'readers/meg.yaml': 'name: Meg\nstep: pink-2\n',
    'readers/wren.yaml': 'name: Wren\nstep: pnk-2\n',
  }),
)
const about = (text: string, path = 'red/tam.md') => desk.ask({ kind: 'about', story: { path, text, version: 3 } })

async function set(text: string, edit: AboutEdit): Promise<string> {
  const answer = await desk.ask({ kind: 'set', story: { path: 'red/tam.md', text, version: 1 }, edit })
  if (!answer.ok) throw new Error(answer.problems[0]?.message)
  return applyEdits(text, answer.value.edits)
}

const BARE = 'Tam sat.\n'
const FULL = '---\ntitle: "The *old* one"\nstep: pink-2 # for Meg\nnames: [Sid]\n---\n\n# A Hat\n\nTam had a hat.\n'

it('says what holds and who says it', async () => {
  const bare = await about(BARE)
  expect(bare).toMatchObject({
    version: 3,
    title: { value: null, isOwn: false },
    step: { value: 'pink-4', isOwn: false, from: 'battledore.yaml:1:7' },
    sequence: { value: 'series', from: 'what holds where nobody says' },
    names: { value: ['Tam', 'Old Ned'], isOwn: false },
    accent: { value: 'general-american' },
    isOpen: true,
  })
  const full = await about(FULL)
  expect(full).toMatchObject({
    title: { value: 'A Hat' },
    step: { value: 'pink-2', isOwn: true, from: '' },
    names: { value: ['Sid'], isOwn: true, inherited: ['Tam', 'Old Ned'] },
  })
  expect(full.choices.steps.map(({ value }) => value)).toContain('green-3')
  expect(full.choices.sequences).toEqual([
    ...['common-core', 'england', 'series'].map((value) => expect.objectContaining({ value })),
    { value: 'words/ours.yaml', title: 'Our own words', path: 'words/ours.yaml' },
  ])
})

const EDITS: readonly (readonly [SettingKey, string])[] = [
  ['title', 'Tam & the *Hat* #2'],
  ['title', 'Old Ned’s hen'],
  ['step', 'green-3'],
  ['accent', 'southern-british'],
  ['order', '12'],
  ['sequence', 'england'],
]

it.each([BARE, FULL, FULL.replace('# A Hat\n\n', ''), `${FULL}\n\`\`\`\n---\n`])(
  'what is set is then said: %j',
  async (text) => {
    for (const [key, value] of EDITS) {
      const after = await set(text, { key, value } as AboutEdit)
      const now = await about(after)
      expect(now[key], after).toMatchObject({ value, isOwn: true })
      expect(after.endsWith(text.slice(-9))).toBe(true)
      if (key !== 'title') expect(await set(after, { key, value: null } as AboutEdit)).not.toContain(`${key}:`)
    }
    for (const key of ['names', 'sight words', 'introduces', 'practises'] as const) {
      const added = await set(await set(text, { key, add: 'ai' }), { key, add: 'ea' })
      expect((await about(added))[key].value).toEqual(expect.arrayContaining(['ai', 'ea']))
      const removed = await set(added, { key, remove: 'ai' })
      expect((await about(removed))[key].value).not.toContain('ai')
      expect((await about(removed))[key].value).toContain('ea')
    }
  },
)

it('keeps a comment, and writes an own sequence as it is seen from the story', async () => {
  expect(await set(FULL, { key: 'step', value: 'pink-3' })).toBe(FULL.replace('pink-2', 'pink-3'))
  const own = await set(FULL, { key: 'sequence', value: 'words/ours.yaml' })
  expect(own).toContain('sequence: ../words/ours.yaml\n')
  const now = await about(own)
  expect(now.sequence).toMatchObject({ value: 'words/ours.yaml', problem: null })
  // The step is one of another sequence: it is told, with the steps that there are.
  expect(now.step.problem?.message).toContain('pink-2')
  expect(now.choices.steps).toEqual([{ value: 'one', title: 'one' }])
})

it('tells what is wrong at its field, and leaves alone what it cannot read', async () => {
  const wrong = await about('---\nstep: pnk-4\naccent: scots\n---\n\nTam sat.\n')
  expect(wrong.step.problem?.expected).toEqual(['pink-4'])
  expect(wrong.accent.problem?.message).toContain('scots')
  expect(wrong.problems).toEqual([])
  const broken = '---\nstep: [pink-4\n---\n\nTam sat.\n'
  expect(await about(broken)).toMatchObject({ isOpen: false, problems: [{ code: 'broken-yaml' }] })
  const refused = await desk.ask({
    kind: 'set',
    story: { path: 'red/tam.md', text: broken, version: 1 },
    edit: { key: 'title', value: 'Tam' },
  })
  expect(refused.ok).toBe(false)
  const noNumber = {
    kind: 'set',
    story: { path: 'a.md', text: BARE, version: 1 },
    edit: { key: 'order', value: 'first' },
  } as const
  expect(await desk.ask(noNumber)).toMatchObject({
    ok: false,
    problems: [{ message: expect.stringContaining('number') }],
  })
})

it('lists the readers of the folder, with what is wrong with one', async () => {
  const readers = await desk.ask({ kind: 'readers' })
  expect(readers).toMatchObject([
    { path: 'readers/meg.yaml', name: 'Meg', step: 'pink-2', problems: [] },
    { path: 'readers/wren.yaml', name: 'Wren', step: null, problems: [{ expected: ['pink-2'] }] },
  ])
})
