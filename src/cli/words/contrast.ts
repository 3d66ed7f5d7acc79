// Proposes pairs of words that differ in one sound only.

import {
  type FoundWord,
  findSpelling,
  findWords,
  type ListUnit,
  type Pool,
  proposePairs,
  type WordQuery,
} from '../../finder/index.ts'
import type { Phonics } from '../../phonics/types.ts'
import type { WordList } from '../../report/word-list.ts'
import type { Sequence } from '../../sequence/index.ts'

type FoundPairs = Pick<WordList, 'words' | 'pairs' | 'instead'>
type UnitTest = (unit: ListUnit) => boolean

interface Tools {
  readonly sequence: Sequence
  readonly phonics: Phonics
}

/** How many pairs there are where nobody says. */
const SET = 6

/** Pairs of words that differ in one sound, for two spellings. */
export function makeContrast(
  { sounds }: { readonly sounds?: string },
  query: WordQuery,
  pool: Pool,
  { sequence, phonics }: Tools,
): FoundPairs | { readonly problem: string } {
  const [one, other, ...more] = (sounds ?? '').split(',').map((text) => text.trim())
  if (!one || !other || more.length > 0) return { problem: '--set contrast needs two spellings, such as --sounds a,u.' }
  const tests: UnitTest[] = []
  for (const text of [one, other]) {
    const found = findSpelling(text, sequence, phonics)
    if ('problem' in found) return found
    if ('letters' in found.spelling || found.spelling.length !== 1)
      return {
        problem: `\`${text}\` is not one spelling that is taught. Take one such as a, sh or \`ea as in bread\`.`,
      }
    const [test] = found.spelling
    if (test) tests.push(test)
  }
  const [isOne, isOther] = tests
  if (!isOne || !isOther) return { pairs: [], words: [], instead: null }
  const all = findWords(pool, { ...query, syllables: query.syllables ?? { from: 1, to: 1 }, count: Infinity })
  const words = all.words.filter(({ isSight }) => !isSight)
  const pairs = proposePairs(words, isOne, isOther, query.count ?? SET)
  const isSame = pairs.length === 0 && areSaidAlike(words, isOne, isOther)
  const instead = `\`${one}\` and \`${other}\` say the same sound, so no two words differ in it.`
  return { pairs, words: pairs.flat(), instead: isSame ? instead : null }
}

/** Whether both spellings say one sound, and the same one, in all words that there are. */
function areSaidAlike(words: readonly FoundWord[], isOne: UnitTest, isOther: UnitTest): boolean {
  const units = words.flatMap(({ pronunciation }) => pronunciation.units)
  const [own, others] = [isOne, isOther].map((test) => new Set(units.filter(test).map(({ sound }) => sound)))
  return own?.size === 1 && others?.size === 1 && [...own][0] === [...others][0]
}
