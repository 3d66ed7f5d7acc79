// When an open story is checked: after a pause in typing, at once where somebody asks, and when settings have changed.

import type { Connection, TextDocuments } from 'vscode-languageserver'
import type { TextDocument } from 'vscode-languageserver-textdocument'
import { createConfigMarks } from './config-marks.ts'
import type { Host } from './host.ts'
import { checkOpenStory, type LastCheck } from './open-stories.ts'

/** Milliseconds that typing must pause before a check. A text that takes long waits that much longer. */
export const PAUSE = 150

export interface LiveChecks {
  /** After a pause, counted from the last call. */
  soon(uri: string): void
  /** Checks every open story again where a config or a sequence has changed. */
  refresh(): void
  /** What is said of the text as it is now; undefined where a newer text came meanwhile. */
  find(document: TextDocument): Promise<LastCheck | undefined>
  forget(uri: string): void
  stop(): void
}

export type ReportError = (error: unknown) => void

export function createLiveChecks(
  connection: Connection,
  documents: TextDocuments<TextDocument>,
  host: Host,
  reportError: ReportError,
): LiveChecks {
  const lastChecks = new Map<string, LastCheck>()
  const timers = createTimers((uri) => void checkNow(uri).catch(reportError))
  const configMarks = createConfigMarks(host, (params) => void connection.sendDiagnostics(params))
  let isStopped = false

  const startAll = (except?: string): void => {
    for (const { uri } of documents.all()) if (uri !== except) timers.start(uri, 0)
  }

  async function checkNow(uri: string): Promise<LastCheck | undefined> {
    timers.stop(uri)
    const document = documents.get(uri)
    if (!document) return undefined
    if (host.refresh()) startAll(uri)
    const result = await checkOpenStory(document, host)
    // A newer text has come meanwhile, and a check of it with it.
    if (isStopped || documents.get(uri)?.version !== result.version) return undefined
    lastChecks.set(uri, result)
    configMarks.set(uri, await host.findChain(host.toPath(uri)), result.elsewhere)
    void connection.sendDiagnostics({ uri, version: result.version, diagnostics: [...result.diagnostics] })
    return result
  }

  return {
    soon: (uri) => timers.start(uri, PAUSE + (lastChecks.get(uri)?.took ?? 0)),
    refresh() {
      if (host.refresh()) startAll()
    },
    async find({ uri, version }) {
      const last = lastChecks.get(uri)
      return last?.version === version && !timers.has(uri) ? last : checkNow(uri)
    },
    forget(uri) {
      timers.stop(uri)
      lastChecks.delete(uri)
      configMarks.forget(uri)
      void connection.sendDiagnostics({ uri, diagnostics: [] })
    },
    stop() {
      isStopped = true
      timers.stopAll()
    },
  }
}

/** One timer for each name; starting it again begins its wait anew. */
function createTimers(ring: (name: string) => void) {
  const timers = new Map<string, NodeJS.Timeout>()
  const stop = (name: string): void => {
    clearTimeout(timers.get(name))
    timers.delete(name)
  }
  return {
    start(name: string, delay: number): void {
      stop(name)
      timers.set(
        name,
        setTimeout(() => ring(name), delay),
      )
    },
    stop,
    has: (name: string): boolean => timers.has(name),
    stopAll(): void {
      for (const name of [...timers.keys()]) stop(name)
    },
  }
}
