// The next lesson for a reader, on gaps made by hand; the sums can be checked with a pencil.

import * as fc from 'fast-check'
import { expect, it } from 'vitest'
import type { BookGap } from '../../src/shelf/match.ts'
import { findNext } from '../../src/shelf/next.ts'

const gap = (words: number, missing: BookGap['missing']): BookGap => ({
  words,
  readable: words - missing.reduce((sum, { times }) => sum + times, 0),
  missing,
})

it('takes th, not that by heart, where one lesson opens two books', () => {
  const gaps = [
    gap(10, [
      { word: 'that', times: 1, needs: ['th=ð'] },
      { word: 'this', times: 1, needs: ['th=ð'] },
    ]),
    gap(10, [
      { word: 'then', times: 2, needs: ['th=ð'] },
      { word: 'rain', times: 1, needs: ['ai=eɪ'] },
    ]),
  ]
  const [first, second] = findNext(gaps, 0.9)
  expect(first).toEqual({
    kind: 'correspondence',
    what: 'th=ð',
    opens: [0, 1],
    wins: 4,
    words: ['then', 'that', 'this'],
  })
  expect(second).toMatchObject({ what: 'ai=eɪ', opens: [], wins: 1 })
})

it('proposes a word by heart only where letters do not help, and leaves ready books alone', () => {
  const gaps = [
    gap(10, [{ word: 'said', times: 2, needs: undefined }]),
    gap(100, [{ word: 'rain', times: 1, needs: ['ai=eɪ'] }]),
  ]
  expect(findNext(gaps, 0.9)).toEqual([{ kind: 'word', what: 'said', opens: [0], wins: 2, words: ['said'] }])
})

it('a word that only lacks a longer step is none to learn by heart', () => {
  expect(findNext([gap(4, [{ word: 'ship', times: 4, needs: undefined, comesWithSteps: true }])], 0.9)).toEqual([])
})

it('a word that lacks two correspondences is won by no single lesson', () => {
  expect(findNext([gap(4, [{ word: 'shain', times: 4, needs: ['sh=ʃ', 'ai=eɪ'] }])], 0.9)).toEqual([])
})

it('says which books open just as adding up says', () => {
  const missing = fc.array(
    fc.record({
      word: fc.constantFrom('a', 'b', 'c', 'd'),
      times: fc.integer({ min: 1, max: 5 }),
      needs: fc.constantFrom(undefined, ['x=1'] as const, ['y=1'] as const, ['x=1', 'y=1'] as const),
    }),
    { maxLength: 6 },
  )
  fc.assert(
    fc.property(fc.array(missing, { maxLength: 4 }), fc.double({ min: 0, max: 1, noNaN: true }), (all, share) => {
      const gaps = all.map((one) => gap(40, one))
      for (const { kind, what, opens } of findNext(gaps, share)) {
        const wins = (one: BookGap) =>
          one.missing
            .filter(({ word, needs }) =>
              kind === 'word' ? needs === undefined && word === what : needs?.join() === what,
            )
            .reduce((sum, { times }) => sum + times, 0)
        const wanted = gaps.flatMap((one, at) =>
          one.readable / one.words < share && wins(one) > 0 && (one.readable + wins(one)) / one.words >= share
            ? [at]
            : [],
        )
        expect(opens).toEqual(wanted)
      }
    }),
  )
})
