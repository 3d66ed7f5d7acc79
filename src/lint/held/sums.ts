// What is counted over a whole story, put together from what was counted block by block.

import type { Block, Page } from '../../story/types.ts'
import { type StoryCount, toUseName, type WordUse } from '../../usage/count.ts'
import { toDifferentFigures, toShares } from '../../verdict/index.ts'
import type { StoryFigures } from '../types.ts'
import type { JudgedUse, KindCounts, Saying } from './saying.ts'

/** A block of the story as it stands, with what was said of it. */
export interface SaidBlock {
  readonly block: Block
  readonly saying: Saying
}

export interface SaidPage {
  readonly page: Page
  readonly blocks: readonly SaidBlock[]
}

/** @param different each use of the story once */
export function sumFigures(pages: readonly SaidPage[], different: Iterable<JudgedUse>): StoryFigures {
  const total = createCounts()
  const ofPages = pages.map(({ blocks }) => {
    const counts = createCounts()
    for (const { saying } of blocks) addCounts(counts, saying.counts)
    addCounts(total, counts)
    return toShares(counts)
  })
  return { pages: ofPages, total: toShares(total), different: toDifferentFigures(different) }
}

const createCounts = () => ({ decodable: 0, sight: 0, name: 0, unreadable: 0 })

function addCounts(sum: ReturnType<typeof createCounts>, more: KindCounts): void {
  sum.decodable += more.decodable
  sum.sight += more.sight
  sum.name += more.name
  sum.unreadable += more.unreadable
}

type Sum = { -readonly [Field in keyof WordUse]: WordUse[Field] }

/** The count of the story, as `countStory` gives it. */
export function sumCounts(pages: readonly SaidPage[]): StoryCount {
  const uses = new Map<string, Sum>()
  let words = 0
  const counted = pages.map(({ page, blocks }) => {
    const onPage = new Map<WordUse, number>()
    for (const said of blocks) {
      for (const use of said.saying.uses) {
        const name = toUseName(use)
        let sum = uses.get(name)
        if (sum === undefined) uses.set(name, (sum = toSum(use, said)))
        sum.times += use.times
        words += use.times
        onPage.set(sum, (onPage.get(sum) ?? 0) + use.times)
      }
    }
    return { page: page.number, uses: onPage }
  })
  return { pages: counted, uses: [...uses.values()], words }
}

/** With the word where it stands now. */
function toSum({ verdict: _, word, sentence, ...use }: JudgedUse, { block, saying }: SaidBlock): Sum {
  const now = block.sentences[saying.block.sentences.indexOf(sentence)] ?? sentence
  return { ...use, sentence: now, word: now.words[sentence.words.indexOf(word)] ?? word, times: 0 }
}
