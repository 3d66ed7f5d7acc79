// Phrases that give one pronunciation of a heteronym away: `made of _`, `take/takes/took a _`.
//
// A pattern is words parted by spaces. `_` is the heteronym, `a/b` is either word, `*` is any one word, `.` is a mark or
// an end of the sentence, and `@name` is a group: @be @det @poss @number @pron @name @plural.

import type { Place } from './place.ts'
import { isEdge, isMark, isName } from './place.ts'
import { BE, DETERMINERS, NUMBERS, PLURAL_SUBJECTS, POSSESSIVES, SUBJECTS } from './vocabulary.ts'

/** A pattern cut up: the options of each of its words, and where the heteronym stands. */
interface Pattern {
  readonly parts: readonly (readonly string[])[]
  readonly at: number
}

const known = new WeakMap<readonly string[], readonly Pattern[]>()

/** A word is met many times in a story, and its patterns are always the same. */
function toPatterns(patterns: readonly string[]): readonly Pattern[] {
  const found = known.get(patterns) ?? patterns.map(toPattern)
  known.set(patterns, found)
  return found
}

function toPattern(pattern: string): Pattern {
  const parts = pattern.split(' ').map((part) => part.split('/'))
  return { parts, at: parts.findIndex(([option]) => option === '_') }
}

/** The number of words of the longest pattern that fits the place; 0 where none fits. */
export function findLongestPhrase(patterns: readonly string[], place: Place): number {
  let longest = 0
  for (const { parts, at } of toPatterns(patterns)) {
    if (parts.length > longest && hasPhrase(parts, place, place.index - at)) longest = parts.length
  }
  return longest
}

/** A loop and no callbacks: each word is tried against dozens of patterns. */
function hasPhrase(parts: Pattern['parts'], place: Place, start: number): boolean {
  for (let i = 0; i < parts.length; i++) {
    if (start + i !== place.index && !hasOption(parts[i] ?? [], place, start + i)) return false
  }
  return true
}

function hasOption(options: readonly string[], place: Place, at: number): boolean {
  for (const option of options) if (isOption(option, place, at)) return true
  return false
}

function isOption(option: string, place: Place, at: number): boolean {
  const word = place.words[at]
  if (option === '.') return isEdge(word)
  if (word === undefined) return false
  if (option === '*') return !isMark(word)
  return option.startsWith('@') ? isInGroup(option, word, place, at) : option === word
}

function isInGroup(group: string, word: string, place: Place, at: number): boolean {
  switch (group) {
    case '@be':
      return BE.has(word)
    case '@det':
      return DETERMINERS.has(word)
    case '@poss':
      return POSSESSIVES.has(word)
    case '@number':
      return NUMBERS.has(word) || /^\d+$/.test(word)
    case '@pron':
      return SUBJECTS.has(word)
    case '@plural':
      return PLURAL_SUBJECTS.has(word)
    case '@name':
      return isName(place, at)
    default:
      throw new Error(`unknown group ${group} in a phrase`)
  }
}
