// Runs the language server over standard input and output.

import { readFileSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { Readable, Writable } from 'node:stream'
import { fileURLToPath, pathToFileURL } from 'node:url'
import { createConnection, ProposedFeatures, type WatchDog } from 'vscode-languageserver'
import {
  createProtocolConnection,
  type Logger,
  type ProtocolConnection,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver-protocol/node'
import type { Host, WordSource } from '../../server/host.ts'
import { startServer } from '../../server/server.ts'
import { openWordData } from '../../words/index.ts'
import { createChecker, toShown, toSlashes } from '../checker.ts'
import { complain, type ExitCode } from '../command.ts'
import { DATA_FOLDER, listBuiltIns, loadLexicon } from '../data.ts'
import { createIgnoreFiles } from '../ignore-files.ts'
import type { Io } from '../io.ts'
import { VERSION } from '../version.ts'

/** Ends when the editor says so, or closes the input; also when it dies, as its end of the input closes then. */
export async function serve(io: Io): Promise<ExitCode> {
  if (io.stdinIsTTY) {
    complain(io, '`serve` is for a code editor to start, which then talks to it. See docs/editor.md.')
    return 2
  }
  const source = io.stdin()
  const input = Readable.from(toBuffers(source), { objectMode: false })
  let leave: (code: ExitCode) => void = () => undefined
  const left = new Promise<ExitCode>((done) => {
    leave = done
  })
  input.once('close', () => leave(0))
  const watchDog: WatchDog = {
    shutdownReceived: false,
    initialize: () => undefined,
    exit: (code) => leave(code === 0 ? 0 : 1),
  }
  const reader = new StreamMessageReader(input)
  const connect = (logger: Logger): ProtocolConnection =>
    createProtocolConnection(reader, new StreamMessageWriter(toOutput(io)), logger)
  const connection = createConnection(connect, watchDog, ProposedFeatures.all)
  const stop = startServer(connection, createHost(io), VERSION)
  const code = await left
  stop()
  connection.dispose()
  // Standard input that is still open would keep the process.
  if (source instanceof Readable) source.destroy()
  return code
}

function toOutput(io: Io): Writable {
  return new Writable({
    write(chunk: Buffer, _encoding, done) {
      io.stdout.write(chunk.toString('utf8'))
      done()
    },
  })
}

async function* toBuffers(source: AsyncIterable<Uint8Array>): AsyncGenerator<Buffer> {
  try {
    for await (const chunk of source) yield Buffer.from(chunk)
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
