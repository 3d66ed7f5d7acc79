// The data files of the program, and the files of the folder, as they are handed to the worker.

/**
 * One data file: its address (fetched when it is first needed), its bytes, or its bytes as base64 (decoded in the worker, so
 * that the page is not held up). `packed` says how it must be unpacked. `lists.bin` is built as `deflate`, said or not.
 */
export type Part = ({ readonly address: string } | { readonly bytes: Uint8Array } | { readonly base64: string }) & {
  readonly packed?: 'gzip' | 'deflate' | 'deflate-raw'
}

/** The names are those of the files in dist/. */
export interface DeskData {
  readonly lexicon: Part
  readonly words: Part
  readonly lists: Part
  /** By name without `.json`: a few kilobytes each. */
  readonly sequences: Readonly<Record<string, Part>>
  /** For Book and Print: `andika.ttf`, `andika-bold.ttf` and others of dist/fonts. Without them, neither works, and says so. */
  readonly fonts?: Readonly<Record<string, Part>>
  /** `pictures.json`, for cards. */
  readonly pictures?: Part
}

export interface Opened {
  /** Names of the built-in sequences, in order. */
  readonly sequences: readonly string[]
  /** Names of letters that can be printed with. */
  readonly letters: readonly string[]
}

export interface Listed {
  /** All files that matter: stories, .yaml, pictures. Paths in the folder, with `/`, in any order. */
  readonly list: readonly string[]
  /** Those that stand on the shelf, where the folder knows what is left out; otherwise their names tell. */
  readonly stories?: readonly string[]
}

/** The folder, as ask.ts is given it. Both may reject: the message is told as why the file cannot be read. */
export interface DeskFiles {
  list(): Promise<Listed>
  /** Undefined where there is none. The bytes are not kept by the page: they are transferred. */
  read(path: string): Promise<Uint8Array | undefined>
}
