// The form of a sequence file, from which the checks and the JSON Schema for editors are both made.

import * as v from 'valibot'
import { list, text } from './schema-parts.ts'
import { ACCENTS, CAPITALS, ENDING_CHANGES, ENDINGS, type LIMITS } from './vocabulary.ts'

const listOrAny = (example: string, description: string) => {
  const problem = `Write a list, as \`${example}\`, or \`any\``
  return v.optional(v.pipe(v.union([v.literal('any'), v.array(v.string())], problem), v.description(description)))
}

const limit = (description: string) => {
  const problem = 'Write a whole number from 1, or `any` to lift the limit'
  const figure = v.pipe(v.number(problem), v.integer(problem), v.minValue(1, problem))
  return v.optional(v.pipe(v.union([figure, v.literal('any')], problem), v.description(description)))
}

const choice = <const Options extends readonly string[]>(options: Options, description: string) => {
  const problem = `Write ${toChoices(options)}`
  return v.optional(v.pipe(v.picklist(options, problem), v.description(description)))
}

const limits = {
  letters: limit('The most letters a word may have. Each part of a hyphenated word counts by itself.'),
  syllables: limit('The most syllables a word may have.'),
  'words in a sentence': limit('The most words a sentence may have.'),
  'sentences on a page': limit('The most sentences a page may have.'),
  'words on a page': limit('The most words a page may have.'),
} satisfies Record<keyof typeof LIMITS, unknown>

const stepEntries = {
  id: v.pipe(
    v.string('Give the step an id, as `id: pink-1`'),
    v.regex(/^\S+$/, 'Write the id without spaces, as `pink-1`'),
    v.description('The short name of the step, used on the command line and in stories: `pink-1`.'),
  ),
  title: v.optional(v.pipe(text('the title as words'), v.description('What the step teaches, in a few words.'))),
  after: v.optional(
    v.pipe(text('the id of a step'), v.description('In a file that extends another: the step that this one follows.')),
  ),
  teach: list('- ai as in rain', 'What letters say, by example, one a line: `ai as in rain`, `a_e as in cake`.'),
  'sight words': list('[the, is]', 'Words learnt by heart at this step.'),
  shapes: listOrAny('[VC, CVC]', 'Shapes of syllables that can be read: C for a consonant sound, V for a vowel sound.'),
  endings: list('[-s, -ed]', `Endings taught: ${ENDINGS.join(' ')}.`),
  'ending changes': list(
    '[double, drop e]',
    `How an ending may change the word before it: ${toChoices(Object.keys(ENDING_CHANGES))}.`,
  ),
  contractions: listOrAny("[can't, it's]", 'Shortened words taught.'),
  marks: listOrAny('[full stop, comma]', 'Marks taught, as themselves in quotes or by name.'),
  capitals: choice(
    Object.keys(CAPITALS),
    'Capital letters that can be read: none, the first letter of a sentence or a name, or words all in capitals too.',
  ),
  numerals: v.optional(
    v.pipe(
      v.union([v.picklist(['yes', 'no']), v.boolean()], 'Write `yes` or `no`'),
      v.description('Whether figures such as `6` can be read.'),
    ),
  ),
  limits: v.optional(
    v.pipe(
      v.strictObject(limits, 'Write limits as `letters: 3`, each on its own line'),
      v.description('Upper limits. A later step replaces them; `any` lifts one.'),
    ),
  ),
}

const settings = {
  endings: choice(
    ['taught', 'sounded'],
    'Whether an ending must be taught as such, or may be sounded out by taught letters.',
  ),
  'reduced vowels': choice(
    ['accept', 'flag'],
    'Whether a short vowel worn down in an unstressed syllable (the i of rabbit) can be read.',
  ),
}

const sequenceEntries = {
  name: v.pipe(text('a name, as `name: our-school`'), v.description('The short name of the sequence.')),
  title: v.optional(v.pipe(text('the title as words'), v.description('The name for people to read.'))),
  accent: choice(ACCENTS, 'The accent in which the example words are said.'),
  extends: v.optional(
    v.pipe(
      text('the name of a sequence'),
      v.description('A sequence whose steps come first. A step of the same id here adds to it.'),
    ),
  ),
  'look-alikes': list('[bdpq, mn]', 'Sets of letters that look alike.'),
  settings: v.optional(
    v.pipe(
      v.strictObject(settings, 'Write settings as `endings: taught`, each on its own line'),
      v.description('How words are judged in all steps.'),
    ),
  ),
  steps: v.pipe(
    v.array(
      v.strictObject(stepEntries, 'Write a step as `- id: …` with its lines below'),
      'Write a list of steps, each as `- id: …`',
    ),
    v.minLength(1, 'Write at least one step'),
    v.description('The steps in order. Each knows all that the steps before it have taught.'),
  ),
}

/** The file as it is written, once checked. */
export const sequenceSchema = v.pipe(
  v.strictObject(sequenceEntries, 'Write a sequence as `name: …` and `steps: …`'),
  v.title('A sequence of steps: what is taught when'),
)

export type SequenceFile = v.InferOutput<typeof sequenceSchema>
export type StepFile = SequenceFile['steps'][number]

function toChoices(options: readonly string[]): string {
  return options
    .map((option) => `\`${option}\``)
    .join(', ')
    .replace(/, ([^,]*)$/, ' or $1')
}
