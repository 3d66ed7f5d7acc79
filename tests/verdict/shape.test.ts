// The shape of each syllable, counted in sounds, not in letters.

import { describe, expect, it } from 'vitest'
import { toShapes } from '../../src/verdict/shape.ts'
import { toPronunciation } from './hand-made.ts'

const isInflection = ({ kind }: { readonly kind: string }) => kind === 'inflection'

describe('toShapes', () => {
  it.each([
    ['cat', 'c=k a=æ t=t', 'CVC', 'cat'],
    ['at', 'a=æ t=t', 'VC', 'at'],
    ['ship', 'sh=ʃ i=ɪ p=p', 'CVC', 'ship'],
    ['box', 'b=b o=ɑ x=ks', 'CVC', 'box'],
    ['quit', 'qu=kw i=ɪ t=t', 'CVC', 'quit'],
    ['quit', 'q=k u=w i=ɪ t=t', 'CVC', 'quit'],
    ['cake', 'c=k a_e=eɪ k=k', 'CVC', 'cake'],
    ['ape', 'a_e=eɪ p=p', 'VC', 'ape'],
    ['see', 's=s ee=i', 'CV', 'see'],
    ['lamb', 'l=l a=æ m=m b=', 'CVC', 'lamb'],
    ['frog', 'f=f r=r o=ɑ g=ɡ', 'CCVC', 'fr'],
    ['stamp', 's=s t=t a=æ m=m p=p', 'CCVCC', 'st mp'],
    ['strap', 's=s t=t r=r a=æ p=p', 'CCCVC', 'str'],
    ['rab.bit', 'r=r a=æ bb=b i=ɪ t=t', 'CVC VC', 'rabb it'],
    ['hats', 'h=h a=æ t=t +s=s', 'CVC', 'hat'],
    ['run.ning', 'r=r u=ʌ nn<n=n +ing=ɪŋ', 'CVC', 'runn'],
    ['ba.king', 'b=b a<a_e=eɪ k=k +ing=ɪŋ', 'CVC', 'bak'],
    ['pen.guin', 'p=p e=ɛ n=n g=ɡ u=w i=ɪ n=n', 'CVC CCVC', 'pen gu'],
    ['b-.but', 'b=b b=b u=ʌ t=t', 'CVC', 'but'],
    ['b‑.but', 'b=b b=b u=ʌ t=t', 'CVC', 'but'],
    ['B-.but', 'b=b b=b u=ʌ t=t', 'CVC', 'but'],
    ['sh-.ship', 'sh=ʃ sh=ʃ i=ɪ p=p', 'CVC', 'ship'],
    ['red-.dog', 'r=r e=ɛ d=d d=d o=ɑ g=ɡ', 'CVC CVC', 'red dog'],
    ['b-.b-.but', 'b=b b=b b=b u=ʌ t=t', 'CVC', 'but'],
    ['hen-.coop', 'h=h e=ɛ n=n c=k oo=u p=p', 'CVC CVC', 'hen coop'],
    ['i.raq', 'i=ɪ r=r a=æ q=k', 'V CVC', 'i raq'],
    ['hmm', 'h=h mm=m', 'CC', 'hmm'],
    ['ban.dit', 'b=b a=æ n=n d=d i=ɪ t=t', 'CVC CVC', 'ban dit'],
    ['shrimps', 'sh=ʃ r=r i=ɪ m=m p=p +s=s', 'CCVCC', 'shr mp'],
    ['eye', 'eye=aɪ', 'V', 'eye'],
    ["is.n't", "i=ɪ s=z n't=ənt", 'VC', 'is'],
    ["can't", "c=k a=æ n't=nt", 'CVC', "can't"],
    ['ta.ble', 't=t a=eɪ b=b le=əl', 'CV CV', 'ta ble'],
  ])('%s %s: %s', (dotted, units, shapes, blamed) => {
    const word = dotted.replaceAll('.', '')
    const found = toShapes(word, toPronunciation(dotted, units), isInflection)
    expect(found.map(({ shape }) => shape).join(' ')).toBe(shapes)
    const letters = found.flatMap((one) => one.letters.map(([start, end]) => word.slice(start, end)))
    expect(letters.join(' ')).toBe(blamed)
  })

  it('finds the syllables of a word with hyphens, which stand in none', () => {
    const spoken = toPronunciation('Up-.and-.down', 'u=ʌ p=p a=æ n=n d=d d=d ow=aʊ n=n')
    const shapes = toShapes('Up-and-down', { ...spoken, syllables: ['Up', 'and', 'down'] }, isInflection)
    expect(shapes.map(({ shape }) => shape)).toEqual(['VC', 'VCC', 'CVC'])
  })

  it('counts an ending that is not taught as such', () => {
    const shapes = (dotted: string, units: string) =>
      toShapes(dotted.replaceAll('.', ''), toPronunciation(dotted, units), () => false).map(({ shape }) => shape)
    expect(shapes('hats', 'h=h a=æ t=t +s=s')).toEqual(['CVCC'])
    expect(shapes('jump.ing', 'j=dʒ u=ʌ m=m p=p +ing=ɪŋ')).toEqual(['CVCC', 'VC'])
    expect(shapes('sing.er', 's=s i=ɪ ng=ŋ +er=ɚ')).toEqual(['CVC', 'V'])
    expect(shapes('hunt.ed', 'h=h u=ʌ n=n t=t +ed=ɪd')).toEqual(['CVCC', 'VC'])
  })

  it('blames the cluster before such an ending, and not the ending', () => {
    const [, last] = toShapes('boasting', toPronunciation('boa.sting', 'b=b oa=oʊ s=s t=t +ing=ɪŋ'), () => false)
    expect(last).toEqual({ shape: 'CCVC', letters: [[3, 5]] })
  })
})
