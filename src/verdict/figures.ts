// The figures of a page, a book or a shelf, counted from verdicts: one definition for every report.

import { toStraight } from '../apostrophe.ts'
import type { Figures, Verdict } from './types.ts'

/** A running word and its verdict. */
export interface CountedWord {
  readonly text: string
  /** As in the story: a `numeral` is not counted; a `foreign` word is a word that the child cannot read. */
  readonly form: 'word' | 'numeral' | 'foreign'
  readonly verdict: Verdict
  /** How often it runs; 1 where nothing is said. */
  readonly times?: number
  /** What `toWordKey` makes of it, where that is known. */
  readonly key?: string
}

/** The one answer to what makes two words of a story the same word: letter case and the shape of an apostrophe do not part them. */
export function toWordKey(text: string): string {
  return toStraight(text).toLowerCase()
}

/**
 * Counts running words. `6` and `3rd` are no words here: a rule of their own speaks of them.
 * The decodable share is the one that the Texas Education Agency set apart in 2000 from the share that a child can read
 * (its "potential for accuracy"): sight words and names count in `readableShare` only.
 */
export function toFigures(words: Iterable<CountedWord>): Figures {
  const tally = createTally()
  for (const { form, verdict, times = 1 } of words) tally.add(form, verdict.kind, times)
  return tally.figures()
}

/** Counts as `toFigures` does, one word after another. */
export interface Tally {
  add(form: CountedWord['form'], kind: Verdict['kind'], times: number): void
  figures(): Figures
}

export function createTally(): Tally {
  const counts = { decodable: 0, sight: 0, name: 0, unreadable: 0 }
  return {
    add(form, kind, times) {
      if (form !== 'numeral') counts[toKind(form, { kind })] += times
    },
    figures: () => toShares(counts),
  }
}

/** What counts for a word that is no numeral: one in foreign letters cannot be read. */
export const toKind = (form: CountedWord['form'], { kind }: Pick<Verdict, 'kind'>): Verdict['kind'] =>
  form === 'foreign' ? 'unreadable' : kind

export function toShares({ decodable, sight, name: names, unreadable }: Record<Verdict['kind'], number>): Figures {
  const total = decodable + sight + names + unreadable
  return {
    words: total,
    decodable,
    sight,
    names,
    unreadable,
    decodableShare: toShare(decodable, total),
    readableShare: toShare(total - unreadable, total),
  }
}

/**
 * Counts different words: `The` and `the` are one. A word judged in two ways (a name and a plain word, two spoken
 * forms) counts once, as the harder of the two.
 */
export function toDifferentFigures(words: Iterable<CountedWord>): Figures {
  const different = new Map<string, CountedWord>()
  for (const word of words) {
    const key = word.key ?? toWordKey(word.text)
    const before = different.get(key)
    if (before === undefined || isHarder(word.verdict, before.verdict)) different.set(key, word)
  }
  const tally = createTally()
  for (const { form, verdict } of different.values()) tally.add(form, verdict.kind, 1)
  return tally.figures()
}

/** A word that is judged in two ways counts as the later. */
export const BY_HARDNESS: readonly Verdict['kind'][] = ['decodable', 'name', 'sight', 'unreadable']

function isHarder(left: Verdict, right: Verdict): boolean {
  return BY_HARDNESS.indexOf(left.kind) > BY_HARDNESS.indexOf(right.kind)
}

function toShare(part: number, whole: number): number {
  return whole === 0 ? 1 : part / whole
}
