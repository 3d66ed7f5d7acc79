// Sheets that are made of a story: a booklet, its sentences as strips, or as slips.

import { findSpelling } from '../finder/index.ts'
import {
  type Ask,
  type Book,
  type BookPage,
  isOneOf,
  type Laid,
  type LaidPages,
  layBook,
  layPages,
  laySlips,
  layStrips,
  type MarkedText,
  type Marking,
  toGrownUpPage,
} from '../print/index.ts'
import { fail, type Result, succeed, toProblemLine } from '../problem/index.ts'
import { findStep } from '../sequence/index.ts'
import { toHeading } from '../story/heading.ts'
import type { Block, Page } from '../story/types.ts'
import { findMissingLetters } from './missing-letters.ts'
import { findNoticedWords, type NoticedWords, toFacts } from './noticed-words.ts'
import { toMarkedText } from './story-text.ts'
import type { Prepared, StoryPicture, StorySheetKind, StoryToPrint, Wishes } from './types.ts'

export interface StoryAsk {
  readonly kind: StorySheetKind
  readonly story: StoryToPrint
  /** Those that a child sees, in order of place; none for slips. */
  readonly pictures: readonly StoryPicture[]
  readonly wishes: Pick<Wishes, 'mark' | 'fold' | 'isCutInWords'>
  readonly ask: Ask
}

/** The pages of a booklet by themselves, to be looked at. */
export function layStoryPages({ story, pictures, wishes, ask }: Omit<StoryAsk, 'kind'>): Result<LaidPages> {
  const title = toBookTitle(story)
  const wrong = findObstacle(story, title, ask)
  if (wrong) return wrong
  const parts = { story, pictures, marking: toMarking(story, wishes), title, fold: wishes.fold }
  return layPages(toBook(parts, findNoticedWords(story)), wishes.fold, ask)
}

export function layStory({ kind, story, pictures, wishes, ask }: StoryAsk): Result<Prepared> {
  const marking = toMarking(story, wishes)
  const title = toBookTitle(story)
  const notices = [...(story.notice === undefined ? [] : [story.notice]), ...story.own.problems.map(toProblemLine)]
  const lay = (noticed: NoticedWords): Result<Laid & { readonly notices?: readonly string[] }> => {
    if (kind === 'book')
      return layBook(toBook({ story, pictures, marking, title, fold: wishes.fold }, noticed), wishes.fold, ask)
    const sentences = toSentences(story, marking)
    if (sentences.length === 0) return fail({ code: 'no-words', message: `\`${story.path}\` has no sentence to print` })
    if (kind === 'slips') return laySlips(sentences, ask)
    return layStrips({ sentences, pictures: toEachOnce(pictures) }, wishes.isCutInWords, ask)
  }
  const wrong = findObstacle(story, title, ask)
  if (wrong) return wrong
  const noticed = findNoticedWords(story)
  const laid = lay(noticed)
  if (!laid.ok) return laid
  return succeed({
    laid: laid.value,
    title,
    name: [kind, story.name],
    notices: [...notices, ...noticed.notices, ...(laid.value.notices ?? [])],
    hasUnreadable: noticed.unreadable.length > 0,
  })
}

/** Why nothing of the story can be printed. */
function findObstacle(story: StoryToPrint, title: string, ask: Ask): Result<never> | undefined {
  const missing = findMissingLetters(ask, [title, ...listTexts(story)], `${story.path}: `)
  if (missing) return missing
  if (story.story.pages.length === 0)
    return fail({ code: 'no-words', message: `\`${story.path}\` has no page to print` })
  return undefined
}

/** The cover mostly shows again what a page shows. */
const toEachOnce = (pictures: readonly StoryPicture[]) => [
  ...new Map(pictures.map(({ picture, shown }) => [picture.source, shown])).values(),
]

const listTexts = ({ story }: StoryToPrint): readonly string[] =>
  story.pages.flatMap(({ blocks }) => blocks.map(({ text }) => text))

