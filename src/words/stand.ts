// Whether a word can stand at a place by grammar alone: article, neighbours, and what has no plural and no `a`.

import { hasLetter } from '../letter-kinds.ts'
import { MASS } from './mass.ts'
import type { StandIn } from './stand-ins.ts'
import {
  DETERMINERS,
  type FactsOf,
  isAfterBe,
  isAfterDegree,
  isAfterLink,
  isDetermined,
  isEdge,
  mayStandAs,
  nextOf,
  OBJECTS,
  prevOf,
  type Surroundings,
  toSet,
} from './surroundings.ts'
import type { WordUse } from './use.ts'

/** What one can be without `a`: `he is king`. */
const ROLES: ReadonlySet<string> = new Set(['boss', 'head', 'king'])

/** `a kin`, `a happy kin`: the last word before it that opens its phrase. */
const isAfterArticle = ({ before }: Surroundings): boolean =>
  /^an?$/.test(before.slice(-3).findLast((word) => DETERMINERS.has(word)) ?? '')

/** `big and big`: the same once more. */
const isJoinedTo = (text: string, { before, after }: Surroundings): boolean =>
  (/^(?:and|or|,)$/.test(before.at(-1) ?? '') && before.at(-2) === text) ||
  (/^(?:and|or|,)$/.test(after[0] ?? '') && after[1] === text)

/** What somebody takes, has or makes without taking anything: `took no notice`, `gave a cry`. */
const DONE =
  /^(?:a?part|attention|bath|birth|break|breath|bow|care|chance|cry|cover|ease|energy|fun|heart|hold|kiss|life|look|notice|note|part|photo|picture|place|pity|rest|root|seat|sense|shape|shelter|shower|smile|time|trouble|turn|turns|walk|way)s?$/

/** Whether the word and what follows say one thing together, so that no other word can take its part. */
function isPhrase({ after }: Surroundings): boolean {
  const end = after.findIndex((word) => !hasLetter(word))
  const near = after.slice(0, end < 0 ? 3 : Math.min(end, 3))
  return near.some(
    (word, at) =>
      DONE.test(word) &&
      (at === 0 ||
        /^(?:an?|any|big|deep|good|her|his|long|my|no|our|short|some|the|their|your)$/.test(near[at - 1] ?? '')),
  )
}

/** `all their work`, `some work`: there is no `some job`. */
const isStuffWanted = ({ before }: Surroundings): boolean =>
  /^(?:all|enough|more|most|much|some)$/.test(before.at(-1) ?? '') ||
  (before.at(-2) === 'all' && DETERMINERS.has(before.at(-1) ?? ''))

/** After these `of` may follow: `afraid of him`. */
const OF = /(?:^|\b)(?:afraid|fond|full|scared|sick|tired)$/

/** What follows a describing word goes with just that word: `pleased with him`; and there is no `more big`. */
function canDescribe(text: string, place: Surroundings): boolean {
  const [prev, next] = [prevOf(place) ?? '', nextOf(place) ?? '']
  // `a perfect hat` is no `a best hat`.
  if (/^an?$/.test(prev) && /^(?:best|most|worst)$|[a-z]{2}est$/.test(text)) return false
  // `cross with him`, `mad at him`
  if (/^(?:at|with)$/.test(next) && /^(?:cross|mad)$/.test(text)) return true
  if (/^(?:at|by|with)$/.test(next)) return !isAfterLink(place)
  if (next === 'of') return OF.test(text)
  return !/^(?:least|less|more|most)$/.test(prev) || /[aeiouy]+[^aeiouy]+[aeiouy]/.test(text)
}

/** A doing word and a little one that say one thing together: `look after` is not to look. The project's own list, no source. */
const PAIRS: readonly (readonly [string, string])[] = [
  ['came come comes coming', 'about across along around over true'],
  ['gave give given gives giving', 'away birth in out up'],
  ['look looked looking looks', 'after forward like out'],
  ['broke break breaks breaking broken', 'down in into out up'],
  ['call called calling calls', 'for in off on'],
  ['carried carries carry carrying', 'on out'],
  ['fall fallen falling falls fell', 'apart asleep for in out over'],
  ['hold holding holds held', 'back on out up'],
  ['make makes making made', 'for fun off out sure up'],
  ['pick picked picking picks', 'on out up'],
  ['run ran running runs', 'after into out over'],
  ['stand standing stands stood', 'by for out'],
  ['take taken takes taking took', 'after care off on out over part place turns up'],
  ['turn turned turning turns', 'down off on out over to'],
  ['work worked working works', 'on out'],
]

