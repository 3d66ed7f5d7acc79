// How well the guesser reads words that it has not seen: learnt from nine tenths of the words in use, tried on the rest.

import { readFileSync } from 'node:fs'
import { countEdits } from '../../src/edits.ts'
import { type Guess, guessPaths } from '../../src/phonics/guess/guess.ts'
import { openModel } from '../../src/phonics/guess/model.ts'
import { toRowSet } from '../../src/phonics/lattice.ts'
import { readRows } from '../../src/phonics/rows.ts'
import { PLAUSIBLE } from '../../src/phonics/unlisted.ts'
import { frequencyRank } from '../build/frequency.ts'
import { readDictionary } from '../build/pronunciations.ts'
import { teachGuesser, toPhones } from './teach-guesser.ts'

export interface GuesserFigures {
  readonly tried: number
  /** Share of held-out words read exactly as the dictionary's first pronunciation, stress apart. */
  readonly wordsRight: number
  /** Share read as one of the dictionary's pronunciations, which is how published systems count. */
  readonly listedRight: number
  /** The same where any plausible pronunciation counts, as it does for a verdict. */
  readonly anyRight: number
  /** 1 − (sounds wrong, missing or too many ÷ sounds). */
  readonly soundsRight: number
  readonly modelBytes: number
}

const isHeldOut = (_: unknown, at: number): boolean => at % 10 === 7

export function measureGuesser(): GuesserFigures {
  const rows = readRows(readFileSync(new URL('../../src/phonics/data/correspondences.tsv', import.meta.url), 'utf8'))
  const set = toRowSet(rows)
  const all = readDictionary().words.filter(({ word }) => !word.includes("'"))
  const tried = all.filter(({ word }) => frequencyRank.has(word)).filter(isHeldOut)
  const hidden = new Set(tried.map(({ word }) => word))
  const bytes = teachGuesser(
    all.filter(({ word }) => !hidden.has(word)),
    set,
    4,
  )
  const model = openModel(bytes)()
  const counts = { first: 0, listed: 0, any: 0, wrong: 0, sounds: 0 }
  for (const { word, transcriptions } of tried) {
    const guesses = guessPaths(set, model, word, 4)
    const said = guesses.map((guess) => toPhones(guess, set))
    const [best = []] = said
    const phones = transcriptions[0]?.phones ?? []
    if (isSame(best, phones)) counts.first++
    if (transcriptions.some((one) => isSame(best, one.phones))) counts.listed++
    if (said.some((one, k) => isPlausible(guesses, k) && isSame(one, phones))) counts.any++
    counts.wrong += countEdits(best, phones)
    counts.sounds += phones.length
  }
  return {
    tried: tried.length,
    wordsRight: counts.first / tried.length,
    listedRight: counts.listed / tried.length,
    anyRight: counts.any / tried.length,
    soundsRight: 1 - counts.wrong / counts.sounds,
    modelBytes: bytes.length,
  }
}

const isPlausible = (guesses: readonly Guess[], k: number): boolean =>
  (guesses[k]?.cost ?? Infinity) <= (guesses[0]?.cost ?? 0) + PLAUSIBLE

const isSame = (one: readonly string[], two: readonly string[]): boolean => one.join(' ') === two.join(' ')
