// The verdict: can a child who knows this much read this word? One pure function.

import { APOSTROPHES } from '../apostrophe.ts'
import type { Pronunciation, Unit, WordEnding, WordPronunciations } from '../phonics/types.ts'
import { toSightKey } from '../sequence/knowledge.ts'
import type { EndingChange, Knowledge } from '../sequence/types.ts'
import { findFaults, findFaultsFrom, isContractionTaught, isSoundedOut, isWithinLimits } from './faults.ts'
import { findNamedOwner, isAllowedName } from './names.ts'
import type { MeantWord, Reason, Verdict } from './types.ts'
import { findChange, findEnding, findOwnerFault } from './unit.ts'
import { readWritten } from './written.ts'

const LAST_APOSTROPHE = new RegExp(`[${APOSTROPHES}]$`)

/**
 * Judges a word by all its pronunciations. A word that can be sounded out is decodable even where it is a sight word or a
 * name too, so that the decodable share counts what the letters alone give; but a word that was taught by heart when it
 * could be sounded out already is held for an exception by its sequence, and stays a sight word.
 * A unit that is not known has the reason `irregular` or `correspondence-untaught`: only a sequence can tell that it comes
 * later, see `judgeInSequence`.
 * @param names the names that the story allows, as written
 */
export function judge(read: MeantWord, knowledge: Knowledge, names: readonly string[] = []): Verdict {
  const { word } = read
  if (isAbbreviation(read)) return judgeAbbreviation(read, knowledge, names)
  const guessed = read.source === 'guess'
  const tried = read.pronunciations.map((pronunciation) => ({
    pronunciation,
    reasons: findFaults(word, pronunciation, knowledge),
  }))
  const decodable = read.unsure ? undefined : tried.find(({ reasons }) => reasons.length === 0)
  const isByHeart = isSightWord(read, knowledge)
  if (decodable !== undefined && !(isByHeart && isHeldForException(read, knowledge))) {
    const { pronunciation } = decodable
    return { readable: true, kind: 'decodable', ...(isByHeart && { isByHeart }), reasons: [], pronunciation, guessed }
  }
  const pronunciation = read.pronunciations[0]
  if (isByHeart) return { readable: true, kind: 'sight', reasons: [], pronunciation, guessed: false }
  const name = judgeName(word, knowledge, names)
  if (name !== undefined) {
    const kind = name.length === 0 ? 'name' : 'unreadable'
    return { readable: name.length === 0, kind, reasons: name, pronunciation, guessed }
  }
  const lacking = toLacking(read, tried, knowledge)
  // Of words that are spelt alike, the first is the one that is met: `does` is seldom a deer.
  const nearest = read.unsure || read.heteronym ? lacking[0] : findNearestPronunciation(lacking)
  const reasons = toReasons(read, nearest)
  return { readable: false, kind: 'unreadable', reasons, pronunciation: nearest?.pronunciation, guessed }
}

const isAbbreviation = ({ word, isAbbreviated }: MeantWord): boolean =>
  isAbbreviated === true || readWritten(word).isAbbreviation

/** It is read whole or not at all. */
function judgeAbbreviation(
  { word, pronunciations, isAbbreviated }: MeantWord,
  knowledge: Knowledge,
  names: readonly string[],
): Verdict {
  const pronunciation = pronunciations[0]
  // The sight word `us` is not the `US`.
  if (!isAbbreviated && knowledge.sightWords.has(toSightKey(word)))
    return { readable: true, kind: 'sight', reasons: [], pronunciation, guessed: false }
  const name = judgeName(word, knowledge, names)
  if (name?.length === 0) return { readable: true, kind: 'name', reasons: [], pronunciation, guessed: false }
  const reasons = name ?? [{ code: 'abbreviation', letters: [[0, word.length]] }]
  return { readable: false, kind: 'unreadable', reasons, pronunciation, guessed: false }
}

