// The form of a file of heteronyms: src/phonics/heteronyms/data/*.yaml.

import * as v from 'valibot'
import { list, text } from '../../../src/sequence/schema-parts.ts'

/** Groups of words that a phrase may name; see phrases.ts. */
export const GROUPS = ['@be', '@det', '@name', '@number', '@plural', '@poss', '@pron'] as const

const CLASSES = ['noun', 'adjective', 'adverb', 'verb', 'past'] as const
const choice = <const Options extends readonly string[]>(options: Options) =>
  v.picklist(options, `Write ${options.map((one) => `\`${one}\``).join(', ')}`)

const form = v.strictObject(
  {
    form: text('a short key, as `form: past`'),
    classes: v.array(choice(CLASSES), 'Write a list, as `classes: [noun, verb]`'),
    sounds: v.pipe(
      v.string('Write the sounds as the dictionary does, as `R IY1 D`'),
      v.regex(/^[A-Z]{1,2}[012]?( [A-Z]{1,2}[012]?)*$/, 'Write the sounds as the dictionary does, as `R IY1 D`'),
    ),
    'by hand': v.optional(v.literal(true, 'Write `true`, or leave it out')),
    meaning: text('what it means, for a teacher'),
    example: text('a sentence with the word'),
    phrases: list('- made of _', 'Word patterns round the word that belong to this form alone.'),
    topics: v.optional(text('words with spaces between')),
    hyphened: v.optional(text('words with hyphens, as `wind-up *-minute`')),
    written: v.optional(choice(['capital'])),
  },
  'Write a form as `form: …`, `classes: …`, `sounds: …`, `meaning: …`, `example: …`',
)

export const heteronymsSchema = v.array(
  v.strictObject(
    {
      word: v.pipe(v.string('Write the word'), v.regex(/^[a-z]+$/, 'Write the word in small letters')),
      note: v.optional(text('a sentence')),
      otherwise: v.optional(text('the key of a form')),
      fallback: v.optional(text('the key of a form')),
      thing: v.optional(text('the key of a form')),
      doubts: list('- with a _', 'Word patterns round the word in which neither `thing` nor `otherwise` is taken.'),
      forms: v.pipe(v.array(form, 'Write a list of forms'), v.length(2, 'A heteronym has two forms')),
    },
    'Write a row as `word: …` and `forms: …`',
  ),
  'Write a list, each row beginning with `- word: …`',
)

export type HeteronymFile = v.InferOutput<typeof heteronymsSchema>
