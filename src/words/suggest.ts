// Finds up to five words that can stand where a child cannot read one: the same part of speech and inflection, near in
// meaning, else near in sound or spelling.

import { toStraight } from '../apostrophe.ts'
import { toDistance, toLeastDistance } from './distance.ts'
import type { PartOfSpeech, WordFacts } from './facts.ts'
import type { Fitness } from './fitness.ts'
import { type Inflection, toBases, toForm } from './inflect.ts'
import { toCaseOf } from './letter-case.ts'
import { isLittleWord, toNearLittleWords } from './little.ts'
import type { WordData } from './word-data.ts'

/** The lexicon's words in order: all that is needed of it here. */
export interface WordOrder {
  /** Place of a lower-case word, or −1. */
  indexOf(word: string): number
  wordAt(index: number): string
}

export interface SuggestSources {
  readonly data: Pick<WordData, 'facts' | 'thesaurus'>
  readonly lexicon: WordOrder
  readonly fitness: Fitness
  /** Whether the child can read the lower-case word. */
  isReadable(word: string): boolean
  /** Lower-case words that the child can read, for what is near in sound or spelling. Read when first needed. */
  readonly candidates: readonly string[] | (() => readonly string[])
  /** Facts of a candidate, where they are at hand; otherwise they are looked up by the lexicon's places. */
  factsOf?(word: string): WordFacts | undefined
  /** The sounds of a word's best pronunciation; without it, only letters are compared. */
  soundsOf?(word: string): readonly string[]
}

/** The word to replace, and how its sentence uses it. */
export interface Wanted {
  /** As written: `Boats`. */
  readonly word: string
  /** Where the sentence does not tell, what the word mainly is. */
  readonly part?: PartOfSpeech | undefined
  readonly inflection?: Inflection | undefined
  /** The word before it, so that `a` is not followed by a vowel. */
  readonly before?: string | undefined
}

export interface Suggestion {
  /** In the case of the original. */
  readonly word: string
  readonly near: 'meaning' | 'sound'
}

export interface Suggester {
  /** At most five, best first; found once for each word and use. */
  suggest(wanted: Wanted): readonly Suggestion[]
}

const MOST = 5

/**
 * What a word near in meaning costs more, by how well children know it, 0 to 3; and where it is mainly another part of
 * speech.
 */
const KNOWN_COST = [Number.POSITIVE_INFINITY, 2.5, 0.5, 0] as const
const OTHER_PART_COST = 5

/** A word that costs more is no nearer in meaning than any other. */
const FARTHEST = 9

/** Words that differ in more than this share of their letters, and of their sounds, are not alike. */
const MOST_UNLIKE = 0.4

/** For one step: the readable words are sorted by use once, when first needed. */
export function createSuggester(sources: SuggestSources): Suggester {
  const found = new Map<string, readonly Suggestion[]>()
  let groups: ReadonlyMap<string, readonly Alike[]> | undefined
  const alike = (use: Use): readonly Alike[] => {
    groups ??= toGroups(sources)
    return groups.get(`${use.part} ${use.inflection}`) ?? []
  }
  return {
    suggest(wanted) {
      const key = `${wanted.word} ${wanted.part} ${wanted.inflection} ${toArticle(wanted.before)}`
      const known = found.get(key) ?? findSuggestions(wanted, sources, alike)
      found.set(key, known)
      return known
    },
  }
}

/** A word that may be near in sound; its sounds are found once, when they are first asked for. */
interface Alike {
  readonly word: string
  readonly sounds: () => readonly string[]
}

interface Use {
  readonly word: string
  readonly part: PartOfSpeech
  readonly inflection: Inflection
}

function findSuggestions(wanted: Wanted, sources: SuggestSources, alike: (use: Use) => readonly Alike[]): Suggestion[] {
  const use = toUse(wanted, sources)
  if (use === undefined) return []
  const article = toArticle(wanted.before)
  const isOffered = (word: string): boolean =>
    word !== use.word &&
    sources.isReadable(word) &&
    sources.fitness.isFit(word) &&
    (article === undefined || /^[aeiou]/.test(word) === (article === 'an'))
  const offered: Suggestion[] = []
  const offer = (near: Suggestion['near'], words: Iterable<string>): void => {
    for (const word of words) {
      if (offered.length === MOST) return
      const cased = toCaseOf(wanted.word, word)
      if (isOffered(word) && !offered.some((other) => other.word === cased)) offered.push({ word: cased, near })
    }
  }
  if (use.part === 'little') {
    offer('meaning', toNearLittleWords(use.word))
    return offered
  }
  offer('meaning', nearInMeaning(use, use.part, sources))
  if (offered.length < MOST) offer('sound', nearInSound(use, alike(use), sources))
  return offered
}

