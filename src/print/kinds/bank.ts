// A word bank to lay beside the page that is written: words by kind and vowel, small, for the grown-up, on one page.

import { type Ask, count, type Laid } from '../ask.ts'
import { FOOT, putFoot } from '../lay/foot.ts'
import { toLines } from '../lay/lines.ts'
import { EDGE } from '../lay/paper.ts'
import { putLines, toHeight } from '../lay/paragraph.ts'
import { type MarkedText, putText, toHead, toWidth, unmarked } from '../lay/words.ts'
import type { Item } from '../sheet.ts'

export interface Bank {
  readonly title: string
  readonly sections: readonly {
    readonly head: string
    readonly rows: readonly { readonly label: string; readonly words: readonly string[] }[]
  }[]
  readonly notes: readonly string[]
}

const SIDE = 16
/** The height of the small x in millimetres: text for adults, as in a printed book (own choice). */
const LEAST_X = 1.5
const MOST_X = 2.3
const STEP_X = 0.1
const LINE = 1.25
/** Air between words and between rows, in sizes. */
const APART = 0.7
const ROW_GAP = 0.12
/** Behind a word: new, known by heart. */
const SIGNS = /[+*]+$/

/** Whether it goes on one page in the smallest letters that a grown-up can read. */
export const fitsBank = (bank: Bank, ask: Pick<Ask, 'paper' | 'letters'>): boolean =>
  put(bank, toLook(ask, LEAST_X)) !== undefined

/** In the largest letters in which it goes on one page; undefined where it does not. */
export function layBank(bank: Bank, ask: Ask): Laid | undefined {
  const { paper, letters, size } = ask
  if (!fitsBank(bank, ask)) return undefined
  const most = typeof size === 'number' ? size : size === 'large' ? MOST_X + 0.5 : MOST_X
  for (let x = Math.max(most, LEAST_X); ; x = Math.max(x - STEP_X, LEAST_X)) {
    const pen = put(bank, toLook(ask, x))
    if (pen === undefined) continue
    const words = bank.sections.flatMap(({ rows }) =>
      rows.flatMap((row) => row.words.map((word) => word.replace(SIGNS, ''))),
    )
    const items = [...pen.items, ...putFoot(paper, letters, EDGE + 3)]
    return {
      sheets: [{ width: paper.width, height: paper.height, items }],
      counts: [count(new Set(words).size, 'word')],
    }
  }
}

const toLook = ({ paper, letters }: Pick<Ask, 'paper' | 'letters'>, x: number): Look => ({
  ...{ paper, letters },
  size: x / letters.xHeight,
})

interface Look extends Pick<Ask, 'paper' | 'letters'> {
  readonly size: number
}

/** Where the next thing is put; what is put moves it on. */
interface Pen {
  y: number
  at: number
  readonly items: Item[]
}

/** Undefined as soon as something lies below the page. */
function put(bank: Bank, look: Look): Pen | undefined {
  const { letters, size, paper } = look
  const pen: Pen = { y: EDGE + 6, at: 0, items: [] }
  const toEnd = paper.width - SIDE
  putParagraph(pen, toHead(bank.title), { ...look, size: size * 1.15 }, 'H1')
  const labels = bank.sections.flatMap(({ rows }) => rows.map(({ label }) => toHead(label)))
  const indent = Math.max(...labels.map((label) => toWidth(label, size, letters)), 0) + 1.2 * size
  for (const { head, rows } of bank.sections) {
    pen.y += size * 0.55
    putParagraph(pen, toHead(head), look, 'H2')
    const x = rows.every(({ label }) => label === '') ? SIDE : SIDE + indent
    for (const row of rows) {
      putRow(pen, row, { x, toEnd }, look)
      if (pen.y > paper.height - FOOT) return undefined
    }
  }
  pen.y += size * 0.7
  for (const note of bank.notes) putParagraph(pen, unmarked(note), { ...look, size: size * 0.92 }, 'P')
  return pen.y > paper.height - FOOT ? undefined : pen
}

function putParagraph(pen: Pen, text: MarkedText, { paper, letters, size }: Look, role: 'H1' | 'H2' | 'P'): void {
  const width = paper.width - 2 * SIDE
  const lines = toLines(text, width, size, letters) ?? []
  const readAs = { part: 0, at: pen.at++, role }
  pen.items.push(
    ...putLines(lines, { x: SIDE, y: pen.y, width }, { letters, size, align: 'left', lineSpace: LINE, readAs }),
  )
  pen.y += toHeight(lines.length, letters, size, LINE) + ROW_GAP * size
}

/** The label, and the words one after the other; those that do not fit go on below the first. */
function putRow(
  pen: Pen,
  { label, words }: Bank['sections'][number]['rows'][number],
  { x, toEnd }: { readonly x: number; readonly toEnd: number },
  { letters, size }: Look,
): void {
  const readAs = { part: 0, at: pen.at++, role: 'P' } as const
  const baseline = (): number => pen.y + letters.ascent * size
  if (label !== '') pen.items.push(...putText(toHead(`${label} `), SIDE, baseline(), { letters, size, readAs }))
  let at = x
  for (const word of words) {
    if (at > x && at + letters.widthOf(word, size) > toEnd) {
      at = x
      pen.y += LINE * size
    }
    // A space that is not seen parts the words where they are read aloud or copied.
    pen.items.push(...putText(unmarked(`${word} `), at, baseline(), { letters, size, readAs }))
    at += letters.widthOf(word, size) + APART * size
  }
  pen.y += toHeight(1, letters, size, LINE) + ROW_GAP * size
}
