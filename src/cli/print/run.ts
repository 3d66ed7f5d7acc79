// Prints: reads what is asked, lays it out, draws it, writes it, and says what to do with it.

import { type Ask, drawPdf, drawSvgs, type Letters, PAPERS, type Print, toSides } from '../../print/index.ts'
import { fail, type Result, succeed } from '../../problem/index.ts'
import { wrap } from '../../report/text.ts'
import { findStep, knowledgeAt } from '../../sequence/index.ts'
import {
  type Prepared,
  type SheetKind,
  type StorySheetKind,
  toAdvice,
  toFileName,
  type Wishes,
} from '../../sheets/index.ts'
import { complainOf, type ExitCode, toWidth } from '../command.ts'
import type { Io, Output } from '../io.ts'
import { type FoundReader, findListReader } from '../list-reader.ts'
import { layBankPage } from './bank.ts'
import { loadLetters } from './letters.ts'
import { type PrintOptions, readKind, readWishes } from './options.ts'
import { type Written, writeAll } from './output.ts'
import { laySet } from './set.ts'
import { layStory } from './stories.ts'
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
  const wishes = readWishes(kind.value, options)
  if (!wishes.ok) return wishes
  const letters = loadLetters(options, io)
  if (!letters.ok) return letters
  const isOfStory = kind.value === 'book' || kind.value === 'strips' || (kind.value === 'slips' && task.story)
  const sheets = { kind: kind.value, options, wishes: wishes.value, letters: letters.value }
  const prepared = isOfStory
    ? await prepareStorySheets(task.story, sheets, io)
    : await prepareWords(task.story, sheets, io)
  if (!prepared.ok) return prepared
  return finish(prepared.value, sheets, io)
}

interface SheetWish {
  readonly kind: SheetKind
  readonly options: PrintOptions
  readonly wishes: Wishes
  readonly letters: Letters
}

async function prepareStorySheets(path: string | undefined, wish: SheetWish, io: Io): Promise<Result<Prepared>> {
  const { options, wishes } = wish
  const story = await readStoryToPrint(path, options, io)
  if (!story.ok) return story
  const kind = wish.kind as StorySheetKind
  return layStory({ kind, story: story.value, wishes, ask: toAsk(wish, story.value) }, io)
}

async function prepareWords(path: string | undefined, wish: SheetWish, io: Io): Promise<Result<Prepared>> {
  const { kind, options, wishes } = wish
  const reader = await findListReader(options, io, isStepNeeded(kind, options))
  if (!reader.ok) return reader
  const context = { kind, options, wishes, reader: reader.value, ask: toAsk(wish, reader.value) }
  if (kind === 'bank') return layBankPage(context, io)
  if (kind !== 'set') return layWords(context, io)
  const story = path === undefined ? undefined : await readStoryToPrint(path, options, io)
  if (story && !story.ok) return story
  return laySet(context, story?.value, io)
}

/** Words that the maker names are printed as they are; a step is needed to find words, or to mark letters of them. */
const isStepNeeded = (kind: SheetKind, { words, wordsFrom, mark }: PrintOptions): boolean =>
  kind === 'set' || kind === 'bank' || mark !== 'none' || (words === undefined && wordsFrom === undefined)

async function finish(
  { laid: all, title, name, notices, hasUnreadable }: Prepared,
  { kind, options, wishes, letters }: SheetWish,
  io: Io,
): Promise<Result<ExitCode>> {
  const laid = toSides(all, wishes)
  if (laid.sheets.length === 0)
    return fail({ code: 'no-words', message: 'These sheets are printed on one side: they have no backs' })
  const print = { title, sheets: laid.sheets, duplex: laid.duplex }
  const files = await drawFiles(print, letters, options, name)
  const isPiped = options.out === '-'
  if (isPiped) for (const { bytes } of files) io.stdout.write(bytes)
  else {
    const written = writeAll(files, options.force ?? false, io)
    if (!written.ok) return written
  }
  for (const line of notices) write(line, io.stderr, io)
  const bytes = files.reduce((sum, file) => sum + file.bytes.length, 0)
  const advice = toAdvice(toShownFiles(files, isPiped), { kind, laid, wishes, bytes })
  write(advice, isPiped ? io.stderr : io.stdout, io)
  return succeed(options.failOn === 'error' && hasUnreadable ? 1 : 0)
}

/** In lines as wide as the terminal. */
function write(text: string, output: Output, io: Io): void {
  for (const line of wrap(text, toWidth(io))) output.write(`${line}\n`)
}

/** One PDF, or a drawing of each sheet: `NAME-1.svg`, `NAME-2.svg`. */
async function drawFiles(
  print: Print,
  letters: Letters,
  { format, out, sides }: PrintOptions,
  name: Prepared['name'],
): Promise<readonly Written[]> {
  const own = `${toFileName([...name, sides === 'both' ? undefined : sides])}.${format}`
  const path = out === undefined || out === '-' ? own : out
  if (format === 'pdf') return [{ path, bytes: await drawPdf(print, letters) }]
  const drawings = drawSvgs(print, letters)
  return drawings.map((svg, at) => ({
    path: drawings.length === 1 ? path : path.replace(/(\.svg)?$/i, `-${at + 1}.svg`),
    bytes: new TextEncoder().encode(svg),
  }))
}

function toShownFiles(files: readonly Written[], isPiped: boolean): string {
  const [first, last] = [files[0]?.path ?? '', files.at(-1)?.path ?? '']
  if (isPiped) return 'Standard output'
  return first === last ? first : `${first} to ${last}`
}

function toAsk(
  { options, wishes: { paper, size, cut, backs }, letters }: SheetWish,
  { sequence, step, settings }: Pick<FoundReader, 'sequence' | 'step' | 'settings'>,
): Ask {
  const { limits } = knowledgeAt(sequence, findStep(sequence, step)?.id ?? step)
  const ownPaper = PAPERS[paper ?? settings.paper.value]
  const isNumbered = options.numbers ?? false
  return { paper: ownPaper, letters, cut, size, backs, isNumbered, pageWords: limits.pageWords }
}
