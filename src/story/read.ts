// Reads a story: Markdown source → pages, sentences and words, each with its place.

import type { Paragraph } from 'nlcst'
import { withoutAddresses } from './addresses.ts'
import { toAsides } from './asides.ts'
import { toBlock } from './block.ts'
import { addNextBlocks } from './comments.ts'
import { parseEnglish } from './english.ts'
import { findObstacle, tooDeep } from './guard.ts'
import { findForeignLanguage } from './language.ts'
import { withSingleLetters } from './ligatures.ts'
import type { Lines } from './lines.ts'
import { addToOutline, createOutline, type HeadingPiece, type Outline, type TextPiece } from './outline.ts'
import { cutPages } from './pages.ts'
import { type ParsedPiece, parseMarkdown } from './parse.ts'
import { toStoryProblems } from './problems.ts'
import type { Block, Oddity, Page, Story, StoryOptions } from './types.ts'

/**
 * Read a story from Markdown. Never throws: what cannot be read is among the story's problems.
 *
 * Offsets are UTF-16 units of the source as given, byte order mark and CRLF included.
 */
export function readStory(source: string, options: StoryOptions = {}): Story {
  const obstacle = findObstacle(source)
  if (obstacle) return toEmptyStory(source, [obstacle])
  try {
    return buildStory(source, outlineSource(source), options).story
  } catch (error) {
    if (!(error instanceof RangeError)) throw error
    return toEmptyStory(source, [tooDeep(0, source.length)])
  }
}

function outlineSource(source: string): Outline {
  return outlinePieces(source, parseMarkdown(source))
}

/** The outline of a source that has been parsed already. */
export function outlinePieces(source: string, pieces: Iterable<ParsedPiece>): Outline {
  const outline = createOutline()
  for (const piece of pieces) addToOutline(outline, source, piece, parseMarkdown)
  return outline
}

export interface BuiltStory {
  readonly story: Story
  /** The parsed sentences of each block that is read, in order of place; none where no `lines` were given. */
  readonly paragraphs: readonly Paragraph[]
}

/**
 * Cut an outline into pages, and find the sentences and words of all that a child reads. The nodes of the paragraphs
 * have places where `lines` are given.
 */
export function buildStory(source: string, outline: Outline, options: StoryOptions, lines?: Lines): BuiltStory {
  const { countTitle = true, countHeadings = true } = options
  const cut = cutPages(outline.pieces, options.pages)
  const paragraphs: Paragraph[] = []
  let title: Block | undefined
  const read = (piece: TextPiece | HeadingPiece, page: number): Block[] => {
    const isTitle = piece === cut.title
    const kind = isTitle ? 'title' : piece.kind === 'heading' ? 'heading' : 'paragraph'
    const isCounted = isTitle ? countTitle : kind === 'paragraph' || countHeadings
    if (!isCounted && !isTitle) return []
    const map = withoutAddresses(withSingleLetters(piece.map))
    const paragraph = parseEnglish(map, lines)
    const block = toBlock(kind, map, paragraph, piece, page)
    if (isTitle) title = block
    if (isCounted && lines) paragraphs.push(paragraph)
    return isCounted ? [block] : []
  }
  const pages: Page[] = cut.pages.map(({ start, end, pieces }, index) => {
    const number = index + 1
    return { number, start, end, blocks: pieces.flatMap((it) => read(it, number)) }
  })
  const blocks = pages.flatMap((it) => it.blocks)
  const comments = addNextBlocks(outline.comments, blocks)
  const found = [...outline.problems, ...findTextProblems(source, blocks)].sort((a, b) => a.start - b.start)
  const problems = toStoryProblems(found, source)
  const { frontMatter } = outline
  const asides = toAsides(outline, cut, pages)
  return { story: { source, frontMatter, title, pages, ...asides, comments, problems }, paragraphs }
}

function findTextProblems(source: string, blocks: readonly Block[]): Oddity[] {
  const words: string[] = []
  let foreign = 0
  for (const block of blocks) {
    for (const sentence of block.sentences) {
      for (const word of sentence.words) {
        words.push(word.text)
        if (word.form === 'foreign') foreign++
      }
    }
  }
  if (words.length === 0) {
    return [{ code: 'empty', message: 'There is no text for a child to read here.', start: 0, end: source.length }]
  }
  const language = findForeignLanguage(words, foreign)
  const start = blocks[0]?.start ?? 0
  const end = blocks.at(-1)?.end ?? start
  if (language === undefined) return []
  return [{ code: 'other-language', message: `This looks like ${language}, not English.`, start, end }]
}

function toEmptyStory(source: string, found: readonly Oddity[]): Story {
  return {
    source,
    frontMatter: undefined,
    title: undefined,
    pages: [],
    pictures: [],
    notes: [],
    comments: [],
    problems: toStoryProblems(found, source),
  }
}
