// `battledore desk`: the page for those who would rather not use a terminal.

import { type AddCommand, withExamples } from '../command.ts'
import type { DeskOptions } from './run.ts'

/** Not used by anything that is registered for this range. */
const PORT = '47613'

export const addDesk: AddCommand = (program, { io, leave }) => {
  const command = program
    .command('desk')
    .description('open a page in the browser, on this machine only, to write, check and print the stories of a folder')
    .argument('[FOLDER]', 'where the stories lie; nothing outside of it is read or written', '.')
    .option('--port <number>', 'the port; the next one that is free, where it is taken', PORT)
    .option('--no-open', 'print the address and open no browser')
    .option('--stay', 'go on when the last page has been closed')
    .option('--one-file <file>', 'write the page as one file that needs neither this program nor the internet, and end')
    .option('--with-settings', 'with --one-file: put the settings, sequences and readers of the folder into the page')
    .action(async (folder: string, options: DeskOptions) => {
      const { runDesk } = await import('./run.ts')
      leave(await runDesk(folder, options, io))
    })
  withExamples(
    command,
    ['battledore desk stories', 'opens the page with the stories of that folder'],
    ['battledore desk --one-file desk.html', 'the page to hand around: it opens with a double click'],
  )
}
