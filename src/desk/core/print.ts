// Prints in the worker: a story or words, laid out and drawn as one PDF.

import { canDraw, drawPdf, type Letters } from '../../print/index.ts'
import { fail, type Result, succeed } from '../../problem/index.ts'
import { layStory, type Prepared, type SheetKind, toAdvice, toFileName, type Wishes } from '../../sheets/index.ts'
import { openLettersOf, readPictures, toAsk, toPageProblems, toStoryToPrint, withoutCommands } from './press.ts'
import { layOpenSet } from './print-set.ts'
import { KINDS, layOpenWords } from './print-words.ts'
import type { Printed, PrintWish } from './questions/book.ts'
import type { StoryText, Tried } from './questions/shared.ts'
import type { DeskState } from './state.ts'
import { openStory, toPrepared } from './stories.ts'

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
  const layStrips = () => layOpenStory('strips', { ...wish, fold }, story, letters.value, state)
  const laid =
    kind === 'book'
      ? await layOpenStory(kind, { ...wish, fold }, story, letters.value, state)
      : kind === 'strips'
        ? await layStrips()
        : kind === 'set'
          ? await layOpenSet(wish, prepared.value, ask, await layStrips(), state)
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
