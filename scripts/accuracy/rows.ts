// The rows of the table: what is measured, the published or independent figure, ours, and where theirs comes from.

import { buildLexicon } from '../build/lexicon.ts'
import { measureAccent } from './accent.ts'
import { classRows } from './class-rows.ts'
import { type Generalisation, measureGeneralisations } from './clymer.ts'
import { measureCurriculum } from './curriculum.ts'
import type { Engine } from './engine.ts'
import { measureGuesser } from './guesser.ts'
import { measureHeteronyms } from './heteronyms.ts'
import { measureJudgedDoubts } from './judged-doubts.ts'
import { measureJudgedSteps } from './judged-steps.ts'
import { findOtherCuts, readJudgedCuts } from './judged-syllables.ts'
import { measureListed, measureRefused } from './listed.ts'
import { countOffers, findFirstOffers, HALF_NAMES, HALVES, readFirstLooks } from './offers.ts'
import { measureOwnSequences } from './own-sequences.ts'
import { toPercent } from './percent.ts'
import { measurePictures } from './pictures.ts'
import { measureShortWords } from './short-words.ts'
import { measureShowing } from './showing.ts'
import { measureSyllables } from './syllables.ts'
import {
  compoundRows,
  freshNameRows,
  joinedRows,
  madeWordRows,
  saidWordRows,
  screeningRows,
  slipRows,
} from './unlisted-rows.ts'

export interface Row {
  readonly what: string
  readonly published: string
  readonly ours: string
  readonly source: string
  /** Why ours lies far from theirs, or what is left. */
  readonly note?: string
}

const CMU = 'CMU Pronouncing Dictionary'

/** Each part measures when it is asked; the whole takes about a minute. */
export const PARTS: readonly ((engine: Engine) => Promise<readonly Row[]> | readonly Row[])[] = [
  alignment,
  curriculum,
  generalisations,
  shortWords,
  measureJudgedSteps,
  accent,
  syllables,
  guesser,
  madeWordRows,
  screeningRows,
  saidWordRows,
  freshNameRows,
  joinedRows,
  slipRows,
  compoundRows,
  measureJudgedDoubts,
  heteronyms,
  measureListed,
  measureRefused,
  pictures,
  measureShowing,
  offers,
  ownSequences,
  classRows,
]

function alignment(): readonly Row[] {
  const { report } = buildLexicon()
  return [
    {
      what: 'entries whose letters and sounds align',
      published: '-',
      ours: `${toPercent(report.share, 2)} of ${report.entries}`,
      source: CMU,
      note: `first left: ${report.residue.slice(0, 4).join('; ')}`,
    },
    {
      what: 'of the 20,000 most used words, without an alignment',
      published: '-',
      ours: report.missed.join(' ') || 'none',
      source: 'SUBTLEXus',
    },
  ]
}

function curriculum({ spelling }: Engine): readonly Row[] {
  const { rows, failed } = measureCurriculum(spelling)
  return [
    {
      what: 'example words with the letters and sound of their row',
      published: `${rows}`,
      ours: `${rows - failed.length}`,
      source: 'Department for Education 2013, English Appendix 1',
    },
  ]
}

function generalisations(engine: Engine): readonly Row[] {
  return measureGeneralisations(engine).map((one) => ({
    what: `${one.n} ${one.statement}`,
    published: toPercent(one.published, 0),
    ours: `${toPercent(one.ours, 0)} of ${one.words}`,
    source: 'Clymer 1963, from memory',
    ...(isFar(one) ? { note: one.why ?? 'not explained' } : {}),
  }))
}

const isFar = ({ ours, published, allowed }: Generalisation): boolean => Math.abs(ours - published) > allowed

function shortWords({ phonics }: Engine): readonly Row[] {
  return Object.values(phonics).map((one) => {
    const { words, wrong } = measureShortWords(one)
    return {
      what: `short words judged as by hand, ${one.accent}`,
      published: `${words}`,
      ours: `${words - wrong.length}`,
      source: "the project's own judgement",
    }
  })
}

