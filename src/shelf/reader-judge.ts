// Judges the different words of many books for one reader, each word once: books × readers is then a matter of adding up.

import type { Phonics } from '../phonics/types.ts'
import { type ReaderExtra, withReader } from '../sequence/reader.ts'
import type { Knowledge } from '../sequence/types.ts'
import { findNamedOwner, hasMixedForms, isAllowedName, judge, keepForm } from '../verdict/index.ts'
import type { Verdict } from '../verdict/types.ts'
import type { KnownWord, Vocabulary, WordId } from './vocabulary.ts'

export interface ReaderJudge {
  /** The verdict on a word where no names are allowed. */
  judge(id: WordId): Verdict
  /** The verdict where a story allows some names, as written, and its settings add sight words. */
  judgeInStory(id: WordId, names: readonly string[], more?: ReaderExtra): Verdict
  /** Whether the sentence must settle which spoken form of a word is meant, for this reader to be judged. */
  isMixed(text: string): boolean
}

const FOREIGN: Verdict = { readable: false, kind: 'unreadable', reasons: [], pronunciation: undefined, guessed: false }

export function createReaderJudge(phonics: Phonics, knowledge: Knowledge, vocabulary: Vocabulary): ReaderJudge {
  const verdicts: (Verdict | undefined)[] = []
  const mixed = new Map<string, boolean>()
  const judgeKnown = ({ text, form, spoken }: KnownWord, names: readonly string[], known: Knowledge): Verdict =>
    form === 'foreign' ? FOREIGN : judge(keepForm(phonics.read(text), spoken), known, names)
  const judgeId = (id: WordId): Verdict => (verdicts[id] ??= judgeKnown(vocabulary.wordAt(id), [], knowledge))
  return {
    judge: judgeId,
    // Names and more sight words only count where the word cannot be read in another way, so most words need no second look.
    judgeInStory(id, names, more) {
      const plain = judgeId(id)
      if (plain.readable) return plain
      const word = vocabulary.wordAt(id)
      const isChanged = more?.sightWords !== undefined && more.sightWords.length > 0
      if (!isChanged && !isName(word.text, names)) return plain
      return judgeKnown(word, names, isChanged ? withReader(knowledge, more) : knowledge)
    },
    isMixed(text) {
      let isMixed = mixed.get(text)
      if (isMixed === undefined) {
        isMixed = hasMixedForms(phonics.read(text), (meant) => judge(meant, knowledge).readable)
        mixed.set(text, isMixed)
      }
      return isMixed
    },
  }
}

/** Whether the names of a story may make a difference to a word. */
export function isName(text: string, names: readonly string[]): boolean {
  return isAllowedName(text, names) || findNamedOwner(text, names) !== undefined
}
