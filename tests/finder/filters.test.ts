import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import {
  findWords,
  readQuery,
  toLetterPattern,
  toListPronunciation,
  toSoundPattern,
  type WordQuery,
  type WrittenQuery,
} from '../../src/finder/index.ts'
import { testPhonics } from '../lexicon-for-tests.ts'
import { SEQUENCES, testPool, testSequence, testWords } from './sources.ts'

const sequence = testSequence('series')
const phonics = testPhonics(sequence.accent)

function ask(step: string, written: WrittenQuery, more: WordQuery = {}) {
  const pool = testPool(sequence, step)
  const query = readQuery(written, { sequence, phonics, pool })
  if ('problem' in query) throw new Error(query.problem)
  return findWords(pool, { ...query, ...more }).words
}

const list = (step: string, written: WrittenQuery, more?: WordQuery): string[] =>
  ask(step, written, more).map(({ word }) => word)

describe('what a list is asked for', () => {
  it('takes a vowel letter alone for the sound that is taught first', () => {
    const words = list('pink-5', { vowel: 'o' })
    expect(words).toEqual(expect.arrayContaining(['dog', 'box', 'hot']))
    expect(words.every((word) => /^[^aeiou]*o[^aeiou]*$/.test(word))).toBe(true)
    // `son` and `won` have the letter and another sound.
    expect(words).not.toContain('won')
  })

  it('takes letters with an example for the sound of the example', () => {
    const bread = list('green-14', { with: 'ea as in bread' })
    expect(bread).toEqual(expect.arrayContaining(['head', 'feather']))
    expect(bread).not.toContain('sea')
    expect(list('green-14', { with: 'ea' })).not.toContain('head')
  })

  it('takes a sound between slashes, whatever its letters', () => {
    const words = list('green-14', { first: '/k/', length: '3' })
    expect(words).toEqual(expect.arrayContaining(['cat', 'kit', 'key']))
  })

  it('takes letters that say several sounds together for a cluster', () => {
    expect(list('green-2', { first: 'st' })).toEqual(expect.arrayContaining(['stop', 'stick']))
    expect(list('green-2', { last: 'nd' })).toEqual(expect.arrayContaining(['hand', 'end']))
    expect(list('green-2', { last: 'nd' })).not.toContain('handing')
  })

  it('takes an ending that is taught', () => {
    const words = list('green-14', { with: '-ing' }, { known: true })
    expect(words).toContain('running')
    expect(words).not.toContain('king')
  })

  it('asks for all of several spellings that a word must hold, and for one of several at its start', () => {
    expect(list('green-14', { with: 'sh,ee' })).toEqual(expect.arrayContaining(['sheep', 'sheet']))
    expect(list('green-14', { with: 'sh,ee' })).not.toContain('ship')
    const starts = list('pink-5', { first: 'c,h', vowel: 'a' })
    expect(new Set(starts.map((word) => word[0]))).toEqual(new Set(['c', 'h']))
  })

  it('knows patterns by sound and by letter', () => {
    const bySound = list('green-6', { pattern: 'CVC' })
    expect(bySound).toEqual(expect.arrayContaining(['cat', 'ship', 'cake', 'rain', 'quick']))
    expect(bySound).not.toContain('stop')
    const byLetter = list('green-6', { lettersPattern: 'CCVC' })
    expect(byLetter).toEqual(expect.arrayContaining(['ship', 'stop']))
    expect(byLetter).not.toContain('rain')
  })

  it('counts letters and syllables', () => {
    expect(list('green-14', { length: '3-4' }).every((word) => /^[a-z]{3,4}$/i.test(word.replace("'", '')))).toBe(true)
    expect(ask('green-14', { syllables: '2' }).every(({ pronunciation }) => pronunciation.syllables === 2)).toBe(true)
    expect(list('green-14', { syllables: '2' })).toContain('rabbit')
  })

  it('lists a word family by its letters and sounds', () => {
    expect(list('pink-2', { family: '-at' })).toEqual(expect.arrayContaining(['cat', 'hat', 'sat']))
    expect(list('green-14', { family: 'cat' })).toEqual(list('green-14', { family: '-at' }))
    // `what` has the letters of the family and another sound.
    expect(list('green-14', { family: '-at' })).not.toContain('what')
  })

  it('lists what can be named by a picture, and by an object', () => {
    const pictures = list('pink-5', { picture: true })
    expect(pictures).toEqual(expect.arrayContaining(['cat', 'hen', 'man', 'sun']))
    const objects = list('pink-5', { object: true })
    expect(objects).toEqual(expect.arrayContaining(['cat', 'cup', 'hat']))
    // Balloons, marbles and small round foods: the choking hazards named by the US Consumer Product Safety Commission, from memory.
    const late = list('green-14', { object: true })
    for (const word of ['balloon', 'marble', 'nut', 'grape', 'peanut', 'battery', 'knife', 'needle'])
      expect(late, word).not.toContain(word)
    for (const word of ['fun', 'big', 'job', 'dam']) expect(objects).not.toContain(word)
  })

  it('lists kinds of words, and known words alone', () => {
    expect(list('pink-5', { kind: 'describing' })).toEqual(expect.arrayContaining(['big', 'red', 'wet']))
    expect(list('pink-5', { kind: 'doing,describing' })).toContain('run')
    expect(ask('green-14', { known: true }).every(({ facts }) => facts.known >= 2)).toBe(true)
  })

  it('lists only what a step brings', () => {
    const words = ask('green-2', { newAtStep: true })
    expect(words.every(({ readableAt }) => readableAt === 'green-2')).toBe(true)
    expect(words.map(({ word }) => word)).toEqual(expect.arrayContaining(['rain', 'play', 'see']))
  })

  it('leaves out words of the shelf', () => {
    expect(list('pink-5', {}, { not: new Set(['dog', 'cat']) })).not.toContain('dog')
  })

  it('never lists a word known by heart for its sounds', () => {
    expect(list('pink-6', { with: 's' })).not.toContain('was')
    expect(list('pink-6', {})).toContain('was')
  })
})

