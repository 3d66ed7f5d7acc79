// The cheap look and the whole reading agree on what the dictionary has.

import { expect, it } from 'vitest'
import { testLexicon, testPhonics } from '../lexicon-for-tests.ts'

const phonics = () => testPhonics('general-american')

/** Every 301st word of the dictionary; each with letters swapped, doubled and dropped, as slips have them. */
const draw = () =>
  testLexicon()
    .words()
    .filter((_, at) => at % 301 === 0)
    .flatMap((word) => [
      word,
      `${word}'s`,
      `${word}s'`,
      `${word}ing`,
      `${word}${word.slice(-1)}ed`,
      `${word.slice(1, 2)}${word.slice(0, 1)}${word.slice(2)}`,
      word.slice(1),
      `${word}box`,
    ])
    .filter((word) => /^[a-z][a-z']*$/.test(word))

it('isListed says what read says', () => {
  const words = draw()
  expect(words.length).toBeGreaterThan(2000)
  // First the look, so that it cannot stand on what reading has left in the cache.
  const looked = words.map((word) => phonics().isListed(word))
  const wrong = words.filter((word, at) => looked[at] !== (phonics().read(word).source === 'dictionary'))
  expect(wrong).toEqual([])
})
