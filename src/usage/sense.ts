// What the sentence adds to a word's letters: its spoken form, and whether it stands in a name of several words.

import { findLookAlike } from '../phonics/heteronyms/part.ts'
import type { Tagger } from '../phonics/heteronyms/tagger.ts'
import type { Heteronyms } from '../phonics/heteronyms/types.ts'
import type { Sentence, Story, Word } from '../story/types.ts'
import { ABBREVIATED, markNames } from '../verdict/index.ts'
import { isAbbreviated } from './abbreviated.ts'
import type { FindSense, Sense } from './count.ts'
import { isLongName } from './long-names.ts'
import { toFormTest } from './one-form.ts'
import { createFormFinder } from './spoken-form.ts'

const PLAIN: Sense = { spoken: undefined, isInName: false }

/** @param names the names that the story allows, as written */
export function createSenseFinder(
  story: Story,
  names: readonly string[],
  heteronyms: Heteronyms,
  tagger?: Tagger,
): FindSense {
  const findForm = createFormFinder(story, heteronyms, tagger)
  const long = names.filter(isLongName)
  const marked = new WeakMap<Sentence, ReadonlySet<Word>>()
  const isInName = (word: Word, sentence: Sentence): boolean => {
    if (long.length === 0) return false
    let inName = marked.get(sentence)
    if (inName === undefined) {
      const marks = markNames(
        sentence.words.map(({ text }) => text),
        long,
      )
      inName = new Set(sentence.words.filter((_, index) => marks[index]))
      marked.set(sentence, inName)
    }
    return inName.has(word)
  }
  const hasOneForm = toFormTest(heteronyms)
  const findSpoken = (word: Word, sentence: Sentence): string | undefined => {
    if (isAbbreviated(word, sentence)) return ABBREVIATED
    return findLookAlike(heteronyms, word.text) === undefined ? undefined : findForm(word, sentence)
  }
  const findSense = (word: Word, sentence: Sentence): Sense => {
    const spoken = hasOneForm(word.text) ? undefined : findSpoken(word, sentence)
    const inName = isInName(word, sentence)
    return spoken === undefined && !inName ? PLAIN : { spoken, isInName: inName }
  }
  return Object.assign(findSense, {
    isAlwaysPlain: (text: string) => long.length === 0 && hasOneForm(text),
  })
}
