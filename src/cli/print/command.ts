// `battledore print`: from words and stories to sheets of paper.

import { Option } from 'commander'
import { SHEET_KINDS } from '../../sheets/types.ts'
import { type AddCommand, withExamples } from '../command.ts'
import { addWordFilters } from '../words/filters.ts'
import type { PrintOptions } from './options.ts'

export const addPrint: AddCommand = (program, { io, leave }) => {
  const command = addWordFilters(program.command('print'))
    .description('print cards, tags, lists, slips, strips or a booklet, as one PDF')
    .argument('<kind>', `what to print: ${SHEET_KINDS.join(', ')}`)
    .argument('[story]', 'the story, for strips and a book')
    .option('--count <number>', 'how many words, or all')
    .addOption(
      new Option('--set <name>', 'words for a box: of one vowel, or of mixed vowels').choices(['box', 'mixed']),
    )
    .option('--words <words>', 'these words and no others: "hat, cat, log"')
    .option('--words-from <file>', 'the words of a file, one a line or with commas')
    .option('--paper <name>', 'a4 or letter (default: a4, or what battledore.yaml says)')
    .option('--out <file>', 'where to write it; - is standard output (default: named by what is in it)')
    .option('--force', 'write over a file that this program has not made')
    .addOption(new Option('--format <name>', 'svg makes one drawing a sheet').choices(['pdf', 'svg']).default('pdf'))
    .option('--letters <name|path>', 'andika, lexend, abeezee, or the path of a font (TTF or WOFF)', 'andika')
    .option('--letter-shapes <names>', 'other shapes of letters, with Andika: straight-t, tailed-l, open-4 …')
    .addOption(
      new Option('--spacing <how>', 'air between letters, which some readers like')
        .choices(['usual', 'wide', 'wider'])
        .default('usual'),
    )
    .option('--size <size>', 'usual, small, large, or the height of the small x in millimetres', 'usual')
    .option('--mark <what>', 'bold over a bar: none, practised, or by-heart', 'none')
    .option('--cut <how>', 'corners (marks outside), lines (dotted too) or none; for strips also words', 'corners')
    .option('--numbers', 'a small number on the outside of each slip')
    .option('--backs <what>', 'words puts each word on the back of its picture', 'none')
    .option('--fold <how>', 'of a book: staple, one-sheet, or none', 'staple')
    .addOption(
      new Option('--group <how>', 'of the word wall: by first letter, or by ending (-at)')
        .choices(['letter', 'ending'])
        .default('letter'),
    )
    .option('--sides <which>', 'both, fronts or backs, for a printer that prints one side', 'both')
    .option('--turn <edge>', 'how the printer turns the paper: short-edge or long-edge')
    .option('--pictures <dir>', 'a folder of your own pictures, each named by its word: hat.jpg')
    .option('--no-own-set', 'only your own pictures, none of those inside')
    .option('--colour <how>', 'colour, or grey for a printer without colours', 'colour')
    .addOption(
      new Option('--fail-on <severity>', 'error: exit 1 where a story holds words that cannot be read')
        .choices(['error', 'never'])
        .default('never'),
    )
    .action(async (kind: string, story: string | undefined, options: PrintOptions) => {
      const { print } = await import('./run.ts')
      leave(await print({ kind, story, options }, io))
    })
  withExamples(
    command,
    ['battledore print cards --step pink-3 --vowel o --set box', 'picture cards with their tags'],
    ['battledore print list --step pink-5', 'words to read, without pictures'],
    ['battledore print bank --step pink-5', 'a page of words to write from'],
    ['battledore print tags --step pink-3 --words "hat, cat, log"', 'tags for the things in your own box'],
    ['battledore print book tam.md --paper letter', 'a booklet to fold and staple'],
    ['battledore print strips tam.md --cut words', 'its sentences, whole and in loose words'],
  )
}
