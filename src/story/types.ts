// A story as the rest of the program sees it: pages, blocks, sentences and words, each with its exact place in the source.

import type { Problem, ProblemCode, Range } from '../problem/index.ts'

export type { Range } from '../problem/index.ts'

export interface Story {
  /** The whole source text, untouched. */
  readonly source: string
  readonly frontMatter: FrontMatter | undefined
  /** The story's title: the first heading of depth 1, when nothing but comments or an image stands before it. */
  readonly title: Block | undefined
  /** Pages in order; at least one when the story has any text. */
  readonly pages: readonly Page[]
  /** Pictures in order of place, those in notes among them. */
  readonly pictures: readonly Picture[]
  /** What is for the adult, in order of place: block quotes, footnotes, and the credits at the end. */
  readonly notes: readonly Note[]
  /** HTML comments in order of place, for switches. */
  readonly comments: readonly StoryComment[]
  /** What could not be read as meant, in order of place; an error keeps the story from being checked. Without a path. */
  readonly problems: readonly Problem[]
}

/** The YAML between the opening `---` lines, not yet parsed. */
export interface FrontMatter extends Range {
  readonly value: string
  /** Offset of the first character of `value` in the source. */
  readonly valueStart: number
}

export interface Page extends Range {
  /** From 1, in order. */
  readonly number: number
  readonly blocks: readonly Block[]
}

/** A paragraph, heading, list item paragraph or table cell that a child reads. */
export interface Block extends Range {
  readonly kind: 'title' | 'heading' | 'paragraph'
  /** What a child reads: the text of the inline nodes joined, breaks as one newline. */
  readonly text: string
  readonly sentences: readonly Sentence[]
  /** What stands in bold or italics, in order of place; the outer of two first. */
  readonly emphasis: readonly Emphasis[]
  /** The source offset of a text offset. `text.length` gives the end of the last letter. */
  toSource(textOffset: number): number
}

/** A stretch of a text that Markdown emphasises: `**sh**` in `**sh**ip`. The range holds its marks too. */
export interface Emphasis extends Range {
  /** One mark is `emphasis`, two are `strong`. */
  readonly kind: 'emphasis' | 'strong'
  /** Text offsets in the block: the `sh` alone. */
  readonly textStart: number
  readonly textEnd: number
}

/** A picture by Markdown, `![alt](source "title")` or by a reference; the range holds all of it. One in HTML is none. */
export interface Picture extends Range {
  /** As written, escapes and character references resolved: `pictures/hen.png`. */
  readonly source: string
  /** Empty where none is given. */
  readonly alt: string
  readonly title: string | undefined
  /** The page that it stands on. */
  readonly page: number
  /** Whether it is for the adult: in a block quote, a footnote or the credits. */
  readonly inNote: boolean
}

/** A paragraph or heading for the adult; the child does not read it. */
export interface Note extends Range {
  readonly kind: 'quote' | 'footnote' | 'credits'
  /** Without Markdown, breaks as one newline. */
  readonly text: string
  readonly emphasis: readonly Emphasis[]
  /** The page that it stands on: the first for what stands before it, the last for the credits. */
  readonly page: number
  /** The source offset of a text offset. */
  toSource(textOffset: number): number
}

export interface Sentence extends Range {
  readonly block: Block
  /** Text offsets in the block. */
  readonly textStart: number
  readonly textEnd: number
  readonly words: readonly Word[]
  /** Punctuation and symbols, in order of place. */
  readonly marks: readonly Mark[]
}

export interface Word extends Range {
  /** The word as written, without Markdown, soft hyphens removed: `sheep` for `sh**ee**p`. */
  readonly text: string
  /** `word` has letters of the Latin alphabet; `numeral` is digits (`6`, `3rd`); `foreign` has other letters. */
  readonly form: 'word' | 'numeral' | 'foreign'
  /** Text offset of the word in its block. */
  readonly textStart: number
  readonly page: number
  /** The source range of the letters from..to of `text`. */
  toSource(from: number, to: number): Range
}

/** A mark of punctuation or a symbol: `.`, `,`, `“`, `…`, `😀`. */
export interface Mark extends Range {
  readonly text: string
}

export interface StoryComment extends Range {
  /** Between `<!--` and `-->`, trimmed. */
  readonly value: string
  /** Offset of the first character of `value`. */
  readonly valueStart: number
  /** Whether other text stands on the comment's own line. */
  readonly inline: boolean
  /** The range of the next block that a child reads, if there is one. */
  readonly nextBlock: Range | undefined
}

/** What could not be read as meant, before its line and column are asked for. */
export interface Oddity extends Range, Pick<Problem, 'message'> {
  readonly code: Extract<
    ProblemCode,
    | 'too-deep'
    | 'too-large'
    | 'binary'
    | 'empty'
    | 'other-language'
    | 'open-comment'
    | 'dashes-below-text'
    | 'text-in-html'
  >
}

/** How a story is cut into pages and what is for the child. */
export interface StoryOptions {
  /** `auto`: thematic breaks where the file has one, else headings of the depth that occurs more than once; a number: headings of that depth. */
  readonly pages?: 'auto' | 'rule' | 1 | 2 | 3 | 4 | 5 | 6
  /** Whether the title's words count. Default true. */
  readonly countTitle?: boolean
  /** Whether headings other than the title are read by the child. Default true. */
  readonly countHeadings?: boolean
}
