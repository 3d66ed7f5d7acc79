// A path of rows laid over a word: where each unit stands, its stress, its closing e. Worked out by hand on a small table; that teachers draw `cage` with a_e
// is common practice, no source.

import { describe, expect, it } from 'vitest'
import { CLOSE } from '../../src/phonics/lattice.ts'
import { toRawPronunciation } from '../../src/phonics/raw.ts'
import { readRows } from '../../src/phonics/rows.ts'

const rows = readRows(
  [
    'b\tB',
    'b\t-',
    'k\tK',
    'n\tN',
    'a\tEY',
    'a\tAE',
    'a_e\tEY',
    'e\tIY',
    'i\tAY',
    'o\tOW',
    'u\tUW',
    'u\tY UW',
    'y\tAY',
    'ire\tAY ER',
    'ge\tJH',
    'dge\tJH',
    'ai\tEY',
    'u\tAH',
  ].join('\n'),
)

/** `k a_e=EY k +`: rows by letters, with their sounds where letters alone do not tell; + is the closing e. */
const toPath = (path: string): readonly number[] =>
  path.split(' ').map((name) => {
    if (name === '+') return CLOSE
    const [letters, sounds] = name.split('=')
    const found = rows.find(
      (row) => row.letters === letters && (sounds === undefined || row.phones.join('.') === sounds),
    )
    return found?.id ?? NaN
  })

const lay = (path: string, ...stress: (0 | 1 | 2)[]) => toRawPronunciation(toPath(path), rows, stress).units

const show = (path: string, ...stress: (0 | 1 | 2)[]): string =>
  lay(path, ...stress)
    .map(({ letters, spans, stress: mark }) => `${letters}${mark ?? ''}@${spans.map((span) => span.join('-')).join()}`)
    .join(' ')

describe('units', () => {
  it.each<[string, string, (0 | 1 | 2)[], string]>([
    ['ban', 'b a=AE n', [1], 'b@0-1 a1@1-2 n@2-3'],
    ['bake', 'b a_e k +', [1], 'b@0-1 a_e1@1-2,3-4 k@2-3'],
    ['ake', 'a_e k +', [2], 'a_e2@0-1,2-3 k@1-2'],
    // Each closing e belongs to the last split vowel before it.
    ['akebake', 'a_e k + b a_e k +', [1, 2], 'a_e1@0-1,2-3 k@1-2 b@3-4 a_e2@4-5,6-7 k@5-6'],
    ['bakeb', 'b a_e k + b', [1], 'b@0-1 a_e1@1-2,3-4 k@2-3 b@4-5'],
    // A unit of two vowel sounds has the stress of the stronger, and the next vowel has the third mark.
    ['ireba', 'ire b a=AE', [1, 0, 2], 'ire1@0-3 b@3-4 a2@4-5'],
    ['ireba', 'ire b a=AE', [0, 1, 0], 'ire1@0-3 b@3-4 a0@4-5'],
    ['ireba', 'ire b a=AE', [2, 0, 1], 'ire2@0-3 b@3-4 a1@4-5'],
    ['ireba', 'ire b a=AE', [0, 2, 1], 'ire2@0-3 b@3-4 a1@4-5'],
    ['ireba', 'ire b a=AE', [0, 0, 1], 'ire0@0-3 b@3-4 a1@4-5'],
    ['ireba', 'ire b a=AE', [2, 1, 0], 'ire1@0-3 b@3-4 a0@4-5'],
  ])('of %s by %s with stress %j: %s', (_, path, stress, expected) => {
    expect(show(path, ...stress)).toBe(expected)
  })

  it('are silent where they say nothing; only those with a vowel have a stress', () => {
    expect(lay('n a=AE b=', 1)).toEqual([
      { letters: 'n', spans: [[0, 1]], phones: ['N'], kind: 'correspondence' },
      { letters: 'a', spans: [[1, 2]], phones: ['AE'], kind: 'correspondence', stress: 1 },
      { letters: 'b', spans: [[2, 3]], phones: [], kind: 'silent' },
    ])
  })
})

describe('a soft g with its e', () => {
  it.each([
    ['kage', 'k a=EY ge', 'k a_e ge'],
    ['bege', 'b e ge', 'b e_e ge'],
    ['bige', 'b i ge', 'b i_e ge'],
    ['boge', 'b o ge', 'b o_e ge'],
    ['buge', 'b u=UW ge', 'b u_e ge'],
    ['buge', 'b u=Y.UW ge', 'b u_e ge'],
    ['byge', 'b y ge', 'b y_e ge'],
  ])('makes the vowel before it long as well: %s by %s is %s', (_, path, expected) => {
    const units = lay(path, 1)
    expect(units.map(({ letters }) => letters).join(' ')).toBe(expected)
    // The e stays with the g.
    expect(units.slice(-2).map(({ spans }) => spans)).toEqual([[[1, 2]], [[2, 4]]])
  })

  it.each([
    ['kage', 'k a=AE ge', 'a short vowel'],
    ['buge', 'b u=AH ge', 'a short vowel'],
    ['kange', 'k a=EY n ge', 'a consonant between'],
    ['kaige', 'k ai ge', 'two letters'],
    ['kadge', 'k a=EY dge', 'no ge'],
    ['geka', 'ge k a=EY', 'not at the end'],
    ['kagek', 'k a=EY ge k', 'not at the end'],
    ['ge', 'ge', 'alone'],
    ['ban', 'b a=EY n', 'none'],
  ])('does not: %s by %s, %s', (_, path) => {
    expect(
      lay(path, 1)
        .map(({ letters }) => letters)
        .join(' '),
    ).toBe(path.replaceAll(/=\S*/g, ''))
  })
})
