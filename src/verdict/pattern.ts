// A pattern that a story practises: letters that say a sound, an ending, or the shape of a syllable.

import { toStraight } from '../apostrophe.ts'
import type { CorrespondenceKey, Pronunciation, WordPronunciations } from '../phonics/types.ts'
import { toStepIndex } from '../sequence/knowledge.ts'
import type { Ending, Sequence, StepAdds, TaughtCorrespondence } from '../sequence/types.ts'
import { ENDINGS } from '../sequence/vocabulary.ts'
import { toWordKey } from './figures.ts'
import { keepForm } from './judge-word.ts'
import { toShapes } from './shape.ts'
import type { Verdict } from './types.ts'
import { findEnding } from './unit.ts'

export interface Pattern {
  /** As the teacher wrote it. */
  readonly written: string
  /** The step that first teaches it, where the reader has not come so far. */
  readonly taughtAt: string | undefined
  /** Whether some careful pronunciation of the word has it; the spoken form where the sentence tells it. */
  isIn(pronunciations: WordPronunciations, spoken?: string): boolean
  /** Whether a child practises it with the word: sounds the word out, and comes by the pattern. A word known by heart practises nothing. */
  isPractised(word: string, verdict: Verdict): boolean
}

/**
 * Reads `ai`, `a_e`, `ai as in rain`, `-ed` or `CVC`. Undefined where no step of the sequence has it. Letters alone mean the
 * sounds that the steps so far have taught for them, or all later ones where there is none yet.
 */
export function findPattern(written: string, sequence: Sequence, step: string | undefined): Pattern | undefined {
  const name = toStraight(written.trim())
  const ending = ENDINGS.find((one) => one === name.toLowerCase())
  const reached = step === undefined ? Number.POSITIVE_INFINITY : toStepIndex(sequence, step)
  const toMade = (teaches: (adds: StepAdds) => boolean, hasIt: HasIt): Pattern | undefined => {
    const first = sequence.steps.findIndex(({ adds }) => teaches(adds))
    return first === -1 ? undefined : toPattern(written, hasIt, first > reached ? sequence.steps[first]?.id : undefined)
  }
  if (ending !== undefined) return toMade(({ endings }) => endings.includes(ending), hasEnding(ending))
  if (/^[CV]{2,}$/.test(name)) return toMade(({ shapes }) => shapes !== 'any' && shapes.includes(name), hasShape(name))
  const keys = findKeys(name, sequence, step)
  return toMade(
    ({ correspondences }) => correspondences.some(({ key }) => keys.has(key)),
    ({ units }) => units.some(({ key }) => keys.has(key)),
  )
}

type HasIt = (pronunciation: Pronunciation, word: string) => boolean

function toPattern(written: string, hasIt: HasIt, taughtAt: string | undefined): Pattern {
  return {
    written,
    taughtAt,
    isIn: (pronunciations, spoken) =>
      keepForm(pronunciations, spoken).pronunciations.some((pronunciation) =>
        hasIt(pronunciation, pronunciations.word),
      ),
    isPractised: (word, { kind, isByHeart, pronunciation }) =>
      kind === 'decodable' && !isByHeart && pronunciation !== undefined && hasIt(pronunciation, word),
  }
}

const hasEnding =
  (ending: Ending): HasIt =>
  ({ units }) =>
    units.some((unit) => findEnding(unit) === ending)

const hasShape =
  (shape: string): HasIt =>
  (pronunciation, word) =>
    toShapes(word, pronunciation, (unit) => findEnding(unit) !== undefined).some((one) => one.shape === shape)

function findKeys(name: string, sequence: Sequence, step: string | undefined): ReadonlySet<CorrespondenceKey> {
  const [, letters = '', example] = /^(\S+)(?:\s+(?:as\s+)?in\s+(\S+))?$/u.exec(name) ?? []
  const grapheme = toGrapheme(letters)
  const reached = step === undefined ? -1 : toStepIndex(sequence, step)
  const toKeys = (steps: Sequence['steps'], isMeant: (taught: TaughtCorrespondence) => boolean) =>
    new Set(steps.flatMap(({ adds }) => adds.correspondences.filter(isMeant).map(({ key }) => key)))
  const hasLetters = (taught: TaughtCorrespondence) => taught.letters.toLowerCase() === grapheme
  const isMeant = (taught: TaughtCorrespondence) =>
    hasLetters(taught) && (example === undefined || taught.example.toLowerCase() === example.toLowerCase())
  const soFar = toKeys(sequence.steps.slice(0, reached + 1), isMeant)
  const all = soFar.size > 0 ? soFar : toKeys(sequence.steps, isMeant)
  if (all.size > 0) return all
  // Another example than the file's own: it can mean nothing else where the letters are taught with one sound only.
  const only = toKeys(sequence.steps, hasLetters)
  return only.size === 1 ? only : all
}

/** The lines by which a sequence teaches the letters of a pattern: `ow as in snow`, `ow as in cow`. */
export function findPatternLines(written: string, { steps }: Sequence): readonly string[] {
  const letters = toGrapheme(/\S+/u.exec(written)?.[0] ?? '')
  const taught = steps.flatMap(({ adds }) => adds.correspondences.filter((one) => one.letters === letters))
  return taught.map(({ example }) => `${letters} as in ${example}`)
}

/** `a-e` is another common way to write `a_e`. */
const toGrapheme = (letters: string): string => toWordKey(letters).replace(/(\p{L})-(\p{L})/u, '$1_$2')