/** What a mere guess lacks says nothing about the word. */
function toReasons({ word, source, meant, unsure }: WordPronunciations, nearest: Tried | undefined): readonly Reason[] {
  const letters: Reason['letters'] = [[0, word.length]]
  if (meant !== undefined) return [{ code: 'misspelt', letters }]
  if (unsure) return [{ code: 'unsure', letters }]
  const reasons = nearest?.reasons ?? []
  if (source !== 'guess' && nearest !== undefined) return reasons
  return [...reasons, { code: 'unknown-word', letters }]
}

/** Whether `judge` would call the word readable, without finding out why not. */
export function isReadable(pronunciations: MeantWord, knowledge: Knowledge, names: readonly string[] = []): boolean {
  const { word } = pronunciations
  if (isAbbreviation(pronunciations)) {
    const isByHeart = !pronunciations.isAbbreviated && knowledge.sightWords.has(toSightKey(word))
    return isByHeart || judgeName(word, knowledge, names)?.length === 0
  }
  const isSounded = (one: Pronunciation) => isSoundedOut(word, one, knowledge)
  if (!pronunciations.unsure && pronunciations.pronunciations.some(isSounded)) return true
  return isSightWord(pronunciations, knowledge) || judgeName(word, knowledge, names)?.length === 0
}

function isHeldForException({ word, pronunciations }: WordPronunciations, knowledge: Knowledge): boolean {
  const then = knowledge.knownWithSightWord?.get(readWritten(word).key)
  return then !== undefined && pronunciations.some((pronunciation) => isSoundedOut(word, pronunciation, then))
}

/**
 * Whether the word is known by heart: as it is, put together of two that can be read (`someone`), with a suffix that can be read
 * (`friendly`), with a taught ending and the change that it makes (`comes`, `coming`, `prettier`), or shortened by an apostrophe where
 * that is taught (`they've`, `wouldn't`).
 */
export function isSightWord(read: WordPronunciations, knowledge: Knowledge): boolean {
  const { word, pronunciations } = read
  const { sightWords, endings } = knowledge
  const { key, drawnOut, shortened, isContraction } = readWritten(word)
  if (sightWords.has(key) || drawnOut.some((one) => sightWords.has(one))) return true
  if (isOfTwoWords(read, knowledge) || isSightWordWithSuffix(read, knowledge)) return true
  if (shortened !== undefined && sightWords.has(shortened) && isContractionTaught(word, knowledge)) return true
  // `he's` has no owner: it is a contraction, whatever its first part is.
  if (isContraction) return false
  return pronunciations.some(({ units }) => {
    const at = units.findIndex((unit) => unit.kind === 'inflection')
    const ending = units[at]
    const name = ending === undefined ? undefined : findEnding(ending)
    if (ending === undefined || name === undefined || !endings.has(name)) return false
    const before = word.slice(0, ending.spans[0]?.[0] ?? 0).replace(LAST_APOSTROPHE, '')
    return sightWords.has(toSightKey(before)) || isChangedSightWord(before, ending, units.slice(0, at), knowledge)
  })
}

/** `prettier` and `coming` are read by who knows `pretty` and `come` by heart, and how such an ending changes a word. */
function isChangedSightWord(
  before: string,
  ending: Unit,
  units: readonly Unit[],
  { sightWords, endingChanges }: Knowledge,
): boolean {
  // Nothing is dropped before -s: `promises` is `promise` with an s.
  if (ending.letters.toLowerCase() === 'es' && units.some(({ base }) => base?.endsWith('e')))
    return sightWords.has(toSightKey(`${before}e`))
  const changed = units.find((unit) => findChangeOf(unit, ending) !== undefined)
  const change = changed && findChangeOf(changed, ending)
  if (change === undefined || !endingChanges.has(change)) return false
  return toStems(before, change).some((stem) => sightWords.has(toSightKey(stem)))
}

