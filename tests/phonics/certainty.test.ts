// How sure the sounds are of a word that nobody listed: of a made word, of one that might be a name, and of one whose letters other lands say
// otherwise. Common practice, no source.

import { describe, expect, it } from 'vitest'
import { testSpelling } from '../lexicon-for-tests.ts'

const grade = (word: string): string => {
  const { source, meant, unsure, unsureAsName, cuttings } = testSpelling().spell(word)
  if (meant !== undefined) return `for ${meant}`
  if (cuttings.length === 0) return 'nothing'
  return `${source}${unsure ? ', a mere guess' : unsureAsName ? ', doubtful as a name' : ''}`
}

it.each([
  [
    'guess',
    'jub zubest zubs zubber zubby momtib flimber drimp snargs snorfment zakes zire sozz omari lotara brr grrr tsk hmm shh psst zzt pff mm hm pst crsh yub zuzes missss',
  ],
  [
    'guess, doubtful as a name',
    'zubbed zaking zaked dreezed dreezing glaved glaving janted floiled splonked gleeved gobjam jari zake unfrabbleness glimtion zubbies',
  ],
  [
    'guess, a mere guess',
    'tadeo naveen kamil amadi wiremu marzine trelline flompire velociramanta abracadabrazoo dozzable khadijo mehmoot',
  ],
  ['dictionary', 'cats trooping hisss kisss swisss henhouse herdsman swordswoman blankness'],
  ['dictionary, doubtful as a name', 'zubed'],
  ['nothing', 'etc ok vs bcd zubø øzub ttt'],
  ['for misses', 'misss'],
  ['for making', 'makeing'],
  ['for running', 'runing'],
])('%s: %s', (expected, words) => {
  for (const word of words.split(' ')) expect([word, grade(word)]).toEqual([word, expected])
})

describe('the longest guess', () => {
  it('has sixty letters', () => {
    expect(grade('ba'.repeat(30))).toBe('guess, a mere guess')
    expect(grade(`${'ba'.repeat(30)}b`)).toBe('nothing')
  })
})

// The first reading of each, with its letters: what a beginner says, or English makes likely.
it.each([
  ['zubbest', 'z u bb e s t'],
  ['zubbed', 'z u bb ed'],
  ['zaking', 'z a k ing'],
  ['janted', 'j a n t ed'],
  ['floiled', 'f l oi l ed'],
  ['zakes', 'z a_e k s'],
  ['momtib', 'm o m t i b'],
  ['flompire', 'f l o m p ire'],
  ['splonked', 's p l o n k ed'],
  ['zubbies', 'z u bb ie s'],
  ['tsk', 't s k'],
  ['grrr', 'g rrr'],
])('%s is cut %s', (word, letters) => {
  expect(
    testSpelling()
      .spell(word)
      .cuttings[0]?.raw.units.map((unit) => unit.letters)
      .join(' '),
  ).toBe(letters)
})

// An ending on a word that nobody listed: + before it, and what stands for what was there before. A letter is doubled behind a single vowel, an e is dropped
// behind a vowel and a consonant, and two letters that say one sound are never doubled.
it.each([
  ['zubbed', 'z u bb<b +ed'],
  ['zabbing', 'z a bb<b +ing'],
  ['zoobbed', 'z oo bb +ed'],
  ['zaking', 'z a<a_e k +ing'],
  ['zaked', 'z a<a_e k +ed'],
  ['zuzes', 'z u<u_e z +es'],
  ['jufing', 'j u<u_e f +ing'],
  ['janted', 'j a n t +ed'],
  ['floiled', 'f l oi l +ed'],
  ['zushed', 'z u sh +ed'],
  ['zushing', 'z u sh +ing'],
  ['zashes', 'z a sh +es'],
  ['zatches', 'z a tch +es'],
  ['zoxed', 'z o x +ed'],
  ['zoxes', 'z o x +es'],
  ['wunxed', 'w u n x +ed'],
  ['glorps', 'g l or p +s'],
  ['zuts', 'z u t +s'],
  ['zawing', 'z aw i ng'],
  ['zubest', 'z u b e s t'],
  ['glorpest', 'g l or p e s t'],
  ['glorper', 'g l or p er'],
  ['zubiest', 'z u b i e s t'],
  ['seing', 's ei ng'],
])('%s is %s', (word, letters) => {
  const units = testSpelling().spell(word).cuttings[0]?.raw.units ?? []
  expect(
    units
      .map((unit) => `${unit.kind === 'inflection' ? '+' : ''}${unit.letters}${unit.base ? `<${unit.base}` : ''}`)
      .join(' '),
  ).toBe(letters)
})
