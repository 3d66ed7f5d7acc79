// Prints: reads what is asked, lays it out, draws it, writes it, and says what to do with it.

import { type Ask, drawPdf, PAPERS, type Print } from '../../print/index.ts'
import type { Problem, Result } from '../../problem/index.ts'
import { fail, succeed, toProblemLine } from '../../problem/index.ts'
import { findStep, knowledgeAt } from '../../sequence/index.ts'
import { complain, type ExitCode } from '../command.ts'
import type { Io } from '../io.ts'
import { type FoundReader, findListReader } from '../list-reader.ts'
import { loadLetters } from './letters.ts'
import { type PrintOptions, readKind, readWishes, type Wishes } from './options.ts'
import { toFileName, writeAll } from './output.ts'
import { toAdvice } from './say.ts'
import { layWords } from './words.ts'

export interface PrintTask {
  readonly kind: string
  readonly story: string | undefined
  readonly options: PrintOptions
}

export async function print(task: PrintTask, io: Io): Promise<ExitCode> {
  const done = await tryPrint(task, io)
  if (done.ok) return done.value
  for (const problem of done.problems) complain(io, toLine(problem))
  return 2
}

const toLine = (problem: Problem): string => toProblemLine(problem)

async function tryPrint({ kind: typed, options }: PrintTask, io: Io): Promise<Result<ExitCode>> {
  const kind = readKind(typed)
  if (!kind.ok) return kind
  const wishes = readWishes(options)
  if (!wishes.ok) return wishes
  const reader = await findListReader(options, io)
  if ('problems' in reader) return fail(...reader.problems.map((message) => toWhole(message)))
  const letters = loadLetters(options.letters, options.letterShapes, io)
  if (!letters.ok) return letters
  const ask = toAsk(wishes.value, reader, letters.value)
  const prepared = await layWords({ kind: kind.value, options, wishes: wishes.value, ask, reader }, io)
  if (!prepared.ok) return prepared
  const { laid, title, name, told } = prepared.value
  const sheet: Print = { title, sheets: laid.sheets, duplex: laid.duplex }
  const bytes = await drawPdf(sheet, letters.value)
  const path = options.out ?? `${toFileName(name)}.pdf`
  if (path === '-') io.stdout.write(bytes)
  else {
    const written = writeAll([{ path, bytes }], options.force ?? false, io)
    if (!written.ok) return written
  }
  for (const line of told) io.stderr.write(`${line}\n`)
  const advice = toAdvice(path, { kind: kind.value, laid, wishes: wishes.value, bytes: bytes.length })
  ;(path === '-' ? io.stderr : io.stdout).write(`${advice}\n`)
  return succeed(options.failOn === 'error' && prepared.value.hasUnreadable ? 1 : 0)
}

const toWhole = (message: string) => ({ code: 'bad-value', message: message.replace(/\.$/, '') }) as const

function toAsk({ paper, size, cut, backs }: Wishes, { sequence, step }: FoundReader, letters: Ask['letters']): Ask {
  const { limits } = knowledgeAt(sequence, findStep(sequence, step)?.id ?? step)
  return { paper: PAPERS[paper ?? 'a4'], letters, cut, size, backs, pageWords: limits.pageWords }
}
