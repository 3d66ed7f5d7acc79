// How a form of a look-alike is picked: by phrase, by class, by topic and by its capital, over a small table of its own; and how a sentence is
// looked at round a word. Common practice, no source.

import { describe, expect, it } from 'vitest'
import { cutWords } from '../../scripts/build/heteronyms/examples.ts'
import {
  findByCase,
  findByPhrase,
  findForm,
  findUsual,
  isOpenName,
  toCandidates,
} from '../../src/phonics/heteronyms/choose.ts'
import { hasHelper } from '../../src/phonics/heteronyms/clause.ts'
import { findLongestPhrase } from '../../src/phonics/heteronyms/phrases.ts'
import { beforeIndex, findBefore, isEdge, isMark, isName, toPlace } from '../../src/phonics/heteronyms/place.ts'
import { isSpoken, withoutSpeech } from '../../src/phonics/heteronyms/speech.ts'
import { NO_HETERONYMS, openHeteronyms, writeHeteronyms } from '../../src/phonics/heteronyms/table.ts'
import { loadTagger } from '../../src/phonics/heteronyms/tagger.ts'
import type { Heteronym, HeteronymForm } from '../../src/phonics/heteronyms/types.ts'
import { isPast, isPresent, isTenseless } from '../../src/phonics/heteronyms/verbs.ts'

/** The word in stars, in its sentence. */
const at = (text: string) =>
  toPlace(cutWords(text.replaceAll('*', '')), cutWords(text.slice(0, text.indexOf('*'))).length)

const form = (name: string, classes: HeteronymForm['classes'], more: Partial<HeteronymForm> = {}): HeteronymForm => ({
  form: name,
  classes,
  sounds: 'B AW1',
  meaning: name,
  ...more,
})
const row = (...forms: HeteronymForm[]): Heteronym => ({ word: 'bow', forms }) as Heteronym

const BOW = row(
  form('knot', ['noun'], { phrases: ['tie a _', 'a red _', 'a _ and arrow', 'bow _'], topics: 'ribbon arrow' }),
  form('bend', ['verb', 'noun'], { phrases: ['take a _', 'take a low _', 'a _ and arrow'], topics: 'king stage' }),
)
const POLISH = row(form('shine', ['verb', 'noun']), form('Polish', ['adjective'], { written: 'capital' }))
const READING = row(
  form('books', ['noun', 'verb']),
  form('town', [], { written: 'capital', phrases: ['_ station', 'train to _'] }),
)
const TEAR = row(form('eye', ['noun']), form('rip', ['noun'], { topics: 'coat' }))

describe('the forms that are left open', () => {
  const names = (...given: Parameters<typeof toCandidates>) => toCandidates(...given).map((one) => one.form)

  it('are those of the classes, and all where nothing is known', () => {
    expect(names(BOW, ['verb'])).toEqual(['bend'])
    expect(names(BOW, ['noun'])).toEqual(['knot', 'bend'])
    expect(names(BOW, ['adjective', 'verb'])).toEqual(['bend'])
    expect(names(BOW, ['adverb'])).toEqual([])
    expect(names(BOW, undefined)).toEqual(['knot', 'bend'])
  })
})

describe('a form', () => {
  it.each([
    ['They *bow* to us.', ['verb'], 'bend'],
    ['They *bow* to us.', ['noun'], undefined],
    ['They *bow* to us.', undefined, undefined],
    ['I tie a *bow*.', ['noun'], 'knot'],
    ['I tie a *bow*.', undefined, 'knot'],
    ['I tie a *bow*.', ['verb'], 'knot'],
    ['I take a low *bow*.', ['verb'], 'bend'],
    ['See bow *bow*.', ['verb'], undefined],
    ['See bow *bow*.', ['noun'], 'knot'],
    ['A *bow* and arrow.', ['noun'], undefined],
    ['The *bow* of her ribbon.', ['noun'], 'knot'],
    ['The *bow* before the king.', ['noun'], 'bend'],
    ['The *bow* of ribbon for the king.', ['noun'], undefined],
    ['The *bow*, ribbon, bow.', ['noun'], undefined],
    ['The *bow* of her ribbon.', undefined, undefined],
  ] as const)('in “%s” with %j: %s', (text, classes, expected) => {
    expect(findForm(BOW, at(text), classes)).toBe(expected)
  })

  it('of one class only is told by its topic, whatever the neighbours say', () => {
    expect(findForm(TEAR, at('A *tear* in my coat.'), undefined)).toBe('rip')
    expect(findForm(TEAR, at('A *tear* in my eye.'), undefined)).toBeUndefined()
    expect(findForm(TEAR, at('A *tear* in my coat.'), ['noun'])).toBe('rip')
    expect(findForm(TEAR, at('A *coat*.'), ['noun'])).toBeUndefined()
  })

  it('without a class is told by a phrase alone', () => {
    expect(findForm(READING, at('The *Reading* station.'), ['verb'])).toBe('town')
    expect(findByPhrase(READING, at('a train to *Reading*'))).toBe('town')
    expect(findByPhrase(READING, at('a train from *Reading*'))).toBeUndefined()
    expect(findByPhrase(BOW, at('A *bow* and arrow.'))).toBeUndefined()
  })
})

