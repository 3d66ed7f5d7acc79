// Who may ask what: each request is held against this before anything is read. Nothing here touches a file or the network.

import { toSort } from './names.ts'

/** A request as it came in; names of headers in small letters. */
export interface Asked {
  readonly method: string
  /** The path and what follows it, as sent: nothing is normalised before it is judged. */
  readonly target: string
  readonly headers: Readonly<Record<string, string | readonly string[] | undefined>>
}

export interface Refusal {
  readonly status: number
  /** One sentence for people. */
  readonly why: string
}

/** What is asked of the folder, or one of the page's own files. */
export type Route =
  | { readonly kind: 'page'; readonly name: string }
  | { readonly kind: 'list' }
  | { readonly kind: 'watch' }
  | { readonly kind: 'read'; readonly name: string }
  /** `base` undefined: the file must not be there yet. */
  | { readonly kind: 'save'; readonly name: string; readonly base: string | undefined }

export interface Place {
  readonly port: number
  readonly token: string
  /** Compares in the same time whatever differs. */
  isSame(one: string, other: string): boolean
}

/** A story of 400,000 characters has room in it, whatever they are. */
export const MOST_BYTES = 2 * 1024 * 1024
const TOKEN_HEADER = 'x-desk-token'
const FILE = '/api/file/'

const refuse = (status: number, why: string): Refusal => ({ status, why })
export const isRefusal = (route: Route | Refusal): route is Refusal => 'status' in route

export function judge(asked: Asked, place: Place): Route | Refusal {
  const { method, target } = asked
  const stranger = findStranger(asked, place)
  if (stranger) return stranger
  if (!/^\/[\x21-\x7e]*$/.test(target)) return refuse(400, 'This is no address.')
  if (!target.startsWith('/api/')) {
    if (method !== 'GET' && method !== 'HEAD') return refuse(405, 'The page can only be read.')
    return { kind: 'page', name: target === '/' ? 'index.html' : target.slice(1) }
  }
  if (!place.isSame(toOne(asked, TOKEN_HEADER) ?? '', place.token))
    return refuse(401, 'Open the desk by the address that the command printed.')
  if (target === '/api/list' || target === '/api/watch')
    return method === 'GET'
      ? { kind: target === '/api/list' ? 'list' : 'watch' }
      : refuse(405, 'This can only be read.')
  if (!target.startsWith(FILE)) return refuse(404, 'There is nothing here.')
  return judgeFile(asked, target.slice(FILE.length))
}

/** Only our own page, at its own address: other names for this machine may be somebody else's. */
function findStranger(asked: Asked, { port }: Place): Refusal | undefined {
  const own = `127.0.0.1:${port}`
  if (toOne(asked, 'host') !== own) return refuse(421, `The desk answers to http://${own} only.`)
  if (asked.headers['origin'] !== undefined && toOne(asked, 'origin') !== `http://${own}`)
    return refuse(403, 'Another page may not ask the desk.')
  const site = asked.headers['sec-fetch-site']
  if (site !== undefined && site !== 'same-origin' && site !== 'none')
    return refuse(403, 'Another page may not ask the desk.')
  return undefined
}

function judgeFile(asked: Asked, encoded: string): Route | Refusal {
  const { method } = asked
  const name = decode(encoded)
  const isWritten = method === 'PUT'
  if (name === undefined || toSort(name, isWritten) === undefined) return refuse(404, 'There is no such file.')
  if (method === 'GET') return { kind: 'read', name }
  if (!isWritten) return refuse(405, 'A file is read by GET and written by PUT.')
  if (toOne(asked, 'content-type') !== 'application/octet-stream') return refuse(415, 'A file is sent as bytes.')
  const match = toOne(asked, 'if-match')
  const none = toOne(asked, 'if-none-match')
  if ((match === undefined) === (none === undefined) || (none !== undefined && none !== '*'))
    return refuse(428, 'A save says which version it changes.')
  const base = match === undefined ? undefined : /^"(sha256-[0-9a-f]{64})"$/.exec(match)?.[1]
  if (match !== undefined && base === undefined) return refuse(428, 'A save says which version it changes.')
  if (Number(toOne(asked, 'content-length') ?? 0) > MOST_BYTES) return refuse(413, 'The file is too large.')
  return { kind: 'save', name, base }
}

function decode(encoded: string): string | undefined {
  try {
    return decodeURIComponent(encoded)
  } catch {
    return undefined
  }
}

/** A header that comes twice says nothing. */
function toOne({ headers }: Asked, name: string): string | undefined {
  const value = headers[name]
  return typeof value === 'string' ? value : undefined
}

/** @param nonce for the page's own script and the styles of its editor */
export const toHeaders = (nonce: string): Readonly<Record<string, string>> => ({
  'content-security-policy': [
    "default-src 'none'",
    `script-src 'self' 'nonce-${nonce}'`,
    `style-src 'self' 'nonce-${nonce}'`,
    "img-src 'self' data: blob:",
    "connect-src 'self'",
    "worker-src 'self'",
    "frame-ancestors 'none'",
    "base-uri 'none'",
    "form-action 'none'",
    "require-trusted-types-for 'script'",
    'trusted-types desk',
  ].join('; '),
  'cache-control': 'no-store',
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
  'referrer-policy': 'no-referrer',
  'x-content-type-options': 'nosniff',
})