function toUse({ word, part, inflection }: Wanted, { data, lexicon }: SuggestSources): Use | undefined {
  const lower = toStraight(word.toLowerCase())
  if (part === 'little' || (part === undefined && isLittleWord(lower)))
    return { word: lower, part: 'little', inflection: 'none' }
  const index = lexicon.indexOf(lower)
  const facts = index < 0 ? undefined : data.facts.factsAt(index)
  const main = part ?? facts?.main
  if (main === undefined) return undefined
  return { word: lower, part: main, inflection: inflection ?? (main === facts?.main ? facts.inflection : 'none') }
}

function nearInMeaning(use: Use, part: Exclude<PartOfSpeech, 'little'>, { data, lexicon }: SuggestSources): string[] {
  const bases =
    use.inflection === 'none'
      ? [use.word]
      : toBases(use.word)
          .filter((base) => isSameForm(base.inflection, use.inflection))
          .map(({ base }) => base)
  const costs = new Map<string, number>()
  for (const base of bases) {
    const index = lexicon.indexOf(base)
    if (index < 0) continue
    for (const near of data.thesaurus.near(index, part)) {
      const facts = data.facts.factsAt(near.index)
      const cost = near.cost + KNOWN_COST[facts.known] + (facts.main === part ? 0 : OTHER_PART_COST)
      if (cost > FARTHEST) continue
      const form = toForm(lexicon.wordAt(near.index), use.inflection)
      if (cost < (costs.get(form) ?? Number.POSITIVE_INFINITY)) costs.set(form, cost)
    }
  }
  return [...costs]
    .filter(([form]) => lexicon.indexOf(form) >= 0)
    .sort((a, b) => a[1] - b[1])
    .map(([form]) => form)
}

// The past and the participle are one form of most words.
function isSameForm(a: Inflection, b: Inflection): boolean {
  const name = (inflection: Inflection): Inflection => (inflection === 'participle' ? 'past' : inflection)
  return name(a) === name(b)
}

function nearInSound(use: Use, words: readonly Alike[], { soundsOf }: SuggestSources): string[] {
  const sounds = soundsOf?.(use.word) ?? []
  const near: { word: string; distance: number }[] = []
  const isHeard = sounds.length > 0
  for (const { word, sounds: own } of words) {
    if (toLeastDistance(use.word, word) > MOST_UNLIKE && !(isHeard && toLeastDistance(sounds, own()) <= MOST_UNLIKE))
      continue
    const letters = toDistance(use.word, word)
    const heard = isHeard ? toDistance(sounds, own()) : letters
    // Mostly by the nearer of the two; the other one settles what is left.
    const distance = 0.8 * Math.min(letters, heard) + 0.2 * Math.max(letters, heard)
    if (distance <= MOST_UNLIKE) near.push({ word, distance })
  }
  return near.sort((a, b) => a.distance - b.distance).map(({ word }) => word)
}

// Most used first, so that of two that are equally alike the more useful wins.
function toGroups({ candidates, data, lexicon, factsOf, soundsOf }: SuggestSources): Map<string, Alike[]> {
  const known: { word: string; facts: WordFacts }[] = []
  for (const word of typeof candidates === 'function' ? candidates() : candidates) {
    const index = factsOf ? -1 : lexicon.indexOf(word)
    const facts = factsOf ? factsOf(word) : index < 0 ? undefined : data.facts.factsAt(index)
    if (facts?.main !== undefined && facts.fit && facts.known > 0) known.push({ word, facts })
  }
  known.sort((a, b) => b.facts.known - a.facts.known || a.facts.rarity - b.facts.rarity)
  const groups = new Map<string, Alike[]>()
  for (const { word, facts } of known) {
    const key = `${facts.main} ${facts.inflection}`
    const group = groups.get(key)
    let sounds: readonly string[] | undefined
    const alike = { word, sounds: () => (sounds ??= soundsOf?.(word) ?? []) }
    if (group === undefined) groups.set(key, [alike])
    else group.push(alike)
  }
  return groups
}

function toArticle(before: string | undefined): 'a' | 'an' | undefined {
  const lower = before?.toLowerCase()
  return lower === 'a' || lower === 'an' ? lower : undefined
}
