// A look-alike that is part of a word with hyphens, or that an owner's s follows: which part, which form, and what the engine gives.

import { dictionary } from 'cmu-pronouncing-dictionary'
import { describe, expect, it } from 'vitest'
import { cutWords } from '../../scripts/build/heteronyms/examples.ts'
import { rules } from '../../scripts/build/heteronyms/table.ts'
import { cutAtHyphens, findLookAlike, findToldByRest } from '../../src/phonics/heteronyms/part.ts'
import { settle } from '../../src/phonics/heteronyms/settle.ts'
import { testPhonics } from '../lexicon-for-tests.ts'

/** The form of the first word with a hyphen. */
function ask(sentence: string): string {
  const words = cutWords(sentence)
  const answer = settle(
    rules,
    words,
    words.findIndex((word) => word.includes('-')),
  )
  return answer.kind === 'settled' ? answer.form : answer.kind
}

describe('the look-alike of a word', () => {
  it('is the word itself, or the first part that is one', () => {
    expect(findLookAlike(rules, 'wind')).toMatchObject({ row: { word: 'wind' }, from: 0, to: 4 })
    expect(findLookAlike(rules, 'ten-minute')).toMatchObject({ row: { word: 'minute' }, from: 4, to: 10 })
    expect(findLookAlike(rules, 'Wind-Up')).toMatchObject({ row: { word: 'wind' }, from: 0, to: 4 })
    expect(findLookAlike(rules, 'row-boat-wind')).toMatchObject({ row: { word: 'row' } })
    for (const word of ['windy', 'hat-stand', '-', '', '’s', 'its']) expect(findLookAlike(rules, word)).toBeUndefined()
  })

  it('stands in the sentence as a word of its own', () => {
    const cut = (sentence: readonly string[], index: number) => {
      const found = findLookAlike(rules, sentence[index] ?? '')
      return found && cutAtHyphens(sentence, index, found)
    }
    expect(cut(['a', 'ten-minute', 'walk'], 1)).toEqual({ sentence: ['a', 'ten', 'minute', 'walk'], index: 2 })
    expect(cut(['the', 'wind', 'blew'], 1)).toEqual({ sentence: ['the', 'wind', 'blew'], index: 1 })
    expect(cut(['-wind-', '.'], 0)).toEqual({ sentence: ['wind', '.'], index: 0 })
  })

  it('has the form that the whole word tells, also where a star stands for its other parts', () => {
    const row = rules.find('minute')
    expect(row && findToldByRest(row, 'forty-minute')).toBe('time')
    expect(row && findToldByRest(row, 'five-minute-long')).toBe('time')
    expect(row && findToldByRest(row, 'minute-hand')).toBeUndefined()
    expect(row && findToldByRest(row, 'minute')).toBeUndefined()
  })
})

