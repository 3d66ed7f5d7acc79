// One story to check: its text and the config that holds for it, before anything is judged.

import { resolve, sep } from 'node:path'
import { rules } from '../../../rules/index.ts'
import type { UncheckedStory } from '../../check/result.ts'
import { type ConfigChain, createConfigFinder, findIgnoring, type Problem, toProblemLine } from '../../config/index.ts'
import { complain } from '../command.ts'
import type { StoryFile } from '../files/find.ts'
import { createTextReader, type ReadResult, readStdin, readTextFile } from '../files/read.ts'
import type { Io } from '../io.ts'

/** A file, and its text where that is not what lies on the disk. */
export interface StoryInput extends StoryFile {
  readonly text?: ReadResult
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
  /** Undefined for a story that the config leaves out, which is told. */
  make(input: StoryInput): Promise<Task | UncheckedStory | undefined>
  findChain(storyPath: string): Promise<ConfigChain | { readonly message: string }>
  /** Whether a config file with a mistake was met. */
  hasConfigErrors(): boolean
}

export interface TaskOptions {
  readonly config?: string
  readonly stdinFilename?: string
}

/** Mistakes in config files are told each once, on stderr if nothing else is said. */
export function createTaskMaker(
  io: Io,
  options: TaskOptions,
  tell: (line: string) => void = (line) => complain(io, line),
): TaskMaker {
  const only = options.config === undefined ? {} : { only: toSlashes(resolve(io.cwd, options.config)) }
  const configs = createConfigFinder(createTextReader(io), rules, { ...only, show: (path) => toShown(path, io) })
  const told = new Set<Problem>()

  async function findChain(storyPath: string): Promise<ConfigChain | { readonly message: string }> {
    try {
      const chain = await configs.findFor(storyPath)
      for (const problem of chain.problems) {
        if (told.has(problem)) continue
        told.add(problem)
        tell(toProblemLine(problem))
      }
      return chain
    } catch (error) {
      return { message: error instanceof Error ? error.message : String(error) }
    }
  }

  async function make(input: StoryInput): Promise<Task | UncheckedStory | undefined> {
    const isStdin = input.path === '-'
    const path = isStdin ? (options.stdinFilename ?? 'standard input') : input.path
    const storyPath = toStoryPath(isStdin ? (options.stdinFilename ?? 'story.md') : input.file, io)
    const chain = await findChain(storyPath)
    if ('message' in chain) return { path, failures: [chain.message] }
    const ignoring = findIgnoring(chain, storyPath)
    if (ignoring) {
      io.stderr.write(`${path} is left out by \`${ignoring.value}\` (${ignoring.origin}).\n`)
      return undefined
    }
    const text = input.text ?? (isStdin ? await readStdin(io) : readTextFile(input.file, io, path))
    return text.ok ? { path, storyPath, source: text.text, chain } : { path, failures: [text.message] }
  }

  return { make, findChain, hasConfigErrors: () => [...told].some(({ severity }) => severity === 'error') }
}

export const toStoryPath = (path: string, { cwd }: Pick<Io, 'cwd'>): string => toSlashes(resolve(cwd, path))

const toSlashes = (path: string): string => path.replaceAll(sep, '/')

function toShown(path: string, io: Io): string {
  const folder = `${toSlashes(io.cwd)}/`
  return path.startsWith(folder) ? path.slice(folder.length) : path
}
