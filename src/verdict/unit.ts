// Whether a child knows one group of letters of a word, and what is missing where not.

import { hasApostrophe, toStraight } from '../apostrophe.ts'
import type { CorrespondenceKey, Unit } from '../phonics/types.ts'
import type { Ending, EndingChange, Knowledge } from '../sequence/types.ts'
import type { ReasonCode } from './types.ts'

/** What is wrong with a unit: the kind of lack, and the correspondence that would mend it. */
export interface UnitFault {
  readonly code: Extract<ReasonCode, 'irregular' | 'correspondence-untaught' | 'ending' | 'reduced-vowel'>
  readonly key?: CorrespondenceKey
}

/** Where the unit stands. */
export interface UnitPlace {
  /** The word has more than one syllable. */
  readonly isLong: boolean
  /** An ending follows at once. */
  readonly isBeforeEnding: boolean
  /** The word is shortened by an apostrophe. */
  readonly isContraction: boolean
  /** The letters of the ending that the word has, `es` in `faces`. */
  readonly ending: string | undefined
}

/** The sounds called short, letter by letter (both of `o`: LOT is /ɒ/ in Britain, /ɑ/ in America). */
const SHORT_SOUNDS: Readonly<Record<string, readonly string[]>> = {
  a: ['æ'],
  e: ['ɛ'],
  i: ['ɪ'],
  o: ['ɒ', 'ɑ'],
  u: ['ʌ'],
  y: ['ɪ'],
}

const ENDINGS: Readonly<Record<string, Ending>> = {
  s: '-s',
  es: '-es',
  ed: '-ed',
  d: '-ed',
  ing: '-ing',
  er: '-er',
  est: '-est',
  "'s": "'s",
}

/** How an ending is sounded out letter by letter, where that can be done. */
const SOUNDED: Readonly<Record<string, readonly CorrespondenceKey[]>> = {
  'ing=ɪŋ': ['i=ɪ', 'ng=ŋ'],
  'est=ɪst': ['e=ɛ', 's=s', 't=t'],
  'ed=ɪd': ['e=ɛ', 'd=d'],
  'es=ɪz': ['e=ɛ', 's=z'],
  "'s=z": ['s=z'],
  "'s=s": ['s=s'],
}

/** The name of a correspondence, with small letters and straight apostrophes. */
function toKey(letters: string, sound: string): CorrespondenceKey {
  return `${toStraight(letters.toLowerCase())}=${sound}`
}

/** The ending that a unit is, or undefined for other units. */
export function findEnding(unit: Unit): Ending | undefined {
  return unit.kind === 'inflection' ? ENDINGS[toStraight(unit.letters.toLowerCase())] : undefined
}

/**
 * What a child lacks to read the unit; undefined where it is known. The piece with the apostrophe of a contraction (`n't`,
 * `'ll`) is no fault of its own: whether the contraction is taught is asked of the whole word.
 */
export function findUnitFault(unit: Unit, place: UnitPlace, knowledge: Knowledge): UnitFault | undefined {
  const { key } = unit
  if (place.isContraction && hasApostrophe(unit.letters)) return undefined
  if (unit.kind === 'inflection') return isEndingKnown(unit, knowledge) ? undefined : { code: 'ending', key }
  if (unit.kind === 'silent') {
    if (place.isBeforeEnding) return undefined
    if (hasApostrophe(unit.letters)) return findOwnerFault(knowledge)
    if (unit.letters === 'r') return findSilentRFault(knowledge)
  }
  const isKnown = knowledge.correspondences.has(key) || isSilentEKnown(unit, knowledge)
  const change = unit.base === undefined ? undefined : findChange(unit.letters, unit.base, place.ending)
  if (change !== undefined) return findChangeFault(unit, change, isKnown, place.ending, knowledge)
  if (isKnown || isSwallowedKnown(unit, place, knowledge)) return undefined
  if (unit.reduced && isShortVowelKnown(unit.letters, knowledge)) {
    return place.isLong && isReducedAccepted(knowledge) ? undefined : { code: 'reduced-vowel', key }
  }
  return toUnknown(unit)
}

/** Consonants before an e that has no work to do: after c, g, l, r, s, v and z it is a spelling of its own (`fence`, `table`, `horse`, `give`). */
const BEFORE_SILENT_E = /^(?:[bdfkmnptx]|([fmnpt])\1|th)?e$/

interface SilentEKeys {
  readonly before: CorrespondenceKey | undefined
  readonly split: readonly CorrespondenceKey[]
}

