// A story as a booklet: cover, pages, a last page for the grown-up, placed on sheets so that they fold in order.

import { fail, type Result, succeed } from '../../problem/index.ts'
import { type Ask, count, type Laid } from '../ask.ts'
import type { Book } from '../book.ts'
import {
  type Fold,
  type Imposition,
  imposeOneSheet,
  imposeSingle,
  imposeStapled,
  ONE_SHEET,
  type Placed,
} from '../lay/impose.ts'
import { EDGE, onSide, type Paper } from '../lay/paper.ts'
import { LEAST, toXHeight } from '../lay/sizes.ts'
import type { Item, Sheet } from '../sheet.ts'
import { type PageShape, putCover, putGrownUp, putPage } from './book-page.ts'

/** More sheets do not fold well by hand: own choice. */
const MOST_STAPLED = 40

interface FoldPlan {
  readonly paper: Paper
  readonly columns: number
  readonly rows: number
  readonly impose: (count: number) => Imposition
  /** Free at the sides and the top of each page, and at its foot. */
  readonly margins: Pick<PageShape, 'side' | 'top' | 'foot'>
}

function toPlan(fold: Fold, paper: Paper): FoldPlan {
  const side = onSide(paper)
  switch (fold) {
    case 'one-sheet':
      return {
        paper: side,
        columns: 4,
        rows: 2,
        impose: imposeOneSheet,
        margins: { side: EDGE, top: EDGE + 1, foot: EDGE + 5 },
      }
    case 'none':
      return { paper, columns: 1, rows: 1, impose: imposeSingle, margins: { side: 22, top: 24, foot: 26 } }
    default:
      return { paper: side, columns: 2, rows: 1, impose: imposeStapled, margins: { side: 12, top: 14, foot: 18 } }
  }
}

/** What the maker must know beyond the sheets. */
export interface LaidBook extends Laid {
  readonly notices: readonly string[]
}

/** A booklet's pages by themselves, to be looked at before they are printed. */
export interface LaidPages {
  /** The cover, the pages, the page for the grown-up. */
  readonly pages: readonly (readonly Item[])[]
  /** Of one page, in millimetres. */
  readonly width: number
  readonly height: number
  /** Their numbers in the order in which they are bound; undefined for an empty page. */
  readonly bound: readonly (number | undefined)[]
}

export function layPages(book: Book, fold: Fold, ask: Ask): Result<LaidPages> {
  const laid = setPages(book, fold, ask)
  if (!laid.ok) return laid
  const { pages, shape, plan } = laid.value
  const count = plan.impose(pages.length).pages
  const bound = Array.from({ length: count }, (_, at) =>
    at === count - 1 ? pages.length - 1 : at < pages.length - 1 ? at : undefined,
  )
  return succeed({ pages, width: shape.width, height: shape.height, bound })
}

interface SetPages {
  readonly pages: readonly (readonly Item[])[]
  readonly shape: PageShape
  readonly plan: FoldPlan
}

function setPages(book: Book, fold: Fold, ask: Ask): Result<SetPages> {
  const plan = toPlan(fold, ask.paper)
  const number = book.pages.length + 2
  if (fold === 'one-sheet' && number > ONE_SHEET)
    return fail({
      code: 'does-not-fit',
      message: `The story has ${book.pages.length} pages; one sheet holds ${ONE_SHEET - 2}, with the cover and the page for the grown-up`,
      note: 'Print it with --fold staple.',
    })
  const shape: PageShape = {
    width: plan.paper.width / plan.columns,
    height: plan.paper.height / plan.rows,
    ...plan.margins,
  }
  const pages = fitPages(book, shape, fold, ask)
  return pages.ok ? succeed({ pages: pages.value, shape, plan }) : pages
}

export function layBook(book: Book, fold: Fold, ask: Ask): Result<LaidBook> {
  const laid = setPages(book, fold, ask)
  if (!laid.ok) return laid
  const { pages, shape, plan } = laid.value
  const imposition = plan.impose(pages.length)
  const sheets = imposition.sides.map((side) => toSheet(side, pages, shape, plan))
  const counts = [count(book.pages.length, 'story page'), ...(fold === 'one-sheet' ? [] : ['a cover'])]
  const notices =
    fold === 'staple' && imposition.pages > MOST_STAPLED
      ? [`${imposition.pages} pages do not fold well: staple them in parts, or print with --fold none.`]
      : []
  return succeed({ sheets, counts, notices, ...(fold === 'staple' && { duplex: 'short-edge' as const }) })
}

