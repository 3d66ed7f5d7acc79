// What is counted over a whole story, put together from what was counted block by block.

import { type StoryCount, toUseName, type WordUse } from '../../usage/count.ts'
import { BY_HARDNESS, toKind, toShares } from '../../verdict/index.ts'
import type { Figures, Verdict } from '../../verdict/types.ts'
import type { StoryFigures } from '../types.ts'
import { areSameSayings, type JudgedUse, type KindCounts, type SaidBlock, type SaidPage } from './saying.ts'

/** @param total of the story; `different` of each of its words once */
export function sumFigures(
  pages: readonly SaidPage[],
  { total, different }: { readonly total: KindCounts; readonly different: KindCounts },
): StoryFigures {
  return { pages: pages.map(({ blocks }) => sumPage(blocks)), total: toShares(total), different: toShares(different) }
}

function sumPage(blocks: readonly SaidBlock[]): Figures {
  const memory = blocks[0]?.saying.memory
  if (memory?.figures && areSameSayings(memory.figures.blocks, blocks)) return memory.figures.figures
  const counts = createCounts()
  for (const { saying } of blocks) addCounts(counts, saying.counts)
  const figures = toShares(counts)
  if (memory) memory.figures = { blocks, figures }
  return figures
}

export const createCounts = () => ({ decodable: 0, sight: 0, name: 0, unreadable: 0 })

/** @param sign -1 to take away */
export function addCounts(sum: ReturnType<typeof createCounts>, more: KindCounts, sign: 1 | -1 = 1): void {
  sum.decodable += sign * more.decodable
  sum.sight += sign * more.sight
  sum.name += sign * more.name
  sum.unreadable += sign * more.unreadable
}

/** Counts different words, as `toDifferentFigures` does, while uses of them come and go: each word as the hardest of its uses. */
export function createDifferent() {
  const kindsOf = new Map<string, ReturnType<typeof createCounts>>()
  const counts = createCounts()
  return {
    counts,
    add({ key, form, verdict }: JudgedUse, sign: 1 | -1): void {
      const kinds = kindsOf.get(key) ?? createCounts()
      const before = findHardest(kinds)
      kinds[toKind(form, verdict)] += sign
      const after = findHardest(kinds)
      if (before) counts[before]--
      if (after) counts[after]++
      if (after) kindsOf.set(key, kinds)
      else kindsOf.delete(key)
    },
  }
}

const findHardest = (kinds: KindCounts): Verdict['kind'] | undefined => BY_HARDNESS.findLast((kind) => kinds[kind] > 0)

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
