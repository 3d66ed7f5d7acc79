// Measures the offers on sentences drawn from stories of others: is the first word offered one that a teacher could press?

import { readFileSync } from 'node:fs'
import { rules } from '../../rules/index.ts'
import { checkStory } from '../../src/check/check-story.ts'
import { isChecked } from '../../src/check/result.ts'
import { createProcessIo } from '../../src/cli/io.ts'
import { createResources } from '../../src/cli/resources.ts'
import { toProblemLine } from '../../src/problem/index.ts'
import type { Resources } from '../../src/resources/types.ts'
import { readRows } from './read-rows.ts'

/** Stands for an offer to leave the word out. */
const LEFT_OUT = '-'

/** What scripts/accuracy/data/offer-judgements.tsv says of an offer; its head says what each means. */
const VERDICTS = ['helpful', 'ungrammatical', 'sense', 'unfit'] as const
type OfferVerdict = (typeof VERDICTS)[number] | 'unjudged'

/**
 * `fresh`: drawn later, looked at once; then the faults of grammar that it showed were mended. `others`: of thirteen stories that nobody had
 * looked at, `more`: of nine more; each was looked at once, and then what it showed was mended. `last`: other sentences of these stories, drawn when
 * all that was done. `second`: other sentences of the first stories, `elsewhere`: of stories of another collection too, each the half that stayed
 * unseen of a draw of 150. `third`: of seven stories wholly new. `final`: other sentences of all these stories, drawn last. Each of the four was looked
 * at once, and then what it showed was mended; what was offered at that look stands in data/offer-first-looks.tsv.
 */
export const HALVES = [
  'tuning',
  'unseen',
  'fresh',
  'others',
  'more',
  'last',
  'second',
  'elsewhere',
  'third',
  'final',
] as const

export const HALF_NAMES: Readonly<Record<(typeof HALVES)[number], string>> = {
  tuning: 'sentences seen while tuning',
  unseen: 'sentences unseen at first, by which faults were mended since',
  fresh: 'sentences of a later draw, after which some offers were taken out',
  others: 'sentences of thirteen other stories, by which faults were mended',
  more: 'sentences of nine more stories, by which faults were mended',
  last: 'other sentences of these stories, drawn last, after which one fault of grammar was mended',
  second: 'other sentences of the first stories, unseen while tuning',
  elsewhere: 'sentences of stories of another collection, unseen while tuning',
  third: 'sentences of seven stories wholly new',
  final: 'other sentences of all stories, drawn last',
}
export type Half = (typeof HALVES)[number]

export interface FirstOffer {
  readonly half: Half
  readonly step: string
  readonly word: string
  readonly sentence: string
  /** The word offered first, or that the word goes; undefined for none. */
  readonly offer: string | undefined
  readonly verdict: OfferVerdict | undefined
}

/** The first offer that `check` makes for each drawn word. */
export async function findFirstOffers(): Promise<readonly FirstOffer[]> {
  const resources = createResources(createProcessIo(process))
  const judged = readJudgements()
  const offers: FirstOffer[] = []
  for (const row of read('offer-sentences.tsv')) {
    const [half = '', step = '', word = '', sentence = ''] = row.split('\t')
    const offer = await findFirst(sentence, word, step, resources)
    const verdict = offer === undefined ? undefined : (judged.get(toKey(sentence, word, offer)) ?? 'unjudged')
    offers.push({ half: half as Half, step, word, sentence, offer, verdict })
  }
  return offers
}

/** What was offered for the words of a half when it was looked at first, before anything that it showed was mended. */
export function readFirstLooks(half: Half): readonly FirstOffer[] {
  const judged = readJudgements()
  const looks = new Map(
    read('offer-first-looks.tsv').map((row) => {
      const [seen = '', word = '', offer = '', sentence = ''] = row.split('\t')
      return [`${seen}\t${toKey(sentence, word, '')}`, offer]
    }),
  )
  if (![...looks.keys()].some((key) => key.startsWith(`${half}\t`))) return []
  return read('offer-sentences.tsv').flatMap((row): FirstOffer[] => {
    const [own = '', step = '', word = '', sentence = ''] = row.split('\t')
    if (own !== half) return []
    const offer = looks.get(`${half}\t${toKey(sentence, word, '')}`)
    const verdict = offer === undefined ? undefined : (judged.get(toKey(sentence, word, offer)) ?? 'unjudged')
    return [{ half, step, word, sentence, offer, verdict }]
  })
}

async function findFirst(
  sentence: string,
  word: string,
  step: string,
  resources: Resources,
): Promise<string | undefined> {
  const result = await checkStory({
    path: 'sentence.md',
    source: sentence,
    storyPath: '/sentence.md',
    chain: { folders: [], problems: [] },
    flags: { step: { value: step, origin: '--step' } },
    rules,
    resources,
    suggest: true,
  })
  if (!isChecked(result)) throw new Error(result.problems.map(toProblemLine).join('\n'))
  const found = result.messages.find((message) => message.word === word && message.reason !== undefined)
  return found?.suggestions[0] ?? (found?.canGo ? LEFT_OUT : undefined)
}

const read = (name: string): readonly string[] =>
  readRows(readFileSync(new URL(`data/${name}`, import.meta.url), 'utf8'))

const toKey = (sentence: string, word: string, offer: string): string => `${word}\t${offer}\t${sentence}`

function readJudgements(): ReadonlyMap<string, OfferVerdict> {
  return new Map(
    read('offer-judgements.tsv').map((row) => {
      const [verdict = '', word = '', offer = '', sentence = ''] = row.split('\t')
      return [toKey(sentence, word, offer), verdict as OfferVerdict]
    }),
  )
}

export interface OfferFigures {
  readonly sentences: number
  readonly made: number
  readonly counts: Readonly<Record<OfferVerdict, number>>
}

export function countOffers(offers: readonly FirstOffer[]): OfferFigures {
  const made = offers.filter(({ offer }) => offer !== undefined)
  const count = (verdict: OfferVerdict): number => made.filter((one) => one.verdict === verdict).length
  return {
    sentences: offers.length,
    made: made.length,
    counts: {
      helpful: count('helpful'),
      ungrammatical: count('ungrammatical'),
      sense: count('sense'),
      unfit: count('unfit'),
      unjudged: count('unjudged'),
    },
  }
}
