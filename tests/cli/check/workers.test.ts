// Many stories judged by workers: the report is that of one judge, byte for byte.

import { spawnSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { inOrder } from '../../../src/cli/check/in-order.ts'
import { createWorld, type TestWorld } from '../io.ts'

// Workers run compiled files; `npm test` compiles before it tests.
const PROGRAM = fileURLToPath(new URL('../../../dist/cli.cjs', import.meta.url))

const toStory = (at: number): string =>
  `---\nstep: pink-${(at % 4) + 1}\n---\n\n# Tam ${at}\n\nTam sat at night. It ${at % 3 === 0 ? 'read' : 'won'} ${'a hat '.repeat(at % 7)}.\n`

describe('check --workers', () => {
  let world: TestWorld
  beforeAll(() => {
    const stories = Object.fromEntries(Array.from({ length: 60 }, (_, at) => [`${at}.md`, toStory(at)]))
    world = createWorld({
      ...stories,
      'battledore.yaml': 'names: [Tam]\n',
      'bad/battledore.yaml': 'nmaes: x\n',
      'bad/x.md': toStory(1),
      '30.md': 'no step\n',
      '31.md': new Uint8Array([0, 1]),
      'own.yaml': 'name: own\nextends: series\nsteps:\n  - id: own-1\n',
      '32.md': '---\nsequence: own.yaml\nstep: own-1\n---\n\nTam sat.\n',
    })
  })
  afterAll(() => world.remove())

  const check = (...args: readonly string[]) => {
    const { status, stdout, stderr } = spawnSync(process.execPath, [PROGRAM, 'check', ...args], {
      cwd: world.cwd,
      env: { ...process.env, NO_COLOR: '1' },
    })
    return { status, out: stdout.toString(), err: stderr.toString() }
  }

  it.each(['line', 'json', 'pretty'])(
    'prints the same in %s, in the same order, with the same complaints',
    (format) => {
      expect(existsSync(PROGRAM), 'run `npm run compile` first').toBe(true)
      const alone = check('--format', format, '--workers', '0')
      expect(alone.status).toBe(2)
      // In the line format they stand among the messages.
      const complaints =
        format === 'line' ? alone.out.match(/\[(?:not-checked|config)\]$/gm) : alone.err.match(/^.+$/gm)
      expect(complaints?.length).toBeGreaterThan(2)
      expect(check('--format', format, '--workers', '3')).toEqual(alone)
    },
  )

  it('fills a cache that one judge can use', () => {
    const alone = check('--format', 'json', '--workers', '0')
    expect(check('--format', 'json', '--cache', '--workers', '3')).toEqual(alone)
    expect(check('--format', 'json', '--cache')).toEqual(alone)
  })
})

describe('inOrder', () => {
  const wait = (time: number) => new Promise((done) => setTimeout(done, time))

  it('hands results on in the order of the items, with no more than `ahead` under way', async () => {
    let [now, most] = [0, 0]
    const work = async (item: number): Promise<number> => {
      most = Math.max(most, ++now)
      await wait(item % 3 === 0 ? 8 : 1)
      now--
      return item * 2
    }
    const results: number[] = []
    for await (const value of inOrder(
      Array.from({ length: 20 }, (_, at) => at),
      work,
      4,
    ))
      results.push(value)
    expect(results).toEqual(Array.from({ length: 20 }, (_, at) => at * 2))
    expect(most).toBe(4)
  })

  it('throws what an item throws, when its turn comes', async () => {
    const results: number[] = []
    const run = async (): Promise<void> => {
      for await (const value of inOrder(
        [1, 2, 3],
        (item) => (item === 2 ? Promise.reject(new Error('two')) : Promise.resolve(item)),
        3,
      ))
        results.push(value)
    }
    await expect(run()).rejects.toThrow('two')
    expect(results).toEqual([1])
  })
})