async function accent({ phonics }: Engine): Promise<readonly Row[]> {
  const { words, agreed } = await measureAccent(phonics['southern-british'])
  return [
    {
      what: 'Southern British words that agree, length marks and reduced vowels alike',
      published: '-',
      ours: `${toPercent(agreed / words)} of ${words}`,
      source: 'phonemizer, voice en-gb-x-rp',
      note: 'npm run accuracy -- accent lists what differs',
    },
  ]
}

const SETS_OF_CUTS: Readonly<Record<string, string>> = {
  tuning: "children's, the half that was seen",
  unseen: "children's, the half that was unseen while they were mended",
  fresh: 'much used, a draw after that',
  stories: 'of stories and of the curriculum, a draw after that',
}

function syllables({ phonics }: Engine): readonly Row[] {
  const { words, ours, theirs } = measureSyllables(phonics['general-american'])
  return [
    {
      what: "words with as many syllables as the dictionary's stress-marked vowels",
      published: `${toPercent(theirs / words)} (npm syllable)`,
      ours: `${toPercent(ours / words, 2)} of ${words}`,
      source: CMU,
      note: 'fire, hour and their like are one syllable here; the dictionary has two forms',
    },
    ...['tuning', 'unseen', 'fresh', 'stories'].map((half): Row => {
      const judged = readJudgedCuts().filter((one) => one.half === half)
      const other = findOtherCuts(judged, phonics['general-american'])
      const first = judged.filter(({ firstLook }) => firstLook === undefined).length
      const toShare = (count: number): string => `${toPercent(count / judged.length)}`
      return {
        what: `words cut into syllables as teachers draw them, ${SETS_OF_CUTS[half]}`,
        published: `${judged.length}`,
        ours: `${toShare(judged.length - other.length)}; at the first look ${toShare(first)}`,
        source: "drawn by seed, the project's own judgement",
        ...(other.length > 0 ? { note: `otherwise: ${other.join(' ')}` } : {}),
      }
    }),
  ]
}

function guesser(): readonly Row[] {
  const { tried, wordsRight, listedRight, anyRight, soundsRight, modelBytes } = measureGuesser()
  const source = `${CMU}, one word in ten held out`
  return [
    {
      what: 'unknown words guessed exactly',
      published: '-',
      ours: `${toPercent(wordsRight)} of ${tried}`,
      source,
      note: `a model of ${Math.round(modelBytes / 1000)} kB; published systems reach 75 to 80 % of the whole dictionary, from memory`,
    },
    {
      what: 'unknown words guessed as one of the listed pronunciations',
      published: '-',
      ours: toPercent(listedRight),
      source,
    },
    { what: 'unknown words with a plausible guess that is exact', published: '-', ours: toPercent(anyRight), source },
    { what: 'sounds of unknown words guessed', published: '-', ours: toPercent(soundsRight), source },
  ]
}

const BOOKS = 'books out of copyright (heteronym-public-sources.tsv), in natural frequency, judged by hand'
const MODERN =
  'African Storybook and Pratham Books (heteronym-modern-sources.tsv), at most eight of a word, judged by hand'
const MODERN_LATER = 'Pratham Books and African Storybook (heteronym-modern-second-sources.tsv), judged by hand'
const MIXED = 'African Storybook and made (heteronym-mixed-sources.tsv), judged by hand'
const toDrawn = (name: string): string =>
  `picture books, books out of copyright and made (heteronym-${name}-sources.tsv), judged by hand`
const FINAL = toDrawn('final')
const BLIND_SECOND = toDrawn('blind-second')
const BLIND_THIRD = toDrawn('blind-third')
const BLIND_FOURTH = toDrawn('blind-fourth')
const BLIND_FIFTH = toDrawn('blind-fifth')
const BLIND_SIXTH = toDrawn('blind-sixth')
const SIXTH = 'Book Dash and books out of copyright (heteronym-books-sixth-sources.tsv), judged by hand'
const WIKIPEDIA = 'Wikipedia Homograph Data, evaluation half of 32 words (heteronym-open-sources.tsv)'

