import { describe, expect, it } from 'vitest'
import { buildWordFacts, findFacts } from '../../scripts/build/word-facts.ts'
import { loadWordSources } from '../../scripts/build/words.ts'
import { isInUse } from '../../src/finder/in-use.ts'
import { openWordFacts, packFacts, unpackFacts, type WordFacts } from '../../src/words/facts.ts'
import { LITTLE_WORDS } from '../../src/words/little.ts'

const sources = loadWordSources()
const factsOf = (word: string): WordFacts => findFacts(word, sources)

// Main part of speech and inflection: common dictionary knowledge, no source.
describe('findFacts', () => {
  it.each([
    ['boats', 'noun', 'plural'],
    ['hens', 'noun', 'plural'],
    ['feet', 'noun', 'plural'],
    ['children', 'noun', 'plural'],
    ['duck', 'noun', 'none'],
    ['ran', 'verb', 'past'],
    ['runs', 'verb', 'third'],
    ['running', 'verb', 'ing'],
    ['saw', 'verb', 'past'],
    ['eaten', 'verb', 'participle'],
    ['found', 'verb', 'past'],
    ['red', 'adjective', 'none'],
    ['bigger', 'adjective', 'comparative'],
    ['best', 'adjective', 'superlative'],
    ['sadly', 'adverb', 'none'],
    ['the', 'little', 'none'],
    ['under', 'little', 'none'],
    ["can't", 'little', 'none'],
    ['zub', undefined, 'none'],
    ['meg', undefined, 'none'],
  ] as const)('%s is a %s, %s', (word, main, inflection) => {
    expect(factsOf(word)).toMatchObject({ main, inflection })
  })

  it('lists every part of speech that is in use', () => {
    expect(factsOf('duck').partsOfSpeech).toEqual(['noun', 'verb'])
    expect(factsOf('can').partsOfSpeech).toEqual(['little', 'noun'])
    expect(factsOf('boat').partsOfSpeech).toEqual(['noun'])
    expect(factsOf('a').partsOfSpeech).toEqual(['little'])
  })

  it('grades how well children know a word, by the lists of Spache (1974) and Dale and Chall (1995)', () => {
    expect(factsOf('apple').known).toBe(3)
    expect(factsOf('apples').known).toBe(3)
    expect(factsOf('acorn').known).toBe(2)
    expect(factsOf('submarine').known).toBe(1)
    expect(factsOf('gristle').known).toBe(0)
    expect(factsOf('federal').known).toBe(0)
    expect(factsOf('crier').known).toBe(0)
  })

  // A form of a word that children know is known; a word that only looks like one is not.
  it.each([
    'attest',
    'belling',
    'browning',
    'doner',
    'everest',
    'juster',
    'lessing',
    'mayer',
    'moster',
    'offing',
    'sanger',
    'sucher',
    'worlder',
  ])('%s is not known to small children', (word) => {
    expect(factsOf(word).known).toBeLessThan(2)
  })

  it.each(['apples', 'biggest', 'farmer', 'hopped', 'jumper', 'running', 'skating', 'wolves'])(
    '%s is known',
    (word) => {
      expect(factsOf(word).known).toBeGreaterThan(1)
    },
  )

  // Not listed: neither well known nor in use.
  it.each(
    'america ares childs easter fats foots french funs jimmy july lucks mans mens molly monday mondays muds murphy'.split(
      ' ',
    ),
  )('%s is not listed', (word) => {
    expect(isInUse(factsOf(word))).toBe(false)
  })

  it.each('cans colds dads drew fangs fives lights men opens queens robin rose sweets turkey west'.split(' '))(
    '%s is listed',
    (word) => {
      expect(isInUse(factsOf(word))).toBe(true)
    },
  )

  it('orders words by use', () => {
    const [the, boat, gristle, zub] = ['the', 'boat', 'gristle', 'zub'].map((word) => factsOf(word).rarity)
    expect([the, boat, gristle, zub]).toEqual([the, boat, gristle, zub].toSorted((a = 0, b = 0) => a - b))
    expect(the).toBeLessThan(5)
    expect(zub).toBe(31)
  })

  it('tells a thing from a picture, and both from what cannot be shown', () => {
    expect(factsOf('mugs').nameable).toBe('object')
    for (const word of ['barn', 'fly', 'ring', 'tree', 'tulip']) expect(factsOf(word).nameable, word).toBe('object')
    for (const word of ['fog', 'elm', 'corridor', 'lemonade']) expect(factsOf(word).nameable, word).toBe('picture')
    expect(factsOf('short').nameable).not.toBe('object')
    expect(factsOf('hop').nameable).toBe('no')
    expect(factsOf('luck').nameable).toBe('no')
  })
})

describe('openWordFacts', () => {
  const words = ['boats', 'duck', 'gin', 'ran', 'the', 'zub']
  const facts = words.map(factsOf)
  const table = openWordFacts(buildWordFacts(facts))

  it('gives back what was put in', () => {
    expect(table.size).toBe(words.length)
    facts.forEach((expected, i) => {
      const found = table.factsAt(i)
      expect(new Set(found.partsOfSpeech)).toEqual(new Set(expected.partsOfSpeech))
      expect({ ...found, partsOfSpeech: [] }).toEqual({ ...expected, partsOfSpeech: [] })
    })
    expect(table.factsAt(2).fit).toBe(false)
    expect(() => table.factsAt(words.length)).toThrow(RangeError)
  })

  it('packs and unpacks every field at its limits', () => {
    const most: WordFacts = {
      partsOfSpeech: ['noun', 'verb', 'adjective', 'adverb', 'little'],
      main: 'little',
      inflection: 'superlative',
      nameable: 'object',
      known: 3,
      fit: true,
      rarity: 31,
    }
    const least: WordFacts = {
      partsOfSpeech: [],
      main: undefined,
      inflection: 'none',
      nameable: 'no',
      known: 0,
      fit: false,
      rarity: 0,
    }
    expect(unpackFacts(packFacts(most))).toEqual(most)
    expect(unpackFacts(packFacts(least))).toEqual(least)
  })
})

describe('little words', () => {
  it('are sorted, each once', () => {
    const words: string[] = LITTLE_WORDS.map(([word]) => word)
    expect(words).toEqual([...new Set(words)].sort())
  })
})