describe('a word with hyphens', () => {
  // The CMU Pronouncing Dictionary has these words in one piece: its sounds say which form is in them.
  it.each([
    ['He had a wind-up mouse.', 'windup'],
    ['We saw a close-up of a bee.', 'closeup'],
    ['Ravi has a cross-bow.', 'crossbow'],
    ['A rain-bow hung over the hill.', 'rainbow'],
    ['The long-bow was strong.', 'longbow'],
    ['Gran has a row-boat.', 'rowboat'],
    ['The farm-house is red.', 'farmhouse'],
    ['They live in a light-house.', 'lighthouse'],
    ['The wind-mill turned.', 'windmill'],
    ['It was a wind-swept hill.', 'windswept'],
    ['The house-boat rocked.', 'houseboat'],
    ['The green-house is hot.', 'greenhouse'],
  ])('%s', (sentence, whole) => {
    const word = cutWords(sentence).find((one) => one.includes('-')) ?? ''
    const form = findLookAlike(rules, word)?.row.forms.find((one) => one.form === ask(sentence))
    const plain = (sounds: string | undefined) => ` ${sounds?.replace(/\d/g, '')} `
    // In `windswept` the dictionary drops the d.
    expect(plain(dictionary[whole]).replace(' W IH N S', ' W IH N D S')).toContain(plain(form?.sounds))
  })

  // Common practice, no source.
  it.each([
    ['It was a ten-minute walk.', 'time'],
    ['The five-minute bell rang.', 'time'],
    ['It took a two-minute egg.', 'time'],
    ['Her tear-stained cheeks were red.', 'eye'],
    ['Here is a tear-off strip.', 'rip'],
    ['The dog said bow-wow.', 'bend'],
    ['Tam wore a bow-tie.', 'knot'],
    ['It was a much-used path.', 'verb'],
    ['He is a well-read man.', 'past'],
    ['The pan is lead-free.', 'metal'],
  ])('%s', (sentence, form) => expect(ask(sentence)).toBe(form))

  it('is left open where nothing tells', () => {
    expect(ask('He re-read it.')).not.toBe('present')
  })

  it('has a pronunciation for each form of its part', () => {
    const { heteronym, pronunciations } = testPhonics('general-american').read('wind-thing')
    expect(heteronym).toBe(true)
    expect(
      pronunciations.map(({ form, units }) => [form, units.find(({ letters }) => letters === 'i')?.sound]),
    ).toEqual([
      ['air', 'ɪ'],
      ['turn', 'aɪ'],
    ])
  })

  // The sounds are those of the CMU Pronouncing Dictionary's WINDUP, ROWBOAT and LIVE-IN's verb; common practice for the last.
  it.each([
    ['wind-up', 'w aɪ n d ʌ p'],
    ['row-boat', 'r oʊ b oʊ t'],
    ['live-in', 'l ɪ v ɪ n'],
  ])('has no other pronunciation than that of the form that it tells: %s', (word, sounds) => {
    const { heteronym, pronunciations } = testPhonics('general-american').read(word)
    expect(heteronym).toBe(false)
    expect(pronunciations.map(({ units }) => units.map(({ sound }) => sound).join(' '))).toEqual([sounds])
  })

  // The beginning is said /riː/ in any dictionary; re is a note of the scale, too, and there alone has another sound.
  it.each(['re-read', 're-use', 're-tell', 're-heat'])('begins with the re of again: %s', (word) => {
    const { pronunciations } = testPhonics('general-american').read(word)
    expect(new Set(pronunciations.map(({ units }) => units[1]?.sound))).toEqual(new Set(['iː']))
  })

  it('is no look-alike without such a part', () => {
    const { heteronym, pronunciations } = testPhonics('general-american').read('hat-stand')
    expect(heteronym).toBe(false)
    expect(pronunciations.every(({ form }) => form === undefined)).toBe(true)
  })
})

describe('a word with an owner’s s', () => {
  const askOwner = (sentence: string): string => {
    const words = cutWords(sentence)
    const answer = settle(
      rules,
      words,
      words.findIndex((word) => /[’']s$/.test(word)),
    )
    return answer.kind === 'settled' ? answer.form : answer.kind
  }

  // Common practice, no source: what owns, and what is, is a thing.
  it.each([
    ['The wind’s howl woke us.', 'air'],
    ["The Wind's very loud tonight.", 'air'],
    ['It was a minute’s walk.', 'time'],
    ['The house’s roof is red.', 'noun'],
    ['The dove’s wing healed.', 'bird'],
    ['The bow’s string snapped, and the arrow fell.', 'knot'],
    ['The tear’s path shone on her cheek.', 'eye'],
    ['The front row’s seats were wet.', 'line'],
    ['We went to see Nice’s shops.', 'town'],
  ])('%s', (sentence, form) => {
    expect(askOwner(sentence)).toBe(form)
  })

  it('is said in one way where one form alone is a thing, and in each way of its forms where two are', () => {
    const phonics = testPhonics('general-american')
    const wind = phonics.read('wind’s')
    expect(wind.heteronym).toBe(false)
    expect(wind.pronunciations.map(({ form, meaning }) => [form, meaning])).toEqual([['air', 'moving air']])
    const bow = phonics.read("bow's")
    expect(bow.heteronym).toBe(true)
    expect(bow.pronunciations.map(({ form }) => form).sort()).toEqual(['bend', 'knot'])
  })
})
