// The model that weighs what stands round a look-alike: its signs, its bytes, how it learns, and when it is heard.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { cutWords } from '../../scripts/build/heteronyms/examples.ts'
import { heteronyms, rules, teachWeights } from '../../scripts/build/heteronyms/table.ts'
import { DEFAULTS, type Example, teach } from '../../scripts/build/heteronyms/teach.ts'
import { hashText } from '../../src/hash.ts'
import { fits } from '../../src/phonics/heteronyms/learned/fits.ts'
import { toSigns } from '../../src/phonics/heteronyms/learned/signs.ts'
import { isWeighed, openWeights, toHashes, toShares } from '../../src/phonics/heteronyms/learned/weights.ts'
import { toPlace } from '../../src/phonics/heteronyms/place.ts'
import { settle } from '../../src/phonics/heteronyms/settle.ts'
import type { Heteronym, Likely } from '../../src/phonics/heteronyms/types.ts'

/** A sentence with the word in stars. */
function placeOf(text: string) {
  const index = cutWords(text.slice(0, text.indexOf('*'))).length
  return toPlace(cutWords(text.replaceAll('*', '')), index)
}

const rowOf = (word: string): Heteronym => rules.find(word) as Heteronym

describe('the signs of a place', () => {
  it('are its neighbours: small words as they are, others by their shape, and where its clause begins and ends', () => {
    const { shared, own } = toSigns(placeOf('Then Ravi quickly *objects*, and the band stops.'))
    expect(shared).toContain('b=-ly')
    expect(shared).toContain('bb=Name -ly')
    expect(shared).toContain('a=|,')
    expect(shared).toContain('end=s -ly')
    expect(shared).toContain('wb=quickly')
    expect(own).toContain('w=band')
    expect(own).toContain('n=the')
    expect(own).not.toContain('w=objects')
  })

  it('see a mark before the word as the edge of its clause', () => {
    expect(toSigns(placeOf('Stop, *record* it!')).shared).toContain('b=|,')
    expect(toSigns(placeOf('*Record* it!')).shared).toContain('b=|')
  })

  it('are of the same number whatever the capital, the apostrophe and the hyphen', () => {
    for (const text of ['Gran’s *record* won.', "Gran's *record* won.", 'A half-lost *record* won.'])
      expect(toSigns(placeOf(text)).shared.length).toBeGreaterThan(10)
    expect(toSigns(placeOf('Gran’s *record* won.'))).toEqual(toSigns(placeOf("Gran's *record* won.")))
  })

  it('come for any sentence and any place in it', () => {
    fc.assert(
      fc.property(fc.array(fc.string({ maxLength: 8 }), { minLength: 1, maxLength: 12 }), fc.nat(11), (words, at) => {
        expect(() => toSigns(toPlace(words, at % words.length))).not.toThrow()
      }),
    )
  })
})

describe('hashes', () => {
  // Test vectors of FNV-1a with 32 bits, from the reference page of its authors (Fowler, Noll, Vo), from memory.
  it.each([
    ['', 0x811c9dc5],
    ['a', 0xe40c292c],
    ['foobar', 0xbf9cf968],
  ])('%s', (text, hash) => expect(hashText(text)).toBe(hash))

  it('can be carried on', () => {
    expect(hashText('bar', hashText('foo'))).toBe(hashText('foobar'))
  })
})

describe('shares', () => {
  it('add up to 1, also of large sums', () => {
    expect(toShares([0, 0])).toEqual([0.5, 0.5])
    // Worked by hand: e^ln 3 to 1.
    expect(toShares([Math.log(3), 0])[0]).toBeCloseTo(0.75)
    expect(toShares([900, 0])).toEqual([1, 0])
  })
})

describe('teaching', () => {
  const toExample = (text: string, form: string): Example => {
    const place = placeOf(text)
    return { row: rowOf(place.words[place.index] ?? ''), place, form }
  }
  const FEW = { ...DEFAULTS, often: 2 }
  // What a determiner and `to` tell of English is common practice, no source.
  const lessons = [
    toExample('The *record* is old.', 'noun'),
    toExample('A *record* fell down.', 'noun'),
    toExample('His *record* is safe.', 'noun'),
    toExample('We want to *record* it.', 'verb'),
    toExample('They had to *record* him.', 'verb'),
    toExample('I like to *record* songs.', 'verb'),
  ]

  it('makes of sentences what tells others of the same kind, also of words that no sentence had', () => {
    const weigh = openWeights(teach(lessons, FEW))
    const ask = (text: string) => {
      const place = placeOf(text)
      return weigh(rowOf(place.words[place.index] ?? ''), place)?.form
    }
    expect(ask('The *record* broke.')).toBe('noun')
    expect(ask('He went to *record* a bird.')).toBe('verb')
    expect(ask('The *permit* broke.')).toBe('noun')
    expect(ask('He went to *permit* it.')).toBe('verb')
  })

  it('gives the same bytes for the same sentences', () => {
    expect(teach(lessons, FEW)).toEqual(teach(lessons, FEW))
  })

  it('leaves out what only one sentence shows', () => {
    expect(teach(lessons.slice(0, 1), FEW).length).toBe(4)
  })

  it('does not learn how usual a form is from sentences that were written to teach', () => {
    const [row, place] = [rowOf('record'), placeOf('The *record* is old.')]
    const every = hashText('|record:noun', hashText('.'))
    expect(toHashes(row, place)[0]).toContain(every)
    expect(toHashes(row, place, true)[0]).not.toContain(every)
    expect(toHashes(row, place)[0]).toHaveLength((toHashes(row, place, true)[0]?.length ?? 0) + 1)
  })
})

