// Sets of words that belong together: one vowel for a box, pairs that differ in one sound, all vowels in balance.

import { toBases } from '../words/inflect.ts'
import type { FoundWord } from './find.ts'
import type { ListUnit } from './table.ts'

/** Lower-case letters that look alike, as `bdpq`. */
export type LookAlikes = readonly string[]

export interface ProposedSet {
  readonly words: readonly FoundWord[]
  /** What could not be kept to. */
  readonly relaxed: readonly Relaxed[]
}

/**
 * `letters`: letters of a lesser likeness, such as m and n, are both in the set; `first`: two words begin with the same
 * letter; `fewer`: there are fewer words than were asked for.
 */
export type Relaxed = 'letters' | 'first' | 'fewer'

interface Level {
  /** Of each kind of letters that look alike only one may be in the set. */
  readonly kinds: LookAlikes
  readonly isFirstKept: boolean
  readonly relaxed: readonly Relaxed[]
}

/** The first kind (b d p q) is always kept apart: a set that mixes those up teaches guessing. */
const toLevels = (lookAlikes: LookAlikes): readonly Level[] => [
  { kinds: lookAlikes, isFirstKept: true, relaxed: [] },
  { kinds: lookAlikes.slice(0, 1), isFirstKept: true, relaxed: ['letters'] },
  { kinds: lookAlikes.slice(0, 1), isFirstKept: false, relaxed: ['letters', 'first'] },
]

/** Takes words by one level after the other until there are as many as wanted. */
function proposeByLevels(
  all: readonly FoundWord[],
  count: number,
  lookAlikes: LookAlikes,
  takeBy: (isFirstKept: boolean, banned: string) => readonly FoundWord[],
): ProposedSet {
  const ranks = new Map(all.map((found, rank) => [found, rank]))
  let best: ProposedSet = { words: [], relaxed: [] }
  for (const { kinds, isFirstKept, relaxed } of toLevels(lookAlikes)) {
    for (const banned of toBanned(kinds)) {
      const words = takeBy(isFirstKept, banned)
      const isBetter =
        isBetterSet(words, best.words) || (best.relaxed === relaxed && isMoreUseful(words, best.words, ranks))
      if (isBetter) best = { words, relaxed }
    }
    if (best.words.length >= count) return best
  }
  return { ...best, relaxed: [...best.relaxed, 'fewer'] }
}

/** More words; of as many, more first letters. */
const isBetterSet = (words: readonly FoundWord[], others: readonly FoundWord[]): boolean =>
  words.length > others.length || (words.length === others.length && countFirsts(words) > countFirsts(others))

const countFirsts = (words: readonly FoundWord[]): number => new Set(words.map(({ word }) => word[0])).size

/** Of two sets of one size and as many first letters, the one whose words stand further to the front. */
function isMoreUseful(
  words: readonly FoundWord[],
  others: readonly FoundWord[],
  ranks: ReadonlyMap<FoundWord, number>,
): boolean {
  const sumOf = (set: readonly FoundWord[]): number => set.reduce((sum, found) => sum + (ranks.get(found) ?? 0), 0)
  return words.length === others.length && countFirsts(words) === countFirsts(others) && sumOf(words) < sumOf(others)
}

/**
 * As many words as wanted, the most useful that keep to the rules: different first letters, and of letters that look alike
 * only one in the whole set.
 * @param words the most useful first
 */
export const proposeBox = (words: readonly FoundWord[], count: number, lookAlikes: LookAlikes): ProposedSet =>
  proposeByLevels(words, count, lookAlikes, (isFirstKept, banned) => take(words, count, isFirstKept, banned))

/** Every way to keep one letter of each kind: the letters that then must not appear. */
function toBanned(lookAlikes: LookAlikes): readonly string[] {
  return lookAlikes.reduce<readonly string[]>(
    (all, kind) => all.flatMap((banned) => [...kind].map((kept) => banned + kind.replace(kept, ''))),
    [''],
  )
}

/** One word for each first letter, and only then others, where first letters need not differ. */
function take(words: readonly FoundWord[], count: number, isFirstKept: boolean, banned: string): FoundWord[] {
  const allowed = words.filter(({ word }) => ![...banned].some((letter) => word.includes(letter)))
  const taken = allowed.filter(({ word }, at) => allowed.findIndex((other) => other.word[0] === word[0]) === at)
  const others = isFirstKept ? [] : allowed.filter((found) => !taken.includes(found))
  return [...taken, ...others].slice(0, count)
}

