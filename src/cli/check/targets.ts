// What a check may write over: its own files and old reports, never a story, settings, or a file of another kind.

import { basename, resolve } from 'node:path'
import { isSequencePath, STORY_NAME } from '../../files/index.ts'
import { toShownPath } from '../files/file-problem.ts'
import { IGNORE_FILES } from '../files/ignore-files.ts'
import { readTextFile } from '../files/read.ts'
import type { Io } from '../io.ts'
import { isOwnBaseline } from './baseline.ts'
import { isOwnCache } from './cache.ts'
import type { Inputs } from './inputs.ts'
import { type CheckOptions, type CheckSettings, toBaselineFile } from './options.ts'

interface Target {
  readonly flag: string
  readonly file: string
  readonly kind: 'cache' | 'baseline' | 'report'
}

export interface Run {
  readonly given: readonly string[]
  readonly inputs: Inputs
  readonly settings: CheckSettings
  readonly options: CheckOptions
}

const SETTINGS_NAME = /\.ya?ml$/i
const OTHER_SETTINGS: ReadonlySet<string> = new Set(['package.json', ...IGNORE_FILES])

/** One line for the first file that would be lost; undefined where there is none. */
export function findLoss(run: Run, io: Io): string | undefined {
  for (const target of listTargets(run)) {
    const why = findReason(target, run, io)
    if (why !== undefined) return `${target.flag} cannot be ${toShownPath(target.file)}: ${why}.`
  }
  return undefined
}

function listTargets({ settings, options }: Run): readonly Target[] {
  const { cacheFile, writeBaseline } = options
  const reports = writeBaseline ? [] : settings.wanted
  return [
    ...(cacheFile === undefined ? [] : [{ flag: '--cache-file', file: cacheFile, kind: 'cache' } as const]),
    ...(writeBaseline ? [{ flag: '--baseline', file: toBaselineFile(options), kind: 'baseline' } as const] : []),
    ...reports.flatMap(({ file, format }) => {
      if (file === undefined) return []
      return [
        {
          flag: file === options.output ? '--output' : `The file of --format ${format}`,
          file,
          kind: 'report',
        } as const,
      ]
    }),
  ]
}

function findReason({ file, kind }: Target, run: Run, io: Io): string | undefined {
  const path = resolve(io.cwd, file)
  if (STORY_NAME.test(path)) return 'a file of that name is a story'
  if (SETTINGS_NAME.test(path) || OTHER_SETTINGS.has(basename(path))) return 'a file of that name holds settings'
  const status = toStatus(path, io)
  if (status === undefined) return undefined
  if (kind === 'cache' && !status.isFile()) return status.isDirectory() ? 'that is a folder' : 'that is no plain file'
  if (!status.isFile()) return undefined
  const isSame = (other: string): boolean => {
    const { dev, ino } = toStatus(resolve(io.cwd, other), io) ?? {}
    return dev === status.dev && ino === status.ino
  }
  if (run.inputs.files.some((input) => isSame(input.file)) || run.given.some(isSame)) return 'that is a story to check'
  if (listInUse(run.options).some(isSame)) return 'this check reads it'
  if (kind === 'cache' && !isOwnCache(path, io)) return 'it is there already and holds something else'
  if (kind === 'baseline' && !holdsBaseline(path, io)) return 'it is there already and is no baseline'
  return undefined
}

function listInUse({ config, reader, sequence, baseline, writeBaseline }: CheckOptions): readonly string[] {
  const files = [config, reader, writeBaseline ? undefined : baseline]
  if (sequence !== undefined && isSequencePath(sequence)) files.push(sequence)
  return files.filter((file) => file !== undefined)
}

function holdsBaseline(path: string, io: Io): boolean {
  const text = readTextFile(path, io)
  return text.ok && isOwnBaseline(text.value)
}

/** Undefined too for what may not be looked at: writing it will fail, and say why. */
function toStatus(path: string, io: Io) {
  try {
    return io.fs.statSync(path, { throwIfNoEntry: false })
  } catch {
    return undefined
  }
}
