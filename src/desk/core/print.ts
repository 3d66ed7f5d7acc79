// Prints in the worker: a story or words, laid out and drawn as one PDF.

import type { PreparedStory } from '../../check/check-story.ts'
import { canDraw, count, drawPdf, findStored, type Letters, type PictureFile, type Shown } from '../../print/index.ts'
import { fail, type Result, succeed } from '../../problem/index.ts'
import {
  layStory,
  layWords,
  type Prepared,
  type SheetKind,
  toAdvice,
  toFileName,
  type Wishes,
  type WordSheetKind,
} from '../../sheets/index.ts'
import { findByWish, openPool } from './bank.ts'
import { openLettersOf, readPictures, toAsk, toPageProblems, toStoryToPrint, withoutCommands } from './press.ts'
import type { Printed, PrintKind, PrintWish } from './questions/book.ts'
import type { StoryText, Tried } from './questions/shared.ts'
import type { BankWish } from './questions/words.ts'
import { type DeskState, toolsOf } from './state.ts'
import { openStory, toPrepared } from './stories.ts'

interface Kind {
  readonly kind: Exclude<SheetKind, 'bank' | 'set' | 'wall'>
  readonly fold: Wishes['fold']
  /** How many words where nobody says. */
  readonly usual: number
  readonly wish: BankWish
}

/** In the words of the page. Cards and tags are for things. */
const KINDS: Readonly<Record<PrintKind, Kind>> = {
  booklet: { kind: 'book', fold: 'staple', usual: 0, wish: {} },
  cards: { kind: 'cards', fold: 'staple', usual: 8, wish: { picture: true } },
  list: { kind: 'list', fold: 'staple', usual: 8, wish: {} },
  'one-sheet booklet': { kind: 'book', fold: 'one-sheet', usual: 0, wish: {} },
  pages: { kind: 'book', fold: 'none', usual: 0, wish: {} },
  'sight words': { kind: 'sight', fold: 'staple', usual: Number.POSITIVE_INFINITY, wish: {} },
  slips: { kind: 'slips', fold: 'staple', usual: 8, wish: {} },
  strips: { kind: 'strips', fold: 'staple', usual: 0, wish: {} },
  tags: { kind: 'tags', fold: 'staple', usual: 16, wish: { picture: true } },
}

export async function print(story: StoryText | undefined, wish: PrintWish, state: DeskState): Promise<Tried<Printed>> {
  const { kind, fold } = KINDS[wish.kind]
  if (story === undefined)
    return fail({ code: 'no-words', message: 'Open a story first: its step says which words fit' })
  const letters = await openLettersOf(wish.letters, state)
  if (!letters.ok) return letters
  const open = await openStory(story, state)
  const prepared = toPrepared(open)
  if (!prepared.ok) return prepared
  const ask = toAsk(prepared.value, letters.value, wish)
  const isOfStory = kind === 'book' || kind === 'strips'
  const laid = isOfStory
    ? await layOpenStory(kind, { ...wish, fold }, story, letters.value, state)
    : await layOpenWords(kind, wish, prepared.value, ask, state)
  if (!laid.ok) return { ok: false, problems: toPageProblems(laid.problems) }
  return finish(laid.value, wish, kind, letters.value)

  async function layOpenStory(
    own: 'book' | 'strips',
    wishes: Pick<Wishes, 'mark' | 'fold'>,
    { path }: StoryText,
    { files }: Letters,
    desk: DeskState,
  ): Promise<Result<Prepared>> {
    if (!prepared.ok) return prepared
    const font = files.plain
    const { pictures, told } = await readPictures(prepared.value, path, desk, (picture) => canDraw(picture, font))
    const toPrint = toStoryToPrint(prepared.value, open, path, desk)
    const done = layStory({ kind: own, story: toPrint, pictures, wishes: { ...wishes, isCutInWords: false }, ask })
    return done.ok ? succeed({ ...done.value, notices: [...told, ...done.value.notices] }) : done
  }
}

