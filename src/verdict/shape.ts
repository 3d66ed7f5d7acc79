// The shape of each syllable as a teacher writes it: C for a consonant, V for a vowel, `CVC` for `cat` and for `ship`.

import type { Pronunciation, Span, Unit } from '../phonics/types.ts'

/** One syllable's shape, and the letters that make it hard: its clusters of consonants, else all its letters. */
export interface SyllableShape {
  readonly shape: string
  readonly letters: readonly Span[]
}

/**
 * The shapes of a pronunciation's syllables, taken from its units: `sh`, `ck`, `qu` and `x` count as one consonant, `ai` and
 * `a_e` as one vowel, silent letters as nothing.
 * @param isEnding tells the units that are a taught ending, which no shape counts: `hats` has the shape of `hat`.
 */
export function toShapes(
  word: string,
  pronunciation: Pronunciation,
  isEnding: (unit: Unit) => boolean,
): readonly SyllableShape[] {
  const starts = toSyllableStarts(word, pronunciation.syllables)
  const units = pronunciation.units.filter((unit) => !isEnding(unit) && !isStutter(word, unit) && !isSyllabicNot(unit))
  const groups = starts.map((start, at) => {
    const next = starts[at + 1] ?? word.length
    return units.filter((unit) => startOf(unit) >= start && startOf(unit) < next)
  })
  return mergeWithoutVowel(groups).map((group) => ({
    shape: group.map(toLetter).join('').replace(/QU/g, 'C').replace(/[QU]/g, 'C'),
    letters: toRanges(findClusters(group) ?? group),
  }))
}

/** The n't of `isn't`: it is taught as a contraction, and leaves the shape of `is`. That of `can't` closes its syllable. */
const isSyllabicNot = (unit: Unit): boolean => unit.vowel && /^n['’]t$/i.test(unit.letters)

// The first b of `b-but` makes no cluster with the second; but the d of `red-dog` closes its syllable.
function isStutter(word: string, unit: Unit): boolean {
  const start = startOf(unit)
  const end = start + unit.letters.length
  const again = word.slice(end + 1, end + 1 + unit.letters.length)
  const isAlone = /^(?:[-‐‑]|)$/.test(word.charAt(start - 1)) && /[-‐‑]/.test(word.charAt(end))
  return isAlone && again.toLowerCase() === unit.letters.toLowerCase()
}

function findClusters(units: readonly Unit[]): readonly Unit[] | undefined {
  const isConsonant = (unit: Unit | undefined) => unit !== undefined && /^[CU]$/.test(toLetter(unit))
  const clustered = units.filter(
    (unit, at) => isConsonant(unit) && (isConsonant(units[at - 1]) || isConsonant(units[at + 1])),
  )
  return clustered.length === 0 ? undefined : clustered
}

// Neighbouring letters are blamed as one range.
function toRanges(units: readonly Unit[]): readonly Span[] {
  const spans = units.flatMap((unit) => unit.spans).sort((left, right) => left[0] - right[0])
  const ranges: Span[] = []
  for (const span of spans) {
    const before = ranges.at(-1)
    if (before !== undefined && before[1] === span[0]) ranges.splice(-1, 1, [before[0], span[1]])
    else ranges.push(span)
  }
  return ranges
}

// ba-king without its ending leaves `ba` and `k`: the `k` closes the syllable before it.
function mergeWithoutVowel(groups: readonly Unit[][]): readonly Unit[][] {
  const merged: Unit[][] = []
  let waiting: Unit[] = []
  for (const group of groups) {
    const before = merged.at(-1)
    if (group.some((unit) => unit.vowel)) {
      merged.push([...waiting, ...group])
      waiting = []
    } else if (before === undefined) waiting.push(...group)
    else before.push(...group)
  }
  return waiting.length > 0 ? [...merged, waiting] : merged
}

// `q` and a sounded `u` after it are told apart for a moment, so that the pair can be counted as one consonant.
function toLetter(unit: Unit): string {
  if (unit.kind === 'silent') return ''
  if (unit.vowel) return unit.kind === 'inflection' && unit.letters !== 'er' ? 'VC' : 'V'
  const letters = unit.letters.toLowerCase()
  if (letters === 'q') return 'Q'
  return letters === 'u' ? 'U' : 'C'
}

function toSyllableStarts(word: string, syllables: readonly string[]): readonly number[] {
  const starts: number[] = []
  let at = 0
  for (const syllable of syllables) {
    const found = word.toLowerCase().indexOf(syllable.toLowerCase(), at)
    const start = found === -1 ? at : found
    starts.push(starts.length === 0 ? 0 : start)
    at = start + syllable.length
  }
  return starts
}

function startOf(unit: Unit): number {
  return unit.spans[0]?.[0] ?? 0
}
