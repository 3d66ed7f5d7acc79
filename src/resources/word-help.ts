// What is known of words, from the bytes of the package's files: opened when a message first needs it.

import { createPool, isReadableInAllForms, isUnhelpful, type Pool } from '../finder/index.ts'
import type { Lexicon } from '../phonics/index.ts'
import type { Accent, Phonics } from '../phonics/types.ts'
import type { Sequence } from '../sequence/types.ts'
import { createSuggester, type Fitness, type Suggester, toUseOfBits } from '../words/index.ts'
import type { SuggestPlace, WordHelp } from './types.ts'
import { openWordFiles, type WordFileBytes } from './word-files.ts'

export interface WordHelpTools {
  readonly files: WordFileBytes
  readonly lexicon: Lexicon
  phonicsFor(accent: Accent): Phonics
  /** Whether it is a built-in sequence, unchanged. */
  isBuiltIn(sequence: Sequence): boolean
}

export interface OpenedWords extends WordHelp {
  poolFor(place: SuggestPlace): Pool
}

export function openWordHelp({ files, lexicon, phonicsFor, isBuiltIn }: WordHelpTools): OpenedWords {
  const { data, table } = openWordFiles(files, lexicon.size)
  const { facts } = data
  const suggesters = new Map<string, Suggester>()
  const fitnessFor = ({ unfit, fit }: Pick<SuggestPlace, 'unfit' | 'fit'>): Fitness =>
    data.fitness({ add: unfit, clear: fit })
  const poolFor = (place: SuggestPlace): Pool => {
    const { sequence, step, reader, unfit, fit } = place
    const builtIn = isBuiltIn(sequence) ? sequence.name : undefined
    const fitness = unfit.length + fit.length > 0 ? fitnessFor(place) : undefined
    return createPool(
      { table, facts, lexicon, phonics: phonicsFor(sequence.accent), fitness },
      { sequence, step, builtIn, extra: reader },
    )
  }
  const makeSuggester = (place: SuggestPlace): Suggester => {
    const pool = poolFor(place)
    const phonics = phonicsFor(place.sequence.accent)
    let found: ReadonlyMap<string, number> | undefined
    const known = () => (found ??= findKnown(pool))
    const isReadable = (word: string): boolean => {
      if (isUnhelpful(word)) return false
      const at = pool.find(word)
      return at < 0 ? isReadableInAllForms(phonics.read(word), pool.knowledge) : pool.isReadable(at)
    }
    return createSuggester({
      data,
      lexicon,
      fitness: fitnessFor(place),
      isReadable,
      candidates: () => [...known().keys()],
      factsOf(word) {
        const at = known().get(word)
        return at === undefined ? undefined : pool.factsAt(at)
      },
      soundsOf(word) {
        const at = pool.find(word)
        const units = at < 0 ? (phonics.read(word).pronunciations[0]?.units ?? []) : pool.pronunciationAt(at).units
        return units.map(({ sound }) => sound)
      },
    })
  }
  return {
    factsOf(word) {
      const place = lexicon.indexOf(word)
      return place < 0 ? undefined : facts.factsAt(place)
    },
    suggesterFor(place) {
      const { sequence, step, ...more } = place
      const key = JSON.stringify([sequence.name, sequence.accent, sequence.reducedVowels, step, more])
      const known = suggesters.get(key) ?? makeSuggester(place)
      suggesters.set(key, known)
      return known
    },
    poolFor,
    fitnessFor,
  }
}

/** Words that children know, for what is near in sound, with their numbers. */
function findKnown(pool: Pool): ReadonlyMap<string, number> {
  const known = new Map<string, number>()
  for (let at = 0; at < pool.size; at++) {
    if (pool.isReadable(at) && toUseOfBits(pool.bitsAt(at)).known > 0) known.set(pool.wordAt(at), at)
  }
  return known
}
