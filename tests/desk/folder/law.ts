// Plays random sequences of what can happen to an open story, and holds one law: no text that stood on the screen for half a
// second is ever lost, and no foreign change is ever written over. Breaches come back as sentences.

import { openKeeper } from '../../../src/desk/folder/keeper.ts'
import type { Drafts, Folder, Keeper, TextEdit } from '../../../src/desk/folder/types.ts'
import { type Answering, createClock, createDisk, createDrafts, createLocks, settle, toText } from './world.ts'

export type Op =
  /** At a place of the text; `length` letters go, `text` comes. */
  | { readonly kind: 'edit'; readonly at: number; readonly length: number; readonly text: string }
  | { readonly kind: 'wait'; readonly milliseconds: number }
  | { readonly kind: 'save' | 'undo' | 'crash' | 'close' | 'second tab' }
  | { readonly kind: 'take theirs' | 'save copy' | 'take draft' | 'drop draft' }
  | { readonly kind: 'foreign'; readonly text: string | undefined; readonly isSeen: boolean }
  | { readonly kind: 'disk'; readonly answering: Answering; readonly latency: number }
  | { readonly kind: 'drafts'; readonly latency: number }

/** A fault to be put in, so that it can be seen that the law may fail. */
export interface Fault {
  folder?(folder: Folder): Folder
  drafts?(drafts: Drafts, after: (milliseconds: number) => Promise<void>): Drafts
}

const NAME = 'hat.md'
const HALF_A_SECOND = 500
const normalise = (text: string): string => text.replace(/^\uFEFF/, '').replace(/\r\n?/g, '\n')

/** One text on the screen, from when it came. */
interface Shown {
  readonly text: string
  readonly from: number
  /** Whether the disk held it while it stood there. */
  isHeld: boolean
}

