// Whether a word may be proposed to children: the built-in list, what a project adds, and what a school clears.

import { toStraight } from '../apostrophe.ts'
import { hashText } from '../hash.ts'
import { toBases } from './inflect.ts'

/**
 * Why a word is not proposed. `fit` marks a word that only looks like a form of an unfit one; `only-listed` one that is fit in a
 * list, where a teacher knows which is meant, and would say the other thing where it stands for another word.
 */
export type FitnessKind =
  | 'profanity'
  | 'slur'
  | 'sexual'
  | 'drug'
  | 'drink'
  | 'weapon'
  | 'violence'
  | 'adult-news'
  | 'second-meaning'
  | 'fit'
  | 'only-listed'

/** In the order of their numbers in the compiled table. */
export const FITNESS_KINDS = [
  'profanity',
  'slur',
  'sexual',
  'drug',
  'drink',
  'weapon',
  'violence',
  'adult-news',
  'second-meaning',
  'fit',
  'only-listed',
] as const satisfies readonly FitnessKind[]

/** Why a word is unfit; `added` where the project's own list has it. */
export type UnfitKind = Exclude<FitnessKind, 'fit' | 'only-listed'> | 'added'

export interface FitnessOptions {
  /** Words that are not to be proposed here. Inflected forms follow. */
  readonly add?: readonly string[]
  /** Words that may be proposed here although the built-in list has them. Inflected forms follow. */
  readonly clear?: readonly string[]
}

export interface Fitness {
  /** Whether the program may propose the word, in any case. True for a word that no list knows. */
  isFit(word: string): boolean
  /** Whether it may stand for another word. */
  mayStandFor(word: string): boolean
  /** Why not, or undefined for a fit word. `added` where the project's own list has it. */
  findUnfit(word: string): { readonly base: string; readonly kind: UnfitKind } | undefined
}

type Listed = FitnessKind | 'added'

/**
 * @param table the compiled list: five bytes a word, a 32-bit hash (least byte first) and the number of its kind.
 */
export function createFitness(table: Uint8Array, { add = [], clear = [] }: FitnessOptions = {}): Fitness {
  const kinds = new Map<number, FitnessKind>()
  const view = new DataView(table.buffer, table.byteOffset, table.byteLength)
  for (let at = 0; at + 5 <= table.length; at += 5) {
    kinds.set(view.getUint32(at, true), FITNESS_KINDS[view.getUint8(at + 4)] ?? 'profanity')
  }
  const own = new Map<string, Listed>()
  for (const word of clear) own.set(word.toLowerCase(), 'fit')
  for (const word of add) own.set(word.toLowerCase(), 'added')
  const findBuiltIn = (word: string): Listed | undefined => kinds.get(hashText(word))

  // The project's word comes first, forms and all: who clears `spade` means `spades` too, which the list has by itself.
  const findOne = (word: string): Found | undefined => {
    const plain = toStraight(word.toLowerCase()).replace(/'s?$/, '')
    return findBase(plain, (one) => own.get(one), 2) ?? findBase(plain, findBuiltIn, 2)
  }
  return {
    findUnfit(word) {
      const found = findOne(word)
      return found === undefined || isFine(found.kind) ? undefined : { base: found.base, kind: found.kind }
    },
    isFit(word) {
      const found = findOne(word)
      return found === undefined || isFine(found.kind)
    },
    mayStandFor(word) {
      const found = findOne(word)
      return found === undefined || found.kind === 'fit'
    },
  }
}

interface Found {
  readonly base: string
  readonly kind: Listed
}

/** Whether a row clears a word. */
export const isFine = (kind: Listed): kind is 'fit' | 'only-listed' => kind === 'fit' || kind === 'only-listed'

// Two endings deep: gunners → gunner → gun. A word that can come from a fit base is fit: priced is from price, not from
// a rude word.
function findBase(word: string, findListed: (word: string) => Listed | undefined, depth: number): Found | undefined {
  const kind = findListed(word)
  if (kind !== undefined) return { base: word, kind }
  if (depth === 0) return undefined
  const found = [...toBases(word).map(({ base }) => base), ...toUndoubled(word)]
    .map((base) => findBase(base, findListed, depth - 1))
    .filter((one) => one !== undefined)
  return found.find(({ kind }) => isFine(kind)) ?? found[0]
}

// Words of two syllables double their last letter too, where the stress asks for it: kidnapping, abetted. Which do is not
// told by letters, and a list that shuts words out had better know one too many.
function toUndoubled(word: string): readonly string[] {
  const stem = /^(.*([bdgklmnprtvz]))\2(?:ed|er|ing)$/.exec(word)?.[1]
  return stem === undefined ? [] : [stem]
}
