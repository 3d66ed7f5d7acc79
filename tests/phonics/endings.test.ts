// Which words are a stem with an ending. England's curriculum (Department for Education 2013, English Appendix 1) gives
// hunter, buzzer, jumper, fresher and grandest as words with -er and -est; that letter, butter and after have none is
// common practice, no source.

import { expect, it } from 'vitest'
import { testPhonics } from '../lexicon-for-tests.ts'

const cut = (word: string): string => {
  const [pronunciation] = testPhonics('general-american').read(word).pronunciations
  return (pronunciation?.units ?? [])
    .map(({ letters, kind }) => (kind === 'inflection' ? `+${letters}` : letters))
    .join('·')
}

it.each([
  ['letter', 'l·e·tt·er'],
  ['better', 'b·e·tt·er'],
  ['butter', 'b·u·tt·er'],
  ['supper', 's·u·pp·er'],
  ['after', 'a·f·t·er'],
  ['hunter', 'h·u·n·t·+er'],
  ['buzzer', 'b·u·zz·+er'],
  ['jumper', 'j·u·m·p·+er'],
  ['runner', 'r·u·nn·+er'],
  ['farmer', 'f·ar·m·+er'],
  ['fresher', 'f·r·e·sh·+er'],
  ['grandest', 'g·r·a·n·d·+est'],
  ['longer', 'l·o·n·g·+er'],
  ['youngest', 'y·ou·n·g·+est'],
  ['used', 'u·s·+ed'],
  ['uses', 'u·s·+es'],
  ['winds', 'w·i·n·d·+s'],
  ['does', 'd·oe·s'],
  ['wanted', 'w·a·n·t·+ed'],
  ['flower', 'f·l·ow·er'],
  ['tower', 't·ow·er'],
  ['decide', 'd·e·c·i_e·d'],
])('%s is cut %s', (word, units) => {
  expect(cut(word)).toBe(units)
})

it.each([
  ['forest', 'f·o·r·e·s·t'],
  ['orange', 'o·r·a·n·ge'],
  ['hurry', 'h·u·rr·y'],
  ['squirrel', 's·qu·i·rr·e·l'],
  ['story', 's·t·or·y'],
])('%s is cut %s in Southern British', (word, units) => {
  const [pronunciation] = testPhonics('southern-british').read(word).pronunciations
  expect(pronunciation?.units.map(({ letters }) => letters).join('·')).toBe(units)
})

it('gives tyre and aunt one Southern British pronunciation each', () => {
  const say = (word: string) =>
    testPhonics('southern-british')
      .read(word)
      .pronunciations.map(({ ipa }) => ipa)
  expect(say('tyre')).toEqual(['ˈtaɪə'])
  expect(say('aunt')).toEqual(['ɑːnt'])
})

it('reads the a of want, swan and watch in one way', () => {
  for (const word of ['want', 'swan', 'watch', 'swamp', 'wash']) {
    const { pronunciations } = testPhonics('general-american').read(word)
    expect(
      new Set(pronunciations.flatMap(({ units }) => units.filter(({ vowel }) => vowel).map(({ key }) => key))),
    ).toEqual(new Set(['a=ɑ']))
  }
})
