// Loads the config of one folder, or one named config, with the files it builds on.

import { joinPath, type TextFiles, toFolder } from '../files/index.ts'
import type { Rule } from '../lint/types.ts'
import { type Found, type Problem, type Sourced, toProblem } from '../problem/index.ts'
import { readConfigFile } from './config-file.ts'
import type { ConfigFile } from './types.ts'

export const CONFIG_NAMES = ['battledore.yaml', '.battledore.yaml', 'battledore.yml'] as const

export interface Loader extends Pick<TextFiles, 'read' | 'show'> {
  readonly rules: readonly Rule[]
}

/** The config of one folder: the files it builds on first, then its own. */
export interface FolderConfig {
  readonly folder: string
  readonly files: readonly ConfigFile[]
}

export interface LoadedConfig extends FolderConfig {
  readonly isRoot: boolean
  readonly problems: readonly Problem[]
}

/** Nothing of the files that cannot be read. */
interface FoundConfig {
  readonly files: readonly ConfigFile[]
  readonly problems: readonly Problem[]
}

const NOTHING: FoundConfig = { files: [], problems: [] }

export async function loadFolder(folder: string, loader: Loader): Promise<LoadedConfig> {
  const paths = CONFIG_NAMES.map((name) => joinPath(folder, name))
  const found = await Promise.all(paths.map((path) => loadFile(path, [path], loader)))
  const [first = NOTHING, second] = found.filter((one) => one !== undefined)
  const own = { folder, ...first, isRoot: first.files.at(-1)?.isRoot ?? false }
  if (second === undefined || first.files.length === 0) return own
  const [shown, unused] = [pathOf(first), pathOf(second)]
  const message = `This folder has two config files: \`${shown}\` is used, this one is not`
  return {
    ...own,
    problems: [...own.problems, toWholeProblem(unused, { code: 'unused-file', message, severity: 'warning' })],
  }
}

/** As shown to people. */
const pathOf = ({ files, problems }: FoundConfig): string => files.at(-1)?.source.path ?? problems[0]?.path ?? ''

/** A config that somebody names; patterns in it count from its own folder. */
export async function loadNamed(path: string, loader: Loader): Promise<LoadedConfig> {
  const folder = toFolder(path)
  const found = await loadFile(path, [path], loader)
  if (found) return { folder, ...found, isRoot: found.files.at(-1)?.isRoot ?? false }
  const missing = { code: 'missing-file', message: 'There is no such config file' } as const
  return { folder, files: [], isRoot: false, problems: [toWholeProblem(loader.show(path), missing)] }
}

/** A file with those that it builds on before it; undefined where there is none. @param seen the way that led to it */
async function loadFile(path: string, seen: readonly string[], loader: Loader): Promise<FoundConfig | undefined> {
  const text = await loader.read(path)
  if (text === undefined) return undefined
  const shown = loader.show(path)
  if (!text.ok) return { files: [], problems: text.problems.map((problem) => toWholeProblem(shown, problem)) }
  const file = await readConfigFile({ path: shown, text: text.value }, loader.rules, path)
  const below = await Promise.all(file.extends.map((base) => loadBase(base, seen, loader)))
  return {
    files: [...below.flatMap(({ files }) => files), file],
    problems: [...below.flatMap(({ problems }) => problems), ...file.problems],
  }
}

async function loadBase(base: Sourced<string>, seen: readonly string[], loader: Loader): Promise<FoundConfig> {
  const isCircle = seen.includes(base.value)
  const found = isCircle ? undefined : await loadFile(base.value, [...seen, base.value], loader)
  if (found) return found
  const why = isCircle ? 'leads back to itself' : 'names a file that is not there'
  const problem = toProblem({
    code: isCircle ? 'circle' : 'missing-file',
    message: `\`extends\` ${why}: \`${loader.show(base.value)}\``,
    ...(base.path !== undefined && { path: base.path }),
    ...(base.at && { place: base.at }),
  })
  return { files: [], problems: [problem] }
}

const BEGINNING = { line: 1, column: 1, offset: 0 }

/** A problem of a file as a whole stands at its beginning. */
const toWholeProblem = (path: string, found: Found): Problem =>
  toProblem({ ...found, path, place: { start: BEGINNING, end: BEGINNING } })
