// What the page knows: which place is looked at, which story is open, what is said in the status line. Signals, so that what shows them follows.

import type { EditorView } from '@codemirror/view'
import { computed, type ReadonlySignal, type Signal, signal } from '@preact/signals'
import type { AskOptions } from './core/ask.ts'
import type { Answer, BookWish, Card, CheckAnswer, Kind, Opened, Question, StoryText } from './core/questions.ts'
import type { FoundDraft, Keeper, KeeperState } from './folder/types.ts'

export type PlaceName = 'shelf' | 'write' | 'book'
export type PanelName = 'places' | 'words' | 'about'

/** What the page asks its worker with: a `Dropped` where a newer question of its kind has come. */
export interface Asker {
  ask<K extends Kind>(question: Question<K>, options?: AskOptions): Promise<Answer<K>>
}

/** One open story. */
export interface Session {
  readonly keeper: Keeper
  readonly view: EditorView
  /** Grows with every change of the text, the settings or the reader. */
  readonly version: Signal<number>
  readonly saved: Signal<KeeperState>
  /** Of the newest text that was checked. */
  readonly check: Signal<CheckAnswer | undefined>
  /** The place whose card is open, by its number in `check`. */
  readonly place: Signal<number | undefined>
  readonly card: Signal<Card | undefined>
  /** Counts the cards that were opened: what is half typed in one stays when its text is checked anew. */
  readonly opening: Signal<number>
  readonly reader: Signal<string | undefined>
  readonly title: Signal<string>
  /** The place whose card is open is being mended: the next one opens by itself. */
  readonly goesOn: Signal<boolean>
  readonly isFile: Signal<boolean>
  readonly canUndo: Signal<boolean>
  readonly canRedo: Signal<boolean>
  /** Of the draft that waits, and what the browser cannot keep. */
  readonly draft: Signal<FoundDraft | undefined>
  readonly noDrafts: Signal<string | undefined>
  toStory(): StoryText
  /** Checks anew, also where nothing was typed: a reader, a sequence or a setting of the folder has changed. */
  recheck(): void
  close(): Promise<void>
}

/** A question or a sheet over the page, one at a time. */
type Dialog =
  | { readonly kind: 'new'; readonly copyOf?: string }
  | { readonly kind: 'print' }
  | { readonly kind: 'sequence'; readonly name: string }
  /** Two texts side by side, with what each is called. */
  | {
      readonly kind: 'both'
      readonly title: string
      readonly names: readonly [string, string]
      readonly texts: readonly [string, string]
    }

export interface State {
  readonly place: Signal<PlaceName>
  readonly panel: Signal<PanelName>
  /** On a narrow screen the panel lies below the text and can be put away. */
  readonly isPanelUp: Signal<boolean>
  readonly opened: Signal<Opened | undefined>
  readonly session: Signal<Session | undefined>
  readonly dialog: Signal<Dialog | undefined>
  /** The next card that opens takes the keys: it was asked for by a key or a button, not by a tap on the text. */
  readonly wantsCard: Signal<boolean>
  /** What went wrong and stays until it is put away. */
  readonly trouble: Signal<string | undefined>
  /** Of the open story, for the bar. */
  readonly title: ReadonlySignal<string | undefined>
  /** Which pages lie open in the book, and how the book is made. */
  readonly spread: Signal<number>
  readonly bookWish: Signal<BookWish>
  /** Counts what was saved or changed on the disk, so that the shelf is read again. */
  readonly shelfAge: Signal<number>
}

export function createState(): State {
  const session = signal<Session | undefined>(undefined)
  return {
    place: signal<PlaceName>('shelf'),
    panel: signal<PanelName>('places'),
    isPanelUp: signal(matchMedia('(min-width: 56rem)').matches),
    opened: signal(undefined),
    session,
    dialog: signal(undefined),
    wantsCard: signal(false),
    trouble: signal(undefined),
    title: computed(() => session.value?.title.value),
    spread: signal(0),
    bookWish: signal<BookWish>({ paper: 'a4', letters: 'andika', size: 'usual', fold: 'staple' }),
    shelfAge: signal(0),
  }
}
