// `battledore check`: what a child at a step cannot read yet in these stories.

import { readFlags } from '../../config/index.ts'
import { type CheckOptions, FORMATS, toCheckSettings } from '../check/options.ts'
import { printConfig } from '../check/print-config.ts'
import { runCheck } from '../check/run.ts'
import { type AddCommand, complain, withExamples } from '../command.ts'
import { accentOption, sequenceOption, stepOption } from '../options.ts'

export const addCheck: AddCommand = (program, { io, leave }) => {
  const command = program
    .command('check')
    .description('check stories: what a child at this step cannot read yet, on which letters, and why')
    .argument('[FILE|DIR|GLOB|-...]', 'stories, folders or patterns; - reads one story from standard input (default: this folder)')
    .addOption(sequenceOption())
    .addOption(stepOption())
    .addOption(accentOption())
    .option('--format <name[=FILE]>', `how to print it: ${FORMATS.join(', ')}; may be given again with a file`, gather)
    .option('--output <file>', 'write the report to this file')
    .option('--config <file>', 'use this config file and no other')
    .option('--stdin-filename <path>', 'the path that the story from standard input stands for')
    .option('--fail-on <severity>', 'exit with 1 at this severity and above: error, warning or never', 'error')
    .option('--max-warnings <number>', 'exit with 1 when there are more warnings than this')
    .option('--staged', 'check the stories staged in git, as they are staged')
    .option('--quiet', 'show errors only')
    .option('--watch', 'go on: check again what changes')
    .option('--print-config <file>', 'show every setting that holds for this story, and who set it')
    .action(async (given: string[], options: CheckOptions) => {
      const flags = readFlags({ sequence: options.sequence, step: options.step, accent: options.accent }, io.cwd)
      for (const { message } of flags.problems) complain(io, message)
      if (flags.problems.length > 0) return leave(2)
      const settings = toCheckSettings(options, flags.layer)
      if (options.watch) {
        const { watch } = await import('../run/watch.ts')
        return leave(await watch(given, { format: settings.wanted, config: options.config }, flags.layer, io))
      }
      leave(options.printConfig === undefined
        ? await runCheck(given, settings, options, io)
        : await printConfig(options.printConfig, settings, options, io))
    })
  withExamples(command,
    ['battledore check tam.md --step pink-3', 'one story, for a child who has reached the step pink-3'],
    ['battledore check stories', 'every story in a folder; each says its own step at its top'],
    ['battledore check stories --format json', 'the same for another program'],
    ['battledore check stories --format pretty --format json=report.json', 'both at once'],
    ['battledore check --staged', 'what the next commit would hold, for a hook of git'],
    ['cat tam.md | battledore check - --stdin-filename stories/tam.md', 'a story that is not saved yet'])
}

const gather = (value: string, before: readonly string[] = []): string[] => [...before, value]
