// Many stories judged by workers: the report is that of one judge, byte for byte.

import { spawnSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { inOrder } from '../../../src/cli/check/in-order.ts'
import { shareOut } from '../../../src/cli/check/share-out.ts'
import type { Task } from '../../../src/cli/check/task.ts'
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

describe('shareOut', () => {
  const task = (path: string): Task => ({ path, storyPath: path, source: '', chain: EMPTY })
  const EMPTY = { problems: [] } as unknown as Task['chain']
  const paths = Array.from({ length: 40 }, (_, at) => String(at))
  const toResult = ({ path }: Task) => ({ path, problems: [] })

  it('has this thread judge too, one story at a time, and helpers no more than they have room for', async () => {
    let [here, mostHere, away, mostAway, mine] = [0, 0, 0, 0, 0]
    const judgeHere = async (one: Task) => {
      mostHere = Math.max(mostHere, ++here)
      await wait(1)
      here--
      mine++
      return toResult(one)
    }
    const judge = async (one: Task) => {
      mostAway = Math.max(mostAway, ++away)
      await wait(3)
      away--
      return toResult(one)
    }
    let asked = 0
    const call = () => (++asked < 5 ? undefined : Promise.resolve({ room: 3, judge, end: () => Promise.resolve() }))
    const shared = shareOut(judgeHere, call)
    const results = await Promise.all(paths.map((path) => shared.judge(task(path))))
    expect(results.map(({ path }) => path)).toEqual(paths)
    expect([mostHere, mostAway, asked]).toEqual([1, 3, 5])
    expect(mine).toBeGreaterThan(5)
    expect(mine).toBeLessThan(36)
  })

  it('goes on alone where no helpers come, and hands on what a judge throws', async () => {
    const judgeHere = (one: Task) =>
      one.path === '7' ? Promise.reject(new Error('seven')) : Promise.resolve(toResult(one))
    const shared = shareOut(judgeHere, () => Promise.resolve(undefined))
    const all = await Promise.allSettled(paths.map((path) => shared.judge(task(path))))
    expect(all.flatMap(({ status }, at) => (status === 'rejected' ? [at] : []))).toEqual([7])
    await shared.end()
  })
})

const wait = (time: number) => new Promise((done) => setTimeout(done, time))

describe('inOrder', () => {
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
