// Spellings of Britain, from memory of common usage: no source.

import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { findOtherSpelling, isForeignSpelling, toBritish } from '../../src/phonics/british-spellings.ts'
import { testPhonics } from '../lexicon-for-tests.ts'

describe('what Britain writes otherwise', () => {
  it.each([
    ['flavour', 'flavor'],
    ['flavoured', 'flavored'],
    ['litre', 'liter'],
    ['metres', 'meters'],
    ['pyjamas', 'pajamas'],
    ['organised', 'organized'],
    ['organise', 'organize'],
    ['neighbours', 'neighbors'],
    ['favourite', 'favorite'],
    ['travelled', 'traveled'],
    ['grey', 'gray'],
    ['plough', 'plow'],
    ['moustache', 'mustache'],
    ['ageing', 'aging'],
    ['yoghurt', 'yogurt'],
    ['yoghurts', 'yogurts'],
  ])('%s is known, and said as %s', (british, american) => {
    for (const accent of ['general-american', 'southern-british'] as const) {
      const { source, pronunciations } = testPhonics(accent).read(british)
      expect([british, source]).toEqual([british, 'dictionary'])
      const plain = (ipa: string) => ipa.replace(/[ˈˌː]/g, '')
      expect(pronunciations.map(({ ipa }) => plain(ipa))).toContain(
        plain(testPhonics(accent).read(american).pronunciations[0]?.ipa ?? ''),
      )
    }
  })

  // Each American word with its British one; the endings that a word may have are written one after another.
  it.each(
    `
    color/colour colors/colours colored/coloured coloring/colouring colorful/colourful colorless/colourless
    laborer/labourer laborers/labourers savory/savoury honored/honoured
    center/centre centers/centres centered/centred centering/centring
    analyze/analyse analyzed/analysed analyzing/analysing analyzer/analyser analyzers/analysers analyzes/analyses
    gray/grey grayer/greyer grayed/greyed cozy/cosy catalog/catalogue catalogs/catalogues cataloged/catalogued
    canceled/cancelled equaling/equalling fueled/fuelled jeweler/jeweller jewelers/jewellers labeling/labelling
    moldy/mouldy smoldering/smouldering grayish/greyish shoveled/shovelled quarreling/quarrelling skeptical/sceptical fulfill/fulfil wooly/woolly
    leveled/levelled marveling/marvelling modeling/modelling pedaled/pedalled signaling/signalling
    traveler/traveller travelers/travellers tunneling/tunnelling
    organize/organise organizes/organises organized/organised organizer/organiser organizers/organisers
    organizing/organising organization/organisation organizations/organisations
    realize/realise recognized/recognised baptized/baptised tyrannized/tyrannised civilization/civilisation`
      .trim()
      .split(/\s+/)
      .map((pair) => pair.split('/') as [string, string]),
  )('%s is %s in Britain', (american, british) => {
    expect(toBritish(american)).toBe(british)
    expect(toBritish(british)).toBeUndefined()
    expect(isForeignSpelling(american, 'southern-british')).toBe(true)
    expect(isForeignSpelling(american.toUpperCase(), 'southern-british')).toBe(true)
    expect(isForeignSpelling(american, 'general-american')).toBe(false)
    expect(isForeignSpelling(british, 'southern-british')).toBe(false)
  })

  // The z of these belongs to the word, or its l is doubled nowhere, or the word has an ending that no verb has.
  it.each(
    'maize prized prizes resized sized seized seizing bizarre citizen gizmo horizon horizontal quiz quizzes whiz wizard zip organizational travel cancels jewels fulfilled enrolling axes axed appealed feeling healer sailed'.split(
      ' ',
    ),
  )('%s is written alike', (word) => {
    expect(toBritish(word)).toBeUndefined()
  })

  it.each(['prize', 'size', 'seize', 'capsize', 'dozen', 'lizard', 'meter', 'story'])('%s is written so', (word) => {
    expect(toBritish(word)).toBeUndefined()
  })

  it('a list has what its land writes', () => {
    const isForeign = (word: string) => [
      isForeignSpelling(word, 'general-american'),
      isForeignSpelling(word, 'southern-british'),
    ]
    const american = 'math mom mommy aluminum diaper faucet gotten sidewalk aging Mom color center realize'.split(' ')
    for (const word of american) expect(isForeign(word)).toEqual([false, true])
    for (const word of ['maths', 'mum', 'Mummy', 'aluminium', 'nappy', 'Colour', 'centre', 'ageing', 'yoghurt'])
      expect(isForeign(word)).toEqual([true, false])
    for (const word of ['ax', 'moms', 'skeptical', 'sidewalks']) expect(isForeign(word)).toEqual([false, true])
    for (const word of [
      'cat',
      'story',
      'meter',
      'got',
      'tap',
      'pavement',
      'axe',
      'theatre',
      'dialogue',
      'omelettes',
      'pram',
    ])
      expect(isForeign(word)).toEqual([false, false])
  })
})

describe('the right form of what is written as in the other land', () => {
  it.each([
    ['color', 'colour', undefined],
    ['Gray', 'grey', undefined],
    ['neighbor’s', 'neighbour', undefined],
    ['traveled', 'travelled', undefined],
    ['ax', 'axe', undefined],
    ['flavour', undefined, 'flavor'],
    ['ploughing', undefined, 'plowing'],
    ['tunnelled', undefined, 'tunneled'],
    ['aging', 'ageing', undefined],
    ['ageing', undefined, 'aging'],
    // Britain writes both.
    ['yogurt', undefined, undefined],
    ['yoghurt', undefined, undefined],
    // America writes them so too, and Britain writes -ize too.
    ['axe', undefined, undefined],
    ['theatres', undefined, undefined],
    ['realize', undefined, undefined],
    ['cat', undefined, undefined],
  ])('%s: %s in Britain, %s in America', (word, british, american) => {
    expect(findOtherSpelling(word, 'southern-british')).toBe(british)
    expect(findOtherSpelling(word, 'general-american')).toBe(american)
  })

  it('finds none among the words of England’s curriculum', () => {
    const words = readFileSync(new URL('data/curriculum-words.tsv', import.meta.url), 'utf8')
      .split('\n')
      .filter((line) => line !== '' && !line.startsWith('#'))
      .map((line) => line.split('\t')[0] ?? '')
    expect(words.length).toBeGreaterThan(300)
    expect(words.filter((word) => findOtherSpelling(word, 'southern-british') !== undefined)).toEqual([])
  })
})
