// From a judged request to its answer. Files lie behind a store that is handed in.

import type { Problem, Result } from '../problem/index.ts'
import type { Route } from './guard.ts'
import type { Sort } from './names.ts'

export interface StoredFile {
  readonly bytes: Uint8Array
  /** `sha256-` and the hash in hexadecimal digits. */
  readonly version: string
  /** Why it may not be written. */
  readonly locked?: Problem
}

type Stored =
  | { readonly kind: 'saved'; readonly version: string }
  | { readonly kind: 'changed'; readonly theirs: StoredFile | undefined }
  | { readonly kind: 'refused'; readonly problem: Problem }

/** One folder. Names are those that the guard lets through; the store itself sees to it that no link leads out. */
export interface ListedFile {
  readonly name: string
  readonly sort: Sort
  readonly size: number
  /** Of a story: whether it is left out of every check. */
  readonly isLeftOut?: boolean
}

export interface Store {
  readonly id: string
  readonly label: string
  list(): Promise<Result<readonly ListedFile[]>>
  /** Undefined where there is none, or where it lies outside. */
  read(name: string): Result<StoredFile> | undefined
  save(name: string, bytes: Uint8Array, base: string | undefined): Stored | undefined
}

/** A file of the page itself; undefined where there is none. */
export type PageFile = (name: string) => { readonly type: string; readonly bytes: Uint8Array } | undefined

export interface Answer {
  readonly status: number
  readonly headers: Readonly<Record<string, string>>
  readonly body: Uint8Array
}

const encode = (text: string): Uint8Array => new TextEncoder().encode(text)

const toJson = (status: number, value: unknown): Answer => ({
  status,
  headers: { 'content-type': 'application/json' },
  body: encode(JSON.stringify(value)),
})

export const toSentence = (status: number, why: string): Answer => ({
  status,
  headers: { 'content-type': 'text/plain; charset=utf-8' },
  body: encode(`${why}\n`),
})

const NOT_THERE = toSentence(404, 'There is no such file.')

export async function answer(
  route: Exclude<Route, { kind: 'watch' }>,
  body: Uint8Array,
  store: Store,
  pageFile: PageFile,
): Promise<Answer> {
  if (route.kind === 'page') {
    const file = pageFile(route.name)
    return file ? { status: 200, headers: { 'content-type': file.type }, body: file.bytes } : NOT_THERE
  }
  if (route.kind === 'list') {
    const files = await store.list()
    return files.ok ? toJson(200, { ...toNames(store), files: files.value }) : toJson(409, files)
  }
  if (route.kind === 'read') {
    const file = store.read(route.name)
    if (file === undefined) return NOT_THERE
    return file.ok ? toFile(200, file.value) : toJson(409, file)
  }
  const stored = store.save(route.name, body, route.base)
  if (stored === undefined) return NOT_THERE
  if (stored.kind === 'saved') return toJson(200, { version: stored.version })
  if (stored.kind === 'refused') return toJson(409, { problems: [stored.problem] })
  return stored.theirs ? toFile(412, stored.theirs) : toSentence(412, 'The file is gone.')
}

const toNames = ({ id, label }: Store) => ({ id, label })

/** Always bytes: what a file holds is never taken for a page. */
function toFile(status: number, { bytes, version, locked }: StoredFile): Answer {
  return {
    status,
    headers: {
      'content-type': 'application/octet-stream',
      etag: `"${version}"`,
      ...(locked && { 'x-desk-locked': encodeURIComponent(JSON.stringify(locked)) }),
    },
    body: bytes,
  }
}
