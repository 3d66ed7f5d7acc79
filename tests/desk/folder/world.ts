// A world for open stories without waiting: a clock that is moved by hand, a disk that other programs write on, drafts that
// outlive a crash, and answers that take their time or get lost.

import type { Clock, Draft, Drafts, FileBytes, Folder, Locks, Saved, Version } from '../../../src/desk/folder/types.ts'
import { fail, type Result, succeed, toProblem, toProblemText } from '../../../src/problem/index.ts'

export interface TestClock extends Clock {
  /** Runs what is due on the way, and lets every promise settle. */
  advance(milliseconds: number): Promise<void>
  /** Whoever waits, waits in vain. */
  clear(): void
}

/** All promises that can go on have gone on. */
export const settle = (): Promise<void> => new Promise((done) => setImmediate(done))

export function createClock(onMove: () => void = () => undefined): TestClock {
  let now = 1_000_000
  let count = 0
  const waiting = new Map<number, { readonly at: number; readonly run: () => void }>()
  const findNext = () => [...waiting].sort(([one, a], [other, b]) => a.at - b.at || one - other)[0]
  return {
    now: () => now,
    clear: () => waiting.clear(),
    after(milliseconds, run) {
      const id = count++
      waiting.set(id, { at: now + milliseconds, run })
      return () => waiting.delete(id)
    },
    async advance(milliseconds) {
      const end = now + milliseconds
      await settle()
      for (let next = findNext(); next && next[1].at <= end; next = findNext()) {
        const [id, { at, run }] = next
        waiting.delete(id)
        now = Math.max(now, at)
        onMove()
        run()
        await settle()
      }
      now = end
      onMove()
    },
  }
}

export type Answering = 'well' | 'full' | 'never came' | 'answer lost'

export interface TestDisk {
  readonly files: Map<string, Uint8Array>
  folder: Folder
  /** Another program writes, or removes with undefined. `isSeen`: whether the watcher notices. */
  foreign(name: string, text: string | undefined, isSeen?: boolean): void
  text(name: string): string | undefined
  /** Nobody watches any more. */
  forget(): void
  /** How saves are answered from now on, and how long an answer takes. */
  set(answering: Answering, latency?: number): void
}

export const toText = (bytes: Uint8Array): string => new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytes)
const toBytes = (text: string): Uint8Array => new TextEncoder().encode(text)
const toVersion = (bytes: Uint8Array): Version => `v:${toText(bytes)}`

const LOST = toProblem({ code: 'folder-lost', message: 'The folder does not answer' })
const FULL = toProblem({ code: 'unreadable-file', message: 'The disk is full' })

/** @param onSave hears of each file just before it is written from the desk */
export function createDisk(clock: Clock, onSave: (name: string, before: Uint8Array | undefined) => void): TestDisk {
  const files = new Map<string, Uint8Array>()
  const watchers = new Set<(names: readonly string[] | undefined) => void>()
  let answering: Answering = 'well'
  let latency = 0
  const later = (share: number): Promise<void> =>
    latency === 0 ? Promise.resolve() : new Promise((done) => clock.after(latency * share, done))
  const toFile = (name: string): FileBytes | undefined => {
    const bytes = files.get(name)
    return bytes && { name, bytes, version: toVersion(bytes) }
  }
  const isGone = (): boolean => answering === 'never came' || answering === 'answer lost'
  const folder: Folder = {
    ...{ kind: 'served', id: 'folder', label: 'Tansy Lane' },
    list: async () => succeed([]),
    async read(name) {
      await later(0.5)
      if (isGone()) return fail(LOST)
      const file = toFile(name)
      await later(0.5)
      return file ? succeed(file) : fail({ code: 'missing-file', message: `\`${name}\` is not there` })
    },
    async save(name, bytes, base): Promise<Saved> {
      await later(0.5)
      const how = answering
      if (how === 'never came') return { kind: 'lost', problem: LOST }
      if (how === 'full') return { kind: 'refused', problem: FULL }
      const theirs = toFile(name)
      const isAsMeant = base === 'new' ? theirs === undefined : theirs?.version === base
      if (isAsMeant) {
        onSave(name, theirs?.bytes)
        files.set(name, bytes)
      }
      await later(0.5)
      if (how === 'answer lost') return { kind: 'lost', problem: LOST }
      return isAsMeant ? { kind: 'saved', version: toVersion(bytes) } : { kind: 'changed', theirs }
    },
    watch(onChange) {
      watchers.add(onChange)
      return () => watchers.delete(onChange)
    },
  }
  return {
    ...{ files, folder },
    forget: () => watchers.clear(),
    foreign(name, text, isSeen = true) {
      if (text === undefined) files.delete(name)
      else files.set(name, toBytes(text))
      if (isSeen) for (const watcher of [...watchers]) watcher([name])
    },
    text: (name) => {
      const bytes = files.get(name)
      return bytes && toText(bytes)
    },
    set(next, milliseconds = latency) {
      answering = next
      latency = milliseconds
    },
  }
}

export interface TestDrafts {
  readonly kept: Map<string, Draft>
  /** Those of the page that is open now; what an earlier page has under way is gone with it. */
  open(): Drafts
  set(isFull: boolean, latency?: number): void
}

export function createDrafts(clock: Clock): TestDrafts {
  const kept = new Map<string, Draft>()
  let page = 0
  let isFull = false
  let latency = 0
  let turn = 0
  return {
    kept,
    set(full, milliseconds = latency) {
      isFull = full
      latency = milliseconds
    },
    open() {
      const own = ++page
      const inTime = async (run: () => void): Promise<void> => {
        // Now quick, now slow, so that what was asked first is not always done first.
        if (latency > 0) await new Promise<void>((done) => clock.after(latency / ((turn++ % 2) + 1), done))
        if (own === page) run()
      }
      return {
        async put(draft) {
          if (isFull) return fail({ code: 'unreadable-file', message: 'This browser keeps no drafts' })
          await inTime(() => kept.set(draft.id, draft))
          return succeed(undefined)
        },
        async list(folder) {
          const own = [...kept.values()].filter((draft) => draft.folder === folder)
          return succeed(own.sort((one, other) => other.at - one.at))
        },
        async remove(id) {
          await inTime(() => kept.delete(id))
          return succeed(undefined)
        },
      }
    },
  }
}

/** Locks that a crash lets go, as those of a browser. */
export function createLocks(): Locks & { crash(): void } {
  const held = new Set<string>()
  return {
    async take(key) {
      if (held.has(key)) return undefined
      held.add(key)
      return () => held.delete(key)
    },
    crash: () => held.clear(),
  }
}

export function toValue<Value>(result: Result<Value>): Value {
  if (!result.ok) throw new Error(result.problems.map(toProblemText).join(' '))
  return result.value
}
