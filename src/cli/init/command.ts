// `battledore init`: sets up a story folder.

import { type AddCommand, withExamples } from '../command.ts'
import { accentOption, sequenceOption, stepOption } from '../options.ts'
import type { InitOptions } from './run.ts'

export const addInit: AddCommand = (program, { io, leave }) => {
  const command = program
    .command('init')
    .description('set up a folder for your stories: settings, an example story, and a page of first steps')
    .argument('[DIR]', 'the folder (default: this folder)', '.')
    .addOption(sequenceOption())
    .addOption(stepOption())
    .addOption(accentOption())
    .option('--editor', 'also npm scripts, and tasks and forms for VS Code')
    .option('--commit', 'also check the stories of each commit, with plain git')
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
    ['battledore init --accent southern-british --step pink-4', 'the same, with what holds for all stories'],
    ['battledore init stories --editor --commit', 'a folder that several people share'],
  )
}
