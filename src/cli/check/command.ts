// `battledore check`: what a child at a step cannot read yet in these stories.

import { readFlags } from '../../config/index.ts'
import { type AddCommand, complainOf, withExamples } from '../command.ts'
import type { Io } from '../io.ts'
import { accentOption, onOption, sequenceOption, stepOption } from '../options.ts'
import { type CheckOptions, type CheckSettings, FORMATS, toCheckSettings } from './options.ts'
import { printConfig } from './print-config.ts'
import { runCheck } from './run.ts'

/** The others are named where repositories and programs are. */
const FOR_PEOPLE: ReadonlySet<string> = new Set(['pretty', 'html', 'line'])

export const addCheck: AddCommand = (program, { io, leave }) => {
  const command = program
    .command('check')
    .description('check stories: what a child at this step cannot read yet, on which letters, and why')
    .argument(
      '[FILE|DIR|GLOB|-...]',
      'stories, folders or patterns; - reads one story from standard input (default: this folder)',
    )
    .optionsGroup('Who reads:')
    .addOption(stepOption())
    .addOption(sequenceOption())
    .addOption(accentOption())
    .option(
      '--reader <file>',
      'judge for this reader: a file with a step and what the reader knows beyond or short of it',
    )
    .option('--readers <file|dir>', 'one table of what everybody of a class can read of each story')
    .addOption(onOption())
    .option('--shelf <dir>', 'words of the books before a story on this shelf are not new')
    .optionsGroup('What is shown:')
    .option(
      '--format <name[=FILE]>',
      'how to print it: pretty (default), html, or line; may be given again with a file',
      gather,
    )
    .option('--output <file>', 'write the report to this file')
    .option('--quiet', 'show errors only')
    .option('--no-suggest', 'do not look for words that could stand there instead')
    .option('--watch', 'go on: check again what changes')
    .option('--print-config <file>', 'show every setting that holds for this story, and who set it')
    .optionsGroup('For repositories and other programs:')
    .option('--config <file>', 'use this config file and no other')
    .option('--stdin-filename <path>', 'the path that the story from standard input stands for')
    .option('--fail-on <severity>', 'exit with 1 at this severity and above: error, warning or never', 'error')
    .option('--max-warnings <number>', 'exit with 1 when there are more warnings than this')
    .option('--staged', 'check the stories staged in git, as they are staged')
    .option('--changed-since <ref>', 'show only what is on lines changed since this commit or branch')
    .option('--baseline <file>', 'pass over what this file allows; fail where there is more')
    .option('--write-baseline', 'allow all that is found now, in the file of --baseline')
    .option('--cache', 'keep results, and check only stories that have changed')
    .option('--cache-file <file>', 'where to keep them')
    .option('--workers <number>', 'how many stories to check at the same time (default: one for each core)')
    .action(async (given: string[], options: CheckOptions) => {
      if (options.readers !== undefined) {
        const { checkForClass } = await import('./for-class.ts')
        return leave(await checkForClass(given, options.readers, options, io))
      }
      const flags = readFlags({ sequence: options.sequence, step: options.step, accent: options.accent }, io.cwd)
      complainOf(io, flags.problems)
      if (flags.problems.length > 0) return leave(2)
      const settings = await withReaders(toCheckSettings(options, flags.layer), options, io)
      if (settings === undefined) return leave(2)
      if (options.watch) {
        const { watch } = await import('../watch/run.ts')
        return leave(await watch(given, { ...options, format: settings.wanted }, flags.layer, io))
      }
      leave(
        options.printConfig === undefined
          ? await runCheck(given, settings, options, io)
          : await printConfig(options.printConfig, settings, options, io),
      )
    })
  withExamples(
    command,
    ['battledore check tam.md --step pink-3', 'one story, for a child who has reached the step pink-3'],
    ['battledore check stories', 'every story in a folder; each says its own step at its top'],
    ['battledore check tam.md --reader class/meg.yaml', 'one story, for one reader'],
    ['battledore check tam.md --readers class', 'one story, for everybody of a class'],
    ['battledore check stories --format html --output report.html', 'a page to look at in the browser, or to print'],
    [
      'battledore check stories --format pretty --format json=report.json',
      `for you, and for another program (${FORMATS.filter((one) => !FOR_PEOPLE.has(one)).join(', ')})`,
    ],
    ['battledore check --staged', 'what the next commit would hold, for a hook of git'],
    ['cat tam.md | battledore check - --stdin-filename stories/tam.md', 'a story that is not saved yet'],
  )
}

/** Undefined where a reader or a shelf cannot be read, which is told. Flags have the last word over the reader's file. */
async function withReaders(settings: CheckSettings, options: CheckOptions, io: Io): Promise<CheckSettings | undefined> {
  let all = settings
  if (options.watch && (options.reader ?? options.shelf) !== undefined)
    throw new Error('--reader and --shelf do not go with --watch.')
  if (options.reader !== undefined) {
    const { readReaderOrExplain } = await import('../reader.ts')
    const reader = await readReaderOrExplain(options.reader, io, { on: options.on })
    if (reader === undefined) return undefined
    all = { ...all, flags: { ...reader.layer, ...all.flags }, reader: reader.extra }
  }
  if (options.shelf !== undefined) {
    const { readEarlierWords } = await import('./earlier.ts')
    const findEarlierWords = await readEarlierWords(options.shelf, options, io)
    if (findEarlierWords === undefined) return undefined
    all = { ...all, findEarlierWords, workers: 1 }
  }
  return all
}

const gather = (value: string, before: readonly string[] = []): string[] => [...before, value]
