// Runs the language server over standard input and output.

import { readFileSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { Readable, Writable } from 'node:stream'
import { fileURLToPath, pathToFileURL } from 'node:url'
import { createConnection, ProposedFeatures, type WatchDog } from 'vscode-languageserver'
import {
  createProtocolConnection,
  ErrorCodes,
  type Logger,
  type ProtocolConnection,
  type ResponseMessage,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver-protocol/node'
import type { WordSource } from '../../finder/readable-words.ts'
import { DATA_FOLDER, listBuiltIns, loadLexicon } from '../../packaged/data.ts'
import { toPrintable } from '../../report/text.ts'
import { createFrameCheck } from '../../server/frames.ts'
import type { Host } from '../../server/host.ts'
import { startServer } from '../../server/server.ts'
import { openWordData } from '../../words/index.ts'
import { createChecker } from '../checker.ts'
import { complain, type ExitCode } from '../command.ts'
import { createIgnoreFiles } from '../files/ignore-files.ts'
import { toShown, toSlashes } from '../files/shown.ts'
import type { Io } from '../io.ts'
import { VERSION } from '../version.ts'

/** Ends when the editor says so, or closes the input; also when it dies, as its end of the input closes then. */
export async function serve(io: Io): Promise<ExitCode> {
  if (io.stdinIsTTY) {
    complain(io, '`serve` is for a code editor to start, which then talks to it. See docs/editor.md.')
    return 2
  }
  const source = io.stdin()
  let leave: (code: ExitCode) => void = () => undefined
  const left = new Promise<ExitCode>((done) => {
    leave = done
  })
  const giveUp = (header: string): void => {
    const start = toPrintable(header.trim().slice(0, 40))
    complain(io, `What came in is no message for a language server, so it ends here: “${start}”.`)
    leave(1)
  }
  const input = Readable.from(toBuffers(source, giveUp), { objectMode: false })
  input.once('close', () => leave(0))
  const watchDog: WatchDog = {
    shutdownReceived: false,
    initialize: () => undefined,
    exit: (code) => leave(code === 0 ? 0 : 1),
  }
  const reader = new StreamMessageReader(input)
  const writer = new StreamMessageWriter(toOutput(io))
  reader.onError((error) => {
    complain(io, `A message could not be read and was passed over: ${error.message.split('\n')[0]}`)
    if (error instanceof SyntaxError) void writer.write(NO_JSON)
  })
  const connect = (logger: Logger): ProtocolConnection => createProtocolConnection(reader, writer, logger)
  const connection = createConnection(connect, watchDog, ProposedFeatures.all)
  const stop = startServer(connection, createHost(io), VERSION)
  const code = await left
  stop()
  connection.dispose()
  // Standard input that is still open would keep the process.
  if (source instanceof Readable) source.destroy()
  return code
}

/** The protocol's answer to a message that is no JSON, and so has no number to answer to. */
const NO_JSON: ResponseMessage = {
  jsonrpc: '2.0',
  id: null,
  error: { code: ErrorCodes.ParseError, message: 'The message is no JSON.' },
}

function toOutput(io: Io): Writable {
  return new Writable({
    write(chunk: Buffer, _encoding, done) {
      io.stdout.write(chunk.toString('utf8'))
      done()
    },
  })
}

async function* toBuffers(source: AsyncIterable<Uint8Array>, giveUp: (header: string) => void): AsyncGenerator<Buffer> {
  const check = createFrameCheck()
  try {
    for await (const chunk of source) {
      const wrong = check(chunk)
      if (wrong !== undefined) return giveUp(wrong)
      yield Buffer.from(chunk)
    }
  } catch {
    // An input that breaks off is an input that has ended.
  }
}

export function createHost(io: Io): Host {
  const checker = createChecker(io)
  let words: WordSource | undefined
  return {
    ...checker,
    builtIns: listBuiltIns,
    isLeftOut: async (storyPath) => (await createIgnoreFiles(io).findReason(storyPath)) !== undefined,
    words: () => (words ??= loadWords()),
    toPath: (uri) => toSlashes(uri.startsWith('file:') ? toFilePath(uri) : resolve(io.cwd, 'unsaved.md')),
    toUri: (path) => pathToFileURL(resolve(io.cwd, path)).href,
    show: (path) => toShown(path, io),
    now: io.now,
  }
}

/** A broken address is no reason to stop. */
function toFilePath(uri: string): string {
  try {
    return fileURLToPath(uri)
  } catch {
    return 'unsaved.md'
  }
}

function loadWords(): WordSource {
  const lexicon = loadLexicon()
  return { lexicon, data: openWordData(readFileSync(join(DATA_FOLDER, 'words.bin')), lexicon.size) }
}
