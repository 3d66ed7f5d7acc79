import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { toCaseOf } from '../../src/words/letter-case.ts'
import { createSuggester, type Wanted } from '../../src/words/suggest.ts'
import { data, lexicon, readable, words } from './small.ts'

const fitness = data.fitness()
const suggester = createSuggester({
  data,
  lexicon,
  fitness,
  isReadable: (word) => readable.has(word),
  candidates: [...readable],
})
const suggest = (wanted: Wanted): string[] => suggester.suggest(wanted).map(({ word }) => word)

// What fits is the project's own judgement; each expected word is of the same part of speech and inflection, and near
// in WordNet 3.1.
describe('createSuggester', () => {
  it('keeps part of speech and inflection', () => {
    expect(suggest({ word: 'boats', part: 'noun', inflection: 'plural' })).toContain('jets')
    expect(suggest({ word: 'children', part: 'noun', inflection: 'plural' })).toContain('kids')
    expect(suggest({ word: 'walked', part: 'verb', inflection: 'past' })).toContain('ran')
    expect(suggest({ word: 'shout', part: 'verb', inflection: 'none' })[0]).toBe('yell')
  })

  it('takes the main use where the sentence does not tell', () => {
    expect(suggest({ word: 'horses' })).toEqual(expect.arrayContaining(['dogs', 'cats', 'pigs']))
  })

  it('puts what is near in meaning before what is near in sound', () => {
    const found = suggester.suggest({ word: 'road', part: 'noun' })
    const kinds = found.map(({ near }) => near)
    expect(kinds).toEqual(kinds.toSorted())
    expect(found.find(({ word }) => word === 'rod')).toEqual({ word: 'rod', near: 'sound' })
  })

  it('leaves out what is mainly another part of speech: cotton is no loving', () => {
    expect(suggest({ word: 'boats', part: 'noun', inflection: 'plural' })).not.toContain('tugs')
  })

  it('keeps the case of the original', () => {
    expect(suggest({ word: 'Friend' })[0]).toBe('Pal')
    expect(suggest({ word: 'LARGE' })[0]).toBe('BIG')
    expect([toCaseOf('A', 'the'), toCaseOf('iPad', 'pad'), toCaseOf('Éclair', 'bun')]).toEqual(['The', 'pad', 'Bun'])
  })

  it('offers little words for little words only', () => {
    expect(suggest({ word: 'through' })).toEqual(['in'])
    expect(suggest({ word: 'under', part: 'little' })).toEqual(['in'])
  })

  it('minds the article before the word', () => {
    expect(suggest({ word: 'donkey', before: 'a' })).not.toContain('ox')
    expect(suggest({ word: 'animal', before: 'an' }).every((word) => /^[aeiou]/.test(word))).toBe(true)
  })

  it('offers nothing for a name or a word that is not known', () => {
    expect(suggest({ word: 'Zub' })).toEqual([])
    expect(suggest({ word: '' })).toEqual([])
  })

  it('offers only fit and readable words, at most five, never the word itself, whatever is asked', () => {
    const part = fc.constantFrom('noun', 'verb', 'adjective', 'adverb', 'little', undefined)
    const inflection = fc.constantFrom('none', 'plural', 'third', 'past', 'ing', 'comparative', undefined)
    fc.assert(
      fc.property(fc.constantFrom(...words), part, inflection, (word, as, form) => {
        const found = suggest({ word, part: as, inflection: form })
        expect(found.length).toBeLessThanOrEqual(5)
        expect(new Set(found).size).toBe(found.length)
        expect(found.every((one) => readable.has(one) && fitness.isFit(one) && one !== word)).toBe(true)
      }),
    )
  })

  it('lets a project shut a word out', () => {
    const own = createSuggester({
      data,
      lexicon,
      fitness: data.fitness({ add: ['pal'] }),
      isReadable: (word) => readable.has(word),
      candidates: () => [...readable],
    })
    expect(own.suggest({ word: 'friend' }).map(({ word }) => word)).not.toContain('pal')
  })
})
