// `battledore init`: sets up a story folder.

import { type AddCommand, withExamples } from '../command.ts'
import type { InitOptions } from './run.ts'

export const addInit: AddCommand = (program, { io, leave }) => {
  const command = program
    .command('init')
    .description('set up a story folder: settings, an example story, npm scripts and tasks for VS Code')
    .argument('[DIR]', 'the folder (default: this folder)', '.')
    .option('--hook', 'also check staged stories before each commit, with plain git')
    .option('--force', 'write our own files anew where they are there already')
    .option('--dry-run', 'show what would be written, and write nothing')
    .option('-y, --yes', 'do not ask')
    .action(async (folder: string, options: InitOptions) => {
      const { init } = await import('./run.ts')
      leave(await init(folder, options, io))
    })
  withExamples(
    command,
    ['battledore init', 'set up this folder; what is there already stays as it is'],
    ['battledore init stories --hook', 'set up another folder, and check before each commit'],
  )
}