/** Who was taught that an e at the end may be silent reads that of `axe`, `route` and `cigarette`. */
const isSilentEKnown = (unit: Unit, { correspondences }: Knowledge): boolean => {
  const keys = toSilentEKeys(unit)
  if (keys === undefined || !keys.split.some((one) => correspondences.has(one))) return false
  return keys.before === undefined || correspondences.has(keys.before)
}

const SPLIT: readonly CorrespondenceKey[] = ['a_e=eɪ', 'i_e=aɪ', 'o_e=oʊ', 'o_e=əʊ']

/** What has to be known of letters that end in an e without work: those before it, if any, and one vowel with a silent e. */
export function toSilentEKeys({ letters, base = letters, key }: Unit): SilentEKeys | undefined {
  // Asked of every unit that is not known, and few end so.
  const last = base.at(-1)
  if (last !== 'e' && last !== 'E') return undefined
  const small = base.toLowerCase()
  if (!BEFORE_SILENT_E.test(small)) return undefined
  if (small === 'e') return toSound(key) === '' ? { before: undefined, split: SPLIT } : undefined
  return { before: toKey(small.slice(0, -1), toSound(key)), split: SPLIT }
}

/** The a of `basically` and `diamond` and the i of `aspirin` may be left out; a child who says them short is understood. */
const isSwallowedKnown = ({ letters, kind }: Unit, { isLong }: UnitPlace, knowledge: Knowledge): boolean =>
  kind === 'silent' &&
  /^[aio]$/i.test(letters) &&
  isLong &&
  isReducedAccepted(knowledge) &&
  isShortVowelKnown(letters, knowledge)

// The r of `dinosaur` is dropped in Southern British, and a child who says it is understood.
function findSilentRFault({ correspondences }: Knowledge): UnitFault | undefined {
  return correspondences.has('r=r') ? undefined : { code: 'correspondence-untaught', key: 'r=r' }
}

/** English spells the sound so, and the child was not taught it; or it is an exception. Only a sequence can tell that it comes later. */
function toUnknown({ key, shown }: Unit): UnitFault {
  return { code: shown === undefined ? 'irregular' : 'correspondence-untaught', key }
}

/** Whether the owner's ending can be read; on a name it needs no letters to be known. */
export function findOwnerFault(knowledge: Knowledge): UnitFault | undefined {
  const isKnown = knowledge.endings.has("'s") || knowledge.soundedEndings.has("'s")
  return isKnown ? undefined : { code: 'ending', key: "'s=" }
}

/**
 * The correspondences any one of which says what the letters say: as they stood before an ending changed them, and where that will do,
 * as they stand now. In `cried` the `ie` as in `pie` and the `y` as in `my`; in `scored` and `faces` `ore` and `a_e` alone.
 * @param ending the letters of the ending that follows
 */
export function toReadingKeys(unit: Unit, ending: string | undefined): readonly CorrespondenceKey[] {
  const { key, letters, base } = unit
  const change = base === undefined ? undefined : findChange(letters, base, ending)
  return change === undefined || !isReadAsItStands(unit, change, ending) ? [key] : [toKey(letters, toSound(key)), key]
}

const toSound = (key: CorrespondenceKey): string => key.slice(key.indexOf('=') + 1)

// Who was taught the change needs the spelling before it, or where that may be the one after it.
// Where no step names the change, the letters are sounded out as they stand: the `nn` of `running` as in `dinner`.
function findChangeFault(
  unit: Unit,
  change: EndingChange,
  isBaseKnown: boolean,
  ending: string | undefined,
  knowledge: Knowledge,
): UnitFault | undefined {
  const { correspondences, endingChanges, soundedChanges } = knowledge
  const isSounded =
    correspondences.has(toKey(unit.letters, toSound(unit.key))) || isShortAsItStands(unit, change, knowledge)
  const stands = isReadAsItStands(unit, change, ending) || soundedChanges.has(change)
  if (!isBaseKnown && !(isSounded && stands)) return toUnknown(unit)
  if (endingChanges.has(change)) return undefined
  return isSounded && soundedChanges.has(change) ? undefined : { code: 'ending', key: unit.key }
}

/** Where no step names the change, the i of `happily` and `plentiful` is that of `sit`, worn down or not. */
const isShortAsItStands = ({ sound, reduced }: Unit, change: EndingChange, knowledge: Knowledge): boolean =>
  change === 'y-to-i' &&
  (sound === 'ɪ' || (reduced === true && isReducedAccepted(knowledge))) &&
  isShortVowelKnown('i', knowledge)

