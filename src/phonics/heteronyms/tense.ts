// Whether `read` is present or past where its place allows both: `they read the book`.
//
// Only the other words can tell: a time (`yesterday`, `every day`), a verb joined to it (`sat and read`), the other verbs of
// the sentence, and, for a story's own voice, the verbs of the sentences before.

import type { Place } from './place.ts'
import { isMark } from './place.ts'
import { BE, HAVE, LET, MAKE, MODALS, PERCEIVE } from './vocabulary.ts'

export type Tense = 'present' | 'past'

const words = (list: string): ReadonlySet<string> => new Set(list.split(' '))

const PAST_TIMES = words('yesterday ago once earlier')
const PRESENT_TIMES = words('every each usually nowadays today now')
const PAST_VERBS = words(
  'was were had did went sat ran came saw said got took made gave told found fell ate began thought knew felt left kept ' +
    'heard stood slept wrote brought held met led grew flew drew swam sang sent spoke woke wore won lost bought caught ' +
    "taught fed hid chose drank rang rode sold shook stole threw understood wasn't weren't didn't hadn't couldn't",
)
const PRESENT_VERBS = words(
  "is are am i'm it's we're they're you're has don't doesn't can will likes wants loves knows says goes sits gets makes " +
    "can't won't isn't aren't",
)
const NOT_ED = words('red bed need seed feed shed sled indeed hundred naked wicked speed weed reed breed bleed greed fed led wed')
const CLAUSES = words('and but because when so if where since as while until before after')
const RELATIVES = words('that which who whose where')

/** The tense that the sentence itself shows; undefined where it shows none, or both. */
export function findTense(place: Place): Tense | undefined {
  const joined = findJoinedTense(place)
  if (joined) return joined
  const [past, present] = [hasPastTime(place), hasPresentTime(place)]
  if (past && present) return undefined
  const verbs = countVerbs(toOwnVoice(place))
  if (past) return verbs.present === 0 ? 'past' : undefined
  if (present) return verbs.past === 0 ? 'present' : undefined
  if (verbs.past > 0 && verbs.present === 0) return 'past'
  return verbs.present > 0 && verbs.past === 0 ? 'present' : undefined
}

/** The tense of the sentences before, where at least two verbs agree and none differs. */
export function findContextTense(before: readonly (readonly string[])[]): Tense | undefined {
  const verbs = countVerbs(before.flatMap((sentence) => withoutSpeech(sentence)))
  if (verbs.past >= 2 && verbs.present === 0) return 'past'
  return verbs.present >= 2 && verbs.past === 0 ? 'present' : undefined
}

/** True where the word stands between quotation marks, so that the story's tense does not hold for it. */
export function isSpeech(place: Place): boolean {
  return isInside(place.words, place.index)
}

/** True where a helper earlier in the clause may govern the word: `did the children read`, `we heard Meg read`. */
export function hasHelper(place: Place): boolean {
  for (let at = place.index - 1; at >= 0; at--) {
    const word = place.words[at] ?? ''
    if (isMark(word) || CLAUSES.has(word)) return false
    if ([MODALS, HAVE, BE, LET, MAKE, PERCEIVE].some((group) => group.has(word))) return true
  }
  return false
}

/** `sat by the pond and read`: the nearest verb before `and`, `then` or a comma. */
function findJoinedTense(place: Place): Tense | undefined {
  const before = place.words[place.index - 1]
  if (before !== 'and' && before !== 'then' && before !== 'or') return undefined
  for (let at = place.index - 2; at >= 0; at--) {
    const word = place.words[at] ?? ''
    if (RELATIVES.has(word) || /^[.!?;:“”"]$/.test(word)) return undefined
    if (word === 'to' || MODALS.has(word)) return isPlainTo(place, at) ? undefined : 'present'
    if (HAVE.has(word)) return undefined
    if (isPast(word)) return 'past'
  }
  return undefined
}

/** `went to the shed and read`: this `to` is no helper. */
function isPlainTo(place: Place, at: number): boolean {
  return place.words[at] === 'to' && /^(the|a|an|my|his|her|its|our|their|your|bed|school|town)$/.test(place.words[at + 1] ?? '')
}

function hasPastTime(place: Place): boolean {
  return place.words.some((word, i) => {
    if (word === 'last') return /^(night|week|year|month|summer|winter|spring|autumn|time|monday|friday)$/.test(place.words[i + 1] ?? '')
    return PAST_TIMES.has(word)
  })
}

function hasPresentTime(place: Place): boolean {
  return place.words.some((word, i) => {
    if (word === 'every' || word === 'each') return /^(day|night|week|morning|evening|time|year)$/.test(place.words[i + 1] ?? '')
    return PRESENT_TIMES.has(word)
  })
}

/** The words of the same voice as the place: the speech that it stands in, or the sentence without speech; relatives cut. */
function toOwnVoice(place: Place): readonly string[] {
  const inside = isInside(place.words, place.index)
  const own = place.words.filter((_, i) => i !== place.index && isInside(place.words, i) === inside)
  const relative = own.findIndex((word) => RELATIVES.has(word))
  return relative < 0 ? own : own.slice(0, relative)
}

function withoutSpeech(words: readonly string[]): readonly string[] {
  return words.filter((_, i) => !isInside(words, i))
}

function isInside(words: readonly string[], index: number): boolean {
  let open = false
  for (let i = 0; i <= index; i++) {
    const word = words[i]
    if (word === '“' || word === '‘') open = true
    else if (word === '”') open = false
    else if (word === '"') open = !open
  }
  return open
}

function countVerbs(list: readonly string[]): { readonly past: number; readonly present: number } {
  const real = list.filter((word) => !isMark(word))
  return {
    past: real.filter(isPast).length,
    present: real.filter((word) => PRESENT_VERBS.has(word) || (BE.has(word) && !PAST_VERBS.has(word))).length,
  }
}

function isPast(word: string): boolean {
  return PAST_VERBS.has(word) || (/[a-z]{2}ed$/.test(word) && !NOT_ED.has(word))
}
