// `battledore next`: what to teach a child or a group next, by the books that are there.

import { type AddCommand, withExamples } from '../command.ts'
import { formatOption, shareOption } from '../options.ts'
import type { NextOptions } from './run.ts'

export const addNext: AddCommand = (program, { io, leave }) => {
  const command = program
    .command('next')
    .description('what to teach a child or a group next: the one sound or word that opens most books of a shelf')
    .argument('<READER>', 'a reader file, or the file of a group')
    .argument('<DIR...>', 'the shelf: folders of stories, or stories')
    .option('--plan', 'also a plan for the lesson: example words, box or pictures, list, slips, sentences, a book')
    .option('--teach <what>', 'plan for this sound or word instead of the best one')
    .option('--on <day>', 'what was known on this day, as 2026-09-14 (default: today)')
    .addOption(shareOption())
    .addOption(formatOption(['pretty', 'json']))
    .option('--config <file>', 'use this config file and no other')
    .action(async (reader: string, shelf: string[], options: NextOptions) => {
      const { runNext } = await import('./run.ts')
      leave(await runNext(reader, shelf, options, io))
    })
  withExamples(
    command,
    ['battledore next class/meg.yaml stories', 'what would open most of the stories to Meg'],
    ['battledore next class/ducks.yaml stories --plan', 'for a group, with a plan for the lesson'],
    ['battledore next class/meg.yaml stories --plan --teach "sh as in ship"', 'a plan for what you have chosen'],
  )
}
