// The earliest step of a sequence at which the chosen share of a text's running words can be read.

import type { Phonics } from '../phonics/types.ts'
import type { ReaderExtra } from '../sequence/reader.ts'
import type { Sequence } from '../sequence/types.ts'
import type { StoryCount, WordUse } from '../usage/count.ts'
import { toNamesFor } from '../usage/long-names.ts'
import { findReadableAt, hasMixedForms, keepForm } from '../verdict/index.ts'
import { isName } from './reader-judge.ts'

/** A word that cannot be read before a step, or at no step (null). */
export interface HoldingWord {
  readonly word: string
  /** Running words. */
  readonly times: number
  /** Where sentences do not settle how it is said, the step of the last of its forms. */
  readonly readableAt: string | null
  readonly isOpen: boolean
  /** The source offset of its first place. */
  readonly start: number
}

export interface Level {
  /** The earliest step; null where even the last step does not reach the share. */
  readonly step: string | null
  /** The readable share at that step, 0 to 1; at the last step where there is none. */
  readonly share: number
  /** Running words. */
  readonly words: number
  /** The readable share at each step of the sequence, in order. */
  readonly shares: readonly number[]
  /**
   * Words that cannot be read for sure one step earlier, the commonest first: at the last step where the text is beyond it, at the first
   * step where nothing is earlier.
   */
  readonly holdingBack: readonly HoldingWord[]
}

export interface LevelFinder {
  readonly sequence: Sequence
  /** @param share 0 to 1 */
  find(count: Pick<StoryCount, 'uses' | 'words'>, names: readonly string[], share: number): Level
  /** Whether the spoken forms of a word become readable at different steps. */
  isMixed(text: string): boolean
}

/** Remembers for every different word when it becomes readable: one finder for many texts. */
export function createLevelFinder(phonics: Phonics, sequence: Sequence, reader?: ReaderExtra): LevelFinder {
  const places = new Map<string, number>()
  const mixed = new Map<string, boolean>()
  const none = sequence.steps.length
  const order = new Map(sequence.steps.map(({ id }, at) => [id, at]))
  const more = reader === undefined ? {} : { reader }
  const toPlace = ({ text, spoken }: WordUse, names: readonly string[]): number => {
    const step = findReadableAt(keepForm(phonics.read(text), spoken), sequence, { ...more, names })
    return step === undefined ? none : (order.get(step) ?? none)
  }
  const findPlace = (use: WordUse, names: readonly string[]): number => {
    if (use.form === 'foreign') return none
    const allowed = toNamesFor(use, names)
    if (isName(use.text, allowed)) return toPlace(use, allowed)
    const name = use.spoken === undefined ? use.text : `${use.text}\n${use.spoken}`
    const place = places.get(name) ?? toPlace(use, [])
    places.set(name, place)
    return place
  }
  const isMixed = (text: string): boolean => {
    let found = mixed.get(text)
    if (found === undefined) {
      found = hasMixedForms(phonics.read(text), (meant) => findReadableAt(meant, sequence, more))
      mixed.set(text, found)
    }
    return found
  }
  const toPlaced = (use: WordUse, names: readonly string[]): Placed => {
    const place = findPlace(use, names)
    const isOpen = use.spoken === undefined && use.form === 'word' && isMixed(use.text)
    if (!isOpen || isName(use.text, toNamesFor(use, names))) return { use, place, last: place }
    const forms = phonics.read(use.text).pronunciations.map(({ form }) => findPlace({ ...use, spoken: form }, names))
    return { use, place, last: Math.max(...forms) }
  }
  return {
    sequence,
    find: ({ uses, words }, names, share) =>
      toLevel(
        uses.map((use) => toPlaced(use, names)),
        words,
        share,
        sequence,
      ),
    isMixed,
  }
}

interface Placed {
  readonly use: WordUse
  /** The place of the step at which it becomes readable; the number of steps where none does. */
  readonly place: number
  /** Likewise, of the last of its forms where its sentence does not settle which is meant. */
  readonly last: number
}

function toLevel(placed: readonly Placed[], words: number, share: number, { steps }: Sequence): Level {
  const gained = steps.map(() => 0)
  for (const { use, place } of placed) if (place < steps.length) gained[place] = (gained[place] ?? 0) + use.times
  let readable = 0
  const shares = gained.map((times) => {
    readable += times
    return words === 0 ? 1 : readable / words
  })
  const found = shares.findIndex((reached) => reached >= share)
  const at = found === -1 ? steps.length : found
  return {
    step: steps[at]?.id ?? null,
    share: shares[Math.min(at, steps.length - 1)] ?? 0,
    words,
    shares,
    holdingBack: toHolding(
      placed.filter(({ last }) => last >= Math.max(at, 1)),
      steps,
    ),
  }
}

function toHolding(placed: readonly Placed[], steps: Sequence['steps']): readonly HoldingWord[] {
  const words = new Map<string, { word: string; times: number; last: number; isOpen: boolean; start: number }>()
  for (const { use, place, last } of placed) {
    const isOpen = last > place
    const known = words.get(use.key)
    if (known === undefined)
      words.set(use.key, { word: use.text, times: use.times, last, isOpen, start: use.word.start })
    else {
      known.times += use.times
      known.isOpen ||= isOpen
      known.last = Math.max(known.last, last)
      if (use.text === use.key) known.word = use.text
    }
  }
  const sorted = [...words.values()].sort((one, other) => other.times - one.times)
  return sorted.map(({ last, ...rest }) => ({ ...rest, readableAt: steps[last]?.id ?? null }))
}
