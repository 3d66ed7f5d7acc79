// Text that must wait for what stands before it: some of it held, the rest in a file that nobody else sees.

import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Io } from '../io.ts'

export interface Scratch {
  add(text: string): void
  /** All of it in order, once. */
  take(): Iterable<string | Uint8Array>
}

/** Characters that are held: the reports of some hundred stories. Most runs never make a file. */
const HELD = 1 << 23

/** Bytes that are read back at a time. */
const PIECE = 1 << 20

/**
 * The file has lost its name as soon as it is open, so that a run that is cut off leaves nothing behind. Where there can be none,
 * or no room is left in it, all that comes is held.
 */
export function createScratch({ fs }: Pick<Io, 'fs'>, most: number = HELD): Scratch {
  const held: string[] = []
  let size = 0
  let file: number | undefined
  let isFull = false
  let end = 0
  const spill = (): void => {
    try {
      file ??= openUnnamed(fs)
      const bytes = Buffer.from(held.join(''))
      for (let done = 0; done < bytes.length; ) done += fs.writeSync(file, bytes, done, bytes.length - done, end + done)
      end += bytes.length
      held.length = 0
      size = 0
    } catch {
      isFull = true
    }
  }
  return {
    add(text) {
      held.push(text)
      size += text.length
      if (size > most && !isFull) spill()
    },
    *take() {
      if (file !== undefined) yield* readBack(file, end, fs)
      yield held.join('')
    },
  }
}

function openUnnamed(fs: Io['fs']): number {
  const path = join(tmpdir(), `battledore-${crypto.randomUUID()}.tmp`)
  const file = fs.openSync(path, 'wx+', 0o600)
  fs.rmSync(path, { force: true })
  return file
}

function* readBack(file: number, end: number, fs: Io['fs']): Generator<Uint8Array> {
  try {
    for (let at = 0; at < end; ) {
      const bytes = new Uint8Array(Math.min(PIECE, end - at))
      const count = fs.readSync(file, bytes, 0, bytes.length, at)
      if (count === 0) throw new Error('a file for what must wait lost some of it')
      yield bytes.subarray(0, count)
      at += count
    }
  } finally {
    fs.closeSync(file)
  }
}
