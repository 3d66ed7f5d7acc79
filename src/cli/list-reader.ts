// Who is to read the words of a list: by flags, else by the settings of this folder, else by a reader's own file.

import { dirname, join, resolve, sep } from 'node:path'
import { rules } from '../../rules/index.ts'
import { DEFAULT_SEQUENCE } from '../check/check-story.ts'
import { createConfigFinder, readFlags, resolveSettings, type Settings } from '../config/index.ts'
import type { Phonics } from '../phonics/types.ts'
import { fail, type Problem, type Result, succeed, toProblem, withOrigin } from '../problem/index.ts'
import type { Resources } from '../resources/types.ts'
import { findStep, type ReaderExtra, type Sequence } from '../sequence/index.ts'
import { toStepUnknown } from '../sequence/unknown-step.ts'
import { createTextReader, readTextFile } from './files/read.ts'
import type { Io } from './io.ts'
import { createResources, isSequencePath } from './resources.ts'

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
  readonly step: string
  /** The name of a built-in sequence that is used as it stands. */
  readonly builtIn: string | undefined
  readonly extra: ReaderExtra | undefined
  readonly phonics: Phonics
  readonly settings: Settings
}

export async function findListReader(asked: AskedReader, io: Io): Promise<Result<FoundReader>> {
  const resources = createResources(io)
  const held = await findSettings(asked, io)
  if (!held.ok) return held
  const settings = held.value
  if (asked.reader !== undefined) return readReaderFile(asked, asked.reader, settings, resources, io)
  const wanted = await resources.sequence(settings.sequence.value, settings.accent.value)
  if (!wanted.ok) return { ok: false, problems: wanted.problems.map((one) => withOrigin(one, settings.sequence)) }
  const found = wanted.value
  const reducedVowels = settings.reducedVowels.value ?? found.reducedVowels
  const sequence = reducedVowels === found.reducedVowels ? found : { ...found, reducedVowels }
  if (settings.step.value === undefined) return fail(toStepMissing(sequence))
  const step = findStep(sequence, settings.step.value)
  if (!step) return fail(withOrigin(toStepUnknown(settings.step.value, sequence), settings.step))
  const isBuiltIn = sequence === found && !isSequencePath(settings.sequence.value)
  return succeed({
    name: undefined,
    sequence,
    step: step.id,
    settings,
    builtIn: isBuiltIn ? settings.sequence.value : undefined,
    extra: withSightWords(undefined, settings),
    phonics: resources.phonicsFor(sequence.accent),
  })
}

/** The settings that hold for a story in this folder. */
async function findSettings(asked: AskedReader, io: Io): Promise<Result<Settings>> {
  const given = { sequence: asked.sequence, step: asked.step, accent: asked.accent }
  const flags = readFlags(given, io.cwd)
  if (flags.problems.length > 0) return fail(...flags.problems)
  const storyPath = join(io.cwd, 'words.md').replaceAll(sep, '/')
  const chain = await createConfigFinder(createTextReader(io), rules).findFor(storyPath)
  const errors = chain.problems.filter(({ severity }) => severity === 'error')
  if (errors.length > 0) return fail(...errors)
  return succeed(resolveSettings({ chain, storyPath, flags: flags.layer, rules, defaultSequence: DEFAULT_SEQUENCE }))
}

async function readReaderFile(
  asked: AskedReader,
  path: string,
  settings: Settings,
  resources: Resources,
  io: Io,
): Promise<Result<FoundReader>> {
  const file = readTextFile(resolve(io.cwd, path), io, path)
  if (!file.ok) return file
  const { loadReader } = await import('../readers/index.ts')
  const read = await loadReader(file.value, {
    path,
    phonicsFor: resources.phonicsFor,
    sequence: (name, accent) =>
      resources.sequence(toSequencePath(name, path), asked.accent === undefined ? accent : settings.accent.value),
    defaultSequence: settings.sequence.value,
  })
  if (!read.ok) return read
  const reader = read.value
  const step = asked.step === undefined ? reader.step : findStep(reader.sequence, asked.step)?.id
  if (step === undefined) return fail(toStepUnknown(asked.step ?? '', reader.sequence))
  return succeed({
    name: reader.name,
    sequence: reader.sequence,
    step,
    settings,
    builtIn: isSequencePath(reader.sequenceName) ? undefined : reader.sequenceName,
    extra: withSightWords(reader.extra, settings),
    phonics: resources.phonicsFor(reader.sequence.accent),
  })
}

/** A sequence file is meant from the folder of the file that names it. */
const toSequencePath = (name: string, readerPath: string): string =>
  isSequencePath(name) ? join(dirname(readerPath), name) : name

function withSightWords(extra: ReaderExtra | undefined, { sightWords }: Settings): ReaderExtra | undefined {
  if (sightWords.length === 0) return extra
  return { ...extra, sightWords: [...(extra?.sightWords ?? []), ...sightWords.map(({ value }) => value)] }
}

const toStepMissing = ({ steps }: Sequence): Problem =>
  toProblem({
    code: 'no-step',
    message: `Say which step the readers have reached, such as --step ${steps[1]?.id ?? steps[0]?.id ?? ''}`,
    note: '`battledore sequence` shows the steps.',
  })
