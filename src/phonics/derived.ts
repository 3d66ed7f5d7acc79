// Words that an ending makes of a known one, where nobody listed them: `blankness`, `hatless`, `penally`, `fluffiness`.

import { type Cutting, joinCuttings } from './cutting.ts'
import { endOf, startOf } from './places.ts'
import type { RawUnit } from './raw.ts'

type Said = readonly [letters: string, phones: readonly string[]]

/** Endings that leave the word before them as it is, letter by letter, each with a word that has it. */
const SUFFIXES: ReadonlyMap<string, readonly Said[]> = new Map<string, readonly Said[]>([
  [
    'ful',
    [
      ['f', ['F']],
      ['u', ['AH']],
      ['l', ['L']],
    ],
  ], // hatful
  [
    'less',
    [
      ['l', ['L']],
      ['e', ['AH']],
      ['ss', ['S']],
    ],
  ], // hatless
  [
    'ment',
    [
      ['m', ['M']],
      ['e', ['AH']],
      ['n', ['N']],
      ['t', ['T']],
    ],
  ], // merriment, behind an i for a y alone
  [
    'ly',
    [
      ['l', ['L']],
      ['y', ['IY']],
    ],
  ], // blankly
  [
    'ness',
    [
      ['n', ['N']],
      ['e', ['AH']],
      ['ss', ['S']],
    ],
  ], // blankness
])

/** `ly` ends too many names to be put on short words. */
const leastStem = (suffix: string): number => (suffix === 'ly' ? 4 : 3)

/** @param findStem the cuttings of a stored word that is no name; none for others */
export function findDerived(word: string, findStem: (stem: string) => readonly Cutting[]): readonly Cutting[] {
  const undone = findUndone(word, findStem)
  if (undone.length > 0) return undone
  const ofL = word.endsWith('ly') ? findOfL(word, findStem) : []
  if (ofL.length > 0) return ofL
  for (const [suffix, said] of SUFFIXES) {
    const at = word.length - suffix.length
    if (at < leastStem(suffix) || !word.endsWith(suffix)) continue
    const stem = word.slice(0, at)
    const isOfI = /[^aeiou]i$/.test(stem)
    const ofY = isOfI ? findStem(toY(stem)).flatMap((one) => withI(one, WORN[suffix])) : []
    // `sunnily` is of `sunny`, and no `Sunni` at all; `Clement` is of no `Cle`.
    const isOfYAlone = suffix === 'ment' || (isOfI && /^(?:ness|ly)$/.test(suffix))
    const stems = ofY.length > 0 || isOfYAlone ? ofY : findStem(stem)
    if (stems.length > 0) return joinCuttings(stems, [{ raw: { units: toUnits(said) }, stem: suffix }], at).map(joinL)
  }
  return []
}

/** `unscrewed`, `unlatching`: un before a word with an ending. Nothing is undone with a bare `un`, which begins names. */
function findUndone(word: string, findStem: (stem: string) => readonly Cutting[]): readonly Cutting[] {
  if (!/^un...+(?:ed|ing)$/.test(word)) return []
  const ended = findStem(word.slice(2)).filter(({ raw }) => raw.units.at(-1)?.kind === 'inflection')
  if (ended.length === 0) return []
  return joinCuttings([{ raw: { units: UN }, stem: 'un' }], ended, 2)
}

const UN: readonly RawUnit[] = [
  { letters: 'u', spans: [[0, 1]], phones: ['AH'], kind: 'correspondence', stress: 2 },
  { letters: 'n', spans: [[1, 2]], phones: ['N'], kind: 'correspondence' },
]

const toY = (stem: string): string => `${stem.slice(0, -1)}y`

/** `crumbly` and `growly` are of `crumble` and `growl`, not of `crumb` and `grow`. */
function findOfL(word: string, findStem: (stem: string) => readonly Cutting[]): readonly Cutting[] {
  const at = word.length - 2
  if (at < leastStem('ly')) return []
  const ofLe = findStem(`${word.slice(0, -1)}e`).flatMap(({ raw, ...more }): readonly Cutting[] => {
    const last = raw.units.at(-1)
    return last?.letters === 'le' ? [{ raw: { ...raw, units: raw.units.slice(0, -1) }, ...more }] : []
  })
  if (ofLe.length > 0)
    return joinCuttings(ofLe, [{ raw: { units: toUnits(SUFFIXES.get('ly') ?? []) }, stem: 'ly' }], at).map((one) =>
      withoutSeam(one, at),
    )
  const y: Cutting = { raw: { units: toUnits([['y', ['IY']]]) }, stem: 'y' }
  return joinCuttings(findStem(word.slice(0, -1)), [y], at + 1)
}

/** The l of `crumbly` is of its stem: crum-bly. */
const withoutSeam = ({ raw, ...more }: Cutting, at: number): Cutting => ({
  raw: { ...raw, seams: raw.seams?.filter((seam) => seam !== at) ?? [] },
  ...more,
})

/** Before these the y is worn down: `happily`, `plentiful`, `merriment`. */
const WORN: Readonly<Record<string, string>> = { ful: 'IH', ly: 'AH', ment: 'IH' }

/** The y of `fluffy` is an i before an ending, and stands for it, worn down or not. */
function withI({ raw, ...more }: Cutting, worn: string | undefined): readonly Cutting[] {
  const last = raw.units.at(-1)
  if (last?.letters !== 'y') return []
  const said = worn === undefined ? {} : { phones: [worn], stress: 0 as const }
  const i: RawUnit = { ...last, letters: 'i', base: 'y', ...said }
  return [{ raw: { ...raw, units: [...raw.units.slice(0, -1), i] }, ...more }]
}

/** The two l of `penally` are one sound. */
function joinL({ raw, ...more }: Cutting): Cutting {
  const { units } = raw
  const at = units.findIndex(({ letters }, k) => letters === 'l' && units[k + 1]?.letters === 'l')
  const [one, two] = [units[at], units[at + 1]]
  if (one === undefined || two === undefined) return { raw, ...more }
  const both: RawUnit = { ...one, letters: 'll', spans: [[startOf(one), endOf(two)]] }
  return { raw: { ...raw, units: [...units.slice(0, at), both, ...units.slice(at + 2)] }, ...more }
}

function toUnits(said: readonly Said[]): readonly RawUnit[] {
  let at = 0
  return said.map(([letters, phones]): RawUnit => {
    const spans = [[at, at + letters.length]] as const
    at += letters.length
    const isVowel = phones[0] === 'AH' || phones[0] === 'IY'
    return { letters, spans, phones, kind: 'correspondence', ...(isVowel && { stress: 0 as const }) }
  })
}
