// Whether English letters that are read in one way make no sure name, since a name may be of another land.

import { isVowel } from '../arpabet.ts'
import type { RawUnit } from '../raw.ts'
import { isEnglishHabit, isSaidAlikeThroughout } from './world.ts'

export const isDoubtedAsName = (units: readonly RawUnit[]): boolean =>
  hasSoftC(units) ||
  hasDoubtedJ(units) ||
  isEnglishHabit(units) ||
  isLongName(units) ||
  hasShortA(units) ||
  endsInTwo(units)

/** `Zoa`: two vowels at the end of a name are mostly said one by one, and before an x in many ways: `Foix`. */
const endsInTwo = (units: readonly RawUnit[]): boolean => {
  const [before, last] = units.slice(-2).map(({ letters }) => letters)
  return /^(?:ea|oa)$/.test(last ?? '') || (last === 'x' && /^(?:ai|oi)$/.test(before ?? ''))
}

/** `Cem` and `Ceri`: a c before e and i is told by each tongue in its own way. */
const hasSoftC = (units: readonly RawUnit[]): boolean =>
  units.some(({ letters, phones }) => letters === 'c' && phones[0] === 'S')

/** A j is that of jam in English, and that of yam in half of Europe: `Jari`, but `Jub` is a made word. */
const hasDoubtedJ = (units: readonly RawUnit[]): boolean =>
  units.some(({ letters }) => letters === 'j') && units.filter(({ stress }) => stress !== undefined).length > 1

/** `Abdelkrim`: a name of three syllables that are not said so in most lands; `Zubmog` is a made one. */
const isLongName = (units: readonly RawUnit[]): boolean =>
  units.filter(({ phones }) => phones.some(isVowel)).length > 2 && !isSaidAlikeThroughout(units)

/**
 * `Nassim`, `Rachit`: of two syllables and more, no short a is sure; a `Zab` is made, and so are `Zaffy` and `Snaggle` by
 * their endings.
 */
const hasShortA = (units: readonly RawUnit[]): boolean =>
  units.some(({ letters, phones }) => letters === 'a' && phones[0] === 'AE') &&
  units.filter(({ phones }) => phones.some(isVowel)).length > 1 &&
  !/^(?:ie|le|y)$/.test(units.at(-1)?.letters ?? '')
