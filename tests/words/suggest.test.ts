// What fits is the project's own judgement; what is measured on sentences of others stands in scripts/accuracy/offers.ts.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { toCaseOf } from '../../src/words/letter-case.ts'
import { createSuggester } from '../../src/words/suggest.ts'
import { data, lexicon, readable, words } from './small.ts'

const fitness = data.fitness()
const sources = { data, lexicon, fitness, isReadable: (word: string) => readable.has(word) }
const suggester = createSuggester(sources)
/** Words that the table lets a sentence do without. */
const LEFT_OUT = words.filter((word) =>
  (['form', 'noun', 'verb', 'adjective', 'adverb'] as const).some(
    (kind) => data.standIns.leaves(word, kind).length > 0,
  ),
)

/** Offers for the word in brackets: `The [boat] is red.` */
function suggest(sentence: string, own = suggester): readonly string[] {
  const tokens = sentence.match(/[\w'[\]]+|[^\w\s]/g) ?? []
  const at = tokens.findIndex((token) => token.startsWith('['))
  const lower = tokens.map((token) => token.toLowerCase())
  const place = { before: lower.slice(0, at), after: lower.slice(at + 1) }
  return own.suggest({ word: (tokens[at] ?? '').slice(1, -1), place })
}

function canGo(sentence: string): boolean {
  const tokens = sentence.match(/[\w'[\]]+|[^\w\s]/g) ?? []
  const at = tokens.findIndex((token) => token.startsWith('['))
  const lower = tokens.map((token) => token.toLowerCase())
  const place = { before: lower.slice(0, at), after: lower.slice(at + 1) }
  return suggester.canGo({ word: (tokens[at] ?? '').slice(1, -1), place })
}

describe('what a sentence does without', () => {
  it.each([
    'He is [very] big.',
    'The [old] man sat.',
    'She sat on a [shiny] red rug.',
    '[All] the dogs ran.',
    'They ate it [all].',
    'He ate [some] buns.',
    '[So] he sat.',
    '[Then] the man ran.',
    'She sat [down].',
    'He thinks [that] she is sad.',
    'He [quickly] ran.',
    'They sat [quietly].',
    'He [also] sat.',
    'I had never seen it [before].',
    '[Oh], let me help.',
  ])('%s', (sentence) => {
    expect(canGo(sentence)).toBe(true)
  })

  it.each([
    'He is not [very] big.',
    'He is [so] big that he fell.',
    'The man is [old].',
    'He had a [little] milk.',
    'The very [old] man sat.',
    'He had no [old] hat.',
    'He sat [all] day.',
    '[So] did he.',
    'He can see [some] day.',
    'He ran more [slowly].',
    'He [hardly] ran.',
    'It went [badly].',
    'The dog [that] bit him ran.',
    'He is [then].',
  ])('%s: not here', (sentence) => {
    expect(canGo(sentence)).toBe(false)
  })
})

describe('what could stand for a word', () => {
  it.each([
    ['The [children] sat.', 'kids'],
    ['The [herdsman] sat.', 'man'],
    ['He [bought] a hat.', 'got'],
    ['She [climbed] into the bed.', 'got'],
    ['Sid [became] sad.', 'got'],
    ['It is [enormous].', 'big'],
    ['He had an [enormous] hat.', 'big'],
    ['[Friends] met.', 'Pals'],
    ['A LARGE hut. The [LARGE] hut.', 'BIG'],
    ["He had his [friend's] hat.", "pal's"],
    ['He fell [into] the mud.', 'in'],
    ['He went [into] the mud.', undefined],
    ['He sat [then].', undefined],
    ['The fox ran [away].', undefined],
  ])('%s → %s', (sentence, offer) => {
    expect(suggest(sentence)[0]).toBe(offer)
  })

  it.each([
    ['a number for another', '[Seven] men sat.'],
    ['a little word', 'He ran [through] the mud.'],
    ['a pronoun', 'The dog is [his].'],
    ['a word equal to the one before', 'The big [enormous] dog sat.'],
    ['a word equal to the one after', 'The [enormous] big dog sat.'],
    ['a naming word after very', 'He is very [friend].'],
    ['a word that only looks alike: rod for road', 'The [road] is wet.'],
    ['a name', '[Zub] sat.'],
    ['what is said to somebody, for the deed itself: get for take', 'It [takes] long.'],
    ['the first half of a name for a thing', 'He sat on the [garden] wall.'],
    ['a describing form for a deed', 'The [visiting] men sat.'],
  ])('is never %s', (_, sentence) => {
    expect(suggest(sentence)).toEqual([])
  })

  // Little words have what the table says of their own form, where it can stand.
  const LITTLE = new Set('the not rest of a when kids mum and dad big extra'.split(' '))
  const little = createSuggester({ ...sources, isReadable: (word) => LITTLE.has(word) })
  it.each([
    ['They shut the door of [their] house.', 'the'],
    ['They held [their] hands.', undefined],
    ['They ate to [their] joy.', undefined],
    ['In [one] corner sat a dog.', 'a'],
    ['[One] day he sat.', undefined],
    ['He had [never] seen it.', 'not'],
    ['He [never] ever sat.', undefined],
    ['The [other] dogs sat.', 'rest of the'],
    ['An [other] dog sat.', undefined],
    ['[As] she ran, he sat.', 'When'],
    ['She sat as [as] he did.', undefined],
    ['He got [more] food.', 'extra'],
    ['He had [more] dogs than cats.', undefined],
    ['His [parents] sat.', 'mum and dad'],
    ["The [children's] dog sat.", "kids'"],
    ['He is big and [powerful].', undefined],
  ])('%s → %s, of little words', (sentence, offer) => {
    expect(suggest(sentence, little)[0]).toBe(offer)
  })

  it.each([
    ['He was [tired] of it.', 'is in need of rest of it', 'in need of rest'],
    ['He [looked] after the dog.', 'what two words say together', 'was'],
    ['It is as big [as] soon.', 'a little word', 'when'],
    ['He [took] no notice.', 'what is done without taking anything', 'got'],
    ['It was too [small].', 'very not big', 'not big'],
  ])('%s: never %s', (sentence, _, offer) => {
    const any = createSuggester({ ...sources, isReadable: () => true })
    expect(suggest(sentence, any)).not.toContain(offer)
  })

  it('knows what is done to one from what one does', () => {
    const any = createSuggester({ ...sources, isReadable: () => true })
    expect(suggest('The dog was [helped].', any)).toContain('aided')
    expect(suggest('They stopped [crying].', any)).toContain('sobbing')
    expect(suggest('The work was [hard].', any)).toContain('tough')
    expect(suggest('He worked [hard].', any)).toEqual(['a lot'])
  })

  it('goes by what stands around the word', () => {
    expect(suggest('He [ate] a bun.')[0]).toBe('had')
    expect(suggest('He [ate].')).toEqual([])
    expect(suggest('He had [eaten] a bun.')).toEqual([])
    expect(suggest('"Run!" he [shouted].')).toEqual([])
    expect(suggest('They [shout] at him.')).toEqual(['yell'])
  })

  it('keeps the case of the original', () => {
    expect([toCaseOf('A', 'the'), toCaseOf('iPad', 'pad'), toCaseOf('Éclair', 'bun')]).toEqual(['The', 'pad', 'Bun'])
  })

  it('offers only fit and readable words, at most five, never the word itself, whatever is asked', () => {
    const word = fc.constantFrom(...words)
    const around = fc.array(word, { maxLength: 3 })
    fc.assert(
      fc.property(word, around, around, (wanted, before, after) => {
        const found = suggester.suggest({ word: wanted, place: { before, after } })
        expect(found.length).toBeLessThanOrEqual(5)
        expect(new Set(found).size).toBe(found.length)
        for (const offer of found) {
          expect(offer).not.toBe(wanted)
          for (const part of offer.split(' ')) {
            expect(readable.has(part.replace(/'s$/, '')), offer).toBe(true)
            expect(fitness.isFit(part), offer).toBe(true)
          }
          expect(offer.split(' ')[0]).not.toBe(before.at(-1))
          expect(offer.split(' ').at(-1)).not.toBe(after[0])
        }
      }),
    )
  })

  it('tells of a word alone whether it could go', () => {
    const wanted = fc.constantFrom(...words.filter((word) => /ly$/.test(word)), ...LEFT_OUT)
    const token = fc.constantFrom(...'. , “ had was the a very he ran sat dog dogs big and not'.split(' '))
    const around = fc.array(token, { maxLength: 3 })
    fc.assert(
      fc.property(wanted, around, around, (word, before, after) => {
        const place = { before, after }
        if (suggester.canGo({ word, place })) expect(suggester.mayHelp(word), word).toBe(true)
      }),
      { numRuns: 2000 },
    )
  })

  it('lets a project shut a word out', () => {
    const own = createSuggester({ ...sources, fitness: data.fitness({ add: ['pal'] }) })
    expect(suggest('The [friend] sat.', own)).not.toContain('pal')
  })
})