const WORDNET = 'WordNet 3.1, examples'
/** What the model of look-alikes did not learn from. */
const UNTAUGHT: ReadonlySet<string> = new Set([
  BLIND_FIFTH,
  BLIND_FOURTH,
  BLIND_SECOND,
  BLIND_SIXTH,
  BLIND_THIRD,
  FINAL,
  MIXED,
  MODERN_LATER,
  WIKIPEDIA,
  WORDNET,
])

async function heteronyms(): Promise<readonly Row[]> {
  const measured = await measureHeteronyms()
  const { dev, heldOut, tuning, unseen, third, fourth, dictionary, tales, talesUnseen, wordNet } = measured
  const own = "the project's own sentences"
  const sets = [
    ['seen while tuning', dev, own],
    ['held out', heldOut, own],
    ['a second set, seen while tuning', tuning, 'African Storybook and made, judged by hand'],
    ['a second set, unseen', unseen, 'African Storybook and made, judged by hand'],
    ['a third set, by which faults were mended', third, 'African Storybook and made, judged by hand'],
    ['a fourth set, drawn after, by which one fault was mended', fourth, 'African Storybook and made, judged by hand'],
    ['of a dictionary, by which faults were mended', dictionary, "Debian's trans-de-en, judged by hand"],
    ['of tales, seen while tuning', tales, "Debian's wesnoth-1.16, judged by hand"],
    ['of tales, unseen, by which one fault was mended', talesUnseen, "Debian's wesnoth-1.16, judged by hand"],
    ["of children's books, seen while tuning", measured.public, BOOKS],
    ["of children's books, the half unseen at first, by which faults were mended", measured.publicUnseen, BOOKS],
    ["of other children's books, drawn after, by which two faults were mended", measured.publicLater, BOOKS],
    ["of nineteen further children's books, by which faults were mended", measured.nineteen, BOOKS],
    ['of books for small children, by which faults were mended', measured.smallChildren, BOOKS],
    ['of eleven books of tales, drawn after, by which faults were mended', measured.eleven, BOOKS],
    ['of fifteen further books for small children, drawn after, by which faults were mended', measured.fifteen, BOOKS],
    ["of other stretches of children's books, drawn after, by which faults were mended", measured.stretches, BOOKS],
    ['of more such stretches, drawn after that, by which faults were mended', measured.moreStretches, BOOKS],
    ['of the last such stretches, drawn after that, by which faults were mended', measured.lastStretches, BOOKS],
    [
      'of modern stories for small children, all that stand in them in an order fixed beforehand, by which faults were mended after one look',
      measured.modern,
      MODERN,
    ],
    ['of 42 other books for small children, after one look', measured.fortyTwo, SIXTH],
    [
      'of further modern stories, in natural frequency; at the first look 98.0 % right, none wrong; nothing tuned by it before',
      measured.modernLater,
      MODERN_LATER,
    ],
    [
      'of further modern stories, and made; at the first look 97.1 % right, 0.3 % wrong; nothing tuned by it before',
      measured.mixed,
      MIXED,
    ],
    [
      'of other stories, and made, by which two faults were mended; at the first look 97.1 % right, 0.8 % wrong',
      measured.final,
      FINAL,
    ],
    [
      'of further stories, and made, by which faults were mended; at the first look of the whole draw of 406, 97.5 % right, 1.0 % wrong',
      measured.blindSecond,
      BLIND_SECOND,
    ],
    [
      'of the last stories, and made, by which two faults were mended; at the first look of the whole draw of 327, 95.1 % right, 1.8 % wrong',
      measured.blindThird,
      BLIND_THIRD,
    ],
    [
      'of stories drawn after, and made, by which faults were mended; at the first look of the whole draw of 346, 94.2 % right, 0.6 % wrong',
      measured.blindFourth,
      BLIND_FOURTH,
    ],
    [
      'of four draws after that, each looked at once before faults were mended by it; at the first looks, of 1,338 sentences, 97.6 % right, 0.7 % wrong',
      measured.blindFifth,
      BLIND_FIFTH,
    ],
    [
      'of the last five draws, nothing mended by them; at the first look of all 933, 99.2 % right, none wrong',
      measured.blindSixth,
      BLIND_SIXTH,
    ],
    ['written by others', wordNet, WORDNET],
    ['of an encyclopedia for adults, chosen and judged by others, nothing tuned by it', measured.wikipedia, WIKIPEDIA],
  ] as const
  return sets.map(([set, one, source]) => ({
    what: `sentences whose heteronym is settled rightly, ${set}`,
    published: '-',
    ours: `${toPercent(one.right)} of ${one.sentences}; wrong ${toPercent(one.wrong)}, not settled ${toPercent(one.unsettled)}`,
    source,
    ...(UNTAUGHT.has(source) ? {} : { note: 'the model learned from them too' }),
  }))
}

