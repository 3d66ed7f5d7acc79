// Words for one child: those that begin with some letters, and those that can stand for one that is too hard.

import type { Phonics } from '../phonics/types.ts'
import { createWordJudge, type Verdict } from '../reading/index.ts'
import type { Sequence } from '../sequence/types.ts'
import { createSuggester, type Fitness, type Suggester, type WordFacts } from '../words/index.ts'
import type { WordSource } from './host.ts'

export interface WordHelp {
  /** Readable words that begin so, in any case, most used first. */
  complete(prefix: string): readonly Completed[]
  readonly suggester: Suggester
}

export interface Completed {
  readonly word: string
  readonly kind: Verdict['kind']
}

export interface WordHelpSources extends WordSource {
  readonly phonics: Phonics
  readonly sequence: Sequence
  readonly step: string
  readonly sightWords: readonly string[]
  readonly names: readonly string[]
}

const MOST = 40
/** How many words are judged for one completion: a single letter begins some ten thousand. */
const MOST_JUDGED = 2_000

export function createWordHelp(sources: WordHelpSources): WordHelp {
  const { data, lexicon, phonics, sequence, step, sightWords, names } = sources
  const judge = createWordJudge(sequence, step, { reader: { sightWords } })
  const verdictOn = (word: string): Verdict => judge(phonics.read(word)).verdict
  const isReadable = (word: string): boolean => verdictOn(word).readable
  const fitness = data.fitness()
  const words = lexicon.words()
  return {
    complete(prefix) {
      const lower = prefix.toLowerCase().replaceAll('’', "'")
      const named = names.filter((name) => name.toLowerCase().startsWith(lower)).map((word) => ({ word, kind: 'name' as const }))
      const found: Completed[] = []
      for (const word of toCandidates(lower, words, sources, fitness)) {
        const { readable, kind } = verdictOn(word)
        if (readable) found.push({ word, kind })
        if (found.length === MOST) break
      }
      return [...named, ...found]
    },
    suggester: createSuggester({
      data, lexicon, fitness, isReadable,
      candidates: () => words.filter((word, at) => data.facts.factsAt(at).known > 0 && isReadable(word)),
      soundsOf: (word) => phonics.read(word).readings[0]?.units.map(({ sound }) => sound) ?? [],
    }),
  }
}

/** Words that begin so and are known to children or in use, most used first. */
function toCandidates(prefix: string, words: readonly string[], { data }: WordSource, fitness: Fitness): readonly string[] {
  const found: { readonly word: string; readonly facts: WordFacts }[] = []
  for (let at = findFirst(words, prefix); words[at]?.startsWith(prefix); at++) {
    const word = words[at] ?? ''
    const facts = data.facts.factsAt(at)
    if (facts.fit && facts.known > 0 && fitness.isFit(word)) found.push({ word, facts })
  }
  found.sort((a, b) => a.facts.rarity - b.facts.rarity || b.facts.known - a.facts.known || a.word.length - b.word.length)
  return found.slice(0, MOST_JUDGED).map(({ word }) => word)
}

/** The place of the first word that is not before the prefix. */
function findFirst(words: readonly string[], prefix: string): number {
  let low = 0
  let high = words.length
  while (low < high) {
    const middle = (low + high) >> 1
    if ((words[middle] ?? '') < prefix) low = middle + 1
    else high = middle
  }
  return low
}

const made = new WeakMap<Sequence, Map<string, WordHelp>>()

/** One help for all stories of the same sequence, step and words. */
export function findWordHelp(sources: WordHelpSources): WordHelp {
  const known = made.get(sources.sequence) ?? new Map<string, WordHelp>()
  made.set(sources.sequence, known)
  const key = JSON.stringify([sources.step, sources.phonics.accent, sources.sightWords, sources.names])
  const help = known.get(key) ?? createWordHelp(sources)
  // Typing a list of names makes a new one at every letter: only the last few are kept.
  if (known.size > 8) known.clear()
  known.set(key, help)
  return help
}
