// Which paths .gitignore and .battledoreignore leave out, folder by folder as git reads them.

import { basename, dirname, join, relative, sep } from 'node:path'
import type { Ignore } from 'ignore'
import { isForAdults } from '../../files/index.ts'
import type { Io } from '../io.ts'
import { readTextFile } from './read.ts'

/** The later of the two wins, so that a story can be kept out of git and still be checked. */
export const IGNORE_FILES = ['.gitignore', '.battledoreignore'] as const

const BY_FILES = `is left out by ${IGNORE_FILES.join(' or ')}`

type Decision = 'left out' | 'taken in' | undefined

export interface IgnoreFiles {
  /** What the ignore files say of this very path, its folders aside. */
  decide(path: string, isFolder: boolean): Promise<Decision>
  /** Why a file is left out, to follow its name; undefined where it is not. */
  findReason(file: string): Promise<string | undefined>
  /** The same for a folder. */
  findFolderReason(folder: string): Promise<string | undefined>
}

/** Paths are absolute. Ignore files count from the folder that holds `.git`; without one, from the root of the disk. */
export function createIgnoreFiles(io: Io): IgnoreFiles {
  const rules = new Map<string, Promise<Ignore | undefined>>()
  const tops = new Map<string, string>()
  const folders = new Map<string, Promise<boolean>>()
  const rulesOf = (folder: string) => remember(rules, folder, () => readRules(folder, io))
  const topOf = (folder: string) => remember(tops, folder, () => findTop(folder, io))

  const decide = async (path: string, isFolder: boolean): Promise<Decision> => {
    for (const folder of toFoldersAbove(path, topOf(dirname(path)))) {
      const found = await rulesOf(folder)
      const decision = found && test(found, relative(folder, path).replaceAll(sep, '/') + (isFolder ? '/' : ''))
      if (decision) return decision
    }
    return undefined
  }

  const isFolderOut = (folder: string): Promise<boolean> =>
    remember(folders, folder, async () => {
      if (folder === topOf(folder)) return false
      return (await isFolderOut(dirname(folder))) || (await decide(folder, true)) === 'left out'
    })

  return {
    decide,
    findFolderReason: async (folder) => ((await isFolderOut(folder)) ? BY_FILES : undefined),
    findReason: async (file) => {
      const decision = (await isFolderOut(dirname(file))) ? 'left out' : await decide(file, false)
      if (decision) return decision === 'left out' ? BY_FILES : undefined
      return isForAdults(basename(file)) ? toNoStory(basename(file)) : undefined
    },
  }
}

function toNoStory(name: string): string {
  return `is not taken for a story; a line \`!${name}\` in .battledoreignore takes it in`
}

function remember<T>(known: Map<string, T>, key: string, find: () => T): T {
  const value = known.get(key) ?? find()
  known.set(key, value)
  return value
}

async function readRules(folder: string, io: Io): Promise<Ignore | undefined> {
  const texts = IGNORE_FILES.flatMap((name) => {
    const path = join(folder, name)
    const result = io.fs.existsSync(path) ? readTextFile(path, io) : undefined
    return result?.ok ? [result.value.replace(/^\uFEFF/, '')] : []
  })
  if (texts.length === 0) return undefined
  const { default: ignore } = await import('ignore')
  return ignore({ ignoreCase: false }).add(texts.join('\n'))
}

function test(rules: Ignore, path: string): Decision {
  const { ignored, unignored } = rules.test(path)
  if (unignored) return 'taken in'
  // Left out only by way of its folder: the folder was asked before, and a deeper ignore file took it in.
  const folder = path.replace(/[^/]+\/?$/, '')
  return ignored && !(folder !== '' && rules.test(folder).ignored) ? 'left out' : undefined
}

/** The folders above a path, the nearest first, up to `top`. */
function toFoldersAbove(path: string, top: string): readonly string[] {
  const folders: string[] = []
  for (let folder = dirname(path); ; folder = dirname(folder)) {
    folders.push(folder)
    if (folder === top || folder === dirname(folder)) return folders
  }
}

/** Where ignore files begin to count: the folder that holds `.git`, else the root of the disk. */
function findTop(folder: string, io: Io): string {
  for (let above = folder; ; above = dirname(above)) {
    if (above === dirname(above) || io.fs.existsSync(join(above, '.git'))) return above
  }
}
