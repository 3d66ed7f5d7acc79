// An example that an American file hears otherwise than a British maker means it: the a of `bath` is the a of `cat` there.

import type { Phonics } from '../phonics/types.ts'
import type { Found } from '../problem/index.ts'
import { resolveCorrespondence } from './correspondence.ts'
import type { TaughtCorrespondence } from './types.ts'

/** The sounds that a letter says first: who chose the American accent and writes `a as in bath` still means another. */
const FIRST_SOUNDS: ReadonlySet<string> = new Set(['a=æ', 'o=ɑ'])

/**
 * Undefined where the example shows its sound in every accent.
 * @param isChosen the accent was named, so that only what is hardly ever meant is doubted
 */
export function findOtherAccent(
  taught: readonly TaughtCorrespondence[],
  phonics: Phonics,
  others: readonly Phonics[],
  isChosen: boolean,
): Found | undefined {
  const [{ letters, example, key } = NONE, ...more] = taught
  if (phonics.accent !== 'general-american' || more.length > 0 || (isChosen && !FIRST_SOUNDS.has(key))) return undefined
  const findUnit = (word: string) => phonics.read(word).pronunciations[0]?.units.find((one) => one.key === key)
  const unit = findUnit(example)
  const usual = unit?.shown
  if (!unit?.vowel || usual === undefined || usual === example) return undefined
  // The er of `sister` is that of `her`, worn down: one sound here, and nobody means another by either.
  if (unit.stress === 0 || findUnit(usual)?.stress === 0) return undefined
  const isOther = (other: Phonics) => {
    const [here, there] = [example, usual].map((word) => resolveCorrespondence(`${letters} as in ${word}`, other))
    return here !== undefined && there !== undefined && toKeys(here) !== toKeys(there)
  }
  if (!others.some(isOther)) return undefined
  return {
    code: 'bad-example',
    severity: 'warning',
    message: `In General American the \`${letters}\` of \`${example}\` is the \`${letters}\` of \`${usual}\`, and is taught as that`,
    note: `Write \`${letters} as in ${usual}\`; or \`accent: southern-british\`, where the children hear another sound.`,
  }
}

const NONE: TaughtCorrespondence = { letters: '', example: '', key: '=' }

const toKeys = (resolved: ReturnType<typeof resolveCorrespondence>): string =>
  'taught' in resolved ? resolved.taught.map(({ key }) => key).join() : ''
