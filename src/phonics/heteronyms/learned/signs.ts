// What stands round a look-alike, as short signs that a small model has learned to weigh: its neighbours, the shape of
// those that are no small words, and where its clause begins and ends.

import { hasLetterOrDigit } from '../../../letter-kinds.ts'
import { findClasses } from '../evidence.ts'
import type { Place } from '../place.ts'
import { isInflected } from '../types.ts'
import { isPast, isPresent, isVerbal } from '../verbs.ts'
import * as is from '../vocabulary.ts'

export interface Signs {
  /** Weighed for the class of a form, whatever the word: `before=the` speaks for a noun. */
  readonly shared: readonly string[]
  /** Weighed for this one form of this one word: `near=arrow` speaks for the bow that shoots. */
  readonly own: readonly string[]
}

/** Small words, and some verbs, that stand for themselves; of all others only the shape is looked at. */
const SMALL: ReadonlySet<string> = new Set(
  (
    "a about across after again against all along always am an and another any are around as ask asked asks at away back be because become been before began behind being below beneath beside between both but by came can can't cannot " +
    "come comes coming could couldn't did didn't do does doesn't doing don't down during each either else enough even ever every everybody everyone everything few for from gave get gets getting give gives go goes going gone got had hadn't has " +
    "hasn't have haven't having he he'd he'll he's her here hers herself him himself his how i i'd i'll i'm i've if in inside into is isn't it it'll it's its itself just keep keeps kept knew know knows let let's like little looked looks " +
    'made make makes making many may me might mine more most much must my myself near need needs neither never no nobody nor not nothing now of off often on once one only onto or other our out over own past please put quite rather ' +
    "said sat saw say says see she she'd she'll she's should shouldn't since so some somebody someone something soon still stood such take takes than that that's the their them themselves then there there's these they they'd they'll they're they've thing things " +
    "think this those though thought three through to together told too took toward towards try two under until up upon us very want wanted wants was wasn't we we'd we'll we're we've well went were weren't what what's when where which while who who's " +
    "whose why will with without won't would wouldn't yes yet you you'd you'll you're you've your"
  ).split(' '),
)

const ENDINGS = ['ing', 'ed', 'ly', 'est', 'er', 'ful', 'ness', 'tion', 's', 'y', 'en'] as const

/** How many words to either side count as near. */
const NEAR = 5

interface Neighbour {
  readonly word: string
  readonly written: string
  readonly isFirst: boolean
}

/** What stands there: the word itself if it is small, else its kind, else its shape. */
function toKind(one: Neighbour | undefined): string {
  if (one === undefined) return '<>'
  const { word, written, isFirst } = one
  if (SMALL.has(word)) return word
  const first = written.charAt(0)
  if (!isFirst && first !== first.toLowerCase()) return word.endsWith("'s") ? "Name's" : 'Name'
  if (word.endsWith("'s")) return "'s"
  if (/\d/.test(word) || is.NUMBERS.has(word)) return '0'
  if (is.PLURALS.has(word) || is.isManyPeople(word)) return '-s'
  if (is.ADJECTIVES.has(word) || is.LOOSE_ADJECTIVES.has(word)) return 'adj'
  if (isPast(word)) return 'past'
  const ending = ENDINGS.find((one) => word.endsWith(one) && word.length > one.length + 1)
  return ending === undefined ? 'x' : `-${ending}`
}

/** What could be the verb of its clause among some words: one that shows its tense, a helper, one in -s, or nothing. */
function toVerb(words: readonly string[], from: number, to: number): string {
  let found = '0'
  for (let at = from; at < to; at++) {
    const word = words[at] ?? ''
    if (isPast(word) || isPresent(word)) return '2'
    if (found !== '1' && isVerbal(word)) found = '1'
    else if (found === '0' && /[^s]s$/.test(word) && !SMALL.has(word)) found = 's'
  }
  return found
}

/** The words round the place, without marks, and which of them it is; the marks right at it. */
function toNeighbours({ written, words, index }: Place) {
  const all: Neighbour[] = []
  let own = -1
  let markBefore = ''
  let markAfter = ''
  for (const [at, word] of words.entries()) {
    if (hasLetterOrDigit(word)) {
      if (at === index) own = all.length
      all.push({ word, written: written[at] ?? '', isFirst: all.length === 0 })
    } else if (own < 0) markBefore = at === index - 1 ? word : markBefore
    else if (own === all.length - 1 && markAfter === '') markAfter = word
  }
  return { all, own, markBefore, markAfter }
}

