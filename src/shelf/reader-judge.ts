// Judges the different words of many books for one reader, each word once: books × readers is then a matter of adding up.

import type { Phonics } from '../phonics/types.ts'
import { findNamedOwner, hasMixedForms, isAllowedName, judge, keepForm } from '../reading/index.ts'
import type { Verdict } from '../reading/types.ts'
import type { Knowledge } from '../sequence/types.ts'
import type { KnownWord, Vocabulary, WordId } from './vocabulary.ts'

export interface ReaderJudge {
  /** The verdict on a word where no names are allowed. */
  judge(id: WordId): Verdict
  /** The verdict where the story allows some names, as written. */
  judgeWithNames(id: WordId, names: readonly string[]): Verdict
  /** Whether the sentence must settle which spoken form of a word is meant, for this reader to be judged. */
  isMixed(text: string): boolean
}

const FOREIGN: Verdict = { readable: false, kind: 'unreadable', reasons: [], reading: undefined, guessed: false }

export function createReaderJudge(phonics: Phonics, knowledge: Knowledge, vocabulary: Vocabulary): ReaderJudge {
  const verdicts: (Verdict | undefined)[] = []
  const judgeKnown = ({ text, form, spoken }: KnownWord, names: readonly string[]): Verdict =>
    form === 'foreign' ? FOREIGN : judge(keepForm(phonics.read(text), spoken), knowledge, names)
  const judgeId = (id: WordId): Verdict => (verdicts[id] ??= judgeKnown(vocabulary.wordAt(id), []))
  return {
    judge: judgeId,
    // A name only counts where the word cannot be read in another way, so most words need no second look.
    judgeWithNames(id, names) {
      const plain = judgeId(id)
      if (plain.readable || names.length === 0) return plain
      const word = vocabulary.wordAt(id)
      return isName(word.text, names) ? judgeKnown(word, names) : plain
    },
    isMixed: (text) => hasMixedForms(phonics.read(text), (meant) => judge(meant, knowledge).readable),
  }
}

/** Whether the names of a story may make a difference to a word. */
export function isName(text: string, names: readonly string[]): boolean {
  return isAllowedName(text, names) || findNamedOwner(text, names) !== undefined
}
