// Whether English letters that are read in one way make no sure name, since a name may be of another land.

import { isVowel } from '../arpabet.ts'
import type { RawUnit } from '../raw.ts'
import { isEnglishHabit, isSaidAlikeThroughout } from './world.ts'

export const isDoubtedAsName = (units: readonly RawUnit[]): boolean =>
  hasDoubtedJ(units) || isEnglishHabit(units) || isLongName(units) || hasShortA(units) || endsInTwo(units)

/** `Zoa`: two vowels at the end of a name are mostly said one by one. */
const endsInTwo = (units: readonly RawUnit[]): boolean => /^(?:ea|oa)$/.test(units.at(-1)?.letters ?? '')

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
