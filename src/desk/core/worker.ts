// The worker in the browser: listens to the page, and knows the day and the way to data files. All else is elsewhere.

import type { ToWorker } from './messages.ts'
import { startWorker } from './worker-side.ts'

/** As much of a worker's own world as is needed here. */
interface WorkerWorld {
  postMessage(message: unknown, transfer: readonly ArrayBuffer[]): void
  addEventListener(type: 'message', listener: (event: { readonly data: ToWorker }) => void): void
}

const world = globalThis as unknown as WorkerWorld

/** A message to oneself comes behind those that wait; a timer would be held up for 4 ms. */
const channel = new MessageChannel() as unknown as {
  readonly port1: { onmessage: (() => void) | null }
  readonly port2: { postMessage(message: null): void }
}
const waiting: (() => void)[] = []
channel.port1.onmessage = () => waiting.shift()?.()

const take = startWorker({
  send: (message, transfer) => world.postMessage(message, transfer),
  async fetch(address) {
    const response = await fetch(address)
    if (!response.ok) throw new Error(`the data file ${address} cannot be had (${response.status})`)
    return new Uint8Array(await response.arrayBuffer())
  },
  today: () => toDay(new Date()),
  pause: () =>
    new Promise((done) => {
      waiting.push(done)
      channel.port2.postMessage(null)
    }),
})

world.addEventListener('message', ({ data }) => take(data))

/** By the clock of the maker, not of Greenwich. */
function toDay(date: Date): string {
  const two = (number: number): string => String(number).padStart(2, '0')
  return `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`
}
