// The wishes that a word can be asked by: the same for lists of words and for what is printed.

import type { Command } from 'commander'
import { accentOption, sequenceOption, stepOption } from '../options.ts'

/** Who reads, every filter of the finder, and the order of what is found. */
export const addWordFilters = (command: Command): Command =>
  command
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
