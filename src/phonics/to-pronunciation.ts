// Puts an accent on a word's units: sounds in IPA, keys, syllables and the whole word in IPA.

import { generalAmerican } from './accents/general-american.ts'
import { southernBritish } from './accents/southern-british.ts'
import type { AccentRules } from './accents/types.ts'
import { isVowel } from './arpabet.ts'
import { type FindOrdinary, toPlaces } from './ordinary.ts'
import { firstEndOf, startOf } from './places.ts'
import type { RawPronunciation, RawUnit } from './raw.ts'
import { type Cut, cutSyllables } from './syllables.ts'
import type { Accent, CorrespondenceKey, Pronunciation, Unit } from './types.ts'

const RULES: Readonly<Record<Accent, AccentRules>> = {
  'general-american': generalAmerican,
  'southern-british': southernBritish,
}

/** Short-vowel letters whose unstressed sound teachers read out in full: the `i` of `rabbit`, the `a` of `sofa`. */
const isReduced = (unit: RawUnit, count: number, sound: string): boolean =>
  count > 1 &&
  // The o of `ceremony` is strong in America and worn down in Britain.
  (unit.stress === 0 || isElectric(unit) || sound === 'ə') &&
  unit.kind === 'correspondence' &&
  unit.phones.length === 1 &&
  /^[aeiouy]$/.test(unit.letters) &&
  (unit.phones[0] === 'AH' || (unit.phones[0] === 'IH' && !/[iy]/.test(unit.letters)) || sound === 'ə')

/** The first e of `electronic` has a little stress in the dictionary, and is worn down all the same. */
const isElectric = ({ letters, phones, stress }: RawUnit): boolean =>
  stress === 2 && letters === 'e' && phones[0] === 'IH'

/**
 * What the accent makes of one entry of the dictionary: one pronunciation, or the two that are heard alike.
 * @param stem the word without its ending, for sets of words that go by the stem
 */
export function toPronunciations(
  raw: RawPronunciation,
  word: string,
  stem: string,
  accent: Accent,
  findOrdinary?: FindOrdinary,
): readonly Pronunciation[] {
  const rules = RULES[accent]
  const first = toPronunciation(raw, word, rules, rules.toSounds(raw.units, word, stem), findOrdinary)
  const other = rules.toOtherSounds?.(raw.units, word, stem)
  return other === undefined ? [first] : [first, toPronunciation(raw, word, rules, other, findOrdinary)]
}

function toPronunciation(
  raw: RawPronunciation,
  word: string,
  rules: AccentRules,
  sounds: readonly string[],
  findOrdinary?: FindOrdinary,
): Pronunciation {
  const cut = stressFull(cutSyllables(word, raw.units, raw.seams), raw.units, sounds)
  const units = raw.units.flatMap((unit, at) => {
    const sound = sounds[at] ?? ''
    const letters = toTaughtLetters(unit.base ?? unit.letters, sound, raw.units[at + 1]?.letters)
    const taught = isWornY(unit) ? 'iː' : toTaughtWeak(letters, rules.toTaught(raw.units, at, sound))
    const key: CorrespondenceKey = `${letters}=${taught}`
    const made = toUnit(unit, sound, key, cut.stress.length)
    const isBeforeVowel = raw.units[at + 1]?.phones.some(isVowel) === true
    return (rules.partsR && partFromR(made)) || (isBeforeVowel && partLong(made)) || made
  })
  const shown = findOrdinary === undefined ? units : units.map((unit, at) => show(unit, at, units, findOrdinary))
  return { units: shown, ipa: toIpa(units, cut), syllables: toSyllables(word, cut) }
}

/** The main stress stands on no worn-down vowel: where the accent wears one down, the next strong one has it (`moustache`). */
function stressFull(cut: Cut, units: readonly RawUnit[], sounds: readonly string[]): Cut {
  const main = cut.stress.indexOf(1)
  const next = cut.stress.indexOf(2, main)
  if (next < 0) return cut
  const vowels = units.flatMap(({ phones }, at) => phones.filter(isVowel).map(() => sounds[at] ?? ''))
  if (vowels[main] !== 'ə') return cut
  return { ...cut, stress: cut.stress.map((mark, at) => (at === main ? 0 : at === next ? 1 : mark)) }
}

