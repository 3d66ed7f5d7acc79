// Results kept between runs: used again for what has not changed, and never believed otherwise.

import { chmodSync, existsSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterEach, describe, expect, it } from 'vitest'
import { toFingerprint } from '../../../src/cli/check/fingerprint.ts'
import { main } from '../../../src/cli/main.ts'
import { createWorld, type TestWorld } from '../io.ts'

const SEQUENCE = 'name: mine\ntitle: Mine\nextends: series\nsteps:\n  - id: extra-1\n    sight words: [constructor]\n'
const SHELF = {
  'battledore.yaml': 'names: [Meg]\n',
  'a.md': '---\nstep: pink-3\n---\n\n# A\n\nMeg sat. A **night** 😀 light. He can jump.\n',
  'b.md': '---\nstep: pink-3\n---\n\nMeg sat at night.\n',
}

let world: TestWorld
afterEach(() => world.remove())

const MISSED = /^(.*) is not in the cache\.\n/gm

/** `judged` are the stories that were not taken from the cache. */
async function check(
  ...args: readonly string[]
): Promise<{ judged: readonly string[]; out: string; err: string; code: number }> {
  const [out, err] = [world.out().length, world.err().length]
  const code = await main(['check', '--cache', ...args], { ...world.io, env: { BATTLEDORE_DEBUG: '1' } })
  const said = world.err().slice(err)
  const judged = [...said.matchAll(MISSED)].map(([, path = '']) => path)
  return { judged: judged.sort(), out: world.out().slice(out), err: said.replace(MISSED, ''), code }
}

const FILE = '.battledore-cache.json'

