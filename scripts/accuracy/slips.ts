// Slips that a run of typing leaves, made by seed of the words that everybody uses most: is the right word offered, or does the slip
// pass in silence because it is a word too?

import { createRandom } from '../../src/finder/order.ts'
import { findSlips } from '../../src/phonics/slip.ts'
import type { Phonics } from '../../src/phonics/types.ts'
import { frequencyRank } from '../build/frequency.ts'

const SEED = 20_261_129
const MUCH_USED = 3000
const OF_EACH = 50

export const SLIP_KINDS = ['a letter doubled', 'a letter lacking', 'neighbours swapped', 'words run together'] as const
type SlipKind = (typeof SLIP_KINDS)[number]

export interface Slip {
  readonly written: string
  readonly meant: string
}

/** Fifty of a kind. A word of the list may be a name, or one that no child's book has. */
export function makeSlips(kind: SlipKind, isListed: (word: string) => boolean): readonly Slip[] {
  const random = createRandom(SEED + SLIP_KINDS.indexOf(kind))
  const words = [...frequencyRank]
    .filter(([word, rank]) => rank < MUCH_USED && /^[a-z]{3,}$/.test(word) && isListed(word))
    .map(([word]) => word)
    .sort()
  const upTo = (end: number): number => Math.floor(random() * end)
  const slips: Slip[] = []
  while (slips.length < OF_EACH) {
    const slip = spoil(kind, words[upTo(words.length)] as string, words[upTo(words.length)] as string, upTo)
    if (slip.written !== slip.meant) slips.push(slip)
  }
  return slips
}

function spoil(kind: SlipKind, word: string, other: string, upTo: (end: number) => number): Slip {
  const at = upTo(word.length - (kind === 'neighbours swapped' ? 1 : 0))
  const [head, letter = '', tail] = [word.slice(0, at), word[at], word.slice(at + 1)]
  switch (kind) {
    case 'a letter doubled':
      return { written: head + letter + letter + tail, meant: word }
    case 'a letter lacking':
      return { written: head + tail, meant: word }
    case 'neighbours swapped':
      return { written: head + tail.slice(0, 1) + letter + tail.slice(1), meant: word }
    case 'words run together':
      return { written: word + other, meant: `${word} ${other}` }
  }
}

export interface SlipFigures {
  /** The right word is among the two that are offered. */
  readonly right: number
  /** Others are offered. */
  readonly otherwise: readonly string[]
  /** A word that the dictionary has, so nothing is said. */
  readonly words: readonly string[]
  /** Nothing is offered for a word that the dictionary lacks. */
  readonly none: readonly string[]
}

export function measureSlips(slips: readonly Slip[], phonics: Phonics): SlipFigures {
  const told = slips.map(({ written, meant }) => {
    const form = phonics.read(written).meant
    const offers = form === undefined ? findSlips(written, phonics) : [form]
    const is = offers.some((one) => one.toLowerCase() === meant)
    const isListed = phonics.isListed(written)
    const kind = is ? 'right' : offers.length > 0 ? 'otherwise' : isListed ? 'words' : 'none'
    return { kind, text: `${written} (${meant})` }
  })
  const of = (kind: string): readonly string[] => told.filter((one) => one.kind === kind).map(({ text }) => text)
  return { right: of('right').length, otherwise: of('otherwise'), words: of('words'), none: of('none') }
}
