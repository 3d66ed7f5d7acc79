// Rows of the table about words that nobody listed: made words, noises, names.

import { loadBuiltIn } from '../../src/packaged/data.ts'
import { spellWord } from '../../src/phonics/phonics.ts'
import type { Accent } from '../../src/phonics/types.ts'
import type { Sequence } from '../../src/sequence/types.ts'
import type { Engine } from './engine.ts'
import { MADE_KINDS, makeWords, measureMadeWords } from './made-words.ts'
import type { Row } from './rows.ts'
import { measureSaidWords, readSaidWords } from './said-words.ts'

const ACCENT: Accent = 'general-american'
const OWN = "the project's own judgement"

/** Made words by kind; of each kind every second word was unseen while the reader was written. */
export function madeWordRows({ lexicon, phonics }: Engine): readonly Row[] {
  const series = loadBuiltIn('series') as Sequence
  const words = makeWords(
    (word) => lexicon.indexOf(word) >= 0,
    series.steps.map(({ id }) => id),
  )
  return [
    ...MADE_KINDS.map((kind) => ({ name: kind, isIn: (at: number) => words[at]?.kind === kind })),
    { name: 'all, unseen half', isIn: (at: number) => at % 2 === 1 },
  ].map(({ name, isIn }) => {
    const {
      words: count,
      rightStep,
      rightFirst,
      wrong,
    } = measureMadeWords(
      words.filter((_, at) => isIn(at)),
      phonics[ACCENT],
      series,
    )
    return {
      what: `made words judged at the step of their parts, ${name}`,
      published: `${count}`,
      ours: `${rightStep}; read first as a beginner would ${rightFirst}`,
      source: 'by rule of construction',
      ...(wrong.length > 0 ? { note: wrong.slice(0, 2).join('; ') } : {}),
    }
  })
}

/** Noises and names; every second row of their tables was unseen. */
export function saidWordRows({ spelling }: Engine): readonly Row[] {
  const tables = [
    { what: 'noises of picture books', words: readSaidWords('noises') },
    { what: 'names of many lands', words: readSaidWords('names-of-lands') },
  ]
  return tables.flatMap(({ what, words }) =>
    ['seen', 'unseen'].map((half, rest): Row => {
      const found = measureSaidWords(
        words.filter((_, at) => at % 2 === rest),
        (word) => spellWord(word, spelling),
      )
      return {
        what: `${what} said as bearers or readers say them, ${half} half`,
        published: `${found.words}`,
        ours: `${found.right}; said to be unsure ${found.unknown}`,
        source: OWN,
        ...(found.wrong.length > 0 ? { note: `otherwise: ${found.wrong.slice(0, 4).join('; ')}` } : {}),
      }
    }),
  )
}
