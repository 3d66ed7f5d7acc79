// The engine in one accent: any word as written → its careful pronunciations.

import { hasApostrophe } from '../apostrophe.ts'
import { isPlainText } from '../letter-kinds.ts'
import { type Cutting, joinCuttings, type Spelled } from './cutting.ts'
import { findLookAlike, findToldByRest, type LookAlike } from './heteronyms/part.ts'
import type { HeteronymForm, Heteronyms } from './heteronyms/types.ts'
import type { Lexicon } from './lexicon/open.ts'
import { type FindOrdinary, readOrdinary } from './ordinary.ts'
import type { RawPronunciation, RawUnit } from './raw.ts'
import { createSpelling, type Spelling } from './spelling.ts'
import { findSpokenApart } from './spoken-apart.ts'
import { toPronunciations } from './to-pronunciation.ts'
import { findTwoWords, isWordEnding } from './two-words.ts'
import type { Accent, Phonics, Pronunciation, Span, WordPronunciations } from './types.ts'

/** Engines share what does not depend on the accent: make one spelling for all of them. */
export function createPhonics(lexicon: Lexicon, accent: Accent, spelling: Spelling = createSpelling(lexicon)): Phonics {
  const cache = new Map<string, WordPronunciations>()
  const findOrdinary = readOrdinary(lexicon.ordinary(accent))
  const read = (word: string): WordPronunciations => {
    const known = cache.get(word)
    if (known) return known
    const plain = readWord(word, accent, spelling, findOrdinary, lexicon.heteronyms)
    const two = findTwoWords(word.toLowerCase())
    const parts = two?.map((part) => (isWordEnding(part) ? part : read(part)))
    // Who reads `wind` may not read `wind-up`; the house of `doghouse` is the thing.
    const isClear = !word.includes('-') || parts?.every((part) => typeof part === 'string' || !part.heteronym)
    const pronunciations = parts !== undefined && isClear ? { ...plain, parts } : plain
    cache.set(word, pronunciations)
    return pronunciations
  }
  const isListed = (word: string): boolean => {
    const parts = fold(word).letters.split('-')
    return parts.some((part) => part !== '') && parts.every((part) => part === '' || spelling.isListed(part))
  }
  return {
    accent,
    heteronyms: lexicon.heteronyms,
    read,
    isListed,
    get slips() {
      return lexicon.slips
    },
  }
}