describe('rhymes, against the pronouncing dictionary', () => {
  // The package cmu-pronouncing-dictionary 3.0.0: two words rhyme where all is the same from the last stressed vowel on.
  const file = new URL(import.meta.resolve('cmu-pronouncing-dictionary'))
  const entries = new Map<string, string>()
  for (const [, word, sounds] of readFileSync(file, 'utf8').matchAll(
    /^\s*["']?([a-z']+)["']?: ["']([A-Z0-9 ]+)["']/gm,
  )) {
    if (word && sounds && !entries.has(word)) entries.set(word, sounds)
  }
  const toRhyme = (word: string): string => /.*?([A-Z]+1.*)$/.exec(entries.get(word) ?? '')?.[1] ?? word

  it.each(['cat', 'rain', 'hop', 'light', 'moon', 'sheep', 'cake'])('rhymes with %s', (word) => {
    expect(entries.size).toBeGreaterThan(100_000)
    const found = list('green-14', { rhymesWith: word, syllables: '1', known: true })
    expect(found.length).toBeGreaterThan(4)
    expect(found.filter((other) => toRhyme(other) !== toRhyme(word))).toEqual([])
  })
})

describe('patterns of single words', () => {
  it.each([
    ['cat', 'CVC', 'CVC'],
    ['ship', 'CVC', 'CCVC'],
    ['cake', 'CVC', 'CVCV'],
    ['box', 'CVC', 'CVC'],
    ['quick', 'CVC', 'CVVCC'],
    ['stop', 'CCVC', 'CCVC'],
    ['yes', 'CVC', 'CVC'],
    ['happy', 'CVCV', 'CVCCV'],
    ['knee', 'CV', 'CCVV'],
    ['jumped', 'CVCCC', 'CVCCVC'],
  ])('%s is %s by sound and %s by letter', (word, sound, letter) => {
    expect(toLetterPattern(word)).toBe(letter)
    expect(toSoundPattern(toListPronunciation(phonics.read(word).pronunciations[0]))).toBe(sound)
  })
})

describe('mistakes', () => {
  it.each<[WrittenQuery, RegExp]>([
    [{ pattern: 'CXC' }, /--pattern is made of C/],
    [{ length: 'three' }, /--length is a number/],
    [{ vowel: 'é!' }, /is no spelling/],
    [{ with: 'ea as in xyzzy' }, /xyzzy/],
    [{ kind: 'namin' }, /Did you mean `naming`/],
    [{ count: '0' }, /--count is a whole number from 1/],
    [{ order: 'alphabetic' }, /Did you mean `alphabetical`/],
    [{ family: '?' }, /--family is an ending/],
  ])('tells %j in one line', (written, message) => {
    const answer = readQuery(written, { sequence, phonics, pool: testPool(sequence, 'pink-2') })
    expect('problem' in answer && answer.problem).toMatch(message)
  })
})

it.each(SEQUENCES)('takes every spelling that %s teaches for no mistake', (name) => {
  const taught = testSequence(name)
  const tools = {
    sequence: taught,
    phonics: testPhonics(taught.accent),
    pool: testPool(taught, taught.steps[0]?.id ?? ''),
  }
  const problems = taught.steps
    .flatMap(({ adds }) => adds.correspondences)
    .flatMap(({ letters, example }) => [letters, letters.replace('_', '-'), `${letters} as in ${example}`])
    .flatMap((text) => {
      const answer = readQuery({ with: text }, tools)
      return 'problem' in answer ? [answer.problem] : []
    })
  expect(problems).toEqual([])
})

describe('readers', () => {
  it('reads what a reader knows beyond the step, and leaves out what not yet', () => {
    const pool = testPool(sequence, 'pink-4', { extra: { sightWords: ['said', 'look'], sightWordsNotYet: ['the'] } })
    const words = findWords(pool).words.map(({ word }) => word)
    expect(words).toEqual(expect.arrayContaining(['said', 'look', 'cup']))
    expect(words).not.toContain('the')
  })

  it('lists by the engine what the table lists', () => {
    for (const step of ['pink-2', 'blue-2', 'green-3']) {
      const byTable = findWords(testPool(sequence, step), { known: true }).words.map(({ word }) => word)
      const byEngine = findWords(testPool(sequence, step, { isOwn: true }), { known: true }).words.map(
        ({ word }) => word,
      )
      expect(byEngine).toEqual(byTable)
    }
  })

  it('takes away letters that a reader does not know', () => {
    const pool = testPool(sequence, 'pink-5', { extra: { correspondencesNotYet: ['o=ɑ'] } })
    const words = findWords(pool, { known: true }).words.map(({ word }) => word)
    expect(words).toContain('cat')
    expect(words.filter((word) => /^[^aeiou]o[^aeiou]$/.test(word))).toEqual([])
  })
})

it('lists no unfit word where a project adds one, and one that a school clears', () => {
  const unfit = testWords().fitness({ add: ['cat'] })
  expect(unfit.isFit('cats')).toBe(false)
})
