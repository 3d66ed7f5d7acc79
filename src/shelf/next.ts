// Which single thing to teach next: the one that opens most books of a shelf to a reader.

import type { CorrespondenceKey } from '../phonics/types.ts'
import { type BookGap, findLeast, toShareOf } from './match.ts'

/** One thing to teach, and what it is good for on this shelf. */
export interface NextLesson {
  readonly kind: 'correspondence' | 'word'
  /** The correspondence, or the word as it stands in the books. */
  readonly what: CorrespondenceKey | string
  /** The places, in the list that was handed in, of the books that it makes ready. */
  readonly opens: readonly number[]
  /** Running words won in books that are not ready. */
  readonly wins: number
  /** Words that become readable, the commonest first. */
  readonly words: readonly string[]
}

/**
 * The best first: by the books that become ready, then by the running words won, and of equals what letters say before a
 * word by heart. A word is proposed by heart only where letters that are taught somewhere do not make it readable (`th`,
 * not `that`), and where it is no matter of its length or shape, which a step brings.
 * @param share from which a book is ready, 0 to 1
 */
export function findNext(gaps: readonly BookGap[], share: number): readonly NextLesson[] {
  const found = new Map<string, Draft>()
  for (const [at, gap] of gaps.entries()) {
    if (toShareOf(gap) >= share) continue
    for (const [what, draft] of collect(gap)) {
      const sum: Draft = found.get(what) ?? {
        kind: draft.kind,
        what,
        opens: [],
        words: new Map<string, number>(),
        wins: 0,
      }
      found.set(what, sum)
      sum.wins += draft.wins
      for (const [word, times] of draft.words) sum.words.set(word, (sum.words.get(word) ?? 0) + times)
      if (gap.readable + draft.wins >= findLeast(gap.words, share)) sum.opens.push(at)
    }
  }
  return [...found.values()]
    .sort(
      (one, other) =>
        other.opens.length - one.opens.length ||
        other.wins - one.wins ||
        (one.kind < other.kind ? -1 : one.kind > other.kind ? 1 : 0),
    )
    .map(({ words, ...draft }) => ({
      ...draft,
      words: [...words].sort((one, other) => other[1] - one[1]).map(([word]) => word),
    }))
}

interface Draft {
  readonly kind: NextLesson['kind']
  readonly what: string
  readonly opens: number[]
  readonly words: Map<string, number>
  wins: number
}

/** What each single lesson would win in one book. */
function collect({ missing }: BookGap): ReadonlyMap<string, Draft> {
  const drafts = new Map<string, Draft>()
  for (const { word, times, needs, comesWithSteps } of missing) {
    if (needs === undefined && comesWithSteps) continue
    // A word that lacks several correspondences is won by no single lesson.
    if (needs !== undefined && needs.length !== 1) continue
    const kind = needs === undefined ? 'word' : 'correspondence'
    const what = needs?.[0] ?? word
    const draft: Draft = drafts.get(what) ?? { kind, what, opens: [], words: new Map(), wins: 0 }
    drafts.set(what, draft)
    draft.words.set(word, (draft.words.get(word) ?? 0) + times)
    draft.wins += times
  }
  return drafts
}