/** The title of the story, else that of its settings, else the name of its file. */
function toBookTitle(story: StoryToPrint): string {
  const written = toHeading(story.story) || story.own.title?.value
  if (written) return written
  const name = story.name.replace(/^\d+[-_ ]/, '').replace(/[-_]+/g, ' ')
  return name.slice(0, 1).toUpperCase() + name.slice(1)
}

/** What the story says it practises, else what its step brings. */
function toMarking({ own, sequence, step, context, phonics }: StoryToPrint, { mark }: Pick<Wishes, 'mark'>): Marking {
  const tests = own.practises.flatMap(({ value }) => {
    const found = findSpelling(value, sequence, phonics)
    return 'problem' in found || 'letters' in found.spelling ? [] : found.spelling
  })
  const adds = findStep(sequence, step)?.adds.correspondences ?? []
  const isNew = isOneOf(new Set(adds.map(({ key }) => key)))
  return {
    wish: mark,
    knowledge: context.knowledge,
    isPractised: (unit) => (tests.length > 0 ? tests.some((test) => test(unit)) : isNew(unit)),
  }
}

function toSentences({ story, context }: StoryToPrint, marking: Marking): readonly MarkedText[] {
  return story.pages.flatMap(({ blocks }) =>
    blocks
      .filter(({ kind }) => kind === 'paragraph')
      .flatMap((block) =>
        block.sentences
          .filter(({ words }) => words.length > 0)
          .map((sentence) => toMarkedText(block, sentence, context, marking))
          .map((text) => ({ ...text, text: text.text.replaceAll('\n', ' ') })),
      ),
  )
}

interface BookParts {
  readonly story: StoryToPrint
  readonly pictures: readonly StoryPicture[]
  readonly marking: Marking
  readonly title: string
  readonly fold: Wishes['fold']
}

function toBook({ story, pictures, marking, title, fold }: BookParts, noticed: NoticedWords): Book {
  const start = story.story.title?.start ?? story.story.pages[0]?.blocks[0]?.start ?? 0
  const before = pictures.find(({ picture }) => picture.start < start && story.story.title !== undefined)
  const pages = story.story.pages.map((page) =>
    toPage(
      page,
      pictures.filter((one) => one !== before && one.picture.page === page.number),
      story,
      marking,
    ),
  )
  return {
    title,
    cover: (before ?? pictures[0])?.shown,
    pages: pages.filter(
      ({ blocks, above, below }) => blocks.length + above.length + below.length > 0 || pages.length > 1,
    ),
    grownUp: toGrownUpPage({
      ...toFacts(story, title, noticed),
      isStapled: fold === 'staple',
      hasPictures: pictures.length > 0,
    }),
  }
}

function toPage(page: Page, pictures: readonly StoryPicture[], story: StoryToPrint, marking: Marking): BookPage {
  const blocks = page.blocks.filter(({ kind }) => kind !== 'title')
  const end = blocks[0]?.end ?? Number.POSITIVE_INFINITY
  const toBlock = (block: Block) => ({
    kind: block.kind === 'heading' ? ('heading' as const) : ('paragraph' as const),
    text: toMarkedText(block, { textStart: 0, textEnd: block.text.length }, story.context, marking),
  })
  return {
    number: page.number,
    place: toPlaceText(story, blocks[0]?.start ?? page.start),
    blocks: blocks.map(toBlock),
    above: pictures.filter(({ picture }) => picture.start < end).map(({ shown }) => shown),
    below: pictures.filter(({ picture }) => picture.start >= end).map(({ shown }) => shown),
  }
}

/** `tam.md:12:1`. */
export function toPlaceText({ path, lines }: Pick<StoryToPrint, 'path' | 'lines'>, offset: number): string {
  const { line, column } = lines.toPoint(offset)
  return `${path}:${line}:${column}`
}
