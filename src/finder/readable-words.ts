// The words that a child can read and that begin with some letters, most used first.

import { toStraight } from '../apostrophe.ts'
import type { Lexicon } from '../phonics/index.ts'
import type { Phonics } from '../phonics/types.ts'
import type { ReaderExtra, Sequence } from '../sequence/index.ts'
import { findLastIndex } from '../sorted.ts'
import { createWordJudge, type Verdict } from '../verdict/index.ts'
import type { Fitness, WordData, WordFacts } from '../words/index.ts'

export interface WordSource {
  readonly lexicon: Lexicon
  readonly data: WordData
}

interface Completed {
  readonly word: string
  readonly kind: Verdict['kind']
}

/** Words that begin so, in any case. */
export type Completer = (prefix: string) => readonly Completed[]

export interface CompleterSources extends WordSource {
  readonly phonics: Phonics
  readonly sequence: Sequence
  readonly step: string
  readonly reader: ReaderExtra | undefined
  readonly names: readonly string[]
  /** Words that a school adds to those that are never proposed, and those that it clears. */
  readonly unfit: readonly string[]
  readonly fit: readonly string[]
}

const MOST = 40
/** How many words are judged for one completion: a single letter begins some thousand. */
const MOST_JUDGED = 2_000

function createCompleter(sources: CompleterSources): Completer {
  const { data, phonics, sequence, step, reader, names, unfit, fit } = sources
  const judge = createWordJudge(sequence, step, reader ? { reader } : {})
  // Of the built-in list, the data of each word tells.
  const own = unfit.length + fit.length > 0 ? data.fitness({ add: unfit, clear: fit }) : undefined
  return (prefix) => {
    const lower = toStraight(prefix.toLowerCase())
    const found: Completed[] = names
      .filter((name) => name.toLowerCase().startsWith(lower))
      .map((word) => ({ word, kind: 'name' }))
    const most = found.length + MOST
    for (const word of toCandidates(lower, sources, own)) {
      const { readable, kind } = judge(phonics.read(word)).verdict
      if (readable) found.push({ word, kind })
      if (found.length === most) break
    }
    return found
  }
}

/** Words that children know or that are in use. A list of all words would cost more than what is asked here. */
function toCandidates(prefix: string, { data, lexicon }: WordSource, own: Fitness | undefined): readonly string[] {
  const found: { readonly word: string; readonly facts: WordFacts }[] = []
  const from = findLastIndex(lexicon.size, (at) => lexicon.wordAt(at) < prefix) + 1
  const end = from + findLastIndex(lexicon.size - from, (at) => lexicon.wordAt(from + at).startsWith(prefix)) + 1
  for (let at = from; at < end; at++) {
    const facts = data.facts.factsAt(at)
    if (facts.known === 0 || (own === undefined && !facts.fit)) continue
    const word = lexicon.wordAt(at)
    if (own === undefined || own.isFit(word)) found.push({ word, facts })
  }
  found.sort(
    (a, b) => a.facts.rarity - b.facts.rarity || b.facts.known - a.facts.known || a.word.length - b.word.length,
  )
  return found.slice(0, MOST_JUDGED).map(({ word }) => word)
}

const made = new WeakMap<Sequence, Map<string, Completer>>()

/** One completer for all stories of the same sequence, step and words. */
export function findCompleter(sources: CompleterSources): Completer {
  const known = made.get(sources.sequence) ?? new Map<string, Completer>()
  made.set(sources.sequence, known)
  const { step, phonics, reader, names, unfit, fit } = sources
  const key = JSON.stringify([step, phonics.accent, reader, names, unfit, fit])
  const completer = known.get(key) ?? createCompleter(sources)
  // Typing a list of names makes a new one at every letter: only the last few are kept.
  if (known.size > 8) known.clear()
  known.set(key, completer)
  return completer
}
