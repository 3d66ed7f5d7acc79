// `battledore shelf`: the vocabulary of a folder of stories, book by book.

import { type AddCommand, withExamples } from '../command.ts'
import { accentOption, formatOption, sequenceOption, shareOption } from '../options.ts'
import type { ShelfOptions } from './run.ts'

export const addShelf: AddCommand = (program, { io, leave }) => {
  const command = program
    .command('shelf')
    .description(
      'show the vocabulary of a shelf: what each book brings, what comes back in later books, and what is missing',
    )
    .argument('[DIR...]', 'folders of stories, or stories (default: this folder)')
    .addOption(shareOption())
    .addOption(sequenceOption())
    .addOption(accentOption())
    .addOption(formatOption(['pretty', 'json', 'csv']))
    .option('--config <file>', 'use this config file and no other')
    .action(async (given: string[], options: ShelfOptions) => {
      const { runShelf } = await import('./run.ts')
      leave(await runShelf(given, options, io))
    })
  withExamples(
    command,
    ['battledore shelf stories', 'every story of a folder, in the order that the stories say'],
    ['battledore shelf stories --format csv > shelf.csv', 'a row a book, for a spreadsheet'],
    ['battledore shelf stories --format json', 'all of it, for another program'],
  )
}