describe('check --cache', () => {
  it('gives the same reports from kept results, in every format', async () => {
    world = createWorld(SHELF)
    const fresh = await check('--format', 'pretty')
    expect(fresh.judged).toEqual(['a.md', 'b.md'])
    for (const format of ['pretty', 'line', 'json', 'github', 'sarif', 'junit', 'html']) {
      const kept = await check('--format', format)
      const before = world.out().length
      const code = await main(['check', '--format', format], world.io)
      expect(kept).toEqual({ judged: [], out: world.out().slice(before), err: '', code })
    }
  })

  it('shows no words that could stand there where none are asked for', async () => {
    world = createWorld(SHELF)
    expect((await check()).out).toContain('Could stand here')
    for (const format of ['pretty', 'json', 'sarif', 'html']) {
      const kept = await check('--no-suggest', '--format', format)
      const before = world.out().length
      await main(['check', '--no-suggest', '--format', format], world.io)
      expect([kept.judged, kept.out]).toEqual([[], world.out().slice(before)])
    }
    expect((await check()).out).toContain('Could stand here')
  })

  it('checks again what has changed: a text, a setting, a flag, the config that is named', async () => {
    world = createWorld(SHELF)
    await check()
    world.write({ 'a.md': `${SHELF['a.md']}\n` })
    expect((await check()).judged).toEqual(['a.md'])
    expect((await check()).judged).toEqual([])
    world.write({ 'battledore.yaml': 'names: [Meg, Sid]\n' })
    expect((await check()).judged).toEqual(['a.md', 'b.md'])
    expect((await check('--step', 'pink-4')).judged).toEqual(['a.md', 'b.md'])
    expect((await check('--accent', 'southern-british')).judged).toEqual(['a.md', 'b.md'])
    world.write({ 'other.yaml': 'names: []\n' })
    expect((await check('--config', 'other.yaml')).judged).toEqual(['a.md', 'b.md'])
    expect((await check('--config', 'other.yaml')).judged).toEqual([])
  })

  it('checks again when the sequence file that a story names has changed', async () => {
    world = createWorld({
      ...SHELF,
      'mine.yaml': SEQUENCE,
      'c.md': '---\nsequence: mine.yaml\nstep: pink-3\n---\n\nMeg sat.\n',
    })
    const first = await check('--format', 'json')
    expect(first.code).toBe(1)
    expect((await check()).judged).toEqual([])
    world.write({ 'mine.yaml': `${SEQUENCE}# changed\n` })
    expect((await check()).judged).toEqual(['c.md'])
    expect((await check()).judged).toEqual([])
  })

  it.each([
    ['cut short', (text: string) => text.slice(0, text.length / 2)],
    ['empty', () => ''],
    ['no JSON', () => 'not a cache\n{}\n'],
    ['changed by hand', (text: string) => text.replaceAll('night', 'nihgt')],
    ['with a result made up', (text: string) => text.replace(/"messages":\[.*?\]/, '"messages":[]')],
    ['of another program', (text: string) => text.replace(/"program":"[^"]*"/, '"program":"0.0.1"')],
    ['of another tool', () => '{"format":"other","digest":""}\n[]\n'],
    ['with null in it', () => 'null\nnull\n'],
  ])('does not believe a cache that is %s, says nothing of it, and makes it anew', async (_, spoil) => {
    world = createWorld(SHELF)
    const { out } = await check()
    const whole = world.read(FILE)
    world.write({ [FILE]: spoil(whole) })
    expect(await check()).toEqual({ judged: ['a.md', 'b.md'], out, err: '', code: 1 })
    expect(world.read(FILE)).toBe(whole)
    expect((await check()).judged).toEqual([])
  })

  it('believes no binary rubbish, and reads no device', async () => {
    world = createWorld(SHELF)
    writeFileSync(join(world.cwd, FILE), new Uint8Array([0, 255, 10, 0, 10]))
    expect((await check()).err).toBe('')
    rmSync(join(world.cwd, FILE))
    symlinkSync('/dev/full', join(world.cwd, FILE))
    const { code, err, judged } = await check()
    expect([code, err, judged]).toEqual([
      1,
      `battledore: the cache could not be kept: \`${FILE}\` could not be written: the disk is full.\n`,
      ['a.md', 'b.md'],
    ])
  })

  it('refuses a folder', async () => {
    world = createWorld({ ...SHELF, 'folder/x.txt': '' })
    const { code, err } = await check('--cache-file', 'folder')
    expect([code, err]).toEqual([2, 'battledore: --cache-file cannot be `folder`: that is a folder.\n'])
  })

  // A superuser may write anywhere, so the folder is one that the system itself keeps from being written.
  it('says in one line that a folder can only be read, and checks all the same', async () => {
    world = createWorld(SHELF)
    const isRoot = process.getuid?.() === 0
    const folder = isRoot ? '/proc/battledore' : join(world.cwd, 'locked')
    if (!isRoot) {
      world.write({ 'locked/x.txt': '' })
      chmodSync(folder, 0o555)
    }
    const { code, err, out } = await check('--cache-file', join(folder, 'cache.json'), '--format', 'line')
    expect(code).toBe(1)
    expect(out).toContain('night')
    expect(err).toMatch(/^battledore: the cache could not be kept: [^\n]+\n$/)
  })

  it('forgets stories that are gone, and keeps those that were not asked for', async () => {
    world = createWorld(SHELF)
    await check()
    await check('a.md', '--step', 'pink-5')
    expect((await check('b.md')).judged).toEqual([])
    rmSync(join(world.cwd, 'b.md'))
    await check('a.md')
    expect(readFileSync(join(world.cwd, FILE), 'utf8')).not.toContain('b.md')
  })

  it('lies beside other caches where there are packages', async () => {
    world = createWorld({ ...SHELF, 'node_modules/x/package.json': '{}' })
    await check()
    expect(existsSync(join(world.cwd, 'node_modules/.cache/battledore.json'))).toBe(true)
    expect((await check()).judged).toEqual([])
  })

  it('keeps nothing of a story that could not be checked', async () => {
    world = createWorld({ ...SHELF, 'c.md': 'No step here.\n' })
    const first = await check()
    expect(first.code).toBe(2)
    const again = await check()
    expect([again.code, again.err, again.judged]).toEqual([2, first.err, ['c.md']])
  })
})

describe('the name of the program', () => {
  it('is another one when any of its files has changed', async () => {
    world = createWorld({})
    const { fs } = world.io
    const withDate = (name: string, later: number): string => {
      const statSync = (path: string) => {
        const { size, mtimeMs } = fs.statSync(path)
        return { size, mtimeMs: path.endsWith(name) ? mtimeMs + later : mtimeMs }
      }
      return toFingerprint({ fs: { ...fs, statSync } as unknown as typeof fs })
    }
    const now = withDate('lexicon.bin', 0)
    expect(withDate('lexicon.bin', 5)).not.toBe(now)
    expect(withDate('series.json', 5)).not.toBe(now)
    expect(withDate('no-such-file.bin', 5)).toBe(now)
  })
})
