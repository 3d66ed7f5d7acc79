// Loads a reader from YAML: reads it, checks it, and says what is wrong where.

import type { Accent, Phonics } from '../phonics/types.ts'
import { fail, inOrder, type Problem, type Result, succeed, withOrigin } from '../problem/index.ts'
import { findStep, knowledgeAt } from '../sequence/knowledge.ts'
import { type ReaderExtra, withReader } from '../sequence/reader.ts'
import { parseBy } from '../sequence/schema-problems.ts'
import { type Source, toSource } from '../sequence/source.ts'
import type { Sequence } from '../sequence/types.ts'
import { toStepUnknown } from '../sequence/unknown-step.ts'
import { toFloor } from './group.ts'
import { type LessonRecord, toExtra, toRecord } from './lessons.ts'
import { readLessons, readOwn } from './own.ts'
import { type ReaderFile, readerSchema } from './schema.ts'
import type { Reader } from './types.ts'

/** What loading needs from outside; nothing here touches a file. */
export interface ReaderTools {
  phonicsFor(accent: Accent): Phonics
  /** A built-in name, or a path as the reader file writes it; else why it cannot be had. */
  sequence(name: string, accent: Accent | undefined): Promise<Result<Sequence>>
  /** The sequence of a file that names none. */
  readonly defaultSequence: string
  /** Of the file, as shown to people. */
  readonly path?: string
  /** The day that is asked for, as `2026-09-14`: later lessons do not count. Without one, all do. */
  readonly on?: string | undefined
  /** A member of a group, by the path that the group's file writes. Missing where a group may not stand: in another. */
  member?(path: string): Promise<Result<Reader>>
}

/** Never throws on what a person wrote. Problems are in order of place. */
export async function loadReader(yaml: string, tools: ReaderTools): Promise<Result<Reader>> {
  const source = toSource(yaml, tools.path)
  if (source.problems.length > 0) return stop(source.problems)
  if (typeof source.value !== 'object' || source.value === null || Array.isArray(source.value)) {
    const message = 'Write a reader as `name: …` and `step: …`, each on its own line'
    return stop([source.problemAt([], { code: 'bad-value', message })])
  }
  const { value: file, problems } = parseBy(readerSchema, source)
  if (file === undefined || problems.length > 0) return stop(problems)
  return file.members === undefined ? loadOne(file, source, tools) : loadGroup(file, file.members, source, tools)
}

const stop = (problems: readonly Problem[]): Result<Reader> => ({ ok: false, problems: inOrder(problems) })

async function loadOne(file: ReaderFile, source: Source, tools: ReaderTools): Promise<Result<Reader>> {
  const sequenceName = file.sequence ?? tools.defaultSequence
  const asked = await tools.sequence(sequenceName, file.accent)
  if (!asked.ok) return stop(asked.problems.map((problem) => toHere(problem, source)))
  const sequence = asked.value
  const phonics = tools.phonicsFor(sequence.accent)
  const lessons = readLessons(file, sequence, phonics, source)
  const record = toRecord(lessons.value, tools.on)
  const reached = findReached(file, record, sequence, source, tools)
  if (!reached.ok) return stop([...reached.problems, ...lessons.problems])
  const step = reached.value
  const taught = knowledgeAt(sequence, step)
  const own = readOwn(file, { step, taught }, phonics, source)
  const problems = [...lessons.problems, ...own.problems]
  if (problems.length > 0) return stop(problems)
  const hasRecord = file.lessons !== undefined
  const extra = hasRecord ? add(own.value, toExtra(record)) : own.value
  const knowledge = withReader(taught, extra)
  const name = file.name.trim()
  return succeed({ name, sequence, sequenceName, step, extra, knowledge, ...(hasRecord && { record }) })
}

/** The step of the last lesson that counts, or else of the file. */
function findReached(
  file: ReaderFile,
  record: LessonRecord,
  sequence: Sequence,
  source: Source,
  { on }: ReaderTools,
): Result<string> {
  if (record.step !== undefined) return succeed(record.step)
  if (file.step === undefined) {
    const when = file.lessons === undefined || on === undefined ? '' : `, and no lesson up to ${on} names one`
    return fail(source.problemAt([], { code: 'missing-key', message: `\`step:\` is missing here${when}` }))
  }
  const step = findStep(sequence, file.step)
  return step ? succeed(step.id) : fail(source.problemAt(['step'], toStepUnknown(file.step, sequence)))
}

/** The file's own word comes last: what it takes away is gone, whatever the lessons say. */
function add(own: ReaderExtra, lessons: Required<ReaderExtra>): ReaderExtra {
  const join = <Item>(one: readonly Item[], other: readonly Item[] = []): readonly Item[] => [...one, ...other]
  return {
    sightWords: join(lessons.sightWords, own.sightWords),
    sightWordsNotYet: join(lessons.sightWordsNotYet, own.sightWordsNotYet),
    correspondences: join(lessons.correspondences, own.correspondences),
    correspondencesNotYet: join(lessons.correspondencesNotYet, own.correspondencesNotYet),
    endings: lessons.endings,
    endingsNotYet: lessons.endingsNotYet,
  }
}

async function loadGroup(
  file: ReaderFile,
  paths: readonly string[],
  source: Source,
  tools: ReaderTools,
): Promise<Result<Reader>> {
  const { member } = tools
  if (member === undefined) {
    const message = 'This is a group itself: name its members instead'
    return stop([source.problemAt(['members'], { code: 'circle', message }, { atKey: true })])
  }
  const problems = Object.keys(file)
    .filter((key) => key !== 'name' && key !== 'members')
    .map((key) => {
      const message = `A group has only \`name:\` and \`members:\`; write \`${key}:\` in the files of its members`
      return source.problemAt([key], { code: 'unknown-key', message }, { atKey: true })
    })
  const members: Reader[] = []
  for (const [at, path] of paths.entries()) {
    const found = await member(path)
    if (found.ok) members.push(found.value)
    else problems.push(...found.problems.map((one) => (one.place ? one : source.problemAt(['members', at], one))))
    const odd = found.ok ? findOdd(found.value, members[0] ?? found.value) : undefined
    if (odd) problems.push(source.problemAt(['members', at], { code: 'bad-value', message: odd }))
  }
  return problems.length > 0 ? stop(problems) : succeed(toFloor(file.name.trim(), members))
}

/** Why a member cannot be put together with the first one. */
function findOdd(reader: Reader, first: Reader): string | undefined {
  if (reader.sequence.name !== first.sequence.name)
    return `\`${reader.name}\` follows \`${reader.sequence.name}\` and \`${first.name}\` \`${first.sequence.name}\`: a group has one sequence`
  if (reader.sequence.accent !== first.sequence.accent)
    return `\`${reader.name}\` hears another accent than \`${first.name}\`: a group has one`
  return undefined
}

/** A mistake of the sequence stands in its own file; without a place there, where this file names it. */
function toHere(problem: Problem, source: Source): Problem {
  const { path, place } = source.problemAt(['sequence'], problem)
  return withOrigin(problem, { origin: 'the reader', ...(path !== undefined && { path }), ...(place && { at: place }) })
}
