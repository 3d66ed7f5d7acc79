// Text that goes straight to a file or a pipe, and what happens when the reader is slow, is gone, or is a terminal.

import type { Stats } from 'node:fs'
import { expect, it } from 'vitest'
import { openOutput } from '../../src/cli/process-output.ts'

type Kind = 'file' | 'pipe' | 'socket' | 'terminal'

function createWorld(kind: Kind, given: { readonly platform?: string; readonly steps?: readonly (number | string)[] }) {
  const steps = [...(given.steps ?? [])]
  const straight: string[] = []
  const streamed: string[] = []
  const left: unknown[] = []
  let opened = 0
  const stream = {
    isTTY: kind === 'terminal',
    columns: 72,
    writableLength: 0,
    writableNeedDrain: false,
    on: () => stream,
    write: (text: string | Uint8Array) => streamed.push(Buffer.from(text).toString()) > 0,
  }
  const process = {
    platform: given.platform ?? 'linux',
    get stdout() {
      opened++
      return stream as unknown as NodeJS.WriteStream
    },
    stderr: stream as unknown as NodeJS.WriteStream,
    exit(code?: unknown): never {
      left.push(code)
      throw new Error('left')
    },
  }
  const status = { isFile: () => kind === 'file', isFIFO: () => kind === 'pipe', isSocket: () => kind === 'socket' }
  const files = {
    fstatSync: () => status as unknown as Stats,
    writeSync(_: number, bytes: Uint8Array, from = 0) {
      const step = steps.shift() ?? bytes.length
      if (typeof step === 'string') throw Object.assign(new Error(step), { code: step })
      const end = Math.min(bytes.length, from + step)
      straight.push(Buffer.from(bytes.subarray(from, end)).toString())
      return end - from
    },
  }
  const output = openOutput(process, 'stdout', files as unknown as Parameters<typeof openOutput>[2])
  return { output, straight, streamed, left, opened: () => opened }
}

it('writes straight to files, pipes and sockets, and opens no stream for it', () => {
  for (const kind of ['file', 'pipe', 'socket'] as const) {
    const { output, straight, opened } = createWorld(kind, { steps: [3] })
    output.write('one öne\n')
    output.write(Buffer.from('two\n'))
    expect(straight.join('')).toBe('one öne\ntwo\n')
    expect([output.isTTY, output.columns, output.isPending]).toEqual([false, undefined, false])
    expect(opened()).toBe(0)
  }
})

it('leaves to the stream what a full pipe does not take, in the order of writing', () => {
  const { output, straight, streamed } = createWorld('pipe', { steps: [2, 'EAGAIN'] })
  output.write('hello')
  output.write(' there')
  expect([straight.join(''), streamed.join('')]).toEqual(['he', 'llo there'])
})

it('ends the run quietly when the reader has gone, and tells any other failure', () => {
  const gone = createWorld('pipe', { steps: ['EPIPE'] })
  expect(() => gone.output.write('hello')).toThrow('left')
  expect(gone.left).toEqual([0])
  expect(() => createWorld('file', { steps: ['ENOSPC'] }).output.write('hello')).toThrow('ENOSPC')
})

it('hands all to the stream on a terminal and on Windows', () => {
  const terminal = createWorld('terminal', {})
  terminal.output.write('hello')
  expect([terminal.streamed, terminal.straight]).toEqual([['hello'], []])
  expect([terminal.output.isTTY, terminal.output.columns]).toEqual([true, 72])
  const windows = createWorld('pipe', { platform: 'win32' })
  windows.output.write('hello')
  expect([windows.streamed, windows.straight]).toEqual([['hello'], []])
})
