import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { CorrespondenceKey } from '../../src/phonics/types.ts'
import { knowledgeAt, withReader } from '../../src/sequence/index.ts'
import {
  createReaderJudge,
  createVocabulary,
  findLessons,
  type MissingWord,
  matchBook,
  toCountedBook,
} from '../../src/shelf/index.ts'
import { judge } from '../../src/verdict/index.ts'
import { phonics, series, toContext } from './engine.ts'

const AI: CorrespondenceKey = 'ai=eɪ'
const OA: CorrespondenceKey = 'oa=oʊ'

describe('the fewest lessons', () => {
  const missing: readonly MissingWord[] = [
    { word: 'said', times: 3, needs: undefined },
    { word: 'rain', times: 2, needs: [AI] },
    { word: 'tail', times: 2, needs: [AI] },
    { word: 'boat', times: 1, needs: [OA] },
  ]

  it.each([
    [0, []],
    [1, [AI]],
    [3, [AI]],
    [4, [AI]],
    [5, [AI, 'said']],
    [8, [AI, 'boat', 'said']],
  ])('to win %i running words', (wanted, lessons) => {
    const found = findLessons(missing, wanted, 3)
    expect(found?.map((one) => (one.kind === 'word' ? one.word : one.key)).sort()).toEqual([...lessons].sort())
  })

  it('none where more are needed than may be taught', () => {
    expect(findLessons(missing, 8, 2)).toBeUndefined()
    expect(findLessons(missing, 9, 8)).toBeUndefined()
  })

  it('names the words that a correspondence helps to read', () => {
    expect(findLessons(missing, 4, 3)).toEqual([{ kind: 'correspondence', key: AI, words: ['rain', 'tail'] }])
  })
})

const KEYS = ['ai=eɪ', 'oa=oʊ', 'igh=aɪ', 'ee=iː'] as const satisfies readonly CorrespondenceKey[]

it('is never beaten by trying everything', () => {
  const word = fc.record({
    times: fc.integer({ min: 1, max: 4 }),
    needs: fc.option(fc.subarray([...KEYS], { minLength: 1, maxLength: 3 }), { nil: undefined }),
  })
  fc.assert(
    fc.property(fc.array(word, { maxLength: 5 }), fc.integer({ min: 1, max: 10 }), (drawn, wanted) => {
      const missing = drawn.map((one, at) => ({ ...one, word: `word${at}` }))
      const found = findLessons(missing, wanted, 4)
      expect(found?.length).toBe(tryAll(missing, wanted, 4))
    }),
  )
})

/** The size of the smallest set that wins enough, by trying every set of words and correspondences. */
function tryAll(missing: readonly MissingWord[], wanted: number, most: number): number | undefined {
  const items: readonly string[] = [...KEYS, ...missing.map(({ word }) => word)]
  let best: number | undefined
  for (let set = 0; set < 1 << items.length; set++) {
    const taught = new Set(items.filter((_, at) => (set & (1 << at)) !== 0))
    if (taught.size > most || (best !== undefined && taught.size >= best)) continue
    const isRead = ({ word, needs }: MissingWord) =>
      taught.has(word) || (needs?.every((key) => taught.has(key)) ?? false)
    const won = missing.filter(isRead).reduce((sum, { times }) => sum + times, 0)
    if (won >= wanted) best = taught.size
  }
  return best
}

it.each([
  ['pink-4', 8],
  ['blue-4', 8],
  ['blue-6', 8],
  ['green-1', 8],
])('what is to be taught at %s makes the book ready', (step, mostLessons) => {
  const text =
    'Rain fell on the lane. Tam made a boat. It had a green sail. Zub jumped in. They said: "Again!" A duck swam to the boat.'
  const knowledge = knowledgeAt(series, step)
  const vocabulary = createVocabulary()
  const count = toContext(text, step).count()
  const book = toCountedBook(count, vocabulary, { names: [] })
  const match = matchBook(book, createReaderJudge(phonics, knowledge, vocabulary), series, { share: 0.8, mostLessons })
  expect(match.kind).toBe('nearly')
  expect(match.share).toBeLessThan(0.8)
  const taught = withReader(knowledge, {
    sightWords: match.lessons.flatMap((one) => (one.kind === 'word' ? [one.word] : [])),
    correspondences: match.lessons.flatMap((one) => (one.kind === 'correspondence' ? [one.key] : [])),
  })
  const read = count.uses.filter(({ text: word }) => judge(phonics.read(word), taught).readable)
  const share = read.reduce((sum, { times }) => sum + times, 0) / count.words
  expect(share).toBeGreaterThanOrEqual(0.8)
})
