// What is asked of a word, as one test. The cheap questions come first.

import type { WordKind } from '../words/index.ts'
import { isInflected } from './order.ts'
import type { Pool } from './pool.ts'
import { findRime, toLetterPattern, toPatternLetter, toPlainPattern, toSounds } from './pronunciation.ts'
import { type Spelling, toSpellingTest, type Where } from './spelling.ts'
import type { ListPronunciation, SoundTable } from './table.ts'

/** Both ends belong to it. */
export interface Span {
  readonly from: number
  readonly to: number
}

/** Everything that a list can be asked for; what is missing is not asked. */
export interface WordFilters {
  /** The vowel of a one-syllable word; one of these. */
  readonly vowel?: readonly Spelling[]
  readonly first?: readonly Spelling[]
  readonly last?: readonly Spelling[]
  /** All of these, anywhere in the word. */
  readonly with?: readonly Spelling[]
  /** Over sounds: `CVC` for `cat` and `ship`. */
  readonly pattern?: string
  /** Over letters: `CCVC` for `ship`. */
  readonly lettersPattern?: string
  readonly length?: Span
  readonly syllables?: Span
  readonly rhymesWith?: { readonly word: string; readonly pronunciation: ListPronunciation }
  /** A word family: its letters from the vowel on, and their sounds. */
  readonly family?: { readonly letters: string; readonly sounds: string }
  readonly kinds?: readonly WordKind[]
  /** Nameable by a picture; by a small object. */
  readonly picture?: boolean
  readonly object?: boolean
  /** Known to small children: in the word lists of the first school years. */
  readonly known?: boolean
  /** Base forms only: no plural, no past. */
  readonly base?: boolean
  /** Words not to be listed, in lower case. */
  readonly not?: ReadonlySet<string>
  readonly newAtStep?: boolean
  /** First readable at the step of this place, or at a later one. */
  readonly newFrom?: number
  /** To write from: what is known by heart counts as a base form. */
  readonly forWriting?: boolean
}

type Test = (at: number) => boolean

/** Whether words known by heart can be meant: not where the list is about letters and sounds. */
export const asksForSounds = (filters: WordFilters): boolean =>
  [filters.vowel, filters.first, filters.last, filters.with, filters.pattern, filters.rhymesWith, filters.family].some(
    (one) => one !== undefined,
  )

/** Without the question whether the word is readable and fit. */
export function toTest(filters: WordFilters, pool: Pool): Test {
  const tests = [...toFactTests(filters, pool), ...toLetterTests(filters, pool), ...toSoundTests(filters, pool)]
  return (at) => tests.every((test) => test(at))
}

export const isByHeart = (at: number, { knowledge, wordAt }: Pool): boolean => knowledge.sightWords.has(wordAt(at))

/** Of pictures the rule of the dictionary is good enough where nobody has judged a word; what goes into a hand is judged. */
function canBeShown(at: number, as: 'object' | 'picture', pool: Pool): boolean {
  const shown = pool.shownAt(at)
  return shown === undefined ? as === 'picture' && pool.factsAt(at).nameable !== 'no' : shown[as] !== 'no'
}

function toFactTests({ kinds, picture, object, known, base, forWriting }: WordFilters, pool: Pool): Test[] {
  const tests: Test[] = []
  if (kinds) tests.push((at) => pool.kindsAt(at).some((kind) => kinds.includes(kind)))
  if (picture) tests.push((at) => canBeShown(at, 'picture', pool))
  if (object) tests.push((at) => canBeShown(at, 'object', pool))
  if (known) tests.push((at) => pool.factsAt(at).known >= 2)
  if (base || picture || object) {
    const isJudged = (at: number): boolean => base !== true && pool.shownAt(at) !== undefined
    tests.push((at) => !isInflected(pool.factsAt(at)) || isJudged(at) || (forWriting === true && isByHeart(at, pool)))
  }
  return tests
}

function toLetterTests({ length, lettersPattern, not }: WordFilters, pool: Pool): Test[] {
  const tests: Test[] = []
  if (length) tests.push((at) => isWithin(pool.wordAt(at).replace(/[^a-z]/gi, '').length, length))
  if (lettersPattern) tests.push((at) => toLetterPattern(pool.wordAt(at)) === lettersPattern)
  if (not) tests.push((at) => !not.has(pool.wordAt(at).toLowerCase()))
  return tests
}

/** Words known by heart that the table lacks are never listed by their sounds. */
function toSoundTests(filters: WordFilters, pool: Pool): Test[] {
  const { vowel, first, last, pattern, syllables, rhymesWith, family } = filters
  const { sounds } = pool
  const tests: Test[] = []
  const askAny = (spellings: readonly Spelling[] | undefined, where: Where): void => {
    if (spellings === undefined) return
    const any = spellings.map((one) => toSpellingTest(one, where, sounds))
    tests.push((at) => any.some((test) => test(at)))
  }
  if (asksForSounds(filters)) tests.push((at) => at < sounds.starts.length)
  if (syllables) tests.push((at) => isWithin(pool.syllablesAt(at), syllables))
  if (vowel) tests.push((at) => pool.syllablesAt(at) === 1)
  askAny(vowel, 'any')
  askAny(first, 'start')
  askAny(last, 'end')
  for (const one of filters.with ?? []) tests.push(toSpellingTest(one, 'any', sounds))
  if (pattern) tests.push(toPatternTest(pattern, sounds))
  if (rhymesWith) {
    tests.push(toRhymeTest(rhymesWith.pronunciation, sounds))
    tests.push((at) => isOther(pool.pronunciationAt(at), pool.wordAt(at), rhymesWith))
  }
  if (family) {
    tests.push((at) => {
      if (!pool.wordAt(at).endsWith(family.letters)) return false
      const rime = findRime(pool.wordAt(at), pool.pronunciationAt(at))
      return rime?.letters === family.letters && rime.sounds === family.sounds
    })
  }
  return tests
}

const isWithin = (count: number, { from, to }: Span): boolean => count >= from && count <= to

function toPatternTest(pattern: string, { units, numbers, starts }: SoundTable): Test {
  const letters = units.map(toPatternLetter)
  return (row) => {
    const at = starts[row] ?? 0
    let found = ''
    for (let k = at + 3; k < at + 3 + (numbers[at] ?? 0); k++) found += letters[numbers[k] ?? 0]
    return found === pattern || (/[QU]/.test(found) && toPlainPattern(found) === pattern)
  }
}

/** Whether the sounds from the stressed vowel on are these. */
function toRhymeTest(pronunciation: ListPronunciation, { units, numbers, starts }: SoundTable): Test {
  const wanted = pronunciation.units.slice(pronunciation.stressed).flatMap(({ sound }) => (sound === '' ? [] : [sound]))
  return (row) => {
    const at = starts[row] ?? 0
    let same = 0
    for (let k = at + 3 + (numbers[at + 1] ?? 0); k < at + 3 + (numbers[at] ?? 0); k++) {
      const sound = units[numbers[k] ?? 0]?.sound
      if (sound === '') continue
      if (sound !== wanted[same]) return false
      same++
    }
    return same === wanted.length && same > 0
  }
}

/** Words that sound the same all through do not rhyme: they are one to the ear. */
const isOther = (
  pronunciation: ListPronunciation,
  word: string,
  other: { readonly word: string; readonly pronunciation: ListPronunciation },
): boolean => word !== other.word && toSounds(pronunciation) !== toSounds(other.pronunciation)
