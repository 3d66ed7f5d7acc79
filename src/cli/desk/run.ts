// One run of `desk`: serves the page until the last one has been closed for a minute, or writes it as one file.

import { resolve } from 'node:path'
import { type DeskServer, startDeskServer } from '../../desk-server/index.ts'
import { toPrintable } from '../../report/text.ts'
import { complain, type ExitCode } from '../command.ts'
import { toShownPath } from '../files/file-problem.ts'
import { toSlashes } from '../files/shown.ts'
import type { Io } from '../io.ts'
import { openBrowser } from './browser.ts'
import { createPageFiles } from './page-files.ts'
import { createStore } from './store.ts'

export interface DeskOptions {
  readonly port: string
  readonly open: boolean
  readonly stay?: boolean
  readonly oneFile?: string
  readonly withSettings?: boolean
}

/** Milliseconds from the last page that was closed to the end. */
const PATIENCE = 60_000

/** @param signal ends it, as Ctrl C does */
export async function runDesk(given: string, options: DeskOptions, io: Io, signal?: AbortSignal): Promise<ExitCode> {
  const folder = findFolder(given, io)
  if (folder === undefined) {
    complain(io, `There is no folder ${toShownPath(given)}.`)
    return 2
  }
  if (options.withSettings === true && options.oneFile === undefined) {
    complain(io, '--with-settings goes with --one-file FILE.')
    return 2
  }
  if (options.oneFile !== undefined) {
    const { writeOneFile } = await import('./one-file.ts')
    return writeOneFile(folder, options.oneFile, options.withSettings === true, io)
  }
  const port = toPort(options.port)
  if (port === undefined) {
    complain(io, `--port is a whole number from 1024 to 65535, not \`${toPrintable(options.port)}\`.`)
    return 2
  }
  return serve(folder, port, options, io, signal)
}

function findFolder(given: string, io: Io): string | undefined {
  const path = resolve(io.cwd, given)
  const isFolder = io.fs.statSync(path, { throwIfNoEntry: false })?.isDirectory() === true
  return isFolder ? io.fs.realpathSync(path) : undefined
}

/** 0, for tests: any that is free. */
function toPort(given: string): number | undefined {
  const port = /^\d{1,5}$/.test(given) ? Number(given) : -1
  return port === 0 || (port >= 1024 && port <= 65_535) ? port : undefined
}

async function serve(
  folder: string,
  port: number,
  { open, stay }: DeskOptions,
  io: Io,
  signal: AbortSignal | undefined,
): Promise<ExitCode> {
  const end = new AbortController()
  const forget = (): void => {
    io.stdout.write('The last page was closed a minute ago, so the desk is closed too.\n')
    end.abort()
  }
  let leaving: NodeJS.Timeout | undefined
  const onPages = (count: number): void => {
    clearTimeout(leaving)
    if (count === 0 && stay !== true) leaving = setTimeout(forget, PATIENCE)
  }
  let server: DeskServer
  try {
    server = await startDeskServer(port, { store: createStore(folder, io), pageFile: createPageFiles, onPages })
  } catch (error) {
    complain(
      io,
      `The desk could not be opened on port ${port}: ${error instanceof Error ? error.message : String(error)}.`,
    )
    return 2
  }
  const { watchFolder } = await import('./watch.ts')
  const watcher = await watchFolder(folder, io, (names) => server.tell(names))
  tell(server, port, folder, stay === true, io)
  if (open) openBrowser(server.address, io)
  const leave = (): void => end.abort()
  process.once('SIGINT', leave)
  process.once('SIGTERM', leave)
  await waitFor([end.signal, ...(signal ? [signal] : [])])
  clearTimeout(leaving)
  await watcher.close()
  await server.close()
  process.off('SIGINT', leave)
  process.off('SIGTERM', leave)
  return 0
}

function tell({ port, address }: DeskServer, asked: number, folder: string, stays: boolean, io: Io): void {
  if (asked !== 0 && port !== asked)
    io.stdout.write(`Port ${asked} is taken, so this is ${port}. Drafts of the other address are not seen here.\n`)
  io.stdout.write(`The desk for ${toPrintable(toSlashes(folder))} is at\n\n  ${address}\n\n`)
  io.stdout.write(
    `Only this machine can open it. It ends with Ctrl C${stays ? '' : ', or a minute after its last page was closed'}.\n`,
  )
}

const waitFor = (signals: readonly AbortSignal[]): Promise<void> =>
  new Promise((done) => {
    for (const signal of signals) {
      if (signal.aborted) done()
      signal.addEventListener('abort', () => done(), { once: true })
    }
  })
