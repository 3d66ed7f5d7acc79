// What one run of `fix` works with: the story checked, its findings, and a judge for words that are typed.

import { relative, resolve, sep } from 'node:path'
import { rules } from '../../../rules/index.ts'
import { checkStory } from '../../check/check-story.ts'
import { isChecked } from '../../check/result.ts'
import { readFlags } from '../../config/index.ts'
import { applyEdits, type DiffPlace, type Finding, putIn, toDiffPlace, toFindings } from '../../fix/index.ts'
import { toProblemText } from '../../problem/index.ts'
import type { Paint } from '../../report/paint.ts'
import type { FactsOf } from '../../words/index.ts'
import { createTaskMaker, type Task } from '../check/task.ts'
import { complainOf, type ExitCode, toWidth } from '../command.ts'
import type { Io } from '../io.ts'
import { createResources } from '../resources.ts'

export interface FixOptions {
  readonly step?: string
  readonly sequence?: string
  readonly accent?: string
  readonly reader?: string
  readonly config?: string
  /** The line to begin at, as typed. */
  readonly from?: string
  readonly dryRun?: boolean
}

export interface Session {
  readonly task: Task
  /** As given. */
  readonly path: string
  /** Where a diff of the story holds. A file outside the current folder is named from the nearest folder that holds both. */
  readonly place: DiffPlace
  readonly findings: readonly Finding[]
  readonly view: { readonly width: number; readonly paint: Paint }
  readonly io: Io
  /** The options by which it is judged, as one would type them again. */
  readonly judgedBy: readonly string[]
  readonly factsOf: FactsOf
  /** Why the word could not be read there; undefined where it can be. */
  judge(finding: Finding, word: string): Promise<string | undefined>
}

const JUDGED_BY = ['step', 'sequence', 'accent', 'reader', 'config'] as const

/** What cannot be checked is told, with the exit code for it. */
export async function openSession(
  given: string,
  options: FixOptions,
  paint: Paint,
  io: Io,
): Promise<Session | ExitCode> {
  const flags = readFlags({ sequence: options.sequence, step: options.step, accent: options.accent }, io.cwd)
  complainOf(io, flags.problems)
  if (flags.problems.length > 0) return 2
  const reader =
    options.reader === undefined
      ? undefined
      : await (await import('../reader.ts')).readReaderOrExplain(options.reader, io)
  if (options.reader !== undefined && reader === undefined) return 2
  const tasks = createTaskMaker(io, options.config === undefined ? {} : { config: options.config })
  const task = await tasks.make({ path: given, file: resolve(io.cwd, given) })
  if (task === undefined) return 0
  const resources = createResources(io)
  const check = (one: Task, suggest: boolean) =>
    checkStory({
      ...one,
      ...(reader && { reader: reader.extra }),
      flags: { ...reader?.layer, ...flags.layer },
      rules,
      resources,
      suggest,
    })
  const result = 'problems' in task ? task : await check(task, true)
  if ('problems' in task || !isChecked(result)) {
    if ('problems' in result) complainOf(io, result.problems)
    return 2
  }
  if (tasks.hasConfigErrors()) return 2
  const help = result.messages.length > 0 ? await resources.wordHelp?.() : undefined
  const factsOf: FactsOf = (word) => help?.factsOf(word)
  return {
    task,
    path: given,
    place: toDiffPlace(relative(io.cwd, resolve(io.cwd, given)).replaceAll(sep, '/')),
    findings: toFindings(result.messages, result.story, result.lines, (word) => factsOf(word)?.main !== undefined),
    view: { width: toWidth(io), paint },
    io,
    judgedBy: JUDGED_BY.flatMap((name) => (options[name] === undefined ? [] : [`--${name}`, options[name]])),
    factsOf,
    async judge({ slot }, word) {
      if (slot === undefined) return undefined
      const edit = putIn(slot, task.source, word)
      const tried = await check({ ...task, source: applyEdits(task.source, [edit]) }, false)
      if (!isChecked(tried)) return tried.problems.map(toProblemText)[0]
      const end = edit.start + edit.text.length
      return tried.messages.find((one) => one.word !== undefined && one.start < end && one.end > edit.start)?.message
    },
  }
}
