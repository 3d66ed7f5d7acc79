// A word with an ending is readable no sooner than the word that it is made of: nobody reads `scored` before `score`. The pairs are those
// of the lexicon among the words of children's books, in use by the package's own order; that the order must hold is common practice, no source.

import { describe, expect, it } from 'vitest'
import { toStepIndex } from '../../src/sequence/knowledge.ts'
import type { Sequence } from '../../src/sequence/types.ts'
import { findReadableAt } from '../../src/verdict/index.ts'
import { testLexicon, testPhonics, testSpelling } from '../lexicon-for-tests.ts'
import { loadBuiltIn } from '../sequence/engine.ts'

const MUCH_USED = 5000

/** `scored` and `score`; of a look-alike its sentence has to tell, and what has two endings may have none between. */
const PAIRS = testLexicon()
  .words()
  .flatMap((word): readonly (readonly [form: string, base: string])[] => {
    const entry = testLexicon().find(word)
    if (entry === undefined || !('ending' in entry) || word.includes("'")) return []
    const stem = testSpelling().spell(word).cuttings[0]?.stem ?? ''
    const isUsed = testPhonics('general-american').slips.rank(stem) < MUCH_USED
    const isAlike = [word, stem].some((one) => testLexicon().heteronyms.find(one) !== undefined)
    return isUsed && !isAlike ? [[word, stem]] : []
  })

/** England's curriculum has `cried`, `dried` and `tried` in year 1 with the `ie` of `pie`, and the y of `cry` in year 2. */
const isOfYearOne = (name: string, word: string): boolean => name === 'england' && /[^aeiou]ied$/.test(word)

/** Not mended, or right as they are. */
const OTHERS = new Set([
  // Read with the oe of toe.
  ...['cargoes', 'dominoes', 'tomatoes'],
  // England's list of exception words has the plural.
  'parents',
  // Cut with the i_e of machine where it stands alone, and the ou of soup and an e.
  ...['promises', 'routes'],
])

const toPlace = (word: string, sequence: Sequence): number => {
  const step = findReadableAt(testPhonics(sequence.accent).read(word), sequence)
  return step === undefined ? Infinity : toStepIndex(sequence, step)
}

describe.each(['series', 'england', 'common-core'] as const)('%s', (name) => {
  it.each(['general-american', 'southern-british'] as const)('reads the word before its form, in %s', (accent) => {
    const { sequence } = loadBuiltIn(name, accent)
    if (sequence === undefined) throw new Error(name)
    expect(PAIRS.length).toBeGreaterThan(3000)
    const early = PAIRS.filter(([form, base]) => toPlace(form, sequence) < toPlace(base, sequence))
    expect(
      early.filter(([form]) => !OTHERS.has(form) && !isOfYearOne(name, form)).map((pair) => pair.join(' before ')),
    ).toEqual([])
  })
})
