// Proposes a box: small objects or pictures for one vowel, or for all short ones in balance.

import type { Sequence } from '../sequence/index.ts'
import type { FoundWord, WordQuery } from './find.ts'
import type { Pool } from './pool.ts'
import { type ProposedSet, proposeBox, proposeMixed, type Relaxed } from './sets.ts'
import { findShown, proposeByClass, type ShowAs } from './shown.ts'

export interface FoundBox {
  readonly words: readonly FoundWord[]
  readonly relaxed: readonly Relaxed[]
  readonly more: boolean
  readonly hasObjects: boolean
  readonly isAll: boolean
  readonly showAs: ShowAs
  /** What a set that came out empty could be instead. */
  readonly instead: string | null
}

/** How many words a box has where nobody says. */
const SET = 6

/** So many that a child names at first sight make a box, where nobody says how many there must be. */
const ENOUGH = 4

/** A box holds small objects, unless pictures are asked for. */
export function makeBox(
  set: 'box' | 'mixed',
  query: WordQuery,
  pool: Pool,
  sequence: Sequence,
): FoundBox | { readonly problem: string } {
  if (set === 'box' && query.vowel === undefined) return { problem: '--set box needs a vowel, such as --vowel o.' }
  const hasObjects = query.picture !== true
  const showAs = hasObjects ? 'object' : 'picture'
  const words = findShown(pool, query, showAs)
  // A box is filled up with doubtful words no further than it must be, unless somebody says how many there are to be.
  const make = (own: readonly FoundWord[], isFine: boolean): ProposedSet =>
    proposeSet(set, own, { ...query, count: query.count ?? (isFine ? SET : ENOUGH) }, pool, sequence)
  const found = proposeByClass(words, showAs, make, query.count === undefined ? ENOUGH : undefined)
  // What was left out is called otherwise by a child, and comes when as many are asked for.
  const more = found.words.length >= ENOUGH && found.words.length < SET && query.count === undefined
  const relaxed = more ? found.relaxed.filter((one) => one !== 'fewer') : found.relaxed
  const isAll = set === 'box' && found.words.length === words.length
  const instead = words.length === 0 && hasObjects ? toPictures(findShown(pool, query, 'picture')) : null
  return { words: found.words, relaxed, more: more && !isAll, hasObjects, showAs, isAll, instead }
}

function proposeSet(
  set: 'box' | 'mixed',
  words: readonly FoundWord[],
  { count = SET }: WordQuery,
  pool: Pool,
  { lookAlikes }: Sequence,
): ProposedSet {
  if (set === 'box') return proposeBox(words, count, lookAlikes)
  const vowelOf = ({ pronunciation }: FoundWord): string | undefined => {
    const own = pronunciation.units.filter(({ vowel }) => vowel)
    return own.length === 1 ? own[0]?.key : undefined
  }
  return proposeMixed(words, findVowels(pool), vowelOf, count, lookAlikes)
}

function toPictures(words: readonly FoundWord[]): string | null {
  const fine = words.filter(({ shown }) => shown !== undefined && shown.picture !== 'likelier').slice(0, SET)
  if (fine.length === 0) return null
  const names = fine.map(({ word }) => word).join(', ')
  return `No word that can be read at this step and fits can be put into a box. Pictures can show ${names}: add --picture.`
}

/** The short vowels that have been taught: the first thing that each vowel letter says. */
function findVowels({ reader: { sequence }, knowledge }: Pool): string[] {
  const taught = sequence.steps.flatMap(({ adds }) => adds.correspondences)
  return ['a', 'e', 'i', 'o', 'u'].flatMap((letter) => {
    const key = taught.find(({ letters }) => letters === letter)?.key
    return key !== undefined && knowledge.correspondences.has(key) ? [key] : []
  })
}
