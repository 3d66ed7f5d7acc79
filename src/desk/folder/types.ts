// Where stories lie, and how one open story is kept: what the page asks, whichever of the three kinds of folder answers.

import type { Problem, Result } from '../../problem/index.ts'

/**
 * `served` by `battledore desk`; `picked` by the maker in a browser that can; `single`: files are opened one by one and
 * saving downloads them, so that nothing is stored by itself.
 */
type FolderKind = 'served' | 'picked' | 'single'

/** Which bytes a file had: `sha256-` and the hash as hexadecimal digits. */
export type Version = string

/** By name. Stories and YAML (settings, sequences, readers) can be read and saved; pictures only read. */
type FileSort = 'story' | 'yaml' | 'picture'

export interface FileEntry {
  /** Counts from the folder, with forward slashes and no `.` or `..`: `tansy-lane/03-the-hen.md`. */
  readonly name: string
  readonly sort: FileSort
  /** In bytes. */
  readonly size: number
  /** Of a story, where the folder knows: whether `battledore check` leaves it out. */
  readonly isLeftOut?: boolean
}

export interface FileBytes {
  readonly name: string
  readonly bytes: Uint8Array
  readonly version: Version
  /** Why it cannot be saved, known before anybody tries: write-protected, or the folder is. */
  readonly locked?: Problem
}

/** What came of a save. A file is written whole or not at all. */
export type Saved =
  | { readonly kind: 'saved'; readonly version: Version }
  /** Nothing was written: the disk holds other bytes than the save began from; undefined where the file is gone. */
  | { readonly kind: 'changed'; readonly theirs: FileBytes | undefined }
  /** Nothing was written: no room, no permission, a name that is not allowed. */
  | { readonly kind: 'refused'; readonly problem: Problem }
  /** Nothing answers: the desk was closed, the permission is gone, the stick was pulled out. */
  | { readonly kind: 'lost'; readonly problem: Problem }

export interface Folder {
  readonly kind: FolderKind
  /** The same for the same folder at the next opening; drafts are kept under it. */
  readonly id: string
  /** As shown to people. */
  readonly label: string
  /** By name, in the order of a shelf. Folders that begin with a dot and `node_modules` are left out. */
  list(): Promise<Result<readonly FileEntry[]>>
  /** `missing-file` where there is none. A picture, a sequence, a reader and the settings are read in the same way. */
  read(name: string): Promise<Result<FileBytes>>
  /** @param base the version that is changed; `new` for a file that must not be there yet */
  save(name: string, bytes: Uint8Array, base: Version | 'new'): Promise<Saved>
  /**
   * Tells the names whose bytes may have changed, by us or by another program; without names, any may have. Only where
   * the folder can know, and as soon as it can (a picked folder asks when the window is looked at again).
   * @returns a function that stops it
   */
  watch(onChange: (names: readonly string[] | undefined) => void): () => void
}

/** A replacement in the text of the editor: offsets of that text (UTF-16 units, `\n` alone), end-exclusive. */
export interface TextEdit {
  readonly start: number
  readonly end: number
  readonly text: string
}

/** How an open story stands. `at` is in milliseconds since 1970. */
export type KeeperState =
  /** The disk holds what the screen shows. `at`: when it was saved from here; undefined if it was only opened. */
  | { readonly kind: 'saved'; readonly at: number | undefined }
  /** It will be saved by itself. With `problem`: it was tried and refused (disk full); the draft holds the text. */
  | { readonly kind: 'unsaved'; readonly since: number; readonly problem?: Problem }
  /** Another program has changed or removed the file. Nothing is written until the maker has chosen. */
  | { readonly kind: 'conflict'; readonly theirs: string | undefined }
  /** The folder does not answer. It is asked again by itself; the draft holds the text. */
  | { readonly kind: 'lost'; readonly problem: Problem }
  /** It can be looked at only: open in another tab, not UTF-8, write-protected. `change` does nothing. */
  | { readonly kind: 'read-only'; readonly problem: Problem }

