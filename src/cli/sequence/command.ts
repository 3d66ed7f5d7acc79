// `battledore sequence`: the steps and what each adds; checks a sequence file, makes one, adds to one, looks for thin steps.

import { type Command, Option } from 'commander'
import { DEFAULT_SEQUENCE } from '../../check/read-text.ts'
import type { Accent } from '../../phonics/types.ts'
import { toSequenceJson, toSequenceText } from '../../report/sequence.ts'
import type { AddCommand, CommandContext } from '../command.ts'
import { complainOf, toPaint, toWidth, withExamples } from '../command.ts'
import { accentOption, formatOption } from '../options.ts'
import { createResources } from '../resources.ts'
import type { AddOptions } from './add.ts'
import type { NewOptions } from './new.ts'

interface Options {
  readonly format: 'pretty' | 'json'
  readonly accent?: Accent
  /** A folder; true where none was given. */
  readonly shelf?: string | true
}

export const addSequence: AddCommand = (program, context) => {
  const { io, leave } = context
  const command = program
    .command('sequence')
    .description('show the steps of a sequence and what each adds, or check a sequence file')
    .argument('[NAME|PATH]', 'a built-in sequence, or the path of a sequence file', DEFAULT_SEQUENCE)
    .addOption(formatOption(['pretty', 'json']))
    .addOption(accentOption())
    .option('--shelf [dir]', 'which steps have too few words for a book; with a folder, how many books each step has')
    .helpCommand(false)
    // So that an option behind `new` or `add` is theirs.
    .enablePositionalOptions()
    .action(async (name: string, { format, accent, shelf }: Options) => {
      const found = await createResources(io).sequence(name, accent)
      if (!found.ok) {
        complainOf(io, found.problems)
        return leave(2)
      }
      const sequence = found.value
      if (shelf !== undefined) {
        const { runShelf } = await import('./shelf.ts')
        return leave(await runShelf(sequence, shelf, format, io))
      }
      io.stdout.write(
        format === 'json'
          ? `${JSON.stringify(toSequenceJson(sequence), null, 2)}\n`
          : toSequenceText(sequence, { width: toWidth(io), paint: await toPaint(io) }),
      )
    })
  withExamples(
    command,
    ['battledore sequence', 'the steps of the default sequence, the three series'],
    ['battledore sequence england', "the steps of England's national curriculum, years 1 and 2"],
    ['battledore sequence my-class.yaml', 'check a sequence file of your own, then show its steps'],
    ['battledore sequence my-class.yaml --shelf stories', 'the words that each step has for a book, and its books'],
    ['battledore sequence ./new.yaml', 'a file whose name is a command here: write its path'],
  )
  addNew(command, context)
  addAdd(command, context)
}

function addNew(sequence: Command, { io, leave }: CommandContext): void {
  const command = sequence
    .command('new')
    .description('make a sequence file: asks step by step what is taught, or takes a list')
    .argument('<FILE>', 'the file to make; one that is there stays as it is')
    .option(
      '--from <list>',
      'a list instead of questions: a line a step, commas between what it teaches; - is what you paste',
    )
    .option('--title <words>', 'what it is called')
    .addOption(accentOption())
    .action(async (file: string, options: NewOptions) => {
      const { runNew } = await import('./new.ts')
      leave(await runNew(file, options, io))
    })
  withExamples(
    command,
    ['battledore sequence new our-class.yaml', 'asks for the title, the accent, and step after step what is taught'],
    ['battledore sequence new our-class.yaml --from list.txt', 'takes the steps from a list'],
  )
}

function addAdd(sequence: Command, { io, leave }: CommandContext): void {
  const command = sequence
    .command('add')
    .description('add sounds, words or endings to a step of a sequence file; its comments stay')
    .argument('<FILE>', 'a sequence file of your own')
    .argument('<WHAT...>', 'a sound by its example ("sh as in ship"), a word known by heart, or an ending (-ed)')
    .addOption(new Option('--step <id>', 'the step (default: the last one of the file)'))
    .action(async (file: string, what: string[], options: AddOptions) => {
      const { runAdd } = await import('./add.ts')
      leave(await runAdd(file, what, options, io))
    })
  // `-ed` is something taught, not an option.
  command.allowUnknownOption()
  withExamples(
    command,
    ['battledore sequence add our-class.yaml "sh as in ship" said', 'to the last step'],
    ['battledore sequence add our-class.yaml -ed --step autumn-2', 'an ending, at a step'],
  )
}
