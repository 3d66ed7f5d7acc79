// What stands round a look-alike, as short signs that a small model has learned to weigh: its neighbours, the shape of
// those that are no small words, and where its clause begins and ends.

import { hasLetterOrDigit } from '../../../letter-kinds.ts'
import { findClasses } from '../evidence.ts'
import type { Place } from '../place.ts'
import { isInflected } from '../types.ts'

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

/** What stands there: the word itself if it is small, else its shape. */
function toKind(one: Neighbour | undefined): string {
  if (one === undefined) return '<>'
  const { word, written, isFirst } = one
  if (SMALL.has(word)) return word
  const first = written.charAt(0)
  if (!isFirst && first !== first.toLowerCase()) return word.endsWith("'s") ? "Name's" : 'Name'
  if (word.endsWith("'s")) return "'s"
  if (/\d/.test(word)) return '0'
  const ending = ENDINGS.find((one) => word.endsWith(one) && word.length > one.length + 1)
  return ending === undefined ? 'x' : `-${ending}`
}

/** The signs of a place; pure, and the same where the model is taught and where it is asked. */
export function toSigns({ written, words, index }: Place): Signs {
  const neighbours: Neighbour[] = []
  let own = -1
  let markBefore = ''
  let markAfter = ''
  for (const [at, word] of words.entries()) {
    if (hasLetterOrDigit(word)) {
      if (at === index) own = neighbours.length
      neighbours.push({ word, written: written[at] ?? '', isFirst: neighbours.length === 0 })
    } else if (own < 0) markBefore = at === index - 1 ? word : markBefore
    else if (own === neighbours.length - 1 && markAfter === '') markAfter = word
  }
  const isOpen = own === 0 || isBreak(markBefore)
  const isClosed = own === neighbours.length - 1 || isBreak(markAfter)
  const [b1, b2, b3] = [own - 1, own - 2, own - 3].map((at) => toKind(neighbours[at])) as [string, string, string]
  const [a1, a2] = [own + 1, own + 2].map((at) => toKind(neighbours[at])) as [string, string]
  const before = isOpen ? `|${markBefore}` : b1
  const after = isClosed ? `|${markAfter}` : a1
  const isLed = [neighbours[own - 1], neighbours[own - 2]].some((one) => one && LEADS.test(toKind(one)))
  const word = words[index] ?? ''
  const ending = word.endsWith('s') ? 's' : word.endsWith('ed') ? 'ed' : ''
  const classes = findClasses({ written, words, index }, isInflected(word))?.join() ?? ''
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
    ...(neighbours[own - 1] ? [`wb=${neighbours[own - 1]?.word}`] : []),
    ...(neighbours[own + 1] ? [`wa=${neighbours[own + 1]?.word}`] : []),
  ]
  const ownSigns = ['.', `c=${classes}`, `b=${before}`, `a=${after}`, `bb=${b2} ${before}`, `aa=${after} ${a2}`]
  if (neighbours[own - 1]) ownSigns.push(`wb=${neighbours[own - 1]?.word}`)
  if (neighbours[own + 1]) ownSigns.push(`wa=${neighbours[own + 1]?.word}`)
  const seen = new Set<string>()
  for (const [at, { word }] of neighbours.entries()) {
    if (at === own || seen.has(word)) continue
    seen.add(word)
    if (!SMALL.has(word)) ownSigns.push(`w=${word}`)
    else if (Math.abs(at - own) <= NEAR) ownSigns.push(`n=${word}`)
  }
  return { shared, own: ownSigns }
}

/** Before these at one or two words' distance a look-alike is mostly a thing. */
const LEADS = /^(?:a|an|the|my|his|her|your|our|their|this|that|'s|Name's)$/

const isBreak = (mark: string): boolean => mark !== '' && mark !== '-' && mark !== "'"
