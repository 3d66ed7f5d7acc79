// The one count of a story's words: how often each runs, on which pages, and which are new. Rules, `shelf`, `match` and
// `level` all stand on it.

import type { Sentence, Story, Word } from '../story/types.ts'
import { toWordKey } from '../verdict/index.ts'

/** What a place in a sentence adds to a word's letters: the spoken form that is meant, and whether a long name holds it. */
export interface Sense {
  /**
   * As in `Pronunciation.form`, or `ABBREVIATED` where it is an abbreviation here; undefined for a word with one spoken form, or where
   * the sentence does not tell.
   */
  readonly spoken: string | undefined
  /** Whether it stands in an allowed name of several words. */
  readonly isInName: boolean
}

export interface FindSense {
  (word: Word, sentence: Sentence): Sense
  /** Whether no sentence can give this text a sense of its own: it has one spoken form and stands in no name of several words. */
  isAlwaysPlain(text: string): boolean
}

/** Words that are judged alike: the same letters in the same sense. Holds the first place where they stand. */
export interface WordUse extends Sense {
  readonly key: string
  /** As written: `The` and `the` are two uses of one word. */
  readonly text: string
  readonly form: 'word' | 'foreign'
  readonly word: Word
  readonly sentence: Sentence
  /** Running words. */
  readonly times: number
}

interface PageCount {
  readonly page: number
  /** Running words by use, in order of first place. */
  readonly uses: ReadonlyMap<WordUse, number>
}

export interface StoryCount {
  readonly pages: readonly PageCount[]
  /** In order of first place. */
  readonly uses: readonly WordUse[]
  /** Running words. Numerals are none, as in `toFigures`. */
  readonly words: number
}

type Tally = { -readonly [Field in keyof WordUse]: WordUse[Field] } & {
  /** Running words on the page in hand, and which page that is. */
  onPage: number
  page: PageTally | undefined
}

interface PageTally {
  readonly page: number
  readonly uses: Tally[]
}

/** Walks a story once. Every running word passes here, so a word without a sense of its own costs one look-up. */
export function countStory({ pages }: Pick<Story, 'pages'>, findSense: FindSense): StoryCount {
  const plain = new Map<string, Tally>()
  const others = new Map<string, Tally>()
  const all: Tally[] = []
  let words = 0
  const toUse = (word: Word, sentence: Sentence): Tally => {
    const known = plain.get(word.text)
    if (known !== undefined) return known
    const sense = findSense(word, sentence)
    const isPlain = findSense.isAlwaysPlain(word.text)
    const name = isPlain ? word.text : toUseName({ text: word.text, ...sense })
    const before = others.get(name)
    if (before !== undefined) return before
    const use = toTally(word, sentence, sense)
    ;(isPlain ? plain : others).set(name, use)
    all.push(use)
    return use
  }
  const counted = pages.map((page): PageCount => {
    const tally: PageTally = { page: page.number, uses: [] }
    for (const block of page.blocks) {
      for (const sentence of block.sentences) {
        for (const word of sentence.words) {
          if (word.form === 'numeral') continue
          countOnPage(toUse(word, sentence), tally)
          words++
        }
      }
    }
    return { page: page.number, uses: new Map(tally.uses.map((use) => [use, use.onPage])) }
  })
  return { pages: counted, uses: all, words }
}

function countOnPage(use: Tally, page: PageTally): void {
  use.times++
  if (use.page !== page) {
    use.page = page
    use.onPage = 0
    page.uses.push(use)
  }
  use.onPage++
}

/** Uses that are counted as one have one name. */
export const toUseName = ({ text, spoken, isInName }: Pick<WordUse, 'text' | 'spoken' | 'isInName'>): string =>
  `${text}\n${spoken ?? ''}\n${isInName ? 'name' : ''}`

function toTally(word: Word, sentence: Sentence, { spoken, isInName }: Sense): Tally {
  const { text, form } = word
  return {
    key: toWordKey(text),
    text,
    form: form === 'foreign' ? form : 'word',
    spoken,
    isInName,
    word,
    sentence,
    times: 0,
    onPage: 0,
    page: undefined,
  }
}

/** Different words with their running words, in order of first place. */
export function toWordCounts({ uses }: Pick<StoryCount, 'uses'>): ReadonlyMap<string, number> {
  const counts = new Map<string, number>()
  for (const { key, times } of uses) counts.set(key, (counts.get(key) ?? 0) + times)
  return counts
}

/** Words as `toWordKey` writes them. */
export type WordSet = Pick<ReadonlySet<string>, 'has'> & Iterable<string>

/** A different word where the story first has it, and how often the story has it. */
export interface DifferentWord {
  readonly key: string
  /** Its first place. */
  readonly word: Word
  /** All uses of it. */
  readonly uses: readonly WordUse[]
  readonly times: number
}

/** The different words in order of first place. */
export function toDifferentWords({ uses }: Pick<StoryCount, 'uses'>): readonly DifferentWord[] {
  const found = new Map<string, { key: string; word: Word; uses: WordUse[]; times: number }>()
  for (const use of uses) {
    const { key, word, times } = use
    const known = found.get(key)
    if (known === undefined) found.set(key, { key, word, uses: [use], times })
    else {
      known.uses.push(use)
      known.times += times
    }
  }
  return [...found.values()]
}

/**
 * The one answer to what is new: a different word that neither the earlier books nor an earlier page has used.
 * @param earlier what the readers have met in earlier books, as `toWordKey` writes it
 */
export function findNewWords(count: Pick<StoryCount, 'uses'>, earlier: WordSet = new Set()): readonly DifferentWord[] {
  return toDifferentWords(count).filter(({ key }) => !earlier.has(key))
}
