// Finds entries of the dictionary that are likely wrong: the guesser, taught without them, and an independent voice both say otherwise.
//
//   npm run accuracy -- doubts    a line each: word, the dictionary's sounds, the guesser's, the voice's; to be judged by hand

import { readFileSync } from 'node:fs'
import { countEdits } from '../../src/edits.ts'
import { type Guess, guessPaths } from '../../src/phonics/guess/guess.ts'
import { openModel } from '../../src/phonics/guess/model.ts'
import { type RowSet, toRowSet } from '../../src/phonics/lattice.ts'
import { readRows } from '../../src/phonics/rows.ts'
import { frequencyRank } from '../build/frequency.ts'
import { CORRECTIONS, type DictionaryWord, readCorrections, readDictionary } from '../build/pronunciations.ts'
import { teachGuesser, toPhones } from './teach-guesser.ts'

const VOICE = 'en-us'
/** Each word is guessed by a model that was taught without a third of the words. */
const FOLDS = 3
/** Rarer words are not looked at. */
const MOST_RANK = 40_000
/** The guesser must be so sure of what it says. */
const LEAST_SHARE = 0.8
const BATCH = 50

export interface Doubt {
  readonly word: string
  readonly ours: string
  readonly guessed: string
  readonly voice: string
}

const readData = (name: string): string =>
  readFileSync(new URL(`../../src/phonics/data/${name}`, import.meta.url), 'utf8')

export async function findDoubts(): Promise<readonly Doubt[]> {
  const rows = readRows(readData('correspondences.tsv'))
  const set = toRowSet(rows)
  const rewritten = CORRECTIONS.flatMap((name) => readCorrections(readData(name)))
  const corrected = new Set(rewritten.map(({ word }) => word))
  const words = readDictionary().words.filter(({ word }) => !word.includes("'") && !corrected.has(word))
  const doubted = Array.from({ length: FOLDS }, (_, fold) => doubtFold(words, fold, set)).flat()
  const { phonemize } = await import('phonemizer')
  const found: Doubt[] = []
  for (let at = 0; at < doubted.length; at += BATCH) {
    const batch = doubted.slice(at, at + BATCH)
    const said = await phonemize(`${batch.map(({ word }) => word).join('\n\n')}\n\n`, VOICE)
    batch.forEach((one, k) => {
      // The voice must be with the guesser and against the dictionary, in the frame of the word or in its vowels.
      if (isNearer(said[k] ?? '', one)) found.push({ ...one, voice: said[k] ?? '' })
    })
  }
  return found.sort((x, y) => (frequencyRank.get(x.word) ?? 0) - (frequencyRank.get(y.word) ?? 0))
}

type Doubted = Omit<Doubt, 'voice'>

function doubtFold(words: readonly DictionaryWord[], fold: number, set: RowSet): readonly Doubted[] {
  const taught = words.filter((_, at) => at % FOLDS !== fold)
  const model = openModel(teachGuesser(taught, set, 3))()
  const toSounds = (guess: Guess): string => toPhones(guess, set).join(' ')
  return words
    .filter(({ word }, at) => at % FOLDS === fold && (frequencyRank.get(word) ?? Infinity) < MOST_RANK)
    .flatMap(({ word, transcriptions }): readonly Doubted[] => {
      const guesses = guessPaths(set, model, word, 4)
      const listed = transcriptions.map(({ phones }) => phones.join(' '))
      const [best] = guesses
      if (!best || best.share < LEAST_SHARE) return []
      const isKnown = listed.some((one) => guesses.some((guess) => toLoose(toSounds(guess)) === toLoose(one)))
      return isKnown ? [] : [{ word, ours: listed.join(' / '), guessed: toSounds(best) }]
    })
}

/** Sounds without what dictionaries differ in anyway. */
const toLoose = (sounds: string): string =>
  sounds
    .replace(/\b(AH|IH|EH|UH)\b/g, 'AH')
    .replace(/\bAO\b/g, 'AA')
    .replace(/\b(IH|IY|AH) R\b/g, 'IH R')
    .replace(/\bY UW\b/g, 'UW')

const SIGNS: Readonly<Record<string, string>> = {
  AA: 'ɑ',
  AE: 'æ',
  AH: 'ə',
  AO: 'ɑ',
  AW: 'aʊ',
  AY: 'aɪ',
  CH: 'tʃ',
  DH: 'ð',
  EH: 'ɛ',
  ER: 'ər',
  EY: 'eɪ',
  HH: 'h',
  IH: 'ə',
  IY: 'i',
  JH: 'dʒ',
  NG: 'ŋ',
  OW: 'oʊ',
  OY: 'ɔɪ',
  SH: 'ʃ',
  TH: 'θ',
  UH: 'ʊ',
  UW: 'u',
  Y: 'j',
  ZH: 'ʒ',
}

const toIpa = (sounds: string): string =>
  sounds
    .split(' ')
    .map((one) => SIGNS[one] ?? one.toLowerCase())
    .join('')

const toCommon = (ipa: string): string =>
  ipa
    .replace(/[ˈˌː]/g, '')
    .replace(/ɹ/g, 'r')
    .replace(/[ɚɜ]r?/g, 'ər')
    .replace(/ɔ(?!ɪ)|ɒ/g, 'ɑ')
    .replace(/ɡ/g, 'g')
    .replace(/ɾ/g, 't')
    .replace(/ᵻ|ɐ|ʌ|(?<![aeɔ])ɪ/g, 'ə')

const isNearer = (said: string, { ours, guessed }: Doubted): boolean => {
  const voice = toCommon(said)
  const listed = Math.min(...ours.split(' / ').map((one) => toDistance(one, voice)))
  return toDistance(guessed, voice) < listed
}

/** In signs of speech: a vowel of two signs counts as two. */
const toDistance = (sounds: string, voice: string): number => countEdits([...toCommon(toIpa(sounds))], [...voice])
