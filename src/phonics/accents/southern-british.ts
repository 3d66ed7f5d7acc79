// Southern British, derived from the dictionary's General American by rule and by named sets of words.
// Source of the rules: Wells, Accents of English (1982), lexical sets, from memory.
//
//   r is said only before a vowel     car  kɑː      carry kæri      story stɔːri
//   LOT and CLOTH are rounded         hot  hɒt      dog   dɒɡ       want  wɒnt
//   BATH words have a long a          bath bɑːθ     dance dɑːns
//   yod is kept after t d n           new  njuː     tune  tjuːn     during djʊərɪŋ

import { isVowel } from '../arpabet.ts'
import type { RawUnit } from '../raw.ts'
import { CONSONANTS, withoutGlide } from './general-american.ts'
import { isIn, nextSound, type Place, previousSound } from './place.ts'
import { isShortA, leavesSchwa, toStrongR, toVowelWithR, WITH_R } from './southern-british-r.ts'
import { ALSO, BATH, CHANGES, SHORT_O } from './southern-british-words.ts'
import type { AccentRules } from './types.ts'

const VOWELS: Readonly<Record<string, string>> = {
  AA: 'ɑː',
  AE: 'æ',
  AH: 'ʌ',
  AO: 'ɔː',
  AW: 'aʊ',
  AY: 'aɪ',
  EH: 'ɛ',
  ER: 'ɜː',
  EY: 'eɪ',
  IH: 'ɪ',
  IY: 'iː',
  OW: 'əʊ',
  OY: 'ɔɪ',
  UH: 'ʊ',
  UW: 'uː',
}

const GOOSE = new Set(['AH W', 'UH', 'UW', 'UW W'])

function toSound(place: Place): string {
  const unit = place.units[place.at] as RawUnit
  const phones = unit.phones.join(' ')
  const letters = unit.base ?? unit.letters
  if (phones === 'R') return isVowel(nextSound(place)) ? 'r' : leavesSchwa(place) ? 'ə' : ''
  if (phones === 'ER') return toStrongR(unit, letters, place)
  const withR = WITH_R[phones]
  if (withR) return toVowelWithR(keepsYod(phones, letters, place) ? `j${withR}` : withR, letters, place)
  if (phones === 'AA' || phones === 'AO') return toOpenO(phones, letters, place)
  if (phones === 'AE' || phones === 'AE F') return toBath(unit, place)
  if (letters === 'a' && phones === 'EH' && nextSound(place) === 'R') return isShortA(place) ? 'æ' : 'ɛə'
  if (GOOSE.has(phones)) return toU(phones, letters, place)
  if (phones === 'OW' && unit.stress === 2 && /mon(y|ies)$/.test(place.words[0])) return 'ə'
  if ((phones === 'IY' || phones === 'IH') && letters === 'e' && nextSound(place) === 'R' && unit.stress) return 'ɪə'
  return phones === 'AO F' ? 'ɒf' : toPlain(unit)
}

/** The stressed a of a BATH word is long; a weak one beside it is not, as the first of `advantage`. */
function toBath(unit: RawUnit, place: Place): string {
  // Of `sandcastle` and `grandmaster` the second a alone.
  const isFirst = place.at < 3 && /^(?:s|gr)and/.test(place.words[0])
  const isLong = (unit.stress ?? 0) > 0 && !isFirst && isIn(BATH, place)
  return (isLong ? 'ɑː' : 'æ') + (unit.phones.length > 1 ? 'f' : '')
}

/** LOT and CLOTH, and what came from France: `cough`, `gone`, `knowledge`, `John`, `encore`. */
const ROUNDED = new Set(['e', 'o', 'o_e', 'oh', 'ou', 'ow'])
/** `bazaar`, `ah`. */
const LONG = new Set(['aa', 'ah', 'ao'])
const OPEN_A = new Set(['a', 'a_e', 'ea'])

/** LOT /ɒ/, CLOTH /ɒ/, THOUGHT /ɔː/ and PALM /ɑː/, told apart by the letters and by a w before them. */
function toOpenO(phones: string, letters: string, place: Place): string {
  if (ROUNDED.has(letters)) return 'ɒ'
  if (OPEN_A.has(letters)) return toOpenA(phones, place)
  if (isIn(SHORT_O, place)) return 'ɒ'
  return LONG.has(letters) && phones === 'AA' ? 'ɑː' : 'ɔː'
}

