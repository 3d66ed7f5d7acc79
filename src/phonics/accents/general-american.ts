// General American: the dictionary's own sounds in IPA, and the sounds that its teachers teach as one.

import { isVowel } from '../arpabet.ts'
import type { RawUnit } from '../raw.ts'
import type { AccentRules } from './types.ts'

const IPA: Readonly<Record<string, string>> = {
  AA: 'ɑ',
  AE: 'æ',
  AH: 'ʌ',
  AO: 'ɔ',
  AW: 'aʊ',
  AY: 'aɪ',
  EH: 'ɛ',
  ER: 'ɜr',
  EY: 'eɪ',
  IH: 'ɪ',
  IY: 'iː',
  OW: 'oʊ',
  OY: 'ɔɪ',
  UH: 'ʊ',
  UW: 'uː',
}

export const CONSONANTS: Readonly<Record<string, string>> = {
  B: 'b',
  CH: 'tʃ',
  D: 'd',
  DH: 'ð',
  F: 'f',
  G: 'ɡ',
  HH: 'h',
  JH: 'dʒ',
  K: 'k',
  L: 'l',
  M: 'm',
  N: 'n',
  NG: 'ŋ',
  P: 'p',
  R: 'r',
  S: 's',
  SH: 'ʃ',
  T: 't',
  TH: 'θ',
  V: 'v',
  W: 'w',
  Y: 'j',
  Z: 'z',
  ZH: 'ʒ',
}

/** The sounds of one unit in IPA. The first vowel has the unit's stress; a second one in it (`fire`) never has any. */
function toSound(unit: RawUnit): string {
  let seen = false
  let sound = ''
  for (const phone of withoutGlide(unit.phones)) {
    if (!isVowel(phone)) {
      sound += CONSONANTS[phone] ?? ''
      continue
    }
    const weak = seen || !unit.stress
    sound += weak && phone === 'AH' ? 'ə' : weak && phone === 'ER' ? 'ər' : (IPA[phone] ?? '')
    seen = true
  }
  return sound
}

/** The glide that the dictionary writes after a vowel is no sound of its own: UW W in `usual` is /uː/. */
export function withoutGlide(phones: readonly string[]): readonly string[] {
  const vowel = phones.at(-2)
  if (phones.at(-1) !== 'W' || vowel === undefined || !isVowel(vowel)) return phones
  return [...phones.slice(0, -2), vowel === 'AH' ? 'UW' : vowel]
}

/**
 * Sounds that American teachers teach as one, each with its reason.
 * - `er` in `sister` and in `her`: one sound in the dictionary (ER), strong or weak.
 * - `o` in `dog` and in `hot`: many speakers have one vowel, and every first word list has `dog` (common practice, no source).
 * - `aw au` in `saw`: the same merger from the other side.
 * - `ear eer` in `near`: the dictionary writes both IH R and IY R.
 * - `e` in `hero`: the dictionary has both IH R and IY R; it is taught as the e of `me`.
 * - `a` in `warrior`: it is written with the vowel of `war`, and taught as the a of `want`.
 * - `a` in `carry`: the dictionary has the vowel of `merry`; it is taught as the a of `cat`.
 */
function toTaught(units: readonly RawUnit[], at: number, sound: string): string {
  const unit = units[at] as RawUnit
  const letters = unit.base ?? unit.letters
  if (sound === 'ɔ' && (letters === 'o' || letters === 'o_e')) return 'ɑ'
  if (sound === 'ɑ' && /^(au|aw|augh|ough)$/.test(letters)) return 'ɔ'
  if (letters === 'a' && units[at + 1]?.phones[0] === 'R') {
    if (sound === 'ɛ') return 'æ'
    if (sound === 'ɔ') return 'ɑ'
  }
  if (sound === 'ɪ' && letters === 'e' && unit.stress && units[at + 1]?.phones[0] === 'R') return 'iː'
  if (sound.includes('ər')) return sound.replace('ər', 'ɜr')
  return sound.replace('iːr', 'ɪr')
}

export const generalAmerican: AccentRules = {
  toSounds: (units) => units.map(toSound),
  toTaught,
  partsR: false,
}
