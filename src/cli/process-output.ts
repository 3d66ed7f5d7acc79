// Where the program's text goes: straight into a file or a pipe, and through Node's stream where it must.
//
// Node's stream for a pipe loads its network modules first, a twentieth of a short run. On Linux and macOS it then writes
// to files and pipes at once, as is done here. A terminal keeps its stream, and so does Windows, where pipes do not wait.

import type * as fs from 'node:fs'

export interface Output {
  /** Text, or the bytes of a file that is printed. */
  write(text: string | Uint8Array): void
  /** Waits until the reader of the output has caught up; missing where nobody can fall behind. */
  drained?(): Promise<void>
  /** Whether something is still on its way to a slow reader. */
  readonly isPending?: boolean
  readonly isTTY: boolean
  /** Width in columns; undefined where it is not a terminal. */
  readonly columns: number | undefined
}

type Files = Pick<typeof fs, 'fstatSync' | 'writeSync'>

/** The parts of a process that writing needs. */
interface Writer {
  readonly platform: string
  readonly stdout: NodeJS.WriteStream
  readonly stderr: NodeJS.WriteStream
  readonly exitCode?: number | string | null | undefined
  exit(code?: number | string | null): never
}

const NUMBERS = { stdout: 1, stderr: 2 } as const

/** Ends the process quietly when the reader has gone, as `head` does. */
export function openOutput(process: Writer, name: keyof typeof NUMBERS, files: Files): Output {
  const number = NUMBERS[name]
  const leave = (error: NodeJS.ErrnoException): void => {
    if (error.code === 'EPIPE') process.exit(process.exitCode ?? 0)
    throw error
  }
  let stream: NodeJS.WriteStream | undefined
  const openStream = (): NodeJS.WriteStream => (stream ??= process[name].on('error', leave))
  const isStraight = canWriteStraight(process, number, files)
  return {
    write(text) {
      const rest = isStraight && !stream ? writeStraight(text, number, files, leave) : text
      if (rest !== undefined) openStream().write(rest)
    },
    drained: () => {
      const slow = stream?.writableNeedDrain ? stream : undefined
      return slow ? new Promise((done) => slow.once('drain', done)) : Promise.resolve()
    },
    get isPending() {
      return (stream?.writableLength ?? 0) > 0
    },
    get isTTY() {
      return !isStraight && openStream().isTTY === true
    },
    // Asked anew each time: a window can be made wider while it runs.
    get columns() {
      return !isStraight && openStream().isTTY ? openStream().columns : undefined
    },
  }
}

function canWriteStraight({ platform }: Writer, number: number, { fstatSync }: Files): boolean {
  if (platform === 'win32') return false
  try {
    const status = fstatSync(number)
    return status.isFile() || status.isFIFO() || status.isSocket()
  } catch {
    return false
  }
}

/** What is left for the stream: a pipe that another program has told not to wait takes no more when it is full. */
function writeStraight(
  text: string | Uint8Array,
  number: number,
  { writeSync }: Files,
  leave: (error: NodeJS.ErrnoException) => void,
): Uint8Array | undefined {
  const bytes = typeof text === 'string' ? Buffer.from(text) : text
  let done = 0
  try {
    while (done < bytes.length) done += writeSync(number, bytes, done)
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EAGAIN') return bytes.subarray(done)
    leave(error as NodeJS.ErrnoException)
  }
  return undefined
}
