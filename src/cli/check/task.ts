// One story to check: its text and the config that holds for it, before anything is judged.

import { resolve } from 'node:path'
import { rules } from '../../../rules/index.ts'
import type { UncheckedStory } from '../../check/result.ts'
import { type ConfigChain, createConfigFinder, findIgnoring } from '../../config/index.ts'
import type { Problem, Result } from '../../problem/index.ts'
import { complainOf } from '../command.ts'
import type { StoryFile } from '../files/find.ts'
import { readStdin, readTextFile } from '../files/read.ts'
import { toSlashes } from '../files/shown.ts'
import { createTextFiles } from '../files/text-files.ts'
import type { Io } from '../io.ts'

/** A file, and its text where that is not what lies on the disk. */
export interface StoryInput extends StoryFile {
  readonly text?: Result<string>
}

export interface Task {
  /** As shown to people. */
  readonly path: string
  /** The path that config files count from. */
  readonly storyPath: string
  readonly source: string
  readonly chain: ConfigChain
}

export interface TaskMaker {
  /** Undefined for a story that the config leaves out, which is reported. */
  make(input: StoryInput): Promise<Task | UncheckedStory | undefined>
  findChain(storyPath: string): Promise<ConfigChain>
  /** Whether a config file with a mistake was met. */
  hasConfigErrors(): boolean
}

export interface TaskOptions {
  readonly config?: string
  readonly stdinFilename?: string
}

/** Mistakes in config files are reported each once, on stderr if nothing else is said. */
export function createTaskMaker(
  io: Io,
  options: TaskOptions,
  report: (problem: Problem) => void = (problem) => complainOf(io, [problem]),
): TaskMaker {
  const only = options.config === undefined ? {} : { only: toSlashes(resolve(io.cwd, options.config)) }
  const { read, show } = createTextFiles(io)
  const configs = createConfigFinder(read, rules, { ...only, show })
  const reported = new Set<Problem>()

  async function findChain(storyPath: string): Promise<ConfigChain> {
    const chain = await configs.findFor(storyPath)
    for (const problem of chain.problems) {
      if (reported.has(problem)) continue
      reported.add(problem)
      report(problem)
    }
    return chain
  }

  async function make(input: StoryInput): Promise<Task | UncheckedStory | undefined> {
    const isStdin = input.path === '-'
    const path = isStdin ? (options.stdinFilename ?? 'standard input') : input.path
    const storyPath = toStoryPath(isStdin ? (options.stdinFilename ?? 'story.md') : input.file, io)
    const chain = await findChain(storyPath)
    const ignoring = findIgnoring(chain, storyPath)
    if (ignoring) {
      io.stderr.write(`${path} is left out by \`${ignoring.value}\` (${ignoring.origin}).\n`)
      return undefined
    }
    const text = input.text ?? (isStdin ? await readStdin(io) : readTextFile(input.file, io, path))
    return text.ok ? { path, storyPath, source: text.value, chain } : { path, problems: text.problems }
  }

  return { make, findChain, hasConfigErrors: () => [...reported].some(({ severity }) => severity === 'error') }
}

export const toStoryPath = (path: string, { cwd }: Pick<Io, 'cwd'>): string => toSlashes(resolve(cwd, path))
