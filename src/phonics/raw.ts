// A word cut into units before an accent is put on it: letters with their sounds as the dictionary writes them.

import { isVowel } from './arpabet.ts'
import { CLOSE } from './lattice.ts'
import type { Row } from './rows.ts'
import type { Span, UnitKind } from './types.ts'

/** One unit, with ARPAbet sounds. */
export interface RawUnit {
  readonly letters: string
  readonly spans: readonly Span[]
  readonly phones: readonly string[]
  readonly kind: UnitKind
  /** Stress of its vowel, where it has one. */
  readonly stress?: 0 | 1 | 2
  /** The grapheme before an ending changed its spelling: `n` for the `nn` of `running`. */
  readonly base?: string
  /** On an ending: how it changed the word before it. */
  readonly change?: Change
}

export type Change = 'double' | 'drop-e' | 'ie-to-y' | 'y-to-i'

export interface RawPronunciation {
  readonly units: readonly RawUnit[]
  /** Letter places where a syllable begins since parts of the word meet there: `cup|board`, `steam|er`. */
  readonly seams?: readonly number[]
}

/** Lays a path of rows over the letters of a word. `stress` holds one digit a vowel sound, in order. */
export function toRawPronunciation(
  path: readonly number[],
  rows: readonly Row[],
  stress: readonly (0 | 1 | 2)[],
): RawPronunciation {
  const units: RawUnit[] = []
  let at = 0
  let vowels = 0
  for (const id of path) {
    if (id === CLOSE) {
      closeSplit(units, at)
      at += 1
      continue
    }
    const row = rows[id] as Row
    const spans: readonly Span[] = [[at, at + row.head.length]]
    const kind = row.phones.length === 0 ? 'silent' : 'correspondence'
    if (row.vowel) {
      const count = row.phones.filter(isVowel).length
      units.push({
        letters: row.letters,
        spans,
        phones: row.phones,
        kind,
        stress: toStrongest(stress.slice(vowels, vowels + count)),
      })
      vowels += count
    } else units.push({ letters: row.letters, spans, phones: row.phones, kind })
    at += row.head.length
  }
  return { units: shareFinalE(units) }
}

/** Of the marks of a unit with two vowel sounds, the strongest: `ire` in `fire` is stressed. */
const toStrongest = (marks: readonly (0 | 1 | 2)[]): 0 | 1 | 2 => (marks.includes(1) ? 1 : marks.includes(2) ? 2 : 0)

function closeSplit(units: RawUnit[], at: number): void {
  for (let k = units.length - 1; k >= 0; k--) {
    const unit = units[k] as RawUnit
    if (!unit.letters.includes('_')) continue
    units[k] = { ...unit, spans: [...unit.spans, [at, at + 1]] }
    return
  }
}

const LONG: ReadonlyMap<string, readonly string[]> = new Map([
  ['a', ['EY']],
  ['e', ['IY']],
  ['i', ['AY']],
  ['o', ['OW']],
  ['u', ['UW', 'Y UW']],
  ['y', ['AY']],
])

/**
 * In `cage` and `huge` one final e does two jobs: it makes the vowel long and the g soft. The letter stays with `ge`,
 * and the vowel is drawn as `a_e` all the same, as a teacher draws it.
 */
function shareFinalE(units: readonly RawUnit[]): readonly RawUnit[] {
  const last = units.at(-1)
  const before = units.at(-2)
  if (last?.letters !== 'ge' || !before) return units
  if (!LONG.get(before.letters)?.includes(before.phones.join(' '))) return units
  return [...units.slice(0, -2), { ...before, letters: `${before.letters}_e` }, last]
}
