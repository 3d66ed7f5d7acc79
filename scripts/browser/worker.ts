// The built worker in a real browser: a page with nothing in it but the worker, and a way to ask it from a test or a benchmark.

import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Page } from 'puppeteer-core'
import type { Answer, DeskData, Kind, Question } from '../../src/desk/core/questions.ts'
import { bundleWorker } from '../bundle/desk-worker.ts'
import { ROOT } from '../root.ts'

const DIST = join(ROOT, 'dist')

export interface Served {
  readonly address: string
  readonly data: DeskData
  /** How large the worker is, in bytes. */
  readonly size: number
  stop(): Promise<void>
}

/** The worker and the data, on a port of this machine. */
export async function serveWorker(): Promise<Served> {
  const folder = mkdtempSync(join(tmpdir(), 'battledore-worker-'))
  await bundleWorker(ROOT, join(folder, 'worker.js'))
  const worker = readFileSync(join(folder, 'worker.js'))
  rmSync(folder, { recursive: true })
  const server = createServer((request, response) => {
    const path = new URL(request.url ?? '/', 'http://localhost').pathname
    const [type, body] = toFile(path, worker)
    response.writeHead(body === undefined ? 404 : 200, { 'content-type': type })
    response.end(body)
  })
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done))
  const address = `http://127.0.0.1:${(server.address() as AddressInfo).port}`
  const part = (name: string) => ({ address: `${address}/${name}` })
  const data: DeskData = {
    ...{
      lexicon: part('lexicon.bin'),
      words: part('words.bin'),
      lists: part('lists.bin'),
      pictures: part('pictures.json'),
    },
    sequences: Object.fromEntries(
      readdirSync(join(DIST, 'sequences')).map((name) => [name.replace('.json', ''), part(`sequences/${name}`)]),
    ),
    fonts: { 'andika.ttf': part('fonts/andika.ttf'), 'andika-bold.ttf': part('fonts/andika-bold.ttf') },
  }
  return { address, data, size: worker.length, stop: () => new Promise((done) => server.close(() => done())) }
}

function toFile(path: string, worker: Buffer): readonly [type: string, body: string | Buffer | undefined] {
  if (path === '/') return ['text/html', '<!doctype html><title>A worker</title>']
  if (path === '/worker.js') return ['text/javascript', worker]
  const file = join(DIST, path.replaceAll('..', ''))
  return ['application/octet-stream', existsSync(file) ? readFileSync(file) : undefined]
}

/** Starts the worker in the page, with these files as its folder. */
export async function startInPage(
  page: Page,
  { address, data }: Served,
  files: Readonly<Record<string, string>>,
): Promise<void> {
  await page.goto(address)
  // Functions that are sent into the page may have been compiled with it.
  await page.evaluate('window.__name = (one) => one')
  await page.evaluate(startWorker, files)
  await askInPage(page, { kind: 'open', data })
}

/** As a text: what Firefox's protocol hands over comes without what stands in it twice. */
export async function askInPage<K extends Kind>(page: Page, question: Question<K>): Promise<Answer<K>> {
  const asked = JSON.stringify(question)
  const text = await page.evaluate(
    async (one) => JSON.stringify(await (window as unknown as Asks).ask(JSON.parse(one))),
    asked,
  )
  return JSON.parse(text) as Answer<K>
}

/** From the question to the answer, on the page, in milliseconds: what the protocol takes is not counted. */
export const timeInPage = (page: Page, question: Question): Promise<number> =>
  page.evaluate(async (text) => {
    const asked = JSON.parse(text)
    const start = performance.now()
    await (window as unknown as Asks).ask(asked)
    return performance.now() - start
  }, JSON.stringify(question))

interface Asks {
  ask(question: object): Promise<unknown>
}

/** Runs in the page: the least that the worker needs on the other side. Bytes come back as plain lists of numbers. */
function startWorker(files: Readonly<Record<string, string>>): void {
  const worker = new Worker('/worker.js')
  const waiting = new Map<number, readonly [(answer: unknown) => void, (error: Error) => void]>()
  let last = 0
  worker.onerror = ({ message }) => {
    for (const [, fail] of waiting.values()) fail(new Error(`the worker broke: ${message}`))
  }
  worker.onmessage = ({ data }) => {
    if ('need' in data) {
      const text = files[data.path]
      const bytes = text === undefined ? undefined : new TextEncoder().encode(text)
      worker.postMessage({ need: data.need, ...(data.path === undefined ? { list: Object.keys(files) } : { bytes }) })
      return
    }
    const [done, fail] = waiting.get(data.id) ?? []
    if ('fault' in data) fail?.(new Error(data.fault))
    else if ('answer' in data) {
      const pdf = data.answer?.value?.pdf
      done?.(pdf ? { ...data.answer, value: { ...data.answer.value, pdf: Array.from(pdf) } } : data.answer)
    }
  }
  const asks = {
    ask: (question: object) =>
      new Promise((done, fail) => {
        waiting.set(++last, [done, fail])
        worker.postMessage({ id: last, question })
      }),
  }
  Object.assign(window, asks)
}
