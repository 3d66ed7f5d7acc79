// Turns of phrase that several rules share, so that all messages speak alike.

import type { Span } from '../phonics/types.ts'
import { toStepIndex } from '../sequence/knowledge.ts'
import { toAddition } from './additions.ts'
import { toByHeart } from './by-heart.ts'
import { toQuoted } from './quoted.ts'
import { toMeantNote } from './slips.ts'
import type { StoryContext, WordFault } from './types.ts'

export { toQuoted } from './quoted.ts'

/** ` as in \`light\``, or nothing where there is no example. */
export function toAsIn(example: string | undefined): string {
  return example === undefined ? '' : ` as in ${toQuoted(example)}`
}

/** `taught at step green-3; this story is at pink-2`; that no step teaches it; or that this reader lacks what was taught. */
export function toWhen(taughtAt: string | undefined, story: Pick<StoryContext, 'sequence' | 'step'>): string {
  if (taughtAt === undefined) return 'which no step of this sequence teaches'
  if (isGap(taughtAt, story)) return `taught at step ${taughtAt}, which this reader does not know yet`
  return `taught at step ${taughtAt}; this story is at ${story.step}`
}

/** Whether the step is behind the story's: only a reader who lacks something can be told of it. */
function isGap(taughtAt: string, { sequence, step }: Pick<StoryContext, 'sequence' | 'step'>): boolean {
  return toStepIndex(sequence, taughtAt) <= toStepIndex(sequence, step)
}

/** The letters of a word that some ranges cover: `a e` for the `a_e` of `cake`. */
export function toLettersText(word: string, letters: readonly Span[]): string {
  return letters.map(([from, to]) => word.slice(from, to)).join(' ')
}

/** `3 words`, `1 word`. */
export function toCount(count: number, noun: string): string {
  return `${count} ${noun}${count === 1 ? '' : 's'}`
}

/** Who sets a limit, in a message: the step, or the options of the rule. */
export function toLimitText(allowed: number, step: string, isOwn: boolean): string {
  return isOwn ? `your settings allow at most ${allowed}` : `step ${step} allows at most ${allowed}`
}

/** What to do about a name whose letters do not tell how its bearer says it: only the maker can. */
export const toUnsureNameNote = (name: string): string =>
  `Say it to the child as its bearer does, and list it at the top of the story: \`names: [${name}]\`. If it is no name, use another word.`

/** What to do about a word that cannot be read: wait for the step that makes all of it readable, or take another. */
export function toWordNote(fault: WordFault, context: StoryContext): string {
  const { word, judged, reason } = fault
  const meant = toMeantNote(fault, context)
  if (meant !== undefined) return meant
  const readableAt = judged?.readableAt ?? null
  if (reason?.taughtAt !== undefined && isGap(reason.taughtAt, context))
    return 'Teach it again first, or use another word.'
  if (readableAt === null) {
    const addition = toAddition(word.text, judged?.verdict.reasons ?? [])
    return addition === undefined
      ? 'No step of this sequence makes the word readable: use another word, or teach it as a sight word.'
      : `Use another word, ${addition}, or list ${toQuoted(toByHeart(word.text, context))} under \`sight words\`.`
  }
  if (readableAt === context.step) return ''
  const whole = readableAt === reason?.taughtAt ? '' : ', where all of it is readable'
  return `Use another word, or keep this one for step ${readableAt}${whole}.`
}

/** What is known of a word that no other can stand for. */
export interface Silence {
  /** How often it runs in the story. */
  readonly count: number
  readonly isLittle: boolean
  /** Whether the sentence does without it. */
  readonly canGo: boolean
}

/**
 * The same advice where no word can be put in its place: to word it anew, or to teach it, with how much hangs on that. Every
 * note that says `Use another word` has its answer here.
 */
export function toSilentNote(note: string, { count, isLittle, canGo }: Silence): string {
  const times = count === 1 ? 'it comes once in this story' : `it comes ${count} times in this story`
  const none = canGo
    ? 'The sentence does without it: leave it out'
    : isLittle
      ? 'No other word does what this little one does: word it anew'
      : 'No word fits here: word it anew'
  if (note.startsWith('Teach it again first')) return canGo ? note.replace(TAUGHT, LEFT_OUT) : note
  if (note.startsWith(KEEP))
    // Of a word that lacks more than the message names, the step stands with its reason, as it is another one.
    return note.replace(KEPT, (_, step: string) => `${none}, keep it for step ${step}, or teach it (${times}).`)
  if (note.startsWith(TEACH))
    return note.replace(TEACHABLE, (_, rest: string) => `${none}, or teach ${rest} (${times}).`)
  return note.replace(
    NEVER,
    `No step of this sequence makes the word readable. ${none}, or teach it as a sight word (${times}).`,
  )
}

const TAUGHT = /^(Teach it again first, or )use another word\./
const LEFT_OUT = '$1leave this one out: the sentence does without it.'
const KEEP = 'Use another word, or keep this one for step '
const KEPT = /^Use another word, or keep this one for step (\S+?(?:, where all of it is readable)?)\.(?= |$)/
const TEACH = 'Use another word, or teach '
const TEACHABLE = /^Use another word, or teach (.*?)\.(?= |$)/
const NEVER = 'No step of this sequence makes the word readable: use another word, or teach it as a sight word.'

/** What every report on a fault carries: the word, the blamed letters, and the step at which the word is readable. */
export function toFaultReport({ word, code, reason, judged }: WordFault) {
  return { at: word, word, letters: reason?.letters ?? [], reason: code, readableAt: judged?.readableAt ?? null }
}
