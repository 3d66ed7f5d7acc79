// A plain check of one file loads neither the matcher of patterns, nor that of ignore files, nor the YAML parser.

import { join } from 'node:path'
import { afterAll, expect, it, vi } from 'vitest'
import { findStories } from '../../src/cli/files.ts'
import { createTextReader } from '../../src/cli/read.ts'
import { createConfigFinder, readFrontMatter } from '../../src/config/index.ts'
import { createWorld } from './io.ts'

const loaded = vi.hoisted(() => [] as string[])
vi.mock('tinyglobby', async (original) => {
  loaded.push('tinyglobby')
  return original()
})
vi.mock('ignore', async (original) => {
  loaded.push('ignore')
  return original()
})
vi.mock('yaml', async (original) => {
  loaded.push('yaml')
  return original()
})

const world = createWorld({ 'hen.md': 'A hen.', 'battledore.yaml': 'step: pink-1\nnames:\n  - Tam\n' })
afterAll(world.remove)

it('loads each only when it is needed', async () => {
  const { io, cwd } = world
  expect((await findStories(['hen.md'], io)).files).toHaveLength(1)
  expect((await findStories(['.'], io)).files).toHaveLength(1)
  const finder = createConfigFinder(createTextReader(io), [])
  expect((await finder.findFor(join(cwd, 'hen.md'))).folders).toHaveLength(1)
  const readValue = (value: string) =>
    readFrontMatter({ path: 'hen.md', text: `---\n${value}---\n` }, { start: 0, end: 0, value, valueStart: 4 }, [])
  expect((await readValue('step: pink-1\n')).layer.step?.value).toBe('pink-1')
  expect(loaded).toEqual([])

  await findStories(['*.md'], io)
  expect(loaded).toEqual(['tinyglobby'])
  await readValue('rules: {}\n')
  expect(loaded).toEqual(['tinyglobby', 'yaml'])
  world.write({ '.gitignore': 'x\n' })
  await findStories(['hen.md'], io)
  expect(loaded).toEqual(['tinyglobby', 'yaml', 'ignore'])
})
