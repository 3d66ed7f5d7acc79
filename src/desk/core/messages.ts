// What goes to and fro between page and worker.

import type { Answers, Kind, Listed, Question } from './questions.ts'

export type ToWorker =
  | { readonly id: number; readonly question: Question }
  /** Nobody waits for it any longer. */
  | { readonly drop: number }
  | ({ readonly need: number } & Given)

/** What the page gives for a need: the list of files, the bytes of one, nothing where there is none, or why not. */
export type Given = Listed | { readonly bytes: Uint8Array | undefined } | { readonly refused: string }

export type FromWorker =
  | { readonly id: number; readonly answer: Answers[Kind] }
  | { readonly id: number; readonly done: number; readonly all: number }
  | { readonly id: number; readonly dropped: true }
  /** A fault of ours: the question broke off, the worker still stands. */
  | { readonly id: number; readonly fault: string }
  /** Without a path, the list of files is wanted. */
  | { readonly need: number; readonly path?: string }
