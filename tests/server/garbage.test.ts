// A client that sends garbage, and a text that is far too long: the real process goes on, and says one clear thing.

import { type ChildProcess, spawn } from 'node:child_process'
import { afterEach, describe, expect, it } from 'vitest'
import { main } from '../../src/cli/main.ts'
import { createFrameCheck } from '../../src/server/frames.ts'
import { createWorld } from '../cli/io.ts'
import { PROGRAM } from '../cli/program.ts'
import { frame, startClient } from './client.ts'

const running: ChildProcess[] = []
afterEach(() => running.splice(0).forEach((child) => void child.kill()))

interface Server {
  send(bytes: string | Uint8Array): void
  /** Waits until the output holds this. */
  until(part: string): Promise<void>
  end(): Promise<number | null>
  readonly exited: Promise<number | null>
  errors(): string
}

function startServer(): Server {
  const child = spawn(process.execPath, [...PROGRAM, 'serve', '--stdio', '--clientProcessId=1'], {
    stdio: ['pipe', 'pipe', 'pipe'],
  })
  running.push(child)
  let [out, errors] = ['', '']
  child.stdout.on('data', (chunk: Buffer) => {
    out += chunk.toString()
  })
  child.stderr.on('data', (chunk: Buffer) => {
    errors += chunk.toString()
  })
  const exited = new Promise<number | null>((done) => child.once('exit', done))
  return {
    send: (bytes) => void child.stdin.write(bytes),
    async until(part) {
      // The test's own time runs out where nothing comes.
      while (!out.includes(part)) {
        if (child.exitCode !== null) throw new Error(`no ${part} in ${out}\n${errors}`)
        await new Promise((done) => setTimeout(done, 20))
      }
    },
    end: async () => {
      child.stdin.end()
      return exited
    },
    exited,
    errors: () => errors,
  }
}

const initialize = frame({
  jsonrpc: '2.0',
  id: 1,
  method: 'initialize',
  params: { processId: null, rootUri: null, capabilities: {} },
})
const open = (text: unknown) =>
  frame({
    jsonrpc: '2.0',
    method: 'textDocument/didOpen',
    params: { textDocument: { uri: 'file:///tmp/tam.md', languageId: 'markdown', version: 1, text } },
  })
const STORY = '---\nstep: pink-4\n---\nTam sat at night.\n'

describe.each([
  ['a message that is no JSON', 'Content-Length: 9\r\n\r\n{"jsonrpc'],
  ['JSON that is no message', frame([1, 'two', null])],
  ['null', frame(null)],
  ['a request for something that does not exist', frame({ jsonrpc: '2.0', id: 7, method: 'no/such', params: [] })],
  ['a request without parameters', frame({ jsonrpc: '2.0', id: 8, method: 'textDocument/hover' })],
  [
    'a change of a text that was never opened',
    frame({
      jsonrpc: '2.0',
      method: 'textDocument/didChange',
      params: { textDocument: { uri: 'file:///x.md', version: 9 }, contentChanges: [{ text: 'x' }] },
    }),
  ],
  [
    'a text that is no text',
    frame({
      jsonrpc: '2.0',
      method: 'textDocument/didOpen',
      params: { textDocument: { uri: 3, languageId: 'markdown', version: 1, text: { a: 1 } } },
    }),
  ],
  [
    'places outside the text',
    frame({
      jsonrpc: '2.0',
      id: 9,
      method: 'textDocument/codeAction',
      params: {
        textDocument: { uri: 'file:///tmp/tam.md' },
        range: { start: { line: -5, character: 'x' }, end: null },
        context: {},
      },
    }),
  ],
  [
    'an address that is none',
    frame({
      jsonrpc: '2.0',
      method: 'textDocument/didOpen',
      params: { textDocument: { uri: 'file://%ZZ/%00', languageId: 'markdown', version: 1, text: 'Tam sat.' } },
    }),
  ],
])('%s', (_, garbage) => {
  it('does not stop the server from checking the next story', async () => {
    const server = startServer()
    server.send(initialize)
    await server.until('"serverInfo"')
    server.send(garbage)
    server.send(open(STORY))
    server.send(garbage)
    await server.until('`night` has `igh`')
    expect(await server.end()).toBe(0)
    expect(server.errors()).not.toMatch(/\n\s+at /)
  })
})

