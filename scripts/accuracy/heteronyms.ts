// Measures how often the sentence settles a heteronym rightly, over the project's own sentences.

import { readFile } from 'node:fs/promises'
import { type Settlement, settle } from '../../src/phonics/heteronyms/settle.ts'
import { loadTagger, type Tagger } from '../../src/phonics/heteronyms/tagger.ts'
import { cutWords } from '../build/heteronyms/examples.ts'
import { table } from '../build/heteronyms/table.ts'
import type { HeteronymCase } from './heteronym-case.ts'
import { readWikipediaCases } from './heteronyms-wikipedia.ts'
import { readWordNetCases } from './heteronyms-wordnet.ts'

/** Shares of 0 to 1 over `sentences`; `withoutTagger` is the share that needs no tagger. */
interface HeteronymShares {
  readonly sentences: number
  readonly right: number
  readonly wrong: number
  readonly unsettled: number
  readonly withoutTagger: number
}

export interface HeteronymResult extends HeteronymCase {
  readonly settlement: Settlement
  readonly usedTagger: boolean
}

const SENTENCES = new URL('../../tests/phonics/data/heteronym-sentences.tsv', import.meta.url)

/** Of real stories (their titles, authors and licences are in heteronym-stories.tsv) and made; judged before the program saw them. */
const JUDGED = new URL('data/heteronym-sentences.tsv', import.meta.url)

/**
 * Two later draws: words and forms by a seed with a sentence made for each, and further stories. By the third set faults were mended;
 * the fourth was drawn when that was done. Both were judged before the program saw them.
 */
const LATER = new URL('data/heteronym-later.tsv', import.meta.url)

/**
 * Of open text: example sentences of a dictionary (Debian's trans-de-en, Ding) and of the tales of a game (Debian's wesnoth-1.16
 * campaigns; see heteronym-open-sources.tsv), drawn by a seed for each word and judged before the program saw them.
 */
const OPEN = new URL('data/heteronym-open.tsv', import.meta.url)

/**
 * Of books for children that are out of copyright, in their natural frequency (see heteronym-public-sources.tsv): all that stand in stretches
 * drawn by a seed, judged before the program saw them; half of the first draw was looked at while tuning.
 */
const PUBLIC = new URL('data/heteronym-public.tsv', import.meta.url)

/** Of nineteen further such books (see heteronym-public-sources.tsv): judged before the program saw them, and looked at once before faults were mended by them. */
const NINETEEN = new URL('data/heteronym-blind.tsv', import.meta.url)

/**
 * Of books for small children and of tales, drawn after (see heteronym-public-sources.tsv), judged before the program saw them, and looked at once
 * before faults were mended by them.
 */
const BOOKS = new URL('data/heteronym-books.tsv', import.meta.url)

/** Of fifteen further books for children, and of other stretches of them and of four read before; each looked at once before faults were mended by it. */
const THIRD_BOOKS = new URL('data/heteronym-books-third.tsv', import.meta.url)
const FOURTH_BOOKS = new URL('data/heteronym-books-fourth.tsv', import.meta.url)
const FIFTH_BOOKS = new URL('data/heteronym-books-fifth.tsv', import.meta.url)
const LAST_BOOKS = new URL('data/heteronym-books-last.tsv', import.meta.url)

/**
 * Of modern stories for small children, all that stand in them, story after story in an order fixed beforehand (see heteronym-modern-sources.tsv); judged
 * before the program saw them, and looked at once before faults were mended by them.
 */
const MODERN = new URL('data/heteronym-modern.tsv', import.meta.url)

/** Of 42 other books for small children; judged before the program saw them, looked at once, and then the model learned from them. */
const SIXTH_BOOKS = new URL('data/heteronym-books-sixth.tsv', import.meta.url)

/** Of further modern stories; judged before the program saw them, nothing tuned by them before the first look, and the model does not learn from them. */
const MODERN_LATER = new URL('data/heteronym-modern-second.tsv', import.meta.url)

/** Of further modern stories, and made ones; the same holds. */
const MIXED = new URL('data/heteronym-mixed.tsv', import.meta.url)

/** Of other stories, and made ones; the same holds, but two faults were mended by them after. */
const FINAL = new URL('data/heteronym-final.tsv', import.meta.url)

/** Draws after it, of stories and made; each judged before the program saw it, and looked at once before faults were mended by it. */
const BLIND_SECOND = new URL('data/heteronym-blind-second.tsv', import.meta.url)
const BLIND_THIRD = new URL('data/heteronym-blind-third.tsv', import.meta.url)
const BLIND_FOURTH = new URL('data/heteronym-blind-fourth.tsv', import.meta.url)
const BLIND_FIFTH = new URL('data/heteronym-blind-fifth.tsv', import.meta.url)

