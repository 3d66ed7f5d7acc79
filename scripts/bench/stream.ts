// How fast `stream` is beside the check in the process: the same real documents, both warm, in turn, by the processor's time.
//
// The check hands over its result as an object. `stream` does the same check, and besides it reads a line of JSON and writes one:
// what that costs is what the figure tells. V8 is told the same things in both. Both say the same of every document; a run where they do not fails.

import { spawn } from 'node:child_process'
import { once } from 'node:events'
import * as nodeModule from 'node:module'
import { join } from 'node:path'
import type { Readable } from 'node:stream'
import { pathToFileURL } from 'node:url'
import type { FreshStory } from '../../src/check/result.ts'
import { tuneV8 } from '../../src/cli/compiled-code.ts'
import { createProcessIo } from '../../src/cli/io.ts'
import { createResources } from '../../src/cli/resources.ts'
import { toFileFields } from '../../src/report/json.ts'
import { PROGRAM, ROOT } from '../root.ts'
import type { Story } from './check.ts'
import { type Row, toMedian } from './measure.ts'

const STEP = 'green-5'
/** Checked before the clock starts. */
const WARM = 600
const IN_TURN = 300
const TURNS = 12
const LEAST = 0.85
const HOOK = join(ROOT, 'scripts', 'bench', 'report-cpu.cjs')

export async function benchStream(stories: readonly Story[], what: string): Promise<Row[]> {
  const toTexts = (count: number) => Array.from({ length: count }, (_, at) => stories[at % stories.length]?.text ?? '')
  if (!('enableCompileCache' in nodeModule)) tuneV8()
  const check = await createCheck()
  const stream = openStream()
  const bytes = await stream.check(toTexts(WARM))
  const told = bytes.toString().split('\n')
  for (const [id, text] of toTexts(WARM).entries()) {
    if (JSON.stringify({ id, ...toFileFields(await check(text)) }) !== told[id])
      throw new Error(`stream and the check say different things of document ${id}`)
  }
  const texts = toTexts(IN_TURN)
  const turns: { readonly check: number; readonly stream: number }[] = []
  for (let turn = 0; turn < TURNS; turn++)
    turns.push({ check: await timeCheck(texts, check), stream: await timeStream(texts, stream) })
  await stream.end()
  const shares = turns.map((turn) => turn.check / turn.stream)
  const share = toMedian(shares)
  const toEach = (way: 'check' | 'stream'): string => (toMedian(turns.map((turn) => turn[way])) / IN_TURN).toFixed(2)
  return [
    {
      what: `speed of \`stream\`, which reads and writes lines of JSON, ÷ of the check in the process, which gives objects; documents of ${what} at ${STEP}, ${TURNS} turns of ${IN_TURN}`,
      figure: `${share.toFixed(2)} (${Math.min(...shares).toFixed(2)}–${Math.max(...shares).toFixed(2)}; ${toEach('stream')} ms and ${toEach('check')} ms of the processor for a document, ${(bytes.length / WARM / 1000).toFixed(0)} KB of JSON from each)`,
      wanted: `≥ ${LEAST}`,
      holds: share >= LEAST,
    },
  ]
}

/** The check of the compiled library: the sources, as tsx runs them, make each small function slower. */
async function createCheck(): Promise<(source: string) => Promise<FreshStory>> {
  const library = pathToFileURL(join(ROOT, 'dist', 'index.js')).href
  const { checkStory, rules } = (await import(library)) as typeof import('../../src/index.ts')
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
  return async (source) => {
    const result = await checkStory({ ...given, source })
    if ('problems' in result) throw new Error(result.problems[0]?.message)
    return result as FreshStory
  }
}

/** Milliseconds of the processor. */
async function timeCheck(texts: readonly string[], check: (source: string) => Promise<FreshStory>): Promise<number> {
  const start = process.cpuUsage()
  for (const text of texts) await check(text)
  const { user, system } = process.cpuUsage(start)
  return (user + system) / 1000
}

async function timeStream(texts: readonly string[], stream: Stream): Promise<number> {
  const start = await stream.askCpu()
  await stream.check(texts)
  return (await stream.askCpu()) - start
}

interface Stream {
  /** Lines of JSON. */
  check(texts: readonly string[]): Promise<Buffer>
  /** Milliseconds of the processor so far. */
  askCpu(): Promise<number>
  end(): Promise<unknown>
}

function openStream(): Stream {
  const args = ['--require', HOOK, PROGRAM, 'stream', '--step', STEP]
  const child = spawn(process.execPath, args, { stdio: ['pipe', 'pipe', 'inherit', 'ipc'] })
  const { stdin, stdout } = child
  if (!stdin || !stdout) throw new Error('a stream without pipes')
  return {
    check(texts) {
      const lines = takeLines(stdout, texts.length)
      stdin.write(texts.map((text, id) => `${JSON.stringify({ id, text })}\n`).join(''))
      return lines
    },
    async askCpu() {
      child.send('how much?')
      const [used] = (await once(child, 'message')) as [number]
      return used
    },
    end() {
      stdin.end()
      return once(child, 'close')
    },
  }
}

/** The bytes of so many lines. They are only counted as they come: whoever reads may not take the processor from who writes. */
function takeLines(output: Readable, count: number): Promise<Buffer> {
  return new Promise((done) => {
    const chunks: Buffer[] = []
    let left = count
    const take = (chunk: Buffer): void => {
      chunks.push(chunk)
      for (let at = chunk.indexOf('\n'); at >= 0; at = chunk.indexOf('\n', at + 1)) left--
      if (left > 0) return
      output.off('data', take)
      done(Buffer.concat(chunks))
    }
    output.on('data', take)
  })
}
