// Builds the compiled table of word facts, in the order of the lexicon's words.

import { toBytes } from '../../src/words/bytes.ts'
import { packFacts, type WordFacts } from '../../src/words/facts.ts'
import type { Fitness } from '../../src/words/fitness.ts'
import { type Inflection, toBases } from '../../src/words/inflect.ts'
import { isLittleWord } from '../../src/words/little.ts'
import type { ChildWords } from './children.ts'
import { findKnown, isMade } from './forms.ts'
import { isMostlyName } from './names.ts'
import type { Nameable, Showable } from './showable.ts'
import { findUses, type Use } from './word-class.ts'
import type { WordNet } from './wordnet.ts'

/** What the build asks about words. */
export interface WordSources {
  readonly wordnet: WordNet
  readonly showable: Showable
  readonly children: ChildWords
  readonly fitness: Fitness
}

/** A noun use that is this much rarer than the main use is not what a picture calls up. */
const LEAST_NOUN_SHARE = 0.2

const NOT_LISTED = 31
const STEPS_PER_DOUBLING = 1.9

/** Facts of one lower-case word. */
export function findFacts(word: string, sources: WordSources): WordFacts {
  const { children, fitness, wordnet } = sources
  const uses = findUses(word, wordnet, children)
  // What is a name or no word to people is left as a word that no list has.
  const isListed = !isName(word, uses, sources) && isMade(word, uses, sources)
  const rank = isListed ? children.rank(word) : undefined
  return {
    partsOfSpeech: [...new Set(uses.map((use) => use.part))],
    main: uses[0]?.part,
    inflection: uses[0]?.inflection ?? 'none',
    nameable: findNameable(uses, sources),
    known: uses.length === 0 || !isListed ? 0 : findKnown(word, uses, sources),
    fit: fitness.isFit(word),
    rarity:
      rank === undefined ? NOT_LISTED : Math.min(NOT_LISTED - 1, Math.floor(STEPS_PER_DOUBLING * Math.log2(rank))),
  }
}

// A form of a name is one: `sundays`. A form of a word is none, though there is a name like it: `queens`, `drew`.
function isName(word: string, uses: readonly Use[], { wordnet, children }: WordSources): boolean {
  if (isLittleWord(word) || !children.isCapital(word)) return false
  const isMostly = (one: string): boolean => isMostlyName(one, wordnet, children)
  const [main] = uses
  if (main !== undefined && FORMS_OF_WORDS.has(main.inflection) && main.weight >= 1) return isMostly(main.base)
  return isMostly(word) || toBases(word).some(({ base }) => isMostly(base))
}

const FORMS_OF_WORDS: ReadonlySet<Inflection> = new Set<Inflection>(['plural', 'third', 'past', 'participle', 'ing'])

// `hop` and `red` have a noun each, but a picture of one is read as something else.
function findNameable(uses: readonly Use[], { children, showable }: WordSources): Nameable {
  const noun = uses.find((use) => use.part === 'noun')
  const main = uses.find((use) => use.part !== 'little')
  if (noun === undefined || main === undefined) return 'no'
  const isMostlyNoun = noun.weight >= LEAST_NOUN_SHARE * main.weight || showable.isThing(noun.base)
  const found = isMostlyNoun ? showable.nameable(noun.base, children.knownGrade(noun.base) >= 2) : 'no'
  // Nobody looks into a box for a `short` or a `young`.
  const isThing = noun === main || main.part === 'verb'
  return found === 'object' && !isThing ? 'picture' : found
}

/** @param facts in the order of the lexicon's words. */
export function buildWordFacts(facts: readonly WordFacts[]): Uint8Array {
  const packed = facts.map(packFacts)
  const counts = new Map<number, number>()
  for (const bits of packed) counts.set(bits, (counts.get(bits) ?? 0) + 1)
  const different = [...counts].sort((a, b) => b[1] - a[1] || a[0] - b[0]).map(([bits]) => bits)
  if (different.length > 0xffff) throw new RangeError('too many different word facts for two bytes a word')
  const numbers = new Map(different.map((bits, id) => [bits, id]))
  const head = toBytes([different.length, ...different, packed.length])
  const bytes = new Uint8Array(head.length + 2 * packed.length)
  bytes.set(head)
  packed.forEach((bits, i) => {
    const id = numbers.get(bits) ?? 0
    bytes.set([id & 0xff, id >> 8], head.length + 2 * i)
  })
  return bytes
}
