// The page's side of the talk: asks the worker, drops checks that are overtaken, and starts the worker again where it broke.

import type { FromWorker, Given, ToWorker } from './messages.ts'
import type { Answer, DeskData, DeskFiles, Kind, Question } from './questions.ts'

/** A worker that runs: what comes from it goes to `hear`. */
export interface Link {
  send(message: ToWorker, transfer: readonly ArrayBuffer[]): void
  end(): void
}

export interface Hear {
  message(message: FromWorker): void
  /** It could not be started, or it broke. */
  broken(reason: string): void
}

export interface DeskSources {
  /** Starts a worker; called again where one broke. `toLink` makes a link of the browser's own. */
  start(hear: Hear): Link
  readonly files: DeskFiles
  readonly data: DeskData
}

export interface AskOptions {
  /** Nobody waits for the answer any longer once it is aborted. */
  readonly signal?: { readonly aborted: boolean; addEventListener(type: 'abort', listener: () => void): void }
  progress?(done: number, all: number): void
}

export interface Desk {
  ask<K extends Kind>(question: Question<K>, options?: AskOptions): Promise<Answer<K>>
  end(): void
}

/** Nobody waits for the answer any longer: a newer check has overtaken it, or it was cancelled. */
class Dropped extends Error {
  override name = 'Dropped'
}

/** The program itself broke. The message is for the maker. */
class DeskFault extends Error {
  override name = 'DeskFault'
}

interface Waiting {
  readonly question: Question
  readonly options: AskOptions
  done(answer: unknown): void
  fail(error: Error): void
}

/** Starts that break one after the other before anything was answered: more make no sense. */
const MOST_STARTS = 3

export function createDesk({ start, files, data }: DeskSources): Desk {
  const waiting = new Map<number, Waiting>()
  /** By the path of the story: the check that runs, and the one that waits for it. */
  const checks = new Map<string, { readonly running: number; next: number | undefined }>()
  let last = 0
  let broke = 0
  let link: Link | undefined
  let opening: Promise<unknown> = Promise.resolve()

  const settle = (id: number, how: (waits: Waiting) => void): void => {
    const waits = waiting.get(id)
    waiting.delete(id)
    if (waits) how(waits)
    if (waits?.question.kind === 'check') goOn(waits.question.story.path, id)
  }
  const hear: Hear = {
    message(message) {
      if ('need' in message) void give(message.need, message.path)
      else if ('done' in message) waiting.get(message.id)?.options.progress?.(message.done, message.all)
      else if ('answer' in message) {
        broke = 0
        settle(message.id, ({ done }) => done(message.answer))
      } else if ('dropped' in message) settle(message.id, ({ fail }) => fail(new Dropped()))
      else settle(message.id, ({ fail }) => fail(new DeskFault(toFault(message.fault))))
    },
    broken(reason) {
      link?.end()
      link = undefined
      broke++
      checks.clear()
      const all = [...waiting.values()]
      waiting.clear()
      for (const { fail } of all) fail(new DeskFault(toBroken(reason, broke < MOST_STARTS)))
    },
  }
  async function give(need: number, path: string | undefined): Promise<void> {
    const to = link
    const given = await toGiven(files, path)
    // The bytes are ours to give away: whoever reads a file for the worker keeps none.
    to?.send({ need, ...given }, 'bytes' in given && given.bytes ? [given.bytes.buffer as ArrayBuffer] : [])
  }
  function post(id: number, question: Question): void {
    link?.send({ id, question }, [])
  }
  function goOn(path: string, id: number): void {
    const check = checks.get(path)
    if (check?.running !== id) return
    const next = check.next === undefined ? undefined : waiting.get(check.next)
    checks.delete(path)
    if (check.next === undefined || next === undefined) return
    checks.set(path, { running: check.next, next: undefined })
    post(check.next, next.question)
  }
  /** A check waits while another of the same story runs; one that waits already is overtaken. */
  function postCheck(id: number, path: string, question: Question): void {
    const check = checks.get(path)
    if (check === undefined) {
      checks.set(path, { running: id, next: undefined })
      post(id, question)
      return
    }
    const overtaken = check.next
    check.next = id
    if (overtaken !== undefined) settle(overtaken, ({ fail }) => fail(new Dropped()))
  }
  function put<K extends Kind>(question: Question<K>, options: AskOptions): Promise<Answer<K>> {
    return new Promise((done, fail) => {
      if (options.signal?.aborted) {
        fail(new Dropped())
        return
      }
      const id = ++last
      waiting.set(id, { question: question as Question, options, done: done as (answer: unknown) => void, fail })
      options.signal?.addEventListener('abort', () => {
        if (!waiting.has(id)) return
        link?.send({ drop: id }, [])
        settle(id, (waits) => waits.fail(new Dropped()))
      })
      const plain = question as Question
      if (plain.kind === 'check') postCheck(id, plain.story.path, plain)
      else post(id, plain)
    })
  }
  function open(): Promise<unknown> {
    if (link) return opening
    if (broke >= MOST_STARTS) return Promise.reject(new DeskFault(toBroken('', false)))
    link = start(hear)
    opening = put({ kind: 'open', data }, {})
    // Whoever asks next is told; nobody else waits for it.
    opening.catch(() => undefined)
    return opening
  }
  return {
    async ask<K extends Kind>(question: Question<K>, options: AskOptions = {}): Promise<Answer<K>> {
      const opened = open()
      if (question.kind === 'open') return opened as Promise<Answer<K>>
      await opened
      return put(question, options)
    },
    end() {
      link?.end()
      link = undefined
      for (const { fail } of waiting.values()) fail(new Dropped())
      waiting.clear()
    },
  }
}

async function toGiven(files: DeskFiles, path: string | undefined): Promise<Given> {
  try {
    return path === undefined ? await files.list() : { bytes: await files.read(path) }
  } catch (error) {
    return { refused: error instanceof Error ? error.message : String(error) }
  }
}

const toFault = (fault: string): string =>
  `Something went wrong inside, and this could not be answered (${fault}). Your text is safe; please tell us about it.`

const toBroken = (reason: string, isTriedAgain: boolean): string =>
  isTriedAgain
    ? `The part that checks has stopped${reason === '' ? '' : ` (${reason})`} and is started again. Your text is safe.`
    : 'The part that checks cannot run in this browser. Your text is safe; a current Chrome, Edge, Firefox or Safari runs it.'

/** @example start: (hear) => toLink(new Worker('worker.js'), hear) */
export function toLink(worker: Worker, hear: Hear): Link {
  let ended = false
  worker.addEventListener('message', ({ data }: { readonly data: FromWorker }) => {
    if (!ended) hear.message(data)
  })
  worker.addEventListener('error', ({ message }) => {
    if (!ended) hear.broken(message ?? '')
  })
  worker.addEventListener('messageerror', () => {
    if (!ended) hear.broken('a message came broken')
  })
  return {
    send: (message, transfer) => worker.postMessage(message, [...transfer]),
    end() {
      ended = true
      worker.terminate()
    },
  }
}