/** How its clause opens, and the verbs to either side of the place. */
function toClause({ written, words, index }: Place) {
  let start = index
  while (start > 0 && !isBreakAt(words, start - 1)) start--
  let end = index + 1
  while (end < words.length && !isBreakAt(words, end)) end++
  const isFirst = !words.slice(0, start).some(hasLetterOrDigit)
  const opener = { word: words[start] ?? '', written: written[start] ?? '', isFirst }
  const verbs = toVerb(words, start, index) + toVerb(words, index + 1, end)
  return { opener: start === index ? '|' : toKind(opener), verbs }
}

/** The signs of a place; pure, and the same where the model is taught and where it is asked. */
export function toSigns(place: Place): Signs {
  const { all, own, markBefore, markAfter } = toNeighbours(place)
  const isOpen = own === 0 || isBreak(markBefore)
  const isClosed = own === all.length - 1 || isBreak(markAfter)
  const [b1, b2, b3] = [own - 1, own - 2, own - 3].map((at) => toKind(all[at])) as [string, string, string]
  const [a1, a2] = [own + 1, own + 2].map((at) => toKind(all[at])) as [string, string]
  const before = isOpen ? `|${markBefore}` : b1
  const after = isClosed ? `|${markAfter}` : a1
  const isLed = [all[own - 1], all[own - 2]].some((one) => one && LEADS.test(toKind(one)))
  const word = place.words[place.index] ?? ''
  const ending = word.endsWith('s') ? 's' : word.endsWith('ed') ? 'ed' : ''
  const classes = findClasses(place, isInflected(word))?.join() ?? ''
  const { opener, verbs } = toClause(place)
  const sides = [
    ...(all[own - 1] ? [`wb=${all[own - 1]?.word}`] : []),
    ...(all[own + 1] ? [`wa=${all[own + 1]?.word}`] : []),
  ]
  const shared = [
    '.',
    `b=${before}`,
    `a=${after}`,
    `bb=${b2} ${before}`,
    `aa=${after} ${a2}`,
    `ba=${before} ${after}`,
    `b2=${b2}`,
    `a2=${a2}`,
    `b3=${b3}`,
    `bbb=${b3} ${b2} ${before}`,
    `bba=${b2} ${before} ${after}`,
    `led=${isLed}`,
    `first=${own === 0}`,
    `end=${ending} ${before}`,
    `ea=${ending} ${after}`,
    `c=${classes}`,
    `cb=${classes} ${before}`,
    `ca=${classes} ${after}`,
    `v=${verbs}`,
    `vw=${ending} ${verbs}`,
    `vb=${before} ${verbs}`,
    `va=${after} ${verbs}`,
    `vc=${classes} ${verbs}`,
    `vf=${opener} ${verbs}`,
    `f=${ending} ${opener}`,
    ...sides,
  ]
  const ownSigns = [
    '.',
    `c=${classes}`,
    `b=${before}`,
    `a=${after}`,
    `bb=${b2} ${before}`,
    `aa=${after} ${a2}`,
    ...sides,
  ]
  return { shared, own: [...ownSigns, ...toWords(all, own)] }
}

/** The words of the sentence that may tell of the topic, and the small ones that are near. */
function toWords(all: readonly Neighbour[], own: number): readonly string[] {
  const seen = new Set<string>()
  return all.flatMap(({ word }, at) => {
    if (at === own || seen.has(word)) return []
    seen.add(word)
    if (!SMALL.has(word)) return [`w=${word}`]
    return Math.abs(at - own) <= NEAR ? [`n=${word}`] : []
  })
}

/** Before these at one or two words' distance a look-alike is mostly a thing. */
const LEADS = /^(?:a|an|the|my|his|her|your|our|their|this|that|'s|Name's)$/

const isBreak = (mark: string): boolean => mark !== '' && mark !== '-' && mark !== "'"

const isBreakAt = (words: readonly string[], at: number): boolean => {
  const word = words[at] ?? ''
  return !hasLetterOrDigit(word) && isBreak(word)
}
