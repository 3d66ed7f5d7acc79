// The page as its parts are handed it: what it knows, and whom it asks.

import type { Signal } from '@preact/signals'
import { createContext } from 'preact'
import { useContext } from 'preact/hooks'
import type { Problem, Result } from '../problem/index.ts'
import type { Folder, Keeper } from './folder/types.ts'
import type { Asker, State } from './state.ts'

/** What the page is started with; how it came by them is none of its business. */
export interface PageTools extends Asker {
  readonly folder: Folder
  readonly cspNonce: string | undefined
  open(name: string, fresh?: string): Promise<Result<Keeper>>
  /** Texts that this browser keeps and no file may hold, the newest first. */
  listDrafts(): Promise<readonly LeftBehind[]>
  /** Hands a file over to the maker: a PDF, a copy of a story. */
  download(name: string, bytes: Uint8Array, type: string): void
  /** Shows a PDF in a tab of its own. */
  show(name: string, bytes: Uint8Array, type: string): void
}

export interface LeftBehind {
  readonly name: string
  /** Milliseconds since 1970. */
  readonly at: number
}

export interface Page {
  readonly state: State
  readonly tools: PageTools
  readonly voice: Voice
}

/** The one polite status line. */
export interface Voice {
  readonly said: Signal<string>
  /** Said when nobody types: at once after a press of a button, otherwise after a rest. */
  say(text: string): void
  /** Somebody has typed. */
  hush(): void
}

export const PageContext = createContext<Page | undefined>(undefined)

/** @throws Error outside of the page: a mistake of ours */
export function usePage(): Page {
  const page = useContext(PageContext)
  if (page === undefined) throw new Error('no page around this part')
  return page
}

/** One line for the maker, with what was probably meant and what to do; with its file and place where that is not the story. */
export type Told = Pick<Problem, 'message' | 'note' | 'expected' | 'path' | 'place'>
