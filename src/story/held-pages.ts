// Pages of a story that is held. What stands on a page is known; the blocks themselves are made when somebody looks at them:
// behind each letter that is typed, thousands of pages are moved that nobody looks at.

import { isSame } from '../sorted.ts'
import { moveBlock, toStanding } from './move.ts'
import type { Home, WordCount } from './outline.ts'
import { countWords, makeBlock, type PageMaker, type ReadPiece } from './read.ts'
import type { Block, Page, Range } from './types.ts'

/** What stands on a page, block by block. */
export interface PageHomes {
  /** The same object for as long as the text of a block stays, wherever it is moved; with the block as it was first made. */
  readonly homes: readonly Pick<Home, 'block'>[]
  /** Where each starts now. */
  readonly starts: readonly number[]
}

/** A class, so that its getters are none of the page's own fields, nor made anew for each page. */
class HeldPage implements Page {
  readonly number: number
  readonly start: number
  readonly end: number
  readonly #homes: readonly Home[]
  readonly #starts: readonly number[]
  #blocks: readonly Block[] | undefined

  constructor({ number, start, end }: Omit<Page, 'blocks'>, homes: readonly Home[], starts: readonly number[]) {
    this.number = number
    this.start = start
    this.end = end
    this.#homes = homes
    this.#starts = starts
  }

  get blocks(): readonly Block[] {
    this.#blocks ??= this.#homes.map((home, at) => findBlock(home, this.#starts[at] as number, this.number))
    return this.#blocks
  }

  get known(): PageHomes {
    return { homes: this.#homes, starts: this.#starts }
  }

  get count(): WordCount {
    let [words, foreign] = [0, 0]
    for (const home of this.#homes) {
      words += home.words.words
      foreign += home.words.foreign
    }
    return { words, foreign }
  }

  isSame({ start, end }: Range, homes: readonly Home[], starts: readonly number[]): boolean {
    return start === this.start && end === this.end && isSame(homes, this.#homes) && isSame(starts, this.#starts)
  }
}

export const homesOf = (page: Page): PageHomes =>
  page instanceof HeldPage
    ? page.known
    : { homes: page.blocks.map((block) => ({ block })), starts: page.blocks.map(({ start }) => start) }

export function createHeldPages(): PageMaker {
  /** Of the last version, by number: one that an edit neither touches nor moves stays the same. */
  const last: HeldPage[] = []
  return {
    make: (read, page) => findBlock(findHome(read, page), read.piece.start, page),
    toPage(range, read) {
      const homes = read.map((one) => findHome(one, range.number))
      const starts = read.map(({ piece }) => piece.start)
      const before = last[range.number]
      if (before?.isSame(range, homes, starts)) return before
      const page = new HeldPage(range, homes, starts)
      last[range.number] = page
      return page
    },
    count: (page) => (page as HeldPage).count,
  }
}

function findHome({ kind, piece }: ReadPiece, page: number): Home {
  if (piece.home?.block.kind !== kind) {
    const block = makeBlock(kind, { ...piece, ...toStanding(piece) }, page)
    piece.home = { block, page, words: countWords([block]), last: undefined }
  }
  return piece.home
}

/** The block of a home where it stands now. */
function findBlock(home: Home, start: number, page: number): Block {
  if (start === home.block.start && page === home.page) return home.block
  if (home.last?.block.start !== start || home.last.page !== page)
    home.last = { block: moveBlock(home.block, start - home.block.start, page), page }
  return home.last.block
}
