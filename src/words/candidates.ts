// Words that a child can read and that could stand for a word in one use, whatever its sentence: found once for each use.

import type { WordFacts } from './facts.ts'
import type { Fitness } from './fitness.ts'
import { type Inflection, toBases, toForm } from './inflect.ts'
import { keep } from './keep.ts'
import type { StandIn, StandIns } from './stand-ins.ts'
import type { FactsOf } from './surroundings.ts'
import type { WordUse } from './use.ts'
import type { WordData } from './word-data.ts'

/** The lexicon's words in order: all that is needed of it here. */
export interface WordOrder {
  /** Place of a lower-case word, or −1. */
  indexOf(word: string): number
}

export interface SuggestSources {
  readonly data: Pick<WordData, 'facts' | 'standIns'>
  readonly lexicon: WordOrder
  readonly fitness: Pick<Fitness, 'mayStandFor'>
  /** Whether the child can read the lower-case word. */
  isReadable(word: string): boolean
}

export interface Candidates {
  readonly factsOf: FactsOf
  /** What the table says of just this form. */
  asItIs(word: string): readonly StandIn[]
  /** What the table says of a word, in the form that is wanted. */
  listed(word: string, use: WordUse): readonly StandIn[]
}

export function createCandidates(sources: SuggestSources): Candidates {
  const { data, lexicon } = sources
  const tools: Tools = { ...sources, mayStandFor: keep(sources.fitness.mayStandFor) }
  const factsOf: FactsOf = (word) => {
    const index = lexicon.indexOf(word)
    const facts = index < 0 ? undefined : data.facts.factsAt(index)
    return facts ? withJudged(word, facts, data.standIns) : toUnlisted(word, data.standIns)
  }
  const listed = keep((): Listed[] => [])
  return {
    factsOf: keep(factsOf),
    asItIs: keep((word) => data.standIns.find(word, 'form').filter((standIn) => canBeRead(standIn, tools))),
    listed(word, use) {
      const known = listed(word)
      const before = known.find(({ part, inflection }) => part === use.part && inflection === use.inflection)
      if (before !== undefined) return before.standIns
      const standIns = findListed(word, use, tools)
      known.push({ ...use, standIns })
      return standIns
    },
  }
}

/** A word is used in two or three ways. */
interface Listed extends WordUse {
  readonly standIns: readonly StandIn[]
}

interface Tools extends SuggestSources {
  readonly mayStandFor: (word: string) => boolean
}

/** `kind` is more than a naming word: so says the table, where the dictionary knows one part only. */
function withJudged(word: string, facts: WordFacts, standIns: StandIns): WordFacts {
  const isNounOnly = facts.main === 'noun' && facts.partsOfSpeech.length === 1 && facts.inflection === 'none'
  if (!isNounOnly) return facts
  const more = (['adjective', 'verb'] as const).filter((part) => standIns.find(word, part).length > 0)
  return more.length === 0 ? facts : { ...facts, partsOfSpeech: [...facts.partsOfSpeech, ...more] }
}

/** What the table tells of a word that the dictionary lacks: `herdsman`. */
function toUnlisted(word: string, standIns: StandIns): WordFacts | undefined {
  const part = (['noun', 'adjective', 'verb'] as const).find((one) => standIns.find(word, one).length > 0)
  if (part === undefined) return undefined
  return { partsOfSpeech: [part], main: part, inflection: 'none', nameable: 'no', known: 0, fit: true, rarity: 31 }
}

const canBeRead = ({ text, words }: StandIn, { isReadable, mayStandFor }: Tools): boolean =>
  text !== '' && words.every((word) => isReadable(word) && mayStandFor(word))

/** In the form that is wanted, those that can be read. */
function findListed(word: string, use: WordUse, tools: Tools): readonly StandIn[] {
  const { standIns } = tools.data
  const found = toOwnBases(word, use).flatMap((base) => standIns.find(base, use.part))
  const listed: StandIn[] = []
  for (const standIn of standIns.find(word, 'form'))
    if (canBeRead(standIn, tools)) listed.push({ ...standIn, ofForm: true })
  for (const base of found) {
    const form = inflect(base, use)
    if (canBeRead(form, tools) && (use.inflection === 'plural' || isListedForm(form, base, tools))) listed.push(form)
  }
  return listed
}

/** `wee` has no `weest`: a form that nobody lists is no word. */
function isListedForm(form: StandIn, base: StandIn, { lexicon }: Tools): boolean {
  return form.words.every((word, i) => word === base.words[i] || lexicon.indexOf(word) >= 0)
}

/** Of several doing words the first is inflected, of others the last: `got up`, `bad men`. */
export function inflect(standIn: StandIn, { part, inflection }: WordUse): StandIn {
  if (inflection === 'none') return standIn
  // Its forms are those of another meaning: less and least.
  if (standIn.text === 'little') return { ...standIn, text: '' }
  const at = part === 'verb' ? 0 : standIn.words.length - 1
  const words = standIn.words.map((word, i) => (i === at ? toForm(word, inflection) : word))
  return { text: words.join(' '), words, where: standIn.where, test: standIn.test }
}

function toOwnBases(word: string, { inflection }: WordUse): string[] {
  if (inflection === 'none') return [word]
  const bases = toBases(word).filter((one) => isSameForm(one.inflection, inflection))
  return [...new Set(bases.map(({ base }) => base))]
}

// The past and the participle are one form of most words.
function isSameForm(a: Inflection, b: Inflection): boolean {
  const name = (inflection: Inflection): Inflection => (inflection === 'participle' ? 'past' : inflection)
  return name(a) === name(b)
}
