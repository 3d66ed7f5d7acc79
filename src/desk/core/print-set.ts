// A set for a lesson in the worker, as `battledore print set` makes it, with the strips of the story that is open.

import type { PreparedStory } from '../../check/check-story.ts'
import { makeBox, readQuery } from '../../finder/index.ts'
import { fail, type Result, succeed } from '../../problem/index.ts'
import { OBJECT_CAUTION } from '../../report/caution.ts'
import { layLessonSet, type Prepared, toAskedFor, type WordSheetKind } from '../../sheets/index.ts'
import { openPool } from './bank.ts'
import type { toAsk } from './press.ts'
import { layOpenWords, toAsked } from './print-words.ts'
import type { PrintKind, PrintWish } from './questions/book.ts'
import type { BankWish } from './questions/words.ts'
import { type DeskState, toolsOf } from './state.ts'

/** The kinds of words that a lesson set is made of, in the words of the page. */
const IN_SET: Readonly<Record<WordSheetKind, PrintKind>> = {
  cards: 'cards',
  list: 'list',
  sight: 'sight words',
  slips: 'slips',
  tags: 'tags',
  wall: 'word wall',
}

export async function layOpenSet(
  wish: PrintWish,
  prepared: PreparedStory,
  ask: ReturnType<typeof toAsk>,
  strips: Result<Prepared>,
  state: DeskState,
): Promise<Result<Prepared>> {
  if (!strips.ok) return strips
  const objects = await findObjects(wish.bank ?? {}, prepared, state)
  if (!objects.ok) return objects
  return layLessonSet({
    ...{ step: prepared.step, asked: toAskedFor(toAsked(wish.bank)), ask, strips: strips.value },
    ...{ objects: objects.value, caution: OBJECT_CAUTION },
    layWords: (kind, own, { words, newAtStep }) =>
      layOpenWords(
        kind,
        {
          ...wish,
          kind: IN_SET[kind],
          ...(words && { words }),
          bank: { ...wish.bank, ...(newAtStep && { newAtStep }) },
        },
        prepared,
        own,
        state,
      ),
  })
}

/** Six for the box: of one vowel where one is asked for, else of mixed vowels. */
async function findObjects(
  { vowel }: BankWish,
  { sequence, ...prepared }: PreparedStory,
  state: DeskState,
): Promise<Result<readonly string[]>> {
  const pool = await openPool({ sequence, ...prepared }, state)
  const phonics = toolsOf(state).phonicsFor(sequence.accent)
  const query = readQuery(vowel === undefined ? {} : { vowel }, { sequence, phonics, pool })
  if ('problem' in query) return fail({ code: 'bad-value', message: query.problem.replace(/\.$/, '') })
  const box = makeBox(vowel === undefined ? 'mixed' : 'box', { ...query, count: 6 }, pool, sequence)
  return 'problem' in box
    ? fail({ code: 'bad-value', message: box.problem })
    : succeed(box.words.map(({ word }) => word))
}