/** Five draws after those, of stories old and new and made; judged before the program saw them, looked at once, and nothing was mended by them. */
const BLIND_SIXTH = new URL('data/heteronym-blind-sixth.tsv', import.meta.url)

export const readHeteronymCases = (): Promise<readonly HeteronymCase[]> => readCases(SENTENCES)

const LATER_BOOKS: ReadonlySet<string> = new Set(
  'baum-land burnett-lord collodi coolidge nesbit-amulet nesbit-city sidney'.split(' '),
)

const TALES: ReadonlySet<string> = new Set(
  (
    'baum-magic baum-scarecrow baum-tiktok burgess-blacky jacobs-indian lang-brown lang-crimson lang-green lang-lilac ozaki ' +
    'potter-nutkin'
  ).split(' '),
)

const UNSEEN: ReadonlySet<string> = new Set(['fourth', 'held-out', 'last', 'public-unseen', 'tales-unseen', 'unseen'])

async function readCases(file: URL): Promise<readonly HeteronymCase[]> {
  const [, ...lines] = (await readFile(file, 'utf8')).trimEnd().split('\n')
  return lines.map((line) => {
    const [sentence = '', word = '', form = '', set = '', from = ''] = line.split('\t')
    return { sentence, word, form, set: UNSEEN.has(set) ? 'held-out' : 'dev', from }
  })
}

export interface HeteronymMeasure {
  /** The project's own sentences that the program was tuned on. */
  readonly dev: HeteronymShares
  /** The project's own sentences that it was not. */
  readonly heldOut: HeteronymShares
  /** Sentences of stories and made ones, half of them looked at while tuning. */
  readonly tuning: HeteronymShares
  /** The other half. */
  readonly unseen: HeteronymShares
  /** A later draw of stories and made sentences, by which faults were mended. */
  readonly third: HeteronymShares
  /** A draw after it. */
  readonly fourth: HeteronymShares
  /** Example sentences of a dictionary, all of them looked at while faults were mended. */
  readonly dictionary: HeteronymShares
  /** Sentences of tales, half of them looked at while tuning. */
  readonly tales: HeteronymShares
  /** The other half, by which one fault was mended. */
  readonly talesUnseen: HeteronymShares
  /** Look-alikes of books for children, half of them looked at while tuning. */
  readonly public: HeteronymShares
  /** The other half, by which faults were mended after. */
  readonly publicUnseen: HeteronymShares
  /** A later draw from other books. */
  readonly publicLater: HeteronymShares
  /** Nineteen further books, by which faults were mended after one look. */
  readonly nineteen: HeteronymShares
  /** Books for small children, by which faults were mended after one look. */
  readonly smallChildren: HeteronymShares
  /** Eleven further books of tales, by which faults were mended after one look. */
  readonly eleven: HeteronymShares
  /** Fifteen further books, by which faults were mended after one look. */
  readonly fifteen: HeteronymShares
  /** Other stretches of books for children, by which faults were mended after one look. */
  readonly stretches: HeteronymShares
  /** More of them, drawn when that was done. */
  readonly moreStretches: HeteronymShares
  /** The last of them, drawn when that was done. */
  readonly lastStretches: HeteronymShares
  /** Modern stories for small children, in an order fixed beforehand, by which faults were mended after one look. */
  readonly modern: HeteronymShares
  /** Further modern stories, in natural frequency. */
  readonly modernLater: HeteronymShares
  /** Further ones, and made. */
  readonly mixed: HeteronymShares
  /** Other stories, and made. */
  readonly final: HeteronymShares
  readonly blindSecond: HeteronymShares
  readonly blindThird: HeteronymShares
  readonly blindFourth: HeteronymShares
  readonly blindFifth: HeteronymShares
  readonly blindSixth: HeteronymShares
  /** 42 other books for small children, from which the model learned after one look. */
  readonly fortyTwo: HeteronymShares
  /** Example phrases of WordNet 3.1, written by others; the part of speech of the sense tells the pronunciation. */
  readonly wordNet: HeteronymShares
  /** Sentences of Wikipedia, chosen and judged by others; nothing is tuned by them. */
  readonly wikipedia: HeteronymShares
}