describe('what the model weighs', () => {
  it('is words whose forms are of different parts of speech, and not the tenses of read', () => {
    expect(isWeighed(rowOf('record'))).toBe(true)
    expect(isWeighed(rowOf('bass'))).toBe(false)
    expect(isWeighed(rowOf('read'))).toBe(false)
  })

  it('is nothing else, whatever the sentence', () => {
    const weigh = openWeights(teachWeights())
    expect(weigh(rowOf('bass'), placeOf('Ned caught a *bass*.'))).toBeUndefined()
  })

  it('gives one of the forms of the row, with a share that no other form can have too', () => {
    const weigh = openWeights(teachWeights())
    for (const row of heteronyms.filter(isWeighed)) {
      for (const { example } of row.forms) {
        const at = cutWords(example).findIndex((one) => one.toLowerCase() === row.word)
        const likely = weigh(row, toPlace(cutWords(example), at))
        expect(row.forms.map(({ form }) => form)).toContain(likely?.form)
        expect(likely?.share).toBeGreaterThanOrEqual(1 / row.forms.length)
        expect(likely?.share).toBeLessThanOrEqual(1)
      }
    }
  })
})

describe('a form that the model holds likely', () => {
  const settleWith = (likely: Likely | undefined, text: string) => {
    const { written, index } = placeOf(text)
    return settle({ find: rules.find, weigh: () => likely }, written, index)
  }

  it('is taken where no word tells, and spares the tagger', () => {
    const text = 'Hens *produce* eggs.'
    expect(settleWith(undefined, text)).toEqual({ kind: 'tagger-needed' })
    expect(settleWith({ form: 'verb', share: 0.97 }, text)).toEqual({ kind: 'settled', form: 'verb' })
    expect(settleWith({ form: 'verb', share: 0.96 }, text)).toEqual({ kind: 'tagger-needed' })
  })

  it('is not heard where words of the sentence tell', () => {
    expect(settleWith({ form: 'noun', share: 1 }, 'We want to *record* it.')).toEqual({ kind: 'settled', form: 'verb' })
  })
})

describe('what cannot stand there, however likely it looks', () => {
  it.each([
    ['is a bare verb behind one thing', 'We got a big wage *increase*.', 'verb', false],
    ['is a bare verb behind one name', 'He met the Cuban *rebel*.', 'verb', false],
    ['is a bare verb joined to one thing', 'All she wants is joy and *progress*.', 'verb', false],
    ['is a verb in -s behind what describes', 'They met the famous *rebels*.', 'verb', false],
    ['is a bare verb behind what describes', 'They gave us instantaneous *transport* to the moon.', 'verb', false],
    ['is a bare verb joined to one thing, before another', 'It was a feast and *protest* march.', 'verb', false],
    ['is a bare verb before how much', 'It slows down food *transport* a lot.', 'verb', false],
    ['is no bare verb before its object behind what describes', 'The famous *transport* the hens.', 'verb', true],
    ['is the thing that opens a sentence with no verb', '*Transport* hens to the barn.', 'noun', false],
    ['is the thing before `yourselves`', 'Now *subject* yourselves to it.', 'noun', false],
    ['is a bare verb in a list of things', 'She had hope, luck, and *progress*.', 'verb', false],
    ['is a verb that is part of a name', 'Ask at the Hill Lane *Survey* now.', 'verb', false],
    ['is a bare verb behind the name of a place', 'The Hill Lane *house* the twins like is old.', 'verb', false],
    ['is no bare verb behind a name under a helper', 'Did the Hill Lane *house* the twins?', 'verb', true],
    ['is no verb in -s behind the name of a place', 'The Hill Lane *records* the twins.', 'verb', true],
    ['is a verb behind whose it is', 'Of all its Hill Lane *graduates* two came.', 'verb', false],
    ['is no verb behind a name', 'Then Meg *records* a song.', 'verb', true],
    ['is no bare verb behind many', 'The prices *increase*.', 'verb', true],
    ['is no bare verb behind a pair', 'Meg and Tam *rebel*.', 'verb', true],
    ['is no bare verb under a helper', 'He will in honour *refuse*.', 'verb', true],
    ['is no bare verb before its object', 'He will run and by its aid *transport* the hens.', 'verb', true],
    ['is no bare verb behind an adverb', 'They now *refuse*.', 'verb', true],
    ['is no verb in -s behind one thing', 'The old juicer *extracts* it.', 'verb', true],
    ['is no thing that opens a sentence with a verb', '*Transport* by road was slow.', 'noun', true],
  ])('%s: %s', (_, text, form, expected) => {
    const place = placeOf(text)
    expect(fits(rowOf(place.words[place.index] ?? ''), place, form)).toBe(expected)
  })

  it('is neither taken from the model nor, where the rules are silent, from anything else', () => {
    const words = cutWords('Transport hens to the barn.')
    const row = rowOf('transport')
    const sure = { find: () => row, weigh: (): Likely => ({ form: 'noun', share: 0.99 }) }
    expect(settle(sure, words, 0, { tagger: () => words.map(() => new Set<string>()) }).kind).toBe('unsettled')
  })
})
