// Counts the books of a shelf for one reader or many: each book once, and each word judged once a reader.

import type { Reader } from '../readers/index.ts'
import type { Resources } from '../resources/types.ts'
import type { ReaderExtra } from '../sequence/reader.ts'
import {
  type CountedBook,
  createReaderJudge,
  createVocabulary,
  type ReaderJudge,
  toCountedBook,
} from '../shelf/index.ts'
import type { StoryCount } from '../usage/count.ts'
import { countText } from '../usage/count-text.ts'
import type { NamedText } from './texts.ts'

export interface BookCounter {
  /** In the order of the readers. */
  readonly judges: readonly ReaderJudge[]
  count(
    text: Pick<NamedText, 'story' | 'names' | 'sightWords'>,
  ): Promise<{ readonly count: StoryCount; readonly book: CountedBook }>
}

export function createBookCounter(
  readers: readonly Pick<Reader, 'sequence' | 'knowledge'>[],
  resources: Resources,
): BookCounter {
  const vocabulary = createVocabulary()
  const judges = readers.map(({ sequence, knowledge }) =>
    createReaderJudge(resources.phonicsFor(sequence.accent), knowledge, vocabulary),
  )
  const isMixed = (text: string): boolean => judges.some((judge) => judge.isMixed(text))
  const toMore = createExtras()
  return {
    judges,
    async count({ story, names, sightWords }) {
      const count = await countText(story, names, isMixed, resources)
      return { count, book: toCountedBook(count, vocabulary, { names, more: toMore(sightWords) }) }
    },
  }
}

/** One object for each list of sight words, so that what is known with it is summed once. */
function createExtras(): (sightWords: readonly string[]) => ReaderExtra {
  const known = new Map<string, ReaderExtra>()
  return (sightWords) => {
    const name = sightWords.join('\n')
    const extra = known.get(name) ?? { sightWords }
    known.set(name, extra)
    return extra
  }
}
