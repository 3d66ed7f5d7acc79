// Words that end in /s/ as nouns or adjectives and in /z/ as verbs: no use, use it.

import type { Heteronym } from '../types.ts'

export const use = [
  {
    word: 'abuse',
    forms: [
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'AH0 B Y UW1 Z',
        meaning: 'to treat badly',
        example: 'Never abuse a friend.',
      },
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'AH0 B Y UW1 S',
        meaning: 'bad treatment',
        example: 'The abuse of animals is a crime.',
      },
    ],
  },
  {
    word: 'abuses',
    forms: [
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'AH0 B Y UW1 Z IH0 Z',
        meaning: 'treats badly',
        example: 'He abuses our trust.',
      },
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'AH0 B Y UW1 S IH0 Z',
        meaning: 'bad acts',
        example: 'The book tells of many abuses.',
      },
    ],
  },
  {
    word: 'excuse',
    forms: [
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'IH0 K S K Y UW1 Z',
        meaning: 'to forgive; to let off',
        example: 'Excuse me, is this seat free?',
        phrases: ['_ me/us/him/her/them/my/the'],
      },
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'IH0 K S K Y UW1 S',
        meaning: 'a reason given for a mistake',
        example: 'That is a poor excuse.',
        phrases: ['_ for/to', 'no/any/good/bad/poor/lame/weak/silly/great/perfect/best/an/another/every _'],
      },
    ],
  },
  {
    word: 'excuses',
    forms: [
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'IH0 K S K Y UW1 Z IH0 Z',
        meaning: 'forgives; lets off',
        example: 'She excuses him from the wash.',
        phrases: ['_ me/us/him/her/them/himself/herself/itself'],
      },
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'IH0 K S K Y UW1 S IH0 Z',
        meaning: 'reasons given for mistakes',
        example: 'No more excuses!',
        phrases: ['no/more/any/make/makes/made/making/of/many/good/bad/silly/poor/full _', '_ for'],
      },
    ],
  },
  {
    word: 'house',
    otherwise: 'noun',
    forms: [
      {
        form: 'noun',
        classes: ['noun', 'adjective'],
        sounds: 'HH AW1 S',
        meaning: 'a building to live in',
        example: 'The house has a green door.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'HH AW1 Z',
        byHand: true,
        meaning: 'to give a home to',
        example: 'The barn can house ten cows.',
      },
    ],
  },
  {
    word: 'misuse',
    forms: [
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'M IH0 S Y UW1 Z',
        meaning: 'to use wrongly',
        example: 'Do not misuse the tools.',
      },
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'M IH0 S Y UW1 S',
        meaning: 'wrong use',
        example: 'That is a misuse of glue.',
      },
    ],
  },
  {
    word: 'reuse',
    forms: [
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'R IY0 Y UW1 Z',
        meaning: 'to use again',
        example: 'We can reuse the jars.',
      },
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'R IY0 Y UW1 S',
        meaning: 'use for a second time',
        example: 'The jars are kept for reuse.',
      },
    ],
  },
  {
    word: 'use',
    forms: [
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'Y UW1 Z',
        meaning: 'to do something with a thing',
        example: 'May I use your spade?',
      },
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'Y UW1 S',
        meaning: 'what a thing is good for; using',
        example: 'It is no use crying.',
        phrases: [
          'no/any/much/little/some/good/great/of/in/for/into/out/more/better/full/first/make/makes/made/making/have/best/daily/what _',
          'in/of/for/no/any/some/much good/great/little/daily/no/any/much _',
          'put to _',
          'put to good _',
          "didn't _ to *",
          'did not _ to *',
          'the/its/this/their/our/my/your/his/a/each/every _ of',
          "it's/is/was/@be no _",
          '_ of the/a/an/this/that/these/those/his/her/my/your/it',
          "what/whats/what's the/is _",
        ],
      },
    ],
  },
  {
    word: 'used',
    note: 'Before to, when it means that something was so or is no longer strange, it ends in /st/; the dictionary lacks that form.',
    forms: [
      {
        form: 'verb',
        classes: ['verb', 'past', 'adjective'],
        sounds: 'Y UW1 Z D',
        meaning: 'did something with a thing; not new',
        example: 'Tam used a stick to get the ball.',
      },
      {
        form: 'used-to',
        classes: ['past'],
        sounds: 'Y UW1 S T',
        byHand: true,
        meaning: 'with to: was so before, or is not strange',
        example: 'There used to be a mill here.',
      },
    ],
  },
  {
    word: 'uses',
    forms: [
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'Y UW1 Z IH0 Z',
        meaning: 'does something with a thing',
        example: 'Ned uses a long rake.',
        phrases: ['he/she/it/who/that/always/often/never/also/only/still/everyone/everybody/nobody _'],
      },
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'Y UW1 S IH0 Z',
        meaning: 'what a thing is good for',
        example: 'String has many uses.',
        phrases: [
          '@number/many/several/few/other/new/more/different/its/their/the/lots of/various/these/all/some _',
          '_ of/for',
        ],
      },
    ],
  },
] as const satisfies readonly Heteronym[]
