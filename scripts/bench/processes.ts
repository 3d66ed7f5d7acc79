// Times whole processes against one another: by the clock, and by the processor's time that all their threads took.

import { spawnSync } from 'node:child_process'
import { join } from 'node:path'
import { ROOT } from '../root.ts'
import { type Row, toMedian } from './measure.ts'

interface Cost {
  /** Milliseconds by the clock. */
  readonly wall: number
  /** Milliseconds of user and system time. */
  readonly cpu: number
}

const HOOK = join(ROOT, 'scripts', 'bench', 'report-cpu.cjs')

/** Runs a JavaScript program and throws away what it prints. Throws where it cannot be started or fails (exit 2 and above). */
function runCosted(args: readonly string[], cwd: string): Cost {
  const start = performance.now()
  const { status, error, output, stderr } = spawnSync(process.execPath, ['--require', HOOK, ...args], {
    cwd,
    maxBuffer: 1 << 30,
    stdio: ['ignore', 'pipe', 'pipe', 'pipe'],
  })
  const wall = performance.now() - start
  if (error) throw error
  if (status === null || status > 1) throw new Error(`${args.join(' ')}: exit ${status}\n${stderr}`)
  return { wall, cpu: Number(output[3]?.toString()) }
}

/** An empty run of Node, which all are held against. */
const NOTHING = ['-e', '0']

export interface Contestant {
  readonly what: string
  readonly args: readonly string[]
  /** How many times an empty run it may take by the clock; none is set where it is missing. */
  readonly limit?: number
  /** What it does beyond another contestant, by that one's name, and the most that this may be of its own time of the processor. */
  readonly beyond?: { readonly what: string; readonly other: string; readonly limit: number }
}

/** All in turn after a warm-up, `runs` times; each against the empty run of its own turn, and what one does beyond another. */
export function contest(contestants: readonly Contestant[], runs: number, cwd: string): Row[] {
  const all = [{ what: '', args: NOTHING }, ...contestants]
  for (const { args } of all) runCosted(args, cwd)
  const turns = Array.from({ length: runs }, () => all.map(({ args }) => runCosted(args, cwd)))
  const ratio = (at: number, cost: keyof Cost): number =>
    toMedian(turns.map((turn) => (turn[at]?.[cost] ?? 0) / (turn[0]?.[cost] ?? 1)))
  const toShare = ({ beyond }: Contestant, index: number): Row[] => {
    if (beyond === undefined) return []
    const other = 1 + contestants.findIndex(({ what }) => what === beyond.other)
    const share = toMedian(turns.map((turn) => 1 - (turn[other]?.cpu ?? 0) / (turn[index + 1]?.cpu ?? 1)))
    return [
      {
        what: beyond.what,
        figure: `${(share * 100).toFixed(1)} % of the processor's time`,
        wanted: `≤ ${beyond.limit * 100} %`,
        holds: share <= beyond.limit,
      },
    ]
  }
  const shares = contestants.flatMap(toShare)
  const rows = contestants.map(({ what, limit = Number.POSITIVE_INFINITY }, index): Row => {
    const at = index + 1
    const wall = ratio(at, 'wall')
    const cpu = toMedian(turns.map((turn) => turn[at]?.cpu ?? 0))
    return {
      what: `${what} ÷ node -e 0`,
      figure: `${wall.toFixed(1)} × by the clock, ${ratio(at, 'cpu').toFixed(1)} × of the processor (${cpu.toFixed(0)} ms user and system)`,
      wanted: limit === Number.POSITIVE_INFINITY ? 'no limit set' : `≤ ${limit} × by the clock`,
      holds: wall <= limit,
    }
  })
  return [...rows, ...shares]
}
