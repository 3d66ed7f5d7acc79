// What else is wrong with a word, in a few words each, for the note of its one message.

import { findCapitalStep } from '../sequence/taught.ts'
import { findChangeText, toEnding } from './endings.ts'
import type { FaultCode } from './reasons.ts'
import { toSeen } from './seen.ts'
import type { Fault, StoryContext } from './types.ts'
import { toQuoted } from './wording.ts'

type Phrase = (fault: Fault, context: StoryContext, word: string) => string

const unitOf = ({ reason }: Fault): string => toQuoted(reason?.unit?.letters ?? '')
const seenOf = ({ reason }: Fault, word: string): string =>
  toQuoted(reason?.unit === undefined ? '' : toSeen(word, reason.unit, reason).letters)
const when = (step: string | undefined): string => (step === undefined ? ' (no step teaches it)' : ` (step ${step})`)
const taught = ({ reason }: Fault): string => when(reason?.taughtAt)

const toEndingText = ({ reason }: Fault, word: string): string => {
  const change = findChangeText(reason)
  return change === undefined ? `the ending ${toQuoted(toEnding(word, reason))}` : `it ${change}`
}

/** Sorted by code; a fault that is never second has a phrase all the same, since sequences differ. */
const PHRASES = {
  abbreviation: () => 'it is an abbreviation',
  'all-capitals': (_, { sequence }) => `it is all in capitals${when(findCapitalStep(sequence, 'all'))}`,
  capital: (_, { sequence }) => `it has a capital letter${when(findCapitalStep(sequence, 'first'))}`,
  contraction: (fault) => `it is a contraction${taught(fault)}`,
  'correspondence-later': (fault, _, word) => `${seenOf(fault, word)}${taught(fault)}`,
  'correspondence-untaught': (fault, _, word) => `${seenOf(fault, word)}${taught(fault)}`,
  ending: (fault, _, word) => `${toEndingText(fault, word)}${taught(fault)}`,
  foreign: () => 'it is not written in English letters',
  guessed: () => 'it is not in the dictionary, so its sounds are guessed',
  irregular: (fault) => `its ${unitOf(fault)} breaks the rules`,
  misspelt: () => 'it is misspelt',
  numeral: () => 'it is a numeral',
  'reduced-vowel': (fault) => `its ${unitOf(fault)} is a weak vowel`,
  shape: ({ reason }) => `its shape ${reason?.found ?? ''}${when(reason?.taughtAt)}`,
  'sight-word-later': (fault) => `it is a sight word${taught(fault)}`,
  'too-many-letters': ({ reason }) => `${reason?.found} letters (at most ${reason?.allowed} allowed)`,
  'too-many-syllables': ({ reason }) => `${reason?.found} syllables (at most ${reason?.allowed} allowed)`,
  'unknown-word': () => 'it is not in the dictionary',
  'unlisted-name': () => 'it looks like a name',
  'unsettled-heteronym': () => 'it can be said in more than one way',
  unsure: () => 'it is not known how it is said',
} as const satisfies Record<FaultCode, Phrase>

/** One sentence that names the further faults of a word; empty where there are none. */
export function toFurtherNote(faults: readonly Fault[], context: StoryContext, word: string): string {
  const phrases = new Set(faults.map((fault) => PHRASES[fault.code](fault, context, word)))
  return phrases.size === 0 ? '' : `Also: ${[...phrases].join('; ')}.`
}
