// One thing that can be taught, as a teacher writes it in a line or on the command line: a sound, an ending, a word.

import { findNearest } from '../nearest.ts'
import { isOneGroup } from '../phonics/guess/bonds.ts'
import type { CorrespondenceKey, Phonics } from '../phonics/types.ts'
import { type Problem, toExpected, toProblem } from '../problem/index.ts'
import { resolveCorrespondence } from './correspondence.ts'
import { findMeantWord } from './slips.ts'
import type { Ending, TaughtCorrespondence } from './types.ts'
import { ENDINGS } from './vocabulary.ts'

/** What was written, and what it means. */
export type TaughtItem =
  | { readonly kind: 'correspondence'; readonly written: string; readonly keys: readonly CorrespondenceKey[] }
  | { readonly kind: 'ending'; readonly written: string; readonly ending: Ending }
  | { readonly kind: 'word'; readonly written: string }

/** The keys of a step whose items a teacher writes one by one. */
export const ITEM_KEYS = ['teach', 'sight words', 'endings', 'contractions'] as const

/** Under which key of a step an item stands. A contraction is taught by name, beside the words known by heart. */
export function toItemKey({ kind, written }: TaughtItem): (typeof ITEM_KEYS)[number] {
  if (kind === 'correspondence') return 'teach'
  if (kind === 'ending') return 'endings'
  return /['’ʼ]/.test(written) ? 'contractions' : 'sight words'
}

/** `doubt` is a warning: a word that nobody knows may be a slip, or a maker's own. */
export type ResolvedItem = { readonly item: TaughtItem; readonly doubt?: Problem } | { readonly problem: Problem }

/** A word that nobody knows may be a slip or a maker's own: in a sequence it is doubted, and taken. */
export type Unlisted = 'doubted' | 'refused'

/**
 * `ai as in rain` is a sound, `-ed` and `'s` an ending, `said` a word known by heart.
 * @param examples sounds with example words, to name one where somebody writes letters alone
 * @param unlisted what becomes of a word that nobody knows
 */
export function resolveItem(
  given: string,
  phonics: Phonics,
  examples: readonly TaughtCorrespondence[] = [],
  unlisted: Unlisted = 'refused',
): ResolvedItem {
  const written = given.trim()
  if (/\s/.test(written)) {
    const resolved = resolveCorrespondence(written, phonics)
    if ('problem' in resolved) return resolved
    return { item: { kind: 'correspondence', written, keys: resolved.taught.map(({ key }) => key) } }
  }
  if (/^-|^['’]s$/.test(written)) return resolveEnding(written)
  if (!/^\p{L}[\p{L}'’ʼ-]*$/u.test(written)) return toUnreadable(written)
  if (isLetter(written)) return toBare(written, examples)
  // What begins with a capital is a name, or `Mr`: those the dictionary need not have.
  if (/^(?:O|\p{Lu}\p{Ll}.*)$/u.test(written)) return { item: { kind: 'word', written } }
  const isListed = phonics.read(written).source !== 'guess'
  // The dictionary has `ai` and its like by the names of their letters.
  if (isListed ? isGroup(written) : isLetters(written, examples)) return toBare(written, examples)
  // `thier` can be read as a form of thy, and is a slip.
  if (isListed && findMeantWord(written, phonics) === undefined) return { item: { kind: 'word', written } }
  return toUnlisted(written, phonics, unlisted)
}

/** Groups of letters that are words too. */
const WORDS: ReadonlySet<string> = new Set(['a', 'air', 'are', 'ear', 'i', 'oar', 'or', 'ore', 'ow'])

const isGroup = (written: string): boolean => isOneGroup(written.toLowerCase()) && !WORDS.has(written.toLowerCase())

/** `igh` and `str` are no words that anybody invents. */
const isLetters = (written: string, examples: readonly TaughtCorrespondence[]): boolean =>
  examples.some(({ letters }) => letters === written.toLowerCase()) || !/[aeiouy]/i.test(written) || isGroup(written)

function toUnlisted(written: string, phonics: Phonics, unlisted: Unlisted): ResolvedItem {
  const meant = findMeantWord(written, phonics)
  const note = 'A sound is written with an example word, as `ai as in rain`; an ending with a dash, as `-ed`.'
  const no = `\`${written}\` is not in the dictionary`
  if (unlisted === 'refused') {
    const message = `${no}, so it is no word to learn by heart`
    const more = { expected: toExpected(meant), ...(meant === undefined && { note }) }
    return { problem: toProblem({ code: 'bad-value', message, ...more }) }
  }
  const item = { kind: 'word', written } as const
  // The file says of itself that a word is most likely misspelt.
  if (meant !== undefined) return { item }
  const message = `${no}; it is taken as you wrote it`
  return { item, doubt: toProblem({ code: 'unknown-name', severity: 'warning', message, note }) }
}

/** The dictionary has letters by their names; but who writes `m` means its sound. `a` and `I` are words. */
const isLetter = (written: string): boolean => /^\p{L}$/u.test(written) && !/^[aIO]$/.test(written)

function toBare(written: string, examples: readonly TaughtCorrespondence[]): ResolvedItem {
  const like = examples.find(({ letters }) => letters === written.toLowerCase())
  return {
    problem: toProblem({
      code: 'bad-value',
      message: `\`${written}\` stands alone: a sound is written with an example word`,
      expected: toExpected(like && `${like.letters} as in ${like.example}`),
      ...(like === undefined && { note: 'Write it as `ai as in rain`.' }),
    }),
  }
}

function resolveEnding(written: string): ResolvedItem {
  const straight = written.replace('’', "'")
  const ending = ENDINGS.find((one) => one === straight)
  if (ending !== undefined) return { item: { kind: 'ending', written: straight, ending } }
  const nearest = findNearest(straight, ENDINGS)
  const note = nearest === undefined ? { note: `The endings are ${ENDINGS.join(', ')}.` } : {}
  const message = `\`${written}\` is no ending that can be taught`
  return { problem: toProblem({ code: 'bad-value', message, expected: toExpected(nearest), ...note }) }
}

const toUnreadable = (written: string): ResolvedItem => ({
  problem: toProblem({
    code: 'bad-value',
    message: `\`${written}\` cannot be read`,
    note: 'Write a sound with an example word (`ai as in rain`), an ending (`-ed`), or a word known by heart (`said`).',
  }),
})
