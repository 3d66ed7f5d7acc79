// Prints: reads what is asked, lays it out, draws it, writes it, and says what to do with it.

import { type Ask, drawPdf, type Letters, PAPERS } from '../../print/index.ts'
import { type Result, succeed } from '../../problem/index.ts'
import { findStep, knowledgeAt } from '../../sequence/index.ts'
import { complainOf, type ExitCode } from '../command.ts'
import type { Io } from '../io.ts'
import { type FoundReader, findListReader } from '../list-reader.ts'
import type { Prepared } from './context.ts'
import { loadLetters } from './letters.ts'
import { type Kind, type PrintOptions, readKind, readWishes, type Wishes } from './options.ts'
import { toFileName, writeAll } from './output.ts'
import { toAdvice } from './say.ts'
import { layStory, type StoryKind } from './stories.ts'
import { readStoryToPrint } from './story.ts'
import { layWords } from './words.ts'

export interface PrintTask {
  readonly kind: string
  readonly story: string | undefined
  readonly options: PrintOptions
}

export async function print(task: PrintTask, io: Io): Promise<ExitCode> {
  const done = await tryPrint(task, io)
  if (done.ok) return done.value
  complainOf(io, done.problems)
  return 2
}

async function tryPrint(task: PrintTask, io: Io): Promise<Result<ExitCode>> {
  const { options } = task
  const kind = readKind(task.kind)
  if (!kind.ok) return kind
  const wishes = readWishes(options)
  if (!wishes.ok) return wishes
  const letters = loadLetters(options.letters, options.letterShapes, io)
  if (!letters.ok) return letters
  const isOfStory = kind.value === 'book' || kind.value === 'strips' || (kind.value === 'slips' && task.story)
  const sheets = { kind: kind.value, options, wishes: wishes.value, letters: letters.value }
  const prepared = isOfStory ? await prepareStorySheets(task.story, sheets, io) : await prepareWords(sheets, io)
  if (!prepared.ok) return prepared
  return finish(prepared.value, sheets, io)
}

interface SheetWish {
  readonly kind: Kind
  readonly options: PrintOptions
  readonly wishes: Wishes
  readonly letters: Letters
}

async function prepareStorySheets(path: string | undefined, wish: SheetWish, io: Io): Promise<Result<Prepared>> {
  const { options, wishes, letters } = wish
  const story = await readStoryToPrint(path, options, io)
  if (!story.ok) return story
  const kind = wish.kind as StoryKind
  return layStory({ kind, story: story.value, options, wishes, ask: toAsk(wishes, story.value, letters) }, io)
}

async function prepareWords({ kind, options, wishes, letters }: SheetWish, io: Io): Promise<Result<Prepared>> {
  const reader = await findListReader(options, io)
  if (!reader.ok) return reader
  return layWords({ kind, options, wishes, reader: reader.value, ask: toAsk(wishes, reader.value, letters) }, io)
}

async function finish(
  { laid, title, name, told, hasUnreadable }: Prepared,
  { kind, options, wishes, letters }: SheetWish,
  io: Io,
): Promise<Result<ExitCode>> {
  const sheets = { title, sheets: laid.sheets, duplex: laid.duplex }
  const bytes = await drawPdf(sheets, letters)
  const path = options.out ?? `${toFileName(name)}.pdf`
  if (path === '-') io.stdout.write(bytes)
  else {
    const written = writeAll([{ path, bytes }], options.force ?? false, io)
    if (!written.ok) return written
  }
  for (const line of told) io.stderr.write(`${line}\n`)
  const advice = toAdvice(path, { kind, laid, wishes, bytes: bytes.length })
  ;(path === '-' ? io.stderr : io.stdout).write(`${advice}\n`)
  return succeed(options.failOn === 'error' && hasUnreadable ? 1 : 0)
}

function toAsk(
  { paper, size, cut, backs }: Wishes,
  { sequence, step }: Pick<FoundReader, 'sequence' | 'step'>,
  letters: Letters,
): Ask {
  const { limits } = knowledgeAt(sequence, findStep(sequence, step)?.id ?? step)
  return { paper: PAPERS[paper ?? 'a4'], letters, cut, size, backs, pageWords: limits.pageWords }
}
