// Words spoken apart: sounded out letter by letter (`C-a-t`), or stuttered (`B-b-but`).

import type { Cutting, Spelled } from './cutting.ts'
import type { RawPronunciation, RawUnit } from './raw.ts'

/** @param spell reads a word without hyphens */
export function findSpokenApart(word: string, spell: (word: string) => Spelled): Spelled | undefined {
  const parts = word.split('-')
  if (parts.length < 2 || parts.includes('')) return undefined
  return findSoundedOut(parts, spell) ?? findStutter(parts, spell)
}

const LONGEST_SOUND = 3
const VOWEL = /[aeiouy]/

/** `c-a-t` and `sh-i-p` are the word itself, with its letters where they stand. */
function findSoundedOut(parts: readonly string[], spell: (word: string) => Spelled): Spelled | undefined {
  const isApart = parts.length > 2 || parts.every(({ length }) => length === 1)
  if (!isApart || parts.some(({ length }) => length > LONGEST_SOUND)) return undefined
  if (!parts.some((part) => part.length === 1 || !VOWEL.test(part))) return undefined
  const spelled = spell(parts.join(''))
  if (spelled.source !== 'dictionary') return undefined
  const seams = new Set(parts.map((_, k) => parts.slice(0, k).join('').length))
  const places = [...parts.join('')].map((_, at) => at + [...seams].filter((seam) => seam > 0 && seam <= at).length)
  const cuttings = spelled.cuttings
    .filter(({ raw }) => raw.units.every((unit) => unit.spans.every((span) => !isCut(span, seams))))
    .map(({ raw, stem }) => ({ raw: move(raw, (at) => places[at] ?? 0), stem }))
  return cuttings.length > 0 ? { ...spelled, cuttings } : undefined
}

const isCut = ([from, to]: readonly [number, number], seams: ReadonlySet<number>): boolean =>
  Array.from({ length: to - from - 1 }, (_, k) => from + k + 1).some((at) => seams.has(at))

const move = ({ units }: RawPronunciation, toPlace: (at: number) => number): RawPronunciation => ({
  units: units.map((unit) => ({
    ...unit,
    spans: unit.spans.map(([from, to]) => [toPlace(from), toPlace(to - 1) + 1] as const),
  })),
})

/** `b-b-but`: the first sound of the word again and again. */
function findStutter(parts: readonly string[], spell: (word: string) => Spelled): Spelled | undefined {
  const whole = parts.at(-1) ?? ''
  const tries = parts.slice(0, -1)
  const [first = ''] = tries
  if (VOWEL.test(first) || !tries.every((one) => one === first) || whole === first || !whole.startsWith(first))
    return undefined
  const spelled = spell(whole)
  const cuttings = spelled.cuttings.flatMap((cutting) => repeat(cutting, first, tries.length))
  return cuttings.length > 0 ? { ...spelled, cuttings } : undefined
}

function repeat({ raw, stem }: Cutting, letters: string, times: number): readonly Cutting[] {
  const opening: RawUnit[] = []
  for (const unit of raw.units) {
    if (opening.reduce((sum, one) => sum + one.letters.length, 0) >= letters.length) break
    opening.push(unit)
  }
  // `s-ship` begins with another sound than its own.
  if (opening.map((unit) => unit.letters).join('') !== letters) return []
  const step = letters.length + 1
  const moved = Array.from({ length: times }, (_, k) => move({ units: opening }, (at) => at + k * step).units)
  return [{ raw: { units: [...moved.flat(), ...move(raw, (at) => at + times * step).units] }, stem }]
}