export async function play(ops: readonly Op[], fault: Fault = {}): Promise<readonly string[]> {
  const breaches: string[] = []
  const clock = createClock(look)
  const seen = new Set<string>()
  const ours = new Set<string>()
  const disk = createDisk(clock, (name, before) => {
    const text = before && normalise(toText(before))
    if (text !== undefined && !seen.has(text) && !ours.has(text))
      breaches.push(`wrote over a change in ${name}: ${text}`)
  })
  const storage = createDrafts(clock)
  const locks = createLocks()
  /** What the page of one opening sees. When it dies, what the server was asked goes on, but no answer comes back. */
  function createPage() {
    let isAlive = true
    const never = new Promise<never>(() => undefined)
    const own = clock.after
    const whileAlive = async <Value>(ask: () => Promise<Value>): Promise<Value> => {
      const answer = isAlive ? await ask() : await never
      return isAlive ? answer : never
    }
    const real: Folder = {
      ...disk.folder,
      read: (name) => whileAlive(() => disk.folder.read(name)),
      save(name, bytes, base) {
        if (isAlive) ours.add(normalise(toText(bytes)))
        return whileAlive(() => disk.folder.save(name, bytes, base))
      },
      watch: (onChange) => disk.folder.watch((names) => isAlive && onChange(names)),
    }
    const tools = {
      clock: { now: clock.now, after: (time: number, run: () => void) => own(time, () => isAlive && run()) },
      folder: fault.folder?.(real) ?? real,
      drafts: storage.open(),
      locks,
      createId: () => `${++ids}`,
    }
    const wait = (time: number): Promise<void> => new Promise((done) => tools.clock.after(time, done))
    return {
      tools: { ...tools, drafts: fault.drafts?.(tools.drafts, wait) ?? tools.drafts },
      die() {
        isAlive = false
      },
    }
  }
  let page = createPage()
  let keeper: Keeper | undefined
  let shown: Shown[] = []
  let past: string[] = []
  let owed: string[] = []
  let ids = 0
  disk.foreign(NAME, 'Tam had a hat.\r\nIt was red.\n')

  const screen = (): string => shown.at(-1)?.text ?? ''
  const texts = (): readonly string[] => [
    ...[...disk.files.values()].map((bytes) => normalise(toText(bytes))),
    ...[...storage.kept.values()].map(({ bytes }) => normalise(toText(bytes))),
  ]
  function look(): void {
    const top = shown.at(-1)
    if (top && normalise(disk.text(NAME) ?? '\0') === top.text) top.isHeld = true
  }
  /** @param isHeld it came from the disk, though a late save of an earlier page may have changed that since */
  function show(text: string, isHeld = false): void {
    if (shown.at(-1)?.text === text) return
    shown = [...shown.slice(-30), { text, from: clock.now(), isHeld }]
    seen.add(text)
    look()
  }
  async function open(): Promise<void> {
    page = createPage()
    const opening = openKeeper(NAME, page.tools)
    await clock.advance(1000)
    const opened = await opening
    if (!opened.ok) return
    keeper = opened.value
    shown = []
    past = []
    show(keeper.text(), keeper.state().kind === 'saved')
    owed = owed.filter((text) => text !== screen())
    keeper.subscribe((event) => {
      if (event.kind !== 'text') return
      const before = shown.at(-1)
      if (event.why === 'renewed' && before && !before.isHeld)
        breaches.push(`taken from the screen unasked: ${before.text}`)
      show(event.edits.reduceRight(applyTo, screen()), event.why !== 'draft')
    })
    const [left] = listLeft()
    if (left !== undefined && left !== screen() && left !== keeper.found()?.text)
      breaches.push(`is not offered again: ${left}`)
  }
  /** The texts of drafts that the disk does not hold, the newest first. */
  function listLeft(): readonly string[] {
    const newest = [...storage.kept.values()].sort((one, other) => other.at - one.at)
    return newest.filter(({ bytes }) => disk.text(NAME) !== toText(bytes)).map(({ bytes }) => normalise(toText(bytes)))
  }
  /** What stood there for half a second, or something newer, must lie somewhere. */
  function crash(): void {
    if (!keeper) return
    const since = clock.now() - HALF_A_SECOND
    const recent = shown.filter((_, at) => (shown[at + 1]?.from ?? Number.POSITIVE_INFINITY) > since)
    const there = texts()
    const saved = recent.filter(({ text, isHeld }) => isHeld || there.includes(text))
    const last = recent[0]
    if (last && last.from <= since && saved.length === 0) breaches.push(`lost in a crash: ${last.text}`)
    const newest = saved.at(-1)
    if (newest && !newest.isHeld) owed = [...owed, newest.text]
    keeper = undefined
    page.die()
    locks.crash()
  }
  function checkAll(): void {
    if (keeper && keeper.text() !== screen())
      breaches.push(`the screen shows ${screen()}, the keeper has ${keeper.text()}`)
    const there = texts()
    for (const text of owed)
      if (!there.includes(text) && screen() !== text) breaches.push(`a draft that nobody settled is gone: ${text}`)
    if (breaches.length > 0) owed = []
  }

  async function during(job: Promise<unknown>): Promise<void> {
    let isDone = false
    void job.then(() => (isDone = true))
    for (let second = 0; second < 20 && !isDone; second++) await clock.advance(1000)
    if (!isDone) breaches.push('does not come to an end')
  }
  const steps: { readonly [Kind in Op['kind']]: (op: Extract<Op, { kind: Kind }>) => Promise<void> } = {
    async edit({ at, length, text }) {
      if (!keeper || keeper.state().kind === 'read-only') return
      const before = screen()
      const start = toWhole(before, at % (before.length + 1))
      const edit = { start, end: toWhole(before, Math.min(before.length, start + length)), text }
      past.push(before)
      keeper.change([edit])
      show(applyTo(before, edit))
    },
    async undo() {
      const before = past.pop()
      if (before === undefined || !keeper) return
      keeper.change([{ start: 0, end: screen().length, text: before }])
      show(before)
    },
    wait: ({ milliseconds }) => clock.advance(milliseconds),
    save: async () => void keeper?.save(),
    async foreign({ text, isSeen }) {
      disk.foreign(NAME, text, isSeen)
      look()
    },
    async disk({ answering, latency }) {
      disk.set(answering, latency)
    },
    async drafts({ latency }) {
      storage.set(false, latency)
    },
    async crash() {
      await settle()
      crash()
      await open()
    },
    async close() {
      if (!keeper) return
      const closing = keeper.close()
      await during(closing)
      crash()
      await open()
    },
    async 'second tab'() {
      if (!keeper) return
      const opening = openKeeper(NAME, page.tools)
      await clock.advance(1000)
      const opened = await opening
      if (!opened.ok) return
      const before = opened.value.text()
      opened.value.change([{ start: 0, end: 0, text: 'From the second tab' }])
      if (opened.value.text() !== before) breaches.push('a second tab can be written in')
      await opened.value.close()
    },
    'take theirs': () => (keeper ? during(keeper.takeTheirs()) : Promise.resolve()),
    'save copy': () => (keeper ? during(keeper.saveCopy()) : Promise.resolve()),
    async 'take draft'() {
      if (keeper) await during(keeper.takeDraft())
      owed = owed.filter((text) => text !== screen())
    },
    async 'drop draft'() {
      const dropped = keeper?.found()?.text
      if (keeper) await during(keeper.dropDraft())
      owed = owed.filter((text) => text !== dropped)
    },
  }

  await open()
  for (const op of ops) {
    if (!keeper) await open()
    await (steps[op.kind] as (op: Op) => Promise<void>)(op)
    await settle()
    look()
    checkAll()
    if (breaches.length > 0) return breaches
  }
  await finish()
  return breaches

  /** With a folder that answers and time to rest, all is saved or the maker is asked. */
  async function finish(): Promise<void> {
    disk.set('well', 0)
    disk.foreign(NAME, disk.text(NAME))
    await clock.advance(30_000)
    checkAll()
    const kind = keeper?.state().kind
    if (kind === 'saved' && normalise(disk.text(NAME) ?? '\0') !== screen())
      breaches.push(`says saved, but the disk has ${disk.text(NAME)} for ${screen()}`)
    if (kind === 'unsaved' || kind === 'lost') breaches.push(`is still ${kind}`)
    crash()
  }
}

const applyTo = (text: string, { start, end, text: written }: TextEdit): string =>
  text.slice(0, start) + written + text.slice(end)

/** As an editor does, never inside a letter of two units. */
const toWhole = (text: string, at: number): number => (/[\uDC00-\uDFFF]/.test(text[at] ?? '') ? at + 1 : at)
