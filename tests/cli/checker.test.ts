// One preparation for each version of a text: a check, a hover, a completion and fixes stand on the same.

import { resolve } from 'node:path'
import { afterAll, expect, it } from 'vitest'
import { createChecker } from '../../src/cli/checker.ts'
import { createWorld } from './io.ts'

const world = createWorld({ 'battledore.yaml': 'step: pink-4\n' })
afterAll(world.remove)

const toStory = (source: string, name = 'tam.md') => {
  const storyPath = resolve(world.cwd, name).replaceAll('\\', '/')
  return { path: name, storyPath, source }
}

it('prepares a story once for each version of its text', async () => {
  const checker = createChecker(world.io)
  const first = await checker.prepare(toStory('A hen.\n'))
  expect(await checker.prepare(toStory('A hen.\n'))).toBe(first)
  const checked = await checker.check(toStory('A hen.\n'))
  expect(checked && 'story' in checked && 'story' in first && checked.story === first.story).toBe(true)
  expect(await checker.prepare(toStory('A big hen.\n'))).not.toBe(first)
})

it('prepares it anew when a config has changed', async () => {
  const checker = createChecker(world.io)
  const first = await checker.prepare(toStory('A boat.\n'))
  world.write({ 'battledore.yaml': 'step: green-14 # later\n' })
  expect(checker.refresh()).toBe(true)
  const second = await checker.prepare(toStory('A boat.\n'))
  expect('step' in first && first.step).toBe('pink-4')
  expect('step' in second && second.step).toBe('green-14')
})

it('keeps few stories', async () => {
  const checker = createChecker(world.io)
  const first = await checker.prepare(toStory('A hen.\n'))
  for (const name of ['a.md', 'b.md', 'c.md', 'd.md']) await checker.prepare(toStory('A hen.\n', name))
  expect(await checker.prepare(toStory('A hen.\n'))).not.toBe(first)
})
