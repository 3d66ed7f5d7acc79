// From what a person writes to a query: every filter by its name, every mistake told in one line.

import { findNearest } from '../nearest.ts'
import type { Phonics } from '../phonics/types.ts'
import type { Sequence } from '../sequence/types.ts'
import { findFirstStep } from '../verdict/index.ts'
import { WORD_KINDS } from '../words/index.ts'
import type { Span } from './filters.ts'
import type { WordQuery } from './find.ts'
import type { WordOrderName } from './order.ts'
import type { Pool } from './pool.ts'
import { findRime, toListPronunciation } from './pronunciation.ts'
import { type FoundSpelling, findSpelling, type Spelling, toSpellingTest } from './spelling.ts'
import type { ListUnit } from './table.ts'

/** All as written; lists with commas. */
export interface WrittenQuery {
  readonly vowel?: string
  readonly first?: string
  readonly last?: string
  readonly with?: string
  readonly pattern?: string
  readonly lettersPattern?: string
  readonly length?: string
  readonly syllables?: string
  readonly rhymesWith?: string
  readonly family?: string
  readonly kind?: string
  readonly picture?: boolean
  readonly object?: boolean
  readonly known?: boolean
  readonly base?: boolean
  readonly newAtStep?: boolean
  readonly order?: string
  readonly seed?: string
  readonly count?: string
}

export interface QueryTools {
  readonly sequence: Sequence
  readonly phonics: Phonics
  readonly pool: Pool
}

/** Thrown inside, so that each value is read in one line; never leaves this file. */
class Mistake extends Error {}

const fail = (message: string): never => {
  throw new Mistake(message)
}

const ORDERS = ['useful', 'alphabetical', 'shuffled'] as const satisfies readonly WordOrderName[]

/** @returns the query, or the first mistake in one line */
export function readQuery(written: WrittenQuery, tools: QueryTools): WordQuery | { readonly problem: string } {
  try {
    return toQuery(written, tools)
  } catch (error) {
    if (error instanceof Mistake) return { problem: error.message }
    throw error
  }
}

function toQuery(written: WrittenQuery, tools: QueryTools): WordQuery {
  const { picture, object, known, base, newAtStep } = written
  const spellings = (text: string, flag: string): Spelling[] => {
    const parts = splitList(text)
    if (parts.length === 0) return fail(`${flag} needs a spelling, such as a.`)
    return parts.map((one) => (flag === '--vowel' ? toVowel(one, tools) : toSpelling(one, tools)))
  }
  return {
    ...read(written.vowel, (text) => spellings(text, '--vowel'), 'vowel'),
    ...read(written.first, (text) => spellings(text, '--first'), 'first'),
    ...read(written.last, (text) => spellings(text, '--last'), 'last'),
    ...read(written.with, (text) => spellings(text, '--with'), 'with'),
    ...read(written.pattern, (text) => toPattern(text, '--pattern'), 'pattern'),
    ...read(written.lettersPattern, (text) => toPattern(text, '--letters-pattern'), 'lettersPattern'),
    ...read(written.length, (text) => toSpan(text, '--length'), 'length'),
    ...read(written.syllables, (text) => toSpan(text, '--syllables'), 'syllables'),
    ...read(written.rhymesWith, (text) => toRhymeWord(text, tools), 'rhymesWith'),
    ...read(written.family, (text) => toFamily(text, tools), 'family'),
    ...read(written.kind, (text) => splitList(text).map((one) => toChoice(one, WORD_KINDS, '--kind')), 'kinds'),
    ...read(written.order, (text) => toChoice(text, ORDERS, '--order'), 'order'),
    ...read(written.seed, (text) => toNumber(text, '--seed', 0), 'seed'),
    ...read(written.count, toCount, 'count'),
    ...(picture ? { picture } : {}),
    ...(object ? { object } : {}),
    ...(known ? { known } : {}),
    ...(base ? { base } : {}),
    ...(newAtStep ? { newAtStep } : {}),
  }
}

function read<Value, Name extends keyof WordQuery>(
  text: string | undefined,
  to: (text: string) => Value,
  name: Name,
): { [Key in Name]?: Value } {
  return text === undefined ? {} : ({ [name]: to(text) } as { [Key in Name]: Value })
}

const splitList = (text: string): string[] =>
  text
    .split(',')
    .map((one) => one.trim())
    .filter((one) => one !== '')

