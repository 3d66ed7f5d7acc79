// What the desk's shelf leaves out is what `check` leaves out: by .gitignore, by .battledoreignore, and what is for adults.

import { afterEach, expect, it } from 'vitest'
import { createStore } from '../../../src/cli/desk/store.ts'
import { main } from '../../../src/cli/main.ts'
import { createWorld } from '../io.ts'

const STORY = '---\nstep: pink-4\n---\n\n# Tam\n\nTam sat.\n'
const world = createWorld({
  '.battledoreignore': 'draft-*\nold/\n!README.md\n!kept.md\n',
  '.gitignore': 'kept.md\nsecret.md\n',
  'README.md': STORY,
  'CONTRIBUTING.md': '# For adults\n',
  'draft-1.md': STORY,
  'kept.md': STORY,
  'notes/.battledoreignore': 'one.md\n',
  'notes/one.md': STORY,
  'notes/two.md': STORY,
  'old/tib.md': STORY,
  'secret.md': STORY,
  'tam.md': STORY,
})
afterEach(() => world.remove())

it('lists as stories of the shelf what `check` checks', async () => {
  expect(await main(['check', '.', '--format', 'json'], world.io), world.err()).toBe(0)
  const checked = (JSON.parse(world.out()) as { readonly files: readonly { readonly path: string }[] }).files
  const listed = await createStore(world.cwd, world.io).list()
  const stories = listed.ok ? listed.value.filter(({ isLeftOut }) => isLeftOut === false) : []
  expect(checked.length).toBeGreaterThan(3)
  expect(stories.map(({ name }) => name).sort()).toEqual(checked.map(({ path }) => path).sort())
})
