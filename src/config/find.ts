// Finds the config files that hold for a story: one for each folder above it, with what each builds on.

import type { Rule } from '../lint/types.ts'
import { readConfigFile } from './config-file.ts'
import { findBelow, findParent, joinPath, toFolder } from './paths.ts'
import { toProblem } from './place.ts'
import type { ConfigFile, Problem, Sourced } from './types.ts'

export const CONFIG_NAMES = ['battledore.yaml', '.battledore.yaml', 'battledore.yml'] as const

/** The text of a file; undefined where there is none. Throws an error with a clear message for one that cannot be read. */
export type ReadText = (path: string) => Promise<string | undefined>

/** The config of one folder: the files it builds on first, then its own. */
export interface FolderConfig {
  readonly folder: string
  readonly files: readonly ConfigFile[]
}

export interface ConfigChain {
  /** The outermost folder first: a later one wins. */
  readonly folders: readonly FolderConfig[]
  /** The same objects for every story that they touch, so that each can be told once. */
  readonly problems: readonly Problem[]
}

export interface ConfigFinder {
  /** The path is absolute or counts from where `read` counts; with forward slashes. */
  findFor(storyPath: string): Promise<ConfigChain>
}

const NONE: ConfigChain = { folders: [], problems: [] }

/**
 * Each folder is read once. Outer folders count until one says `root: true`.
 * With `only`, that file stands in for all folders. `show` makes paths fit for messages.
 */
export function createConfigFinder(
  read: ReadText,
  rules: readonly Rule[],
  { only, show = (path) => path }: { readonly only?: string; readonly show?: (path: string) => string } = {},
): ConfigFinder {
  const load = createLoader(read, rules, show)
  const chains = new Map<string, Promise<ConfigChain>>()

  const findInFolder = async (folder: string): Promise<ConfigChain> => {
    const own = await load.findOwn(folder)
    const parent = findParent(folder)
    if (own.isRoot || parent === undefined) return toChain(NONE, own)
    return toChain(await findChain(parent), own)
  }
  const findChain = (folder: string): Promise<ConfigChain> => {
    const chain = chains.get(folder) ?? findInFolder(folder)
    chains.set(folder, chain)
    return chain
  }
  let single: Promise<ConfigChain> | undefined
  const findOnly = async (path: string) => toChain(NONE, await load.withBase(path, toFolder(path)))
  return {
    findFor: (storyPath) => {
      if (only === undefined) return findChain(toFolder(storyPath))
      single ??= findOnly(only)
      return single
    },
  }
}

interface Own extends FolderConfig {
  readonly isRoot: boolean
  readonly problems: readonly Problem[]
}

function toChain(outer: ConfigChain, { folder, files, problems }: Own): ConfigChain {
  if (files.length === 0 && problems.length === 0) return outer
  return { folders: [...outer.folders, { folder, files }], problems: [...outer.problems, ...problems] }
}

function createLoader(read: ReadText, rules: readonly Rule[], show: (path: string) => string) {
  const readAt = async (path: string): Promise<ConfigFile | Problem | undefined> => {
    try {
      const text = await read(path)
      return text === undefined ? undefined : await readConfigFile({ path: show(path), text }, rules, path)
    } catch (error) {
      const message = error instanceof Error ? error.message : String(error)
      return toProblem({ path: show(path), text: '' }, { start: 0, end: 0 }, message)
    }
  }

  const withBase = async (path: string, folder: string): Promise<Own> => {
    const file = await readAt(path)
    if (file && 'message' in file) return { folder, files: [], isRoot: false, problems: [file] }
    if (file) return addBase(file, folder, [path])
    const missing = toProblem({ path: show(path), text: '' }, { start: 0, end: 0 }, 'There is no such config file.')
    return { folder, files: [], isRoot: false, problems: [missing] }
  }

  const addBase = async (file: ConfigFile, folder: string, seen: readonly string[]): Promise<Own> => {
    const files: ConfigFile[] = []
    const problems: Problem[] = []
    for (const base of file.extends) {
      const found = seen.includes(base.value) ? 'itself' : await readAt(base.value)
      if (!found || found === 'itself') problems.push(toBaseProblem(file, base, found, show))
      else if ('message' in found) problems.push(found)
      else {
        const whole = await addBase(found, folder, [...seen, base.value])
        files.push(...whole.files)
        problems.push(...whole.problems)
      }
    }
    return { folder, files: [...files, file], isRoot: file.isRoot, problems: [...problems, ...file.problems] }
  }

  const findOwn = async (folder: string): Promise<Own> => {
    const paths = CONFIG_NAMES.map((name) => joinPath(folder, name))
    const found = (await Promise.all(paths.map(readAt))).filter((file) => file !== undefined)
    const [first, second] = found
    if (!first) return { folder, files: [], isRoot: false, problems: [] }
    if ('message' in first) return { folder, files: [], isRoot: false, problems: [first] }
    const own = await addBase(first, folder, [first.path])
    if (!second) return own
    const message = `This folder has two config files: \`${first.source.path}\` is used, this one is not.`
    const path = 'message' in second ? second.path : second.source.path
    const problem = toProblem({ path, text: '' }, { start: 0, end: 0 }, message, { severity: 'warning' })
    return { ...own, problems: [...own.problems, problem] }
  }

  return { findOwn, withBase }
}

function toBaseProblem(
  file: ConfigFile,
  base: Sourced<string>,
  found: 'itself' | undefined,
  show: (path: string) => string,
): Problem {
  const why = found === 'itself' ? 'leads back to itself' : 'names a file that is not there'
  return toProblem(file.source, base.at ?? { start: 0, end: 0 }, `\`extends\` ${why}: \`${show(base.value)}\``)
}

/** The pattern of a config that leaves a story out. */
export function findIgnoring(chain: ConfigChain, storyPath: string): Sourced<string> | undefined {
  for (const { folder, files } of chain.folders.toReversed()) {
    const below = findBelow(folder, storyPath)
    if (below === undefined) continue
    for (const file of files.toReversed()) {
      const pattern = file.findIgnoring(below)
      if (pattern) return pattern
    }
  }
  return undefined
}