function toOpenA(phones: string, place: Place): string {
  const next = place.units[place.at + 1]?.letters ?? ''
  if (next === 'lk') return 'ɔː'
  // wall, but wallet and swallow
  if (next === 'll' && /ll[aeiouy]/.test(place.words[1]) && previousSound(place) === 'W') return 'ɒ'
  if (previousSound(place) === 'W') return phones === 'AO' && /^l/.test(next) ? 'ɔː' : 'ɒ'
  return phones === 'AO' || next === 'll' ? 'ɔː' : 'ɑː'
}

/** GOOSE keeps its yod after t, d and n where the letters are u, ew, ue, eu: `new`, `tune`, `student`. */
function toU(phones: string, letters: string, place: Place): string {
  const plain = phones === 'UH' ? 'ʊ' : 'uː'
  return joinsYod(letters, place) ? `j${plain}` : plain
}

const YOD_LETTERS = new Set(['eu', 'eur', 'ew', 'u', 'u_e', 'ue', 'ur', 'ure'])
const BEFORE_YOD: ReadonlySet<string | undefined> = new Set(['D', 'N', 'T'])

const joinsYod = (letters: string, { units, at }: Place): boolean =>
  BEFORE_YOD.has(units[at - 1]?.phones.at(-1)) && YOD_LETTERS.has(letters)

/** And so does CURE: `during`, `endure`. */
const keepsYod = (phones: string, letters: string, place: Place): boolean =>
  phones === 'UH R' && joinsYod(letters, place)

function toPlain(unit: RawUnit): string {
  const toIpa = (phone: string): string =>
    phone === 'AH' && !unit.stress ? 'ə' : (VOWELS[phone] ?? CONSONANTS[phone] ?? '')
  return withoutGlide(unit.phones).map(toIpa).join('')
}

/** Applies `a>ɒ a2>ə` to the sounds of a word's units. */
function change(sounds: readonly string[], units: readonly RawUnit[], changes: string): readonly string[] {
  const mended = [...sounds]
  for (const one of changes.split(' ')) {
    const [, letters = '', nth = '1', sound = ''] = /^(\D+?)(\d?)>(.*)$/.exec(one) ?? []
    let left = Number(nth || '1')
    units.forEach((unit, at) => {
      if ((unit.base ?? unit.letters) === letters && --left === 0) mended[at] = sound
    })
  }
  return mended
}

/**
 * Sounds taught as one: an r before a vowel belongs to the next syllable (`story` has the `or` of `for`), and the strong
 * `e` of `hero` is the e of `me`. An r that is left out (`dinosaur`) asks for no more than the letter r.
 */
function toTaught(units: readonly RawUnit[], at: number, sound: string): string {
  const unit = units[at] as RawUnit
  const letters = unit.base ?? unit.letters
  if (letters === 'e' && sound === 'ɪə') return 'iː'
  // The ir of `confirmation` is worn down, and read by who knows that of `bird`.
  if (letters === 'ir' && /^ər?$/.test(sound)) return 'ɜː'
  if ((sound === '' || (sound === 'ə' && letters !== "'re")) && unit.phones.join() === 'R') return 'r'
  return sound.length > 1 && /[ɑɔɜəɪʊ]ː?ə?r$/.test(sound) ? sound.slice(0, -1) : sound
}

function toSounds(units: readonly RawUnit[], word: string, stem: string): readonly string[] {
  const words = [word, stem] as const
  const sounds = units.map((_, at) => toSound({ units, at, words }))
  const changes = CHANGES.get(word) ?? CHANGES.get(stem)
  return changes === undefined ? sounds : change(sounds, units, changes)
}

export const southernBritish: AccentRules = {
  toSounds,
  toOtherSounds(units, word, stem) {
    const changes = ALSO.get(word)
    return changes === undefined ? undefined : change(toSounds(units, word, stem), units, changes)
  },
  toTaught,
  partsR: true,
}
