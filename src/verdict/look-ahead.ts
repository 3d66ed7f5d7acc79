// Looks along the sequence: at which step does a word become readable, and which step teaches what is missing?
// Teaching more never makes a readable word unreadable, so the earliest step is found by halving.

import type { CorrespondenceKey, Pronunciation, WordPronunciations } from '../phonics/types.ts'
import { knowledgeAt, toSightKey, toStepIndex } from '../sequence/knowledge.ts'
import { type ReaderExtra, withReader } from '../sequence/reader.ts'
import type { Knowledge, Sequence, StepAdds } from '../sequence/types.ts'
import { findFaults, findHiddenChanges, findReadingKeys, inOrder, isMended } from './faults.ts'
import type { Reason, ReasonCode, Verdict } from './types.ts'
import { findOwnerFault, toShortKeys, toSilentEKeys } from './unit.ts'
import { findKnownStem, isReadable, isSightWord, judge } from './verdict.ts'

/** Who reads: the names that the story allows, as written, and what a reader knows beyond or short of the step. */
export interface JudgeOptions {
  readonly names?: readonly string[]
  readonly reader?: ReaderExtra
}

/**
 * The verdict at a step, with each reason reported apart by what the sequence teaches later, and `taughtAt` set.
 * @throws RangeError where the sequence has no such step
 */
export function judgeInSequence(
  pronunciations: WordPronunciations,
  sequence: Sequence,
  stepId: string,
  options: JudgeOptions = {},
): Verdict {
  return judgeAhead(pronunciations, sequence, stepId, options).verdict
}

/** The verdict, and the earliest step at which the word is readable where that had to be found: only of an unreadable word. */
export function judgeAhead(
  pronunciations: WordPronunciations,
  sequence: Sequence,
  stepId: string,
  options: JudgeOptions,
): { readonly verdict: Verdict; readonly readableAt?: string | undefined } {
  const now = toKnowledge(sequence, stepId, options)
  const verdict = judge(pronunciations, now, options.names)
  if (verdict.readable) return { verdict }
  const from = toStepIndex(sequence, stepId) + 1
  const readableAt = findReadableAt(pronunciations, sequence, options, from)
  const reported = explainByPronunciation(
    verdict,
    pronunciations,
    now,
    judgeLater(pronunciations, sequence, readableAt, options),
  )
  const reasons = reported.reasons.map((reason) => lookAhead(reason, pronunciations, reported, sequence, from, options))
  const sight = findLaterSightWord(pronunciations, sequence, readableAt, options, now)
  // A sight word that this reader still lacks is learnt as it is, whatever its letters want.
  const first = sight === undefined ? [] : [sight]
  const others = readableAt === undefined ? toNever(reasons, reported, sequence, options) : inOrder(reasons)
  return { verdict: { ...reported, reasons: [...first, ...others] }, readableAt }
}

/** The reasons of a word that no step makes readable: with all that is lacking at the end, and that first. */
function toNever(
  reasons: readonly Reason[],
  { pronunciation }: Verdict,
  sequence: Sequence,
  options: JudgeOptions,
): readonly Reason[] {
  const last = sequence.steps.at(-1)?.id
  if (pronunciation === undefined || last === undefined) return lackingFirst(inOrder(reasons))
  const hidden = findHiddenChanges(reasons, pronunciation, toKnowledge(sequence, last, options))
  return lackingFirst(inOrder([...reasons, ...hidden]))
}

/** How the word is judged where it is first readable; at the last step where it never is. */
function judgeLater(
  pronunciations: WordPronunciations,
  sequence: Sequence,
  readableAt: string | undefined,
  options: JudgeOptions,
): Verdict {
  const stepId = readableAt ?? sequence.steps.at(-1)?.id ?? ''
  return judge(pronunciations, toKnowledge(sequence, stepId, options), options.names)
}

/**
 * Of several pronunciations, the one by which the child will first read the word says what is still missing; where none will
 * do, the one that comes nearest in the end.
 */
function explainByPronunciation(
  verdict: Verdict,
  { word, pronunciations, unsure }: WordPronunciations,
  now: Knowledge,
  later: Verdict,
): Verdict {
  const { pronunciation } = later
  const isSettled = later.kind === 'decodable' || later.kind === 'unreadable'
  if (unsure || pronunciation === undefined || pronunciations.length < 2) return verdict
  if (!isSettled || pronunciation === verdict.pronunciation) return verdict
  const others = verdict.reasons.filter(({ code }) => code === 'unknown-word')
  return { ...verdict, pronunciation, reasons: [...findFaults(word, pronunciation, now), ...others] }
}

/** What no step mends comes first: a word that waits for it is not helped by a later step. */
function lackingFirst(reasons: readonly Reason[]): readonly Reason[] {
  // Letters that are neither in the dictionary nor make ordinary sounds are first of all no word: most likely a slip.
  const isNoWord = reasons.some(({ code }) => code === 'irregular')
  const isLacking = ({ taughtAt, code }: Reason) => taughtAt === undefined && code !== 'unknown-word'
  const unknown = reasons.filter(({ code }) => code === 'unknown-word')
  if (isNoWord && unknown.length > 0) return [...unknown, ...reasons.filter(({ code }) => code !== 'unknown-word')]
  return [...reasons.filter(isLacking), ...reasons.filter((reason) => !isLacking(reason))]
}

