// `battledore level`: the earliest step at which enough of a text can be read.

import { type AddCommand, withExamples } from '../command.ts'
import { accentOption, formatOption, sequenceOption, shareOption } from '../options.ts'
import type { LevelOptions } from './run.ts'

export const addLevel: AddCommand = (program, { io, leave }) => {
  const command = program
    .command('level')
    .description('find the earliest step at which enough of a text can be read, and the words that hold it back')
    .argument(
      '[FILE|DIR|GLOB|-...]',
      'texts, folders or patterns; - reads one text from standard input (default: this folder)',
    )
    .addOption(shareOption())
    .addOption(sequenceOption())
    .addOption(accentOption())
    .addOption(formatOption(['pretty', 'json', 'csv']))
    .option('--reader <file>', 'find it for this reader: a file with what the reader knows beyond or short of a step')
    .option('--config <file>', 'use this config file and no other')
    .action(async (given: string[], options: LevelOptions) => {
      const { runLevel } = await import('./run.ts')
      leave(await runLevel(given, options, io))
    })
  withExamples(
    command,
    ['battledore level tam.md', 'the step of the default sequence from which 90 % of the words can be read'],
    [
      'battledore level stories --share 95 --sequence england',
      'every text of a folder, by another sequence and a stricter share',
    ],
    ['battledore level stories --format csv > levels.csv', 'a table for a spreadsheet'],
  )
}
