// Finds up to five words that can stand where a child cannot read one: of the same part of speech and form, and near in
// meaning. Better none than one that does not fit.

import { type Candidates, createCandidates, type SuggestSources } from './candidates.ts'
import { CONDITIONS } from './conditions.ts'
import type { WordFacts } from './facts.ts'
import { keep } from './keep.ts'
import { canGo } from './leaving-out.ts'
import { toCaseOf } from './letter-case.ts'
import { findNature, type Nature } from './nature.ts'
import { canStand, isBound } from './stand.ts'
import type { StandIn } from './stand-ins.ts'
import { isAfterBe, isMark, NOWHERE, nextOf, prevOf, SUBJECTS, type Surroundings } from './surroundings.ts'
import { findUse, type WordUse } from './use.ts'

/** The word to replace, and where it stands. */
export interface Wanted {
  /** As written: `Boats`. */
  readonly word: string
  readonly place?: Surroundings
  /** Where it is known; otherwise what the words around it tell. */
  readonly use?: WordUse
}

export interface Suggester {
  /** At most five, best first, in the case of the word; several words for one: `got up`. */
  suggest(wanted: Wanted): readonly string[]
  /** Whether the sentence does without the word. */
  canGo(wanted: Wanted): boolean
}

const MOST = 5

export function createSuggester(sources: SuggestSources): Suggester {
  const candidates = createCandidates(sources)
  const tools: Tools = {
    ...sources,
    candidates,
    natureOf: keep((written) => findNature(written, candidates, sources.data)),
  }
  return {
    suggest: ({ word, place = NOWHERE, use }) => findOffers(word, place, use, tools),
    canGo: ({ word, place = NOWHERE, use }) => canGoHere(word, place, use, tools),
  }
}

function canGoHere(written: string, place: Surroundings, given: WordUse | undefined, tools: Tools): boolean {
  const { whole, way, owner } = tools.natureOf(written)
  if (owner !== '') return false
  const { factsOf } = tools.candidates
  const facts = way === 'replaced' ? factsOf(whole) : undefined
  const use = facts && (given ?? findUse(whole, facts, place, factsOf))
  // What only stands before a thing describes it, though the sentence does not tell what else it might be.
  const part = use?.part ?? (facts?.main === 'adjective' ? facts.main : undefined)
  return canGo({ word: whole, part, place }, tools.data.standIns, factsOf)
}

interface Tools extends SuggestSources {
  readonly candidates: Candidates
  readonly natureOf: (written: string) => Nature
}

function findOffers(written: string, place: Surroundings, given: WordUse | undefined, tools: Tools): string[] {
  const { whole, way, stem, owner } = tools.natureOf(written)
  const { factsOf } = tools.candidates
  if (way === 'written-out') return writeOut(written, whole, place, tools)
  if (way === 'as-it-is') return findAsItIs(whole, place, tools).map((text) => toCaseOf(written, text))
  const facts = way === 'none' ? undefined : factsOf(stem)
  if (facts === undefined) return []
  const use = owner === '' ? (given ?? findUse(stem, facts, place, factsOf)) : toOwner(facts)
  if (use === undefined || use.part === 'little' || isBound(stem, use, place)) return []
  const offers: string[] = []
  const end = owner === '' ? place : { ...place, after: [] }
  for (const text of fromTable(stem, use, place, tools)) {
    if (offers.length === MOST) break
    const offer = toCaseOf(written, withOwner(text, owner))
    if (!offers.includes(offer) && text !== stem && canStand(text, use, end, factsOf)) offers.push(offer)
  }
  return offers
}

/** What stands in the table for just this form and can stand here. */
function findAsItIs(word: string, place: Surroundings, tools: Tools): string[] {
  const [prev, next] = [prevOf(place), nextOf(place)]
  return tools.candidates
    .asItIs(word)
    .filter((standIn) => holds(standIn, place, tools))
    .map(({ text }) => text)
    .filter((text) => {
      const parts = text.split(' ')
      return parts[0] !== prev && parts.at(-1) !== next
    })
}

const holds = ({ where }: StandIn, place: Surroundings, { candidates }: Tools): boolean =>
  where === undefined || CONDITIONS[where]?.(place, candidates.factsOf) === true

/** What is acted on stands before it, `he was chased`, so that only what acts on something can stand here. */
const isPassive = ({ part, inflection }: WordUse, place: Surroundings): boolean =>
  part === 'verb' && inflection === 'participle' && isAfterBe(place)

/** Right after what somebody says only saying stands: `“No!” thought Ann.` */
const isAfterSpeech = ({ before }: Surroundings): boolean => {
  const last = before.at(-1)
  if (last !== '"') return before.length > 1 && (last === '”' || last === '»')
  // An even number of plain marks: the last one closes.
  return before.filter((word) => word === '"').length % 2 === 0
}

/** One word, or one with where to: `was put up`; not `was run after`. */
const actsAlone = ({ text, where }: StandIn): boolean =>
  (where === undefined || where === 'o' || where === 'P') &&
  /^(?!get|got|ha[ds]|have|having|let)[^ ]+(?: (?:away|back|down|in|off|out|up))?$/.test(text)

/** `didn't` → `did not`; not where a question turns the two words round: `didn't he`. */
function writeOut(written: string, word: string, place: Surroundings, tools: Tools): string[] {
  if (SUBJECTS.has(nextOf(place) ?? '')) return []
  // `Don't these men …?`
  if (/n't$/.test(word) && place.before.every(isMark) && place.after.includes('?')) return []
  return findAsItIs(word, place, tools)
    .map((text) => toCaseOf(written, text))
    .slice(0, 1)
}

/** `children's` is said of several. */
const toOwner = ({ inflection }: WordFacts): WordUse => ({
  part: 'noun',
  inflection: inflection === 'plural' ? 'plural' : 'none',
})

/** `kids'`, `men's`, `boss's`. */
const withOwner = (text: string, owner: string): string =>
  owner !== '' && /[^s]s$/.test(text) ? `${text}'` : text + owner

const fromTable = (word: string, use: WordUse, place: Surroundings, tools: Tools): string[] =>
  tools.candidates
    .listed(word, use)
    .filter((standIn) => (isPassive(use, place) ? actsAlone(standIn) : holds(standIn, place, tools)))
    .filter(({ where }) => where === 'q' || use.part !== 'verb' || !isAfterSpeech(place))
    .map(({ text }) => text)
