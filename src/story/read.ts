// Reads a story: Markdown source → pages, sentences and words, each with its place.

import type { Paragraph } from 'nlcst'
import { withoutAddresses } from './addresses.ts'
import { toAsides } from './asides.ts'
import { toBlock } from './block.ts'
import { addNextBlocks } from './comments.ts'
import { parseEnglish } from './english.ts'
import { findObstacle, tooDeep } from './guard.ts'
import { findForeignLanguage, maxSample } from './language.ts'
import { withSingleLetters } from './ligatures.ts'
import type { Lines } from './lines.ts'
import {
  addToOutline,
  createOutline,
  type HeadingPiece,
  type Outline,
  type TextPiece,
  type WordCount,
} from './outline.ts'
import { cutPages } from './pages.ts'
import { type ParsedPiece, parseMarkdown } from './parse.ts'
import { toPlainBlock } from './plain-block.ts'
import { toStoryProblems } from './problems.ts'
import type { TextMap } from './text-map.ts'
import type { Block, Oddity, Page, Range, Story, StoryOptions } from './types.ts'

/**
 * Read a story from Markdown. Never throws: what cannot be read is among the story's problems.
 *
 * Offsets are UTF-16 units of the source as given, byte order mark and CRLF included.
 */
export function readStory(source: string, options: StoryOptions = {}): Story {
  const obstacle = findObstacle(source)
  if (obstacle) return toEmptyStory(source, [obstacle])
  try {
    return buildStory(source, outlinePieces(source, parseMarkdown(source)), options)
  } catch (error) {
    if (!(error instanceof RangeError)) throw error
    return toEmptyStory(source, [tooDeep(0, source.length)])
  }
}

/** The outline of a source that has been parsed already. */
export function outlinePieces(source: string, pieces: Iterable<ParsedPiece>): Outline {
  const outline = createOutline()
  for (const piece of pieces) addToOutline(outline, source, piece, parseMarkdown)
  return outline
}

/** A text that the child reads, and what it is there. */
export interface ReadPiece {
  readonly kind: Block['kind']
  readonly piece: TextPiece | HeadingPiece
}

/** How pieces become blocks and pages, and what is asked of a page without looking at its words. */
export interface PageMaker {
  make(read: ReadPiece, page: number): Block
  toPage(range: Omit<Page, 'blocks'>, read: readonly ReadPiece[]): Page
  count(page: Page): WordCount
}

export function makeBlock(kind: Block['kind'], piece: TextPiece | HeadingPiece, page: number): Block {
  const map = toReadMap(piece)
  return toPlainBlock(kind, map, piece, page) ?? toBlock(kind, map, parseEnglish(map), piece, page)
}

/** The same, with the tree of its sentences, whose nodes have places. */
export function parseBlock(
  kind: Block['kind'],
  piece: TextPiece | HeadingPiece,
  page: number,
  lines: Lines,
): { readonly block: Block; readonly paragraph: Paragraph } {
  const map = toReadMap(piece)
  const paragraph = parseEnglish(map, lines)
  return { block: toBlock(kind, map, paragraph, piece, page), paragraph }
}

const toReadMap = ({ map }: TextPiece | HeadingPiece): TextMap => withoutAddresses(withSingleLetters(map))

export function countWords(blocks: readonly Block[]): WordCount {
  let words = 0
  let foreign = 0
  for (const { sentences } of blocks) {
    for (const sentence of sentences) {
      words += sentence.words.length
      for (const { form } of sentence.words) if (form === 'foreign') foreign++
    }
  }
  return { words, foreign }
}

/** Pages whose blocks are made at once. */
export const createPages = (make: PageMaker['make']): PageMaker => ({
  make,
  toPage: (range, read) => ({ ...range, blocks: read.map((one) => make(one, range.number)) }),
  count: ({ blocks }) => countWords(blocks),
})

const PLAIN_MAKER = createPages(({ kind, piece }, page) => makeBlock(kind, piece, page))

/** Cut an outline into pages, and find the sentences and words of all that a child reads. */
export function buildStory(source: string, outline: Outline, options: StoryOptions, maker = PLAIN_MAKER): Story {
  const { countTitle = true, countHeadings = true } = options
  const cut = cutPages(outline.pieces, options.pages)
  let title: Block | undefined
  const ranges: Range[] = []
  const pages: Page[] = cut.pages.map(({ start, end, pieces }, index) => {
    const number = index + 1
    const read: ReadPiece[] = []
    for (const piece of pieces) {
      if (piece === cut.title ? !countTitle : piece.kind === 'heading' && !countHeadings) continue
      read.push({ kind: piece === cut.title ? 'title' : piece.kind === 'heading' ? 'heading' : 'paragraph', piece })
      ranges.push(piece)
    }
    const page = maker.toPage({ number, start, end }, read)
    if (cut.title && pieces.includes(cut.title))
      title = countTitle
        ? page.blocks.find(({ kind }) => kind === 'title')
        : maker.make({ kind: 'title', piece: cut.title }, number)
    return page
  })
  const comments = addNextBlocks(outline.comments, ranges)
  const found = [...outline.problems, ...findTextProblems(source, pages, maker)].sort((a, b) => a.start - b.start)
  const problems = toStoryProblems(found, source)
  const { frontMatter } = outline
  return { source, frontMatter, title, pages, ...toAsides(outline, cut, pages), comments, problems }
}

function findTextProblems(source: string, pages: readonly Page[], { count }: PageMaker): Oddity[] {
  let words = 0
  let foreign = 0
  for (const page of pages) {
    const found = count(page)
    words += found.words
    foreign += found.foreign
  }
  if (words === 0) {
    return [{ code: 'empty', message: 'There is no text for a child to read here.', start: 0, end: source.length }]
  }
  const language = findForeignLanguage(() => toFirstWords(pages), { words, foreign })
  if (language === undefined) return []
  const blocks = pages.flatMap((page) => page.blocks)
  const [{ start }, { end }] = [blocks[0] as Block, blocks.at(-1) as Block]
  return [{ code: 'other-language', message: `This looks like ${language}, not English.`, start, end }]
}

function toFirstWords(pages: readonly Page[]): readonly string[] {
  const words: string[] = []
  for (const { blocks } of pages) {
    for (const { sentences } of blocks)
      for (const sentence of sentences) for (const { text } of sentence.words) words.push(text)
    if (words.length >= maxSample) break
  }
  return words.slice(0, maxSample)
}

export function toEmptyStory(source: string, found: readonly Oddity[]): Story {
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
