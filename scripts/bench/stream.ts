// How fast `stream` is beside the check in the process: the same real documents, both warm, in turn.

import { spawn } from 'node:child_process'
import { createInterface } from 'node:readline'
import { rules } from '../../rules/index.ts'
import { checkStory } from '../../src/check/check-story.ts'
import { createProcessIo } from '../../src/cli/io.ts'
import { createResources } from '../../src/cli/resources.ts'
import { PROGRAM } from '../root.ts'
import type { Story } from './check.ts'
import { pair, type Row, time } from './measure.ts'

const STEP = 'green-5'
/** Checked before the clock starts, and while it runs. */
const WARM = 500
const TIMED = 1500
const LEAST = 0.85

export async function benchStream(stories: readonly Story[], what: string): Promise<Row[]> {
  const texts = Array.from({ length: WARM + TIMED }, (_, at) => stories[at % stories.length]?.text ?? '')
  const checkOne = createCheck()
  for (const text of texts.slice(0, WARM)) await checkOne(text)
  const inProcess = () =>
    time(async () => {
      for (const text of texts.slice(WARM)) await checkOne(text)
    })
  const times = { check: [] as number[], stream: [] as number[] }
  // Each tells its own time: the stream's begins when it is warm.
  await pair(
    async () => times.check.push(await inProcess()),
    async () => times.stream.push(await timeStream(texts)),
    5,
    0,
  )
  const shares = times.check
    .map((took, at) => took / (times.stream[at] ?? Number.NaN))
    .sort((one, other) => one - other)
  const share = shares[shares.length >> 1] ?? 0
  const toSpeed = (took: readonly number[]): string => (TIMED / (Math.min(...took) / 1000)).toFixed(0)
  return [
    {
      what: `speed of \`stream\` ÷ of the check in the process, ${TIMED} documents of ${what} at ${STEP}`,
      figure: `${share.toFixed(2)} (${shares[0]?.toFixed(2)}–${shares.at(-1)?.toFixed(2)}; at best ${toSpeed(times.stream)} and ${toSpeed(times.check)} documents a second)`,
      wanted: `≥ ${LEAST}`,
      holds: share >= LEAST,
    },
  ]
}

function createCheck(): (source: string) => Promise<unknown> {
  const resources = createResources(createProcessIo(process))
  const flags = { step: { value: STEP, origin: '--step' } }
  const given = {
    path: 'the text',
    storyPath: '/story.md',
    chain: { folders: [], problems: [] },
    flags,
    rules,
    resources,
  }
  return (source) => checkStory({ ...given, source })
}

/** Milliseconds from the last warm result to the last one. */
async function timeStream(texts: readonly string[]): Promise<number> {
  const child = spawn(process.execPath, [PROGRAM, 'stream', '--step', STEP], { stdio: ['pipe', 'pipe', 'inherit'] })
  child.stdin.end(texts.map((text, id) => `${JSON.stringify({ id, text })}\n`).join(''))
  let start = 0
  let count = 0
  for await (const _ of createInterface({ input: child.stdout })) if (++count === WARM) start = performance.now()
  if (count !== texts.length) throw new Error(`stream gave ${count} results for ${texts.length} documents`)
  return performance.now() - start
}
