// `check --print-config`: every setting that holds for one story, and who set it.

import { rules } from '../../../rules/index.ts'
import { DEFAULT_SEQUENCE, prepareStory } from '../../check/check-story.ts'
import { type ConfigChain, type Layer, resolveSettings, type Settings, toSettingRows } from '../../config/index.ts'
import { complain, type ExitCode } from '../command.ts'
import type { Io } from '../io.ts'
import { readTextFile } from '../read.ts'
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
  if ('message' in chain) {
    complain(io, chain.message)
    return 2
  }
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

/** Of a story that is there, its front matter counts too. */
async function toSettings({ path, storyPath, chain, flags }: Place, io: Io): Promise<Settings> {
  const text = io.fs.existsSync(storyPath) ? readTextFile(storyPath, io, path) : undefined
  const prepared = text?.ok
    ? await prepareStory({ path, source: text.text, storyPath, chain, flags, rules, resources: createResources(io) })
    : undefined
  return prepared && 'settings' in prepared
    ? prepared.settings
    : resolveSettings({ chain, storyPath, flags, rules, defaultSequence: DEFAULT_SEQUENCE })
}
