// The cost of a check: against a bare parse in the process, against a bare Node as a process, and as stories grow.

import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { ParseEnglish } from 'parse-english'
import remarkParse from 'remark-parse'
import remarkRetext from 'remark-retext'
import { unified } from 'unified'
import { rules } from '../../rules/index.ts'
import { checkStory } from '../../src/check/check-story.ts'
import { createProcessIo } from '../../src/cli/io.ts'
import { createResources } from '../../src/cli/resources.ts'
import { PROGRAM } from '../root.ts'
import { pair, type Row, runProcess, time, toMedian, toRatioRow } from './measure.ts'

export interface Story {
  readonly name: string
  readonly text: string
}

const LAST_STEP = { step: { value: 'green-14', origin: '--step' } }

/** The whole check of these stories in this process, each at its own step; at the last where it names none. */
export function createChecker(): (stories: readonly Story[]) => Promise<number> {
  const resources = createResources(createProcessIo(process))
  return async (stories) => {
    let messages = 0
    for (const { name, text } of stories) {
      const result = await checkStory({
        path: name,
        source: text,
        storyPath: `/${name}`,
        chain: { folders: [], problems: [] },
        flags: /^step:/m.test(text) ? {} : LAST_STEP,
        rules,
        resources,
      })
      if ('messages' in result) messages += result.messages.length
    }
    return messages
  }
}

/** The stock parse: remark-parse, the stock bridge, the parser of retext-english. */
async function parseOnly(stories: readonly Story[]): Promise<void> {
  const processor = unified()
    .use(remarkParse)
    .use(remarkRetext, ParseEnglish as never)
  for (const { text } of stories) await processor.run(processor.parse(text), { value: text } as never)
}

export async function benchCheck(sets: Readonly<Record<string, readonly Story[]>>): Promise<Row[]> {
  const check = createChecker()
  const rows: Row[] = []
  for (const [name, set] of Object.entries(sets)) {
    const stories = repeat(set)
    rows.push(
      toRatioRow(
        `check ÷ bare parse, in the process: ${name}`,
        await pair(
          () => check(stories),
          () => parseOnly(stories),
          15,
          4,
        ),
        1.15,
      ),
    )
  }
  return rows
}

/** A short shelf several times over, so that one run of it takes longer than the clock and the compiler need. */
function repeat(stories: readonly Story[], wanted = 200_000): readonly Story[] {
  const size = stories.reduce((sum, { text }) => sum + text.length, 0)
  return Array.from({ length: Math.max(1, Math.round(wanted / size)) }, () => stories).flat()
}

export async function benchProcess(story: Story, heteronym: Story, many: readonly Story[]): Promise<Row[]> {
  const folder = mkdtempSync(join(tmpdir(), 'battledore-bench-'))
  try {
    const write = ({ name, text }: Story) => {
      writeFileSync(join(folder, name), text)
      return join(folder, name)
    }
    const one = write(story)
    const other = write(heteronym)
    for (const each of many) write({ ...each, name: `many-${each.name}` })
    const bare = () => runProcess(process.execPath, ['-e', '0'])
    const all = many.map(({ name }) => join(folder, `many-${name}`))
    return [
      toRatioRow(
        `check of one story of ${toSize(story)} without suggestions ÷ node -e 0`,
        await pair(() => runProcess(process.execPath, [PROGRAM, 'check', one, '--no-suggest']), bare, 15),
        2.5,
      ),
      toRatioRow(
        'the same with suggestions for its hard words (no limit set)',
        await pair(() => runProcess(process.execPath, [PROGRAM, 'check', one]), bare, 7),
        Infinity,
      ),
      toRatioRow(
        'the same with a heteronym that needs the tagger (no limit set)',
        await pair(() => runProcess(process.execPath, [PROGRAM, 'check', other]), bare, 7),
        Infinity,
      ),
      toRatioRow(
        `check of ${many.length} stories ÷ node -e 0`,
        await pair(() => runProcess(process.execPath, [PROGRAM, 'check', ...all, '--format', 'line']), bare, 5),
        22,
      ),
    ]
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

const toSize = ({ text }: Story): string => `${(text.length / 1024).toFixed(1)} KB`

/** Time per byte as one file grows to 1 MB: linear where the last is no dearer than the first. */
export async function benchGrowth(story: Story): Promise<Row[]> {
  const check = createChecker()
  const body = story.text.replace(/^---[\s\S]*?---\n/, '')
  const grow = (bytes: number): Story => ({
    name: 'long.md',
    text: body.repeat(Math.ceil(bytes / body.length)).slice(0, bytes),
  })
  const perByte = async (bytes: number) => {
    const long = [grow(bytes)]
    await check(long)
    const times = []
    for (let k = 0; k < 5; k++) times.push(await time(() => check(long)))
    return toMedian(times) / bytes
  }
  const small = await perByte(62_500)
  const sizes = [250_000, 1_000_000]
  const rows: Row[] = []
  for (const bytes of sizes) {
    const ratio = (await perByte(bytes)) / small
    rows.push({
      what: `time per byte at ${bytes / 1000} KB ÷ at 62.5 KB`,
      figure: `${ratio.toFixed(2)} ×`,
      wanted: '≤ 1.5 × (linear)',
      holds: ratio <= 1.5,
    })
  }
  return rows
}
