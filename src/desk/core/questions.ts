// The contract between the page and its worker: every question, and what comes back. Plain values, so that they can be sent.
//
// How it goes. The page makes the worker, calls `createDesk` (ask.ts) with it and with the files of the folder, asks `open`
// once, and then anything below. `desk.ask({ kind: 'check', story })` gives a promise of what `Answers['check']` says.
//
// Texts. A story's text is that of the editor: lines end with `\n`, whatever the file has. All offsets count in that text.
// Texts of other files (sequences, configs, readers) are as the file has them, and changes of them carry the text they count in.
//
// Files. The worker ASKS BACK: it sends `need` with a path, and ask.ts answers from the `DeskFiles` that it was given. So a
// folder of any kind is read when something of it is needed, and no sooner. What was read is remembered until the page says
// `changed` with the paths that are new, gone or other than they were. Paths count from the folder, with `/`: `red/tam.md`.
//
// Versions. A question about a story carries the version of its text, a number that grows; the answer says it again. A newer
// `check` of the same story drops one that still waits: its promise is rejected with a `Dropped`, and so is whatever is cancelled.
//
// Failures. What a person wrote never rejects a promise: problems come as values, in one clear line each. A promise is rejected
// only with `Dropped`, or with `DeskFault` where the worker itself broke (it is then started again; the message can be shown).

import type { About, AboutEdit, ReaderChoice } from './questions/about.ts'
import type { Book, BookWish, Printed, PrintWish } from './questions/book.ts'
import type { CardAnswer, FixAnswer, FixWish } from './questions/cards.ts'
import type { DeskData, Opened } from './questions/data.ts'
import type { SequenceEdit, SequenceNew, SequenceShown } from './questions/sequence.ts'
import type { Changed, StoryText, Tried } from './questions/shared.ts'
import type { ShelfAnswer } from './questions/shelf.ts'
import type { CheckAnswer } from './questions/story.ts'
import type { BankAnswer, BankWish, Choices, Completions } from './questions/words.ts'

export type { About, AboutEdit, Choice, ReaderChoice, SettingKey } from './questions/about.ts'
export type { Book, BookWish, Printed, PrintKind, PrintWish, Spread } from './questions/book.ts'
export type { Card, Fix, FixWish, Letters } from './questions/cards.ts'
export type { DeskData, DeskFiles, Listed, Opened, Part } from './questions/data.ts'
export type { SequenceEdit, SequenceItem, SequenceStep } from './questions/sequence.ts'
export type { Changed, DeskEdit, StoryText } from './questions/shared.ts'
export type { BookRow, ShelfAnswer } from './questions/shelf.ts'
export type { CheckAnswer, CheckedText, Mark, PageCount, Place } from './questions/story.ts'
export type { BankAnswer, BankWish, Choices, Completions } from './questions/words.ts'

/** Every question by its kind, with what it says beside that. */
export interface Questions {
  /** First of all, and once. Nothing large is fetched before it is needed. */
  open: { readonly data: DeskData }
  /** Files of the folder that are new, gone or changed (saved ones too); without paths, all may be. */
  changed: { readonly paths?: readonly string[] }

  check: { readonly story: StoryText }
  /** The card of a place: letters over example words, why, what to put instead, what else can be done. */
  card: { readonly story: StoryText; readonly place: number }
  /** The change that a fix makes where the maker must say something first: a reason, or a word of her own. */
  fix: { readonly story: StoryText; readonly place: number; readonly fix: FixWish }

  words: { readonly story: StoryText; readonly wish: BankWish }
  /** What can be chosen for `words`: patterns taught so far, vowels, kinds. */
  choices: { readonly story: StoryText }
  complete: { readonly story: StoryText; readonly at: number }

  about: { readonly story: StoryText }
  set: { readonly story: StoryText; readonly edit: AboutEdit }
  /** The readers of the folder, with what is wrong with those that cannot be read. */
  readers: { readonly story?: StoryText }

  /** All stories of the folder. `open` stands for the file of that name: what is on the screen and not saved yet. */
  shelf: { readonly open?: StoryText }

  /** @example { name: 'series' }, { name: 'sequences/ours.yaml' } */
  sequence: { readonly name: string; readonly text?: string }
  'edit sequence': { readonly path: string; readonly text?: string; readonly edit: SequenceEdit }
  'new sequence': { readonly sequence: SequenceNew }

  book: { readonly story: StoryText; readonly wish: BookWish }
  print: { readonly story?: StoryText; readonly wish: PrintWish }
}

export interface Answers {
  open: Opened
  changed: null
  check: CheckAnswer
  card: CardAnswer
  fix: FixAnswer
  words: BankAnswer
  choices: Tried<Choices>
  complete: Completions
  about: About
  set: Tried<Changed>
  readers: readonly ReaderChoice[]
  shelf: ShelfAnswer
  sequence: SequenceShown
  'edit sequence': Tried<Changed & { readonly shown: SequenceShown }>
  'new sequence': Tried<Changed & { readonly shown: SequenceShown }>
  book: Tried<Book>
  print: Tried<Printed>
}

export type Kind = keyof Questions
export type Question<K extends Kind = Kind> = { readonly [One in K]: { readonly kind: One } & Questions[One] }[K]
export type Answer<K extends Kind> = Answers[K]
