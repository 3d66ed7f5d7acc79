import { describe, expect, it } from 'vitest'
import { loadWordnet } from '../../scripts/build/wordnet.ts'

const wordnet = loadWordnet()

// Expected values: the files of WordNet 3.1 itself, read by eye; the derivations are common dictionary knowledge, no
// source.
describe('loadWordnet', () => {
  it('tells the parts of speech of a base form', () => {
    expect(wordnet.isNoun('boat')).toBe(true)
    expect(wordnet.isVerb('boat')).toBe(true)
    expect(wordnet.isAdjective('boat')).toBe(false)
    expect(wordnet.isAdverb('sadly')).toBe(true)
    expect(wordnet.isLemma('boats')).toBe(false)
    expect(wordnet.isLemma('zub')).toBe(false)
    expect(wordnet.isNoun('Santa Claus')).toBe(true)
  })

  it('counts senses and tags', () => {
    const run = wordnet.posOf('run')
    expect(run.verb).toEqual({ senses: 41, tags: expect.any(Number) })
    expect(run.noun.senses).toBe(16)
    expect(run.verb.tags).toBeGreaterThan(run.noun.tags)
    expect(wordnet.posOf('zub').noun).toEqual({ senses: 0, tags: 0 })
  })

  it('tells real endings from look-alikes', () => {
    for (const [word, base] of [
      ['runner', 'run'],
      ['farmer', 'farm'],
      ['sadly', 'sad'],
      ['teacher', 'teach'],
    ] as const) {
      expect(wordnet.derives(word, base), word).toBe(true)
      expect(wordnet.derives(base, word), word).toBe(true)
    }
    for (const [word, base] of [
      ['summer', 'sum'],
      ['corner', 'corn'],
      ['ladder', 'lad'],
      ['butter', 'but'],
    ] as const) {
      expect(wordnet.derives(word, base), word).toBe(false)
    }
  })

  it('gives the lexicographer file of the first noun sense', () => {
    expect(wordnet.lexFile('boat')).toBe('artifact')
    expect(wordnet.lexFile('duck')).toBe('animal')
    expect(wordnet.lexFile('idea')).toBe('cognition')
    expect(wordnet.lexFile('gladly')).toBeUndefined()
  })

  it('tells names from words', () => {
    expect(wordnet.isName('london')).toBe(true)
    expect(wordnet.isName('pond')).toBe(false)
    expect(wordnet.isName('zub')).toBe(false)
  })

  it('reads a synset at its offset', () => {
    const [sense] = wordnet.senses('pond', 'noun')
    const pond = wordnet.synset('noun', sense?.offset ?? 0)
    expect(pond.words).toContain('pond')
    const broader = pond.pointers.filter((pointer) => pointer.symbol === '@')
    expect(broader.map((pointer) => wordnet.synset(pointer.pos, pointer.offset).words[0])).toEqual(['lake'])
  })
})
