// What a teacher means by a spelling: `ai`, `ea as in bread`, a sound `/eɪ/`, an ending `-ed`, or a cluster `st`.

import type { Phonics } from '../phonics/types.ts'
import { toProblemLine } from '../problem/index.ts'
import { resolveCorrespondence } from '../sequence/correspondence.ts'
import type { Sequence } from '../sequence/types.ts'
import type { ListUnit, SoundTable } from './table.ts'

/** A run of letter groups, each tested in turn. */
export type Spelling = readonly ((unit: ListUnit) => boolean)[] | { readonly letters: string }

export type FoundSpelling = { readonly spelling: Spelling } | { readonly problem: string }

/** Letters alone mean the first correspondence of these letters that the sequence teaches: `a` is the `a` of `cat`. */
export function findSpelling(written: string, sequence: Sequence, phonics: Phonics): FoundSpelling {
  const text = written.trim()
  const sound = /^\/(.+)\/$/.exec(text)?.[1]
  if (sound !== undefined) return { spelling: [(unit) => unit.sound === sound] }
  const ending = /^-([a-z']+)$/i.exec(text)?.[1]?.toLowerCase()
  if (ending !== undefined) return { spelling: [({ kind, letters }) => kind === 'inflection' && letters === ending] }
  if (/\sin\s/.test(text)) {
    const resolved = resolveCorrespondence(text, phonics)
    if ('problem' in resolved) return { problem: toProblemLine(resolved.problem) }
    return {
      spelling: resolved.taught.map(
        ({ key }) =>
          (unit: ListUnit) =>
            unit.key === key,
      ),
    }
  }
  const letters = text.toLowerCase().replace(/^([a-z]+)-([a-z]+)$/, '$1_$2')
  if (!/^[a-z]+(_[a-z]+)?$/.test(letters)) {
    return {
      problem: `\`${written}\` is no spelling. Write letters such as ai, letters with an example such as \`ea as in bread\`, or a sound such as /eɪ/.`,
    }
  }
  const taught = sequence.steps.flatMap(({ adds }) => adds.correspondences).find((one) => one.letters === letters)
  if (taught && !CLUSTER.test(letters)) return { spelling: [({ key }) => key === taught.key] }
  return { spelling: letters.includes('_') ? [(unit) => unit.letters === letters] : { letters } }
}

/** Who asks for `st` means that of `stop`, and not that of `castle`, though a late step teaches it. */
const CLUSTER = /^(?:[bcfgps]l|[bcdfgpt]r|[dt]w|s[ckmnptw]|s[cpt]r|spl)$/

export type Where = 'start' | 'end' | 'any'

/** Tells the row of a table whether the spelling stands at its start, at its end, or anywhere. */
export function toSpellingTest(
  spelling: Spelling,
  where: Where,
  { units, numbers, starts }: SoundTable,
): (row: number) => boolean {
  const fits = 'letters' in spelling ? toLettersFit(spelling.letters, units) : toRunFit(spelling, units)
  return (row) => {
    const at = starts[row] ?? 0
    const from = at + 3
    const to = from + (numbers[at] ?? 0)
    for (let start = from; start < to; start++) {
      if (where === 'start' && start > from) return false
      const end = fits(numbers, start, to)
      if (end >= 0 && (where !== 'end' || end === to)) return true
    }
    return false
  }
}

/** The end of the run that begins at a place; -1 where none does. */
type Fit = (numbers: Uint16Array, start: number, to: number) => number

function toRunFit(run: readonly ((unit: ListUnit) => boolean)[], units: readonly ListUnit[]): Fit {
  const masks = run.map((test) => Uint8Array.from(units, (unit) => (test(unit) ? 1 : 0)))
  return (numbers, start, to) => {
    if (start + masks.length > to) return -1
    return masks.every((mask, at) => mask[numbers[start + at] ?? 0] === 1) ? start + masks.length : -1
  }
}

// Letters that no step teaches together, such as `st`: neighbouring groups that have just these letters, each sounded.
function toLettersFit(letters: string, units: readonly ListUnit[]): Fit {
  return (numbers, start, to) => {
    let joined = ''
    for (let at = start; at < to && joined.length < letters.length; at++) {
      const unit = units[numbers[at] ?? 0]
      if (!unit || unit.kind === 'silent') return -1
      joined += unit.letters
      if (joined === letters) return at + 1
      if (!letters.startsWith(joined)) return -1
    }
    return -1
  }
}
