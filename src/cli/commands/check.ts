// `battledore check`: what a child at a step cannot read yet in these stories.

import { resolve, sep } from 'node:path'
import { rules } from '../../../rules/index.ts'
import { checkStory, DEFAULT_SEQUENCE, prepareStory } from '../../check/check-story.ts'
import type { Resources } from '../../check/resources.ts'
import { type CheckedStory, isChecked, type UncheckedStory } from '../../check/result.ts'
import { type ConfigFinder, createConfigFinder, findIgnoring, type Layer, type Problem, readFlags, resolveSettings, toProblemLine, toSettingRows } from '../../config/index.ts'
import { type AddCommand, complain, type ExitCode, toPaint, toWidth, withExamples } from '../command.ts'
import { findStories, type StoryFile } from '../files.ts'
import type { Io } from '../io.ts'
import { accentOption, formatOption, sequenceOption, stepOption } from '../options.ts'
import { createProgress } from '../progress.ts'
import { createTextReader, readStdin, readTextFile, type ReadResult } from '../read.ts'
import { createResources } from '../resources.ts'
import { toPrettyStory, toSummary } from '../../report/pretty.ts'
import { toJsonReport } from '../../report/json.ts'
import { toLineReport } from '../../report/line.ts'

export interface CheckOptions {
  readonly sequence?: string
  readonly step?: string
  readonly accent?: string
  readonly config?: string
  readonly format: 'pretty' | 'line' | 'json'
  readonly stdinFilename?: string
  readonly printConfig?: string
  readonly failOn: 'error' | 'warning' | 'never'
}

type Result = CheckedStory | UncheckedStory

export const addCheck: AddCommand = (program, { io, leave }) => {
  const command = program
    .command('check')
    .description('check stories: what a child at this step cannot read yet, on which letters, and why')
    .argument('[FILE|DIR|GLOB|-...]', 'stories, folders or patterns; - reads one story from standard input (default: this folder)')
    .addOption(sequenceOption())
    .addOption(stepOption())
    .addOption(accentOption())
    .addOption(formatOption(['pretty', 'line', 'json']))
    .option('--config <file>', 'use this config file and no other')
    .option('--stdin-filename <path>', 'the path that the story from standard input stands for')
    .option('--fail-on <severity>', 'exit with 1 at this severity and above: error, warning or never', 'error')
    .option('--print-config <file>', 'show every setting that holds for this story, and who set it')
    .action(async (given: string[], options: CheckOptions) => {
      if (!['error', 'warning', 'never'].includes(options.failOn)) {
        complain(io, `--fail-on is error, warning or never; this is \`${options.failOn}\`.`)
        return leave(2)
      }
      const flags = readFlags({ sequence: options.sequence, step: options.step, accent: options.accent }, io.cwd)
      for (const { message } of flags.problems) complain(io, message)
      if (flags.problems.length > 0) return leave(2)
      const run = createRun(io, options, flags.layer)
      leave(options.printConfig === undefined ? await run.check(given) : await run.printConfig(options.printConfig))
    })
  withExamples(command,
    ['battledore check tam.md --step pink-3', 'one story, for a child who has reached the step pink-3'],
    ['battledore check stories', 'every story in a folder; each says its own step at its top'],
    ['battledore check stories --format json', 'the same for another program'],
    ['cat tam.md | battledore check - --stdin-filename stories/tam.md', 'a story that is not saved yet'])
}

