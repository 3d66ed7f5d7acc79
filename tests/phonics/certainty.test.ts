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
    'jub zubs zubber zubby momtib flimber drimp snargs snorfment zakes zire sozz omari lotara brr grrr tsk hmm shh psst',
  ],
  [
    'guess, doubtful as a name',
    'zubbed zaking zaked dreezed dreezing glaved glaving janted floiled splonked gleeved gobjam jari zake unfrabbleness glimtion zubbies',
  ],
  [
    'guess, a mere guess',
    'tadeo naveen kamil imani wiremu marzine trelline flompire velociramanta abracadabrazoo dozzable khadijo mehmoot',
  ],
  ['dictionary', 'cats trooping hisss kisss henhouse blankness'],
  ['dictionary, doubtful as a name', 'zubed zubest'],
  ['nothing', 'etc ok vs bcd'],
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
