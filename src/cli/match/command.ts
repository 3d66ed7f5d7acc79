// `battledore match`: which reader can read which book.

import { type AddCommand, withExamples } from '../command.ts'
import { formatOption, onOption, shareOption } from '../options.ts'
import type { MatchOptions } from './run.ts'

export const addMatch: AddCommand = (program, { io, leave }) => {
  const command = program
    .command('match')
    .description(
      'match books and readers: who can read what now, and what to teach first for the books that are nearly ready',
    )
    .argument('<DIR...>', 'folders of stories, or stories')
    .requiredOption('--readers <FILE|DIR>', 'a reader file, or a folder of them')
    .addOption(onOption())
    .addOption(shareOption())
    .option('--teach <number>', 'the most words or sounds to teach first for a book that is nearly ready', '3')
    .addOption(formatOption(['pretty', 'json', 'csv']))
    .option('--config <file>', 'use this config file and no other')
    .action(async (given: string[], options: MatchOptions) => {
      const { runMatch } = await import('./run.ts')
      leave(await runMatch(given, options, io))
    })
  withExamples(
    command,
    ['battledore match stories --readers class', 'every story of a folder for every reader file of a folder'],
    ['battledore match stories --readers meg.yaml --share 95', 'for one child, and stricter'],
    ['battledore match stories --readers class --format csv > match.csv', 'a table for a spreadsheet'],
  )
}
