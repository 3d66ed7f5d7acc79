// Loads the config of one folder, or one named config, with the files it builds on.

import type { Rule } from '../lint/types.ts'
import { readConfigFile } from './config-file.ts'
import { joinPath, toFolder } from './paths.ts'
import { toProblem } from './place.ts'
import type { ConfigFile, Problem, Sourced } from './types.ts'

export const CONFIG_NAMES = ['battledore.yaml', '.battledore.yaml', 'battledore.yml'] as const

/** The text of a file; undefined where there is none. Throws an error with a clear message for one that cannot be read. */
export type ReadText = (path: string) => Promise<string | undefined>

export interface Loader {
  readonly read: ReadText
  readonly rules: readonly Rule[]
  /** Makes a path fit for messages. */
  readonly show: (path: string) => string
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

export async function loadFolder(folder: string, loader: Loader): Promise<LoadedConfig> {
  const paths = CONFIG_NAMES.map((name) => joinPath(folder, name))
  const found = (await Promise.all(paths.map((path) => readAt(path, loader)))).filter((file) => file !== undefined)
  const [first, second] = found
  if (!first) return { folder, files: [], isRoot: false, problems: [] }
  if ('message' in first) return { folder, files: [], isRoot: false, problems: [first] }
  const own = await addBase(first, folder, [first.path], loader)
  if (!second) return own
  const message = `This folder has two config files: \`${first.source.path}\` is used, this one is not.`
  const path = 'message' in second ? second.path : second.source.path
  return { ...own, problems: [...own.problems, toWholeProblem(path, message, 'warning')] }
}

/** A config that somebody names; patterns in it count from its own folder. */
export async function loadNamed(path: string, loader: Loader): Promise<LoadedConfig> {
  const folder = toFolder(path)
  const file = await readAt(path, loader)
  if (file && !('message' in file)) return addBase(file, folder, [path], loader)
  const problem = file ?? toWholeProblem(loader.show(path), 'There is no such config file.')
  return { folder, files: [], isRoot: false, problems: [problem] }
}

async function readAt(path: string, { read, rules, show }: Loader): Promise<ConfigFile | Problem | undefined> {
  try {
    const text = await read(path)
    return text === undefined ? undefined : await readConfigFile({ path: show(path), text }, rules, path)
  } catch (error) {
    return toWholeProblem(show(path), error instanceof Error ? error.message : String(error))
  }
}

async function addBase(
  file: ConfigFile,
  folder: string,
  seen: readonly string[],
  loader: Loader,
): Promise<LoadedConfig> {
  const files: ConfigFile[] = []
  const problems: Problem[] = []
  for (const base of file.extends) {
    const isCircle = seen.includes(base.value)
    const found = isCircle ? undefined : await readAt(base.value, loader)
    if (!found) problems.push(toBaseProblem(file, base, isCircle, loader))
    else if ('message' in found) problems.push(found)
    else {
      const whole = await addBase(found, folder, [...seen, base.value], loader)
      files.push(...whole.files)
      problems.push(...whole.problems)
    }
  }
  return { folder, files: [...files, file], isRoot: file.isRoot, problems: [...problems, ...file.problems] }
}

function toBaseProblem(file: ConfigFile, base: Sourced<string>, isCircle: boolean, { show }: Loader): Problem {
  const why = isCircle ? 'leads back to itself' : 'names a file that is not there'
  return toProblem(file.source, base.at ?? { start: 0, end: 0 }, `\`extends\` ${why}: \`${show(base.value)}\``)
}

/** A problem of a file as a whole. */
function toWholeProblem(path: string, message: string, severity: Problem['severity'] = 'error'): Problem {
  return toProblem({ path, text: '' }, { start: 0, end: 0 }, message, { severity })
}
