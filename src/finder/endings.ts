// Which endings can be put on words at a step, each shown on words that can be read.

import type { Ending } from '../sequence/types.ts'
import { type Inflection, toForm } from '../words/index.ts'
import type { Pool } from './pool.ts'

export interface ShownEnding {
  readonly ending: Ending
  /** One word as it is, and one for each change of the word before it that can be read: jumped, hopped, baked, cried. */
  readonly examples: readonly string[]
}

/** Of each ending: words to try, the plain one first, then those that double, drop the e, and change y to i. */
const TRIES: readonly (readonly [ending: Ending, inflection: Inflection, tries: readonly (readonly string[])[]])[] = [
  ['-s', 'plural', [['cat', 'hat', 'pin', 'map', 'cap', 'dog']]],
  [
    '-es',
    'plural',
    [
      ['dish', 'box', 'bus', 'wish', 'fox'],
      ['baby', 'fly', 'puppy'],
    ],
  ],
  [
    '-ed',
    'past',
    [
      ['jump', 'help', 'pick', 'land', 'ask', 'rest'],
      ['hop', 'pat', 'nod', 'stop'],
      ['bake', 'like', 'hope'],
      ['cry', 'try', 'hurry'],
    ],
  ],
  [
    '-ing',
    'ing',
    [
      ['jump', 'help', 'pick', 'land', 'ask', 'rest'],
      ['run', 'hop', 'sit'],
      ['bake', 'ride', 'hope'],
    ],
  ],
  [
    '-er',
    'comparative',
    [
      ['fast', 'long', 'soft', 'quick'],
      ['big', 'hot', 'wet'],
      ['nice', 'late', 'safe'],
      ['happy', 'sunny'],
    ],
  ],
  [
    '-est',
    'superlative',
    [
      ['fast', 'long', 'soft', 'quick'],
      ['big', 'hot', 'wet'],
      ['nice', 'late', 'safe'],
      ['happy', 'sunny'],
    ],
  ],
]

export function findEndings(pool: Pool): readonly ShownEnding[] {
  const { endings, soundedEndings } = pool.knowledge
  const isTaught = (ending: Ending): boolean => endings.has(ending) || soundedEndings.has(ending)
  const isReadable = (word: string): boolean => {
    const at = pool.find(word)
    return at >= 0 && pool.isReadable(at) && pool.isFit(at)
  }
  const shown = TRIES.filter(([ending]) => isTaught(ending)).map(([ending, inflection, tries]) => ({
    ending,
    examples: tries.flatMap((bases) => bases.map((base) => toForm(base, inflection)).find(isReadable) ?? []),
  }))
  const owner = ['dog', 'cat', 'pig', 'man', 'hen'].find(isReadable)
  const hasOwner = owner !== undefined && isTaught("'s")
  return [
    ...shown.filter(({ examples }) => examples.length > 0),
    ...(hasOwner ? [{ ending: "'s" as const, examples: [`${owner}'s`] }] : []),
  ]
}
