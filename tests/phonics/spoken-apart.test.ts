// Words spoken apart, with marks and hyphens: where each letter stands in the word as it is written. Common practice, no source.

import { describe, expect, it } from 'vitest'
import { testPhonics } from '../lexicon-for-tests.ts'

const read = (word: string) => testPhonics('general-american').read(word)

/** The letters of each unit as they stand in the written word, with what they say. */
const say = (word: string): string =>
  read(word)
    .pronunciations[0]?.units.map(
      ({ spans, sound }) => `${spans.map(([from, to]) => word.slice(from, to)).join('_')}${spans[0]?.[0]}=${sound}`,
    )
    .join(' ') ?? '-'

describe('sounded out', () => {
  it.each([
    ['C-a-t', 'C0=k a2=æ t4=t'],
    ['sh-i-p', 'sh0=ʃ i3=ɪ p5=p'],
    ['f-i-sh', 'f0=f i2=ɪ sh4=ʃ'],
    ['d-u-ck-s', 'd0=d u2=ʌ ck4=k s7=s'],
    ['ch-ur-ch', 'ch0=tʃ ur3=ɜr ch6=tʃ'],
    ['n-igh-t', 'n0=n igh2=aɪ t6=t'],
    ['g-o', 'g0=ɡ o2=oʊ'],
  ])('%s', (word, expected) => {
    expect(say(word)).toBe(expected)
  })

  it.each(['C-a-t', 'sh-i-p', 'g-o'])('%s is as well known as the word', (word) => {
    expect(read(word).source).toBe('dictionary')
  })

  // Of `c-ake` the second part is a word's end and no sound: four letters. No cut goes through a pair that says one sound.
  it.each([
    ['s-h-i-p', ['ship']],
    ['z-u-b', ['zub']],
    ['c-aught', ['caught']],
    ['cat-dog-pig', ['catdogpig']],
  ])('%s is not', (word, [whole = '']) => {
    expect(say(word).replaceAll(/\d/g, '')).not.toBe(say(whole).replaceAll(/\d/g, ''))
  })

  it.each([
    ['c--a-t', 3],
    ['-c-a-t', 3],
    ['c-a-t-', 3],
  ])('%s has an empty part, and is read part by part', (word) => {
    expect(read(word).pronunciations.every(({ units }) => units.length >= 3)).toBe(true)
    expect(say(word)).not.toMatch(/^c\d=k a\d=æ t\d=t$/)
  })
})

describe('parts that are no sounds', () => {
  // Two parts are sounded out letter by letter alone; a part of four letters is a word's piece; syllables are read one by one.
  it.each(['c-at', 'st-ring-s', 's-h-i-p', 'h-igh', 't-ea', 'sn-ow', 'b-b', 'b-b-b'])('%s says nothing', (word) => {
    expect(read(word)).toMatchObject({ source: 'guess', pronunciations: [] })
  })

  it.each([
    ['sh-op', 'sh0=ʃ o3=ɑ p4=p'],
    ['to-ma-to', 't0=t o1=uː m3=m a4=ɑ t6=t o7=uː'],
    ['i-de-a', 'i0=aɪ d2=d e3=iː a5=ə'],
    ['ch-ee-se', 'ch0=tʃ ee3=iː se6=z'],
    ['c-a-k-e', 'c0=k a_e2=eɪ k4=k'],
  ])('%s', (word, expected) => {
    expect(say(word)).toBe(expected)
  })

  it('may be a name where the first letter alone is a capital', () => {
    const words = ['Zubbed', 'zubbed', 'ZUBBED', 'ZubBed', 'ZUbbed', 'aZubbed']
    expect(words.map((word) => read(word).unsure ?? false)).toEqual([true, false, false, false, false, false])
  })
})

describe('stuttered', () => {
  it.each([
    ['B-b-but', 'B0=b b2=b b4=b u5=ʌ t6=t'],
    ['b-but', 'b0=b b2=b u3=ʌ t4=t'],
    ['St-stop', 'S0=s t1=t s3=s t4=t o5=ɑ p6=p'],
    ['sh-she', 'sh0=ʃ sh3=ʃ e5=iː'],
    ['th-th-this', 'th0=ð th3=ð th6=ð i8=ɪ s9=s'],
    ['z-zub', 'z0=z z2=z u3=ʌ b4=b'],
  ])('%s', (word, expected) => {
    expect(say(word)).toBe(expected)
  })

  it.each(['s-ship', 'b-c-but', 'b-cut', 'but-b'])('%s is not', (word) => {
    expect(say(word)).toBe('-')
    expect(read(word).source).toBe('guess')
  })
})

