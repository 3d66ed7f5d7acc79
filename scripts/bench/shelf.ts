// The cost of books × readers against one check of the same books, and the memory of a long shelf.

import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setFlagsFromString } from 'node:v8'
import { runInNewContext } from 'node:vm'
import { createProcessIo, type Io } from '../../src/cli/io.ts'
import { main } from '../../src/cli/main.ts'
import { loadBuiltIn } from '../../src/packaged/data.ts'
import { pair, type Row, toRatioRow } from './measure.ts'
import { makeStories } from './stories.ts'

/** So many reader files: all steps of the default sequence in turn, each with something known beyond or short of its step. */
function makeReaders(count: number): readonly { readonly name: string; readonly text: string }[] {
  const ids = loadBuiltIn('series', undefined)?.steps.map(({ id }) => id) ?? []
  return Array.from({ length: count }, (_, at) => {
    const step = ids[(at * 7) % ids.length] ?? 'pink-1'
    const own =
      at % 2 === 0
        ? 'knows:\n  sight words: [said, they]\n'
        : 'knows:\n  correspondences: [sh as in ship, ai as in rain]\n'
    return { name: `reader-${at + 1}.yaml`, text: `name: Reader ${at + 1}\nsequence: series\nstep: ${step}\n${own}` }
  })
}

function withFolder<Result>(work: (folder: string) => Promise<Result>): Promise<Result> {
  const folder = mkdtempSync(join(tmpdir(), 'battledore-bench-'))
  return work(folder).finally(() => rmSync(folder, { recursive: true, force: true }))
}

const world = createProcessIo(process)

/** The program in this process, with what it prints thrown away. The clock is looked at once a file: `look` rides on it. */
async function run(argv: readonly string[], cwd: string, look: () => void = () => undefined): Promise<void> {
  const nowhere = { write: () => undefined, isTTY: false, columns: undefined }
  const now = (): number => {
    look()
    return performance.now()
  }
  const io: Io = { ...world, cwd, stdout: nowhere, stderr: nowhere, now }
  const code = await main(argv, io)
  if (code === 2) throw new Error(`${argv.join(' ')}: exit 2`)
}

export function benchMatch(stories = 400, readers = 30, runs = 5): Promise<Row[]> {
  return withFolder(async (folder) => {
    mkdirSync(join(folder, 'stories'))
    mkdirSync(join(folder, 'readers'))
    for (const { name, text } of makeStories(stories)) writeFileSync(join(folder, 'stories', name), text)
    for (const { name, text } of makeReaders(readers)) writeFileSync(join(folder, 'readers', name), text)
    const match = () => run(['match', 'stories', '--readers', 'readers', '--format', 'json'], folder)
    const check = () => run(['check', 'stories', '--format', 'json', '--fail-on', 'never', '--workers', '1'], folder)
    return [
      toRatioRow(
        `match of ${stories} stories × ${readers} readers ÷ check of the stories`,
        await pair(match, check, runs, 1),
        2,
      ),
    ]
  })
}

/** What is held while a shelf of stories of 2 KB is counted, looked at every fifty books. */
export function benchShelf(sizes: readonly [small: number, large: number] = [500, 5000]): Promise<Row[]> {
  return withFolder(async (folder) => {
    const measure = async (count: number): Promise<number> => {
      const books = join(folder, String(count))
      mkdirSync(books)
      for (const { name, text } of makeStories(count, 1, { size: 2000 })) writeFileSync(join(books, name), text)
      return measurePeak((look) => run(['shelf', String(count), '--format', 'csv'], folder, look))
    }
    const [small, large] = [await measure(sizes[0]), await measure(sizes[1])]
    return [
      {
        what: `memory of a shelf of ${sizes[1]} books, beside one of ${sizes[0]}`,
        figure: `${large.toFixed(0)} MB held at the most, against ${small.toFixed(0)} MB`,
        wanted: 'flat: at most 40 MB more',
        holds: large - small <= 40,
      },
    ]
  })
}

// What is free and not yet collected is not held.
setFlagsFromString('--expose-gc')
const collect = runInNewContext('gc') as () => void

/** The most megabytes of heap and buffers in use. */
async function measurePeak(work: (look: () => void) => Promise<void>): Promise<number> {
  let peak = 0
  let asked = 0
  await work(() => {
    if (asked++ % 50 !== 0) return
    collect()
    const { heapUsed, arrayBuffers } = process.memoryUsage()
    peak = Math.max(peak, heapUsed + arrayBuffers)
  })
  return peak / 1024 / 1024
}
