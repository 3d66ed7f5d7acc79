// What a short run costs on each supported Node, and how much of it the kept compiled code saves there.

import { cpSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { findNode, NODE_VERSIONS } from '../nodes.ts'
import { PROGRAM, ROOT } from '../root.ts'
import type { Story } from './check.ts'
import { pair, type Row, runProcess, toRatioRow } from './measure.ts'

const RUNS = 21
/** How many times an empty run a check may take, and what kept compiled code must save: ours, for Node 20, must earn its upkeep. */
const LIMITS: Readonly<Record<number, { readonly ratio: number; readonly saved: number }>> = {
  20: { ratio: 2.5, saved: 0.2 },
  22: { ratio: 4.5, saved: 0 },
  24: { ratio: 4.5, saved: 0 },
}

export async function benchStart(story: Story): Promise<Row[]> {
  const folder = mkdtempSync(join(tmpdir(), 'battledore-bench-'))
  try {
    const path = join(folder, story.name)
    writeFileSync(path, story.text)
    const bare = join(folder, 'bare')
    cpSync(join(ROOT, 'dist'), bare, {
      recursive: true,
      filter: (file) => !/types$|chunks$|program\.cache$/.test(file),
    })
    const rows: Row[] = []
    for (const version of NODE_VERSIONS) rows.push(...(await benchNode(version, path, join(bare, 'cli.cjs'))))
    return rows
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

async function benchNode(version: number, story: string, bare: string): Promise<Row[]> {
  const node = findNode(version)
  const check = (program: string, env?: NodeJS.ProcessEnv) => (): void =>
    runProcess(node, [program, 'check', story, '--no-suggest'], { env })
  const empty = await pair(check(PROGRAM), () => runProcess(node, ['-e', '0']), RUNS)
  const kept = await pair(check(PROGRAM), check(bare, { ...process.env, NODE_DISABLE_COMPILE_CACHE: '1' }), RUNS)
  const saved = 1 - kept.ratio
  const limits = LIMITS[version] ?? { ratio: Infinity, saved: 0 }
  return [
    toRatioRow(`check of one story without suggestions ÷ node -e 0, Node ${version}`, empty, limits.ratio),
    {
      what: `share of that run that kept compiled code saves, Node ${version}`,
      figure: `${(saved * 100).toFixed(0)} %`,
      wanted: `≥ ${limits.saved * 100} %`,
      holds: saved >= limits.saved,
    },
  ]
}