/** A spelling that no word has is a slip of the keys: an empty list would not tell. */
function toSpelling(text: string, tools: QueryTools): Spelling {
  const spelling = toAnySpelling(text, tools)
  const { sounds } = tools.pool
  const isIn = toSpellingTest(spelling, 'any', sounds)
  for (let row = 0; row < sounds.starts.length; row++) if (isIn(row)) return spelling
  return fail(`No word holds \`${text}\` as a spelling.${toHint(text, listTaught(tools))}`)
}

function toVowel(text: string, tools: QueryTools): Spelling {
  const found = findVowel(text, tools)
  const spelling = 'problem' in found ? fail(found.problem) : found.spelling
  const vowelUnits = tools.pool.sounds.units.filter(({ vowel }) => vowel)
  const known: ReadonlySet<string> = tools.pool.knowledge.correspondences
  // Letters that no step teaches together may still be known to this reader.
  const isVowel =
    'letters' in spelling
      ? vowelUnits.some(({ letters, key }) => letters === spelling.letters && known.has(key))
      : spelling.some((test) => vowelUnits.some(test))
  if (isVowel) return spelling
  const vowels = listTaught(tools, ({ vowel }) => vowel)
  const such = vowels.slice(0, 5).join(', ')
  return fail(`--vowel is a vowel that is taught, such as ${such}; this is \`${text}\`.${toHint(text, vowels)}`)
}

/** Of letters that are taught as a consonant too, such as `y`, the vowel. */
function findVowel(text: string, { sequence, phonics, pool }: QueryTools): FoundSpelling {
  const keys = new Set<string>(pool.sounds.units.filter(({ vowel }) => vowel).map(({ key }) => key))
  const letters = text.toLowerCase().replace('-', '_')
  const taught = sequence.steps
    .flatMap(({ adds }) => adds.correspondences)
    .find((one) => one.letters === letters && keys.has(one.key))
  return taught ? { spelling: [({ key }) => key === taught.key] } : findSpelling(text, sequence, phonics)
}

function toAnySpelling(text: string, { sequence, phonics }: QueryTools): Spelling {
  const found = findSpelling(text, sequence, phonics)
  return 'problem' in found ? fail(found.problem) : found.spelling
}

/** The spellings that the sequence teaches, in its order, as they are asked for. */
function listTaught({ sequence, pool }: QueryTools, isMeant: (unit: ListUnit) => boolean = () => true): string[] {
  const meant = new Set<string>(pool.sounds.units.filter(isMeant).map(({ key }) => key))
  const taught = sequence.steps.flatMap(({ adds }) => adds.correspondences).filter(({ key }) => meant.has(key))
  return [...new Set(taught.map(({ letters }) => letters.replace('_', '-')))]
}

/** Any letter is near any other, so of a single one only what begins with it is told. */
function toHint(text: string, valid: readonly string[]): string {
  const nearest = text.length > 1 ? findLikeliest(text, valid) : valid.find((one) => one.startsWith(text.toLowerCase()))
  return nearest === undefined ? '' : ` Did you mean \`${nearest}\`?`
}

/** Of those that are equally near: the same letters (`sh` for `hs`), or at least the same first one (`rabbit` for `rabit`). */
function findLikeliest(text: string, valid: readonly string[]): string | undefined {
  const inOrder = [...text].sort().join('')
  const rank = (one: string): number => ([...one].sort().join('') === inOrder ? 0 : one[0] === text[0] ? 1 : 2)
  const groups: [string[], string[], string[]] = [[], [], []]
  for (const one of valid) groups[rank(one)]?.push(one)
  return findNearest(text, groups.flat())
}

export interface Untaught {
  /** As written. */
  readonly spelling: string
  /** The id of the step that teaches it; undefined where none does. */
  readonly step: string | undefined
}

/**
 * Of the spellings that are asked for, those that the reader has not been taught: why a list may be empty. Clusters such
 * as `st` and endings are passed over.
 */
export function findUntaught(
  written: Pick<WrittenQuery, 'vowel' | 'first' | 'last' | 'with'> & { readonly sounds?: string },
  tools: QueryTools,
): readonly Untaught[] {
  const { vowel = '', first = '', last = '', with: held = '', sounds = '' } = written
  const others = [first, last, held, sounds].flatMap(splitList)
  return [
    ...splitList(vowel).map((text) => ({ text, found: findVowel(text, tools) })),
    ...others.map((text) => ({ text, found: findSpelling(text, tools.sequence, tools.phonics) })),
  ].flatMap(({ text, found }): Untaught[] => {
    if ('problem' in found || 'letters' in found.spelling) return []
    const parts = found.spelling.map((test) => findKeys(test, tools.pool))
    const areIn = (known: ReadonlySet<string>): boolean => parts.every((keys) => keys.some((key) => known.has(key)))
    if (parts.some((keys) => keys.length === 0) || areIn(tools.pool.knowledge.correspondences)) return []
    const step = findFirstStep(tools.sequence, 0, {}, ({ correspondences }) => areIn(correspondences))
    return [{ spelling: text, step }]
  })
}