const findChangeOf = ({ letters, base }: Unit, ending: Unit) =>
  base === undefined ? undefined : findChange(letters, base, ending.letters.toLowerCase())

/** The words that could have stood before the change. */
function toStems(before: string, change: EndingChange): readonly string[] {
  switch (change) {
    case 'double':
      return [before.slice(0, -1)]
    case 'drop-e':
      return [`${before}e`]
    case 'ie-to-y':
      return [`${before.slice(0, -1)}ie`]
    case 'y-to-i':
      return [before.replace(/ie?$/, 'y')]
  }
}

/** `someone` is read by who can read `some` and `one`, within the limits of the step: `ours` by who can read `our` and knows -s. */
function isOfTwoWords({ word, pronunciations, parts }: WordPronunciations, knowledge: Knowledge): boolean {
  if (parts === undefined) return false
  const isKnown = (part: WordPronunciations | WordEnding) => {
    if (typeof part === 'string') return isEndingKnown(part, knowledge)
    // Letters by which one form can be sounded out may not say the one that stands here.
    return part.heteronym ? isSightWord(part, knowledge) : isReadable(part, knowledge)
  }
  return parts.every(isKnown) && pronunciations.some((pronunciation) => isWithinLimits(word, pronunciation, knowledge))
}

/** The s of `theirs`, and the ed of `welcomed`, whose e is dropped. */
const isEndingKnown = (ending: WordEnding, { endings, endingChanges }: Knowledge): boolean =>
  endings.has(ending) && (ending === '-s' || endingChanges.has('drop-e'))

/** `friendly` is read by who knows `friend` by heart and can read the letters after it. */
function isSightWordWithSuffix({ word, pronunciations }: WordPronunciations, knowledge: Knowledge): boolean {
  const stem = findKnownStem(word, knowledge)
  if (stem === undefined) return false
  return pronunciations.some((one) => findFaultsFrom(stem.length, word, one, knowledge).length === 0)
}

/** What of a word with a suffix is known by heart, as it stands in it: `friend` of `friendly`, `busi` of `busily`. */
export function findKnownStem(word: string, { sightWords, endingChanges }: Knowledge): string | undefined {
  return readWritten(word).stems.find((stem) => {
    const isOfY = /[^aeiou]i$/.test(stem) && endingChanges.has('y-to-i')
    return sightWords.has(isOfY ? `${stem.slice(0, -1)}y` : stem)
  })
}

// The name itself is allowed; the owner's ending on it still has to be taught where endings are taught.
function judgeName(word: string, knowledge: Knowledge, names: readonly string[]): readonly Reason[] | undefined {
  if (isAllowedName(word, names)) return []
  const owner = findNamedOwner(word, names)
  if (owner === undefined) return undefined
  const fault = findOwnerFault(knowledge)
  return fault === undefined ? [] : [{ ...fault, letters: [[owner.length, word.length]] }]
}

interface Tried {
  readonly pronunciation: Pronunciation
  readonly reasons: readonly Reason[]
}

/** Of `kindness` who knows `kind` by heart lacks its `ness`, and nothing else. */
function toLacking({ word }: WordPronunciations, tried: readonly Tried[], knowledge: Knowledge): readonly Tried[] {
  const stem = findKnownStem(word, knowledge)
  if (stem === undefined) return tried
  return tried.map(({ pronunciation }) => ({
    pronunciation,
    reasons: findFaultsFrom(stem.length, word, pronunciation, knowledge),
  }))
}

function findNearestPronunciation(tried: readonly Tried[]): Tried | undefined {
  return tried.reduce<Tried | undefined>(
    (best, next) => (best === undefined || toDistance(next) < toDistance(best) ? next : best),
    undefined,
  )
}

/** An exception is further off than anything that can be taught: `Monday` is read with the `ay` of `day`. */
const toDistance = ({ reasons }: Tried): number =>
  reasons.reduce((sum, { code }) => sum + (code === 'irregular' ? 2 : 1), 0)
