// `check --print-config`: the value in force of every setting, and who set it.

import { afterAll, expect, it } from 'vitest'
import { createVocabularyWorld } from '../vocabulary-world.ts'

const OWN =
  'name: our-class\naccent: southern-british\nsettings:\n  reduced vowels: flag\nsteps:\n  - id: one\n    teach: [a as in cat]\n'
const world = createVocabularyWorld({
  'plain.md': '---\nstep: pink-6\n---\n\nTam sat.\n',
  'own.md': '---\nsequence: class/our-class.yaml\nstep: one\n---\n\nTam sat.\n',
  'said.md': '---\nstep: pink-6\naccent: southern-british\nreduced vowels: flag\n---\n\nTam sat.\n',
  'no-step.md': '---\naccent: southern-british\n---\n\nTam sat.\n',
  'broken.md': '---\nsequence: serie\nstep: pink-6\n---\n\nTam sat.\n',
  'class/our-class.yaml': OWN,
})
afterAll(() => world.remove())

async function show(path: string, ...args: readonly string[]): Promise<readonly string[]> {
  const { out } = await world.run('check', '--print-config', path, ...args)
  return out.split('\n').filter((line) => /^(?:sequence|step|accent|reduced vowels):/.test(line))
}

it.each([
  ['plain.md', 'accent: "general-american"  (sequence series)', 'reduced vowels: "accept"  (sequence series)'],
  ['own.md', 'accent: "southern-british"  (sequence our-class)', 'reduced vowels: "flag"  (sequence our-class)'],
  [
    'said.md',
    'accent: "southern-british"  (top of the story, line 3)',
    'reduced vowels: "flag"  (top of the story, line 4)',
  ],
  [
    'no-step.md',
    'accent: "southern-british"  (top of the story, line 2)',
    'reduced vowels: "accept"  (sequence series)',
  ],
  ['gone.md', 'accent: "general-american"  (sequence series)', 'reduced vowels: "accept"  (sequence series)'],
  ['broken.md', 'accent: null  (default)', 'reduced vowels: null  (default)'],
])('%s shows what the sequence says where nobody else does', async (path, ...lines) => {
  const shown = await show(path)
  expect(shown.filter((line) => /^(?:accent|reduced)/.test(line))).toEqual(lines)
})

it('shows what is typed', async () => {
  const lines = await show('plain.md', '--sequence', 'england', '--accent', 'general-american')
  expect(lines).toContain('accent: "general-american"  (--accent)')
  expect(lines).toContain('reduced vowels: "accept"  (sequence england)')
})

it('shows a front matter that names no step', async () => {
  expect(await show('broken.md')).toContain('sequence: "serie"  (top of the story, line 2)')
})
