// A worker of the browser as the page talks with it.

import type { Hear, Link } from './core/ask.ts'
import type { FromWorker } from './core/messages.ts'

export function toLink(start: () => Worker, hear: Hear): Link {
  let worker: Worker
  try {
    worker = start()
  } catch (error) {
    hear.broken(error instanceof Error ? error.message : String(error))
    return { send: () => undefined, end: () => undefined }
  }
  worker.onmessage = ({ data }: MessageEvent<FromWorker>) => hear.message(data)
  worker.onerror = (event) => hear.broken(event.message || 'it could not be started')
  return {
    send: (message, transfer) => worker.postMessage(message, [...transfer]),
    end: () => worker.terminate(),
  }
}
