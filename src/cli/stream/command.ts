// `battledore stream`: stories as JSON lines in, results as JSON lines out, for engines that spread a library over machines.

import { Option } from 'commander'
import { type AddCommand, withExamples } from '../command.ts'
import { accentOption, sequenceOption, stepOption } from '../options.ts'
import type { StreamOptions } from './run.ts'

export const addStream: AddCommand = (program, { io, leave }) => {
  const command = program
    .command('stream')
    .description('check a stream of stories: a JSON object a line in, one a line out, in the same order')
    .addOption(sequenceOption())
    .addOption(stepOption())
    .addOption(accentOption())
    .option('--config <file>', 'settings for all stories')
    .option('--suggest', 'look for words that could stand there instead')
    .addOption(
      new Option('--totals', 'only the counts of each story: no messages, and nothing of its pages').conflicts(
        'suggest',
      ),
    )
    .action(async (options: StreamOptions) => {
      const { runStream } = await import('./run.ts')
      leave(await runStream(options, io))
    })
  withExamples(
    command,
    [
      'battledore stream --step pink-4 < stories.ndjson > results.ndjson',
      'each line is {"id": …, "text": "…"}; a line may say its own "step", "sequence" and "accent"',
    ],
    ['parallel --pipe --keep-order battledore stream < stories.ndjson', 'the same on all cores, with GNU parallel'],
  )
}
