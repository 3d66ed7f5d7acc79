// The book as it will be printed: its pages as drawings, which lie open together, and where words with a place stand on them.

import { isChecked } from '../../check/result.ts'
import { drawSvgs, type Item, type LaidPages, type Letters, type TextItem } from '../../print/index.ts'
import { succeed } from '../../problem/index.ts'
import { layStoryPages, type StoryToPrint } from '../../sheets/index.ts'
import type { Block } from '../../story/types.ts'
import { openLettersOf, readPictures, toAsk, toPageProblems, toStoryToPrint, withoutCommands } from './press.ts'
import type { Book, BookWish, Spread, SpreadMark } from './questions/book.ts'
import type { StoryText, Tried } from './questions/shared.ts'
import type { DeskState } from './state.ts'
import { checkOpen, openStory, toPrepared } from './stories.ts'

export async function layOpenBook(story: StoryText, wish: BookWish, state: DeskState): Promise<Tried<Book>> {
  const open = await openStory(story, state)
  const prepared = toPrepared(open)
  if (!prepared.ok) return prepared
  const letters = await openLettersOf(wish.letters, state)
  if (!letters.ok) return letters
  const own = toStoryToPrint(prepared.value, open, story.path, state)
  const { pictures, told } = await readPictures(prepared.value, story.path, state)
  const ask = toAsk(prepared.value, letters.value, wish)
  const wishes = { mark: 'none', fold: wish.fold, isCutInWords: false } as const
  const laid = layStoryPages({ story: own, pictures, wishes, ask })
  if (!laid.ok) return { ok: false, problems: toPageProblems(laid.problems) }
  const result = await checkOpen(open)
  const places = new Map(
    isChecked(result)
      ? result.messages.flatMap(({ word, start }, at) => (word === undefined ? [] : [[start, at] as const]))
      : [],
  )
  const bound = laid.value.bound
  return succeed({
    version: story.version,
    pages: drawPages(laid.value, letters.value),
    ratio: laid.value.width / laid.value.height,
    spreads: toSpreads(bound.length),
    marks: findMarks(own, laid.value, places, letters.value),
    told: told.map(withoutCommands),
  })
}

function drawPages({ pages, width, height, bound }: LaidPages, letters: Letters): readonly string[] {
  const sheets = bound.map((page) => ({ width, height, items: page === undefined ? [] : (pages[page] ?? []) }))
  return drawSvgs({ title: 'Book', sheets, duplex: undefined }, letters)
}

/** The cover lies alone, and so does the back. */
function toSpreads(count: number): readonly Spread[] {
  const inner: Spread[] = []
  for (let left = 1; left < count - 1; left += 2)
    inner.push(
      left + 1 < count - 1
        ? { left, right: left + 1, name: `Pages ${left} and ${left + 1}` }
        : { left, right: null, name: `Page ${left}` },
    )
  return [
    { left: null, right: 0, name: 'Cover' },
    ...inner,
    ...(count > 1 ? [{ left: count - 1, right: null, name: 'Back: for the grown-up' }] : []),
  ]
}

type Places = ReadonlyMap<number, number>

/** Pages of the story are bound behind the cover, in order. */
function findMarks(story: StoryToPrint, laid: LaidPages, places: Places, letters: Letters): readonly SpreadMark[] {
  const { title, pages } = story.story
  const onCover = title ? findInBlock(title, listTexts(laid.pages[0] ?? [], 0), 0, places, letters) : []
  const shown = pages.filter((page) => isBound(page.number, laid))
  const inside = shown.flatMap(({ blocks }, at) => {
    const items = laid.pages[at + 1] ?? []
    const readable = blocks.filter(({ kind }) => kind !== 'title')
    const first = findFirstText(items)
    return readable.flatMap((block, row) => findInBlock(block, listTexts(items, first + row), at + 1, places, letters))
  })
  return [...onCover, ...inside].map((mark) => ({
    ...mark,
    x: mark.x / laid.width,
    width: mark.width / laid.width,
    y: mark.y / laid.height,
    height: mark.height / laid.height,
  }))
}

/** A story of one page that is only a title has no page behind its cover. */
const isBound = (number: number, { pages }: LaidPages): boolean => number <= pages.length - 2

/** Pictures above the text come first when it is read aloud. */
const findFirstText = (items: readonly Item[]): number =>
  Math.min(
    ...items.flatMap((item) => (item.kind === 'text' && item.readAs ? [item.readAs.at] : [])),
    Number.POSITIVE_INFINITY,
  )

const listTexts = (items: readonly Item[], at: number): readonly TextItem[] =>
  items.filter((item): item is TextItem => item.kind === 'text' && item.readAs?.at === at)

/** Words of a block one after the other in the letters that stand on the page. */
function findInBlock(
  block: Block,
  texts: readonly TextItem[],
  page: number,
  places: Places,
  letters: Letters,
): readonly SpreadMark[] {
  const whole = texts.map(({ text }) => text).join('')
  const marks: SpreadMark[] = []
  let from = 0
  for (const { words } of block.sentences)
    for (const word of words) {
      const at = whole.indexOf(word.text, from)
      if (at < 0) continue
      from = at + word.text.length
      const place = places.get(word.start)
      if (place !== undefined) marks.push({ page, place, ...toBox(texts, at, from, letters) })
    }
  return marks
}

/** In millimetres. A word may stand in several items, where some of its letters are bold; never in two lines. */
function toBox(texts: readonly TextItem[], from: number, to: number, letters: Letters) {
  let at = 0
  let [left, right, top, bottom] = [Infinity, -Infinity, Infinity, -Infinity]
  for (const { text, x, baseline, size, face } of texts) {
    const [start, end] = [Math.max(from - at, 0), Math.min(to - at, text.length)]
    at += text.length
    if (end <= start) continue
    left = Math.min(left, x + letters.widthOf(text.slice(0, start), size, face))
    right = Math.max(right, x + letters.widthOf(text.slice(0, end), size, face))
    top = Math.min(top, baseline - letters.ascent * size)
    bottom = Math.max(bottom, baseline + letters.descent * size)
  }
  return { x: left, y: top, width: right - left, height: bottom - top }
}
