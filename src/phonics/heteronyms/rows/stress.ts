// Words with the stress on the first part as nouns and on the second as verbs: a record, to record.

import type { Heteronym } from '../types.ts'

export const stress = [
  {
    word: 'addict',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'AE1 D IH2 K T',
        meaning: 'a person who cannot stop something harmful',
        example: 'He was a sugar addict.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'AH0 D IH1 K T',
        meaning: 'to make unable to stop',
        example: 'Such games can addict you.',
      },
    ],
  },
  {
    word: 'address',
    note: 'In Britain both have the stress on the second part.',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'AE1 D R EH2 S',
        meaning: 'where somebody lives',
        example: 'Write your address here.',
        phrases: ['_ book/label/is', 'name and _'],
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'AH0 D R EH1 S',
        meaning: 'to speak to; to write an address on',
        example: 'The head will address the school.',
      },
    ],
  },
  {
    word: 'ally',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'AE1 L AY0',
        meaning: 'a friend in a fight',
        example: 'Zub is my ally.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'AH0 L AY1',
        meaning: 'to join with',
        example: 'The two kings ally themselves.',
      },
    ],
  },
  {
    word: 'annex',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'AE1 N EH2 K S',
        meaning: 'a building joined to another',
        example: 'We slept in the annex.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'AH0 N EH1 K S',
        meaning: "to add land to one's own",
        example: 'The king may annex the island.',
      },
    ],
  },
  {
    word: 'attribute',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'AE1 T R AH0 B Y UW2 T',
        meaning: 'a quality',
        example: 'Being kind is a good attribute.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'AH0 T R IH1 B Y UW2 T',
        meaning: 'to say that something comes from',
        example: 'They attribute the poem to Meg.',
      },
    ],
  },
  {
    word: 'attributes',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'AE1 T R AH0 B Y UW2 T S',
        meaning: 'qualities',
        example: 'The hen has fine attributes.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'AH0 T R IH1 B Y UW2 T S',
        meaning: 'says that something comes from',
        example: 'Ned attributes his luck to Zub.',
      },
    ],
  },
  {
    word: 'combat',
    forms: [
      {
        form: 'noun',
        classes: ['noun', 'adjective'],
        sounds: 'K AA1 M B AE0 T',
        meaning: 'fighting',
        example: 'The knights met in combat.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'K AH0 M B AE1 T',
        meaning: 'to fight against',
        example: 'We must combat the slugs.',
      },
    ],
  },
  {
    word: 'combine',
    otherwise: 'verb',
    forms: [
      {
        form: 'noun',
        classes: ['noun', 'adjective'],
        sounds: 'K AA1 M B AY0 N',
        meaning: 'a machine that cuts and threshes corn',
        example: 'The combine cut the wheat.',
        phrases: ['_ harvester/harvesters'],
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'K AH0 M B AY1 N',
        meaning: 'to join together',
        example: 'Combine the egg and the milk.',
      },
    ],
  },
  {
    word: 'compound',
    forms: [
      {
        form: 'noun',
        classes: ['noun', 'adjective'],
        sounds: 'K AA1 M P AW0 N D',
        meaning: 'something made of parts',
        example: 'Salt is a compound.',
        phrases: ['_ word/words'],
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'K AH0 M P AW1 N D',
        meaning: 'to make worse; to mix',
        example: 'Do not compound the mistake.',
      },
    ],
  },
  {
    word: 'compounds',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'K AA1 M P AW0 N D Z',
        meaning: 'things made of parts',
        example: 'Duckpond and hencoop are compounds.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'K AH0 M P AW1 N D Z',
        meaning: 'makes worse; mixes',
        example: 'The mud compounds the problem.',
      },
    ],
  },
  {
    word: 'compress',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'K AA1 M P R EH0 S',
        meaning: 'a pad pressed on a hurt',
        example: 'Put a cold compress on it.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'K AH0 M P R EH1 S',
        meaning: 'to press together',
        example: 'Compress the leaves in a sack.',
      },
    ],
  },
  {
    word: 'conduct',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'K AA1 N D AH0 K T',
        meaning: 'how you behave',
        example: 'Ned was pleased with his conduct.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'K AA0 N D AH1 K T',
        meaning: 'to lead; to carry heat',
        example: 'Copper wires conduct heat.',
      },
    ],
  },
  {
    word: 'conflict',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'K AA1 N F L IH0 K T',
        meaning: 'a fight; not agreeing',
        example: 'The two stories are in conflict.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'K AH0 N F L IH1 K T',
        meaning: 'to not agree',
        example: 'The dates conflict with our trip.',
      },
    ],
  },
  {
    word: 'conflicts',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'K AA1 N F L IH0 K T S',
        meaning: 'fights',
        example: 'The ducks had many conflicts.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'K AH0 N F L IH1 K T S',
        meaning: 'does not agree',
        example: 'The trip conflicts with the fair.',
      },
    ],
  },
  {
    word: 'console',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'K AA1 N S OW0 L',
        meaning: 'a machine for games',
        example: 'He got a console for his birthday.',
        phrases: ['game/games/video/new _'],
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'K AH0 N S OW1 L',
        meaning: 'to comfort',
        example: 'Meg tried to console Sid.',
      },
    ],
  },
  {
    word: 'construct',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'K AA1 N S T R AH0 K T',
        meaning: 'an idea built from parts',
        example: 'Time is a construct.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'K AH0 N S T R AH1 K T',
        meaning: 'to build',
        example: 'They construct a den.',
      },
    ],
  },
  {
    word: 'content',
    forms: [
      {
        form: 'happy',
        classes: ['adjective', 'verb'],
        sounds: 'K AH0 N T EH1 N T',
        meaning: 'pleased with what one has',
        example: 'The old cat was content.',
        phrases: ['_ to/with', '@be/feel/feels/felt/seem/seems/seemed/look/looks/looked/quite/very/perfectly/so _ .'],
      },
      {
        form: 'contained',
        classes: ['noun'],
        sounds: 'K AA1 N T EH0 N T',
        meaning: 'what is inside',
        example: 'The milk has a high fat content.',
        phrases: ['the/its/their/high/low/fat/sugar/salt/water/good/new/some/more/this/much _', '_ of'],
      },
    ],
  },
  {
    word: 'contents',
    forms: [
      {
        form: 'contained',
        classes: ['noun'],
        sounds: 'K AA1 N T EH0 N T S',
        meaning: 'the things inside',
        example: 'Tip out the contents of the box.',
      },
      {
        form: 'happy',
        classes: ['verb'],
        sounds: 'K AH0 N T EH1 N T S',
        meaning: 'makes pleased',
        example: 'A bone contents Zub.',
        phrases: ['_ himself/herself/itself'],
      },
    ],
  },
  {
    word: 'contest',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'K AA1 N T EH0 S T',
        meaning: 'a game to find the best',
        example: 'Zub won the dog contest.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'K AH0 N T EH1 S T',
        meaning: 'to argue against',
        example: 'They plan to contest the result.',
      },
    ],
  },
  {
    word: 'contests',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'K AA1 N T EH0 S T S',
        meaning: 'games to find the best',
        example: 'There were contests at the fair.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'K AH0 N T EH1 S T S',
        meaning: 'argues against',
        example: 'She contests each point.',
      },
    ],
  },
  {
    word: 'contract',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'K AA1 N T R AE2 K T',
        meaning: 'a signed promise',
        example: 'He signed the contract.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'K AH0 N T R AE1 K T',
        meaning: 'to get smaller; to catch an illness',
        example: 'Metals contract in the cold.',
      },
    ],
  },
  {
    word: 'contracts',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'K AA1 N T R AE2 K T S',
        meaning: 'signed promises',
        example: 'Ned has two contracts for eggs.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'K AH0 N T R AE1 K T S',
        meaning: 'gets smaller; catches an illness',
        example: 'The wire contracts in the cold.',
      },
    ],
  },
  {
    word: 'contrast',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'K AA1 N T R AE0 S T',
        meaning: 'a clear difference',
        example: 'The contrast is sharp.',
        phrases: ['in/by _'],
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'K AH0 N T R AE1 S T',
        meaning: 'to show the difference',
        example: 'Contrast the two ponds.',
      },
    ],
  },
  {
    word: 'contrasts',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'K AA1 N T R AE0 S T S',
        meaning: 'clear differences',
        example: 'The lane is full of contrasts.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'K AH0 N T R AE1 S T S',
        meaning: 'shows a difference',
        example: 'The red contrasts with the blue.',
      },
    ],
  },
  {
    word: 'converse',
    forms: [
      {
        form: 'noun',
        classes: ['noun', 'adjective'],
        sounds: 'K AA1 N V ER0 S',
        meaning: 'the opposite',
        example: 'The converse is true.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'K AH0 N V ER1 S',
        meaning: 'to talk',
        example: 'The two men converse in signs.',
      },
    ],
  },
  {
    word: 'convert',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'K AA1 N V ER0 T',
        meaning: 'a person whose mind was changed',
        example: 'He is a convert to tea.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'K AH0 N V ER1 T',
        meaning: 'to change',
        example: 'They want to convert the barn.',
      },
    ],
  },
  {
    word: 'converts',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'K AA1 N V ER0 T S',
        meaning: 'people whose minds were changed',
        example: 'Two converts to tea sat down.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'K AH0 N V ER1 T S',
        meaning: 'changes',
        example: 'Ned converts the shed into a den.',
      },
    ],
  },
  {
    word: 'decrease',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'D IY1 K R IY2 S',
        meaning: 'a making or getting less',
        example: 'There was a decrease in eggs.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'D IH0 K R IY1 S',
        meaning: 'to get less',
        example: 'The eggs decrease in winter.',
      },
    ],
  },
  {
    word: 'defect',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'D IY1 F EH0 K T',
        meaning: 'a fault',
        example: 'The mug has a defect.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'D IH0 F EH1 K T',
        meaning: 'to go over to the other side',
        example: 'The spy may defect.',
      },
    ],
  },
  {
    word: 'defects',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'D IY1 F EH0 K T S',
        meaning: 'faults',
        example: 'The mugs have defects.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'D IH0 F EH1 K T S',
        meaning: 'goes over to the other side',
        example: 'The spy defects at last.',
      },
    ],
  },
  {
    word: 'digest',
    otherwise: 'verb',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'D AY1 JH EH0 S T',
        meaning: 'a short form of news',
        example: 'He read a digest of the news.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'D AY0 JH EH1 S T',
        meaning: 'to break down food in the body',
        example: 'Cows digest grass slowly.',
      },
    ],
  },
  {
    word: 'discharge',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'D IH1 S CH AA2 R JH',
        meaning: 'what flows out',
        example: 'There was a discharge from his ear.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'D IH0 S CH AA1 R JH',
        meaning: 'to let go',
        example: 'The nurse will discharge him.',
      },
    ],
  },
  {
    word: 'discount',
    forms: [
      {
        form: 'noun',
        classes: ['noun', 'adjective'],
        sounds: 'D IH1 S K AW0 N T',
        meaning: 'money off',
        example: 'We got a discount on the seeds.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'D IH0 S K AW1 N T',
        meaning: 'to leave out of account',
        example: 'Do not discount his help.',
      },
    ],
  },
  {
    word: 'escort',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'EH1 S K AO0 R T',
        meaning: 'one who goes with another to guard him',
        example: 'The queen had an escort.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'EH0 S K AO1 R T',
        meaning: 'to go with and guard',
        example: 'Two guards escort the king.',
      },
    ],
  },
  {
    word: 'exploit',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'EH1 K S P L OY2 T',
        meaning: 'a bold act',
        example: 'He told us of his last exploit.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'EH2 K S P L OY1 T',
        meaning: 'to use, often unfairly',
        example: 'Do not exploit your friends.',
      },
    ],
  },
  {
    word: 'export',
    forms: [
      {
        form: 'noun',
        classes: ['noun', 'adjective'],
        sounds: 'EH1 K S P AO0 R T',
        meaning: 'goods sold to another land',
        example: 'Wool is an export.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'EH0 K S P AO1 R T',
        byHand: true,
        meaning: 'to sell to another land',
        example: 'They export wool.',
      },
    ],
  },
  {
    word: 'extract',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'EH1 K S T R AE2 K T',
        meaning: 'a piece taken from something',
        example: 'He read an extract from it.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'IH0 K S T R AE1 K T',
        meaning: 'to take out',
        example: 'We extract honey from the hive.',
      },
    ],
  },
  {
    word: 'extracts',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'EH1 K S T R AE2 K T S',
        meaning: 'pieces taken from something',
        example: 'She read extracts from it.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'IH0 K S T R AE1 K T S',
        meaning: 'takes out',
        example: 'Ned extracts the honey.',
      },
    ],
  },
  {
    word: 'impact',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'IH1 M P AE0 K T',
        meaning: 'a hit; an effect',
        example: 'The impact bent the gate.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'IH2 M P AE1 K T',
        meaning: 'to have an effect on',
        example: 'The rain will impact the fair.',
      },
    ],
  },
  {
    word: 'implant',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'IH1 M P L AE2 N T',
        meaning: 'something put in the body',
        example: 'The cat has an implant.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'IH2 M P L AE1 N T',
        meaning: 'to put in deep',
        example: 'The vet will implant a chip.',
      },
    ],
  },
  {
    word: 'import',
    forms: [
      {
        form: 'noun',
        classes: ['noun', 'adjective'],
        sounds: 'IH1 M P AO2 R T',
        meaning: 'goods brought from another land',
        example: 'The tea was an import.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'IH2 M P AO1 R T',
        meaning: 'to bring from another land',
        example: 'We import tea.',
      },
    ],
  },
  {
    word: 'imports',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'IH1 M P AO2 R T S',
        meaning: 'goods brought from another land',
        example: 'Imports of tea are up.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'IH2 M P AO1 R T S',
        meaning: 'brings from another land',
        example: 'The shop imports tea.',
      },
    ],
  },
  {
    word: 'incense',
    otherwise: 'noun',
    forms: [
      {
        form: 'noun',
        classes: ['noun', 'adjective'],
        sounds: 'IH1 N S EH2 N S',
        meaning: 'what gives a sweet smell when burnt',
        example: 'The shop smelt of incense.',
        phrases: ['_ stick/sticks', 'burn/burnt/burned/burning/of _'],
        topics: 'smell smelt burn burnt burning sweet',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'IH2 N S EH1 N S',
        meaning: 'to make very angry',
        example: 'Loud bangs incense the geese.',
      },
    ],
  },
  {
    word: 'incline',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'IH1 N K L AY0 N',
        meaning: 'a slope',
        example: 'The cart went up the incline.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'IH2 N K L AY1 N',
        meaning: 'to lean',
        example: 'Incline your head to the left.',
      },
    ],
  },
  {
    word: 'increase',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'IH1 N K R IY2 S',
        meaning: 'a getting more',
        example: 'There was a big increase in eggs.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'IH2 N K R IY1 S',
        meaning: 'to get more',
        example: 'The numbers increase each year.',
      },
    ],
  },
  {
    word: 'increases',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'IH1 N K R IY2 S IH0 Z',
        meaning: 'steps up',
        example: 'The price increases were big.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'IH0 N K R IY1 S AH0 Z',
        meaning: 'gets more',
        example: 'The noise increases at night.',
      },
    ],
  },
  {
    word: 'insert',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'IH1 N S ER2 T',
        meaning: 'something put in',
        example: 'The book has an insert.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'IH2 N S ER1 T',
        meaning: 'to put in',
        example: 'Insert a coin in the slot.',
      },
    ],
  },
  {
    word: 'insult',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'IH1 N S AH2 L T',
        meaning: 'a rude remark',
        example: 'That was an insult!',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'IH2 N S AH1 L T',
        meaning: 'to be rude to',
        example: 'Do not insult the cook.',
      },
    ],
  },
  {
    word: 'insults',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'IH1 N S AH2 L T S',
        meaning: 'rude remarks',
        example: 'They shouted insults.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'IH2 N S AH1 L T S',
        meaning: 'is rude to',
        example: 'He insults the cook.',
      },
    ],
  },
  {
    word: 'object',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'AA1 B JH EH0 K T',
        meaning: 'a thing',
        example: 'What is that odd object?',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'AH0 B JH EH1 K T',
        meaning: 'to say that you do not like it',
        example: 'Do you object to the smell?',
      },
    ],
  },
  {
    word: 'objects',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'AA1 B JH EH0 K T S',
        meaning: 'things',
        example: 'Put the objects back.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'AH0 B JH EH1 K T S',
        meaning: 'says that he does not like it',
        example: 'He objects to loud music.',
      },
    ],
  },
  {
    word: 'perfect',
    otherwise: 'adjective',
    forms: [
      {
        form: 'adjective',
        classes: ['adjective', 'noun'],
        sounds: 'P ER1 F IH2 K T',
        meaning: 'as good as can be',
        example: 'It was a perfect day.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'P ER0 F EH1 K T',
        meaning: 'to make as good as can be',
        example: 'She trains to perfect her dive.',
      },
    ],
  },
  {
    word: 'perfume',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'P ER1 F Y UW2 M',
        byHand: true,
        meaning: 'a sweet smell in a bottle',
        example: 'Gran has a bottle of perfume.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'P ER0 F Y UW1 M',
        meaning: 'to give a sweet smell',
        example: 'Roses perfume the lane.',
      },
    ],
  },
  {
    word: 'permit',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'P ER1 M IH2 T',
        meaning: 'a card that says you may',
        example: 'You need a permit to fish here.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'P ER0 M IH1 T',
        meaning: 'to allow',
        example: 'The rules do not permit dogs.',
      },
    ],
  },
  {
    word: 'permits',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'P ER1 M IH2 T S',
        meaning: 'cards that say you may',
        example: 'We sell fishing permits.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'P ER0 M IH1 T S',
        meaning: 'allows',
        example: 'He permits no dogs.',
      },
    ],
  },
  {
    word: 'present',
    forms: [
      {
        form: 'noun',
        classes: ['noun', 'adjective'],
        sounds: 'P R EH1 Z AH0 N T',
        meaning: 'a gift; now; here',
        example: 'Meg got a present from her gran.',
        phrases: ['at/to/for/from the _', 'at _', 'birthday/christmas/wedding _'],
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'P R IY0 Z EH1 N T',
        meaning: 'to give or show to people',
        example: 'Ned will present the cup.',
      },
    ],
  },
  {
    word: 'presents',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'P R EH1 Z AH0 N T S',
        meaning: 'gifts',
        example: 'Put the presents under the tree.',
        phrases: ['birthday/christmas/wedding/lots of/of/no/many/more/with _'],
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'P R IY0 Z EH1 N T S',
        meaning: 'gives or shows to people',
        example: 'She presents a show about birds.',
      },
    ],
  },
  {
    word: 'produce',
    note: 'In Britain the noun begins with the short o of pot.',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'P R OW1 D UW0 S',
        meaning: 'fruit and other things grown',
        example: 'Ned sells his produce.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'P R AH0 D UW1 S',
        meaning: 'to make',
        example: 'Hens produce eggs.',
      },
    ],
  },
  {
    word: 'progress',
    note: 'In Britain the noun begins with a long o.',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'P R AA1 G R EH2 S',
        meaning: 'a moving forward',
        example: 'Tam has made good progress.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'P R AH0 G R EH1 S',
        meaning: 'to move forward',
        example: 'You may progress to the next level.',
      },
    ],
  },
  {
    word: 'project',
    forms: [
      {
        form: 'noun',
        classes: ['noun', 'adjective'],
        sounds: 'P R AA1 JH EH0 K T',
        meaning: 'a piece of work to do',
        example: 'Our project is about frogs.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'P R AH0 JH EH1 K T',
        meaning: 'to throw forward; to stick out',
        example: 'We can project the film on the wall.',
      },
    ],
  },
  {
    word: 'projects',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'P R AA1 JH EH0 K T S',
        meaning: 'pieces of work to do',
        example: 'The class has two projects.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'P R AH0 JH EH1 K T S',
        meaning: 'throws forward; sticks out',
        example: 'A nail projects from the shed.',
      },
    ],
  },
  {
    word: 'protest',
    forms: [
      {
        form: 'noun',
        classes: ['noun', 'adjective'],
        sounds: 'P R OW1 T EH2 S T',
        meaning: 'a show that people do not like something',
        example: 'There was a protest about the trees.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'P R AH0 T EH1 S T',
        meaning: 'to say that you do not like it',
        example: 'The ducks protest loudly.',
      },
    ],
  },
  {
    word: 'protests',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'P R OW1 T EH2 S T S',
        meaning: 'shows that people do not like something',
        example: 'There were protests in the street.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'P R AH0 T EH1 S T S',
        meaning: 'says that he does not like it',
        example: 'Sid protests about his bath.',
      },
    ],
  },
  {
    word: 'rebel',
    forms: [
      {
        form: 'noun',
        classes: ['noun', 'adjective'],
        sounds: 'R EH1 B AH0 L',
        meaning: 'one who fights against a ruler or rule',
        example: 'He was a rebel at school.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'R IH0 B EH1 L',
        meaning: 'to fight against a ruler or rule',
        example: 'The hens may rebel.',
      },
    ],
  },
  {
    word: 'rebels',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'R EH1 B AH0 L Z',
        meaning: 'those who fight against a ruler or rule',
        example: 'The rebels hid in the wood.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'R IH0 B EH1 L Z',
        meaning: 'fights against a ruler or rule',
        example: 'Zub rebels at bath time.',
      },
    ],
  },
  {
    word: 'recall',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'R IY1 K AO2 L',
        meaning: 'memory; a calling back',
        example: 'He has good recall.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'R IH0 K AO1 L',
        meaning: 'to remember; to call back',
        example: 'I recall his name.',
      },
    ],
  },
  {
    word: 'record',
    forms: [
      {
        form: 'noun',
        classes: ['noun', 'adjective'],
        sounds: 'R EH1 K ER0 D',
        meaning: 'what is written down; the best so far; a disc of music',
        example: 'Ned keeps a record of the eggs.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'R IH0 K AO1 R D',
        meaning: 'to write down or save sound',
        example: 'We will record the sound of rain.',
      },
    ],
  },
  {
    word: 'records',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'R EH1 K ER0 D Z',
        meaning: 'what is written down; discs of music',
        example: 'Grandad has a stack of records.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'R IH0 K AO1 R D Z',
        meaning: 'writes down or saves sound',
        example: 'The class records the weather.',
      },
    ],
  },
  {
    word: 'refund',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'R IY1 F AH2 N D',
        meaning: 'money given back',
        example: 'We got a refund for the kite.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'R IH0 F AH1 N D',
        meaning: 'to give money back',
        example: 'The shop will refund us.',
      },
    ],
  },
  {
    word: 'refuse',
    forms: [
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'R IH0 F Y UW1 Z',
        meaning: 'to say no',
        example: 'I refuse to go to bed.',
        phrases: ['_ to'],
      },
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'R EH1 F Y UW2 Z',
        meaning: 'rubbish',
        example: 'The cart takes the refuse away.',
        phrases: ['_ bin/bins/sack/sacks/collection/lorry', 'of/household _'],
      },
    ],
  },
  {
    word: 'reject',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'R IY1 JH EH0 K T',
        meaning: 'a thing that is not good enough',
        example: 'This mug is a reject.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'R IH0 JH EH1 K T',
        meaning: 'to not take',
        example: 'Do not reject his help.',
      },
    ],
  },
  {
    word: 'rejects',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'R IY1 JH EH0 K T S',
        meaning: 'things that are not good enough',
        example: 'The shop sells rejects.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'R IH0 JH EH1 K T S',
        meaning: 'does not take',
        example: 'The hen rejects the chick.',
      },
    ],
  },
  {
    word: 'resume',
    note: 'The noun is American and is also written with accents.',
    forms: [
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'R IH0 Z UW1 M',
        meaning: 'to go on after a stop',
        example: 'The game will resume at two.',
      },
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'R EH1 Z AH0 M EY2',
        meaning: "a list of one's jobs (American)",
        example: 'Send us your resume.',
      },
    ],
  },
  {
    word: 'segment',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'S EH1 G M AH0 N T',
        meaning: 'a part of a whole',
        example: 'Sid ate a segment of orange.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'S EH2 G M EH1 N T',
        meaning: 'to cut into parts',
        example: 'We segment words into sounds.',
      },
    ],
  },
  {
    word: 'subject',
    forms: [
      {
        form: 'noun',
        classes: ['noun', 'adjective'],
        sounds: 'S AH1 B JH IH0 K T',
        meaning: 'what is taught or talked about',
        example: 'Art is my best subject.',
        phrases: ['_ to'],
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'S AH0 B JH EH1 K T',
        meaning: 'to make to suffer',
        example: 'They subject the metal to heat.',
      },
    ],
  },
  {
    word: 'subjects',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'S AH1 B JH IH0 K T S',
        meaning: 'what is taught or talked about',
        example: 'We have six subjects.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'S AH0 B JH EH1 K T S',
        meaning: 'makes to suffer',
        example: 'He subjects us to his songs.',
      },
    ],
  },
  {
    word: 'survey',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'S ER1 V EY2',
        meaning: 'a set of questions or measurements',
        example: 'We did a survey of bugs.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'S ER0 V EY1',
        meaning: 'to look over',
        example: 'He climbed up to survey the land.',
      },
    ],
  },
  {
    word: 'surveys',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'S ER1 V EY2 Z',
        meaning: 'sets of questions or measurements',
        example: 'We did two surveys.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'S ER0 V EY1 Z',
        meaning: 'looks over',
        example: 'Ned surveys his hens.',
      },
    ],
  },
  {
    word: 'suspect',
    forms: [
      {
        form: 'noun',
        classes: ['noun', 'adjective'],
        sounds: 'S AH1 S P EH2 K T',
        meaning: 'one thought to have done wrong',
        example: 'The fox is the main suspect.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'S AH0 S P EH1 K T',
        meaning: 'to think that it may be so',
        example: 'I suspect that Zub took the bun.',
      },
    ],
  },
  {
    word: 'suspects',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'S AH1 S P EH2 K T S',
        meaning: 'those thought to have done wrong',
        example: 'There are two suspects.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'S AH0 S P EH1 K T S',
        meaning: 'thinks that it may be so',
        example: 'Meg suspects the fox.',
      },
    ],
  },
  {
    word: 'torment',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'T AO1 R M EH2 N T',
        meaning: 'great pain',
        example: 'The cat was in torment.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'T AO0 R M EH1 N T',
        meaning: 'to tease cruelly',
        example: 'Do not torment the cat.',
      },
    ],
  },
  {
    word: 'transfer',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'T R AE1 N S F ER0',
        meaning: 'a move to another place',
        example: 'He asked for a transfer.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'T R AE0 N S F ER1',
        meaning: 'to move to another place',
        example: 'Transfer the seeds to a pot.',
      },
    ],
  },
  {
    word: 'transport',
    forms: [
      {
        form: 'noun',
        classes: ['noun', 'adjective'],
        sounds: 'T R AE1 N S P AO0 R T',
        meaning: 'ways to carry people and goods',
        example: 'The bus is a kind of transport.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'T R AE0 N S P AO1 R T',
        meaning: 'to carry from place to place',
        example: 'Carts transport the milk.',
      },
    ],
  },
  {
    word: 'update',
    forms: [
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'AH1 P D EY2 T',
        meaning: 'the latest news',
        example: 'Give us an update.',
      },
      {
        form: 'verb',
        classes: ['verb'],
        sounds: 'AH0 P D EY1 T',
        meaning: 'to bring up to date',
        example: 'Ned will update the sign.',
      },
    ],
  },
  {
    word: 'upset',
    forms: [
      {
        form: 'verb',
        classes: ['verb', 'past', 'adjective'],
        sounds: 'AH0 P S EH1 T',
        meaning: 'sad or cross; to make sad; to tip over',
        example: 'Tam was upset.',
      },
      {
        form: 'noun',
        classes: ['noun'],
        sounds: 'AH1 P S EH2 T',
        meaning: 'a shock; a surprise win',
        example: 'The loss was an upset.',
        phrases: ['an/the/stomach/tummy/big/small/little/great _ .', 'stomach/tummy _', 'an _ in/for/to'],
      },
    ],
  },
] as const satisfies readonly Heteronym[]