function pictures(): readonly Row[] {
  return measurePictures().map(({ what, source, words, nameable, wrong }) => ({
    what: `${what} called nameable`,
    published: `${words} in the list`,
    ours: `${nameable}`,
    source,
    ...(wrong.length > 0 ? { note: `wrong: ${wrong.slice(0, 5).join(' ')}` } : {}),
  }))
}

async function offers(): Promise<readonly Row[]> {
  const found = await findFirstOffers()
  const source =
    "the project's own judgement of sentences of the African Storybook and of Pratham Books, drawn by a seed"
  const draws = HALVES.flatMap((half) => {
    const looks = readFirstLooks(half)
    const name = HALF_NAMES[half]
    const offers = found.filter((one) => one.half === half)
    if (looks.length === 0) return [{ name, offers }]
    return [
      { name: `${name}, at the first look`, offers: looks },
      { name: `${name}, after what it showed was mended`, offers },
    ]
  })
  return draws.flatMap(({ name, offers: drawn }) => {
    const { sentences, made, counts } = countOffers(drawn)
    const row = (what: string, published: string, count: number, of: number): Row => ({
      what: `${what}, ${name}`,
      published,
      ours: `${toPercent(count / of)} of ${of}`,
      source,
      ...(counts.unjudged > 0 && { note: `${counts.unjudged} not judged yet; they count as not helpful` }),
    })
    return [
      row('first offers that a teacher could press', 'goal 65 %', counts.helpful, made),
      row('first offers that are ungrammatical', 'goal at most 3 %', counts.ungrammatical, made),
      row('first offers that are unfit for children', 'goal 0', counts.unfit, made),
      row('hard words whose first offer a teacher could press', 'goal 35 %', counts.helpful, sentences),
    ]
  })
}

function ownSequences(engine: Engine): readonly Row[] {
  const { regular, odd, agreement, england, slips } = measureOwnSequences(engine)
  const table = 'Department for Education 2013, English Appendix 1'
  const own = "the project's own judgement"
  return [
    {
      what: 'example words called exceptions in small sequences drawn at random, both accents',
      published: '0 %',
      ours: `${toPercent(regular.wrong / regular.asked, 2)} of ${regular.asked}`,
      source: table,
      ...(regular.words.length > 0 ? { note: `called so: ${regular.words.join(' ')}` } : {}),
    },
    {
      what: 'oddly spelt words called exceptions',
      published: `${odd.asked}`,
      ours: `${odd.told}`,
      source: own,
      ...(odd.others.length > 0 ? { note: `called not taught: ${odd.others.join(' ')}` } : {}),
    },
    {
      what: 'words and steps at which verdict and first readable step contradict each other',
      published: '0',
      ours: `${agreement.wrong} of ${agreement.asked}`,
      source: 'small sequences drawn at random',
    },
    {
      what: 'words of its table that are readable at the end of England, in both accents',
      published: `${england.words}`,
      ours: `${england.words - new Set(england.unread).size}`,
      source: table,
    },
    {
      what: 'slips of the pen taken for the word that was meant',
      published: `${slips.asked}`,
      ours: `${slips.right}`,
      source: own,
      ...(slips.wrong.length > 0 ? { note: `wrong: ${slips.wrong.join(' ')}` } : {}),
    },
  ]
}