const FOLLOWERS: ReadonlyMap<string, ReadonlySet<string>> = new Map(
  PAIRS.flatMap(([words, followers]) => {
    const set = toSet(followers)
    return words.split(' ').map((word) => [word, set] as const)
  }),
)

const isPair = (word: string, next: string | undefined): boolean =>
  next !== undefined && FOLLOWERS.get(word)?.has(next) === true

/** Whether a doing word and what follows say one thing, so that nothing can stand for the word alone. */
export const isBound = (word: string, { part }: WordUse, place: Surroundings): boolean =>
  part === 'verb' && (isPair(word, nextOf(place)) || isPhrase(place))

/** Somebody is spoken to: `Come, friend, sit.`, `“Son,” he said` */
const isCalled = ({ before, after }: Surroundings): boolean =>
  (isEdge(before.at(-1)) || /^(?:bye|dear|goodbye|hello|hey|hi|thanks)$/.test(before.at(-1) ?? '')) &&
  /^[,!?.]$/.test(after[0] ?? '')

/** `Ben's mother milks the cow`: what follows is a deed, though most often it is a thing. */
const isDoneBy = (place: Surroundings, factsOf: FactsOf): boolean => {
  const facts = factsOf(nextOf(place) ?? '')
  return (
    facts?.inflection === 'plural' &&
    facts.partsOfSpeech.includes('verb') &&
    (DETERMINERS.has(place.after[1] ?? '') || OBJECTS.has(place.after[1] ?? ''))
  )
}

/** Says nothing of meaning. `isPlaced`: the table says where it stands, so that no article is asked for. */
export type StandTest = (standIn: Pick<StandIn, 'text' | 'words'>, isPlaced?: boolean) => boolean

const NEVER: StandTest = () => false

/** What of a place holds for all words is asked once. */
export function createStandTest(use: WordUse, place: Surroundings, factsOf: FactsOf): StandTest {
  const { part } = use
  const prev = prevOf(place)
  const next = nextOf(place)
  if (!mayStandAs(part, place)) return NEVER
  // `the only pleasure` is no `the just pleasure`, `a very big hen` no `a so big hen`.
  if (part === 'adverb' && prev !== undefined && DETERMINERS.has(prev)) return NEVER
  const canBe = part === 'noun' ? createNounTest(use, place, factsOf) : undefined
  if (canBe === NEVER) return NEVER
  return (standIn, isPlaced) => {
    const { text, words } = standIn
    const first = words[0]
    if (first === prev || words.at(-1) === next || isJoinedTo(text, place)) return false
    // `very not big`.
    if (first === 'not' && isAfterDegree(place)) return false
    // `as soon as`; an owner with nothing but an apostrophe: `her parents' house`.
    if (words.length > 1 && ((prev === 'as' && next === 'as') || next === "'")) return false
    if (canBe !== undefined) return canBe(standIn, isPlaced)
    return part !== 'adjective' || canDescribe(text, place)
  }
}

function createNounTest({ inflection }: WordUse, place: Surroundings, factsOf: FactsOf): StandTest {
  const next = nextOf(place)
  // The first half of a name for a thing: `garden wall`.
  if (next !== undefined && next !== 'home' && factsOf(next)?.main === 'noun' && !isDoneBy(place, factsOf)) return NEVER
  if (inflection !== 'none')
    return ({ words }) =>
      inflection !== 'plural' || words.includes('and') || !MASS.has((words.at(-1) ?? '').replace(/s$/, ''))
  const isAddressed = isCalled(place)
  const isStuff = isStuffWanted(place)
  const hasDeterminer = isDetermined(place, factsOf)
  return ({ text, words }, isPlaced) => {
    if (isPlaced || isAddressed) return true
    const last = words.at(-1) ?? ''
    if (isStuff && !MASS.has(last)) return false
    if (/^(?:an?|the) /.test(text)) return !hasDeterminer
    if (hasDeterminer) return !(MASS.has(last) && isAfterArticle(place))
    return MASS.has(last) || (isAfterBe(place) && ROLES.has(last))
  }
}
