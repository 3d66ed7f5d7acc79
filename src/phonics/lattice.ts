// Every way in which a word's letters can say a given pronunciation, as a lattice of rows of the table.
//
//   states of a walk through   c a k e      K EY K
//   OPEN  nothing pending       ^
//   HELD  a split vowel waits   ^ after `a_e`, needs a consonant
//   READY its consonant came      ^ a silent e may close it
//   LONG  a bare long vowel was last: `ce se ve …` may not follow, so that `face` is f·a_e·c and not f·a·ce

import { isVowel } from './arpabet.ts'
import type { Row } from './rows.ts'

export const CLOSE = -1
export const OPEN = 0
const HELD = 1
const READY = 2
export const LONG = 3
export const STATES = 4

/** One step of a walk: from letter `i`, sound `j`, state `s` over a row (or the closing e) to the next three. */
export interface Arc {
  readonly from: number
  readonly to: number
  /** Row id, or CLOSE for the silent e that closes a split grapheme. */
  readonly row: number
  /** The closing e stands before other letters than an ending, as in `homework`. */
  readonly inside: boolean
}

const LONG_VOWELS: ReadonlySet<string> = new Set(['EY', 'IY', 'AY', 'OW', 'UW', 'Y UW'])
/** Consonant rows that end in a silent e but never share it with a split vowel. */
const OWN_E: ReadonlySet<string> = new Set(['ge', 'que', 'gue', 'dge', 'ngue', 're'])

export interface RowSet {
  readonly rows: readonly Row[]
  readonly byHead: ReadonlyMap<string, readonly Row[]>
  readonly longest: number
  /** Per row: the state it leads to from OPEN. */
  readonly after: readonly number[]
  /** Per row: may stand between a split vowel and its e. */
  readonly fitsSplit: readonly boolean[]
  /** Per row: ends in an e that a bare long vowel would need. */
  readonly takesE: readonly boolean[]
  /** Per row: a consonant with a silent e, which never stands before i: `ceiling` is c·ei·l, not ce·i·l. */
  readonly beforeNoI: readonly boolean[]
  /** Vowel rows of two letters and more that the table also has with an r, as `ea` and `ear`. */
  readonly growsR: readonly boolean[]
}

export function toRowSet(rows: readonly Row[]): RowSet {
  const byHead = new Map<string, Row[]>()
  for (const row of rows) {
    const list = byHead.get(row.head)
    if (list) list.push(row)
    else byHead.set(row.head, [row])
  }
  const endsInE = (row: Row) => row.letters.endsWith('e')
  const spellings = new Set(rows.map((row) => `${row.letters} ${row.phones.join(' ')}`))
  const isConsonant = (row: Row) => !row.phones.some(isVowel) && !/^[aeiouy]/.test(row.letters)
  return {
    rows,
    byHead,
    longest: Math.max(...rows.map((row) => row.head.length)),
    after: rows.map((row) =>
      row.split ? HELD : /^[aeiou]$/.test(row.letters) && LONG_VOWELS.has(row.phones.join(' ')) ? LONG : OPEN,
    ),
    growsR: rows.map(
      (row) => row.vowel && row.head.length > 1 && spellings.has(`${row.letters}r ${row.phones.join(' ')} R`),
    ),
    // Nothing is split over a doubled letter (`giraffe` has `ffe`). A soft g keeps its own e (`cage` ends in `ge`), and so does r (`care` ends in `are`).
    fitsSplit: rows.map(
      (row) =>
        isConsonant(row) &&
        !endsInE(row) &&
        !/^(.)\1$/.test(row.letters) &&
        !(row.letters === 'g' && row.phones[0] === 'JH') &&
        row.letters !== 'r',
    ),
    takesE: rows.map((row) => isConsonant(row) && endsInE(row) && !OWN_E.has(row.letters) && row.phones[0] !== 'SH'),
    beforeNoI: rows.map((row) => isConsonant(row) && /^[cgsvz]e$/.test(row.letters)),
  }
}

/** All arcs of the lattice, in order of their first letter. `phones` undefined: any sounds (for guessing). */
export function toArcs(
  set: RowSet,
  word: string,
  phones: readonly string[] | undefined,
): { arcs: Arc[]; size: number; width: number } {
  const n = word.length
  const width = phones ? phones.length + 1 : 1
  const size = (n + 1) * width * STATES
  const reached = new Uint8Array(size)
  reached[0] = 1
  const arcs: Arc[] = []
  for (let i = 0; i < n; i++) {
    const candidates: Row[] = []
    for (let length = 1; length <= set.longest && i + length <= n; length++) {
      const rows = set.byHead.get(word.slice(i, i + length))
      if (rows) candidates.push(...rows)
    }
    for (let j = 0; j < width; j++) {
      for (let state = 0; state < STATES; state++) {
        const from = (i * width + j) * STATES + state
        if (!reached[from]) continue
        if (state === READY && word[i] === 'e') {
          const to = ((i + 1) * width + j) * STATES + OPEN
          arcs.push({ from, to, row: CLOSE, inside: !/^(s|d|'s|ly|y)?$/.test(word.slice(i + 1)) })
          reached[to] = 1
        }
        for (const row of candidates) {
          const next = findNext(set, row, state)
          if (next < 0 || isCutShort(row, word, i + row.head.length)) continue
          if (set.beforeNoI[row.id] && word[i + row.head.length] === 'i') continue
          let jump = 0
          if (phones) {
            jump = row.phones.length
            if (!isMatch(row.phones, phones, j)) continue
            if (set.growsR[row.id] && word[i + row.head.length] === 'r' && phones[j + jump] === 'R') continue
          }
          const to = ((i + row.head.length) * width + j + jump) * STATES + next
          arcs.push({ from, to, row: row.id, inside: false })
          reached[to] = 1
        }
      }
    }
  }
  return { arcs, size, width }
}

/** The state after a row, or -1 where the row may not stand there. */
function findNext(set: RowSet, row: Row, state: number): number {
  if (state === HELD || state === READY) return set.fitsSplit[row.id] ? READY : -1
  if (state === LONG && set.takesE[row.id]) return -1
  return set.after[row.id] ?? OPEN
}

/** `ar` may not stop before another r (`carry` is c·a·rr·y) nor before a final e (`care` is c·are). */
function isCutShort(row: Row, word: string, end: number): boolean {
  if (!row.vowel || row.head.length < 2 || row.head[row.head.length - 1] !== 'r') return false
  return (word[end] === 'r' && row.head.length === 2) || (word[end] === 'e' && end === word.length - 1)
}

function isMatch(wanted: readonly string[], phones: readonly string[], at: number): boolean {
  for (let k = 0; k < wanted.length; k++) if (wanted[k] !== phones[at + k]) return false
  return true
}
