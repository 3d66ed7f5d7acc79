// Made words in the style of the screening check that England publishes: the patterns of its two sections.
//
// The patterns are from memory of the check's published description: section 1 has shut-in short vowels, consonant pairs
// and clusters; section 2 has split vowels, vowel pairs, clusters beside them, and three consonants in a row. The words are
// made by seed; no item of any check was looked up or copied.

import { createRandom } from '../../src/finder/order.ts'
import { CLUSTERS_AFTER, CLUSTERS_BEFORE, CODAS, ONSETS, PAIRS, type Piece, SHORT, SPLIT } from './made-pieces.ts'
import { isTaken, type MadeWord, type Pick, toMade } from './made-words.ts'

const SEED = 20_261_130
const EACH = 12

const isPair = ({ letters }: Piece): boolean => letters.length > 1
const isSingle = ({ letters }: Piece): boolean => letters.length === 1
const ENDS = CODAS.filter(({ letters }) => /^[bdfgkmnptz]$/.test(letters))
const INNER = PAIRS.filter(({ isLast }) => !isLast)
const OUTER = PAIRS.filter(({ isLast }) => isLast)
const TRIPLES = CLUSTERS_BEFORE.filter(
  (cluster) => /^[ptk]$/.test(cluster[0]?.letters ?? '') && cluster[1]?.letters === 'r',
)
const S = CLUSTERS_BEFORE.find((cluster) => cluster[0]?.letters === 's')?.slice(0, 1) ?? []

/** Kinds of items by section, each with how one is put together. */
const ITEMS: readonly (readonly [section: 1 | 2, kind: string, make: (pick: Pick) => readonly Piece[]])[] = [
  [
    1,
    'two letters and three',
    (pick) => [...(pick([true, false]) ? [] : [pick(ONSETS.filter(isSingle))]), pick(SHORT), pick(ENDS)],
  ],
  [1, 'consonant pairs', (pick) => [pick(ONSETS), pick(SHORT), pick(CODAS.filter(isPair))]],
  [1, 'clusters at the front', (pick) => [...pick(CLUSTERS_BEFORE), pick(SHORT), pick(ENDS)]],
  [1, 'clusters at the end', (pick) => [pick(ONSETS.filter(isSingle)), pick(SHORT), ...pick(CLUSTERS_AFTER)]],
  [
    2,
    'split vowels',
    (pick) => [
      ...pick([[pick(ONSETS)], pick(CLUSTERS_BEFORE)]),
      pick(SPLIT),
      pick(ENDS.filter(({ letters }) => letters !== 'g')),
    ],
  ],
  [2, 'vowel pairs inside', (pick) => [...pick([[pick(ONSETS)], pick(CLUSTERS_BEFORE)]), pick(INNER), pick(ENDS)]],
  [2, 'vowel pairs at the end', (pick) => [...pick([[pick(ONSETS)], pick(CLUSTERS_BEFORE)]), pick(OUTER)]],
  [2, 'three consonants in a row', (pick) => [...S, ...pick(TRIPLES), pick(SHORT), pick(ENDS)]],
]

/** @param isWord words that somebody has listed are no made words */
export function makeScreeningWords(
  isWord: (word: string) => boolean,
  steps: readonly string[],
): readonly (MadeWord & { readonly section: 1 | 2 })[] {
  const random = createRandom(SEED)
  const pick = <T>(list: readonly T[]): T => list[Math.floor(random() * list.length)] as T
  const made = new Map<string, MadeWord & { readonly section: 1 | 2 }>()
  for (const [section, kind, make] of ITEMS) {
    for (let found = 0, tries = 0; found < EACH && tries < 10_000; tries++) {
      const pieces = make(pick)
      const word = pieces.map(({ letters }) => letters).join('') + (kind === 'split vowels' ? 'e' : '')
      if (isWord(word) || made.has(word) || isTaken(word)) continue
      made.set(word, { ...toMade(word, kind, pieces, steps), section })
      found++
    }
  }
  return [...made.values()]
}