function createRun(io: Io, options: CheckOptions, flags: Layer) {
  const resources = createResources(io)
  const only = options.config === undefined ? {} : { only: toSlashes(resolve(io.cwd, options.config)) }
  const configs = createConfigFinder(createTextReader(io), rules, { ...only, show: (path) => toShown(path, io) })
  const told = new Set<Problem>()

  async function check(given: readonly string[]): Promise<ExitCode> {
    const found = await findStories(given, io)
    for (const problem of found.problems) complain(io, problem)
    for (const notice of found.notices) io.stderr.write(`${notice}\n`)
    let code: ExitCode = found.problems.length > 0 ? 2 : 0
    const results: Result[] = []
    const progress = createProgress(io, found.files.length)
    const pretty = options.format === 'pretty' ? { width: toWidth(io), paint: await toPaint(io) } : undefined
    for (const [at, file] of found.files.entries()) {
      progress.step(at, file.path)
      const result = await checkFile(file)
      if (result === undefined) continue
      results.push(result)
      if (!isChecked(result)) {
        progress.hide()
        for (const failure of result.failures) complain(io, failure)
      } else if (pretty) {
        progress.hide()
        io.stdout.write(`${toPrettyStory(result, pretty)}\n`)
      }
    }
    progress.end()
    if (options.format === 'json') io.stdout.write(`${JSON.stringify(toJsonReport(results), null, 2)}\n`)
    else if (options.format === 'line') io.stdout.write(toLineReport(results))
    else if (pretty && results.length > 0) io.stdout.write(toSummary(results, pretty))
    if (results.some((result) => !isChecked(result)) || [...told].some(({ severity }) => severity === 'error')) code = 2
    return code === 0 && hasFindings(results, options.failOn) ? 1 : code
  }

  async function checkFile(file: StoryFile): Promise<Result | undefined> {
    const shown = file.path === '-' ? (options.stdinFilename ?? 'standard input') : file.path
    const storyPath = toSlashes(resolve(io.cwd, file.path === '-' ? (options.stdinFilename ?? 'story.md') : file.file))
    const chain = await findChain(configs, storyPath, told, io)
    if (!chain.ok) return { path: shown, failures: [chain.message] }
    const ignoring = findIgnoring(chain.chain, storyPath)
    if (ignoring) {
      io.stderr.write(`${shown} is left out by \`${ignoring.value}\` (${ignoring.origin}).\n`)
      return undefined
    }
    const text: ReadResult = file.path === '-' ? await readStdin(io) : readTextFile(file.file, io, file.path)
    if (!text.ok) return { path: shown, failures: [text.message] }
    return checkStory({ path: shown, source: text.text, storyPath, chain: chain.chain, flags, rules, resources })
  }

  async function printConfig(path: string): Promise<ExitCode> {
    const storyPath = toSlashes(resolve(io.cwd, path))
    const chain = await findChain(configs, storyPath, told, io)
    if (!chain.ok) {
      complain(io, chain.message)
      return 2
    }
    const settings = await toSettings(path, storyPath, chain.chain, resources)
    const rows = toSettingRows(settings).map(({ key, value, origin }) => ({ key, value: value ?? null, origin }))
    if (options.format === 'json') io.stdout.write(`${JSON.stringify({ schema: 1, path, settings: rows }, null, 2)}\n`)
    else for (const { key, value, origin } of rows) io.stdout.write(`${key}: ${JSON.stringify(value)}  (${origin})\n`)
    return [...told].some(({ severity }) => severity === 'error') ? 2 : 0
  }

  /** Of a story that is there, its front matter counts too. */
  async function toSettings(path: string, storyPath: string, chain: Parameters<typeof resolveSettings>[0]['chain'], from: Resources) {
    const text = io.fs.existsSync(storyPath) ? readTextFile(storyPath, io, path) : undefined
    const prepared = text?.ok ? await prepareStory({ path, source: text.text, storyPath, chain, flags, rules, resources: from }) : undefined
    return prepared && 'settings' in prepared
      ? prepared.settings
      : resolveSettings({ chain, storyPath, flags, rules, defaultSequence: DEFAULT_SEQUENCE })
  }

  return { check, printConfig }
}

async function findChain(configs: ConfigFinder, storyPath: string, told: Set<Problem>, io: Io) {
  try {
    const chain = await configs.findFor(storyPath)
    for (const problem of chain.problems) {
      if (told.has(problem)) continue
      told.add(problem)
      complain(io, toProblemLine(problem))
    }
    return { ok: true as const, chain }
  } catch (error) {
    return { ok: false as const, message: error instanceof Error ? error.message : String(error) }
  }
}

function hasFindings(results: readonly Result[], failOn: CheckOptions['failOn']): boolean {
  if (failOn === 'never') return false
  return results.some((result) => isChecked(result) && result.messages.some(({ severity }) => severity === 'error' || failOn === 'warning'))
}

const toSlashes = (path: string): string => path.replaceAll(sep, '/')

function toShown(path: string, io: Io): string {
  const folder = `${toSlashes(io.cwd)}/`
  return path.startsWith(folder) ? path.slice(folder.length) : path
}