describe('bytes that are no protocol at all', () => {
  it.each([
    ['a line of text', Buffer.from('hello, server\n\n\r\n\r\n')],
    ['a line of text without an end', Buffer.from('hello')],
    ['a length that is none', Buffer.from('Content-Length: many\r\n\r\n{}')],
    ['no length', Buffer.from('Content-Type: text\r\n\r\n{}')],
    ['a length without end', Buffer.from('Content-Length: 99999999999999\r\n\r\n{}')],
    ['a header without end', Buffer.from(`A: ${'a'.repeat(5000)}`)],
    ['zeros and high bytes', Buffer.from(Array.from({ length: 5000 }, (_, at) => (at * 7919) % 256))],
  ])('%s: the server says so in one line and ends, though the input stays open', async (_, bytes) => {
    const server = startServer()
    server.send(initialize)
    await server.until('"serverInfo"')
    server.send(bytes)
    expect(await server.exited).toBe(1)
    expect(server.errors()).toMatch(/^battledore: What came in is no message for a language server.*\n$/)
  })

  it('are shown by their start', () => {
    expect(createFrameCheck()(new TextEncoder().encode('hello, server\n'))).toBe('hello, server\n')
  })

  it('are told from messages that come in pieces, with other headers and in any case', () => {
    const message = `content-length: 9\r\nContent-Type: application/vscode-jsonrpc; charset=utf-8\r\n\r\n{"a": 1}\n`
    const bytes = new TextEncoder().encode(message + message)
    for (let size = 1; size < bytes.length; size++) {
      const check = createFrameCheck()
      for (let at = 0; at < bytes.length; at += size) expect(check(bytes.subarray(at, at + size))).toBeUndefined()
    }
  })
})

it('answers a message that is no JSON as the protocol asks, and says so in one line', async () => {
  const server = startServer()
  server.send(initialize)
  await server.until('"serverInfo"')
  server.send('Content-Length: 9\r\n\r\n{"jsonrpc')
  await server.until('-32700')
  expect(await server.end()).toBe(0)
  expect(server.errors()).toMatch(/^battledore: A message could not be read and was passed over: .*\n$/)
})

it('tells a person at a terminal what it is for, instead of waiting in silence', async () => {
  const { io, err, remove } = createWorld({}, { stdinIsTTY: true })
  expect(await main(['serve'], io)).toBe(2)
  expect(err()).toMatch(/^battledore: `serve` is for a code editor to start.*\n$/)
  remove()
})

describe('the end', () => {
  it.each([
    ['after a shutdown', frame({ jsonrpc: '2.0', id: 2, method: 'shutdown' }), 0],
    ['without one', '', 1],
  ])('comes at once when the editor says exit %s, though the input stays open', async (_, before, code) => {
    const server = startServer()
    server.send(initialize)
    await server.until('"serverInfo"')
    server.send(before + frame({ jsonrpc: '2.0', method: 'exit' }))
    expect(await server.exited).toBe(code)
  })
})

describe('a document of 5 MB', () => {
  it('gets one clear diagnostic and is not read, so it keeps no other story waiting', async () => {
    const client = await startClient()
    const found = await client.open('long.md', '---\nstep: pink-4\n---\n' + 'Tam sat at night. '.repeat(300_000))
    expect(found).toHaveLength(1)
    expect(found[0]?.message).toMatch(/^This text has 5,400,\d{3} characters, too many to check while you type/)
    expect(await client.open('tam.md', STORY)).toHaveLength(1)
    expect(await client.hover('long.md', { line: 3, character: 1 })).toBeNull()
    expect(await client.complete('long.md', { line: 3, character: 2 })).toEqual([])
    await client.close()
  })
})
