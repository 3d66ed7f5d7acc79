// Words whose ending is full in the verb and worn down, or a syllable of its own, in the adjective: to separate, separate beds; learned.

import type { Heteronym } from '../types.ts'

export const ate = [
  {
    word: 'advocate',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'AE1 D V AH0 K AH0 T',
        meaning: 'one who speaks for others',
        example: 'She is an advocate for bees.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'AE1 D V AH0 K EY2 T',
        meaning: 'to speak for',
        example: 'They advocate a longer break.',
      },
    ],
  },
  {
    word: 'aged',
    forms: [
      {
        form: 'verb',
        classes: ['verb', 'past'],
        sounds: 'EY1 JH D',
        meaning: 'of the age of; grew old',
        example: 'The show is for children aged five.',
        phrases: ['_ @number', '_ between/from/about/over/under'],
      },
      {
        form: 'adjective',
        classes: ['adjective'],
        sounds: 'EY1 JH IH0 D',
        meaning: 'very old',
        example: 'An aged man sat by the pond.',
        phrases: [
          'an/the/his/her/my/our/their _ man/woman/dog/cat/horse/king/queen/aunt/uncle/father/mother/parents/face/hands/wizard',
          'the _ .',
          '_ man/woman/dog/aunt/uncle/father/mother',
        ],
      },
    ],
  },
  {
    word: 'alternate',
    forms: [
      {
        form: 'adjective',
        classes: ['adjective', 'noun'],
        sounds: 'AO1 L T ER0 N AH0 T',
        meaning: 'every second one',
        example: 'We meet on alternate days.',
        phrases: ['on/in _ days/weeks/lines/sundays/mondays', '_ days/weeks/lines'],
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'AO1 L T ER0 N EY2 T',
        meaning: 'to take turns',
        example: 'Red beads alternate with blue.',
      },
    ],
  },
  {
    word: 'animate',
    forms: [
      {
        form: 'adjective',
        classes: ['adjective'],
        sounds: 'AE1 N AH0 M AH0 T',
        meaning: 'alive',
        example: 'A stone is not animate.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'AE1 N AH0 M EY2 T',
        meaning: 'to make move',
        example: 'They animate the drawings.',
      },
    ],
  },
  {
    word: 'appropriate',
    otherwise: 'adjective',
    forms: [
      {
        form: 'adjective',
        classes: ['adjective'],
        sounds: 'AH0 P R OW1 P R IY0 AH0 T',
        meaning: 'right for the place or time',
        example: 'Wear appropriate boots.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'AH0 P R OW1 P R IY0 EY2 T',
        meaning: 'to take for oneself',
        example: 'The geese appropriate the pond.',
      },
    ],
  },
  {
    word: 'approximate',
    forms: [
      {
        form: 'adjective',
        classes: ['adjective'],
        sounds: 'AH0 P R AA1 K S AH0 M AH0 T',
        meaning: 'nearly right',
        example: 'Give an approximate answer.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'AH0 P R AA1 K S AH0 M EY2 T',
        meaning: 'to come near',
        example: 'The numbers approximate the truth.',
      },
    ],
  },
  {
    word: 'articulate',
    forms: [
      {
        form: 'adjective',
        classes: ['adjective'],
        sounds: 'AA0 R T IH1 K Y AH0 L AH0 T',
        meaning: 'able to speak clearly',
        example: 'Meg is an articulate girl.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'AA0 R T IH1 K Y AH0 L EY2 T',
        meaning: 'to say clearly',
        example: 'Articulate each sound.',
      },
    ],
  },
  {
    word: 'associate',
    forms: [
      {
        form: 'noun',
        classes: ['noun', 'adjective'],
        sounds: 'AH0 S OW1 S IY0 AH0 T',
        meaning: 'a person one works with',
        example: 'Ned came with an associate.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'AH0 S OW1 S IY0 EY2 T',
        meaning: 'to link in the mind',
        example: 'I associate rain with ducks.',
      },
    ],
  },
  {
    word: 'beloved',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'B IH0 L AH1 V AH0 D',
        meaning: 'one who is much loved',
        example: 'My beloved, come home!',
        phrases: ['my/his/her/your _ .'],
      },
      {
        form: 'verb',
        classes: ['past', 'adjective'],
        sounds: 'B IH0 L AH1 V D',
        meaning: 'much loved',
        example: 'Zub is beloved by us all.',
        phrases: ['_ by/of', '@be _'],
      },
    ],
  },
  {
    word: 'blessed',
    forms: [
      {
        form: 'verb',
        classes: ['verb', 'past'],
        sounds: 'B L EH1 S T',
        meaning: 'gave a blessing',
        example: 'The priest blessed the boats.',
        phrases: ['_ with/the/him/her/us/them/by/you'],
      },
      {
        form: 'adjective',
        classes: ['adjective'],
        sounds: 'B L EH1 S IH0 D',
        byHand: true,
        meaning: 'holy; also used to show that one is cross',
        example: 'Where is that blessed key?',
        phrases: ['that/this/every/the whole _ key/thing/cat/dog/day/time/peace/saint', '_ are'],
      },
    ],
  },
  {
    word: 'consummate',
    note: 'In Britain the adjective often has the stress on its second part.',
    forms: [
      {
        form: 'adjective',
        classes: ['adjective'],
        sounds: 'K AA1 N S AH0 M AH0 T',
        meaning: 'of the highest skill',
        example: 'Ned is a consummate gardener.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'K AA1 N S AH0 M EY2 T',
        meaning: 'to make complete',
        example: 'The gift will consummate the deal.',
      },
    ],
  },
  {
    word: 'delegate',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'D EH1 L AH0 G AH0 T',
        meaning: 'one sent to speak for others',
        example: 'Each street sent a delegate.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'D EH1 L AH0 G EY2 T',
        meaning: 'to hand a job to another',
        example: 'Delegate the washing up to Sid.',
      },
    ],
  },
  {
    word: 'delegates',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'D EH1 L AH0 G AH0 T S',
        meaning: 'those sent to speak for others',
        example: 'Six delegates came.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'D EH1 L AH0 G EY2 T S',
        meaning: 'hands a job to another',
        example: 'Meg delegates the mess to Tam.',
      },
    ],
  },
  {
    word: 'deliberate',
    forms: [
      {
        form: 'adjective',
        classes: ['adjective'],
        sounds: 'D IH0 L IH1 B ER0 AH0 T',
        meaning: 'done on purpose',
        example: 'It was a deliberate splash.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'D IH0 L IH1 B ER0 EY2 T',
        meaning: 'to think hard',
        example: 'The judges deliberate for an hour.',
      },
    ],
  },
  {
    word: 'duplicate',
    forms: [
      {
        form: 'noun',
        classes: ['noun', 'adjective'],
        sounds: 'D UW1 P L AH0 K AH0 T',
        meaning: 'a copy',
        example: 'This key is a duplicate.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'D UW1 P L AH0 K EY2 T',
        meaning: 'to copy',
        example: 'Please duplicate this page.',
      },
    ],
  },
  {
    word: 'elaborate',
    forms: [
      {
        form: 'adjective',
        classes: ['adjective'],
        sounds: 'IH0 L AE1 B R AH0 T',
        meaning: 'with many parts',
        example: 'Meg built an elaborate den.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'IH0 L AE1 B ER0 EY2 T',
        meaning: 'to tell more',
        example: 'Can you elaborate on that?',
      },
    ],
  },
  {
    word: 'estimate',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'EH1 S T AH0 M AH0 T',
        meaning: 'a careful guess',
        example: 'What is your estimate?',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'EH1 S T AH0 M EY2 T',
        meaning: 'to guess carefully',
        example: 'Estimate how many beans there are.',
      },
    ],
  },
  {
    word: 'estimates',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'EH1 S T AH0 M AH0 T S',
        meaning: 'careful guesses',
        example: 'Our estimates were too low.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'EH1 S T AH0 M EY2 T S',
        meaning: 'guesses carefully',
        example: 'Sid estimates the depth.',
      },
    ],
  },
  {
    word: 'graduate',
    forms: [
      {
        form: 'noun',
        classes: ['noun', 'adjective'],
        sounds: 'G R AE1 JH AH0 W AH0 T',
        meaning: 'one who has finished college',
        example: 'My uncle is a graduate.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'G R AE1 JH AH0 W EY2 T',
        meaning: 'to finish college',
        example: 'She will graduate in June.',
      },
    ],
  },
  {
    word: 'graduates',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'G R AE1 JH AH0 W AH0 T S',
        meaning: 'those who have finished college',
        example: 'Both aunts are graduates.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'G R AE1 JH AH0 W EY2 T S',
        meaning: 'finishes college',
        example: 'She graduates in June.',
      },
    ],
  },
  {
    word: 'intimate',
    forms: [
      {
        form: 'adjective',
        classes: ['adjective', 'noun'],
        sounds: 'IH1 N T AH0 M AH0 T',
        meaning: 'very close',
        example: 'They are intimate friends.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'IH1 N T AH0 M EY2 T',
        meaning: 'to hint',
        example: 'Ned did intimate that he knew.',
      },
    ],
  },
  {
    word: 'learned',
    note: 'In Britain the verb is mostly written learnt.',
    otherwise: 'verb',
    forms: [
      {
        form: 'verb',
        classes: ['verb', 'past'],
        sounds: 'L ER1 N D',
        meaning: 'found out how',
        example: 'Meg learned to swim.',
        phrases: ['_ to/how/that/about/from/a/the/his/her/it/all'],
      },
      {
        form: 'adjective',
        classes: ['adjective'],
        sounds: 'L ER1 N IH0 D',
        meaning: 'knowing a lot',
        example: 'The learned old man nodded.',
        phrases: [
          'a/the/most/very/many _ old/man/men/woman/judge/doctor/professor/book/books/owl/scholar/friend/people',
        ],
      },
    ],
  },
  {
    word: 'moderate',
    forms: [
      {
        form: 'adjective',
        classes: ['adjective', 'noun'],
        sounds: 'M AA1 D ER0 AH0 T',
        meaning: 'not too much',
        example: 'Bake in a moderate oven.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'M AA1 D ER0 EY2 T',
        meaning: 'to make less; to keep order',
        example: 'Ned will moderate the talk.',
      },
    ],
  },
  {
    word: 'separate',
    forms: [
      {
        form: 'adjective',
        classes: ['adjective', 'noun'],
        sounds: 'S EH1 P ER0 IH0 T',
        meaning: 'apart; not joined',
        example: 'The twins sleep in separate beds.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'S EH1 P ER0 EY2 T',
        meaning: 'to part',
        example: 'Separate the eggs from the straw.',
      },
    ],
  },
  {
    word: 'separates',
    forms: [
      {
        form: 'adjective',
        classes: ['noun'],
        sounds: 'S EH1 P ER0 IH0 T S',
        meaning: 'clothes not worn as a set',
        example: 'The shop sells separates.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'S EH1 P ER0 EY2 T S',
        meaning: 'parts',
        example: 'A wall separates the two plots.',
      },
    ],
  },
] as const satisfies readonly Heteronym[]
