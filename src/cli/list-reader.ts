// Who is to read the words of a list: by flags, else by the settings of this folder, else by a reader's own file.

import { join, sep } from 'node:path'
import { rules } from '../../rules/index.ts'
import { DEFAULT_SEQUENCE } from '../check/check-story.ts'
import { findWhoReads } from '../check/who-reads.ts'
import { createConfigFinder, type Layer, readFlags, resolveSettings, type Settings } from '../config/index.ts'
import { isBuiltIn } from '../packaged/data.ts'
import type { Phonics } from '../phonics/types.ts'
import { fail, type Problem, type Result, succeed, toProblem } from '../problem/index.ts'
import type { ReaderExtra, Sequence } from '../sequence/index.ts'
import { createTextFiles } from './files/text-files.ts'
import type { Io } from './io.ts'
import type { ReaderSettings } from './reader.ts'
import { createResources } from './resources.ts'

export interface AskedReader {
  readonly sequence?: string
  readonly step?: string
  readonly accent?: string
  /** The path of a reader's file. */
  readonly reader?: string
}

export interface FoundReader {
  /** As the reader's file has it. */
  readonly name: string | undefined
  readonly sequence: Sequence
  /** The last step of the sequence where none is named and none is needed. */
  readonly step: string
  readonly isStepNamed: boolean
  /** The name of a built-in sequence that is used as it stands. */
  readonly builtIn: string | undefined
  readonly extra: ReaderExtra | undefined
  readonly phonics: Phonics
  readonly settings: Settings
}

/** Flags have the last word over the reader's file, and that over the settings of this folder. */
export async function findListReader(asked: AskedReader, io: Io, isStepNeeded = true): Promise<Result<FoundReader>> {
  const resources = createResources(io)
  const flags = readFlags({ sequence: asked.sequence, step: asked.step, accent: asked.accent }, io.cwd)
  if (flags.problems.length > 0) return fail(...flags.problems)
  const folder = await findSettings(flags.layer, io)
  if (!folder.ok || asked.reader === undefined) return folder.ok ? find(folder.value, undefined) : folder
  const { readReader } = await import('./reader.ts')
  const reader = await readReader(asked.reader, io, {
    defaultSequence: folder.value.sequence.value,
    accent: flags.layer.accent?.value,
  })
  if (!reader.ok) return reader
  const settings = await findSettings({ ...reader.value.layer, ...flags.layer }, io)
  return settings.ok ? find(settings.value, reader.value) : settings

  async function find(settings: Settings, own: ReaderSettings | undefined): Promise<Result<FoundReader>> {
    const who = await findWhoReads(settings, resources, own?.extra)
    if (!who.ok) return who
    const { sequence, step: named, reader: extra, phonics } = who.value
    const isStepNamed = named !== undefined
    const step = named ?? (isStepNeeded ? undefined : sequence.steps.at(-1)?.id)
    if (step === undefined) return fail(toStepMissing(sequence))
    const builtIn = isBuiltIn(sequence) ? sequence.name : undefined
    return succeed({ name: own?.name, sequence, step, isStepNamed, settings, builtIn, extra, phonics })
  }
}

/** The settings that hold for a story in this folder, under these. */
export async function findSettings(flags: Layer, io: Io): Promise<Result<Settings>> {
  const storyPath = join(io.cwd, 'words.md').replaceAll(sep, '/')
  const { read, show } = createTextFiles(io)
  const chain = await createConfigFinder(read, rules, { show }).findFor(storyPath)
  const errors = chain.problems.filter(({ severity }) => severity === 'error')
  if (errors.length > 0) return fail(...errors)
  return succeed(resolveSettings({ chain, storyPath, flags, rules, defaultSequence: DEFAULT_SEQUENCE }))
}

const toStepMissing = ({ steps }: Sequence): Problem =>
  toProblem({
    code: 'no-step',
    message: `Say which step the readers have reached, such as --step ${steps[1]?.id ?? steps[0]?.id ?? ''}`,
    note: '`battledore sequence` shows the steps.',
  })
