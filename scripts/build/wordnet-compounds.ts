// Compounds that the dictionary lacks and WordNet has, with what they are put together of: `cufflink`, said as cuff and link.

import type { Transcription } from '../../src/phonics/arpabet.ts'
import { findBonds } from '../../src/phonics/guess/bonds.ts'
import { isPart, LEAST_LETTERS } from './compound-parts.ts'
import type { PartOfCompounds } from './compounds.ts'
import type { DictionaryWord } from './pronunciations.ts'
import type { WordNet } from './wordnet.ts'

export interface Compound {
  readonly word: string
  readonly first: string
  readonly last: string
}

/** Compounds that WordNet has and the dictionary lacks: one word, of two that stand in what it means, or in what it is a kind of. */
export function findWordnetCompounds(wordnet: WordNet, known: ReadonlySet<string>): readonly Compound[] {
  return [...wordnet.lemmas()]
    .filter((word) => /^[a-z]{6,16}$/.test(word) && !known.has(word) && !wordnet.isName(word))
    .flatMap((word) => {
      for (let at = LEAST_LETTERS; at <= word.length - LEAST_LETTERS; at++) {
        const [first, last] = [word.slice(0, at), word.slice(at)]
        if (isPart(first, wordnet) && isPart(last, wordnet) && isMeant(word, first, last, wordnet))
          return [{ word, first, last }]
      }
      return []
    })
}

/** Compounds of WordNet whose meaning names neither part, of two that go into many others: `hangnail`, `blackleg`, `handspring`. */
export function findJoinedCompounds(
  wordnet: WordNet,
  known: ReadonlySet<string>,
  parts: readonly PartOfCompounds[],
): readonly Compound[] {
  const byWord = new Map(parts.map((part) => [part.word, part]))
  const goesWith = (first: string, last: string, isTorn: boolean): boolean => {
    const [one, two] = [byWord.get(first)?.first ?? 0, Math.min(byWord.get(last)?.last ?? 0, 2)]
    return one > 0 && two > 0 && one + two >= (isTorn ? 4 : 3)
  }
  return [...wordnet.lemmas()]
    .filter((word) => /^[a-z]{6,16}$/.test(word) && !known.has(word) && !wordnet.isName(word))
    .flatMap((word) => {
      const bonds = findBonds(word)
      for (let at = word.length - LEAST_LETTERS; at >= LEAST_LETTERS; at--) {
        const [first, last] = [word.slice(0, at), word.slice(at)]
        if (goesWith(first, last, bonds.has(at))) return [{ word, first, last }]
      }
      return []
    })
}

/** `cufflink`: its meaning speaks of cuffs or links, or WordNet writes it in two words too. */
function isMeant(word: string, first: string, last: string, wordnet: WordNet): boolean {
  return wordnet.senses(word).some(({ pos, offset }) => {
    const { words, gloss, pointers } = wordnet.synset(pos, offset)
    const above = pointers
      .filter(({ symbol }) => symbol === '@')
      .flatMap((one) => wordnet.synset(one.pos, one.offset).words)
    const names = [...words, ...above].map((one) => one.toLowerCase())
    if (names.some((one) => one === `${first}_${last}` || one === `${first}-${last}`)) return true
    const text = ` ${gloss.toLowerCase()} ${names.join(' ').replaceAll('_', ' ')} `
    return new RegExp(`[^a-z](?:${first}|${last})(?:s|es|ed|ing)?[^a-z]`).test(text.replaceAll(word, ''))
  })
}

/** Compounds as the dictionary would have them: the first pronunciation of each part, the last part with the weaker stress. */
export function toDictionaryWords(
  compounds: readonly Compound[],
  dictionary: readonly DictionaryWord[],
): readonly DictionaryWord[] {
  const firsts = new Map(dictionary.map(({ word, transcriptions }) => [word, transcriptions[0]]))
  return compounds.flatMap(({ word, first, last }) => {
    const [one, two] = [firsts.get(first), firsts.get(last)]
    return one && two ? [{ word, transcriptions: [joinSounds(one, two)] }] : []
  })
}

const joinSounds = (one: Transcription, two: Transcription): Transcription => ({
  phones: [...one.phones, ...two.phones],
  stress: [...one.stress, ...two.stress.map((mark) => (mark === 1 ? 2 : mark))],
})