describe('hyphens and marks', () => {
  it.each([
    ['tip-top', 't0=t i1=ɪ p2=p t4=t o5=ɑ p6=p'],
    ['-cat', 'c1=k a2=æ t3=t'],
    ['cat-', 'c0=k a1=æ t2=t'],
    ['tip–top', 't0=t i1=ɪ p2=p t4=t o5=ɑ p6=p'],
    ['tip‑top', 't0=t i1=ɪ p2=p t4=t o5=ɑ p6=p'],
    ['tip‐top', 't0=t i1=ɪ p2=p t4=t o5=ɑ p6=p'],
    ['tip\u00adtop', 't0=t i1=ɪ p\u00ad2=p t4=t o5=ɑ p6=p'],
    ['café', 'c0=k a1=ə f2=f é3=eɪ'],
    ['cafe\u0301', 'c0=k a1=ə f2=f e\u03013=eɪ'],
    ['dog’s', 'd0=d o1=ɔ g2=ɡ ’s3=z'],
    ['DOG', 'D0=d O1=ɔ G2=ɡ'],
  ])('%s', (word, expected) => {
    expect(say(word)).toBe(expected)
  })

  it('are too much for a word beyond 200 letters', () => {
    expect(read(`${'cat-'.repeat(49)}cat`).pronunciations).toHaveLength(1)
    expect(read(`${'cat-'.repeat(50)}cat`).pronunciations).toEqual([])
    expect(read('---').pronunciations).toEqual([])
    expect(read('123').pronunciations).toEqual([])
  })

  it('is listed where each part is', () => {
    const { isListed } = testPhonics('general-american')
    expect(['tip-top', 'cat-', '-cat', 'Cat', 'cat’s'].map(isListed)).toEqual([true, true, true, true, true])
    expect(['tip-zub', 'zub-tip', 'zub', '-', ''].map(isListed)).toEqual([false, false, false, false, false])
  })
})

// Of names with marks, common practice, no source: see `unlisted.test.ts`.
describe('a letter with a mark', () => {
  it.each([
    'Haşmet',
    'Siré',
    'Gül',
    'Zubé',
    'Pål',
    'Dvořák',
    'Inês',
    'Ţara',
    'façades-é',
    'Román',
    'Pál',
    'Thérèse',
    'Tùng',
    'Dávids',
    'Cátos',
    'Renés',
  ])('leaves %s unsure', (word) => {
    expect(read(word).unsure).toBe(true)
  })

  it.each([
    'café',
    'cafés',
    'naïve',
    'Zoë',
    'Chloë',
    'fiancé',
    'fiancés',
    'façade',
    'Dávid',
    'Nóra',
    'Noël',
    'naïvely',
  ])('leaves %s sure', (word) => {
    expect(read(word).unsure).toBeUndefined()
  })
})

describe('a word with two meanings', () => {
  it('tells the form and the meaning of each pronunciation', () => {
    const { heteronym, pronunciations } = read('read')
    expect(heteronym).toBe(true)
    expect(pronunciations.map(({ form, ipa }) => `${form} ${ipa}`)).toEqual(['present riːd', 'past rɛd'])
    expect(pronunciations.every(({ meaning }) => (meaning ?? '') !== '')).toBe(true)
    expect(read('cat').heteronym).toBe(false)
    expect(read('cat').pronunciations[0]?.form).toBeUndefined()
  })

  it('says each pronunciation once', () => {
    for (const word of ['cat', 'again', 'either', 'route', 'data', 'the', 'a'])
      for (const accent of ['general-american', 'southern-british'] as const) {
        const said = testPhonics(accent)
          .read(word)
          .pronunciations.map(({ units }) => units.map(({ letters, sound }) => `${letters}=${sound}`).join(' '))
        expect(new Set(said).size, word).toBe(said.length)
      }
  })
})

describe('two words in one', () => {
  const parts = (word: string) => read(word).parts?.map((part) => (typeof part === 'string' ? part : part.word))

  it.each([
    ['someone', 'some one'],
    ['Anybody', 'any body'],
    ['everything', 'every thing'],
    ['nowhere', 'no where'],
    ['myself', 'my self'],
    ['yourselves', 'your selves'],
    ['whatever', 'what ever'],
    ['ours', 'our -s'],
    ['into', 'in to'],
    ['today', 'to day'],
    ['outside', 'out side'],
    ['therefore', 'there fore'],
    ['cannot', 'can not'],
  ])('%s is %s', (word, expected) => {
    expect(parts(word)?.join(' ')).toBe(expected)
  })

  it.each(['together', 'cat', 'mys', 'sunset', 'hisself'])('%s is not', (word) => {
    expect(parts(word)).toBeUndefined()
  })
})