/** Right, wrong and unsettled shares over the three sets. */
export async function measureHeteronyms(): Promise<HeteronymMeasure> {
  const tagger = await loadTagger()
  const measure = async (file: URL): Promise<readonly HeteronymResult[]> =>
    (await readCases(file)).map((item) => toResult(item, tagger))
  const results = (await readHeteronymCases()).map((item) => toResult(item, tagger))
  const judged = await measure(JUDGED)
  const later = await measure(LATER)
  const open = await measure(OPEN)
  const books = await measure(PUBLIC)
  const nineteen = await measure(NINETEEN)
  const small = await measure(BOOKS)
  const fifteen = await measure(THIRD_BOOKS)
  const stretches = await measure(FOURTH_BOOKS)
  const more = await measure(FIFTH_BOOKS)
  const last = await measure(LAST_BOOKS)
  const modern = await measure(MODERN)
  const modernLater = await measure(MODERN_LATER)
  const mixed = await measure(MIXED)
  const final = await measure(FINAL)
  const blindSecond = await measure(BLIND_SECOND)
  const blindThird = await measure(BLIND_THIRD)
  const blindFourth = await measure(BLIND_FOURTH)
  const blindFifth = await measure(BLIND_FIFTH)
  const blindSixth = await measure(BLIND_SIXTH)
  const fortyTwo = await measure(SIXTH_BOOKS)
  const isLater = ({ from = '' }: HeteronymCase): boolean => LATER_BOOKS.has(from)
  const isOfTales = ({ from = '' }: HeteronymCase): boolean => TALES.has(from)
  return {
    public: toShares(books.filter((item) => item.set === 'dev' && !isLater(item))),
    publicUnseen: toShares(books.filter(({ set }) => set === 'held-out')),
    publicLater: toShares(books.filter(isLater)),
    nineteen: toShares(nineteen),
    smallChildren: toShares(small.filter((item) => item.set === 'dev' && !isOfTales(item))),
    eleven: toShares(small.filter((item) => item.set === 'dev' && isOfTales(item))),
    fifteen: toShares(fifteen),
    stretches: toShares(stretches),
    moreStretches: toShares(more),
    lastStretches: toShares(last),
    modern: toShares(modern),
    modernLater: toShares(modernLater),
    mixed: toShares(mixed),
    final: toShares(final),
    blindSecond: toShares(blindSecond),
    blindThird: toShares(blindThird),
    blindFourth: toShares(blindFourth),
    blindFifth: toShares(blindFifth),
    blindSixth: toShares(blindSixth),
    fortyTwo: toShares(fortyTwo),
    dictionary: toShares(open.filter(({ from }) => from === 'trans-de-en')),
    tales: toShares(open.filter(({ from, set }) => from === 'wesnoth' && set === 'dev')),
    talesUnseen: toShares(open.filter(({ from, set }) => from === 'wesnoth' && set === 'held-out')),
    third: toShares(later.filter(({ set }) => set === 'dev')),
    fourth: toShares(later.filter(({ set }) => set === 'held-out')),
    tuning: toShares(judged.filter(({ set }) => set === 'dev')),
    unseen: toShares(judged.filter(({ set }) => set === 'held-out')),
    dev: toShares(results.filter(({ set }) => set === 'dev')),
    heldOut: toShares(results.filter(({ set }) => set === 'held-out')),
    wordNet: toShares(readWordNetCases().map((item) => toResult(item, tagger))),
    wikipedia: toShares((await readWikipediaCases()).map((item) => toResult(item, tagger))),
  }
}

export function toResult(item: HeteronymCase, tagger: Tagger): HeteronymResult {
  const sentence = cutWords(item.sentence)
  const nth = item.at === undefined ? 0 : countBefore(item.sentence.slice(0, item.at), item.word)
  const index = findNth(sentence, item.word, nth)
  const first = settle(table, sentence, index)
  const usedTagger = first.kind === 'tagger-needed'
  return { ...item, usedTagger, settlement: usedTagger ? settle(table, sentence, index, { tagger }) : first }
}

const countBefore = (text: string, spelt: string): number =>
  cutWords(text).filter((word) => word.toLowerCase() === spelt).length

function findNth(sentence: readonly string[], spelt: string, nth: number): number {
  const isIt = (word: string): boolean => word.toLowerCase() === spelt
  const found = sentence.flatMap((word, i) => (isIt(word) ? [i] : []))
  // `mouth-organ`, where the word stands nowhere else.
  return found[nth] ?? sentence.findIndex((word) => word.split('-').some(isIt))
}

function toShares(results: readonly HeteronymResult[]): HeteronymShares {
  const share = (is: (result: HeteronymResult) => boolean) => results.filter(is).length / results.length
  return {
    sentences: results.length,
    right: share(({ settlement, form }) => settlement.kind === 'settled' && settlement.form === form),
    wrong: share(({ settlement, form }) => settlement.kind === 'settled' && settlement.form !== form),
    unsettled: share(({ settlement }) => settlement.kind !== 'settled'),
    withoutTagger: share(({ usedTagger }) => !usedTagger),
  }
}