/** Two words that differ in one correspondence only: `cap cup`. */
export type Pair = readonly [FoundWord, FoundWord]

/**
 * Minimal pairs for two spellings, the most useful first; no word is used twice, not even in another form, and no pair is said
 * alike (`sale sail`).
 * @param isOne tells the units of the first spelling, `isOther` those of the second
 */
export function proposePairs(
  words: readonly FoundWord[],
  isOne: (unit: ListUnit) => boolean,
  isOther: (unit: ListUnit) => boolean,
  count: number,
): readonly Pair[] {
  const others = new Map<string, { readonly found: FoundWord; readonly sound: string }[]>()
  for (const found of words)
    for (const { frame, sound } of toFrames(found, isOther))
      others.set(frame, [...(others.get(frame) ?? []), { found, sound }])
  const pairs = words.flatMap((one, rank) =>
    toFrames(one, isOne).flatMap(({ frame, sound }) =>
      (others.get(frame) ?? [])
        .filter((other) => other.sound !== sound)
        .map(({ found }) => ({ pair: [one, found] as const, rank: Math.max(rank, words.indexOf(found)) })),
    ),
  )
  const used = new Set<string>()
  const taken: Pair[] = []
  for (const { pair } of pairs.sort((left, right) => left.rank - right.rank)) {
    const names = pair.map(toPlainBase)
    if (taken.length === count || names.some((name) => used.has(name)) || pair[0].word === pair[1].word) continue
    for (const name of names) used.add(name)
    taken.push(pair)
  }
  return taken
}

/** `pins` is `pin` again, so that `pins pens` is no new pair after `pin pen`. */
function toPlainBase({ word, facts }: FoundWord): string {
  if (!word.endsWith('s') || (facts.inflection !== 'plural' && facts.inflection !== 'third')) return word
  return toBases(word).find(({ inflection }) => inflection === facts.inflection)?.base ?? word
}

/** The word with each fitting unit in turn left open: `c=k _ p=p`. */
function toFrames({ pronunciation: { units } }: FoundWord, isMeant: (unit: ListUnit) => boolean): Frame[] {
  return units.flatMap((open, at) =>
    isMeant(open)
      ? [{ frame: units.map((unit, place) => (place === at ? '_' : unit.key)).join(' '), sound: open.sound }]
      : [],
  )
}

interface Frame {
  readonly frame: string
  /** What stands in the open place says this. */
  readonly sound: string
}

/**
 * As many words of each vowel as can be, in turn; within the set different first letters and no look-alikes where that
 * leaves enough.
 * @param vowelOf the key of the vowel by which a word counts; undefined where it does not
 */
export function proposeMixed(
  words: readonly FoundWord[],
  vowels: readonly string[],
  vowelOf: (found: FoundWord) => string | undefined,
  count: number,
  lookAlikes: LookAlikes,
): ProposedSet {
  const groups = vowels
    .map((vowel) => words.filter((found) => vowelOf(found) === vowel))
    .filter((group) => group.length > 0)
  return proposeByLevels(words, count, lookAlikes, (isFirstKept, banned) =>
    takeInTurn(groups, count, isFirstKept, banned),
  )
}

function takeInTurn(
  groups: readonly (readonly FoundWord[])[],
  count: number,
  isFirstKept: boolean,
  banned: string,
): FoundWord[] {
  const taken: FoundWord[] = []
  const isFree = (found: FoundWord): boolean =>
    !taken.includes(found) &&
    ![...banned].some((letter) => found.word.includes(letter)) &&
    !(isFirstKept && taken.some(({ word }) => word[0] === found.word[0]))
  for (;;) {
    const before = taken.length
    for (const group of groups) {
      const next = taken.length < count ? group.find(isFree) : undefined
      if (next) taken.push(next)
    }
    // A round in which a vowel finds no word would tip the balance.
    if (taken.length === before || taken.length >= count) return taken
    if (taken.length - before < groups.length) return taken.slice(0, before)
  }
}
