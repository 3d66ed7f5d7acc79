// How well the guesser reads words that it has not seen: learnt from nine tenths of the words in use, tried on the rest.

import { readFileSync } from 'node:fs'
import { findAlignment, learnCosts } from '../../src/phonics/align.ts'
import { guessPaths } from '../../src/phonics/guess/guess.ts'
import { learnModel, openModel } from '../../src/phonics/guess/model.ts'
import { CLOSE, toRowSet } from '../../src/phonics/lattice.ts'
import { readRows } from '../../src/phonics/rows.ts'
import { frequencyRank } from '../build/frequency.ts'
import { LEAST } from '../build/lexicon.ts'
import { readDictionary } from '../build/pronunciations.ts'

export interface GuesserFigures {
  readonly tried: number
  /** Share of held-out words read exactly as the dictionary's first pronunciation, stress apart. */
  readonly wordsRight: number
  /** The same where any plausible pronunciation counts, as it does for a verdict. */
  readonly anyRight: number
  /** 1 − (sounds wrong, missing or too many ÷ sounds). */
  readonly soundsRight: number
  readonly modelBytes: number
}

const isHeldOut = (_: unknown, at: number): boolean => at % 10 === 7

export function measureGuesser(): GuesserFigures {
  const set = toRowSet(
    readRows(readFileSync(new URL('../../src/phonics/data/correspondences.tsv', import.meta.url), 'utf8')),
  )
  const entries = readDictionary()
    .words.filter(({ word }) => frequencyRank.has(word) && !word.includes("'"))
    .map(({ word, transcriptions }) => ({ word, phones: transcriptions[0]?.phones ?? [] }))
  const training = entries.filter((entry, at) => !isHeldOut(entry, at))
  const costs = learnCosts(set, training, 4)
  const bytes = learnModel(
    training.flatMap((entry) => {
      const found = findAlignment(set, entry, costs)
      return found ? [found.path] : []
    }),
    LEAST,
  )
  const model = openModel(bytes)
  let right = 0
  let any = 0
  let wrong = 0
  let sounds = 0
  const tried = entries.filter(isHeldOut)
  for (const { word, phones } of tried) {
    const guesses = guessPaths(set, model, word, 4)
    const best = guesses[0]?.cost ?? 0
    const said = guesses.map(({ path }) => path.flatMap((id) => (id === CLOSE ? [] : (set.rows[id]?.phones ?? []))))
    if (said[0]?.join(' ') === phones.join(' ')) right++
    if (said.some((one, k) => (guesses[k]?.cost ?? 0) <= best + 2.3 && one.join(' ') === phones.join(' '))) any++
    wrong += toDistance(said[0] ?? [], phones)
    sounds += phones.length
  }
  return {
    tried: tried.length,
    wordsRight: right / tried.length,
    anyRight: any / tried.length,
    soundsRight: 1 - wrong / sounds,
    modelBytes: bytes.length,
  }
}

/** Fewest sounds to change, add or leave out (Levenshtein). */
function toDistance(one: readonly string[], two: readonly string[]): number {
  let row = two.map((_, k) => k + 1)
  one.forEach((phone, i) => {
    let corner = i
    let left = i + 1
    row = row.map((up, k) => {
      const cost = Math.min(left + 1, up + 1, corner + (phone === two[k] ? 0 : 1))
      corner = up
      left = cost
      return cost
    })
  })
  return two.length === 0 ? one.length : (row.at(-1) ?? 0)
}
