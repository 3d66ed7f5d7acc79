// The first page of a set for a lesson, for the maker: what is in it, on which sheets, and what to get beside it.

import { fail, type Result, succeed } from '../../problem/index.ts'
import type { Ask } from '../ask.ts'
import { FOOT, putFoot } from '../lay/foot.ts'
import { toLines } from '../lay/lines.ts'
import { EDGE } from '../lay/paper.ts'
import { putLines, toHeight } from '../lay/paragraph.ts'
import { type MarkedText, toHead, unmarked } from '../lay/words.ts'
import type { Item, Sheet } from '../sheet.ts'

export interface Contents {
  readonly title: string
  /** Each with its head. */
  readonly entries: readonly { readonly head: string; readonly text: string }[]
}

const SIDE = 22
const LINE = 1.4

export function layContents({ title, entries }: Contents, { paper, letters }: Ask): Result<Sheet> {
  const width = paper.width - 2 * SIDE
  for (let size = 5; size >= 3; size -= 0.1) {
    let y = EDGE + 10
    const items: Item[] = []
    const put = (text: MarkedText, own: number, at: number, role: 'H1' | 'H2' | 'P', gap: number): void => {
      const lines = toLines(text, width, own, letters) ?? []
      items.push(
        ...putLines(
          lines,
          { x: SIDE, y, width },
          {
            ...{ letters, size: own, align: 'left', lineSpace: LINE },
            readAs: { part: -1, at, role },
          },
        ),
      )
      y += toHeight(lines.length, letters, own, LINE) + gap
    }
    put(toHead(title), size * 1.7, 0, 'H1', size * 1.6)
    entries.forEach(({ head, text }, at) => {
      put(toHead(head), size, 2 * at + 1, 'H2', size * 0.45)
      put(unmarked(text), size, 2 * at + 2, 'P', size * 1.3)
    })
    if (y < paper.height - FOOT)
      return succeed({
        width: paper.width,
        height: paper.height,
        items: [...items, ...putFoot(paper, letters, SIDE - 3)],
      })
  }
  return fail({
    code: 'does-not-fit',
    message: 'The page of contents is too long',
    note: 'Ask for fewer words with --count.',
  })
}
