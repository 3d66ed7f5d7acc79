// What a beginner says to a made word that follows the plain pattern, and which words do not. Common practice, no source: a vowel letter that is shut in is
// short, one before a single consonant and a vowel could be either, and a word begins as English words begin.

import { describe, expect, it } from 'vitest'
import { createPlainReader } from '../../src/phonics/guess/plain.ts'
import { CLOSE, toRowSet } from '../../src/phonics/lattice.ts'
import { testLexicon } from '../lexicon-for-tests.ts'

const set = toRowSet(testLexicon().rows)
const reader = createPlainReader(set)

const show = (path: readonly number[]): string =>
  path
    .map((id) => (id === CLOSE ? '+' : `${set.rows[id]?.letters}=${set.rows[id]?.phones.join('.').toLowerCase()}`))
    .join(' ')

describe('a plain word, with the stress of its vowels', () => {
  it.each([
    ['ab', 'a=ae b=b', '1'],
    ['zabgub', 'z=z a=ae b=b g=g u=ah b=b', '12'],
    ['zibba', 'z=z i=ih bb=b a=ah', '10'],
    ['zabber', 'z=z a=ae bb=b er=er', '10'],
    ['zerb', 'z=z er=er b=b', '1'],
    ['zabby', 'z=z a=ae bb=b y=iy', '10'],
    ['zabbi', 'z=z a=ae bb=b i=iy', '10'],
    ['zabzey', 'z=z a=ae b=b z=z ey=iy', '10'],
    ['zabzee', 'z=z a=ae b=b z=z ee=iy', '12'],
    ['zabble', 'z=z a=ae bb=b le=ah.l', '10'],
    ['zane', 'z=z a_e=ey n=n +', '1'],
    ['zibzane', 'z=z i=ih b=b z=z a_e=ey n=n +', '12'],
    ['quabe', 'qu=k.w a_e=ey b=b +', '1'],
    ['yub', 'y=y u=ah b=b', '1'],
    ['zooba', 'z=z oo=uw b=b a=ah', '10'],
    ['zixer', 'z=z i=ih x=k.s er=er', '10'],
    ['zisher', 'z=z i=ih sh=sh er=er', '10'],
    ['splab', 's=s p=p l=l a=ae b=b', '1'],
    ['thwab', 'th=th w=w a=ae b=b', '1'],
  ])('%s is %s', (word, said, stress) => {
    const [first] = reader.read(word)
    expect([show(first?.path ?? []), first?.stress.join('')]).toEqual([said, stress])
  })

  it('has its sounds in the order in which they are taught, and six readings at most', () => {
    expect(reader.read('zeath').map(({ path }) => show(path))).toEqual([
      'z=z ea=iy th=th',
      'z=z ea=eh th=th',
      'z=z ea=ey th=th',
      'z=z ea=iy th=dh',
      'z=z ea=eh th=dh',
      'z=z ea=ey th=dh',
    ])
    expect(reader.read('theath')).toHaveLength(6)
  })
})

describe('no plain word', () => {
  it.each([
    ['', 'nothing'],
    ['grr', 'no vowel'],
    ['zibo', 'an open syllable'],
    ['ibo', 'one at the beginning'],
    ['zabiby', 'one in the middle'],
    ['zaiao', 'vowels side by side'],
    ['zooake', 'a long vowel behind another'],
    ['zawake', 'the w of either'],
    ['zewake', 'the w of either'],
    ['zowake', 'the w of either'],
    ['bbab', 'doubled at the beginning'],
    ['ptab', 'no beginning of English'],
    ['zlab', 'no beginning of English'],
    ['zibge', 'a soft g behind a consonant'],
    ['zahb', 'letters that say nothing alone'],
    ["zub's", 'an apostrophe'],
  ])('%j: %s', (word) => {
    expect(reader.read(word)).toEqual([])
  })
})

describe('letters without a vowel that are a sound all the same', () => {
  it.each([
    ['chrr', 'ch=ch rr=r'],
    ['thrr', 'th=th rr=r'],
    ['krrck', 'k=k rr=r ck=k'],
    ['shh', 'sh=sh h=hh'],
    ['tsk', 't=t s=s k=k'],
    ['bb', 'bb=b'],
    ['hmm', 'h=hh mm=m'],
    ['zzt', 'zz=z t=t'],
    ['nk', 'n=n k=k'],
  ])('%s is %s', (word, said) => {
    expect(show(reader.readNoise(word) ?? [])).toBe(said)
  })

  it.each(['', "'", 'a'])('%j is none', (word) => {
    expect(reader.readNoise(word)).toBeUndefined()
  })
})
