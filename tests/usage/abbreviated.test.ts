// Words that are an abbreviation in some places and a plain word in others. Common practice, no source; the sentences are our own.

import { describe, expect, it } from 'vitest'
import { readStory } from '../../src/story/index.ts'
import { isAbbreviated } from '../../src/usage/abbreviated.ts'
import { findAbbreviation } from '../../src/verdict/index.ts'

/** The words of a text that are taken for an abbreviation there, as written. */
const find = (text: string): readonly string[] =>
  readStory(text)
    .pages.flatMap(({ blocks }) => blocks)
    .flatMap(({ sentences }) => sentences)
    .flatMap((sentence) => sentence.words.filter((word) => isAbbreviated(word, sentence)))
    .map(({ text }) => text)

describe('an abbreviation', () => {
  it.each([
    // Capitals amid small letters, where a thing stands.
    ['We live in the US now.', 'US'],
    ['The US’s flag is big.', 'US’s'],
    ['US kids like it.', 'US'],
    ['The US Army came.', 'US'],
    ['He is a big US star.', 'US'],
    ['Gran likes US cake.', 'US'],
    ['She had an IT lesson.', 'IT'],
    ['She went to LA.', 'LA'],
    // With a numeral or a number.
    ['He got up at 8 AM on Monday.', 'AM'],
    ['The shop shuts at 10:30 am.', 'am'],
    ['It was ten AM.', 'AM'],
    ['Get up at 8 am!', 'am'],
    ['The wall is from 43 AD.', 'AD'],
    ['It was AD 43.', 'AD'],
    ['Wait 10 min.', 'min'],
    ['It ran 5 m and 6 mm.', 'm mm'],
    ['Get 50 g of rice and 2 l of milk.', 'g l'],
    ['The bun was 20 p.', 'p'],
    ['It is on Sat 5 May.', 'Sat'],
    ['We met on 6 Jan.', 'Jan'],
    // With a name.
    ['Smith & Co. sold a bed.', 'Co.'],
    ['Smith and Co sold a bed.', 'Co'],
    ['The van is from Brown Co.', 'Co'],
    ['Rev. Smith sat.', 'Rev.'],
    ['The Rev Brown sat.', 'Rev'],
  ])('%s', (text, words) => {
    const found = find(text)
    expect(found.join(' ').replaceAll('.', '')).toBe(words.replaceAll('.', ''))
    for (const word of found) expect(findAbbreviation(word, true)).toBeDefined()
  })
})

describe('a plain word', () => {
  it.each([
    // Shouted, or all in capitals.
    'LET US GO',
    'LET US GO! They ran.',
    'Let’s go with US!',
    'He gave US a bun.',
    'Gran gave US cake and gave THEM peas.',
    'Then Dad told US stories.',
    'They like US.',
    'I AM so glad.',
    'I AM 8.',
    'It is an AD for jam.',
    'You are IT!',
    'Can IT be so?',
    'IT ran off.',
    'Let US go, Mum.',
    'LA LA LA!',
    // In small letters.
    'Let us go to the us.',
    'I am six.',
    'At 8 I am in bed.',
    'At 8, am I in bed?',
    'A min is not long.',
    // No number is by it.
    'Sat on the mat, Tam had a nap.',
    'Jan ran.',
    'He met Jan and 5 men.',
    'The sun is hot.',
    // No name is by it.
    'Co sat.',
    'Rev the van.',
    'Rev it, Tam!',
    'A rev of the van.',
  ])('%s', (text) => {
    expect(find(text)).toEqual([])
  })
})
