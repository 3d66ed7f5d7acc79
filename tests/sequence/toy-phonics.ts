// A dictionary of a few words written by hand, so that loading is tested without the real one.

import { NO_HETERONYMS } from '../../src/phonics/heteronyms/table.ts'
import { NO_SLIPS } from '../../src/phonics/lexicon/slip-words.ts'
import type { Accent, Phonics } from '../../src/phonics/types.ts'
import { toPronunciations } from '../verdict/hand-made.ts'

const WORDS: Readonly<Record<string, readonly string[]>> = {
  cat: ['c=k a=æ t=t'],
  sat: ['s=s a=æ t=t'],
  his: ['h=h i=ɪ s=z'],
  ship: ['sh=ʃ i=ɪ p=p'],
  rain: ['r=r ai=eɪ n=n'],
  cake: ['c=k a_e=eɪ k=k'],
  read: ['r=r ea=i d=d', 'r=r ea=ɛ d=d'],
  bank: ['b=b a=æ n=ŋ k=k'],
  'na.ive': ['n=n a=ɑ i=i v=v e='],
  'ba.nan.a': ['b=b a~=ə n=n a=æ n=n a~=ə'],
  bath: ['b=b a=æ th=θ'],
  hop: ['h=h o=ɑ p=p'],
  'run.ning': ['r=r u=ʌ nn<n=n +ing=ɪŋ'],
}

const BRITISH: Readonly<Record<string, readonly string[]>> = { bath: ['b=b a=ɑː th=θ'], hop: ['h=h o=ɒ p=p'] }

export function toyPhonics(accent: Accent): Phonics {
  const dictionary = accent === 'southern-british' ? { ...WORDS, ...BRITISH } : WORDS
  const words = new Map(
    Object.entries(dictionary).map(([dotted, units]) => [dotted.replaceAll('.', ''), [dotted, units]] as const),
  )
  return {
    accent,
    heteronyms: NO_HETERONYMS,
    read(word) {
      const found = words.get(word.toLowerCase())
      if (found === undefined) return { word, source: 'guess', pronunciations: [], heteronym: false }
      return { ...toPronunciations(found[0], ...found[1]), heteronym: found[1].length > 1 }
    },
    isListed: (word) => words.has(word.toLowerCase()),
    slips: NO_SLIPS,
  }
}
