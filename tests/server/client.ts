// A tiny client of the language server, in the test's own process: frames messages by hand, so that the server is not
// tested against its own library.

import { pathToFileURL } from 'node:url'
import type {
  CodeAction,
  CompletionItem,
  CompletionList,
  Diagnostic,
  Hover,
  Position,
  Range,
} from 'vscode-languageserver-types'
import { serve } from '../../src/cli/serve/run.ts'
import { createWorld, type TestWorld } from '../cli/io.ts'

interface Answer {
  readonly id?: number | string
  readonly method?: string
  readonly params?: { readonly uri?: string; readonly diagnostics?: readonly Diagnostic[]; readonly version?: number }
  readonly result?: unknown
  readonly error?: { readonly code: number; readonly message: string }
}

export interface Client {
  readonly world: TestWorld
  /** All that the server has said. */
  readonly heard: readonly Answer[]
  send(bytes: string | Uint8Array): void
  notify(method: string, params: unknown): void
  ask(method: string, params: unknown): Promise<unknown>
  uri(path: string): string
  open(path: string, text: string): Promise<readonly Diagnostic[]>
  /** The next diagnostics of a file after what was heard so far. */
  next(path: string): Promise<readonly Diagnostic[]>
  change(path: string, version: number, text: string): void
  hover(path: string, position: Position): Promise<Hover | null>
  actions(path: string, range: Range): Promise<readonly CodeAction[]>
  complete(path: string, position: Position): Promise<readonly CompletionItem[]>
  close(): Promise<void>
}

export const frame = (message: unknown): string => {
  const text = JSON.stringify(message)
  return `Content-Length: ${Buffer.byteLength(text)}\r\n\r\n${text}`
}

/** Starts a server in a folder of its own with these files. */
export async function startClient(
  files: Readonly<Record<string, string>> = {},
  capabilities: object = {},
): Promise<Client> {
  const input = createPipe()
  const world = createWorld(files)
  const heard: Answer[] = []
  const waiting = new Set<() => void>()
  const read = createReader((answer) => {
    heard.push(answer)
    for (const look of [...waiting]) look()
  })
  const io = { ...world.io, stdin: input.read, stdout: { ...world.io.stdout, write: read } }
  const ended = serve(io)
  const send = input.write
  const notify = (method: string, params: unknown): void => send(frame({ jsonrpc: '2.0', method, params }))
  const hear = (test: (answer: Answer, at: number) => boolean): Promise<Answer> =>
    new Promise((done, fail) => {
      const timer = setTimeout(
        () => fail(new Error(`the server has not said it in time; it said ${JSON.stringify(heard).slice(0, 2000)}`)),
        20_000,
      )
      const look = (): void => {
        const found = heard.find(test)
        if (!found) return
        clearTimeout(timer)
        waiting.delete(look)
        done(found)
      }
      waiting.add(look)
      look()
    })
  let last = 0
  const ask = async (method: string, params: unknown): Promise<unknown> => {
    const id = ++last
    const answer = hear((one) => one.id === id && one.method === undefined)
    send(frame({ jsonrpc: '2.0', id, method, params }))
    const { result, error } = await answer
    if (error) throw new Error(error.message)
    return result
  }
  const uri = (path: string): string => pathToFileURL(`${world.cwd}/${path}`).href
  const next = async (path: string): Promise<readonly Diagnostic[]> => {
    const from = heard.length
    const answer = await hear(
      (one, at) => at >= from && one.method === 'textDocument/publishDiagnostics' && one.params?.uri === uri(path),
    )
    return answer.params?.diagnostics ?? []
  }
  await ask('initialize', { processId: null, rootUri: uri(''), capabilities })
  notify('initialized', {})
  return {
    world,
    heard,
    send,
    notify,
    ask,
    uri,
    next,
    open(path, text) {
      const said = next(path)
      notify('textDocument/didOpen', { textDocument: { uri: uri(path), languageId: 'markdown', version: 1, text } })
      return said
    },
    change: (path, version, text) =>
      notify('textDocument/didChange', { textDocument: { uri: uri(path), version }, contentChanges: [{ text }] }),
    hover: (path, position) =>
      ask('textDocument/hover', { textDocument: { uri: uri(path) }, position }) as Promise<Hover | null>,
    actions: (path, range) =>
      ask('textDocument/codeAction', {
        textDocument: { uri: uri(path) },
        range,
        context: { diagnostics: [] },
      }) as Promise<CodeAction[]>,
    async complete(path, position) {
      const found = (await ask('textDocument/completion', { textDocument: { uri: uri(path) }, position })) as
        | CompletionList
        | CompletionItem[]
        | null
      return found === null ? [] : Array.isArray(found) ? found : found.items
    },
    async close() {
      input.end()
      await ended
      world.remove()
    },
  }
}

/** Standard input that the test writes to. */
function createPipe() {
  const chunks: Uint8Array[] = []
  let isEnded = false
  let wake: () => void = () => undefined
  return {
    write(bytes: string | Uint8Array): void {
      chunks.push(typeof bytes === 'string' ? new TextEncoder().encode(bytes) : bytes)
      wake()
    },
    end(): void {
      isEnded = true
      wake()
    },
    async *read(): AsyncGenerator<Uint8Array> {
      for (;;) {
        for (let chunk = chunks.shift(); chunk; chunk = chunks.shift()) yield chunk
        if (isEnded) return
        await new Promise<void>((done) => {
          wake = done
        })
      }
    },
  }
}

function createReader(tell: (answer: Answer) => void): (text: string) => void {
  let buffer = Buffer.alloc(0)
  return (text) => {
    buffer = Buffer.concat([buffer, Buffer.from(text)])
    for (;;) {
      const head = /^(?:.*\r\n)*?Content-Length: (\d+)\r\n(?:.+\r\n)*\r\n/.exec(buffer.toString('latin1'))
      if (!head) return
      const end = head[0].length + Number(head[1])
      if (buffer.length < end) return
      tell(JSON.parse(buffer.subarray(head[0].length, end).toString()) as Answer)
      buffer = buffer.subarray(end)
    }
  }
}
