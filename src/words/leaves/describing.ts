// Where a sentence does without a word that describes or counts a thing, or says how much.

import type { WordFacts } from '../facts.ts'
import { MASS } from '../mass.ts'
import { DEGREES, DETERMINERS, endsClause, nextOf, PREPOSITIONS, prevOf, SUBJECTS } from '../surroundings.ts'
import type { PlaceTest } from '../where.ts'
import { HELPS, isMeasured, isNegated } from './shared.ts'

/** After these a describing word cannot go, or what is left says something else: `no new hat`, `which old hat`. */
const HOLDS = /^(?:as|how|no|only|other|same|such|too|what|which|and|or|but)$/

/** With these the word before says one thing: `paper bag` is a bag, `paper work` no work of paper. */
const WHOLE =
  /^(?:bank|bar|bed|bird|clip|fish|girl|boy|house|hall|man|mine|plane|room|sitter|teeth|tooth|woman|wood|work|yard)s?$/

const isPlural = (facts: WordFacts | undefined): boolean => facts?.main === 'noun' && facts.inflection === 'plural'

const TIMES = /^(?:ago|day|days|evening|morning|night|time|times|way|week|while|year|years)$/

export const DESCRIBING: Readonly<Record<string, PlaceTest>> = {
  /** A describing word before its thing: `the old man`. */
  ad: (place, factsOf) => {
    const [prev, next] = [prevOf(place), nextOf(place)]
    const second = factsOf(next ?? '')
    // `a shiny blue hat`
    const thing = second === undefined || second.main === 'adjective' ? factsOf(place.after[1] ?? '') : second
    if (TIMES.test(next ?? '')) return false
    if (thing?.main !== 'noun' || (prev !== undefined && (HOLDS.test(prev) || isMeasured(prev) || prev === ',')))
      return false
    if (/^an?$/.test(prev ?? '') && MASS.has(next ?? '')) return false
    const isLed =
      prev !== undefined && (DETERMINERS.has(prev) || /'s$/.test(prev) || factsOf(prev)?.main === 'adjective')
    return isLed || isPlural(thing)
  },
  /** `all` before what is named, or after it: `all the men`, `ate it all`. */
  al: ({ before, after }, factsOf) => {
    const [prev, next] = [before.at(-1), after[0]]
    if (
      /^(?:after|at|from|in|not|of|once|that|with)$/.test(prev ?? '') ||
      /^(?:way|time|best|same)$/.test(after[1] ?? '')
    )
      return false
    if (/^(?:her|his|its|my|our|the|their|these|those|your)$/.test(next ?? '') || /'s$/.test(next ?? '')) return true
    if (/^(?:it|them|us)$/.test(prev ?? '')) return endsClause(next) || PREPOSITIONS.has(next ?? '')
    if (HELPS.test(prev ?? '')) return /^(?:they|we|you)$/.test(before.at(-2) ?? '')
    return /^(?:they|we|you)$/.test(prev ?? '') && factsOf(next ?? '')?.main === 'verb'
  },
  /** What a thing is made of or where it belongs, before it: `the clay pot`. */
  mo: (place, factsOf) => {
    const [prev, next] = [prevOf(place), nextOf(place)]
    if (prev === undefined || factsOf(next ?? '')?.main !== 'noun' || TIMES.test(next ?? '') || WHOLE.test(next ?? ''))
      return false
    return DETERMINERS.has(prev) || /'s$/.test(prev) || factsOf(prev)?.main === 'adjective'
  },
  /** Before things or stuff: `some buns`. */
  sm: ({ before, after }, factsOf) => {
    if (/^(?:of|the|not)$/.test(before.at(-1) ?? '')) return false
    const at = factsOf(after[0] ?? '')?.main === 'adjective' ? 1 : 0
    const word = after[at] ?? ''
    return isPlural(factsOf(word)) || MASS.has(word)
  },
  /** How much, before a describing word: `very big`. */
  dg: (place, factsOf) => {
    const [prev, next] = [prevOf(place), nextOf(place)]
    if (next === undefined || /^(?:last|many|much|own|same)$/.test(next)) return false
    if (isNegated(place) || DEGREES.has(prev ?? '') || prev === 'the') return false
    // `so big that`, `so that`.
    if (place.after.slice(0, 9).some((word) => word === 'that' || word === 'as')) return false
    const facts = factsOf(next)
    if (facts?.main === 'adjective' || facts?.main === 'adverb') return true
    return facts?.partsOfSpeech.includes('adjective') === true && endsClause(place.after[1])
  },
  /** The same of `so`, which may stand for `so that` with no `that`: only where nothing follows. */
  ds: (place, factsOf) =>
    DESCRIBING.dg?.(place, factsOf) === true &&
    endsClause(place.after[1]) &&
    !SUBJECTS.has(place.after[1] ?? '') &&
    !/^(?:as|that)$/.test(place.after[1] ?? '') &&
    !/^(?:did|do|does|if|said|say|think)$/.test(prevOf(place) ?? ''),
}
