// Times things against one another: in turn, A B A B, so that a machine that slows down slows both; medians and ratios.

import { spawnSync } from 'node:child_process'

export interface Pairing {
  readonly a: number
  readonly b: number
  /** Median of the ratios a ÷ b, pair by pair. */
  readonly ratio: number
  readonly low: number
  readonly high: number
}

export const toMedian = (values: readonly number[]): number => {
  const sorted = [...values].sort((x, y) => x - y)
  const middle = sorted.length >> 1
  return sorted.length % 2 === 1 ? (sorted[middle] ?? 0) : ((sorted[middle - 1] ?? 0) + (sorted[middle] ?? 0)) / 2
}

/** Milliseconds of each, in turn, after a warm-up. */
export async function pair(a: () => unknown, b: () => unknown, runs: number, warmUps = 2): Promise<Pairing> {
  for (let k = 0; k < warmUps; k++) {
    await a()
    await b()
  }
  const times: [number, number][] = []
  for (let k = 0; k < runs; k++) times.push([await time(a), await time(b)])
  const ratios = times.map(([x, y]) => x / y)
  return {
    a: toMedian(times.map(([x]) => x)),
    b: toMedian(times.map(([, y]) => y)),
    ratio: toMedian(ratios),
    low: Math.min(...ratios),
    high: Math.max(...ratios),
  }
}

export async function time(work: () => unknown): Promise<number> {
  const start = performance.now()
  await work()
  return performance.now() - start
}

/** Runs a whole process and throws away what it prints. Throws where it cannot be started or fails (exit 2 and above). */
export function runProcess(
  command: string,
  args: readonly string[],
  given: { readonly input?: string; readonly env?: NodeJS.ProcessEnv | undefined } = {},
): void {
  const { status, error, stderr } = spawnSync(command, [...args], { ...given, maxBuffer: 1 << 28 })
  if (error) throw error
  if (status === null || status > 1) throw new Error(`${command} ${args.join(' ')}: exit ${status}\n${stderr}`)
}

export interface Row {
  readonly what: string
  readonly figure: string
  readonly wanted: string
  readonly holds: boolean
}

export const toRatioRow = (what: string, { a, b, ratio, low, high }: Pairing, limit: number): Row => ({
  what,
  figure: `${ratio.toFixed(2)} × (${low.toFixed(2)}–${high.toFixed(2)}; ${a.toFixed(1)} ms against ${b.toFixed(1)} ms)`,
  wanted: `≤ ${limit} ×`,
  holds: ratio <= limit,
})
