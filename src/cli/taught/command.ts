// `battledore taught`: writes down what a child or a group was taught.

import { type AddCommand, withExamples } from '../command.ts'
import type { TaughtOptions } from './run.ts'

export const addTaught: AddCommand = (program, { io, leave }) => {
  const command = program
    .command('taught')
    .description('write down what a child or a group was taught: sounds, words known by heart, endings, or a step')
    .argument('<READER>', 'a reader file, or the file of a group: then each of its readers')
    .argument('<WHAT...>', 'a sound by its example ("sh as in ship"), a word, an ending (-ed), or a step (pink-5)')
    .option('--date <day>', 'the day of the lesson, as 2026-09-14 (default: today)')
    .option('--not-secure', 'it was met, but cannot be relied on yet')
    .action(async (reader: string, what: string[], options: TaughtOptions) => {
      const { runTaught } = await import('./run.ts')
      leave(await runTaught(reader, what, options, io))
    })
  // `-ed` is something taught, not an option.
  command.allowUnknownOption()
  withExamples(
    command,
    ['battledore taught class/meg.yaml "sh as in ship" said', 'a sound, and a word known by heart'],
    ['battledore taught class/ducks.yaml blue-4', 'moves all of a group on to a step'],
    ['battledore taught class/meg.yaml said --not-secure', 'a word to come back to'],
  )
}
