// What the lexicon holds and General American says, word by word against the CMU Pronouncing Dictionary (npm
// `cmu-pronouncing-dictionary`), which is read here without the lexicon: the stem of `cats` and its ending say what the
// dictionary has under `cats`. Sounds in IPA as the usual table of ARPAbet gives them, from memory.

import { readFileSync } from 'node:fs'
import { dictionary } from 'cmu-pronouncing-dictionary'
import { describe, expect, it } from 'vitest'
import { mend, readCorrections } from '../../scripts/build/pronunciations.ts'
import { hashText } from '../../src/hash.ts'
import { type Transcription, toTranscription } from '../../src/phonics/arpabet.ts'
import { testLexicon, testPhonics, testSpelling } from '../lexicon-for-tests.ts'

const corrections = ['corrections.tsv', 'class-names.tsv'].flatMap((name) =>
  readCorrections(readFileSync(new URL(`../../src/phonics/data/${name}`, import.meta.url), 'utf8')),
)
const corrected = new Set(corrections.map(({ word }) => word))

/** Stored as a stem with an ending: `cats`, `stopped`. */
const isEnded = (word: string): boolean => 'ending' in (testLexicon().find(word) ?? {})

/** Every transcription under `word`, `word(2)` and so on; none for a word that the project corrects. */
const transcribe = (word: string): readonly Transcription[] =>
  corrected.has(word)
    ? []
    : ['', '(2)', '(3)', '(4)', '(5)']
        .flatMap((nth) => dictionary[word + nth] ?? [])
        .map((sounds) => mend(word, toTranscription(sounds.replace(/ #.*/, ''))))

/** Drawn by a number for each word, so that a new word in the lexicon leaves the others drawn. */
const draw = (isWanted: (word: string, drawn: number) => boolean): readonly string[] =>
  testLexicon()
    .words()
    .filter((word) => isWanted(word, hashText(word)) && transcribe(word).length > 0)

describe('words with an ending', () => {
  // A weak vowel is written IH or AH, and `le` with a vowel or without one, as it comes: `blanket` and `blanketed` differ in that, and
  // `replace` and `replaces`, `admire` and `admired` in their beginnings.
  const loose = (phones: readonly string[]): string =>
    phones
      .join(' ')
      .replace(/^([BDR] |P R )IY\b/, '$1AH')
      .replace(/\b(?:IH|EH)\b/g, 'AH')
      .replaceAll('AO', 'AA')
      .replace(/\bAH (?=[LN]\b)/g, '')
      .replace(/^AE (?=D )/, 'AH ')

  /** Every seventh with a plain ending; all in which the ending changes the word, of which some kinds are few. */
  it('say what the dictionary says', () => {
    const words = draw((word, drawn) => (drawn % 7 === 0 || /(?:i(?:e[drs]|est)|ying)$/.test(word)) && isEnded(word))
    expect(words.length).toBeGreaterThan(3000)
    expect(words).toEqual(expect.arrayContaining(['tying', 'happier', 'happiest', 'tried', 'tries']))
    const wrong = words.filter((word) => {
      const said = transcribe(word).map(({ phones }) => loose(phones))
      return testSpelling()
        .spell(word)
        .cuttings.some(({ raw }) => !said.includes(loose(raw.units.flatMap(({ phones }) => phones))))
    })
    // Each has two forms, of which the dictionary knows one.
    expect(wrong.filter((word) => !/^(?:rows|sows|used)$/.test(word))).toEqual([])
  })
})

describe('General American', () => {
  const PAIRS =
    'AA ɑ AE æ AH ʌ AO ɔ AW aʊ AY aɪ EH ɛ ER ɜr EY eɪ IH ɪ IY iː OW oʊ OY ɔɪ UH ʊ UW uː B b CH tʃ D d DH ð F f G ɡ HH h ' +
    'JH dʒ K k L l M m N n NG ŋ P p R r S s SH ʃ T t TH θ V v W w Y j Z z ZH ʒ'
  const IPA = new Map([...PAIRS.matchAll(/(\S+) (\S+)/g)].map(([, arpabet = '', ipa = '']) => [arpabet, ipa]))
  const WEAK: Readonly<Record<string, string>> = { AH: 'ə', ER: 'ər' }

  const toIpa = ({ phones, stress }: Transcription): string => {
    let vowels = 0
    return phones
      .map((phone) => {
        const mark = /^[AEIOU]/.test(phone) ? stress[vowels++] : undefined
        return (mark === 0 ? WEAK[phone] : undefined) ?? IPA.get(phone) ?? '?'
      })
      .join('')
  }
  // The glide of `usual` and `visual` is no sound of its own; nor is the weak u of a word of seven syllables told from a strong one.
  const withoutGlide = (ipa: string): string => ipa.replace(/(?:ə|uː)w(?=[əeɛaɑ])/g, 'uː').replace('aʊw', 'aʊ')

  const toLevel = (ipa: string, word: string): string => (word.length > 15 ? ipa.replaceAll('ʌ', 'ə') : ipa)

  /** The stress of each vowel in turn: `ˈræbɪt` is 1 0. */
  const toPattern = (ipa: string): string =>
    [...ipa.matchAll(/([ˈˌ]?)[^ˈˌ]*?(?:aʊ|aɪ|eɪ|oʊ|ɔɪ|[iu]ː|[ɜə]r?|[ɑæʌɔɛɪʊ])/g)]
      .map(([, mark = '']) => ({ ˈ: 1, ˌ: 2 })[mark] ?? 0)
      .join('')

  // `un` is read in full, whatever the dictionary has, and of two words that are spelt alike it may know one.
  const drawPlain = () =>
    draw(
      (word, drawn) =>
        drawn % 23 === 0 && !isEnded(word) && !/^un/.test(word) && testLexicon().heteronyms.find(word) === undefined,
    )
  const read = (word: string) => testPhonics('general-american').read(word).pronunciations

  it('says the sounds of the dictionary', () => {
    // A surname of one vowel is read by its letters where it is written small: `litz`.
    const words = drawPlain().filter((word) => testPhonics('general-american').read(word).source === 'dictionary')
    expect(words.length).toBeGreaterThan(3400)
    const wrong = words.flatMap((word) => {
      const said = transcribe(word).map((one) => toLevel(withoutGlide(toIpa(one)), word))
      const ours = read(word).map(({ ipa }) => toLevel(withoutGlide(ipa.replace(/[ˈˌ]/g, '')), word))
      return ours.filter((ipa) => !said.includes(ipa)).map((ipa) => `${word}: ${ipa}, not ${said}`)
    })
    // The dictionary gives the weak u of its `ual` a glide; here it is the u of `usual`.
    expect(wrong.filter((one) => !one.startsWith('homosexual:'))).toEqual([])
  })

  it('stresses the syllables that the dictionary stresses', () => {
    const wrong = drawPlain().flatMap((word) => {
      const said = transcribe(word).map(({ stress }) => stress.join(''))
      // Of the longest words the file keeps the main stress alone.
      const toKept = (pattern: string): string => (pattern.length > 4 ? pattern.replaceAll('2', '0') : pattern)
      return read(word)
        .filter(({ syllables }) => syllables.length > 1)
        .filter(({ ipa }) => !said.map(toKept).includes(toKept(toPattern(ipa))))
        .map(({ ipa }) => `${word}: ${ipa}, not ${said}`)
    })
    // The `ier` of two is one unit of two vowels, which is stressed on the first; in the third an /ɔ/ stands before an /ɪ/.
    expect(wrong.filter((one) => !/^(?:bouvier|gaudier|redrawing):/.test(one))).toEqual([])
  })
})
