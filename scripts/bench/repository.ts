// What the check costs in a shared repository: at a commit, over a whole shelf again, and with workers.

import { spawnSync } from 'node:child_process'
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { availableParallelism, tmpdir } from 'node:os'
import { join } from 'node:path'
import { PROGRAM } from '../root.ts'
import { createChecker, type Story } from './check.ts'
import { pair, type Row, toRatioRow } from './measure.ts'
import { makeStories } from './stories.ts'

/** A process in a folder; what it prints is thrown away. Throws where it fails (exit 2 and above). */
function run(cwd: string, command: string, ...args: readonly string[]): void {
  const { status, stderr } = spawnSync(command, args, { cwd, maxBuffer: 1 << 28 })
  if (status === null || status > 1) throw new Error(`${command} ${args.join(' ')}: exit ${status}\n${stderr}`)
}

function withFolder<Value>(stories: readonly Story[], work: (folder: string) => Promise<Value>): Promise<Value> {
  const folder = mkdtempSync(join(tmpdir(), 'battledore-bench-'))
  mkdirSync(folder, { recursive: true })
  for (const { name, text } of stories) writeFileSync(join(folder, name), text)
  return work(folder).finally(() => rmSync(folder, { recursive: true, force: true }))
}

const check = (folder: string, ...args: readonly string[]): void =>
  run(folder, process.execPath, PROGRAM, 'check', ...args)

export async function benchRepository(stories: readonly Story[]): Promise<Row[]> {
  return [...(await benchHooks(stories)), await benchCache(stories), ...(await benchWorkers())]
}

/** A story of 5 KB as it is when it can be committed: its readers know all that it needs. */
const toReadable = ({ name, text }: Story): Story => ({ name, text: text.replace(/^step: .*$/m, 'step: green-14') })

const benchHook = (what: string, story: Story, limit: number): Promise<Row> =>
  withFolder([story], async (folder) => {
    run(folder, 'git', 'init', '-q')
    run(folder, 'git', 'add', '-A')
    const pairing = await pair(
      () => check(folder, '--staged'),
      () => run(folder, process.execPath, '-e', '0'),
      25,
    )
    return toRatioRow(`the hook on one staged story ${what} ÷ node -e 0`, pairing, limit)
  })

async function benchHooks(stories: readonly Story[]): Promise<Row[]> {
  const countMessages = createChecker()
  const counts = await Promise.all(stories.map((story) => countMessages([story])))
  const find = (isWanted: (count: number) => boolean): [Story, number] => {
    const at = counts.findIndex(isWanted)
    const story = stories[at]
    if (!story) throw new Error('no made story has so many messages')
    return [story, counts[at] ?? 0]
  }
  const [few, fewCount] = find((count) => count >= 10 && count <= 20)
  const [many, manyCount] = find((count) => count > 100)
  return [
    await benchHook('that can be read', toReadable(few), 3),
    await benchHook(`with ${fewCount} messages and their suggestions`, few, 3),
    await benchHook(`with ${manyCount} messages and their suggestions (no limit set)`, many, Infinity),
  ]
}

const benchCache = (stories: readonly Story[]): Promise<Row> =>
  withFolder(stories, async (folder) => {
    const first = (): void => {
      rmSync(join(folder, 'cache.json'), { force: true })
      check(folder, '--cache-file', 'cache.json')
    }
    const pairing = await pair(first, () => check(folder, '--cache-file', 'cache.json'), 3, 1)
    const share = pairing.b / pairing.a
    return {
      what: `${stories.length} unchanged stories again, with a cache, against the first run`,
      figure: `${share.toFixed(2)} × (${pairing.b.toFixed(0)} ms against ${pairing.a.toFixed(0)} ms)`,
      wanted: '≤ 0.2 ×',
      holds: share <= 0.2,
    }
  })

/** Workers asked for at a number of stories; unasked, they begin where the work that is left is worth it. */
async function benchWorkers(): Promise<Row[]> {
  const rows: Row[] = []
  for (const count of [256, 1000]) {
    rows.push(
      await withFolder(makeStories(count, 1), async (folder) => {
        const cores = String(availableParallelism())
        const pairing = await pair(
          () => check(folder, '--workers', cores),
          () => check(folder, '--workers', '0'),
          5,
          1,
        )
        return toRatioRow(`${count} made stories on ${cores} cores against one`, pairing, count < 1000 ? Infinity : 1)
      }),
    )
  }
  return rows
}
