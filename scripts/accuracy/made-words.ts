// Makes words that nobody has listed from pieces whose step is known, and counts how many are judged at that step.
//
// The pieces are those of a beginner's screening check as such checks are described: shut-in short vowels, clusters, vowel
// pairs, split vowels (from memory; no item of any test was looked up). Each word's step follows from how it was made.

import { createRandom } from '../../src/finder/order.ts'
import type { Phonics } from '../../src/phonics/types.ts'
import type { Sequence } from '../../src/sequence/types.ts'
import { findReadableAt } from '../../src/verdict/index.ts'
import { CLUSTERS_AFTER, CLUSTERS_BEFORE, CODAS, ONSETS, PAIRS, type Piece, SHORT, SPLIT } from './made-pieces.ts'

export const MADE_KINDS = ['closed', 'cluster', 'pair', 'split', 'two syllables'] as const
type MadeKind = (typeof MADE_KINDS)[number]

export interface MadeWord {
  readonly word: string
  readonly kind: string
  /** The step of `series` at which it can first be read. */
  readonly step: string
  /** What a beginner says first, unit by unit: for each, the keys that will do. */
  readonly units: readonly (readonly string[])[]
}

const SEED = 20_261_129
const EACH = 240

/** @param isWord words that somebody has listed are no made words */
export function makeWords(isWord: (word: string) => boolean, steps: readonly string[]): readonly MadeWord[] {
  const random = createRandom(SEED)
  const pick = <T>(list: readonly T[]): T => list[Math.floor(random() * list.length)] as T
  const made = new Map<string, MadeWord>()
  for (const kind of MADE_KINDS) {
    for (let found = 0; found < EACH; ) {
      const pieces = MAKERS[kind](pick)
      const word = pieces.map(({ letters }) => letters).join('') + (kind === 'split' ? 'e' : '')
      if (isWord(word) || made.has(word) || isTaken(word)) continue
      made.set(word, toMade(word, kind, pieces, steps))
      found++
    }
  }
  return [...made.values()]
}

/** Left out, decided before anything was judged: what looks like an ending, and letters that meet to say something else. */
export const isTaken = (word: string): boolean =>
  /[^s]s$|ed$|er$|ing$|c[eiy]|[aou]l[dkflmst]|all$|ol[dlt]|in[dg]|wa|wor|qua|sc[ei]|([bdfgmnpt])\1./.test(word)

export type Pick = <T>(list: readonly T[]) => T

const MAKERS: Readonly<Record<MadeKind, (pick: Pick) => readonly Piece[]>> = {
  closed: (pick) => [pick(ONSETS), pick(SHORT), pick(CODAS)],
  cluster: (pick) =>
    pick([true, false])
      ? [...pick(CLUSTERS_BEFORE), pick(SHORT), ...pick(pick([CLUSTERS_AFTER, CODAS.map((one) => [one])]))]
      : [pick(ONSETS), pick(SHORT), ...pick(CLUSTERS_AFTER)],
  pair: (pick) => {
    const pair = pick(PAIRS)
    return [pick(ONSETS), pair, ...(pair.isLast ? [] : [pick(CODAS.filter(({ letters }) => letters.length === 1))])]
  },
  split: (pick) => [pick(ONSETS), pick(SPLIT), pick(CODAS.filter(({ letters }) => /^[bdfklmnptvz]$/.test(letters)))],
  'two syllables': (pick) => [
    pick(ONSETS),
    pick(SHORT),
    pick(CODAS.filter(({ letters }) => /^[bmnp]$/.test(letters))),
    pick(ONSETS.filter(({ letters }) => /^[dfgjkpstvz]$/.test(letters))),
    pick(SHORT),
    pick(CODAS.filter(({ letters }) => /^[bdfgmnptz]$/.test(letters))),
  ],
}

/** The first step that allows words of so many letters, and the shapes of clusters: the limits of `series`. */
const LETTERS: readonly (readonly [most: number, step: string])[] = [
  [3, 'pink-1'],
  [4, 'blue-1'],
  [5, 'blue-2'],
  [6, 'blue-4'],
  [7, 'blue-5'],
  [9, 'blue-6'],
]
export const toLettersStep = (word: string): string => LETTERS.find(([most]) => word.length <= most)?.[1] ?? 'green-1'

const SHAPES: Readonly<Record<string, string>> = {
  CCV: 'blue-4',
  CCVC: 'blue-4',
  CV: 'blue-6',
  CVC: 'pink-1',
  CVCC: 'blue-3',
  VC: 'pink-1',
}

export function toMade(word: string, kind: string, pieces: readonly Piece[], steps: readonly string[]): MadeWord {
  const shape = pieces.map(({ isVowel }) => (isVowel ? 'V' : 'C')).join('')
  const asked = [
    ...pieces.map(({ step }) => step),
    toLettersStep(word),
    kind === 'two syllables' ? 'blue-6' : (SHAPES[shape] ?? 'blue-5'),
  ]
  const step = asked.reduce((late, one) => (steps.indexOf(one) > steps.indexOf(late) ? one : late))
  return { word, kind, step, units: pieces.map(({ keys }) => keys) }
}

export interface MadeFigures {
  readonly words: number
  readonly rightStep: number
  readonly rightFirst: number
  readonly wrong: readonly string[]
}

/** Every second word of each kind was unseen while the reader of made words was written. */
export function measureMadeWords(words: readonly MadeWord[], phonics: Phonics, sequence: Sequence): MadeFigures {
  const wrong: string[] = []
  let rightStep = 0
  let rightFirst = 0
  for (const { word, step, units } of words) {
    const found = phonics.read(word)
    const at = findReadableAt(found, sequence)
    const said = found.pronunciations[0]?.units.map(({ key }) => key) ?? []
    const isFirst = said.length === units.length && said.every((key, k) => units[k]?.includes(key))
    if (at === step) rightStep++
    if (isFirst) rightFirst++
    if (at !== step || !isFirst) wrong.push(`${word} ${said.join('·')} ${at ?? 'never'}, not ${step}`)
  }
  return { words: words.length, rightStep, rightFirst, wrong }
}
