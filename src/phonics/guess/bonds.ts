// Letters that belong together in a word that nobody listed: a taught pair is never split, so that `boing` is b·oi·ng.
//
// Common practice, no source.

/** Groups of letters as they stand in a word, each with a word that it is true of, and one where the letters part. */
const GROUPS: readonly string[] = [
  '([bcdfgklmnprstvz])\\1', // rabbit
  '[aeiou]r(?![aeiouyr])', // turn; not Marek
  'a?igh|eigh', // night
  'ai|ay', // rain, day
  'air|eer|oor|oar', // hair
  'are$|ere$|ire$|ore$|ure$', // care
  'au|aw', // saw
  'augh|ough', // taught
  'ch|ck|ph|sh|th|wh', // chip
  'dge|tch', // bridge, catch
  'ea(?!$)|(?<=^[^aeiouy]*)ea', // seat, sea; not Andrea
  'ear(?![aeiouy])', // near
  'ee', // see
  'ew|ey', // few, key
  'ie(?=[bcdfgklmnpstvz]?$)', // tie; not Kieran
  '^kn|^wr', // knee
  'mb$', // lamb
  'ng(?![aeiouylr])', // sing; not finger
  'oa(?!h?$)', // boat; not Samoa
  'oe$', // toe; not Noelle
  'oi|oy', // coin
  'oo', // moon
  'ou|ow', // out
  'qu', // queen
  'ue$', // blue; not Manuel
]

const PATTERNS = GROUPS.map((pattern) => new RegExp(pattern, 'y'))

/** Places in the word where no unit may begin: between the letters of a group, the longest at each letter. */
export function findBonds(word: string): ReadonlySet<number> {
  const bonds = new Set<number>()
  for (let at = 0; at < word.length; ) {
    const end = at + Math.max(1, ...PATTERNS.map((pattern) => matchAt(pattern, word, at)))
    for (let inside = at + 1; inside < end; inside++) bonds.add(inside)
    at = end
  }
  return bonds
}

/** `igh`, `sh`: letters that are one group and nothing else. */
export const isOneGroup = (letters: string): boolean => letters !== '' && findBonds(letters).size === letters.length - 1

function matchAt(pattern: RegExp, word: string, at: number): number {
  pattern.lastIndex = at
  return pattern.exec(word)?.[0].length ?? 0
}