/**
 * Whether letters that an ending has changed may be known as they stand alone. Nobody reads `scored` before `score`, or `parties` before
 * `party`; but England's curriculum has `cried` among the words with the `ie` of `pie`, before the y of `cry`.
 */
function isReadAsItStands({ key }: Unit, change: EndingChange, ending: string | undefined): boolean {
  if (change === 'y-to-i') return ending === 'd' && toSound(key) === 'aɪ'
  return change !== 'drop-e'
}

/** What is missing of an ending's change, whether or not the letters are known: the lost `e` of `taking`. */
export function findChangeLack(unit: Unit, ending: string | undefined, knowledge: Knowledge): UnitFault | undefined {
  const { letters, base } = unit
  const change = base === undefined || unit.kind === 'inflection' ? undefined : findChange(letters, base, ending)
  return change === undefined ? undefined : findChangeFault(unit, change, true, ending, knowledge)
}

/**
 * What is still missing where the letters are not known either: how an ending changes them, where steps name such changes (where
 * none does, whoever knows the letters as they stand lacks nothing); or that a short vowel may be worn down.
 */
export function findFurtherFault(unit: Unit, place: UnitPlace, knowledge: Knowledge): UnitFault | undefined {
  const { base, kind, letters, key } = unit
  if (kind !== 'correspondence') return undefined
  const change = base === undefined ? undefined : findChange(letters, base, place.ending)
  if (change !== undefined) {
    const isTaught = knowledge.endingChanges.has(change) || knowledge.soundedChanges.has(change)
    return isTaught ? undefined : { code: 'ending', key }
  }
  const isWeak = unit.reduced === true && toShortKeys(letters).length > 0
  return isWeak && !(place.isLong && isReducedAccepted(knowledge)) ? { code: 'reduced-vowel', key } : undefined
}

function isEndingKnown(unit: Unit, knowledge: Knowledge): boolean {
  const ending = findEnding(unit)
  if (ending === undefined) return false
  return knowledge.endings.has(ending) || isSoundedOut(unit, ending, knowledge)
}

/** Read letter by letter, since no step names it: the `s` of `cats` by who knows the `s` of `sat`. */
function isSoundedOut({ key }: Unit, ending: Ending, { correspondences, soundedEndings }: Knowledge): boolean {
  return soundedEndings.has(ending) && (SOUNDED[key] ?? [key]).every((part) => correspondences.has(part))
}

/** Read as an ending, or to be taught as one: it does not count in the shape of a syllable, as letters that are sounded out do. */
export function isReadAsEnding(unit: Unit, knowledge: Knowledge): boolean {
  const ending = findEnding(unit)
  if (ending === undefined) return false
  return knowledge.endings.has(ending) || !isSoundedOut(unit, ending, knowledge)
}

/**
 * How an ending changed the letters: `nn` for `n`, `a` for `a_e`, `i` or `ie` for `y`, `y` for the `ie` of `die`; undefined where they are as before.
 * Nothing is dropped before -s: `faces` is `face` with an s.
 * @param ending the letters of the ending that follows
 */
export function findChange(letters: string, base: string, ending: string | undefined): EndingChange | undefined {
  const now = letters.toLowerCase()
  if (now === base || isDrawnOut(now, base)) return undefined
  if (now.startsWith('i') && base === 'y') return 'y-to-i'
  if (now === 'y' && base === 'ie') return 'ie-to-y'
  if (base.endsWith('e')) return ending === 'es' ? undefined : 'drop-e'
  return now.startsWith(base) ? 'double' : undefined
}

/** The `ooo` of `Nooo`, the `shh` of `Shh` and the `oww` of `Oww` are written longer than they are, and ask for nothing more. */
function isDrawnOut(letters: string, base: string): boolean {
  const squeeze = (text: string): string => text.replace(/(.)\1+/g, '$1')
  return /(.)\1\1|hh|ww/.test(letters) && squeeze(letters) === squeeze(base)
}

function isShortVowelKnown(letters: string, knowledge: Knowledge): boolean {
  return toShortKeys(letters).some((key) => knowledge.correspondences.has(key))
}

/** What the letter says where it is short; none for several letters. */
export function toShortKeys(letters: string): readonly CorrespondenceKey[] {
  return (SHORT_SOUNDS[letters.toLowerCase()] ?? []).map((sound) => toKey(letters, sound))
}

function isReducedAccepted(knowledge: Knowledge): boolean {
  return knowledge.reducedVowels === 'accept' && (knowledge.limits.syllables ?? 2) >= 2
}
