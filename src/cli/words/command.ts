// `battledore words`: words that are readable at a step, for boxes, cards, lists and slips.

import { Option } from 'commander'
import { DATA_FOLDER, loadLexicon } from '../../packaged/data.ts'
import { type AddCommand, complain, toPaint, toWidth, withExamples } from '../command.ts'
import { findListReader } from '../list-reader.ts'
import { accentOption, formatOption, sequenceOption, stepOption } from '../options.ts'
import type { WordsOptions } from './run.ts'

export const addWords: AddCommand = (program, { io, leave }) => {
  const command = program
    .command('words')
    .description('list words that can be read at a step, for boxes, cards, lists and slips')
    .addOption(stepOption())
    .addOption(sequenceOption())
    .addOption(accentOption())
    .option('--reader <file>', 'who is to read them: the file of a child or a group')
    .option('--vowel <spelling>', 'words of one syllable with this vowel, such as a, ai or `ea as in bread`')
    .option('--first <spelling>', 'words that begin with this, such as sh, /k/ or st')
    .option('--last <spelling>', 'words that end with this')
    .option('--with <spellings>', 'words that hold this; of several, such as ai,sh, all of them')
    .option('--pattern <pattern>', 'consonants and vowels by sound: CVC is cat and ship')
    .option('--letters-pattern <pattern>', 'the same by letter: CCVC is ship')
    .option('--length <number>', 'how many letters: 3, or 3-5')
    .option('--syllables <number>', 'how many syllables: 2, or 1-2')
    .option('--rhymes-with <word>', 'words that rhyme with this one')
    .option('--family <ending>', 'a word family: -at, or cat')
    .option('--kind <kinds>', 'naming, doing, describing or little words; several with commas')
    .option('--picture', 'only what a picture can name')
    .option('--object', 'only what a small object can name')
    .option('--known', 'only words that children of the first school years know')
    .option('--base', 'no words with endings: cat, but not cats')
    .option('--not-on <dir>', 'only words that no story in this folder uses')
    .option('--new-at-step', 'only words that this step brings')
    .option('--order <name>', 'useful (most useful first), alphabetical or shuffled', 'useful')
    .option('--seed <number>', 'for a shuffled order: the same number gives the same words', '1')
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
      if ('problems' in found) {
        for (const problem of found.problems) complain(io, problem)
        return leave(2)
      }
      const { words } = await import('./run.ts')
      const view = { width: toWidth(io), paint: await toPaint(io) }
      leave(await words(options, { ...found, lexicon: loadLexicon(), folder: DATA_FOLDER, view }, io))
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
