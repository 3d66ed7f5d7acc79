// What the worker's inside needs from outside: the files of the folder, data files by address, the day. Handed in, so that
// tests in Node can ask the same questions without a worker.

import type { DeskFiles } from './questions/data.ts'

export interface DeskHost {
  readonly files: DeskFiles
  fetch(address: string): Promise<Uint8Array>
  /** As `2026-09-14`: lessons of a later day do not count. */
  today(): string
}

/** What goes on while a question is answered. */
export interface Asking {
  /** Whether nobody waits any longer. */
  isDropped(): boolean
  progress(done: number, all: number): void
  /** Lets other questions in: to be awaited now and then by what takes long. */
  pause(): Promise<void>
}

export const ALONE: Asking = { isDropped: () => false, progress: () => undefined, pause: () => Promise.resolve() }

/** Thrown where nobody waits any longer. */
export class DroppedInside extends Error {}
