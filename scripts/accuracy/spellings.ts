// How each sound is spelt and what each spelling says, over all words in use, in General American.

import { frequencyRank } from '../build/frequency.ts'
import type { Engine } from './engine.ts'

/** One spelling of a sound, or one sound of a spelling, with its share of 0 to 1 and an example. */
interface Share {
  readonly name: string
  readonly share: number
  readonly count: number
  readonly example: string
}

export interface Table {
  readonly name: string
  readonly count: number
  readonly shares: readonly Share[]
}

type Tally = Map<string, Map<string, { count: number; example: string }>>

/** Counts the units of the first pronunciation of every word of the dictionary that is in use (most others are names), endings apart. */
export function measureSpellings({ phonics }: Engine): {
  readonly bySound: readonly Table[]
  readonly bySpelling: readonly Table[]
} {
  const bySound: Tally = new Map()
  const bySpelling: Tally = new Map()
  // The most used word with a spelling is its example.
  for (const [word] of [...frequencyRank].sort((x, y) => x[1] - y[1])) {
    const {
      source,
      pronunciations: [pronunciation],
    } = phonics['general-american'].read(word)
    if (source === 'guess') continue
    for (const unit of pronunciation?.units ?? []) {
      if (unit.kind === 'inflection') continue
      const letters = unit.base ?? unit.letters
      const sound = unit.sound === '' ? '(silent)' : unit.sound
      add(bySound, sound, letters, word)
      add(bySpelling, letters, sound, word)
    }
  }
  return { bySound: toTables(bySound), bySpelling: toTables(bySpelling) }
}

function add(tally: Tally, name: string, other: string, word: string): void {
  const row = tally.get(name) ?? new Map<string, { count: number; example: string }>()
  tally.set(name, row)
  const cell = row.get(other)
  if (!cell) row.set(other, { count: 1, example: word })
  else cell.count++
}

const toTables = (tally: Tally): readonly Table[] =>
  [...tally]
    .map(([name, row]) => {
      const count = [...row.values()].reduce((sum, cell) => sum + cell.count, 0)
      const shares = [...row].map(([other, cell]) => ({ name: other, share: cell.count / count, ...cell }))
      return { name, count, shares: shares.sort((x, y) => y.count - x.count) }
    })
    .sort((x, y) => y.count - x.count)
