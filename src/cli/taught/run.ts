// One run of `taught`: adds a lesson to each reader's file, and changes no other byte of it.

import { resolve } from 'node:path'
import { fail, type Problem, type Result, succeed, toProblem } from '../../problem/index.ts'
import type { Reader } from '../../readers/index.ts'
import { toLessonLines, toTaughtLine } from '../../report/taught.ts'
import { resolveItem, type TaughtItem } from '../../sequence/item.ts'
import { findStep } from '../../sequence/knowledge.ts'
import { appendToList, applyInsertion } from '../../yaml/append.ts'
import { complainOf, type ExitCode, toWidth } from '../command.ts'
import { readTextFile } from '../files/read.ts'
import { findWriteObstacle, writeTextFile } from '../files/write.ts'
import type { Io } from '../io.ts'
import { readReaderFile, toDay } from '../readers.ts'
import { createResources } from '../resources.ts'

export interface TaughtOptions {
  readonly date?: string
  readonly notSecure?: boolean
}

interface NewLesson {
  readonly date: string
  readonly step: string | undefined
  readonly items: readonly TaughtItem[]
  readonly isSecure: boolean
}

interface Change {
  readonly path: string
  readonly text: string
  readonly before: Reader
  readonly after: Reader
  readonly lesson: NewLesson
}

/** All readers of a group or none: nothing is written where anything is wrong. */
export async function runTaught(
  path: string,
  what: readonly string[],
  options: TaughtOptions,
  io: Io,
): Promise<ExitCode> {
  const day = toDay(options.date, io)
  const changes = day.ok ? await plan(path, what, { ...options, date: day.value }, io) : day
  if (!changes.ok) {
    complainOf(io, changes.problems)
    return 2
  }
  for (const { path: file, text } of changes.value) {
    const written = writeTextFile(resolve(io.cwd, file), text, io, file)
    if (!written.ok) {
      complainOf(io, written.problems)
      return 2
    }
  }
  for (const change of changes.value) for (const line of toTaughtLine(change, toWidth(io))) io.stdout.write(`${line}\n`)
  return 0
}

async function plan(
  path: string,
  what: readonly string[],
  options: TaughtOptions & { readonly date: string },
  io: Io,
): Promise<Result<readonly Change[]>> {
  const resources = createResources(io)
  const read = await readReaderFile(path, io, resources)
  if (!read.ok) return read
  const changes: Change[] = []
  const problems: Problem[] = []
  for (const { path: file, reader } of read.value.files) {
    const phonics = resources.phonicsFor(reader.sequence.accent)
    const lesson = toLesson(what, reader, options, (written) => resolveItem(written, phonics))
    if (!lesson.ok) return lesson
    const change = await toChange(file, reader, lesson.value, io)
    if (change.ok) changes.push(change.value)
    else problems.push(...change.problems)
  }
  return problems.length > 0 ? { ok: false, problems } : succeed(changes)
}

function toLesson(
  what: readonly string[],
  { sequence }: Reader,
  { date, notSecure }: TaughtOptions & { readonly date: string },
  resolveOne: (written: string) => ReturnType<typeof resolveItem>,
): Result<NewLesson> {
  const problems: Problem[] = []
  const steps: string[] = []
  const items: TaughtItem[] = []
  for (const written of what) {
    const step = findStep(sequence, written.trim())
    const resolved = step === undefined ? resolveOne(written) : undefined
    if (step) steps.push(step.id)
    else if (resolved && 'item' in resolved) items.push(resolved.item)
    else if (resolved) problems.push(resolved.problem)
  }
  if (steps.length > 1)
    problems.push(toProblem({ code: 'bad-value', message: `One lesson reaches one step, not ${steps.join(' and ')}` }))
  if (problems.length > 0) return { ok: false, problems }
  return succeed({ date, step: steps[0], items, isSecure: notSecure !== true })
}

async function toChange(path: string, before: Reader, lesson: NewLesson, io: Io): Promise<Result<Change>> {
  const full = resolve(io.cwd, path)
  const obstacle = findWriteObstacle(full, io, path)
  if (obstacle) return { ok: false, problems: [obstacle] }
  const file = readTextFile(full, io, path)
  if (!file.ok) return file
  const lines = toLessonLines(lesson)
  const insertion = appendToList(file.value, ['lessons'], lines)
  if (insertion === undefined) return fail(toUnfit(path, lines))
  const text = applyInsertion(file.value, insertion)
  // Read again before it is written: a lesson that cannot be read would be worse than none.
  const after = await readReaderFile(path, io, createResources(io), { text })
  return after.ok ? succeed({ path, text, before, after: after.value.reader, lesson }) : after
}

const toUnfit = (path: string, lines: readonly string[]): Problem =>
  toProblem({
    code: 'bad-value',
    path,
    message: `${path} is not built so that a lesson can be added`,
    note: `Add it by hand below \`lessons:\`: ${lines.join(', ')}.`,
  })