const PLAIN = /^[A-Za-z'-]*$/

/** The word in plain small letters, and where each of them stands in the word as written. */
function fold(word: string): { letters: string; places: readonly number[] } {
  if (PLAIN.test(word)) return { letters: word.toLowerCase(), places: [] }
  let letters = ''
  const places: number[] = []
  for (let at = 0; at < word.length; at++) {
    const plain = (word[at] as string).normalize('NFD')[0]?.toLowerCase() ?? ''
    if ((!isPlainText(plain) && /\p{M}/u.test(plain)) || plain === '\u00ad') continue
    letters += hasApostrophe(plain) ? "'" : /[‐‑–]/.test(plain) ? '-' : plain
    places.push(at)
  }
  return { letters, places: [...places, word.length] }
}

function readWord(
  word: string,
  accent: Accent,
  spelling: Spelling,
  findOrdinary: FindOrdinary,
  heteronyms: Heteronyms,
): WordPronunciations {
  const { letters, places } = fold(word)
  const spelled = spellWord(letters, spelling)
  const { source, cuttings, meant } = spelled
  const unsure = isUnsure(word, spelled) ? true : undefined
  const alike = findLookAlike(heteronyms, letters)
  const plain = letters.length === word.length
  const pronunciations = cuttings.flatMap(({ raw, stem }, at): readonly Pronunciation[] => {
    const spoken = alike && findSpoken(alike, letters, raw, at)
    return toPronunciations(raw, letters, stem, accent, findOrdinary).map((pronunciation) => {
      const placed = plain ? pronunciation : place(pronunciation, places, word)
      return spoken === undefined ? placed : { ...placed, form: spoken.form, meaning: spoken.meaning }
    })
  })
  // Where the word itself tells its form, no sentence has to: `wind-up`, `live-in`.
  const told = alike && findToldByRest(alike.row, letters)
  const toldOnes = told === undefined ? [] : pronunciations.filter(({ form }) => form === told)
  return {
    word,
    source,
    pronunciations: distinct(toldOnes.length > 0 ? toldOnes : pronunciations),
    heteronym: alike !== undefined && pronunciations.length > 1 && toldOnes.length === 0,
    ...(meant === undefined ? {} : { meant }),
    ...(unsure === undefined ? {} : { unsure }),
  }
}

/** The spoken form of a cutting: those of a look-alike stand in the order of its forms, and that of a word with hyphens is told by the sounds of its part. */
function findSpoken(
  { row, from, to }: LookAlike,
  letters: string,
  { units }: RawPronunciation,
  at: number,
): HeteronymForm | undefined {
  if (to - from === letters.length) return row.forms[at]
  const said = units
    .filter(({ spans: [first] }) => first && first[0] >= from && first[0] < to)
    .flatMap(({ phones }) => phones)
  return row.forms.find(({ sounds }) => sounds.replace(/\d/g, '') === said.join(' '))
}

/** Whether the sounds of a word as it is written are a mere guess: those of a name are sooner than those of a word. */
export const isUnsure = (word: string, spelled: Spelled): boolean =>
  spelled.unsure === true || isOfOtherLand(word, spelled) || (spelled.unsureAsName === true && hasOneCapital(word))

/** `Meg`: the first letter alone. */
const hasOneCapital = (word: string): boolean =>
  isPlainText(word) ? /^[A-Z][^A-Z]+$/.test(word) : /^\p{Lu}\P{Lu}+$/u.test(word)

/**
 * A letter with a mark says what no English letter tells, as in `Haşmet`, `Gül` and `Siré`; but `café` is in the dictionary and
 * ends as it is written.
 */
function isOfOtherLand(word: string, { source, meant, cuttings }: Spelled): boolean {
  // Asked of every word, and few have a mark.
  if (isPlainText(word)) return false
  const letters = word.normalize('NFD')
  if (!/\p{L}\p{M}/u.test(letters) || meant !== undefined) return false
  const units = cuttings[0]?.raw.units ?? []
  const isShut = /e\u0301$/u.test(letters) && units.at(-1)?.phones.at(-1) !== 'EY'
  // Arturs with a mark: an s at the end of a name is no English plural, and that of `cafés` is one.
  const isPlural = hasOneCapital(word) && units.at(-1)?.phones.join() === 'Z' && /s$/.test(letters)
  return source === 'guess' || isShut || isPlural || OF_NO_LOANWORD.test(letters) || hasWeakMark(word, units)
}

/** Sounds that no vowel letter with a mark has in a name. */
const WEAK: Readonly<Record<string, RegExp>> = {
  a: /^A[EH]/,
  e: /^(?:AH|IH|IY)/,
  i: /^(?!I)/,
  o: /^(?:AH|ER)/,
  u: /^(?!U)/,
}

/** `Román`, `Pál`, `Ángel`, `Lucía`, `Thérèse`, `Tùng`, `Asunción`, `Jānis`: a letter with a mark is said in full, with the sound that the mark asks for. */
function hasWeakMark(word: string, units: readonly RawUnit[]): boolean {
  return [...word.normalize('NFC')].some((letter, at) => {
    const [plain = '', mark] = letter.toLowerCase().normalize('NFD')
    // The two dots of `Zoë` only keep her vowels apart.
    if (mark === undefined || !/[\u0300-\u0304]/.test(mark)) return false
    const unit = units.find(({ spans }) => spans.some(([from, to]) => from <= at && at < to))
    const said = unit?.phones.join(' ') ?? ''
    // `Dávid` may be David, but `Ángel` is no angel.
    return (at === 0 && said === 'EY') || (WEAK[plain]?.test(said) ?? false)
  })
}

/**
 * Two dots, a ring, a hook, a tail, a dot above or below (`Grėtė`, `Tuệ`), a horn: on letters of words that English has taken over there is none
 * of them, but on `naïve` and `façade`.
 */
const OF_NO_LOANWORD = /[aou]\u0308|a\u030a|[a-z]\u0307|[\u0306\u0309\u030c\u031b\u0323\u0326\u0328]|[a-bd-z]\u0327/iu

/** Anything longer is no word, hyphens or not; some rules look along the whole word, which must stay short. */
const LONGEST_WORD = 200

/** The parts of a hyphenated word are read one by one; a leading or closing apostrophe says nothing. */
export function spellWord(letters: string, spelling: Spelling): Spelled {
  if (!/[a-z]/.test(letters) || letters.length > LONGEST_WORD) return { source: 'guess', cuttings: [] }
  if (!letters.includes('-')) return spelling.spell(letters)
  const apart = findSpokenApart(letters, spelling.spell)
  if (apart) return apart
  let whole: readonly Cutting[] = [{ raw: { units: [] }, stem: '' }]
  let source: Spelled['source'] = 'dictionary'
  let at = 0
  for (const part of letters.split('-')) {
    if (part !== '') {
      const spelled = spelling.spell(part)
      if (spelled.source === 'guess') source = 'guess'
      const isBeginning = at + part.length < letters.length
      whole = joinCuttings(whole, isBeginning ? keepBeginning(part, spelled.cuttings) : spelled.cuttings, at)
    }
    at += part.length + 1
  }
  return { source, cuttings: whole }
}

/** `re-read`, `re-use`: the beginning is no note of the scale. */
function keepBeginning(part: string, cuttings: readonly Cutting[]): readonly Cutting[] {
  if (part !== 're') return cuttings
  const kept = cuttings.filter(({ raw }) => raw.units.at(-1)?.phones.join(' ') === 'IY')
  return kept.length > 0 ? kept : cuttings
}

function place(pronunciation: Pronunciation, places: readonly number[], word: string): Pronunciation {
  const toSpan = ([from, to]: Span): Span => [places[from] ?? word.length, places[to] ?? word.length]
  return { ...pronunciation, units: pronunciation.units.map((unit) => ({ ...unit, spans: unit.spans.map(toSpan) })) }
}

/** Of pronunciations alike in this accent, the first. */
function distinct(pronunciations: readonly Pronunciation[]): readonly Pronunciation[] {
  if (pronunciations.length < 2) return pronunciations
  const seen = new Set<string>()
  return pronunciations.filter(({ units, form }) => {
    const key = `${form ?? ''} ${units.map((unit) => `${unit.letters}=${unit.sound}`).join(' ')}`
    return !seen.has(key) && seen.add(key)
  })
}
