// Rows of the table about words that nobody listed: made words, noises, names.

import { loadBuiltIn } from '../../src/packaged/data.ts'
import { findSeam } from '../../src/phonics/compounds.ts'
import { spellWord } from '../../src/phonics/phonics.ts'
import type { Accent } from '../../src/phonics/types.ts'
import type { Sequence } from '../../src/sequence/types.ts'
import { loadChildWords } from '../build/children.ts'
import { loadWordnet } from '../build/wordnet.ts'
import type { Engine } from './engine.ts'
import {
  type DrawnWord,
  drawCompounds,
  findMissed,
  joinEverydayNouns,
  joinRandomWords,
  makeMisspellings,
  measureKnown,
  readDrawnWords,
} from './joined-words.ts'
import { MADE_KINDS, makeWords, measureMadeWords } from './made-words.ts'
import { toPercent } from './percent.ts'
import type { Row } from './rows.ts'
import { measureSaidWords, readSaidWords } from './said-words.ts'
import { makeScreeningWords } from './screening-words.ts'
import { makeSlips, measureSlips, SLIP_KINDS } from './slips.ts'

const ACCENT: Accent = 'general-american'
const OWN = "the project's own judgement"

/** Made words by kind; of each kind every second word was unseen while the reader was written. */
export function madeWordRows({ lexicon, phonics }: Engine): readonly Row[] {
  const series = loadBuiltIn('series') as Sequence
  const words = makeWords(
    (word) => lexicon.indexOf(word) >= 0,
    series.steps.map(({ id }) => id),
  )
  return [
    ...MADE_KINDS.map((kind) => ({ name: kind, isIn: (at: number) => words[at]?.kind === kind })),
    { name: 'all, the half that was unseen at first', isIn: (at: number) => at % 2 === 1 },
  ].map(({ name, isIn }) => {
    const {
      words: count,
      rightStep,
      rightFirst,
      wrong,
    } = measureMadeWords(
      words.filter((_, at) => isIn(at)),
      phonics[ACCENT],
      series,
    )
    return {
      what: `made words judged at the step of their parts, ${name}`,
      published: `${count}`,
      ours: `${rightStep}; read first as a beginner would ${rightFirst}`,
      source: 'by rule of construction',
      ...(wrong.length > 0 ? { note: wrong.slice(0, 2).join('; ') } : {}),
    }
  })
}

/** Noises and names; every second row of their tables was unseen. */
export function saidWordRows({ spelling }: Engine): readonly Row[] {
  const tables = [
    { what: 'noises of picture books', words: readSaidWords('noises') },
    { what: 'names of many lands', words: readSaidWords('names-of-lands') },
  ]
  return tables.flatMap(({ what, words }) =>
    ['seen', 'unseen'].map((half, rest): Row => {
      const found = measureSaidWords(
        words.filter((_, at) => at % 2 === rest),
        (word) => spellWord(word, spelling),
      )
      return {
        what: `${what} said as bearers or readers say them, ${half} half`,
        published: `${found.words}`,
        ours: `${found.right}; said to be unsure ${found.unknown}`,
        source: OWN,
        ...(found.wrong.length > 0 ? { note: `otherwise: ${found.wrong.slice(0, 4).join('; ')}` } : {}),
      }
    }),
  )
}

/** Later sets of names, each judged before it was asked for, and then used to mend. */
export function freshNameRows({ spelling }: Engine): readonly Row[] {
  const children = loadChildWords()
  // `Shade`, `Even`, `Gran`: who reads the word reads the name so, whatever its bearers say.
  const isWord = (said: string): boolean => {
    const word = said.split(' ')[0]?.toLowerCase() ?? ''
    return children.count(word) > 0 && !children.isCapital(word)
  }
  const sets = [
    ['a fresh set', 'names-fresh'],
    ['drawn by seed, by which faults were mended', 'names-drawn'],
    ['a second draw, by which faults were mended', 'names-second'],
    ['a third draw, by which faults were mended', 'names-third'],
    ['a fourth draw, by which faults were mended', 'names-fourth'],
    ['of another source, by which faults were mended', 'names-fifth'],
    ['of that source, a second draw, by which faults were mended', 'names-sixth'],
    ['of that source, a third draw, by which one fault was mended', 'names-seventh'],
    ['of that source, a fourth draw, by which faults were mended', 'names-eighth'],
    ['of that source, a fifth draw, by which faults were mended', 'names-ninth'],
    ['of that source, a sixth draw, by which faults were mended', 'names-tenth'],
    ['of that source, a seventh draw, by which faults were mended', 'names-eleventh'],
    ['of that source and a third, by which faults were mended', 'names-twelfth'],
    ['of those two, a second draw, by which faults were mended', 'names-thirteenth'],
    ['of those two, a third draw, by which faults were mended', 'names-fourteenth'],
    ['of those two, a fourth draw, by which one fault was mended', 'names-fifteenth'],
    ['of nine other lists, by which faults were mended', 'names-sixteenth'],
    ['of those nine, a second draw, by which faults were mended', 'names-seventeenth'],
    ['of a fourth library (16 lists), by which faults were mended', 'names-eighteenth'],
    ['of that library and a fifth (22 lists), by which faults were mended', 'names-nineteenth'],
    ['of that fifth library, a second draw, by which nothing was mended', 'names-twentieth'],
    ['given in America in 2012 to 2020, by which faults were mended', 'names-of-children'],
  ] as const
  return sets.map(([set, table]): Row => {
    const words = readSaidWords(table)
    const found = measureSaidWords(words, (word) => spellWord(word, spelling))
    const first = words.filter(({ firstLook }) => firstLook !== undefined).length
    const asWords = found.wrong.filter(isWord).length
    const read = asWords === 0 ? '' : ` (${asWords} of these as the English word)`
    const told = first === 0 ? '' : `; at the first look ${toPercent(first / words.length)}`
    return {
      what: `names of many lands, ${set}`,
      published: `${found.words}`,
      ours: `${found.right}; said to be unsure ${found.unknown}; otherwise ${toPercent(found.wrong.length / found.words)}${read}${told}`,
      source: OWN,
      ...(found.wrong.length > 0 ? { note: `otherwise: ${found.wrong.slice(0, 4).join('; ')}` } : {}),
    }
  })
}

