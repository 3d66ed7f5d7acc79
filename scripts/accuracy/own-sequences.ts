// A class's own sequence: what is told as an exception, whether word and step agree, what a slip is taken for. Drawn with a seed.

import { findSlip } from '../../src/phonics/slip.ts'
import type { Accent, Phonics } from '../../src/phonics/types.ts'
import { loadSequence } from '../../src/sequence/load.ts'
import type { Sequence } from '../../src/sequence/types.ts'
import { ACCENTS } from '../../src/sequence/vocabulary.ts'
import { createWordJudge, findReadableAt, judgeInSequence } from '../../src/verdict/index.ts'
import { EXAMPLES, EXCEPTIONS, HOMOPHONES } from '../../tests/sequence/national-curriculum.ts'
import { drawRandom, drawSequence } from '../../tests/verdict/random-sequences.ts'
import { type Engine, openSequence } from './engine.ts'

const SEQUENCES = 50

/** Examples of a prefix and of a contraction that hold `do` and `could`, which stand among the table's own exception words. */
const HOLDING_EXCEPTIONS: readonly string[] = ['undo', "couldn't"]

/** Spelt as nothing else is, by the project's own judgement before the program was asked. */
const ODD =
  'said says was of one once two does gone won put push pull full who people eye buy laugh sew shoe friend any many pretty sugar sure woman women been again great break answer'.split(
    ' ',
  )

/** A class's first letters: a drawn sequence may teach `ie as in friend`. */
const PLAIN =
  'name: plain\ntitle: Plain\nsteps:\n  - id: first\n    teach: [s as in sat, a as in cat, t as in mat, p as in pat]\n'

/** Two letters swapped, one forgotten or doubled, an apostrophe forgotten: by hand, and what was meant. */
const SLIPS =
  "hne/hen hte/the thier/their dont/don't teh/the freind/friend hapy/happy littel/little rabit/rabbit shouldnt/shouldn't isnt/isn't youre/you're becuase/because untill/until runing/running"
    .split(' ')
    .map((pair) => pair.split('/') as [string, string])

export interface OwnSequences {
  readonly regular: { readonly asked: number; readonly wrong: number; readonly words: readonly string[] }
  readonly odd: { readonly asked: number; readonly told: number; readonly others: readonly string[] }
  readonly agreement: { readonly asked: number; readonly wrong: number }
  readonly england: { readonly words: number; readonly unread: readonly string[] }
  readonly slips: { readonly asked: number; readonly right: number; readonly wrong: readonly string[] }
}

export function measureOwnSequences({ phonics }: Engine): OwnSequences {
  const random = drawRandom(20)
  const drawn = Array.from({ length: SEQUENCES }, (_, at) => drawSequence(random, at % 7))
  const cases = ACCENTS.flatMap((accent) =>
    drawn.map((yaml) => ({ read: phonics[accent], sequence: load(yaml, phonics, accent) })),
  )
  return {
    regular: countExceptions(
      cases,
      EXAMPLES.map(([word]) => word).filter((word) => !HOLDING_EXCEPTIONS.includes(word)),
    ),
    odd: countOdd({ read: phonics['general-american'], sequence: load(PLAIN, phonics, 'general-american') }),
    agreement: countAgreement(cases),
    england: readEngland(phonics),
    slips: countSlips(phonics['general-american']),
  }
}

interface Case {
  readonly read: Phonics
  readonly sequence: Sequence
}

function load(yaml: string, phonics: Engine['phonics'], accent: Accent): Sequence {
  const { sequence } = loadSequence(yaml, { phonicsFor: (one) => phonics[one], accent })
  if (sequence === undefined) throw new Error(yaml)
  return sequence
}

const isException = (word: string, { read, sequence }: Case): boolean =>
  judgeInSequence(read.read(word), sequence, sequence.steps.at(-1)?.id ?? '').reasons.some(
    ({ code }) => code === 'irregular',
  )

function countExceptions(cases: readonly Case[], words: readonly string[]): OwnSequences['regular'] {
  const wrong = cases.flatMap((one) => words.filter((word) => isException(word, one)))
  return { asked: cases.length * words.length, wrong: wrong.length, words: [...new Set(wrong)] }
}

function countOdd(plain: Case): OwnSequences['odd'] {
  const told = ODD.filter((word) => isException(word, plain))
  return { asked: ODD.length, told: told.length, others: ODD.filter((word) => !told.includes(word)) }
}

/** Readable at a step if and only if the step is not before the one that is named. A look-alike that nothing settles is promised for all its forms. */
function countAgreement(cases: readonly Case[]): OwnSequences['agreement'] {
  const random = drawRandom(21)
  let asked = 0
  let wrong = 0
  for (const { read, sequence } of cases) {
    const judges = sequence.steps.map(({ id }) => createWordJudge(sequence, id))
    for (let draw = 0; draw < 40; draw++) {
      const word = EXAMPLES[random(EXAMPLES.length)]?.[0] ?? ''
      const judged = judges.map((judge) => judge(read.read(word)))
      for (const [at, { verdict, readableAt, unsettled }] of judged.entries()) {
        if (unsettled) continue
        const from = readableAt === null ? Infinity : sequence.steps.findIndex(({ id }) => id === readableAt)
        asked++
        if (verdict.readable !== at >= from) wrong++
      }
    }
  }
  return { asked, wrong }
}

function readEngland(phonics: Engine['phonics']): OwnSequences['england'] {
  const words = [...new Set([...EXAMPLES.map(([word]) => word), ...EXCEPTIONS[1], ...EXCEPTIONS[2], ...HOMOPHONES])]
  const unread = ACCENTS.flatMap((accent) => {
    const sequence = openSequence('england', accent)
    return words.filter((word) => findReadableAt(phonics[accent].read(word), sequence) === undefined)
  })
  return { words: words.length, unread }
}

function countSlips(phonics: Phonics): OwnSequences['slips'] {
  const series = openSequence('series', 'general-american')
  const isReadable = (word: string) => findReadableAt(phonics.read(word), series) !== undefined
  const wrong = SLIPS.filter(([written, meant]) => findSlip(written, phonics, { isBetter: isReadable }) !== meant)
  return { asked: SLIPS.length, right: SLIPS.length - wrong.length, wrong: wrong.map(([written]) => written) }
}