describe('the usual form', () => {
  const usual = { ...row(form('noun', ['noun']), form('verb', ['verb'])), otherwise: 'noun' } as Heteronym
  const other = { ...row(form('noun', ['noun']), form('near', ['adjective'])), otherwise: 'noun' } as Heteronym

  it.each([
    ['A *bow* sank.', 'noun'],
    ['They *bow* the tree.', undefined],
    ['Trees *bow* here.', undefined],
    ['Those *bow* here.', 'noun'],
    ['These *bow* here.', 'noun'],
    ['His *bow* here.', 'noun'],
    ['As *bow* here.', 'noun'],
    ['Glass *bow* here.', 'noun'],
    ["Tam's *bow* here.", 'noun'],
    ['*bow* here.', 'noun'],
  ])('in “%s” is %s', (text, expected) => {
    expect(findUsual(usual, at(text))).toBe(expected)
    expect(findUsual(other, at(text))).toBe('noun')
  })
})

describe('a capital', () => {
  it.each([
    ['We *polish* the pan.', 'shine'],
    ['We like *Polish* soup.', 'Polish'],
    ['*Polish* the pan.', undefined],
    ['We like *POLISH* soup.', undefined],
    ['The Grand *Polish* Cake', undefined],
    ['The Grand *Polish* cake', 'Polish'],
    ['Sit. *Polish* the pan.', undefined],
  ])('in “%s”: %s', (text, expected) => {
    expect(findByCase(POLISH, at(text))).toBe(expected)
    expect(findByCase(BOW, at(text))).toBeUndefined()
  })

  it.each([
    ['We came to *Reading* Station today.', true],
    ['We came to *Reading* station today.', false],
    ['We came to *reading* Station today.', false],
    ['*Reading* Station is here today.', false],
    ['They Came To *Reading* Station', false],
  ])('in “%s” begins an open name: %s', (text, expected) => {
    expect(isOpenName(READING, at(text))).toBe(expected)
    expect(isOpenName(BOW, at(text))).toBe(false)
    if (expected) expect(findByCase(READING, at(text))).toBeUndefined()
  })

  it('no word at all is of no form', () => {
    expect(findByCase(POLISH, toPlace(['a'], 5))).toBeUndefined()
  })
})

describe('a phrase', () => {
  it.each([
    ['made of _', 'It was made of *lead*.', 3],
    ['made of _', 'It was made by *lead*.', 0],
    ['made of _', 'of *lead*', 0],
    ['take/takes a _', 'He takes a *bow*.', 3],
    ['_ * the', 'They *close* up the shop.', 3],
    ['_ * the', 'They *close*, the shop.', 0],
    ['_ .', 'It was *close*.', 2],
    ['_ .', 'It was *close*', 2],
    ['_ .', 'It was *close* to me.', 0],
    ['. _', '*Close* it.', 2],
    ['@be _', "It's *close*.", 2],
    ['@be _', 'It sat *close*.', 0],
    ['@det _', 'The *close*.', 2],
    ['@det _', 'Of *close*.', 0],
    ['@poss _', 'His *bow*.', 2],
    ['@poss _', 'The *bow*.', 0],
    ['@number _', 'Two *does*.', 2],
    ['@number _', '12 *does*.', 2],
    ['@number _', 'x1 *does*.', 0],
    ['@number _', '1x *does*.', 0],
    ['@pron _', 'She *does*.', 2],
    ['@pron _', 'The *does*.', 0],
    ['@plural _', 'They *use*.', 2],
    ['@plural _', 'She *use*.', 0],
    ['@name _', 'With Meg *use*.', 2],
    ['@name _', 'With cats *use*.', 0],
  ])('%s in “%s”: %i words', (pattern, text, expected) => {
    expect(findLongestPhrase([pattern], at(text))).toBe(expected)
  })

  it('counts the longest', () => {
    expect(findLongestPhrase(['_', 'made of _', 'of _'], at('It was made of *lead*.'))).toBe(3)
    expect(findLongestPhrase([], at('It was made of *lead*.'))).toBe(0)
  })

  it('of an unknown group is an error of the table', () => {
    expect(() => findLongestPhrase(['@noun _'], at('The *bow*.'))).toThrow('unknown group @noun')
  })
})

