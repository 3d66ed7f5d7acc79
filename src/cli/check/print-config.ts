// `check --print-config`: every setting that holds for one story, and who set it.

import { rules } from '../../../rules/index.ts'
import { DEFAULT_SEQUENCE, readText } from '../../check/read-text.ts'
import { type ConfigChain, type Layer, resolveSettings, type Settings, toSettingRows } from '../../config/index.ts'
import type { Sourced } from '../../problem/index.ts'
import type { Sequence } from '../../sequence/types.ts'
import type { ExitCode } from '../command.ts'
import { readTextFile } from '../files/read.ts'
import type { Io } from '../io.ts'
import { createResources } from '../resources.ts'
import type { CheckSettings } from './options.ts'
import { createTaskMaker, type TaskOptions, toStoryPath } from './task.ts'

export async function printConfig(
  path: string,
  { flags, wanted }: CheckSettings,
  options: TaskOptions,
  io: Io,
): Promise<ExitCode> {
  const tasks = createTaskMaker(io, options)
  const storyPath = toStoryPath(path, io)
  const chain = await tasks.findChain(storyPath)
  const settings = await toSettings({ path, storyPath, chain, flags }, io)
  const rows = toSettingRows(settings).map(({ key, value, origin }) => ({ key, value: value ?? null, origin }))
  if (wanted.some(({ format }) => format === 'json'))
    io.stdout.write(`${JSON.stringify({ schema: 1, path, settings: rows }, null, 2)}\n`)
  else for (const { key, value, origin } of rows) io.stdout.write(`${key}: ${JSON.stringify(value)}  (${origin})\n`)
  return tasks.hasConfigErrors() ? 2 : 0
}

interface Place {
  readonly path: string
  readonly storyPath: string
  readonly chain: ConfigChain
  readonly flags: Layer
}

/** Of a story that is there, its front matter counts too. What nobody has set is as the sequence has it. */
async function toSettings({ path, storyPath, chain, flags }: Place, io: Io): Promise<Settings> {
  const text = io.fs.existsSync(storyPath) ? readTextFile(storyPath, io, path) : undefined
  const read = text?.ok ? await readText({ path, source: text.value, storyPath, chain, flags, rules }) : undefined
  const settings =
    read && 'settings' in read
      ? read.settings
      : resolveSettings({ chain, storyPath, flags, rules, defaultSequence: DEFAULT_SEQUENCE })
  const sequence = await createResources(io).sequence(settings.sequence.value, settings.accent.value)
  return sequence.ok ? withSequence(settings, sequence.value) : settings
}

function withSequence(settings: Settings, { name, accent, reducedVowels }: Sequence): Settings {
  const fill = <T>(set: Sourced<T | undefined>, value: T): Sourced<T | undefined> =>
    set.value === undefined ? { value, origin: `sequence ${name}` } : set
  return {
    ...settings,
    accent: fill(settings.accent, accent),
    reducedVowels: fill(settings.reducedVowels, reducedVowels),
  }
}
