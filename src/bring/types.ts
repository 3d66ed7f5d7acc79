// What is found in a text that is brought in, before it becomes Markdown: pieces in order of place.

/** A stretch of letters of one look. A newline in it is a line that the writer ended. */
export interface Run {
  readonly text: string
  readonly bold: boolean
  readonly italic: boolean
}

export type PictureType = 'png' | 'jpg' | 'gif' | 'svg' | 'webp'

/** A picture inside the text (`bytes`), or one that it names by a path (`source`). */
export interface BroughtPicture {
  readonly alt: string
  readonly source: string | undefined
  readonly content: { readonly type: PictureType; readonly bytes: Uint8Array } | undefined
}

export type Piece =
  | { readonly kind: 'title' | 'heading' | 'text' | 'aside'; readonly runs: readonly Run[] }
  | { readonly kind: 'picture'; readonly picture: BroughtPicture }
  /** Where the writer began a new page. */
  | { readonly kind: 'break' }
  /** A line left empty. */
  | { readonly kind: 'gap' }

/** What could not be taken over, or was taken otherwise than it stood. */
export type NoteCode =
  | 'drawing'
  | 'empty-lines-are-pages'
  | 'encoding'
  | 'footnote'
  | 'header'
  | 'picture-kind'
  | 'picture-on-web'
  | 'pictures-are-pages'
  | 'table'

export interface Note {
  readonly code: NoteCode
  readonly count: number
}

export interface Brought {
  readonly pieces: readonly Piece[]
  readonly notes: readonly Note[]
  /** As the file itself names it, where no heading does. */
  readonly title: string | undefined
}

/** Why a file could not be brought in, in one sentence that follows its name: `is protected by a password. …`. */
export interface Unreadable {
  readonly unreadable: string
}
