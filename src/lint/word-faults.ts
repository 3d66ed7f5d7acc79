// All that is wrong with one word, most useful to a teacher first: the order in which rules may claim it.

import { hasCapital } from '../letter-kinds.ts'
import { isDrawnOrNoise } from '../phonics/stretched.ts'
import type { Capitals } from '../sequence/types.ts'
import type { Sentence, Word } from '../story/types.ts'
import { isAllCapitals, toBareName } from '../usage/likely-names.ts'
import { findAbbreviation, isContraction, type Reason } from '../verdict/index.ts'
import { isCapitalWord } from './capital-words.ts'
import { createNameTest } from './shared-judge.ts'
import type { Fault, StoryContext } from './types.ts'

const NONE: readonly Fault[] = []

/** Whether what has this name is asked for the first time in the story. */
export type IsFirst = (name: string) => boolean

export function createFirstTest(): IsFirst {
  const known = new Set<string>()
  return (name) => known.size < known.add(name).size
}

/** Makes the function that finds the faults of a word. What it must know of the whole story is found once, when first needed. */
export function createFaultFinder(
  context: StoryContext,
  isFirst: IsFirst,
): (word: Word, sentence: Sentence) => readonly Fault[] {
  const { capitals, numerals } = context.knowledge
  const isListed = createNameTest(context.names)
  const isUnlistedName = ({ text }: Word): boolean => {
    const bare = toBareName(text)
    if (isCapitalWord(bare) || findAbbreviation(bare) !== undefined) return false
    return context.likelyNames().has(bare) && !isListed(bare)
  }

  const isMeantSo = ({ text }: Word): boolean => isDrawnOrNoise(text) && context.findSlips(text).length === 0

  return (word, sentence) => {
    if (word.form === 'numeral') return numerals ? NONE : [{ code: 'numeral' }]
    if (word.form === 'foreign') return [{ code: 'foreign' }]
    const { verdict, unsettled } = context.judge(word, sentence)
    const isCapital = hasCapital(word.text)
    const isPlain = verdict.readable && !verdict.guessed && !unsettled
    if (isPlain && (!isCapital || capitals === 'all')) return NONE

    const faults: Fault[] = []
    if (unsettled && verdict.readable) faults.push({ code: 'unsettled-heteronym' })
    const isShort = verdict.reasons.some(({ code }) => code === 'abbreviation')
    if (!verdict.readable && isCapital && !isShort && isUnlistedName(word) && !isOwnerOnly(word.text, verdict.reasons))
      faults.push({ code: 'unlisted-name' })
    faults.push(...toReasonFaults(word.text, verdict.reasons))
    // What is missing for the first of its ways leads; that there is another says why its step is a later one.
    if (unsettled && !verdict.readable) faults.push({ code: 'unsettled-heteronym' })
    // An allowed name is told to the child as it is written, so that neither its sounds nor its capital are a surprise.
    if (isCapital && isListed(word.text)) return faults
    if (isCapital) faults.push(...findCapitalFaults(word.text, capitals))
    // A guess that can be read is reported where the story first has it: thirty notes on one invented name help nobody.
    if (
      verdict.guessed &&
      verdict.kind === 'decodable' &&
      !isMeantSo(word) &&
      isFirst(`guess ${word.text.toLowerCase()}`)
    )
      faults.push({ code: 'guessed' })
    return faults
  }
}

/** `Tam’s`, where `Tam` can be read and only the owner's ending is to blame, or its letter: listing the name would not help. */
function isOwnerOnly(text: string, reasons: readonly Reason[]): boolean {
  const from = toBareName(text).length
  const own = text.length - from - 1
  const isOwn = ({ code, letters, found, allowed }: Reason): boolean =>
    code === 'too-many-letters' ? Number(found) - own <= Number(allowed) : letters.every(([start]) => start >= from)
  return from < text.length && reasons.every(isOwn)
}

/** A contraction that is taught by name is a contraction to the teacher, though the verdict calls it a sight word. */
function toReasonFaults(text: string, reasons: readonly Reason[]): readonly Fault[] {
  const isNamed = reasons[0]?.code === 'sight-word-later' && isContraction(text)
  if (!isNamed) return reasons.map((reason) => ({ code: reason.code, reason }))
  const others = reasons.slice(1).filter(({ code }) => code !== 'contraction')
  return reasons
    .slice(0, 1)
    .concat(others)
    .map((reason, index) => ({ code: index === 0 ? 'contraction' : reason.code, reason }))
}

function findCapitalFaults(text: string, taught: Capitals): readonly Fault[] {
  if (taught === 'all' || text === 'I') return NONE
  if (isAllCapitals(text)) return [{ code: 'all-capitals' }]
  return taught === 'none' ? [{ code: 'capital' }] : NONE
}