export type KeeperEvent =
  | { readonly kind: 'state'; readonly state: KeeperState }
  /**
   * The text is now another one: theirs was taken, a draft was taken, or the disk changed while nothing was unsaved. The
   * editor puts these edits in (so that undo goes back over them) and does NOT hand them to `change`.
   */
  | { readonly kind: 'text'; readonly edits: readonly TextEdit[]; readonly why: 'theirs' | 'draft' | 'renewed' }
  /** The draft that `found` told of has been taken or thrown away. */
  | { readonly kind: 'draft-settled' }
  /** The browser keeps no drafts (private window, no room); told once, and the bar should say so. */
  | { readonly kind: 'no-drafts'; readonly problem: Problem }

/** Changes that were not saved when the desk was last closed; the newest, if several were left behind. */
export interface FoundDraft {
  readonly text: string
  /** Milliseconds since 1970. */
  readonly at: number
  /** Whether the file has been changed since by another program: taking the draft then leads to a conflict. */
  readonly isBehind: boolean
}

/** One open story. It saves by itself: after 1.5 s of rest and at least every 10 s; the draft follows within 0.5 s. */
export interface Keeper {
  readonly name: string
  /** As it stands, with `\n` alone and without a byte order mark: what the editor begins with. */
  text(): string
  /** As it was when it was opened. */
  readonly original: string
  state(): KeeperState
  /** A draft of an earlier opening that waits to be taken or thrown away; then the next older one, if there is one. */
  found(): FoundDraft | undefined
  /** Every change of the editor, undo and redo among them: all edits of one transaction, in order, none touching. */
  change(edits: readonly TextEdit[]): void
  /** Saves now; answers when it is done. */
  save(): Promise<KeeperState>
  /** Out of a conflict: what the disk holds comes into the editor; mine stays one undo away and in no file. */
  takeTheirs(): Promise<Result<undefined>>
  /**
   * Out of any trouble: mine as a new file, whose name comes back; then the story is what the disk has of it. A story that
   * is gone from the disk gets its own name again.
   */
  saveCopy(): Promise<Result<string>>
  /** What the screen shows and no file holds is kept as a draft in its place. */
  takeDraft(): Promise<Result<undefined>>
  dropDraft(): Promise<Result<undefined>>
  /** @returns a function that stops it */
  subscribe(listener: (event: KeeperEvent) => void): () => void
  /** What is to be downloaded where no folder can take it: byte for byte what would be saved. */
  bytes(): Uint8Array
  /** Saves what can be saved, keeps a draft of what cannot, and lets another tab write. */
  close(): Promise<void>
}

/** Handed in, so that a test needs not wait. */
export interface Clock {
  /** Milliseconds since 1970. */
  now(): number
  /** @returns a function that calls it off */
  after(milliseconds: number, run: () => void): () => void
}

/** The bytes that would have been saved, and the version they change. */
export interface Draft {
  /** One for each opening of a story: what an earlier opening left behind is never written over. */
  readonly id: string
  /** `Folder.id` */
  readonly folder: string
  readonly name: string
  readonly bytes: Uint8Array
  readonly base: Version | 'new'
  /** What a save under way was writing: if the disk holds just that, it is ours and no foreign change. */
  readonly saving?: Uint8Array
  /** Milliseconds since 1970. */
  readonly at: number
}

/** Kept in the browser; a failure comes as a value, never thrown. */
export interface Drafts {
  put(draft: Draft): Promise<Result<undefined>>
  /** All of a folder, the newest first: the shelf shows those of which the disk has no story. */
  list(folder: string): Promise<Result<readonly Draft[]>>
  remove(id: string): Promise<Result<undefined>>
}

/** Held while a story is open for writing. Undefined where another tab holds it. */
export interface Locks {
  take(key: string): Promise<(() => void) | undefined>
}

export interface KeeperTools {
  /** For the draft of this opening: `crypto.randomUUID()`. */
  createId(): string
  readonly folder: Folder
  readonly drafts: Drafts
  readonly locks: Locks
  readonly clock: Clock
}

/** `src/desk/folder/keeper.ts` gives it. With `fresh`, a story that is not on the disk yet, under a name that is free. */
export type OpenKeeper = (name: string, tools: KeeperTools, fresh?: string) => Promise<Result<Keeper>>
