// Endings and beginnings that leave a word whole, and the words that are parted by hand: for the seams of words.

/** Endings that leave the word before them whole, and what is asked of it. */
export interface Suffix {
  readonly letters: string
  /** WordNet must link the word with the one that it is made of: `steamer` with `steam`, and not `corner` with `corn`. */
  readonly isLinked: boolean
  /** The end of the word before it. */
  readonly after?: RegExp
}

/** call-ing, dress-er; but but-ter, mit-ten, pas-sage */
const NOT_DOUBLED = /(?:ff|ll|ss|zz|(.)(?!\1).)$/

export const SUFFIXES: readonly Suffix[] = [
  // com-fort-a-ble
  { letters: 'able', isLinked: false },
  // post-age; but pas-sage
  { letters: 'age', isLinked: true, after: /(.)(?!\1).$/ },
  { letters: 'dom', isLinked: false },
  // fall-en, gold-en
  { letters: 'en', isLinked: false, after: NOT_DOUBLED },
  // steam-er, roll-er
  { letters: 'er', isLinked: true, after: NOT_DOUBLED },
  // west-ern
  { letters: 'ern', isLinked: false },
  { letters: 'ful', isLinked: false },
  { letters: 'hood', isLinked: false },
  // will-ing
  { letters: 'ing', isLinked: false, after: NOT_DOUBLED },
  // fool-ish
  { letters: 'ish', isLinked: false, after: NOT_DOUBLED },
  { letters: 'ist', isLinked: true },
  // care-less-ness
  { letters: 'less', isLinked: false },
  // fu-ri-ous-ly; but ap-ply
  { letters: 'ly', isLinked: true },
  { letters: 'ment', isLinked: false },
  { letters: 'ness', isLinked: false },
  // sail-or; but ac-tor
  { letters: 'or', isLinked: true, after: /[aeo][aeiou][a-z]$/ },
  { letters: 'ship', isLinked: false },
  { letters: 'some', isLinked: false },
  { letters: 'ward', isLinked: false },
  { letters: 'wards', isLinked: false },
  // health-y; but dus-ty
  { letters: 'y', isLinked: true, after: /[cst]h$/ },
]

/** What a further ending leaves whole: `weaken` of `weakened`. */
export const ENDINGS = ['s', 'ed', 'ing', 'ly', 'ness'] as const

/** Put before a word that stays whole. */
export const PREFIXES = ['dis', 'down', 'fore', 'mis', 'non', 'out', 'over', 'un', 'under', 'up'] as const

/** Rows of seams.tsv: the word with a bar between its parts, and why. */
export function readSeams(table: string): ReadonlyMap<string, readonly number[]> {
  const rows = table.split('\n').filter((line) => line !== '' && !line.startsWith('#'))
  return new Map(
    rows.map((line) => {
      const parts = (line.split('\t')[0] ?? '').split('|')
      const places = parts.slice(0, -1).map((_, k) => parts.slice(0, k + 1).join('').length)
      return [parts.join(''), places]
    }),
  )
}
