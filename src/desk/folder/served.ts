// The folder of `battledore desk`: bytes go to the server of this machine and come from it. Nothing else is ever asked.

import { fail, type Problem, type Result, succeed, toProblem } from '../../problem/index.ts'
import type { FileBytes, FileEntry, Folder, Saved } from './types.ts'

const LOST = toProblem({
  code: 'folder-lost',
  message: 'The desk was closed. Your text is still here',
  note: 'Start `battledore desk` again in the same folder, or save a copy.',
})
const REFUSED = toProblem({
  code: 'folder-lost',
  message: 'The desk does not know this page any more. Your text is still here',
  note: 'Open the address that `battledore desk` printed last.',
})

/** Milliseconds until a request counts as unanswered, and until the server is asked again for its news. */
const PATIENCE = 15_000
const AGAIN = 2000

export interface ServedTools {
  readonly token: string
  readonly fetch: typeof fetch
  /** Between the tabs of a browser; without it, each tab listens for itself. */
  readonly tabs?: Tabs | undefined
}

/**
 * One tab listens to the server and passes the news on: a browser opens few connections to one address, and tabs that
 * each kept one would leave none to save by.
 */
export interface Tabs {
  /** Runs once no other tab does; the signal ends it when this tab wants no more. */
  lead(run: () => Promise<void>, signal: AbortSignal): void
  /** To whoever hears, in this tab and in the others. */
  pass(names: readonly string[] | undefined): void
  hear(listener: (names: readonly string[] | undefined) => void): () => void
}

/** @throws Error where the server does not answer at all */
export async function openServed(tools: ServedTools): Promise<Folder> {
  const ask = toAsk(tools)
  const first = await ask('/api/list')
  if (!first?.ok) throw new Error((first?.status === 401 ? REFUSED : LOST).message)
  const { id, label } = (await first.json()) as { readonly id: string; readonly label: string }
  return {
    ...{ kind: 'served', id, label },
    async list() {
      const answer = await ask('/api/list')
      if (!answer?.ok) return toFailure(answer)
      return succeed(((await answer.json()) as { readonly files: readonly FileEntry[] }).files)
    },
    async read(name) {
      const answer = await ask(toPath(name))
      if (answer?.status === 404) return fail({ code: 'missing-file', message: `\`${name}\` is not there` })
      if (!answer?.ok) return toFailure(answer)
      const file = await toFile(name, answer)
      return file ? succeed(file) : fail(LOST)
    },
    async save(name, bytes, base): Promise<Saved> {
      const version = base === 'new' ? { 'if-none-match': '*' } : { 'if-match': `"${base}"` }
      const headers = { 'content-type': 'application/octet-stream', ...version }
      const answer = await ask(toPath(name), { method: 'PUT', headers, body: bytes.slice() })
      if (answer?.status === 412) return toChanged(name, answer)
      if (answer?.ok) return { kind: 'saved', version: ((await answer.json()) as { readonly version: string }).version }
      return toRefused(name, answer)
    },
    watch: (onChange) => watch(ask, onChange, tools.tabs),
  }
}

type Ask = (path: string, init?: RequestInit) => Promise<Response | undefined>

/** Undefined where nothing answers. */
function toAsk({ token, fetch }: ServedTools): Ask {
  return async (path, { headers, ...init } = {}) => {
    try {
      const signal = init.signal ?? AbortSignal.timeout(PATIENCE)
      return await fetch(path, { cache: 'no-store', ...init, signal, headers: { ...headers, 'x-desk-token': token } })
    } catch {
      return undefined
    }
  }
}

const toPath = (name: string): string => `/api/file/${name.split('/').map(encodeURIComponent).join('/')}`

/** Undefined where it breaks off. */
async function toFile(name: string, answer: Response): Promise<FileBytes | undefined> {
  try {
    const bytes = new Uint8Array(await answer.arrayBuffer())
    const version = (answer.headers.get('etag') ?? '').replaceAll('"', '')
    const locked = answer.headers.get('x-desk-locked')
    return { name, bytes, version, ...(locked && { locked: JSON.parse(decodeURIComponent(locked)) as Problem }) }
  } catch {
    return undefined
  }
}

async function toChanged(name: string, answer: Response): Promise<Saved> {
  if (!answer.headers.has('etag')) return { kind: 'changed', theirs: undefined }
  const theirs = await toFile(name, answer)
  return theirs ? { kind: 'changed', theirs } : { kind: 'lost', problem: LOST }
}

async function toRefused(name: string, answer: Response | undefined): Promise<Saved> {
  if (answer === undefined || answer.status >= 500) return { kind: 'lost', problem: LOST }
  if (answer.status === 401) return { kind: 'lost', problem: REFUSED }
  const [problem] = await readProblems(answer)
  if (problem) return { kind: 'refused', problem }
  const tooLarge = answer.status === 413
  const message = tooLarge ? `\`${name}\` is too large: more than 2 MB` : `\`${name}\` may not be written here`
  return { kind: 'refused', problem: toProblem({ code: tooLarge ? 'too-large' : 'outside-folder', message }) }
}

async function toFailure(answer: Response | undefined): Promise<Result<never>> {
  const problems = answer?.status === 409 ? await readProblems(answer) : []
  if (problems.length > 0) return { ok: false, problems }
  return fail(answer?.status === 401 ? REFUSED : LOST)
}

async function readProblems(answer: Response): Promise<readonly Problem[]> {
  try {
    return ((await answer.json()) as { readonly problems?: readonly Problem[] }).problems ?? []
  } catch {
    return []
  }
}

/** Listens for as long as the page is open; that also tells the server that one is. */
function watch(ask: Ask, onChange: (names: readonly string[] | undefined) => void, tabs: Tabs | undefined): () => void {
  const end = new AbortController()
  const forget = tabs?.hear(onChange)
  const run = (): Promise<void> => listen(ask, tabs ? tabs.pass : onChange, end.signal)
  if (tabs) tabs.lead(run, end.signal)
  else void run()
  return () => {
    forget?.()
    end.abort()
  }
}

async function listen(
  ask: Ask,
  onChange: (names: readonly string[] | undefined) => void,
  signal: AbortSignal,
): Promise<void> {
  const pause = (): Promise<void> => new Promise((done) => setTimeout(done, AGAIN))
  for (let isFirst = true; !signal.aborted; isFirst = false) {
    const answer = await ask('/api/watch', { signal })
    // What happened between two talks is not known.
    if (answer?.ok && !isFirst) onChange(undefined)
    if (answer?.ok && answer.body) await hear(answer.body, onChange)
    if (signal.aborted) return
    onChange(undefined)
    await pause()
  }
}

async function hear(
  body: ReadableStream<Uint8Array>,
  onChange: (names: readonly string[] | undefined) => void,
): Promise<void> {
  const reader = body.getReader()
  const decoder = new TextDecoder()
  let rest = ''
  try {
    for (let next = await reader.read(); !next.done; next = await reader.read()) {
      const lines = (rest + decoder.decode(next.value, { stream: true })).split('\n')
      rest = lines.pop() ?? ''
      for (const line of lines) {
        const { names, all } = JSON.parse(line) as { readonly names?: readonly string[]; readonly all?: boolean }
        if (names || all) onChange(names)
      }
    }
  } catch {
    // It broke off: it is asked for again.
  }
}
