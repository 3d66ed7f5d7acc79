// An editor with one story open, as far as a benchmark needs one: it types a letter and waits for the diagnostics.

import { spawn } from 'node:child_process'

interface Editor {
  /** Ends when the diagnostics of this version have come. */
  type(letter: string): Promise<void>
  close(): void
}

const URI = 'file:///book.md'

export async function openInEditor(program: string, text: string): Promise<Editor> {
  const server = spawn(process.execPath, [program, 'serve', '--stdio'], { stdio: ['pipe', 'pipe', 'inherit'] })
  const send = (message: object): void => {
    const body = JSON.stringify({ jsonrpc: '2.0', ...message })
    server.stdin.write(`Content-Length: ${Buffer.byteLength(body)}\r\n\r\n${body}`)
  }
  const waiting = new Map<string, () => void>()
  const until = (name: string): Promise<void> => new Promise((done) => waiting.set(name, done))
  readMessages(server.stdout, ({ id, method, params }) => {
    const name = method === undefined ? `answer ${id}` : `${method} ${params?.version}`
    waiting.get(name)?.()
    waiting.delete(name)
  })
  const ready = until('answer 1')
  send({ id: 1, method: 'initialize', params: { processId: null, rootUri: null, capabilities: {} } })
  await ready
  send({ method: 'initialized', params: {} })
  const opened = until('textDocument/publishDiagnostics 1')
  send({
    method: 'textDocument/didOpen',
    params: { textDocument: { uri: URI, languageId: 'markdown', version: 1, text } },
  })
  await opened
  const line = text.slice(0, text.indexOf(' ', text.length / 2)).split('\n').length - 1
  let version = 1
  return {
    type(letter) {
      version++
      const place = { line, character: version - 2 }
      const told = until(`textDocument/publishDiagnostics ${version}`)
      send({
        method: 'textDocument/didChange',
        params: {
          textDocument: { uri: URI, version },
          contentChanges: [{ range: { start: place, end: place }, text: letter }],
        },
      })
      return told
    },
    close: () => server.kill(),
  }
}

interface Heard {
  readonly id?: number
  readonly method?: string
  readonly params?: { readonly version?: number }
}

function readMessages(output: NodeJS.ReadableStream, hear: (message: Heard) => void): void {
  let bytes = Buffer.alloc(0)
  output.on('data', (chunk: Buffer) => {
    bytes = Buffer.concat([bytes, chunk])
    for (;;) {
      const start = bytes.indexOf('\r\n\r\n') + 4
      const length = Number(/Content-Length: (\d+)/i.exec(bytes.subarray(0, start).toString())?.[1])
      if (start < 4 || bytes.length < start + length) return
      hear(JSON.parse(bytes.subarray(start, start + length).toString()))
      bytes = bytes.subarray(start + length)
    }
  })
}