/** The sounds that a worn-down vowel is read out with: those called short, letter by letter. */
const FULL: Readonly<Record<string, readonly string[]>> = {
  a: ['æ'],
  e: ['ɛ'],
  i: ['ɪ'],
  o: ['ɒ', 'ɑ'],
  u: ['ʌ'],
  y: ['ɪ'],
}

function show(unit: Unit, at: number, units: readonly Unit[], findOrdinary: FindOrdinary): Unit {
  if (unit.kind !== 'correspondence' && unit.kind !== 'silent') return unit
  const places = () => [...toPlaces(units.map(toGrapheme), at), ...toPlacesOfStem(units, at)]
  const shown =
    (unit.reduced && unit.base === undefined ? findFull(unit, places, findOrdinary) : undefined) ??
    findOrdinary(unit.key, places)
  return shown === undefined ? unit : Object.assign(unit, { shown })
}

function findFull(unit: Unit, places: () => readonly string[], findOrdinary: FindOrdinary): string | undefined {
  const letters = toGrapheme(unit)
  for (const sound of FULL[letters] ?? []) {
    const shown = findOrdinary(`${letters}=${sound}`, places)
    if (shown !== undefined) return shown
  }
  return undefined
}

/** `pies` is spelt as `pie` is: before its ending a word stands as it does alone. */
function toPlacesOfStem(units: readonly Unit[], at: number): readonly string[] {
  const end = units.findIndex(({ kind }) => kind === 'inflection')
  return end <= at ? [] : toPlaces(units.slice(0, end).map(toGrapheme), at)
}

const toGrapheme = ({ letters, base }: Unit): string => base ?? letters

/**
 * A short vowel and the r after it are two sounds: f·o·r·e·s·t and h·u·rr·y in Southern British, where General American
 * has one. Undefined where the letters cannot be parted.
 */
function partFromR(unit: Unit): readonly Unit[] | undefined {
  const vowel = SHORT_WITH_R.exec(unit.sound)?.[1]
  if (vowel === undefined) return undefined
  const [, letters, r = ''] = /^([aeiouy]+)(r+)$/.exec(unit.letters) ?? []
  if (letters === undefined) return undefined
  const start = startOf(unit)
  const at = start + letters.length
  return [
    { ...unit, letters, spans: [[start, at]], sound: vowel, key: `${letters}=${vowel}` },
    { letters: r, spans: [[at, at + r.length]], sound: 'r', kind: 'correspondence', key: `${r}=r`, vowel: false },
  ]
}

/**
 * A doubled r says no more than one: `purr` and `furry` have the `ur` of `fur`. The dg of `budget` is the dge of `bridge`, whose e
 * the next vowel brings. The i of `appreciate` and `negotiate` is heard, and makes the sound of `special` and `patient` all the same.
 */
function toTaughtLetters(letters: string, sound: string, next: string | undefined): string {
  if (letters === 'dg') return 'dge'
  if (sound === 'ʃ' && /^[ct]$/.test(letters) && next?.startsWith('i')) return `${letters}i`
  return letters.endsWith('rr') ? letters.replace(/^([aeiou])rr$/, '$1r') : letters
}

/**
 * Worn down, the u of `music` is heard in `argument`, and the o_e of `some` in `handsome`: they are taught as those. Before a vowel the i of
 * `radio` may be as short as that of `onion`, and people say `junior` and `familiar` both ways.
 */
function toTaughtWeak(letters: string, sound: string): string {
  if (sound === 'j' && /^[ei]$/.test(letters)) return 'iː'
  if (letters === 'u' && sound === 'j') return 'juː'
  if (letters === 'ure' && /^j(?:ə|ɜr)$/.test(sound)) return sound === 'jə' ? 'jʊə' : 'jʊr'
  // Worn down, they are written with either sound: the ends of `promise` and `favourite`, of `private` and `desperate`.
  if (sound === 'ɪ' && (letters === 'i_e' || letters === 'a_e')) return 'ə'
  if (letters === 'u' && sound === 'jə') return 'juː'
  return letters === 'o_e' && sound === 'ə' ? 'ʌ' : sound
}

