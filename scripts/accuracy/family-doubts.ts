// Finds entries of the dictionary that are said otherwise than the word that they are made of: `cyclones`, but `cyclone`.
//
//   npm run accuracy -- family    a line each: word, its sounds, what its stem makes likely; to be judged by hand

import { findInflections, inflect } from '../../src/phonics/inflect.ts'
import type { RawUnit } from '../../src/phonics/raw.ts'
import { frequencyRank } from '../build/frequency.ts'
import { loadWordnet, type WordNet } from '../build/wordnet.ts'
import type { Engine } from './engine.ts'

/** Rarer words are not looked at. */
const MOST_RANK = 60_000
const LEAST_STEM = 3

export interface FamilyDoubt {
  readonly word: string
  readonly ours: readonly string[]
  readonly stem: string
  readonly likely: readonly string[]
}

/** Endings of words that are words of their own, with their sounds. */
const MADE: readonly (readonly [ending: string, sounds: string])[] = [
  ['ful', 'F AH L'],
  ['less', 'L AH S'],
  ['ly', 'L IY'],
  ['ment', 'M AH N T'],
  ['ness', 'N AH S'],
]
const BEGINNINGS: readonly (readonly [beginning: string, sounds: string])[] = [
  ['dis', 'D IH S'],
  ['mis', 'M IH S'],
  ['over', 'OW V ER'],
  ['re', 'R IY'],
  ['un', 'AH N'],
]

export function findFamilyDoubts({ lexicon, spelling }: Pick<Engine, 'lexicon' | 'spelling'>): readonly FamilyDoubt[] {
  const wordnet = loadWordnet()
  const say = (word: string): readonly string[] => spelling.spell(word).cuttings.map(({ raw }) => toSounds(raw.units))
  const isStem = (stem: string): boolean =>
    stem.length >= LEAST_STEM && lexicon.indexOf(stem) >= 0 && !wordnet.isName(stem)
  return lexicon.words().flatMap((word): readonly FamilyDoubt[] => {
    const stored = lexicon.find(word)
    const isRare = (frequencyRank.get(word) ?? Infinity) > MOST_RANK
    if (isRare || !stored || !('pronunciations' in stored) || lexicon.heteronyms.find(word)) return []
    const ours = say(word)
    const likely = [...findInflected(word), ...findMade(word)]
    const isSaid = likely.some((one) =>
      one.likely.some((sounds) => ours.some((own) => toLoose(own) === toLoose(sounds))),
    )
    return isSaid ? [] : likely.slice(0, 1).map((one) => ({ word, ours, ...one }))
  })

  function findInflected(word: string): readonly Omit<FamilyDoubt, 'word' | 'ours'>[] {
    return findInflections(word).flatMap((inflection) => {
      if (!isStem(inflection.stem) || !takes(inflection.stem, inflection.ending, wordnet)) return []
      const likely = spelling
        .spell(inflection.stem)
        .cuttings.flatMap(({ raw }) => inflect(raw, inflection.stem.length, inflection) ?? [])
      return likely.length === 0 ? [] : [{ stem: inflection.stem, likely: likely.map(({ units }) => toSounds(units)) }]
    })
  }

  function findMade(word: string): readonly Omit<FamilyDoubt, 'word' | 'ours'>[] {
    const ends = MADE.flatMap(([ending, sounds]) => {
      if (!word.endsWith(ending)) return []
      const stem = word.slice(0, -ending.length)
      return [stem, stem.replace(/i$/, 'y')].filter(isWord).map((one) => ({
        stem: one,
        likely: say(one).map((own) => joinEnding(own, sounds)),
      }))
    })
    const starts = BEGINNINGS.flatMap(([beginning, sounds]) => {
      const stem = word.slice(beginning.length)
      if (!word.startsWith(beginning) || !isWord(stem)) return []
      return [{ stem, likely: say(stem).map((own) => `${sounds} ${own}`) }]
    })
    return [...ends, ...starts]
  }

  function isWord(stem: string): boolean {
    return isStem(stem) && (wordnet.isAdjective(stem) || wordnet.isNoun(stem) || wordnet.isVerb(stem))
  }
}

const toSounds = (units: readonly Pick<RawUnit, 'phones'>[]): string => units.flatMap(({ phones }) => phones).join(' ')

/** `fully`: of two l only one is heard; `happily`: the weak y before l. */
const joinEnding = (sounds: string, ending: string): string =>
  `${ending === 'L IY' ? sounds.replace(/ L$/, '') : sounds} ${ending}`

function takes(stem: string, ending: string, wordnet: WordNet): boolean {
  if (/^e?s$/.test(ending)) return wordnet.isNoun(stem) || wordnet.isVerb(stem)
  return /^(?:ed|ing)$/.test(ending) ? wordnet.isVerb(stem) : wordnet.isAdjective(stem) || wordnet.isVerb(stem)
}

/** Sounds without what dictionaries differ in anyway: weak vowels, o of dog and of hot, vowels before r. */
const toLoose = (sounds: string): string =>
  sounds
    .replace(/\bER\b/g, 'AH R')
    .replace(/\b(?:AH|IH|EH|UH|IY|UW)\b/g, 'AH')
    .replace(/\bY AH\b/g, 'AH')
    .replace(/\bAO\b/g, 'AA')
    .replace(/\bR R\b/g, 'R')
    .replace(/\bAH (?=[LR]\b)/g, '')
