// Blocks of a story that is held: one that has moved is a thin copy of the block that was first made of its text.

import { moveBlock, toStanding } from './move.ts'
import type { Home } from './outline.ts'
import { type BlockMaker, countWords, makeBlock } from './read.ts'
import type { Block } from './types.ts'

/** What a block of a held story knows of itself. A symbol, so that whoever copies or prints a block need not know. */
const HOME = Symbol('home')

type Held = Block & { [HOME]?: Home }

/** Of a block of a held story: the same object for as long as its text stays, wherever it is moved. */
export const homeOf = (block: Block): Block => (block as Held)[HOME]?.block ?? block

export const heldBlocks: BlockMaker = {
  make(kind, piece, page) {
    const known = piece.home
    const home = known?.block.kind === kind ? known : makeHome(kind, piece, page)
    piece.home = home
    if (piece.start === home.block.start && page === home.page) return home.block
    if (home.last?.block.start !== piece.start || home.last.page !== page) {
      const block: Held = moveBlock(home.block, piece.start - home.block.start, page)
      block[HOME] = home
      home.last = { block, page }
    }
    return home.last.block
  },
  count(block) {
    const home = (block as Held)[HOME]
    if (home === undefined) return countWords(block)
    home.words ??= countWords(home.block)
    return home.words
  },
}

function makeHome(...[kind, piece, page]: Parameters<BlockMaker['make']>): Home {
  const block: Held = makeBlock(kind, { ...piece, ...toStanding(piece) }, page).block
  const home: Home = { block, page, words: undefined, last: undefined }
  block[HOME] = home
  return home
}
