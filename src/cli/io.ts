// The outside world as the commands see it, so that tests can stand in for it.

import * as fs from 'node:fs'

export interface Output {
  /** Text, or the bytes of a file that is printed. */
  write(text: string | Uint8Array): void
  /** Waits until the reader of the output has caught up; missing where nobody can fall behind. */
  drained?(): Promise<void>
  readonly isTTY: boolean
  /** Width in columns; undefined where it is not a terminal. */
  readonly columns: number | undefined
}

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

/** The real world. Ends the process quietly when the reader of its output has gone, as `head` does. */
export function createProcessIo(process: NodeJS.Process): Io {
  const leave = (error: NodeJS.ErrnoException): void => {
    if (error.code === 'EPIPE') process.exit(process.exitCode ?? 0)
    throw error
  }
  process.stdout.on('error', leave)
  process.stderr.on('error', leave)
  return {
    cwd: process.cwd(),
    env: process.env,
    stdin: () => process.stdin,
    // Touching `process.stdin` opens it, so it is asked only when needed.
    get stdinIsTTY() {
      return process.stdin.isTTY === true
    },
    stdout: toOutput(process.stdout),
    stderr: toOutput(process.stderr),
    fs,
    now: () => performance.now(),
    today,
  }
}

export function today(): string {
  const date = new Date()
  return [date.getFullYear(), date.getMonth() + 1, date.getDate()]
    .map((part) => String(part).padStart(2, '0'))
    .join('-')
}

function toOutput(stream: NodeJS.WriteStream): Output {
  return {
    write: (text) => void stream.write(text),
    drained: () => (stream.writableNeedDrain ? new Promise((done) => stream.once('drain', done)) : Promise.resolve()),
    isTTY: stream.isTTY === true,
    // Asked anew each time: a window can be made wider while it runs.
    get columns() {
      return stream.isTTY ? stream.columns : undefined
    },
  }
}