async function finish(laid: Prepared, wish: PrintWish, kind: SheetKind, letters: Letters): Promise<Tried<Printed>> {
  const { sheets, duplex } = laid.laid
  const pdf = await drawPdf({ title: laid.title, sheets, duplex }, letters)
  const fileName = `${toFileName([wish.kind, ...laid.name.slice(1)])}.pdf`
  const wishes = { cut: 'corners', fold: KINDS[wish.kind].fold } as const
  const advice = toAdvice(fileName, { kind, laid: laid.laid, wishes, bytes: pdf.length })
  return succeed({
    pdf,
    fileName,
    sheets: duplex === undefined ? sheets.length : Math.ceil(sheets.length / 2),
    told: [advice, ...laid.notices.map(withoutCommands).filter((line) => line !== '')],
  })
}

async function layOpenWords(
  kind: WordSheetKind,
  wish: PrintWish,
  prepared: PreparedStory,
  ask: ReturnType<typeof toAsk>,
  state: DeskState,
): Promise<Result<Prepared>> {
  const stored = kind === 'cards' ? await readStored(state) : {}
  const words = await findWanted(kind, wish, prepared, stored, state)
  if (!words.ok) return words
  const { sequence, step, reader } = prepared
  return layWords({
    ...{ kind, words: words.value, ask, mark: wish.mark, group: 'letter' },
    asked: toAsked(wish.bank),
    reader: { sequence, step, isStepNamed: true, extra: reader, phonics: toolsOf(state).phonicsFor(sequence.accent) },
    findPicture: (word) => succeed<Shown | undefined>(findStored(stored, word, false)),
  })
}

/** What was asked for goes into the title. */
const toAsked = ({ pattern, vowel, kind, rhymesWith, newAtStep }: BankWish = {}) => ({
  ...(pattern !== undefined && { with: pattern }),
  ...(vowel !== undefined && { vowel }),
  ...(kind !== undefined && { kind }),
  ...(rhymesWith !== undefined && { rhymesWith }),
  ...(newAtStep !== undefined && { newAtStep }),
})

async function readStored(state: DeskState): Promise<PictureFile> {
  const bytes = await toolsOf(state).pictures?.()
  return bytes === undefined ? {} : (JSON.parse(new TextDecoder().decode(bytes)) as PictureFile)
}

/** More would be a mistake of the keys. */
const MOST = 500

async function findWanted(
  kind: WordSheetKind,
  { words, bank = {}, kind: asked }: PrintWish,
  prepared: PreparedStory,
  stored: PictureFile,
  state: DeskState,
): Promise<Result<readonly string[]>> {
  const found = words
    ? succeed(toWords(words))
    : kind === 'sight'
      ? succeed(listSight(prepared, bank))
      : await findByBank()
  if (!found.ok) return found
  if (found.value.length === 0)
    return fail({
      code: 'no-words',
      message: 'There is no word to print',
      note: 'Ask for less at once, or for a later step.',
    })
  return found.value.length > MOST
    ? fail({
        code: 'too-large',
        message: `These are ${count(found.value.length, 'word')}; at most ${MOST} are printed at once`,
      })
    : found

  async function findByBank(): Promise<Result<readonly string[]>> {
    const { usual, wish } = KINDS[asked]
    const number = bank.count ?? usual
    const pool = await openPool(prepared, state)
    const all = findByWish(prepared, { ...wish, ...bank, count: Number.POSITIVE_INFINITY }, pool, state, {
      known: true,
    })
    if ('problem' in all) return fail(all.problem)
    // What is known by heart has cards of its own.
    const fitting = all.words.filter(({ byHeart }) => !byHeart).map(({ word }) => word)
    const hasPicture = (word: string): boolean => findStored(stored, word, false) !== undefined
    const inOrder =
      kind === 'cards' ? [...fitting.filter(hasPicture), ...fitting.filter((word) => !hasPicture(word))] : fitting
    return succeed(inOrder.slice(0, number))
  }
}

const toWords = (words: readonly string[]): readonly string[] => [
  ...new Set(words.map((word) => word.trim().replace(/\s+/g, ' ').normalize('NFC')).filter((word) => word !== '')),
]

function listSight({ context, sequence, step }: PreparedStory, { newAtStep }: BankWish): readonly string[] {
  const brought = new Set(
    sequence.steps.find(({ id }) => id === step)?.adds.sightWords.map((word) => word.toLowerCase()),
  )
  return [...context.knowledge.sightWords].filter((word) => !newAtStep || brought.has(word.toLowerCase()))
}
