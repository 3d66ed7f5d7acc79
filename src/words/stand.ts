// Whether a word can stand at a place by grammar alone: article, neighbours, and what has no plural and no `a`.

import {
  DETERMINERS,
  type FactsOf,
  isAfterBe,
  isDetermined,
  mayStandAs,
  nextOf,
  prevOf,
  type Surroundings,
} from './surroundings.ts'
import type { WordUse } from './use.ts'

/** Naming words of stuff and the like, which stand without `a`: `had fun`. Sorted; the project's own judgement. */
const MASS: ReadonlySet<string> = new Set(
  'bed cash class corn dad damage dinner dirt dust eat fire fog food football fun gold grain gran grandad grandma grass grief ham harm hay home joy junk kin land lots luck lunch meat milk mom mud mum noon paper prison rain risk rubbish sand school sickness snow soil sun supper water wind wood work'.split(
    ' ',
  ),
)

/** What one can be without `a`: `he is king`. */
const ROLES: ReadonlySet<string> = new Set(['boss', 'head', 'king'])

/** `a kin`, `a happy kin`: the last word before it that opens its phrase. */
const isAfterArticle = ({ before }: Surroundings): boolean =>
  /^an?$/.test(before.slice(-3).findLast((word) => DETERMINERS.has(word)) ?? '')

/** `big and big`: the same once more. */
const isJoinedTo = (text: string, { before, after }: Surroundings): boolean =>
  (/^(?:and|or|,)$/.test(before.at(-1) ?? '') && before.at(-2) === text) ||
  (/^(?:and|or|,)$/.test(after[0] ?? '') && after[1] === text)

/** Says nothing of meaning. */
export function canStand(text: string, use: WordUse, place: Surroundings, factsOf: FactsOf): boolean {
  const words = text.split(' ')
  const [first = '', last = ''] = [words[0], words.at(-1)]
  const [prev, next] = [prevOf(place), nextOf(place)]
  if (first === prev || last === next || isJoinedTo(text, place)) return false
  if (!mayStandAs(use.part, place)) return false
  // `the only pleasure` is no `the just pleasure`, `a very big hen` no `a so big hen`.
  if (use.part === 'adverb' && prev !== undefined && DETERMINERS.has(prev)) return false
  // An owner with nothing but an apostrophe: `her parents' house`.
  if (next === "'" && words.length > 1) return false
  if (use.part !== 'noun') return true
  // The first half of a name for a thing: `garden wall`.
  if (next !== undefined && factsOf(next)?.main === 'noun') return false
  if (use.inflection !== 'none')
    return use.inflection !== 'plural' || words.includes('and') || !MASS.has(last.replace(/s$/, ''))
  if (/^an? /.test(text)) return !isDetermined(place, factsOf)
  if (isDetermined(place, factsOf)) return !(isAfterArticle(place) && MASS.has(last))
  return MASS.has(last) || (isAfterBe(place) && ROLES.has(last))
}
