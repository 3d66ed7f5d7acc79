// Sheets of words in the worker: which words, with which pictures, laid out as the command does.

import type { PreparedStory } from '../../check/check-story.ts'
import { count, findStored, type PictureFile, type Shown } from '../../print/index.ts'
import { fail, type Result, succeed } from '../../problem/index.ts'
import {
  layWords,
  type Prepared,
  type SheetKind,
  toShownFirst,
  type Wishes,
  type WordSheetKind,
} from '../../sheets/index.ts'
import { findByWish, openPool, type WrittenWish } from './bank.ts'
import type { toAsk } from './press.ts'
import type { PrintKind, PrintWish } from './questions/book.ts'
import type { BankWish } from './questions/words.ts'
import { type DeskState, toolsOf } from './state.ts'

interface Kind {
  readonly kind: Exclude<SheetKind, 'bank'>
  readonly fold: Wishes['fold']
  /** How many words where nobody says. */
  readonly usual: number
  readonly wish: WrittenWish
}

/** In the words of the page. Cards and tags are for things; a slip says something to fetch or to do. */
export const KINDS: Readonly<Record<PrintKind, Kind>> = {
  booklet: { kind: 'book', fold: 'staple', usual: 0, wish: {} },
  cards: { kind: 'cards', fold: 'staple', usual: 8, wish: { picture: true } },
  'lesson set': { kind: 'set', fold: 'staple', usual: 8, wish: {} },
  list: { kind: 'list', fold: 'staple', usual: 8, wish: {} },
  'one-sheet booklet': { kind: 'book', fold: 'one-sheet', usual: 0, wish: {} },
  pages: { kind: 'book', fold: 'none', usual: 0, wish: {} },
  'sight words': { kind: 'sight', fold: 'staple', usual: Number.POSITIVE_INFINITY, wish: {} },
  slips: { kind: 'slips', fold: 'staple', usual: 8, wish: { kind: 'naming,doing' } },
  strips: { kind: 'strips', fold: 'staple', usual: 0, wish: {} },
  tags: { kind: 'tags', fold: 'staple', usual: 16, wish: { picture: true } },
  'word wall': { kind: 'wall', fold: 'staple', usual: 12, wish: {} },
}

export async function layOpenWords(
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
    ...{ kind, words: words.value, ask, mark: wish.mark, group: wish.group ?? 'letter' },
    asked: toAsked(wish.bank),
    reader: { sequence, step, isStepNamed: true, extra: reader, phonics: toolsOf(state).phonicsFor(sequence.accent) },
    findPicture: (word) => succeed<Shown | undefined>(findStored(stored, word, false)),
  })
}

/** What was asked for goes into the title. */
export const toAsked = ({ pattern, vowel, kind, rhymesWith, newAtStep }: BankWish = {}) => ({
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
    const inOrder = kind === 'cards' ? toShownFirst(fitting, hasPicture, bank.count !== undefined) : fitting
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
