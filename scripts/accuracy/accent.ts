// Compares the Southern British pronunciations with an independent general-purpose synthesiser, over the words most used.

import type { Phonics, Pronunciation } from '../../src/phonics/types.ts'
import { frequencyRank } from '../build/frequency.ts'

const VOICE = 'en-gb-x-rp'
const WORDS = 5000
const BATCH = 50

export interface AccentFigures {
  readonly words: number
  readonly agreed: number
  /** The words that differ, most used first. */
  readonly differing: readonly { readonly word: string; readonly ours: readonly string[]; readonly theirs: string }[]
}

export async function measureAccent(phonics: Phonics): Promise<AccentFigures> {
  const words = findMostUsed(phonics)
  return compareAccent(phonics, words, await sayAll(words))
}

/** @param said what the synthesiser makes of each word */
export function compareAccent(phonics: Phonics, words: readonly string[], said: readonly string[]): AccentFigures {
  const differing = words.flatMap((word, at) => {
    const theirs = said[at] ?? ''
    const { pronunciations } = phonics.read(word)
    const isAgreed = pronunciations.some((pronunciation) => ourSymbols(pronunciation) === theirSymbols(theirs))
    return isAgreed ? [] : [{ word, ours: pronunciations.map(({ ipa }) => ipa), theirs }]
  })
  return { words: words.length, agreed: words.length - differing.length, differing }
}

/** Each word is a paragraph, so that no word stands in another's company. Throws where the voice drops one. */
export async function sayAll(words: readonly string[]): Promise<readonly string[]> {
  const { phonemize } = await import('phonemizer')
  const said: string[] = []
  for (let at = 0; at < words.length; at += BATCH) {
    const batch = words.slice(at, at + BATCH)
    const lines = await phonemize(`${batch.join('\n\n')}\n\n`, VOICE)
    if (lines.length !== batch.length) throw new Error(`the voice said ${lines.length} of ${batch.length} words`)
    said.push(...lines)
  }
  return said
}

function findMostUsed(phonics: Phonics): readonly string[] {
  const words = [...frequencyRank].sort((x, y) => x[1] - y[1]).map(([word]) => word)
  return words
    .filter((word) => /^[a-z]{2,}$/.test(word))
    .filter((word) => phonics.read(word).source === 'dictionary')
    .slice(0, WORDS)
}

/** One sign for every vowel worn down outside the main stress: which of ə ɪ ʊ it is depends on who wrote the dictionary. */
const WEAK = 'ə'

const ourSymbols = ({ units }: Pronunciation): string => {
  const isLong = units.filter(({ vowel }) => vowel).length > 1
  return toCommon(units.map((unit) => (isLong && unit.stress !== 1 ? wearDown(unit.sound) : unit.sound)).join(''))
}

// The voice puts the stress mark right before its vowel.
const theirSymbols = (ipa: string): string => {
  const plain = ipa.replace(/ɹ/g, 'r').replace(/ɐ/g, WEAK).replace(/ˌ/g, '')
  return toCommon(wearDown(plain).replace(/ˈ/g, ''))
}

/** Diphthongs hold ɪ and ʊ too, and keep them. */
const wearDown = (ipa: string): string => ipa.replace(/(?<![ˈaeɔə])(iː|uː|ɪ|ʊ|i|u)(?!ə)/g, WEAK)

/** Length marks go; NURSE is a long schwa, CURE is said as THOUGHT by most, and a weak i before a vowel is a glide. */
const toCommon = (ipa: string): string =>
  ipa
    .replace(/ː/g, '')
    .replace(/eə/g, 'ɛə')
    .replace(/ʊə/g, 'ɔ')
    .replace(/ɜ/g, WEAK)
    .replace(/(iə|ɪə|əə|jə)/g, `i${WEAK}`)
