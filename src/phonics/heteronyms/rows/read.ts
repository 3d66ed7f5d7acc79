// The one common verb whose past is spelt like its present and said otherwise.

import type { Heteronym } from '../types.ts'

export const read = [
  {
    word: 'read',
    note: 'The spelling shows no tense: the sentence must.',
    forms: [
      {
        form: 'present',
        classes: ['verb'],
        sounds: 'R IY1 D',
        meaning: 'look at words and take them in, now or in general',
        example: 'I read in bed every night.',
        phrases: ['a _ .', 'a good/nice/quick/long/great _'],
      },
      {
        form: 'past',
        classes: ['past'],
        sounds: 'R EH1 D',
        meaning: 'looked at words and took them in, before now',
        example: 'She read it to us last night.',
      },
    ],
  },
] as const satisfies readonly Heteronym[]
