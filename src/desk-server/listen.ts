// The desk's server on this machine: takes requests, asks the guard, answers, and knows how many pages are open.

import { randomBytes, timingSafeEqual } from 'node:crypto'
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http'
import type { AddressInfo } from 'node:net'
import { type Answer, answer, type PageFile, type Store, toSentence } from './answer.ts'
import { isRefusal, judge, MOST_BYTES, type Place, toHeaders } from './guard.ts'

export interface DeskServer {
  readonly port: number
  /** To be opened in the browser. */
  readonly address: string
  /** Files may have changed; without names, any may have. */
  tell(names: readonly string[] | undefined): void
  close(): Promise<void>
}

export interface ServeTools {
  readonly store: Store
  /** A file of the page; the first page gets its nonce. */
  pageFile(nonce: string): PageFile
  /** Hears how many pages are open whenever that changes. */
  onPages?(count: number): void
}

/** How long a page that has gone silently counts as open. */
const HEARTBEAT = 15_000
const LAST_TRIED = 65_535
const HOST = '127.0.0.1'

/** On this port, or the next one that is free. */
export async function startDeskServer(port: number, tools: ServeTools): Promise<DeskServer> {
  const pages = new Set<ServerResponse>()
  const place: Place = { port: 0, token: randomBytes(24).toString('base64url'), isSame }
  const server = createServer((request, response) => {
    serve(request, response, { ...place, port: toPort(server) }, tools, pages).catch(() => {
      if (!response.headersSent) send(response, toSentence(500, 'The desk could not answer.'), '')
      else response.destroy()
    })
  })
  const found = await listen(server, port)
  const heart = setInterval(() => write(pages, {}), HEARTBEAT)
  heart.unref()
  return {
    port: found,
    address: `http://${HOST}:${found}/#${place.token}`,
    tell: (names) => write(pages, names ? { names } : { all: true }),
    close() {
      clearInterval(heart)
      for (const page of pages) page.destroy()
      server.closeAllConnections()
      return new Promise((done) => server.close(() => done()))
    },
  }
}

const toPort = (server: Server): number => (server.address() as AddressInfo).port

async function listen(server: Server, port: number): Promise<number> {
  for (let next = port; ; next++) {
    const error = await new Promise<NodeJS.ErrnoException | undefined>((done) => {
      server.once('error', done)
      server.listen({ host: HOST, port: next, exclusive: true }, () => {
        server.off('error', done)
        done(undefined)
      })
    })
    if (error === undefined) return toPort(server)
    if ((error.code !== 'EADDRINUSE' && error.code !== 'EACCES') || next >= Math.min(LAST_TRIED, port + 50)) throw error
  }
}

async function serve(
  request: IncomingMessage,
  response: ServerResponse,
  place: Place,
  { store, pageFile, onPages }: ServeTools,
  pages: Set<ServerResponse>,
): Promise<void> {
  const nonce = randomBytes(16).toString('base64')
  const { method = '', url: target = '', headers } = request
  const route = judge({ method, target, headers: { ...headers, ...findRepeated(request) } }, place)
  if (isRefusal(route)) return send(response, toSentence(route.status, route.why), nonce)
  if (route.kind === 'watch') {
    response.writeHead(200, { ...toHeaders(nonce), 'content-type': 'application/x-ndjson' })
    response.write('{}\n')
    pages.add(response)
    onPages?.(pages.size)
    response.once('close', () => {
      pages.delete(response)
      onPages?.(pages.size)
    })
    return
  }
  const body = route.kind === 'save' ? await readBody(request) : new Uint8Array()
  if (body === undefined) return send(response, toSentence(413, 'The file is too large.'), nonce)
  const found = await answer(route, body, store, pageFile(nonce))
  send(response, method === 'HEAD' ? { ...found, body: new Uint8Array() } : found, nonce)
}

/** Node keeps the first of a header that comes twice; for the guard it says nothing then. */
function findRepeated({ headersDistinct }: IncomingMessage): Record<string, readonly string[]> {
  return Object.fromEntries(Object.entries(headersDistinct).filter(([, all]) => (all?.length ?? 0) > 1)) as Record<
    string,
    readonly string[]
  >
}

/** Undefined where more comes than a file may have, whatever its length was said to be. */
async function readBody(request: IncomingMessage): Promise<Uint8Array | undefined> {
  const chunks: Uint8Array[] = []
  let size = 0
  for await (const chunk of request as AsyncIterable<Uint8Array>) {
    size += chunk.length
    if (size > MOST_BYTES) return undefined
    chunks.push(chunk)
  }
  return Buffer.concat(chunks)
}

function send(response: ServerResponse, { status, headers, body }: Answer, nonce: string): void {
  response.writeHead(status, { ...toHeaders(nonce), ...headers, 'content-length': body.length })
  response.end(body)
}

function write(pages: ReadonlySet<ServerResponse>, message: object): void {
  for (const page of pages) page.write(`${JSON.stringify(message)}\n`)
}

function isSame(one: string, other: string): boolean {
  const [a, b] = [Buffer.from(one), Buffer.from(other)]
  return a.length === b.length && timingSafeEqual(a, b)
}
