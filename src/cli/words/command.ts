// `battledore words`: words that are readable at a step, for boxes, cards, lists and slips.

import { Option } from 'commander'
import { DATA_FOLDER, loadLexicon } from '../../packaged/data.ts'
import { type AddCommand, complainOf, toPaint, toWidth, withExamples } from '../command.ts'
import { findListReader } from '../list-reader.ts'
import { formatOption } from '../options.ts'
import { addWordFilters } from './filters.ts'
import type { WordsOptions } from './run.ts'

export const addWords: AddCommand = (program, { io, leave }) => {
  const command = addWordFilters(program.command('words'))
    .description('list words that can be read at a step, for boxes, cards, lists and slips')
    .option('--count <number>', 'how many, or all (default: 60, of a set 6; all for programs)')
    .addOption(
      new Option(
        '--set <name>',
        'propose a set: a box for one vowel, pairs that contrast two sounds, or a box of mixed vowels',
      ).choices(['box', 'contrast', 'mixed']),
    )
    .option('--sounds <two>', 'for --set contrast: the two spellings, such as a,u')
    .addOption(
      new Option('--as <name>', 'sheet prints a word bank by kind of word, on one page')
        .choices(['list', 'sheet'])
        .default('list'),
    )
    .addOption(formatOption(['pretty', 'plain', 'csv', 'json']))
    .action(async (options: WordsOptions) => {
      const found = await findListReader(options, io)
      if (!found.ok) {
        complainOf(io, found.problems)
        return leave(2)
      }
      const { words } = await import('./run.ts')
      const [width, paint] = [toWidth(io), await toPaint(io)]
      leave(await words(options, { ...found.value, lexicon: loadLexicon(), folder: DATA_FOLDER, width, paint }, io))
    })
  withExamples(
    command,
    ['battledore words --step pink-2', 'the most useful words that can be read at pink-2'],
    ['battledore words --step pink-3 --vowel o --set box', 'a box of small objects for the short o'],
    ['battledore words --step pink-5 --set contrast --sounds a,u', 'pairs such as cap and cup'],
    ['battledore words --step green-2 --with ai --picture --count 12', 'twelve pictures for cards with ai'],
    ['battledore words --step blue-2 --as sheet', 'a word bank to write with'],
  )
}
