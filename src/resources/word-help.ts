// What is known of words, from the bytes of the package's files: opened when a message first needs it.

import { createPool, isReadableInAllForms, isUnhelpful, type Pool } from '../finder/index.ts'
import type { Lexicon } from '../phonics/index.ts'
import type { Accent, Phonics } from '../phonics/types.ts'
import { knowledgeAt, toStepIndex } from '../sequence/knowledge.ts'
import { withReader } from '../sequence/reader.ts'
import type { Sequence } from '../sequence/types.ts'
import { createSuggester, type Fitness, type Suggester, toColumn, type WordData } from '../words/index.ts'
import type { SuggestPlace, WordHelp } from './types.ts'
import { openWordFiles, type WordFileBytes } from './word-files.ts'

export interface WordHelpTools {
  readonly files: WordFileBytes
  readonly lexicon: Lexicon
  phonicsFor(accent: Accent): Phonics
  /** Whether it is a built-in sequence, unchanged. */
  isBuiltIn(sequence: Sequence): boolean
}

export interface OpenedWords extends WordHelp {
  readonly data: WordData
  poolFor(place: SuggestPlace): Pool
}

/** The table of first steps leaves out what may not stand for another word. */
const TOLD: Pick<Fitness, 'mayStandFor'> = { mayStandFor: () => true }

export function openWordHelp({ files, lexicon, phonicsFor, isBuiltIn }: WordHelpTools): OpenedWords {
  const opened = openWordFiles(files, lexicon.size)
  const { data } = opened
  const { facts } = data
  const suggesters = new Map<string, Suggester>()
  const fitnessFor = ({ unfit, fit }: Pick<SuggestPlace, 'unfit' | 'fit'>): Fitness =>
    data.fitness({ add: unfit, clear: fit })
  const poolFor = (place: SuggestPlace): Pool => {
    const { sequence, step, reader, unfit, fit } = place
    const builtIn = isBuiltIn(sequence) ? sequence.name : undefined
    const fitness = unfit.length + fit.length > 0 ? fitnessFor(place) : undefined
    return createPool(
      { table: opened.table, facts, lexicon, phonics: phonicsFor(sequence.accent), fitness },
      { sequence, step, builtIn, extra: reader },
    )
  }
  const makeSuggester = (place: SuggestPlace): Suggester => {
    const { sequence, step, reader } = place
    const phonics = phonicsFor(sequence.accent)
    const own = knowledgeAt(sequence, step)
    const knowledge = reader === undefined ? own : withReader(own, reader)
    const judged = new Map<string, boolean>()
    // What the reader knows beyond the step, a sequence of one's own, or words that a school clears, no table can tell.
    const isTold = reader === undefined && place.fit.length === 0 && isBuiltIn(sequence)
    const column = isTold ? data.firstSteps.find(toColumn(sequence.name, sequence.accent)) : undefined
    const now = toStepIndex(sequence, step)
    const judge = (word: string): boolean => {
      const first = column?.standsFrom(word)
      const isReadable =
        first === undefined ? !isUnhelpful(word) && isReadableInAllForms(phonics.read(word), knowledge) : first <= now
      judged.set(word, isReadable)
      return isReadable
    }
    return createSuggester({
      data,
      lexicon,
      fitness: column && place.unfit.length === 0 ? TOLD : fitnessFor(place),
      isReadable: (word) => judged.get(word) ?? judge(word),
      ...(column && { isHelped: (word: string) => column.isHelpedFrom(word) <= now }),
    })
  }
  return {
    data,
    factsOf(word) {
      const place = lexicon.indexOf(word)
      return place < 0 ? undefined : facts.factsAt(place)
    },
    suggesterFor(place) {
      const { sequence, step, ...more } = place
      const key = JSON.stringify([sequence.name, sequence.accent, sequence.reducedVowels, step, more])
      const known = suggesters.get(key) ?? makeSuggester(place)
      suggesters.set(key, known)
      return known
    },
    poolFor,
    fitnessFor,
  }
}