/**
 * The earliest step at which the word is readable; undefined where the sequence never gets there.
 * @param from the place of a step before which it is known not to be
 */
export function findReadableAt(
  pronunciations: WordPronunciations,
  sequence: Sequence,
  options: JudgeOptions = {},
  from = 0,
): string | undefined {
  return findFirstStep(sequence, from, options, (knowledge) => isReadable(pronunciations, knowledge, options.names))
}

/** The first step from a place on at which something holds that, once true, stays true. */
export function findFirstStep(
  sequence: Sequence,
  from: number,
  options: JudgeOptions,
  holds: (knowledge: Knowledge) => boolean,
): string | undefined {
  const { steps } = sequence
  const holdsAt = (index: number) => holds(toKnowledge(sequence, steps[index]?.id as string, options))
  let low = from
  let high = steps.length - 1
  if (!holdsAt(high)) return undefined
  while (low < high) {
    const middle = Math.floor((low + high) / 2)
    if (holdsAt(middle)) high = middle
    else low = middle + 1
  }
  return steps[low]?.id
}

function toKnowledge(sequence: Sequence, stepId: string, options: JudgeOptions): Knowledge {
  const knowledge = knowledgeAt(sequence, stepId)
  return options.reader === undefined ? knowledge : withReader(knowledge, options.reader)
}

/** What a step can do nothing about. */
const OF_NO_STEP: ReadonlySet<ReasonCode> = new Set(['abbreviation', 'misspelt', 'unknown-word', 'unsure'])

function lookAhead(
  reason: Reason,
  pronunciations: WordPronunciations,
  verdict: Verdict,
  sequence: Sequence,
  from: number,
  options: JudgeOptions,
): Reason {
  if (OF_NO_STEP.has(reason.code)) return reason
  const gap = isNotYet(reason.key, options)
    ? findGap(sequence, ({ correspondences }) => correspondences.some(({ key }) => key === reason.key))
    : undefined
  if (gap !== undefined) return { ...reason, code: 'correspondence-later', taughtAt: gap }
  const { pronunciation } = verdict
  const isGone = (knowledge: Knowledge) => {
    if (reason.code === 'ending' && reason.unit === undefined) return findOwnerFault(knowledge) === undefined
    return pronunciation === undefined || isMended(reason, pronunciations.word, pronunciation, knowledge)
  }
  const taughtAt = findFirstStep(sequence, from, options, isGone)
  if (taughtAt === undefined) return reason
  const isLetters = reason.code === 'irregular' || reason.code === 'correspondence-untaught'
  if (!isLetters) return { ...reason, taughtAt }
  return {
    ...reason,
    ...findTaughtKey(reason, pronunciation, sequence, taughtAt),
    code: 'correspondence-later',
    taughtAt,
  }
}

/** Of the correspondences that would each do, the one that the step teaches; a weak vowel is read by its short one. */
function findTaughtKey(
  { unit }: Reason,
  pronunciation: Pronunciation | undefined,
  sequence: Sequence,
  step: string,
): Pick<Reason, 'key'> {
  if (unit === undefined || pronunciation === undefined) return {}
  const silent = toSilentEKeys(unit)
  const keys = [
    ...findReadingKeys(unit, pronunciation),
    ...(unit.reduced || unit.kind === 'silent' ? toShortKeys(unit.letters) : []),
    ...(silent?.before === undefined ? [] : [silent.before]),
    ...(silent?.split ?? []),
  ]
  const taught = sequence.steps.find(({ id }) => id === step)?.adds.correspondences ?? []
  const key = keys.find((one) => taught.some((correspondence) => correspondence.key === one))
  return key === undefined ? {} : { key }
}

/** The step that taught what this reader does not know yet. */
function findGap(sequence: Sequence, isIt: (adds: StepAdds) => boolean): string | undefined {
  return sequence.steps.find(({ adds }) => isIt(adds))?.id
}

function isNotYet(key: CorrespondenceKey | undefined, { reader }: JudgeOptions): boolean {
  return key !== undefined && (reader?.correspondencesNotYet?.includes(key) ?? false)
}

// Told only where it is the way by which the child will first read the word: a sight word that can be sounded out before
// it is taught by heart is no help to the teacher.
function findLaterSightWord(
  pronunciations: WordPronunciations,
  sequence: Sequence,
  readableAt: string | undefined,
  options: JudgeOptions,
  now: Knowledge,
): Reason | undefined {
  const word = toSightKey(pronunciations.word)
  if (options.reader?.sightWordsNotYet?.some((one) => toSightKey(one) === word)) {
    const gap = findGap(sequence, ({ sightWords }) => sightWords.some((one) => toSightKey(one) === word))
    if (gap !== undefined)
      return { code: 'sight-word-later', letters: [[0, pronunciations.word.length]], taughtAt: gap }
  }
  // Known by heart at an earlier step, it would be readable there.
  if (readableAt === undefined) return undefined
  const then = toKnowledge(sequence, readableAt, options)
  // Of `kindness` only the letters of its `ness` are waited for, where `kind` is known by heart.
  if (!then.sightWords.has(word) && findKnownStem(word, now) !== undefined) return undefined
  if (!isSightWord(pronunciations, then) || judge(pronunciations, then, options.names).kind !== 'sight')
    return undefined
  return { code: 'sight-word-later', letters: [[0, pronunciations.word.length]], taughtAt: readableAt }
}
