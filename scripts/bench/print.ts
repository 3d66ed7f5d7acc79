// What printing costs: whole processes against `node -e 0`, and the memory of the largest.

import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { ROOT } from '../root.ts'
import { pair, type Row, runProcess, toRatioRow } from './measure.ts'

const CLI = join(ROOT, 'dist', 'cli.cjs')

/** Fourteen story pages, so that the booklet has sixteen. */
const STORY = `---\nstep: pink-4\n---\n\n# Tam and the Hat\n\n${Array.from({ length: 14 }, (_, at) => `Tam had a hat. The hat is on rug ${'abcdefghijklmn'[at]}.`).join('\n\n---\n\n')}\n`

const MEMORY = 200

export async function benchPrint(): Promise<Row[]> {
  const folder = mkdtempSync(join(tmpdir(), 'battledore-bench-'))
  try {
    const story = join(folder, 'tam.md')
    writeFileSync(story, STORY)
    const toArgs = (...args: string[]): string[] => ['print', ...args, '--out', join(folder, `${args[0]}.pdf`)]
    const bare = () => runProcess(process.execPath, ['-e', '0'])
    const run = (args: readonly string[]) => () => runProcess(process.execPath, [CLI, ...args])
    const many = toArgs('cards', '--step', 'green-14', '--count', '200')
    const row = async (what: string, args: readonly string[], limit: number): Promise<Row> =>
      toRatioRow(`${what} ÷ node -e 0`, await pair(run(args), bare, 9), limit)
    return [
      await row('print: a booklet of 16 pages', toArgs('book', story), 10),
      await row('print: 24 picture cards', toArgs('cards', '--step', 'green-2', '--count', '24'), 12),
      await row('print: 200 picture cards', many, 30),
      toMemoryRow(many, folder),
    ]
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

/** The most memory that the process held at once, as the system counts it. */
function toMemoryRow(args: readonly string[], folder: string): Row {
  const hook = join(folder, 'peak.cjs')
  writeFileSync(
    hook,
    "process.on('exit', () => process.stderr.write('peak ' + process.resourceUsage().maxRSS + '\\n'))",
  )
  const { stderr } = spawnSync(process.execPath, ['--require', hook, CLI, ...args], { encoding: 'utf8' })
  const megabytes = Number(/peak (\d+)/.exec(stderr)?.[1] ?? Number.NaN) / 1024
  return {
    what: 'print: memory of 200 picture cards',
    figure: `${megabytes.toFixed(0)} MB`,
    wanted: `≤ ${MEMORY} MB`,
    holds: megabytes <= MEMORY,
  }
}
