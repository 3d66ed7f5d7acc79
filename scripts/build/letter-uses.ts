// Where the letters of the words in use are written, and how many families of words those are: `eyes` and `eyelid` are of one.

import { toPlaces } from '../../src/phonics/ordinary.ts'
import type { Phonics, Unit } from '../../src/phonics/types.ts'
import { frequencyRank } from './frequency.ts'

/** Words in use: most that are rarer are names. */
const MOST_USED = 20_000
/** A shorter word is the head of no family: most words that begin with `an` have nothing to do with it. */
const LEAST_HEAD = 4
/** Shorter parts of a word put together of two are ends of many words. */
const LEAST_PART = 3
/** What makes a form of a word of three letters. */
const ENDING = /^(?:s|es|d|ed|ing|e?r|e?rs|e?n|y|ly|ful)$/

export interface Use {
  readonly unit: Unit
  readonly word: string
  readonly places: readonly string[]
}

export function toGroups<Name>(uses: readonly Use[], toName: (use: Use) => Name): ReadonlyMap<Name, readonly Use[]> {
  const groups = new Map<Name, Use[]>()
  for (const use of uses) {
    const group = groups.get(toName(use))
    if (group === undefined) groups.set(toName(use), [use])
    else group.push(use)
  }
  return groups
}

export const toLetters = ({ letters, base }: Unit): string => base ?? letters

/** The units of the first pronunciation of each word in use, endings and worn-down vowels apart. */
export function collect(phonics: Phonics): readonly Use[] {
  const uses: Use[] = []
  for (const [word, rank] of [...frequencyRank].sort((x, y) => x[1] - y[1])) {
    if (rank > MOST_USED || word.includes("'")) continue
    const { source, pronunciations } = phonics.read(word)
    const units = source === 'guess' ? [] : (pronunciations[0]?.units ?? [])
    for (const [at, unit] of units.entries()) {
      // The urr of `hurry` is known by who knows ur, but shows no ur.
      if ((unit.kind !== 'correspondence' && unit.kind !== 'silent') || unit.reduced) continue
      if (!unit.key.startsWith(`${toLetters(unit)}=`)) continue
      uses.push({ unit, word, places: toPlaces(units.map(toLetters), at) })
    }
  }
  return uses
}

/** `prettier` is `pretty` with an ending. */
const withoutI = (word: string): string => word.replace(/i(?:er|est|ly|ness)$/, 'y')

/** `sewing` is of the family of `sew`, and `warm` is not of that of `war`. */
const isOfFamily = (word: string, head: string): boolean =>
  word.startsWith(head) &&
  (head.length >= LEAST_HEAD || (head.length === LEAST_HEAD - 1 && ENDING.test(word.slice(head.length))))

/** A word is of the family of the shorter one that it begins with: `wonderful` of `wonder`. */
export function countFamilies(uses: readonly Use[]): number {
  const words = new Set(uses.map((use) => withoutI(use.word)))
  let families = 0
  const heads: string[] = []
  for (const word of [...words].sort()) {
    // `eyes` is of the family of `eye`, though `eyelid` stands between.
    while (heads.length > 0 && !word.startsWith(heads.at(-1) ?? '')) heads.pop()
    if (heads.some((head) => isOfFamily(word, head)) || isPutTogether(word, words)) continue
    heads.push(word)
    families++
  }
  return families
}

/** Before a word of two letters, as in `undo`; a longer one is found as a part. */
const PREFIX = /^(?:un|re|over|out)(?=..$)/

/** Of two words in use, one of them among these: `girlfriend` of `friend`, `anything` of `any`. */
function isPutTogether(word: string, words: ReadonlySet<string>): boolean {
  const bare = word.replace(PREFIX, '')
  if (bare !== word && words.has(bare)) return true
  for (let cut = LEAST_PART; cut <= word.length - LEAST_PART; cut++) {
    const [first, last] = [word.slice(0, cut), word.slice(cut)]
    if ((words.has(first) && isUsed(last)) || (words.has(last) && isUsed(first))) return true
  }
  return false
}

/** One brow is a word in use, and so many `brows` are. */
const isUsed = (word: string): boolean =>
  [word, word.replace(/(?<=....)e?s$/, '')].some(
    (one) => (frequencyRank.get(one) ?? Number.POSITIVE_INFINITY) <= MOST_USED,
  )
