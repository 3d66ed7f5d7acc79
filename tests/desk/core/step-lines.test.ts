// What a step says is said in a teacher's words, and the example of each build is built so.

import { expect, it } from 'vitest'
import { SHAPE_WORDS, toStepLines } from '../../../src/desk/core/step-lines.ts'
import { listBuiltIns, loadBuiltIn } from '../../../src/packaged/data.ts'
import { LIMITS } from '../../../src/sequence/vocabulary.ts'
import { toShapes } from '../../../src/verdict/shape.ts'
import { testPhonics } from '../../lexicon-for-tests.ts'

const steps = listBuiltIns().flatMap((name) => loadBuiltIn(name)?.steps ?? [])

it.each(Object.entries(SHAPE_WORDS))('%s is the build of %s', (shape, word) => {
  const { pronunciations } = testPhonics('general-american').read(word)
  const built = pronunciations.map((one) =>
    toShapes(word, one, () => false)
      .map((syllable) => syllable.shape)
      .join(),
  )
  expect(built).toContain(shape)
})

it('each shape of the built-in sequences but the rarest has an example', () => {
  const shapes = new Set(steps.flatMap(({ adds }) => (adds.shapes === 'any' ? [] : adds.shapes)))
  expect([...shapes].filter((shape) => SHAPE_WORDS[shape] === undefined)).toEqual(['VCCC'])
})

it('no line has a key of the file, a bare list of marks, or a yes and no', () => {
  const lines = steps.flatMap(toStepLines)
  expect(lines.length).toBeGreaterThan(30)
  expect(
    lines.filter((line) =>
      /^(?:shapes|numerals|limits|contractions|ending changes|changes before an ending):|: (?:any|yes|no|none)$|: \W+$/i.test(
        line,
      ),
    ),
  ).toEqual([])
})

it('says each thing that a step can say', () => {
  const adds = {
    ...{ correspondences: [], sightWords: [], endings: [] },
    ...{ shapes: ['VC', 'CVC'], endingChanges: ['double' as const], contractions: 'any' as const, marks: ['.', ','] },
    ...{ capitals: 'first' as const, numerals: false },
    limits: { letters: 3, [LIMITS['words on a page']]: 'any' as const },
  }
  expect(toStepLines({ adds })).toEqual([
    'Words built like `at` (VC) and `cat` (CVC): C is a consonant sound, V a vowel sound',
    'Words that an ending changes: `running` (a letter is doubled)',
    'All short forms, such as can’t and it’s',
    'Marks: full stop and comma',
    'Capital letters at the beginning of sentences and names',
    'No numbers in figures yet',
    'At most 3 letters in a word',
    'Now any number of words on a page',
  ])
})
