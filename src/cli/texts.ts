// Reads many texts one after another for the commands that count: each with its settings, and what went wrong on stderr.

import { rules } from '../../rules/index.ts'
import { type ReadText, readText } from '../check/read-text.ts'
import type { Layer } from '../config/index.ts'
import { readFlags } from '../config/index.ts'
import type { Problem } from '../problem/index.ts'
import { createOnce } from '../report/problems.ts'
import { createTaskMaker } from './check/task.ts'
import { complainOf } from './command.ts'
import { findStories } from './files/find.ts'
import type { Io } from './io.ts'
import { createProgress } from './progress.ts'

export interface TextOptions {
  readonly sequence?: string
  readonly accent?: string
  readonly config?: string
}

export interface NamedText extends ReadText {
  /** As shown to people. */
  readonly path: string
  /** The path that config files count from. */
  readonly storyPath: string
  /** Names that the story allows, as written. */
  readonly names: readonly string[]
  /** Sight words that its settings add. */
  readonly sightWords: readonly string[]
}

export interface TextRun {
  /** Hands over text after text, and keeps none. The handler may tell what is wrong with one. */
  each(
    given: readonly string[],
    handle: (text: NamedText, fail: (problem: Problem) => void) => Promise<void>,
  ): Promise<void>
  /** Whether anything could not be read. */
  hasFailed(): boolean
}

/**
 * Undefined where the options themselves are wrong, which is told.
 * @param reader sequence and accent of a reader; flags have the last word over them
 */
export function createTextRun(io: Io, options: TextOptions, reader: Layer = {}): TextRun | undefined {
  const flags = readFlags({ sequence: options.sequence, accent: options.accent }, io.cwd)
  complainOf(io, flags.problems)
  return flags.problems.length > 0 ? undefined : toRun(io, options, { ...reader, ...flags.layer })
}

function toRun(io: Io, options: TextOptions, flags: Layer): TextRun {
  const tasks = createTaskMaker(io, options.config === undefined ? {} : { config: options.config })
  let failed = false
  return {
    async each(given, handle) {
      const found = await findStories(given, io)
      for (const notice of found.notices) io.stderr.write(`${notice}\n`)
      const progress = createProgress(io, found.files.length)
      const isNew = createOnce()
      const fail = (problem: Problem): void => {
        failed = true
        progress.hide()
        if (isNew(problem)) complainOf(io, [problem])
      }
      found.problems.forEach(fail)
      for (const [at, file] of found.files.entries()) {
        progress.step(at, file.path)
        const task = await tasks.make(file)
        if (task === undefined) continue
        if ('problems' in task) {
          task.problems.forEach(fail)
          continue
        }
        const read = await readText({ ...task, flags, rules })
        if ('problems' in read) {
          read.problems.forEach(fail)
          continue
        }
        read.own.problems.forEach(fail)
        const names = read.settings.names.map(({ value }) => value)
        const sightWords = read.settings.sightWords.map(({ value }) => value)
        await handle({ ...read, path: task.path, storyPath: task.storyPath, names, sightWords }, fail)
      }
      progress.end()
    },
    hasFailed: () => failed || tasks.hasConfigErrors(),
  }
}

/**
 * A share as a person writes it: `90`, `90%` or `0.9`. A figure up to 1 is a part of one.
 * @throws an error with a message for the person
 */
export function toShare(given: string): number {
  const [, figure, percent] = /^(\d{1,3}(?:\.\d+)?)\s*(%?)$/.exec(given.trim()) ?? []
  const value = Number(figure)
  const share = percent === '' && value <= 1 ? value : value / 100
  if (figure !== undefined && share >= 0 && share <= 1) return share
  throw new Error(`--share is a percentage such as 90, or a part of one such as 0.9; this is \`${given}\`.`)
}
