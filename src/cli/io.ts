// The outside world as the commands see it, so that tests can stand in for it.

import * as fs from 'node:fs'
import { type Output, openOutput } from './process-output.ts'

export type { Output }

type FileSystem = Pick<
  typeof fs,
  | 'chmodSync'
  | 'closeSync'
  | 'existsSync'
  | 'fsyncSync'
  | 'lstatSync'
  | 'mkdirSync'
  | 'openSync'
  | 'readdirSync'
  | 'readFileSync'
  | 'readlinkSync'
  | 'readSync'
  | 'realpathSync'
  | 'renameSync'
  | 'rmSync'
  | 'statSync'
  | 'writeFileSync'
  | 'writeSync'
>

export interface Io {
  /** Absolute. */
  readonly cwd: string
  readonly env: Readonly<Record<string, string | undefined>>
  stdin(): AsyncIterable<Uint8Array>
  readonly stdinIsTTY: boolean
  readonly stdout: Output
  readonly stderr: Output
  readonly fs: FileSystem
  /** Milliseconds; only differences count. */
  now(): number
  /** The day where the user is, as `2026-09-14`. */
  today(): string
}

/** The real world. */
export function createProcessIo(process: NodeJS.Process): Io {
  return {
    cwd: process.cwd(),
    env: process.env,
    stdin: () => process.stdin,
    // Touching `process.stdin` opens it, so it is asked only when needed.
    get stdinIsTTY() {
      return process.stdin.isTTY === true
    },
    stdout: openOutput(process, 'stdout', fs),
    stderr: openOutput(process, 'stderr', fs),
    fs,
    now,
    today,
  }
}

/** `performance` would load a module of Node's for it. */
export function now(): number {
  const [seconds, nanoseconds] = process.hrtime()
  return seconds * 1000 + nanoseconds / 1e6
}

export function today(): string {
  const date = new Date()
  return [date.getFullYear(), date.getMonth() + 1, date.getDate()]
    .map((part) => String(part).padStart(2, '0'))
    .join('-')
}
