// Which noun senses a picture can show: WordNet's own classes, and the branches of its tree that are seen although they
// count as abstract.

import { type Branch, toOffsets } from './branches.ts'
import type { Sense, Synset, WordNet } from './wordnet.ts'

/** Lexicographer files whose senses can be seen. */
const SEEN_FILES: ReadonlySet<string> = new Set([
  'animal',
  'artifact',
  'body',
  'food',
  'object',
  'person',
  'plant',
  'shape',
  'substance',
])

/** Branches outside those files that can be seen: lemma, number of its noun sense from 1, reason. Sorted. */
export const SEEN_BRANCHES = [
  ['animal group', 1, 'a flock, a herd: many animals at once'],
  ['anniversary', 1, 'a birthday is drawn with its cake'],
  ['atmospheric phenomenon', 1, 'weather: rain, snow, wind, fog'],
  ['cloud', 1, 'clouds, fog and mist'],
  ['currency', 1, 'coins and notes'],
  ['dancing', 1, 'people who dance'],
  ['game', 2, 'people who play a game with rules'],
  ['gathering', 1, 'people in one place: a party, a class, a crowd'],
  ['gift', 1, 'a present in its paper'],
  ['holiday', 2, 'a feast day is drawn with its tree or its flags'],
  ['matter', 3, 'things, stuff'],
  ['money', 1, 'coins and notes'],
  ['musical composition', 1, 'people who sing or play'],
  ['season', 1, 'Christmas and other feast times'],
  ['season', 2, 'a time of year is drawn by its trees and weather'],
  ['sport', 1, 'people who play'],
  ['text', 1, 'a page with writing on it: a letter, a note'],
  ['whole', 2, 'things and living things'],
  ['written symbol', 1, 'a letter, a figure, an arrow'],
] as const satisfies readonly Branch[]

/**
 * How much of a word's use must be seen senses. Each sense counts its tags and one more, so that untagged words count
 * too.
 */
const SEEN_SHARE = 0.25

/** How much of the seen use must be things for a thing to be put into a box: `mug` is a face and a person too. */
const THING_SHARE = 0.3

/** A word is mostly a doing word when its verb is used this many times as often as its noun. */
const MOSTLY_DOING = 5

/** Things below these in the tree are none that a hand can hold, nor a toy of one. Lemma, noun sense, reason. Sorted. */
export const UNHELD_BRANCHES = [
  ['area', 5, 'rooms, yards and halls'],
  ['beverage', 1, 'drinks run'],
  ['condiment', 1, 'stuff that is spread or strewn'],
  ['drug', 1, 'medicine is no toy'],
  ['establishment', 4, 'shops and houses with people at work'],
  ['fabric', 1, 'stuff by the yard'],
  ['facility', 1, 'airports, stadiums, pipelines'],
  ['meal', 1, 'breakfast and dinner'],
  ['opening', 10, 'holes'],
  ['system', 1, 'many things at once'],
  ['tree', 1, 'a toy tree is a tree, no elm'],
  ['way', 6, 'roads and passages'],
  ['wood', 1, 'the stuff of a tree'],
] as const satisfies readonly Branch[]

const THING_FILES: ReadonlySet<string> = new Set(['animal', 'artifact', 'food', 'plant'])

/** What can be shown of a word: nothing, a picture, or a thing (or a toy of it) that could stand in a box as well. */
export type Nameable = 'no' | 'picture' | 'object'

export interface Showable {
  /** @param isKnown whether small children know the word, from word lists: a second meaning counts for those. */
  nameable(noun: string, isKnown: boolean): Nameable
  /** Whether the first meaning of the noun is an animal, a plant, food or a made thing, and was met in use. */
  isThing(noun: string): boolean
}

/** Reads the branches once; then a call walks a few hypernyms. */
export function openShowable(wordnet: WordNet): Showable {
  const roots = toOffsets(SEEN_BRANCHES, wordnet)
  const unheld = toOffsets(UNHELD_BRANCHES, wordnet)
  const days = new Set(wordnet.senses('day', 'noun').map((sense) => sense.offset))
  const noun = (offset: number): Synset => wordnet.synset('noun', offset)

  const isBelow = (offset: number, tops: ReadonlySet<number>): boolean =>
    tops.has(offset) || noun(offset).pointers.some((p) => p.symbol.startsWith('@') && isBelow(p.offset, tops))
  const isSeen = (sense: Sense): boolean => {
    if (SEEN_FILES.has(sense.lexFile) || isBelow(sense.offset, roots)) return true
    // Morning and night are parts of the day: the light in the picture shows them.
    return noun(sense.offset).pointers.some((p) => p.symbol === '#p' && days.has(p.offset))
  }
  // Below them, not the heads themselves: a toy tree is a tree.
  const isHeld = (sense: Sense): boolean =>
    isThing(sense) && !noun(sense.offset).pointers.some((p) => p.symbol.startsWith('@') && isBelow(p.offset, unheld))
  return {
    nameable: (lemma, isKnown) => nameable(wordnet, isSeen, isHeld, lemma, isKnown),
    isThing: (lemma) =>
      wordnet
        .senses(lemma, 'noun')
        .slice(0, 1)
        .some((sense) => sense.tags > 0 && isThing(sense)),
  }
}

function nameable(
  wordnet: WordNet,
  isSeen: (sense: Sense) => boolean,
  isHeld: (sense: Sense) => boolean,
  lemma: string,
  isKnown: boolean,
): Nameable {
  const { noun, verb } = wordnet.posOf(lemma)
  const senses = wordnet.senses(lemma, 'noun')
  // Of a word that is mostly a doing word only a thing counts: `saw`, but not the bend called `turn`.
  const isDoing = verb.tags > MOSTLY_DOING * noun.tags
  const seen = senses.filter((sense) => isSeen(sense) && (!isDoing || isThing(sense)))
  const [first] = seen
  if (first === undefined) return 'no'
  const [mostUsed, second] = senses
  const isShown =
    first === mostUsed ||
    toWeight(seen) >= SEEN_SHARE * toWeight(senses) ||
    (isKnown && first === second && first.tags > 0 && isThing(first))
  if (!isShown) return 'no'
  return toWeight(seen.filter(isHeld)) >= THING_SHARE * toWeight(seen) ? 'object' : 'picture'
}

// A toy or a model can stand for an animal or a house; there is none for weather, or for a day.
function isThing(sense: Sense): boolean {
  return THING_FILES.has(sense.lexFile)
}

function toWeight(senses: readonly Sense[]): number {
  return senses.reduce((sum, sense) => sum + sense.tags + 1, 0)
}
