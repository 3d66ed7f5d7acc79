// What is counted over a whole story, put together from what was counted block by block.

import { isSame } from '../../sorted.ts'
import type { Block, Page } from '../../story/types.ts'
import { type StoryCount, toUseName, type WordUse } from '../../usage/count.ts'
import { BY_HARDNESS, toKind, toShares } from '../../verdict/index.ts'
import type { Figures, Verdict } from '../../verdict/types.ts'
import type { StoryFigures } from '../types.ts'
import type { JudgedUse, KindCounts, SaidPage, Saying } from './saying.ts'

/** The page, with what is known of it where it has the same blocks as before. */
export function toSaidPage(page: Page, sayings: readonly Saying[], starts: readonly number[]): SaidPage {
  const first = sayings[0]
  const known = first?.page
  if (known && isSame(known.sayings, sayings)) return { page, sayings: known.sayings, starts, memory: known }
  const memory = { sayings, figures: sumPage(sayings), said: undefined }
  if (first) first.page = memory
  return { page, sayings, starts, memory }
}

function sumPage(sayings: readonly Saying[]): Figures {
  const counts = createCounts()
  for (const saying of sayings) addCounts(counts, saying.counts)
  return toShares(counts)
}

/** @param total of the story; `different` of each of its words once */
export const sumFigures = (
  pages: readonly SaidPage[],
  { total, different }: { readonly total: KindCounts; readonly different: KindCounts },
): StoryFigures => ({
  pages: pages.map(({ memory }) => memory.figures),
  total: toShares(total),
  different: toShares(different),
})

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
  const counted = pages.map(({ page, sayings }) => {
    const onPage = new Map<WordUse, number>()
    for (const [at, saying] of sayings.entries()) {
      for (const use of saying.uses) {
        const name = toUseName(use)
        let sum = uses.get(name)
        if (sum === undefined) uses.set(name, (sum = toSum(use, saying, page.blocks[at] ?? saying.block)))
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
function toSum({ verdict: _, word, sentence, ...use }: JudgedUse, saying: Saying, block: Block): Sum {
  const now = block.sentences[saying.block.sentences.indexOf(sentence)] ?? sentence
  return { ...use, sentence: now, word: now.words[sentence.words.indexOf(word)] ?? word, times: 0 }
}
