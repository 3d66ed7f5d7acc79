// Of words that no step of a small sequence makes readable: does adding the lines that are told make them so, and is what is told first something
// that can be added? And contractions, which are read only where they are taught. Sequences and words are drawn with a seed.

import { toAdditionLine } from '../../src/lint/additions.ts'
import type { Accent, Phonics } from '../../src/phonics/types.ts'
import { loadSequence } from '../../src/sequence/load.ts'
import type { Sequence } from '../../src/sequence/types.ts'
import { ACCENTS } from '../../src/sequence/vocabulary.ts'
import { findReadableAt, judgeInSequence } from '../../src/verdict/index.ts'
import { drawRandom, drawSequence } from '../../tests/verdict/random-sequences.ts'
import { listInUse } from '../build/frequency.ts'
import type { Engine } from './engine.ts'

const SEQUENCES = 14
const WORDS_EACH = 24
const COMMONEST = 3000

export interface ToldLines {
  readonly asked: number
  /** Told with lines to add, and exceptions, to be learnt by heart. */
  readonly told: number
  readonly exceptions: number
  readonly stillUnread: readonly string[]
  /** What leads is taught later, though no step makes the word readable. */
  readonly wrongLead: readonly string[]
}

interface Case {
  readonly yaml: string
  readonly word: string
  readonly phonics: Phonics
  readonly load: (yaml: string) => Sequence
}

interface Judged {
  readonly word: string
  readonly isException: boolean
  readonly isLedLater: boolean
  readonly isRead: boolean
}

export function measureToldLines({ phonics }: Engine): ToldLines {
  const found = drawCases(phonics).flatMap(judgeNever)
  return {
    asked: found.length,
    told: found.filter(({ isException }) => !isException).length,
    exceptions: found.filter(({ isException }) => isException).length,
    stillUnread: toWords(found.filter(({ isRead }) => !isRead)),
    wrongLead: toWords(found.filter(({ isLedLater }) => isLedLater)),
  }
}

const toWords = (some: readonly { readonly word: string }[]): readonly string[] => [
  ...new Set(some.map(({ word }) => word)),
]

/** Nothing for a word that some step makes readable, and for scraps of words, as the list of use has them: `couldn`, `ll`. */
function judgeNever({ yaml, word, phonics, load }: Case): readonly Judged[] {
  const sequence = load(yaml)
  const read = phonics.read(word)
  const isPlain = read.source === 'dictionary' && !read.unsure && !read.heteronym
  if (!isPlain || findReadableAt(read, sequence) !== undefined) return []
  const { reasons } = judgeInSequence(read, sequence, sequence.steps.at(-1)?.id ?? '')
  const isException = reasons.some(({ code }) => code === 'irregular' || code === 'abbreviation')
  const isLedLater = reasons[0]?.taughtAt !== undefined
  const lines = reasons.flatMap((reason) => toAdditionLine(word, reason) ?? [])
  const isRead = isException || findReadableAt(read, load(addLines(yaml, lines))) === ADDED
  return [{ word, isException, isLedLater, isRead }]
}

function drawCases(phonics: Engine['phonics']): readonly Case[] {
  const random = drawRandom(31)
  const words = listInUse(COMMONEST, /^[a-z]{2,}$/)
  return Array.from({ length: SEQUENCES }, (_, at) => drawSequence(random, at % 7)).flatMap((yaml) =>
    ACCENTS.flatMap((accent) => {
      const load = (text: string) => loadOwn(text, phonics, accent)
      return Array.from({ length: WORDS_EACH }, () => {
        return { yaml, word: words[random(words.length)] as string, phonics: phonics[accent], load }
      })
    }),
  )
}

function loadOwn(yaml: string, phonics: Engine['phonics'], accent: Accent): Sequence {
  const { sequence } = loadSequence(yaml, { phonicsFor: (one) => phonics[one], accent })
  if (sequence === undefined) throw new Error(yaml)
  return sequence
}

const ADDED = 'added'

/** A last step with the lines, each without its quote marks. */
function addLines(yaml: string, quoted: readonly string[]): string {
  const lines = [...new Set(quoted.map((line) => line.replaceAll('`', '')))]
  const toList = (key: string): readonly string[] => {
    const values = lines.flatMap((line) => new RegExp(`^${key}: \\[(.*)\\]$`).exec(line)?.[1] ?? [])
    return values.length === 0 ? [] : [`    ${key}: [${values.join(', ')}]`]
  }
  const teach = lines.filter((line) => line.includes(' as in '))
  const limits = lines.filter((line) => /^(?:letters|syllables): /.test(line))
  const step = [
    `  - id: ${ADDED}`,
    ...(teach.length === 0 ? [] : ['    teach:', ...teach.map((line) => `      - ${line}`)]),
    ...['shapes', 'endings', 'ending changes', 'contractions'].flatMap(toList),
    ...(limits.length === 0 ? [] : ['    limits:', ...limits.map((line) => `      ${line}`)]),
  ]
  return `${yaml.trimEnd()}\n${step.join('\n')}\n`
}

/** Common ones, by hand. */
const CONTRACTIONS =
  "isn't aren't wasn't weren't don't doesn't didn't couldn't wouldn't shouldn't hasn't haven't hadn't you're we're they're he's she's it's that's what's there's I'll you'll he'll she'll we'll they'll I'd you'd he'd she'd we'd they'd I've you've we've they've let's I'm can't won't".split(
    ' ',
  )
const FIRST_PARTS =
  'is are was were do does did could would should has have had you we they he she it that what there let can I'.split(
    ' ',
  )

export interface Contractions {
  readonly asked: number
  readonly readUntaught: readonly string[]
  readonly unreadTaught: readonly string[]
}

/** In small sequences that teach the first part by heart and no contraction; and by name in one more step. */
export function measureContractions({ phonics }: Engine): Contractions {
  const random = drawRandom(32)
  const found = Array.from({ length: 10 }, (_, at) => drawSequence(random, at % 4)).flatMap((yaml) =>
    ACCENTS.flatMap((accent) => {
      const known = `${yaml}  - id: heart\n    sight words: [${FIRST_PARTS.join(', ')}]\n`
      const named = `${known}  - id: ${ADDED}\n    contractions: ["${CONTRACTIONS.join('", "')}"]\n`
      const [without, taught] = [known, named].map((text) => loadOwn(text, phonics, accent)) as [Sequence, Sequence]
      return CONTRACTIONS.map((word) => {
        const read = phonics[accent].read(word)
        return { word, before: findReadableAt(read, without), after: findReadableAt(read, taught) }
      })
    }),
  )
  return {
    asked: found.length,
    readUntaught: toWords(found.filter(({ before }) => before !== undefined)),
    unreadTaught: toWords(found.filter(({ after }) => after !== ADDED)),
  }
}