describe('round a word', () => {
  it.each([
    ['I still *use* it.', 'i', undefined],
    ['I strongly *use* it.', 'i', undefined],
    ['We all still *use* it.', 'we', undefined],
    ['A silly *use*.', 'silly', 'a'],
    ['A fly *use*.', 'fly', 'a'],
    ['A ugly *use*.', 'ugly', 'a'],
    ['Not *use*.', undefined, undefined],
    ['*Use* it.', undefined, undefined],
    ['Go now, men *use* it.', 'men', ','],
  ])('“%s”: before it stands %s, and before that %s', (text, first, second) => {
    expect([findBefore(at(text)), findBefore(at(text), 2)]).toEqual([first, second])
  })

  it('nothing stands before the first word', () => {
    expect(beforeIndex(at('*Use* it.'))).toBe(-1)
    expect(beforeIndex(at('*Use* it.'), 3)).toBe(-1)
    expect(beforeIndex(at('Still *use* it.'))).toBe(-1)
    expect(beforeIndex(at('I *use* it.'))).toBe(0)
  })

  it('a mark and an edge', () => {
    expect(['.', '“', undefined, '-', "'"].map(isMark)).toEqual([true, true, true, true, true])
    expect(['cat', '7', 'é'].map(isMark)).toEqual([false, false, false])
    expect(['.', undefined, '-', "'", 'cat'].map(isEdge)).toEqual([true, true, false, false, false])
  })

  it.each([
    ['with Meg', 1, true],
    ['Meg sat', 0, false],
    ['with MEG', 1, false],
    ['with meg', 1, false],
    ['with iMeg', 1, false],
    ['sit. Meg', 2, false],
    ['with M', 1, false],
    ['with Meg', 2, false],
    ['with Meg', -1, false],
  ])('a name in “%s” at %i: %s', (text, place, expected) => {
    expect(isName(toPlace(cutWords(text), 0), place)).toBe(expected)
  })

  it.each([
    ['Did the old men *read* it?', true],
    ['Had the men *read* it?', true],
    ['Is the man *read* it?', true],
    ['Let the men *read* it.', true],
    ['Made the men *read* it.', true],
    ['I saw the men *read* it.', true],
    ['The old men *read* it.', false],
    ['I did, the men *read* it.', false],
    ['I did but the men *read* it.', false],
    ['*Read* it.', false],
  ])('a helper in “%s”: %s', (text, expected) => {
    expect(hasHelper(at(text))).toBe(expected)
  })

  it('what is spoken', () => {
    const words = cutWords('“Go,” he said. "Now" or “no')
    expect(
      words
        .map((_, place) => isSpoken(words, place))
        .map(Number)
        .join(''),
    ).toBe('11100001100' + '11')
    expect(withoutSpeech(cutWords('“Go,” he said.')).join(' ')).toBe('” he said .')
  })
})

describe('the tense of a verb', () => {
  it('is seen in its spelling', () => {
    const past = 'was had sat ran came taught fed lit tore swung hopped rained wanted needed'
    expect(past.split(' ').filter((word) => !isPast(word))).toEqual([])
    const not = 'is sit bed red feed need seed bleed freed indeed hundred naked wicked speed weed sled shed shred edit'
    expect(not.split(' ').filter(isPast)).toEqual([])
    expect(isPast(undefined)).toBe(false)
    expect(['is', 'likes', 'snows', "it's"].every(isPresent)).toBe(true)
    expect(['was', 'hop', undefined].some(isPresent)).toBe(false)
    expect(['put', 'read', 'hurt'].every(isTenseless)).toBe(true)
    expect(['sat', 'sit', undefined].some(isTenseless)).toBe(false)
  })
})

describe('the table in the lexicon file', () => {
  it('finds what was written, in any case, and nothing else', () => {
    const rows = [BOW, { ...POLISH, word: 'polish' }]
    // Notes and examples stay in the files.
    const written = rows.map((one) => ({ ...one, note: 'n', forms: one.forms.map((of) => ({ ...of, example: 'e' })) }))
    const found = openHeteronyms(writeHeteronyms(written))
    expect(found.find('bow')).toEqual(BOW)
    expect(found.find('Polish')).toEqual(rows[1])
    expect(found.find('polish')).toBe(found.find('POLISH'))
    expect(['', 'bo', 'bow\t', 'cat'].map((word) => found.find(word))).toEqual([
      undefined,
      undefined,
      undefined,
      undefined,
    ])
    expect(openHeteronyms('').find('')).toBeUndefined()
    expect(NO_HETERONYMS.find('bow')).toBeUndefined()
  })
})

// Against compromise, a general-purpose tagger: each word has the tags of its own term, whatever was joined or parted.
describe('the tagger', () => {
  const TAGS = 'Noun Verb Adjective Pronoun Determiner Conjunction Preposition'.split(' ')

  it.each([
    ["The cat doesn't sit.", 'Determiner,Noun,Verb,Verb,-'],
    ['The hens ran, and “Meg” sat.', 'Determiner,Noun,Verb,-,Conjunction,-,Noun,-,Verb,-'],
    ['The hen’s egg fell !', 'Determiner,Noun,Noun,Verb,-'],
  ])('“%s”', async (text, expected) => {
    const tags = (await loadTagger())(cutWords(text))
    const named = tags.map((one) => TAGS.find((tag) => one.has(tag)) ?? '-')
    expect(named.join()).toBe(expected)
  })
})
