// `battledore sequence`: the steps and what each adds; checks a sequence file.

import { DEFAULT_SEQUENCE } from '../../check/check-story.ts'
import type { Accent } from '../../phonics/types.ts'
import { toSequenceJson, toSequenceText } from '../../report/sequence.ts'
import type { AddCommand } from '../command.ts'
import { complainOf, toPaint, toWidth, withExamples } from '../command.ts'
import { accentOption, formatOption } from '../options.ts'
import { createResources } from '../resources.ts'

interface Options {
  readonly format: 'pretty' | 'json'
  readonly accent?: Accent
}

export const addSequence: AddCommand = (program, { io, leave }) => {
  const command = program
    .command('sequence')
    .description('show the steps of a sequence and what each adds, or check a sequence file')
    .argument('[NAME|PATH]', 'a built-in sequence, or the path of a sequence file', DEFAULT_SEQUENCE)
    .addOption(formatOption(['pretty', 'json']))
    .addOption(accentOption())
    .action(async (name: string, { format, accent }: Options) => {
      const found = await createResources(io).sequence(name, accent)
      if (!found.ok) {
        complainOf(io, found.problems)
        return leave(2)
      }
      const sequence = found.value
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
  )
}
