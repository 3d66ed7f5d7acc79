// A baseline lets an old shelf take up the check: what it allows is passed over, it may shrink, and it may not grow.

import { afterEach, expect, it } from 'vitest'
import { main } from '../../../src/cli/main.ts'
import { createWorld, type TestWorld } from '../io.ts'

const HEAD = '---\nstep: pink-3\n---\n\n'
const SHELF = { 'old/a.md': `${HEAD}A night.\n\n---\n\nA night. A constructor sat.\n`, 'old/b.md': `${HEAD}It sat.\n` }

let world: TestWorld
afterEach(() => world.remove())

async function check(...args: readonly string[]): Promise<{ code: number; out: string; err: string }> {
  const [out, err] = [world.out().length, world.err().length]
  const code = await main(['check', 'old', '--format', 'line', ...args], world.io)
  return { code, out: world.out().slice(out), err: world.err().slice(err) }
}

const BASELINE = ['--baseline', 'base.json']

it('allows what it was written from, wherever the check runs and however the lines move', async () => {
  world = createWorld(SHELF)
  expect((await check()).code).toBe(1)
  const written = await check(...BASELINE, '--write-baseline')
  expect([written.code, written.out]).toEqual([0, ''])
  expect(written.err).toMatch(/^base\.json now allows \d+ messages of 2 stories\.\n$/)
  expect(await check(...BASELINE)).toEqual({ code: 0, out: '', err: '' })
  world.write({ 'old/a.md': SHELF['old/a.md'].replace('A night.', '\n\nA night.') })
  expect(await check(...BASELINE)).toEqual({ code: 0, out: '', err: '' })
  expect(
    await main(['check', '.', '--format', 'line', '--baseline', '../base.json'], {
      ...world.io,
      cwd: `${world.cwd}/old`,
    }),
  ).toBe(0)
})

it('does not say that every word can be read where it passes over messages', async () => {
  world = createWorld(SHELF)
  await check(...BASELINE, '--write-baseline')
  const before = world.out().length
  await main(['check', 'old', ...BASELINE], world.io)
  const out = world.out().slice(before)
  expect(out).not.toContain('every word can be read')
  expect(out.match(/ {2}Nothing to mend beyond the baseline\.\n/g)).toHaveLength(2)
  expect(out.replaceAll('\n', ' ')).toMatch(/readable\. Nothing to mend beyond the baseline\. $/)
})

it('counts by file, rule and word, in an order that is always the same', async () => {
  world = createWorld(SHELF)
  await check(...BASELINE, '--write-baseline')
  const { files } = JSON.parse(world.read('base.json'))
  const words = Object.values(files['old/a.md'] as Record<string, Record<string, number>>).flatMap((one) =>
    Object.entries(one),
  )
  expect(words).toContainEqual(['night', 2])
  expect(Object.keys(files)).toEqual(Object.keys(files).sort())
  const text = world.read('base.json')
  await check(...BASELINE, '--write-baseline')
  expect(world.read('base.json')).toBe(text)
})

it('fails where there is more, and shows it', async () => {
  world = createWorld(SHELF)
  await check(...BASELINE, '--write-baseline')
  world.write({ 'old/b.md': `${HEAD}It sat at night.\n` })
  const { code, out, err } = await check(...BASELINE)
  expect(code).toBe(1)
  expect(out).toMatch(/^old\/b\.md:5:11-5:16: error: `night`/)
  expect(out.trim().split('\n')).toHaveLength(1)
  expect(err).toBe('1 message more than base.json allows.\n')
  expect((await check(...BASELINE, '--fail-on', 'never')).code).toBe(0)
})

it('says that there is less, and shrinks when it is written again', async () => {
  world = createWorld(SHELF)
  await check(...BASELINE, '--write-baseline')
  world.write({ 'old/a.md': `${HEAD}It sat.\n\n---\n\nA night.\n` })
  const { code, out, err } = await check(...BASELINE)
  expect([code, out]).toEqual([0, ''])
  expect(err).toMatch(/^\d+ messages fewer than base\.json allows: --write-baseline makes it smaller\.\n$/)
  await check(...BASELINE, '--write-baseline')
  expect(await check(...BASELINE)).toEqual({ code: 0, out: '', err: '' })
  world.write(SHELF)
  expect((await check(...BASELINE)).code).toBe(1)
})

it('keeps what it allows of files that were not checked, and forgets files that are gone', async () => {
  world = createWorld({ ...SHELF, 'more/c.md': `${HEAD}A light.\n` })
  await main(['check', 'more', ...BASELINE, '--write-baseline'], world.io)
  await check(...BASELINE, '--write-baseline')
  expect(Object.keys(JSON.parse(world.read('base.json')).files)).toEqual(['more/c.md', 'old/a.md'])
  world.io.fs.rmSync(`${world.cwd}/more/c.md`)
  await check(...BASELINE, '--write-baseline')
  expect(Object.keys(JSON.parse(world.read('base.json')).files)).toEqual(['old/a.md'])
})

it.each([
  ['missing', undefined, 'There is no baseline `base.json`. --write-baseline makes it.'],
  ['no JSON', 'x', '`base.json` is not a baseline.'],
  [
    'of another kind',
    '{"baseline":1,"files":{"old/a.md":{"rule":3}}}',
    '`base.json` is not a baseline. --write-baseline makes it anew.',
  ],
  ['empty', '', '`base.json` is not a baseline. --write-baseline makes it anew.'],
])('is one clear line when it is %s', async (_, text, message) => {
  world = createWorld(text === undefined ? SHELF : { ...SHELF, 'base.json': text })
  expect(await check(...BASELINE)).toEqual({ code: 2, out: '', err: `battledore: ${message}\n` })
})
