// What is wrong with something that somebody wrote, as every loader tells it and every report is handed it.

/** Source offsets in UTF-16 units, end-exclusive. */
export interface Range {
  readonly start: number
  readonly end: number
}

/** Line and column from 1, as editors count them; the offset from 0. Columns are UTF-16 units. */
interface Point {
  readonly line: number
  readonly column: number
  readonly offset: number
}

/** Where in a file; the end is exclusive. */
export interface Place {
  readonly start: Point
  readonly end: Point
}

/** Who set a value: `default`, `battledore.yaml:3:7`, `top of the story, line 2`, `--step`; and where that stands, in a file. */
export interface Origin {
  readonly origin: string
  /** As shown to people. */
  readonly path?: string
  readonly at?: Place
}

/** A value and who set it. */
export interface Sourced<Value> extends Origin {
  readonly value: Value
}

/** What kind of mistake it is, for programs: docs/problems.md has a table of them. */
export type ProblemCode =
  | 'bad-example'
  | 'bad-font'
  | 'bad-picture'
  | 'bad-value'
  | 'binary'
  | 'broken-yaml'
  | 'changed-meanwhile'
  | 'circle'
  | 'crash'
  | 'dashes-below-text'
  | 'does-not-fit'
  | 'empty'
  | 'folder-lost'
  | 'foreign-file'
  | 'git'
  | 'in-use'
  | 'missing-file'
  | 'missing-key'
  | 'missing-letter'
  | 'no-step'
  | 'no-words'
  | 'not-json'
  | 'open-comment'
  | 'other-language'
  | 'outside-folder'
  | 'repeated'
  | 'taken-back'
  | 'text-in-html'
  | 'too-deep'
  | 'too-large'
  | 'unknown-key'
  | 'unknown-name'
  | 'unreadable-file'
  | 'unused-file'

export interface Problem {
  readonly code: ProblemCode
  readonly severity: 'error' | 'warning'
  /** What is wrong: one sentence without its full stop, without a place and without a guess at what was meant. */
  readonly message: string
  /** What was probably meant, the likeliest first. */
  readonly expected: readonly string[]
  /** What to do, as whole sentences. */
  readonly note?: string
  /** The file to mend, as shown to people; missing where no file is to blame. */
  readonly path?: string
  /** Missing where it is about the file as a whole. */
  readonly place?: Place
  /** Who set the value that is to blame, or that names the file with the mistake. */
  readonly setBy?: Origin
}

/** A value, or the problems for which there is none. */
export type Result<Value> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly problems: readonly Problem[] }
