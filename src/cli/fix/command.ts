// `battledore fix`: walks through the words of a story that cannot be read, and changes what a person decides on.

import { type AddCommand, toPaint, withExamples } from '../command.ts'
import { accentOption, sequenceOption, stepOption } from '../options.ts'
import type { FixOptions } from './run.ts'

export const addFix: AddCommand = (program, { io, leave }) => {
  const command = program
    .command('fix')
    .description(
      'go through the words of a story that cannot be read: put in another word, allow a name, keep it, or leave it',
    )
    .argument('<FILE>', 'the story')
    .addOption(stepOption())
    .addOption(sequenceOption())
    .addOption(accentOption())
    .option(
      '--reader <file>',
      'judge for this reader: a file with a step and what the reader knows beyond or short of it',
    )
    .option('--from <line>', 'begin at this line of the story: to go on where you stopped')
    .option('--config <file>', 'use this config file and no other')
    .option('--dry-run', 'write nothing; print a diff with the first suggestion for each word, for patch -p1')
    .action(async (file: string, options: FixOptions) => {
      const { fix } = await import('./run.ts')
      leave(await fix(file, options, await toPaint(io), io))
    })
  withExamples(
    command,
    ['battledore fix tam.md', 'word by word, with questions; shows all changes before it writes them'],
    ['battledore fix tam.md --dry-run', 'what it would be with the first suggestion for each word'],
  )
}