const findKeys = (test: (unit: ListUnit) => boolean, { sounds: { units } }: Pool): string[] =>
  units.flatMap((unit) => (unit.kind === 'correspondence' && test(unit) ? [unit.key] : []))

function toPattern(text: string, flag: string): string {
  const pattern = text.toUpperCase()
  return /^[CV]{1,20}$/.test(pattern)
    ? pattern
    : fail(`${flag} is made of C for a consonant and V for a vowel, such as CVC; this is \`${text}\`.`)
}

function toSpan(text: string, flag: string): Span {
  const [, from, to] = /^(\d{1,2})(?:-(\d{1,2}))?$/.exec(text.trim()) ?? []
  if (from === undefined) return fail(`${flag} is a number such as 3, or two such as 3-5; this is \`${text}\`.`)
  const span = { from: Number(from), to: Number(to ?? from) }
  if (span.from < 1) return fail(`${flag} starts at 1; this is \`${text}\`.`)
  if (span.to < span.from)
    return fail(`${flag} goes from the smaller number to the larger. Did you mean \`${span.to}-${span.from}\`?`)
  return span
}

function toNumber(text: string, flag: string, least: number): number {
  const number = Number(text)
  return /^\d{1,9}$/.test(text) && number >= least
    ? number
    : fail(`${flag} is a whole number from ${least}; this is \`${text}\`.`)
}

const toCount = (text: string): number => (text === 'all' ? Infinity : toNumber(text, '--count', 1))

function toChoice<const Choice extends string>(text: string, choices: readonly Choice[], flag: string): Choice {
  const found = choices.find((choice) => choice === text)
  if (found !== undefined) return found
  const nearest = findNearest(text, choices)
  return fail(
    `${flag} is ${choices.slice(0, -1).join(', ')} or ${choices.at(-1)}; this is \`${text}\`.${nearest ? ` Did you mean \`${nearest}\`?` : ''}`,
  )
}

/** The sounds of a word that the dictionary lacks are a guess, and most such words are slips of the keys. */
function toRhymeWord(text: string, { phonics, pool }: QueryTools) {
  const word = text.trim().toLowerCase()
  const { pronunciations, source } = phonics.read(word)
  const [pronunciation] = pronunciations
  if (!pronunciation) return fail(`--rhymes-with needs a word; this is \`${text}\`.`)
  if (source !== 'guess') return { word, pronunciation: toListPronunciation(pronunciation) }
  const places = Array.from({ length: pool.size }, (_, at) => at)
  const known = places.filter((at) => pool.factsAt(at).known >= 2).map(pool.wordAt)
  const nearest = findLikeliest(word, known) ?? findLikeliest(word, places.map(pool.wordAt))
  const hint = nearest === undefined ? '' : ` Did you mean \`${nearest}\`?`
  return fail(
    `\`${word}\` is not in the dictionary.${hint} For an invented word ask for its ending, such as --family -at.`,
  )
}

/** `-at` and `at` are the letters, said as most readable words say them; `cat` is the family of that word. */
function toFamily(text: string, tools: QueryTools): { readonly letters: string; readonly sounds: string } {
  const word = text.trim().toLowerCase()
  const pronunciation = word.startsWith('-') ? undefined : tools.phonics.read(word).pronunciations[0]
  const own = pronunciation && findRime(word, toListPronunciation(pronunciation))
  if (own) return own
  const letters = word.replace(/^-/, '')
  if (!/^[a-z]+$/.test(letters))
    return fail(`--family is an ending such as -at, or a word such as cat; this is \`${text}\`.`)
  return { letters, sounds: findCommonSounds(letters, tools.pool) }
}

function findCommonSounds(letters: string, pool: Pool): string {
  const counts = new Map<string, number>()
  for (let at = 0; at < pool.size; at++) {
    if (!pool.wordAt(at).endsWith(letters) || (pool.isCheap && !pool.isReadable(at))) continue
    const rime = findRime(pool.wordAt(at), pool.pronunciationAt(at))
    if (rime?.letters === letters) counts.set(rime.sounds, (counts.get(rime.sounds) ?? 0) + 1)
  }
  return [...counts].sort((left, right) => right[1] - left[1])[0]?.[0] ?? ''
}
