import { describe, expect, it } from 'vitest'
import { findUse, toTaggedUse, type WordFacts } from '../../src/words/index.ts'
import { testWords } from '../finder/sources.ts'
import { testLexicon } from '../lexicon-for-tests.ts'

function factsOf(word: string): WordFacts {
  const place = testLexicon().indexOf(word)
  if (place < 0) throw new Error(`${word} is not in the lexicon`)
  return testWords().facts.factsAt(place)
}

describe('how a sentence uses a word', () => {
  it.each([
    ['the', 'play', 'noun', 'none'],
    ['can', 'play', 'verb', 'none'],
    ['They', 'sleep', 'verb', 'none'],
    ['big', 'play', 'noun', 'none'],
    ['his', 'walks', 'noun', 'plural'],
    ['she', 'walks', 'verb', 'third'],
  ])('%s %s is a %s, %s', (before, word, part, inflection) => {
    expect(findUse(word, factsOf(word), { word: before, facts: factsOf(before.toLowerCase()) })).toEqual({
      part,
      inflection,
    })
  })

  it('knows a word of one kind by itself', () => {
    expect(findUse('rabbits', factsOf('rabbits'), undefined)).toEqual({ part: 'noun', inflection: 'plural' })
  })

  it('leaves the rest to a tagger', () => {
    expect(findUse('play', factsOf('play'), undefined)).toBeUndefined()
    expect(findUse('light', factsOf('light'), { word: 'the', facts: factsOf('the') })).toBeUndefined()
  })

  it('takes what a tagger says where the word can be that', () => {
    expect(toTaggedUse('play', new Set(['Noun', 'Singular']), factsOf('play'))).toEqual({
      part: 'noun',
      inflection: 'none',
    })
    expect(toTaggedUse('rabbit', new Set(['Adverb']), factsOf('rabbit'))).toEqual({ part: 'noun', inflection: 'none' })
  })
})