/** Made words by the patterns of the two sections of England's screening check. */
export function screeningRows({ lexicon, phonics }: Engine): readonly Row[] {
  const series = loadBuiltIn('series') as Sequence
  const steps = series.steps.map(({ id }) => id)
  const words = makeScreeningWords((word) => lexicon.indexOf(word) >= 0, steps)
  return [1, 2].map((section): Row => {
    const ofSection = words.filter((word) => word.section === section)
    const { rightStep, rightFirst, wrong } = measureMadeWords(ofSection, phonics[ACCENT], series)
    return {
      what: `made words in the style of England's screening check, section ${section}`,
      published: `${ofSection.length}`,
      ours: `${rightStep}; read first as a beginner would ${rightFirst}`,
      source: 'patterns from memory; by rule of construction',
      ...(wrong.length > 0 ? { note: wrong.slice(0, 2).join('; ') } : {}),
    }
  })
}

/** Compounds that neither the dictionary nor WordNet has, and words that only look so; every second row was unseen. */
export function compoundRows({ spelling, lexicon }: Engine): readonly Row[] {
  const isKnown = ({ word }: DrawnWord): boolean => spellWord(word, spelling).source === 'dictionary'
  return ['seen', 'unseen'].flatMap((half, rest) => {
    const words = readDrawnWords().filter((_, at) => at % 2 === rest)
    return [true, false].map((isCompound): Row => {
      const ofKind = words.filter((one) => one.isCompound === isCompound)
      const isRead = (one: DrawnWord): boolean => isKnown(one) || findSeam(one.word, lexicon) !== undefined
      const odd = ofKind.filter((one) => (isCompound ? !isRead(one) : isKnown(one))).map(({ word }) => word)
      return {
        what: isCompound
          ? `compounds that no list has, read by their parts, ${half} half`
          : `words that only look like compounds, taken for one, ${half} half`,
        published: isCompound ? `${ofKind.length}` : `0 of ${ofKind.length}`,
        ours: isCompound
          ? `${ofKind.filter(isRead).length}; known for words ${ofKind.filter(isKnown).length}`
          : `${ofKind.filter(isKnown).length}`,
        source: "Debian's wamerican-huge, judged by hand",
        ...(odd.length > 0 ? { note: `otherwise: ${odd.slice(0, 5).join(' ')}` } : {}),
      }
    })
  })
}

/** Slips of the pen by seed. */
export function slipRows({ phonics }: Engine): readonly Row[] {
  return SLIP_KINDS.map((kind): Row => {
    const slips = makeSlips(kind, phonics[ACCENT].isListed)
    const { right, otherwise, words, none } = measureSlips(slips, phonics[ACCENT])
    return {
      what: `slips of much used words, ${kind}: the right word among two that are offered`,
      published: `${slips.length}`,
      ours: `${right}; a word too, so in silence ${words.length}; others offered ${otherwise.length}; none ${none.length}`,
      source: 'made by seed',
      ...(none.length > 0 ? { note: `none: ${none.slice(0, 4).join('; ')}` } : {}),
    }
  })
}

/** Words joined, and endings put on wrongly, by seed. */
export function joinedRows({ lexicon, spelling }: Engine): readonly Row[] {
  const isWord = (word: string) => lexicon.indexOf(word) >= 0
  const spell = (word: string) => spellWord(word, spelling)
  const listed = lexicon.words()
  const wordnet = loadWordnet()
  const random = measureKnown(joinRandomWords(listed, isWord), spell)
  const nouns = measureKnown(joinEverydayNouns(wordnet, isWord), spell)
  const real = measureKnown(drawCompounds([...wordnet.lemmas()], wordnet), spell)
  const slips = makeMisspellings(listed, isWord)
  const missed = findMissed(slips, spell)
  return [
    {
      what: 'two random words joined, taken for a word',
      published: '0 of 100',
      ours: `${random.known.length}`,
      source: 'made by seed',
      ...(random.known.length > 0 ? { note: random.known.slice(0, 4).join(' ') } : {}),
    },
    {
      what: 'two everyday nouns joined, taken for a word',
      published: 'goal at most 2 of 200 that nobody would make',
      ours: `${nouns.known.length}`,
      source: 'made by seed',
      ...(nouns.known.length > 0 ? { note: nouns.known.slice(0, 6).join(' ') } : {}),
    },
    {
      what: 'compounds drawn by seed, known',
      published: `${real.known.length + real.unknown.length}`,
      ours: `${real.known.length}`,
      source: 'WordNet 3.1, which the dictionary was filled up from',
      ...(real.unknown.length > 0 ? { note: `unknown: ${real.unknown.slice(0, 5).join(' ')}` } : {}),
    },
    {
      what: 'endings put on wrongly, told with the right form',
      published: `${slips.length}`,
      ours: `${slips.length - missed.length}`,
      source: 'made by rule',
      ...(missed.length > 0 ? { note: `missed: ${missed.slice(0, 4).join('; ')}` } : {}),
    },
  ]
}
