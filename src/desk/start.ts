// Starts the page: the worker, the letters, the folder that is watched. Whoever knows where the data and the stories lie calls it.

import { toFault } from './actions.ts'
import { mount } from './app.tsx'
import { createDesk, type Hear, type Link } from './core/ask.ts'
import { createOpener } from './core/parts.ts'
import type { DeskData, DeskFiles, Listed } from './core/questions.ts'
import { openKeeper } from './folder/keeper.ts'
import type { FileEntry, Folder, KeeperTools } from './folder/types.ts'
import type { Page } from './page.ts'
import { toAllTold } from './told.ts'

export interface DeskStart {
  readonly root: Element
  readonly data: DeskData
  /** A new worker; called again where one broke. */
  readonly startWorker: (hear: Hear) => Link
  readonly keeper: KeeperTools
  /** For the styles of the editor, where the content policy asks for it. */
  readonly cspNonce?: string
}

export function startDesk({ root, data, startWorker, keeper, cspNonce }: DeskStart): Page {
  const { folder } = keeper
  const desk = createDesk({ start: startWorker, files: toFiles(folder), data })
  const page = mount(root, {
    ask: desk.ask,
    folder,
    cspNonce,
    open: (name, fresh) => openKeeper(name, keeper, fresh),
    async listDrafts() {
      const list = await keeper.drafts.list(folder.id)
      return list.ok ? list.value : []
    },
    download,
    show,
  })
  const fault = toFault(page)
  desk.ask({ kind: 'open', data }).then((opened) => {
    page.state.opened.value = opened
  }, fault)
  // Letters for beginners come a moment later; until then those of the system stand there.
  void loadLetters(data).catch(() => undefined)
  folder.watch((names) => {
    desk.ask({ kind: 'changed', ...(names && { paths: names }) }).then(() => {
      page.state.shelfAge.value++
      if (names?.every((name) => /\.(?:md|markdown)$/i.test(name))) return
      page.state.session.peek()?.recheck()
    }, fault)
  })
  saveBeforeLeaving(page)
  return page
}

const toFiles = (folder: Folder): DeskFiles => ({
  async list() {
    const list = await folder.list()
    if (!list.ok) throw new Error(toAllTold(list.problems))
    return toListed(list.value)
  },
  async read(path) {
    const read = await folder.read(path)
    if (read.ok) return read.value.bytes
    if (read.problems.some(({ code }) => code === 'missing-file')) return undefined
    throw new Error(toAllTold(read.problems))
  },
})

/** Only a folder that knows what is left out says of any story whether it is. */
function toListed(files: readonly FileEntry[]): Listed {
  const list = files.map(({ name }) => name)
  const known = files.filter(({ isLeftOut }) => isLeftOut !== undefined)
  const stories = known.filter(({ isLeftOut }) => !isLeftOut).map(({ name }) => name)
  return { list, ...(known.length > 0 && { stories }) }
}

/** From bytes, so that no font is fetched by the style sheet and the content policy needs no line for it. */
async function loadLetters({ fonts = {} }: DeskData): Promise<void> {
  for (const [file, weight] of [
    ['andika.ttf', '400'],
    ['andika-bold.ttf', '700'],
  ] as const) {
    const part = fonts[file]
    if (part === undefined) continue
    const bytes = await createOpener(part, { fetch: fetchBytes })()
    const face = new FontFace('Andika Desk', bytes.slice().buffer, { weight })
    document.fonts.add(await face.load())
  }
}

/** Asked of the page's own address; a page of one file has all in itself. */
const fetchBytes = async (address: string): Promise<Uint8Array> =>
  new Uint8Array(await (await fetch(address)).arrayBuffer())

function download(name: string, bytes: Uint8Array, type: string): void {
  const address = toAddress(bytes, type)
  const link = document.createElement('a')
  link.href = address
  link.download = name
  link.click()
}

function show(name: string, bytes: Uint8Array, type: string): void {
  // A browser that shows no tab of ours saves the file instead.
  if (window.open(toAddress(bytes, type), '_blank') === null) download(name, bytes, type)
}

function toAddress(bytes: Uint8Array, type: string): string {
  const address = URL.createObjectURL(new Blob([bytes.slice()], { type }))
  setTimeout(() => URL.revokeObjectURL(address), 10 * 60 * 1000)
  return address
}

/** Whoever leaves the page leaves nothing unsaved; where only a download saves, the browser asks. */
function saveBeforeLeaving({ state, tools }: Page): void {
  document.addEventListener('visibilitychange', () => {
    const session = state.session.peek()
    const isWaiting = session?.saved.peek().kind === 'unsaved'
    if (document.visibilityState === 'hidden' && isWaiting && tools.folder.kind !== 'single')
      void session?.keeper.save()
  })
  window.addEventListener('beforeunload', (event) => {
    const kind = state.session.peek()?.saved.peek().kind
    if (kind === 'unsaved' || kind === 'conflict' || kind === 'lost') event.preventDefault()
  })
}
