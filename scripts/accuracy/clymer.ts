// Counts phonic generalisations over the primary-grade vocabulary, beside the published shares.

import { readFileSync } from 'node:fs'
import { daleChall } from 'dale-chall'
import { spache } from 'spache'
import { isVowel } from '../../src/phonics/arpabet.ts'
import { type CountedWord, RULES } from './clymer-rules.ts'
import type { Engine } from './engine.ts'

interface Published {
  readonly n: string
  readonly statement: string
  readonly example: string | null
  readonly utilityPct: number
}

export interface Generalisation {
  readonly n: string
  readonly statement: string
  /** Share of 0 to 1, published and counted; `words` is how many it applies to. */
  readonly published: number
  readonly ours: number
  readonly words: number
  /** How far ours may lie from the published share. */
  readonly allowed: number
  /** Why ours lies further, where it does and the reason is known. */
  readonly why: string | undefined
}

const CONSONANTS: ReadonlySet<string> = new Set(['20', '21', '22', '23', '24', '25', '26', '27', '28', '29'])

const WHY: ReadonlyMap<string, string> = new Map([
  ['6-ui', 'he has 1 word of 17 with a long u; we call the sound of fruit, juice and suit one'],
  ['7', 'our lists hold cookie, movie and plurals in -ies, whose sound was then written as a short i'],
  ['10', 'Monday and the other days ended in a short i in his dictionary; they are read with day in full here'],
  ['12', 'our lists hold many words in way and ward (highway, sideways, reward), which go against it'],
  ['13', 'new, knew, dew and news had the sound of few in the dictionaries of his time'],
  ['21', 'school and its compounds are five of our thirteen exceptions; he had five in all'],
  ['34', 'the y of baby was written as a short i then, and is written as a long e now'],
])

/** A consonant letter is a matter of fact; how vowels were told apart in 1963 was not ours. */
const toAllowed = (n: string): number => (CONSONANTS.has(n) ? 0.05 : 0.12)

export function measureGeneralisations(engine: Engine): readonly Generalisation[] {
  const words = countedWords(engine)
  const { rows } = JSON.parse(readFileSync(new URL('data/clymer.json', import.meta.url), 'utf8')) as {
    rows: readonly Published[]
  }
  return rows.flatMap(({ n, statement, utilityPct }) => {
    const rule = RULES[n]
    if (!rule) return []
    const answers = words.map(rule).filter((answer) => answer !== undefined)
    const ours = answers.filter(Boolean).length / Math.max(1, answers.length)
    return [
      {
        n,
        statement,
        published: utilityPct / 100,
        ours,
        words: answers.length,
        allowed: toAllowed(n),
        why: WHY.get(n),
      },
    ]
  })
}

/** The words of two lists for the primary grades, as the dictionary's first pronunciation has them in General American. */
function countedWords({ spelling, phonics }: Engine): readonly CountedWord[] {
  const words = [...new Set([...daleChall, ...spache].map((word) => word.toLowerCase()))].filter((word) =>
    /^[a-z]{2,}$/.test(word),
  )
  return words.flatMap((word) => {
    const { source, cuttings } = spelling.spell(word)
    const [pronunciation] = phonics['general-american'].read(word).pronunciations
    const units = cuttings[0]?.raw.units
    if (source === 'guess' || !units || !pronunciation) return []
    return [{ word, units, stress: units.flatMap(toStress), syllables: pronunciation.syllables }]
  })
}

const toStress = ({ phones, stress }: CountedWord['units'][number]): readonly (0 | 1 | 2)[] =>
  phones.filter(isVowel).map((_, at) => (at === 0 ? (stress ?? 0) : 0))
