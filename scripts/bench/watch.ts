// The time from saving a story to its result in a folder of 400 stories that is watched.

import { type ChildProcess, spawn } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { PROGRAM } from '../root.ts'
import type { Story } from './check.ts'
import { type Row, toMedian } from './measure.ts'

const STORIES = 400
const SAVES = 20
/** The flag wins over what a story says. */
const STEP = 'green-5'
/** Milliseconds. */
const LIMIT = 100
const PAUSE = 250

/** @param given as many as there are; they are there over and over, each time in a file of its own. */
export async function benchWatch(given: readonly Story[], what: string): Promise<Row[]> {
  const folder = mkdtempSync(join(tmpdir(), 'battledore-watch-'))
  const stories = Array.from({ length: STORIES }, (_, at) => ({
    name: `${at}.md`,
    text: given[at % given.length]?.text ?? '',
  }))
  for (const { name, text } of stories) writeFileSync(join(folder, name), text)
  const child = spawn(process.execPath, [PROGRAM, 'check', folder, '--step', STEP, '--watch', '--format', 'line'], {
    cwd: folder,
    stdio: ['ignore', 'pipe', 'inherit'],
  })
  try {
    await untilPrinted(child, STORIES)
    const times: number[] = []
    for (let save = 0; save < SAVES; save++) {
      await new Promise((done) => setTimeout(done, PAUSE))
      const story = stories[(save * 37) % STORIES]
      if (!story) continue
      const printed = untilPrinted(child, 1)
      const start = performance.now()
      writeFileSync(join(folder, story.name), `${story.text}\nTam sat. ${'Tam ran. '.repeat(save)}\n`)
      await printed
      times.push(performance.now() - start)
    }
    const median = toMedian(times)
    const range = `${Math.min(...times).toFixed(0)}–${Math.max(...times).toFixed(0)}`
    return [
      {
        what: `from save to result, one story of ${STORIES} that are watched, ${what}`,
        figure: `${median.toFixed(0)} ms (${range})`,
        wanted: `≤ ${LIMIT} ms`,
        holds: median <= LIMIT,
      },
    ]
  } finally {
    child.kill()
    rmSync(folder, { recursive: true, force: true })
  }
}

/** Waits for a number of end lines. */
function untilPrinted({ stdout }: ChildProcess, runs: number): Promise<void> {
  return new Promise((done) => {
    let left = runs
    const look = (chunk: Buffer): void => {
      left -= chunk.toString().match(/^done: /gm)?.length ?? 0
      if (left > 0) return
      stdout?.off('data', look)
      done()
    }
    stdout?.on('data', look)
  })
}
