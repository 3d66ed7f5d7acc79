// `battledore bring`: makes stories of texts that exist already.

import { Option } from 'commander'
import { type AddCommand, withExamples } from '../command.ts'
import { accentOption, sequenceOption, stepOption } from '../options.ts'
import type { BringOptions } from './run.ts'

export const addBring: AddCommand = (program, { io, leave }) => {
  const command = program
    .command('bring')
    .description('make a story of a text that you have already: .docx, .odt, .html or .txt')
    .argument('<FILE|-...>', 'the texts; - takes what you paste (end with Ctrl D)')
    .option('--out <file|folder>', 'where the story goes (default: beside the text, with the ending .md)')
    .addOption(
      new Option('--pages <way>', 'what begins a page; auto looks for these in turn')
        .choices(['auto', 'breaks', 'headings', 'pictures', 'empty-lines', 'none'])
        .default('auto'),
    )
    .addOption(stepOption())
    .addOption(sequenceOption())
    .addOption(accentOption())
    .action(async (given: string[], options: BringOptions) => {
      const { runBring } = await import('./run.ts')
      leave(await runBring(given, options, io))
    })
  withExamples(
    command,
    ['battledore bring old/wet-dog.docx', 'writes old/wet-dog.md, and says from which step on it can be read'],
    ['battledore bring old/wet-dog.docx --step blue-4', 'the same, and checks it for step blue-4'],
    ['battledore bring - --out wet-dog.md', 'a text that you paste'],
  )
}
