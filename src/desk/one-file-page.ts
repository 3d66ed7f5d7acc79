// Where the page of one file begins: asks which folder or file, takes the data out of the page itself, starts the desk.

import { toLink } from './core/ask.ts'
import { createOpener } from './core/parts.ts'
import type { DeskData, Part } from './core/questions.ts'
import { createKeeperTools } from './folder/browser-tools.ts'
import { type KeptHandle, keepHandle, readHandle } from './folder/kept-handle.ts'
import { type FolderHandle, openPicked } from './folder/picked.ts'
import { createSingle, SINGLE_ID } from './folder/single.ts'
import { createStoredDrafts } from './folder/stored-drafts.ts'
import type { Folder } from './folder/types.ts'
import { startDesk } from './start.ts'
import { showWelcome } from './welcome.ts'

const root = document.getElementById('desk') ?? document.body
const findBlock = (name: string): HTMLElement | null => document.querySelector(`script[data-name="${name}"]`)

function toPart(name: string): Part {
  const block = findBlock(name)
  const packed = block?.dataset['packed'] === 'deflate' ? 'deflate' : 'gzip'
  return { base64: block?.textContent ?? '', packed }
}

function listBelow(folder: string): Readonly<Record<string, Part>> {
  const blocks = document.querySelectorAll<HTMLElement>(`script[data-name^="${folder}/"]`)
  const names = Array.from(blocks, ({ dataset }) => dataset['name'] ?? '')
  return Object.fromEntries(names.map((name) => [name.slice(folder.length + 1).replace(/\.json$/, ''), toPart(name)]))
}

/** Settings, sequences and readers of the maker's own folder, if the page was made with them. */
function listGiven(): Readonly<Record<string, Uint8Array>> {
  const text = findBlock('settings')?.textContent
  if (!text) return {}
  const files = JSON.parse(text) as Readonly<Record<string, string>>
  return Object.fromEntries(Object.entries(files).map(([name, file]) => [name, new TextEncoder().encode(file)]))
}

const data: DeskData = {
  ...{ lexicon: toPart('lexicon.bin'), words: toPart('words.bin'), lists: toPart('lists.bin') },
  ...{ sequences: listBelow('sequences'), fonts: listBelow('fonts'), pictures: toPart('pictures.json') },
}

/** Nothing is ever fetched by this page. */
const fetchNothing = (): Promise<never> => Promise.reject(new Error('this page has no address to ask'))
const read = (name: string): Promise<Uint8Array> => createOpener(toPart(name), { fetch: fetchNothing })()

async function start(folder: Folder): Promise<void> {
  const code = await read('worker.js')
  const address = URL.createObjectURL(new Blob([code.slice()], { type: 'text/javascript' }))
  root.replaceChildren()
  startDesk({
    ...{ root, data, keeper: createKeeperTools(folder) },
    startWorker: (hear) => toLink(new Worker(address), hear),
  })
}

type Picker = (options: { readonly id: string; readonly mode: 'readwrite' }) => Promise<FolderHandle>
const picker = (window as unknown as { readonly showDirectoryPicker?: Picker }).showDirectoryPicker

function onFocus(run: () => void): () => void {
  window.addEventListener('focus', run)
  return () => window.removeEventListener('focus', run)
}

const openKept = ({ handle, id }: KeptHandle): Promise<void> => start(withGiven(openPicked(handle, id, onFocus)))

/** Settings that came with the page hold where the folder has none of that name. */
function withGiven(folder: Folder): Folder {
  const given = listGiven()
  return {
    ...folder,
    async list() {
      const listed = await folder.list()
      if (!listed.ok) return listed
      const own = new Set(listed.value.map(({ name }) => name))
      const more = Object.entries(given).filter(([name]) => !own.has(name))
      const added = more.map(([name, { length }]) => ({ name, sort: 'yaml' as const, size: length }))
      return { ok: true, value: [...listed.value, ...added] }
    },
    async read(name) {
      const read = await folder.read(name)
      const bytes = given[name]
      if (read.ok || bytes === undefined || read.problems[0]?.code !== 'missing-file') return read
      // A copy, since whoever reads may hand the bytes on to a worker.
      return { ok: true, value: { name, bytes: bytes.slice(), version: 'new' } }
    },
  }
}

async function openSingle(files: Iterable<File>): Promise<void> {
  const drafts = await createStoredDrafts(globalThis.indexedDB).list(SINGLE_ID)
  const folder = await createSingle({
    given: listGiven(),
    drafted: drafts.ok ? drafts.value.map(({ name }) => name) : [],
    download: toDownload,
  })
  for (const file of files) await folder.add(file.name, new Uint8Array(await file.arrayBuffer()))
  await start(folder)
}

function toDownload(name: string, bytes: Uint8Array): void {
  const address = URL.createObjectURL(new Blob([bytes.slice()], { type: 'text/markdown' }))
  const link = document.createElement('a')
  link.href = address
  link.download = name
  link.click()
  setTimeout(() => URL.revokeObjectURL(address), 60_000)
}

async function begin(): Promise<void> {
  const last = picker && (await readHandle(globalThis.indexedDB))
  showWelcome(root, {
    last: last?.handle.name,
    ...(picker && {
      async pick() {
        const handle = await picker({ id: 'battledore', mode: 'readwrite' })
        await openKept(await keepHandle(globalThis.indexedDB, handle))
      },
    }),
    ...(last && {
      async again() {
        const state = await last.handle.requestPermission({ mode: 'readwrite' })
        if (state === 'granted') await openKept(last)
        return state === 'granted'
      },
    }),
    openFiles: openSingle,
    notices: async () => new TextDecoder().decode(await read('notices.md')),
  })
}

void begin()
