// A check writes over its own files and old reports, and over nothing else.

import { linkSync, symlinkSync } from 'node:fs'
import { join } from 'node:path'
import { afterEach, describe, expect, it } from 'vitest'
import { main } from '../../../src/cli/main.ts'
import { createWorld, type TestWorld } from '../io.ts'

const STORY = '---\nstep: pink-3\n---\n\nSid sat at night.\n'
const SHELF = {
  'a.md': STORY,
  'b.md': STORY,
  'story.txt': STORY,
  'battledore.yaml': 'names: [Sid]\n',
  'other.json': '{"names": ["Sid"]}\n',
  'package.json': '{"name": "stories"}\n',
  'notes.txt': 'Buy milk.\n',
}

let world: TestWorld
afterEach(() => world.remove())

async function check(...args: readonly string[]): Promise<{ code: number; out: string; err: string }> {
  const [out, err] = [world.out().length, world.err().length]
  const code = await main(['check', ...args], world.io)
  return { code, out: world.out().slice(out), err: world.err().slice(err) }
}

const isStory = (flag: string, file: string): string => `${flag} cannot be \`${file}\`: a file of that name is a story.`
const holdsSettings = (flag: string, file: string): string =>
  `${flag} cannot be \`${file}\`: a file of that name holds settings.`
const isOther = (file: string): string =>
  `--cache-file cannot be \`${file}\`: it is there already and holds something else.`

describe('what would be lost', () => {
  it.each([
    [['b.md', '--cache-file', 'a.md'], isStory('--cache-file', 'a.md')],
    [['b.md', '--cache-file', 'new.md'], isStory('--cache-file', 'new.md')],
    [['--cache', '--cache-file', 'battledore.yaml'], holdsSettings('--cache-file', 'battledore.yaml')],
    [['--cache-file', 'package.json'], holdsSettings('--cache-file', 'package.json')],
    [['--cache-file', 'other.json'], isOther('other.json')],
    [['--cache-file', 'notes.txt'], isOther('notes.txt')],
    [['--cache-file', 'soft'], isOther('soft')],
    [['--cache-file', '/dev/full'], '--cache-file cannot be `/dev/full`: that is no plain file.'],
    [['--cache-file', '/dev/zero'], '--cache-file cannot be `/dev/zero`: that is no plain file.'],
    [['b.md', '--baseline', 'a.md', '--write-baseline'], isStory('--baseline', 'a.md')],
    [
      ['b.md', '--baseline', 'notes.txt', '--write-baseline'],
      '--baseline cannot be `notes.txt`: it is there already and is no baseline.',
    ],
    [['b.md', '--output', 'a.md'], isStory('--output', 'a.md')],
    [['b.md', '--format', 'html=a.md'], isStory('The file of --format html', 'a.md')],
    [['b.md', '--output', 'battledore.yaml'], holdsSettings('--output', 'battledore.yaml')],
    [['story.txt', '--output', 'story.txt'], '--output cannot be `story.txt`: that is a story to check.'],
    [['story.txt', '--output', 'hard'], '--output cannot be `hard`: that is a story to check.'],
    [
      ['a.md', '--config', 'other.json', '--output', './other.json'],
      '--output cannot be `./other.json`: this check reads it.',
    ],
  ])('%j is refused in one line, and nothing is written', async (args, message) => {
    world = createWorld(SHELF)
    symlinkSync('notes.txt', join(world.cwd, 'soft'))
    linkSync(join(world.cwd, 'story.txt'), join(world.cwd, 'hard'))
    expect(await check(...args)).toEqual({ code: 2, out: '', err: `battledore: ${message}\n` })
    for (const [path, text] of Object.entries(SHELF)) expect(world.read(path)).toBe(text)
    expect(world.io.fs.existsSync(join(world.cwd, 'new.md'))).toBe(false)
  })
})

describe('what is its own', () => {
  it.each([
    ['empty', ''],
    ['cut short at once', '{"format":"batt'],
    ['of another version', '{"format":"battledore cache 1","program":"x"}\nx\n'],
  ])('a named cache that is %s is made anew without a word', async (_, text) => {
    world = createWorld({ ...SHELF, 'kept.json': text })
    const { code, err } = await check('a.md', '--cache-file', 'kept.json')
    expect([code, err]).toEqual([1, ''])
    expect(world.read('kept.json')).toMatch(/^\{"format":"battledore cache \d+","program":/)
  })

  it.each([
    ['empty', ''],
    ['of another version', '{"baseline":0}'],
    ['with marks of a merge in it', '{\n  "baseline": 1,\n<<<<<<< ours\n'],
  ])('a baseline that is %s is made anew', async (_, text) => {
    world = createWorld({ ...SHELF, 'base.json': text })
    expect((await check('a.md', '--baseline', 'base.json', '--write-baseline')).code).toBe(0)
    expect((await check('a.md', '--baseline', 'base.json')).code).toBe(0)
  })

  it('an old report is written over', async () => {
    world = createWorld({ ...SHELF, 'report.txt': 'old' })
    await check('a.md', '--output', 'report.txt')
    await check('a.md', '--output', 'report.txt', '--format', 'html=/dev/null')
    expect(world.read('report.txt')).toContain('night')
  })
})
