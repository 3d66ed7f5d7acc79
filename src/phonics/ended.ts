// Endings in words that are stored by their own letters: `blessed` of two forms, `unfinished` whose `unfinish` is no word.

import { type Cutting, moveBy, toInflected } from './cutting.ts'
import { findInflections } from './inflect.ts'
import { startOf } from './places.ts'
import type { RawPronunciation, RawUnit } from './raw.ts'

type FindCuttings = (word: string) => readonly Cutting[]

/** Put before a word with an ending, they leave it as it is: `unlocked`, `outgrowing`. */
const PREFIXES = /^(?:dis|fore|mis|out|over|pre|re|un|under)(?=...)/

/**
 * The same pronunciation, known for a stem with an ending.
 * @param findStem the cuttings of a stored word
 */
export function toEnded(
  word: string,
  raw: RawPronunciation,
  isForm: boolean,
  findStem: FindCuttings,
): RawPronunciation {
  if (!/(?:ed|ing)$/.test(word) || raw.units.at(-1)?.kind === 'inflection') return raw
  if (isForm || hasSilentE(word, raw.units)) {
    const ended = findInflections(word)
      .filter(({ ending }) => ending === 'ed' || ending === 'ing')
      .flatMap((inflection) => toInflected(findStem(inflection.stem), inflection))
      .find((one) => isSaidSo(one.raw.units, raw.units))
    if (ended !== undefined) return ended.raw
  }
  return joinPrefix(word, raw, findStem) ?? raw
}

/** `unfinished` is `finished` with un before it. */
function joinPrefix(word: string, raw: RawPronunciation, findStem: FindCuttings): RawPronunciation | undefined {
  const at = PREFIXES.exec(word)?.[0].length
  if (at === undefined) return undefined
  const before = raw.units.filter(({ spans }) => spans.every(([, to]) => to <= at))
  for (const rest of findStem(word.slice(at))) {
    if (rest.raw.units.at(-1)?.kind !== 'inflection') continue
    const units = [...before, ...rest.raw.units.map((unit) => moveBy(unit, at))]
    if (isSaidSo(units, raw.units)) return { ...raw, units: withStress(units, raw.units) }
  }
  return undefined
}

/** The stress of the whole word stands. */
function withStress(units: readonly RawUnit[], whole: readonly RawUnit[]): readonly RawUnit[] {
  const marks = whole.flatMap(({ stress }) => stress ?? [])
  return marks.length === units.filter(({ stress }) => stress !== undefined).length
    ? units.map((unit) => (unit.stress === undefined ? unit : { ...unit, stress: marks.shift() ?? 0 }))
    : units
}

/** The e of `blessed` says nothing by itself; that of `seed` and `sacred` does. */
function hasSilentE(word: string, units: readonly RawUnit[]): boolean {
  if (!word.endsWith('ed')) return false
  const at = word.length - 2
  const own = units.find(({ spans }) => spans.some(([from, to]) => from <= at && at < to))
  return own !== undefined && (own.stress === undefined || (own.letters.includes('_') && startOf(own) < at - 1))
}

const isSaidSo = (units: readonly RawUnit[], others: readonly RawUnit[]): boolean => toLoose(units) === toLoose(others)

/** The weak vowels that the dictionary is of two minds about are one. */
const toLoose = (units: readonly RawUnit[]): string =>
  units
    .flatMap(({ phones }) => phones)
    .join(' ')
    .replace(/\bAH\b/g, 'IH')
    .replace(/\bAO\b/g, 'AA')
