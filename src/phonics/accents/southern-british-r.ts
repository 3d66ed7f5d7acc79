// Vowels with r in Southern British: said before a vowel only, and often another vowel there.

import { isVowel } from '../arpabet.ts'
import { firstEndOf } from '../places.ts'
import type { RawUnit } from '../raw.ts'
import { isIn, nextSound, type Place, previousSound } from './place.ts'
import { LONG_A, SHORT_A, SHORT_O } from './southern-british-words.ts'

/** A vowel with the r that follows it: NEAR, SQUARE, START, NORTH, CURE, FIRE, POWER. */
export const WITH_R: Readonly<Record<string, string>> = {
  'IH R': 'ɪə',
  'EH R': 'ɛə',
  'AA R': 'ɑː',
  'AO R': 'ɔː',
  'UH R': 'ʊə',
  'Y UH R': 'jʊə',
  'AY ER': 'aɪə',
  'AY R': 'aɪə',
  'W AA R': 'wɑː',
  'W AY R': 'waɪə',
  'OY R': 'ɔɪə',
  'Y ER': 'jə',
  'IY EY': 'ieɪ',
}

/** The r of `they're`, `devour` and `camembert` leaves a schwa behind it: no short vowel stands there alone. */
export const leavesSchwa = (place: Place): boolean => BEFORE_SCHWA.has(previousSound(place))

const BEFORE_SCHWA = new Set(['AW', 'EH', 'IH', 'UH'])

/** NURSE strong, LETTER weak; /ʌr/ in `hurry`, `worry`, `courage`, /ɪr/ in `squirrel`. */
export function toStrongR(unit: RawUnit, letters: string, place: Place): string {
  const linked = isVowel(nextSound(place)) ? 'r' : ''
  if (!unit.stress) return `ə${linked}`
  if (linked && letters === 'irr') return 'ɪr'
  return linked && SHORT_U.has(letters) && !/^(furr|purr)/.test(place.words[0]) ? 'ʌr' : `ɜː${linked}`
}

const SHORT_U = new Set(['orr', 'our', 'urr'])

/** A vowel and its r as one unit: the r is said before another vowel, and the vowel may be short there. */
export function toVowelWithR(sound: string, letters: string, place: Place): string {
  if (!isVowel(nextSound(place))) return sound
  if (isWeakEnding(place)) return 'ər'
  if (sound === 'ɛə' && /arily$/.test(place.words[0])) return 'ɛr'
  if (sound === 'ɛə' && letters === 'ar' && isShortA(place)) return 'ær'
  if (sound === 'ɛə' && letters === 'ur') return 'ɛr'
  if (sound === 'ɔː' && isIn(SHORT_O, place)) return 'ɒr'
  return `${sound}r`
}

/** `ary`, `ery` and `ory` at the end are weak: `library`, `story` is not. */
function isWeakEnding({ units, at, words }: Place): boolean {
  const unit = units[at] as RawUnit
  return (
    unit.stress !== 1 &&
    /[aeo]r(y|i(es|ed|ly))$/.test(words[0]) &&
    units.slice(at + 1).filter(({ phones }) => phones.some(isVowel)).length <= 2
  )
}

/** `carry` and `charity` have the a of `cat`; `vary` and `various` that of `care`. */
export function isShortA({ units, at, words }: Place): boolean {
  const unit = units[at] as RawUnit
  const rest = words[0].slice(firstEndOf(unit))
  if (rest.startsWith('r')) return true
  const isLong = /^(y|i(a|o|e|u)|ies)/.test(rest) || words.some((word) => LONG_A.has(word))
  return !isLong || words.some((word) => SHORT_A.has(word))
}