/** The i of `happily` and `plentiful` is the y of `happy` and `plenty`, however short it is said. */
const isWornY = ({ letters, base, phones }: RawUnit): boolean =>
  base === 'y' && letters === 'i' && /^(?:AH|IH)$/.test(phones.join(' '))

/**
 * A long vowel at the end of a syllable, coloured by the r that opens the next one: fu-ry has the u of `music`, va-ry the a
 * of `paper`. Undefined for other units, and for the `are` of `care` in `caring`.
 */
function partLong(unit: Unit): readonly Unit[] | undefined {
  // Asked of every unit before a vowel, and few are spelt so. `sharing` is known from the `are` of `share`.
  if ((unit.letters !== 'ar' && unit.letters !== 'ur') || unit.base !== undefined) return undefined
  const start = startOf(unit)
  const [, vowel = '', r = ''] = /^(j?ʊə?|ɛə?)(r)$/.exec(unit.sound) ?? []
  const letters = unit.letters.charAt(0)
  const taught = LONG_BEFORE_R[`${letters}=${vowel.replace('ə', '')}`]
  if (!taught) return undefined
  return [
    { ...unit, letters, spans: [[start, start + 1]], sound: vowel, key: `${letters}=${taught}` },
    { letters: r, spans: [[start + 1, start + 2]], sound: 'r', kind: 'correspondence', key: 'r=r', vowel: false },
  ]
}

const LONG_BEFORE_R: Readonly<Record<string, string>> = { 'a=ɛ': 'eɪ', 'u=jʊ': 'juː', 'u=ʊ': 'uː' }

const SHORT_WITH_R = /^([æɛɪɒʌ])r$/

// Made field by field, which is several times as fast as spreading: a book has many words.
function toUnit(unit: RawUnit, sound: string, key: CorrespondenceKey, syllables: number): Unit {
  const made: { -readonly [field in keyof Unit]: Unit[field] } = {
    letters: unit.letters,
    spans: unit.spans,
    sound,
    kind: sound === '' ? 'silent' : unit.kind,
    key,
    vowel: unit.phones.some(isVowel),
  }
  if (unit.base !== undefined) made.base = unit.base
  if (unit.stress !== undefined) made.stress = unit.stress
  if (isReduced(unit, syllables, sound)) made.reduced = true
  return made
}

function toSyllables(word: string, { starts }: Cut): string[] {
  const syllables = [0, ...starts].map((start, k) => word.slice(start, starts[k]))
  return word.includes('-') ? syllables.map((one) => one.replace(/^-+|-+$/g, '')) : syllables
}

/** The word's sounds in a row, with a stress mark before each stressed syllable of a longer word. */
function toIpa(units: readonly Unit[], { starts, stress }: Cut): string {
  if (stress.length < 2) return units.map((unit) => unit.sound).join('')
  let ipa = ''
  let syllable = 0
  const marks = ['', 'ˈ', 'ˌ']
  let pending = marks[stress[0] ?? 0] ?? ''
  for (const unit of units) {
    const end = firstEndOf(unit)
    // A doubled letter is cut in two; its one sound is heard with the second half.
    const isInside = (): boolean => unit.vowel && (starts[syllable] ?? 0) > startOf(unit)
    while (syllable < starts.length && (starts[syllable] ?? 0) < end && !isInside()) {
      syllable++
      pending = marks[stress[syllable] ?? 0] ?? ''
    }
    if (isInside() && (starts[syllable] ?? end) < end && unit.sound.endsWith('r')) {
      // The r of `giraffe` is heard with the second syllable.
      ipa += pending + unit.sound.slice(0, -1)
      syllable++
      pending = marks[stress[syllable] ?? 0] ?? ''
      ipa += `${pending}r`
      pending = ''
      continue
    }
    ipa += pending + unit.sound
    pending = ''
  }
  return ipa
}
