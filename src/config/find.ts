// Finds the config files that hold for a story: one for each folder above it, with what each builds on.

import { findBelow, findParent, type ReadText, toFolder } from '../files/index.ts'
import type { Rule } from '../lint/types.ts'
import type { Problem, Sourced } from '../problem/index.ts'
import { type FolderConfig, type LoadedConfig, type Loader, loadFolder, loadNamed } from './load.ts'

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
  const loader: Loader = { read, rules, show }
  const chains = new Map<string, Promise<ConfigChain>>()

  const findInFolder = async (folder: string): Promise<ConfigChain> => {
    const own = await loadFolder(folder, loader)
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
  const findOnly = async (path: string) => toChain(NONE, await loadNamed(path, loader))
  return {
    findFor: (storyPath) => {
      if (only === undefined) return findChain(toFolder(storyPath))
      single ??= findOnly(only)
      return single
    },
  }
}

function toChain(outer: ConfigChain, { folder, files, problems }: LoadedConfig): ConfigChain {
  if (files.length === 0 && problems.length === 0) return outer
  return { folders: [...outer.folders, { folder, files }], problems: [...outer.problems, ...problems] }
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
