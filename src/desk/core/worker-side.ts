// The worker's side of the talk: takes questions one after the other as they come, and sends what comes of them.

import { answer } from './answer.ts'
import { type Asking, type DeskHost, DroppedInside } from './host.ts'
import type { FromWorker, Given, ToWorker } from './messages.ts'
import type { Kind, Listed, Question } from './questions.ts'
import { createState } from './state.ts'

export interface Outside extends Pick<DeskHost, 'fetch' | 'today'> {
  send(message: FromWorker, transfer: readonly ArrayBuffer[]): void
  /** Resolves when messages that wait have been taken in. */
  pause(): Promise<void>
}

/** @returns what takes a message of the page */
export function startWorker(outside: Outside): (message: ToWorker) => void {
  const needs = new Map<number, (given: Given) => void>()
  let last = 0
  const need = (path?: string): Promise<Given> =>
    new Promise((done) => {
      needs.set(++last, done)
      outside.send({ need: last, ...(path !== undefined && { path }) }, [])
    })
  const state = createState({
    ...{ fetch: outside.fetch, today: outside.today },
    files: {
      list: async () => toList(await need()),
      read: async (path) => toBytes(await need(path)),
    },
  })
  const dropped = new Set<number>()
  const take = async (id: number, question: Question): Promise<void> => {
    try {
      const done = await answer(question as Question<Kind>, state, toAsking(id, dropped, outside))
      outside.send({ id, answer: done }, listBytes(done))
    } catch (error) {
      outside.send(error instanceof DroppedInside ? { id, dropped: true } : { id, fault: toText(error) }, [])
    } finally {
      dropped.delete(id)
    }
  }
  return (message) => {
    if ('drop' in message) dropped.add(message.drop)
    else if ('need' in message) {
      needs.get(message.need)?.(message)
      needs.delete(message.need)
    } else void take(message.id, message.question)
  }
}

const toAsking = (id: number, dropped: ReadonlySet<number>, outside: Outside): Asking => ({
  isDropped: () => dropped.has(id),
  progress: (done, all) => outside.send({ id, done, all }, []),
  async pause() {
    await outside.pause()
    if (dropped.has(id)) throw new DroppedInside()
  },
})

function toList(given: Given): Listed {
  if ('list' in given) return given
  throw new Error('refused' in given ? given.refused : 'the folder cannot be listed')
}

function toBytes(given: Given): Uint8Array | undefined {
  if ('bytes' in given) return given.bytes
  throw new Error('refused' in given ? given.refused : 'the file cannot be read')
}

/** A PDF is handed over, not copied. */
function listBytes(answered: unknown): readonly ArrayBuffer[] {
  const value = (answered as { readonly value?: { readonly pdf?: Uint8Array<ArrayBuffer> } } | null)?.value
  return value?.pdf === undefined ? [] : [value.pdf.buffer]
}

const toText = (error: unknown): string => (error instanceof Error ? `${error.name}: ${error.message}` : String(error))
