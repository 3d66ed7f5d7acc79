// One way to cut a word into units, and what can be done with it: an ending put on, another word joined to it.

import { type Inflection, inflect } from './inflect.ts'
import type { RawPronunciation, RawUnit } from './raw.ts'

/** One way to cut a word, with the word that its ending was put on (the word itself where it has none). */
export interface Cutting {
  readonly raw: RawPronunciation
  readonly stem: string
}

export interface Spelled {
  readonly source: 'dictionary' | 'guess'
  readonly cuttings: readonly Cutting[]
  /** What was meant, where an ending was put on without its change or two words were run together. */
  readonly meant?: string
  /** Its letters can be said in several ways, and nothing tells which: `Siya`. */
  readonly unsure?: true
  /** The same where it has a capital: English letters make it likely, and a name may be of another land. */
  readonly unsureAsName?: true
}

/** The cuttings of a stem with an ending; none where the stem does not allow it. */
export function toInflected(stems: readonly Cutting[], inflection: Inflection): readonly Cutting[] {
  return stems.flatMap(({ raw }) => {
    const word = inflect(raw, inflection.stem.length, inflection)
    const seams = raw.seams?.filter((at) => at < inflection.stem.length)
    return word ? [{ raw: seams === undefined ? word : { ...word, seams }, stem: inflection.stem }] : []
  })
}

/** Every pair of pronunciations of two parts, at most four: for compounds and hyphenated words. */
export function joinCuttings(first: readonly Cutting[], second: readonly Cutting[], at: number): readonly Cutting[] {
  return first
    .flatMap((one) =>
      second.map((two) => {
        const units = [...one.raw.units, ...two.raw.units.map((unit) => moveBy(unit, at))]
        const seams = [...(one.raw.seams ?? []), at, ...(two.raw.seams ?? []).map((seam) => seam + at)]
        return { raw: { units, seams }, stem: one.stem }
      }),
    )
    .slice(0, 4)
}

/** The unit so many letters further on. */
export const moveBy = (unit: RawUnit, at: number): RawUnit => ({
  ...unit,
  spans: unit.spans.map(([from, to]) => [from + at, to + at] as const),
})
