// Measures how many suggested words fit the sentence, against a table judged by hand.

import { readFileSync } from 'node:fs'
import { isUnhelpful } from '../../src/finder/index.ts'
import type { Lexicon, Phonics } from '../../src/phonics/index.ts'
import type { Sequence } from '../../src/sequence/index.ts'
import { createWordJudge } from '../../src/verdict/index.ts'
import {
  createSuggester,
  type Inflection,
  type PartOfSpeech,
  type Suggester,
  type WordData,
} from '../../src/words/index.ts'
import { readRows } from './read-rows.ts'

export interface SuggestionFigures {
  /** Sentences with one word that cannot be read yet. */
  readonly sentences: number
  /** Of those, the ones that got at least one suggestion; and at least one that fits. */
  readonly answered: number
  readonly helped: number
  /** Whose first suggestion fits. */
  readonly firstFits: number
  readonly suggested: number
  readonly fitting: number
  /** Suggestions that nobody has judged yet: `word step suggestion`. They count as not fitting. */
  readonly unjudged: readonly string[]
}

export interface SuggestionTools {
  readonly lexicon: Lexicon
  readonly phonics: Phonics
  readonly data: WordData
  readonly sequence: Sequence
}

/** One row of tests/words/data/judged-suggestions.tsv. */
interface Row {
  readonly step: string
  readonly part: PartOfSpeech
  readonly inflection: Inflection
  readonly word: string
  readonly fitting: ReadonlySet<string>
  readonly judged: ReadonlySet<string>
}

/** Asks for suggestions as a message does, at the step of each row. */
export function measureSuggestions(tools: SuggestionTools): SuggestionFigures {
  const suggesters = new Map<string, Suggester>()
  const suggesterAt = (step: string): Suggester => {
    const suggester = suggesters.get(step) ?? openSuggester(tools, step)
    suggesters.set(step, suggester)
    return suggester
  }
  const rows = readJudged().map((row) => ({
    row,
    found: suggesterAt(row.step)
      .suggest(row)
      .map(({ word }) => word),
  }))
  const fits = ({ row, found }: (typeof rows)[number]): number => found.filter((word) => row.fitting.has(word)).length
  return {
    sentences: rows.length,
    answered: rows.filter(({ found }) => found.length > 0).length,
    helped: rows.filter((one) => fits(one) > 0).length,
    firstFits: rows.filter(({ row, found }) => row.fitting.has(found[0] ?? '')).length,
    suggested: rows.reduce((sum, { found }) => sum + found.length, 0),
    fitting: rows.reduce((sum, one) => sum + fits(one), 0),
    unjudged: rows.flatMap(({ row, found }) =>
      found.filter((word) => !row.judged.has(word)).map((word) => `${row.word} ${row.step} ${word}`),
    ),
  }
}

function openSuggester({ data, lexicon, phonics, sequence }: SuggestionTools, step: string): Suggester {
  const judge = createWordJudge(sequence, step)
  const isReadable = (word: string): boolean => !isUnhelpful(word) && judge(phonics.read(word)).verdict.readable
  return createSuggester({
    data,
    lexicon,
    fitness: data.fitness(),
    isReadable,
    candidates: () => lexicon.words().filter((word, i) => data.facts.factsAt(i).known > 0 && isReadable(word)),
    soundsOf: (word) => phonics.read(word).pronunciations[0]?.units.map(({ sound }) => sound) ?? [],
  })
}

// pink-6  noun  none  boat  Meg sat in the boat.  +tub -gig: a plus before each word that fits the sentence.
function readJudged(): Row[] {
  const file = new URL('../../tests/words/data/judged-suggestions.tsv', import.meta.url)
  return readRows(readFileSync(file, 'utf8')).map((row) => {
    const [step = '', part = '', inflection = '', word = '', , marks = ''] = row.split('\t')
    const judged = marks.split(' ').filter((mark) => mark !== '')
    return {
      step,
      part: part as PartOfSpeech,
      inflection: inflection as Inflection,
      word,
      fitting: new Set(judged.filter((mark) => mark.startsWith('+')).map((mark) => mark.slice(1))),
      judged: new Set(judged.map((mark) => mark.slice(1))),
    }
  })
}
