// A list of words without pictures: one column, large, with much space; a small head for the grown-up.

import { type Result, succeed } from '../../problem/index.ts'
import { type Ask, count, type Laid, toTooWide, type WordPiece } from '../ask.ts'
import { FOOT, putFoot } from '../lay/foot.ts'
import { EDGE } from '../lay/paper.ts'
import { toBaseline } from '../lay/sizes.ts'
import { putText, toWidth, unmarked } from '../lay/words.ts'
import type { Item, Sheet } from '../sheet.ts'
import { toSharedSize } from './cards.ts'

/** At most so many words on a page, and a row is at most so high: a short list is not stretched over the page. */
const MOST = 10
const HIGHEST = 30
const HEAD = 16
const HEAD_SIZE = 3.6

/** @param head what the list is, for the grown-up */
export function layList(words: readonly WordPiece[], head: string, ask: Ask): Result<Laid> {
  const { paper, letters } = ask
  const texts = words.map(({ text }) => text)
  const pages = Math.ceil(words.length / MOST)
  const each = Math.ceil(words.length / pages)
  const top = EDGE + HEAD
  const row = Math.min(HIGHEST, (paper.height - top - FOOT) / Math.max(each, 6))
  const usual = { ...ask, size: ask.size === 'usual' ? 10 : ask.size === 'large' ? 13 : ask.size }
  const size = toSharedSize(texts, { width: paper.width - 2 * (EDGE + 12), height: row * 0.72 }, usual)
  if (size === undefined) return toTooWide(texts, letters, 'the page')
  // The widest word stands in the middle, and all begin below one another.
  const x = (paper.width - Math.max(...texts.map((text) => toWidth(text, size, letters)))) / 2
  const sheets = Array.from({ length: pages }, (_, page): Sheet => {
    const own = texts.slice(page * each, (page + 1) * each)
    const items: Item[] = own.flatMap((text, at) => [
      ...putText(text, x, toBaseline(top + at * row, row, size, letters), {
        ...{ letters, size },
        readAs: { part: page, at: at + 1, role: 'P' },
      }),
    ])
    const named = pages > 1 ? `${head}, ${page + 1} of ${pages}` : head
    const title = putText(unmarked(named), EDGE + 6, EDGE + 6, {
      ...{ letters, size: HEAD_SIZE, ink: 'quiet' },
      readAs: { part: page, at: 0, role: 'H1' },
    })
    return {
      width: paper.width,
      height: paper.height,
      items: [...title, ...items, ...putFoot(paper, letters, EDGE + 3)],
    }
  })
  return succeed({ sheets, counts: [count(words.length, 'word')] })
}
