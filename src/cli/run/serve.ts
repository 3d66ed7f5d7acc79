// Runs the language server over standard input and output.

import { readFileSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { Readable, Writable } from 'node:stream'
import { fileURLToPath, pathToFileURL } from 'node:url'
import { createConnection, ProposedFeatures, StreamMessageReader, StreamMessageWriter } from 'vscode-languageserver/node'
import type { Host, WordSource } from '../../server/host.ts'
import { startServer } from '../../server/server.ts'
import { openWordData } from '../../words/index.ts'
import { createChecker, toShown, toSlashes } from '../checker.ts'
import { type ExitCode } from '../command.ts'
import { DATA_FOLDER, listBuiltIns, loadLexicon } from '../data.ts'
import { createIgnoreFiles } from '../ignore-files.ts'
import type { Io } from '../io.ts'
import { VERSION } from '../version.ts'

/** Ends when the editor closes the input, or asks it to. */
export async function serve(io: Io): Promise<ExitCode> {
  const input = Readable.from(toBuffers(io), { objectMode: false })
  const output = new Writable({
    write(chunk: Buffer, _encoding, done) {
      io.stdout.write(chunk.toString('utf8'))
      done()
    },
  })
  const closed = new Promise<void>((done) => input.once('close', () => done()))
  const connection = createConnection(ProposedFeatures.all, new StreamMessageReader(input), new StreamMessageWriter(output))
  const stop = startServer(connection, createHost(io), VERSION)
  await closed
  stop()
  connection.dispose()
  return 0
}

async function* toBuffers(io: Io): AsyncGenerator<Buffer> {
  for await (const chunk of io.stdin()) yield Buffer.from(chunk)
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
