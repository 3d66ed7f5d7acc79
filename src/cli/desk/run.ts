// One run of `desk`: serves the page until the last one has been closed for a minute, or writes it as one file.

import { resolve } from 'node:path'
import { type DeskServer, startDeskServer } from '../../desk-server/index.ts'
import { toPrintable } from '../../report/text.ts'
import { complain, type ExitCode } from '../command.ts'
import { toShownPath } from '../files/file-problem.ts'
import { toSlashes } from '../files/shown.ts'
import { createTextFiles } from '../files/text-files.ts'
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

const PATIENCE = 60_000

export interface DeskEnd {
  /** Ends it, as Ctrl C does. */
  readonly signal?: AbortSignal
  /** Milliseconds from the last page that was closed to the end. */
  readonly patience?: number
}

export async function runDesk(given: string, options: DeskOptions, io: Io, end: DeskEnd = {}): Promise<ExitCode> {
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
  return serve(folder, port, options, io, end)
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
  { signal, patience = PATIENCE }: DeskEnd,
): Promise<ExitCode> {
  const end = new AbortController()
  const forget = (): void => {
    io.stdout.write('The last page was closed a minute ago, so the desk is closed too.\n')
    end.abort()
  }
  let leaving: NodeJS.Timeout | undefined
  const onPages = (count: number): void => {
    clearTimeout(leaving)
    if (count === 0 && stay !== true) leaving = setTimeout(forget, patience)
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
  const watcher = watchFolder(folder, io, (names) => server.tell(names))
  tell(server, port, folder, stay === true, io)
  await tellOuter(folder, io)
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

/** Settings that a check would follow and the desk does not see. */
async function tellOuter(folder: string, io: Io): Promise<void> {
  const { createConfigFinder } = await import('../../config/index.ts')
  const files = createTextFiles(io)
  const chain = await createConfigFinder(files.read, [], files).findFor(`${toSlashes(folder)}/story.md`)
  const outer = chain.folders
    .filter((one) => one.folder !== toSlashes(folder))
    .flatMap(({ files }) => files.at(-1) ?? [])
  for (const { source } of outer)
    io.stdout.write(
      `${toShownPath(source.path)} lies above this folder, so the desk does not see it. Open the desk in its folder to have it hold.\n`,
    )
}

const waitFor = (signals: readonly AbortSignal[]): Promise<void> =>
  new Promise((done) => {
    for (const signal of signals) {
      if (signal.aborted) done()
      signal.addEventListener('abort', () => done(), { once: true })
    }
  })