/** The whole book in one size: the largest up to the usual one at which every page fits. */
function fitPages(book: Book, shape: PageShape, fold: Fold, ask: Ask): Result<readonly (readonly Item[])[]> {
  const { letters } = ask
  const most = toMost(fold, ask)
  const least = Math.min(LEAST, most)
  let last: string | undefined
  for (let xHeight = most; xHeight > least - 1e-9; xHeight = nextSmaller(xHeight, least)) {
    const size = xHeight / letters.xHeight
    const pages: (readonly Item[])[] = []
    last = undefined
    for (const page of book.pages) {
      const items = putPage(page, shape, { letters, size, part: page.number })
      if (!items) {
        last = `${page.place}: page ${page.number} does not fit, even in the smallest letters (${toText(least)} mm)`
        break
      }
      pages.push(items)
    }
    if (last === undefined) return toWhole(book, pages, shape, size, ask)
  }
  const note =
    fold === 'one-sheet'
      ? 'Its pages are small: print it with --fold staple.'
      : 'Make two pages of it, with a line --- between them.'
  return fail({ code: 'does-not-fit', message: last ?? 'The story does not fit', note })
}

const toText = (millimetres: number): string => String(Math.round(millimetres * 10) / 10)

/** Steps of a fifth of a millimetre, and the least itself at the end. */
function nextSmaller(xHeight: number, least: number): number {
  if (xHeight <= least + 1e-9) return 0
  return Math.max(least, xHeight - 0.2)
}

function toMost(fold: Fold, { size, pageWords }: Ask): number {
  const usual = toXHeight(pageWords) * (fold === 'none' ? 1.5 : 1)
  if (size === 'small') return LEAST
  return size === 'large' ? usual * 1.3 : size === 'usual' ? usual : size
}

function toWhole(
  book: Book,
  pages: readonly (readonly Item[])[],
  shape: PageShape,
  size: number,
  { letters }: Ask,
): Result<readonly (readonly Item[])[]> {
  const cover = putCover(book, shape, { letters, size, part: 0 })
  if (!cover) return fail({ code: 'does-not-fit', message: `The title “${book.title}” is too long for the cover` })
  const grownUp = putGrownUp(book.grownUp, shape, { letters, part: 1e6 })
  if (!grownUp)
    return fail({
      code: 'does-not-fit',
      message: 'The notes for the grown-up do not fit on their page',
      note: 'Make the lines that begin with > shorter.',
    })
  return succeed([cover, ...pages, grownUp])
}

function toSheet(
  side: readonly Placed[],
  pages: readonly (readonly Item[])[],
  { width, height }: PageShape,
  plan: FoldPlan,
): Sheet {
  const items = side.flatMap(({ page, column, row, isTurned }): Item[] => {
    const own = page === undefined ? undefined : pages[page]
    if (!own || own.length === 0) return []
    const [x, y] = [column * width, row * height]
    return [
      isTurned
        ? { kind: 'group', x: x + width, y: y + height, turn: 180, items: own }
        : { kind: 'group', x, y, turn: 0, items: own },
    ]
  })
  const { paper } = plan
  return { width: paper.width, height: paper.height, items: [...items, ...toFolds(plan)] }
}

/** Where to fold: short dashes at the edges of a stapled sheet; of one sheet all folds, and the cut along the middle. */
function toFolds({ paper: { width, height }, columns, rows }: FoldPlan): readonly Item[] {
  const fold = (from: [number, number], to: [number, number]): Item => ({ kind: 'line', use: 'fold', from, to })
  if (columns === 1) return []
  if (rows === 1)
    return [
      fold([width / 2, EDGE], [width / 2, EDGE + 6]),
      fold([width / 2, height - EDGE - 6], [width / 2, height - EDGE]),
    ]
  const middle = height / 2
  return [
    ...[1, 2, 3].map((column) => fold([(column * width) / 4, EDGE], [(column * width) / 4, height - EDGE])),
    fold([EDGE, middle], [width / 4, middle]),
    fold([(3 * width) / 4, middle], [width - EDGE, middle]),
    { kind: 'line', use: 'cut', from: [width / 4, middle], to: [(3 * width) / 4, middle] },
  ]
}
