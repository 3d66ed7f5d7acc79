// Conditions of the table of stand-ins that ask who does it or to whom: a living being after the word, the one that was named last before it.

import { hasLetter } from '../letter-kinds.ts'
import {
  DETERMINERS,
  endsClause,
  type FactsOf,
  isMark,
  OBJECTS,
  opensObject,
  PREPOSITIONS,
  type Surroundings,
  toSet,
} from './surroundings.ts'
import { headOf, type PlaceTest } from './where.ts'

/** Who is met in children's stories. Sorted; the project's own list, no source. */
const LIVING = toSet(
  'animal animals aunt baby bear bears beast bird birds boy boys brother brothers builder builders bull cat cats child children cow cows crab crocodile dad daddy daughter deer doctor dog dogs donkey dragon driver duck ducks eagle elephant elephants fairy family farmer farmers father fish fox friend friends frog frogs giant girl girls gnome goat goats goose gran grandfather grandma grandmother grandpa granny guard guards hen hens horse horses hunter hyena king kitten kittens lady leopard lion lions man master men mice mole monkey monkeys mother mouse mum mummy neighbour neighbours owl ox pal parents people pig pigs pirate prince princess puppy queen rabbit rabbits rat rats robot shark sheep sister sisters snake snakes soldier soldiers son spider stranger teacher thief tiger toad tortoise troll turtle uncle vet wife witch wizard wolf woman women',
)
/** Whether it names a living being, that a story may call so with a capital: `Lion`, `the Chief`. */
export const isBeing = (word: string): boolean => LIVING.has(word) || word === 'chief'

const HE = toSet('boy brother dad father grandad grandfather grandpa he his him husband king man uncle')
const SHE = toSet('aunt girl gran grandma grandmother granny her lady mother mum queen she sister wife woman')
const THEY = toSet('them they their')
const NAMERS = new Map<string, string>([
  ['i', 'I'],
  ['me', 'I'],
  ['my', 'I'],
  ...[...HE].map((word) => [word, 'He'] as const),
  ...[...SHE].map((word) => [word, 'She'] as const),
  ...[...THEY].map((word) => [word, 'They'] as const),
])

/** Whether the last one that was named before the place is spoken of so. */
const isSpokenOfAs =
  (who: string): PlaceTest =>
  ({ before }) =>
    NAMERS.get(before.findLast((word) => NAMERS.has(word)) ?? '') === who

/** A name, or a word that nobody lists. */
const isName = (word: string | undefined, factsOf: FactsOf): boolean =>
  word !== undefined &&
  word.length > 1 &&
  hasLetter(word) &&
  factsOf(word)?.main === undefined &&
  !DETERMINERS.has(word)

const isLiving: PlaceTest = (place, factsOf) =>
  OBJECTS.has(place.after[0] ?? '') || isName(place.after[0], factsOf) || LIVING.has(headOf(place, factsOf) ?? '')

/** A person or an animal, or who stands for one. */
const isByOne = (word: string | undefined, factsOf: FactsOf): boolean =>
  word !== undefined &&
  !isMark(word) &&
  (/^(?:he|i|she|they|to|we|who|you)$/.test(word) || LIVING.has(word) || isName(word, factsOf))

/** What stands after the one that it is done to. */
function afterOne(place: Surroundings, factsOf: FactsOf): readonly string[] {
  const head = headOf(place, factsOf) ?? place.after[0] ?? ''
  return place.after.slice(place.after.indexOf(head) + 1)
}

/** By their sign in the table. */
export const WHO: Readonly<Record<string, PlaceTest>> = {
  /** I, he, she or they were named last. */
  I: isSpokenOfAs('I'),
  He: isSpokenOfAs('He'),
  She: isSpokenOfAs('She'),
  They: isSpokenOfAs('They'),
  /** A living being after it that it is done to: `the lion`, `him`, `Ben`. */
  lv: isLiving,
  /** The same, and then `to`: `told the boy to go`. */
  lt: (place, factsOf) => isLiving(place, factsOf) && afterOne(place, factsOf)[0] === 'to',
  /** The same, and then the end of the clause, `to` or a place: `called his friends to come`. */
  Pe: (place, factsOf) => {
    const [next] = afterOne(place, factsOf)
    return isLiving(place, factsOf) && (next === 'to' || endsClause(next) || PREPOSITIONS.has(next ?? ''))
  },
  /** The same, and then `up`: `woke him up`. */
  Pu: (place, factsOf) => isLiving(place, factsOf) && afterOne(place, factsOf)[0] === 'up',
  /** The same, and then what that one does: `watched the boy go`. */
  bv: (place, factsOf) => {
    const facts = factsOf(afterOne(place, factsOf)[0] ?? '')
    return isLiving(place, factsOf) && facts?.main === 'verb' && facts.inflection === 'none'
  },
  /** The same, and then what is given: `gave the boy a hat`. */
  lx: (place, factsOf) =>
    isByOne(place.before.at(-1), factsOf) &&
    isLiving(place, factsOf) &&
    !/^(?:her|you|us)$/.test(place.after[0] ?? '') &&
    opensObject(afterOne(place, factsOf)[0], factsOf) &&
    !OBJECTS.has(afterOne(place, factsOf)[0] ?? ''),
  /** One that does it before it: `the boy`, `he`, a name. */
  dr: ({ before }, factsOf) => {
    const prev = before.at(-1)
    if (prev === undefined || isMark(prev)) return false
    if (/^(?:he|i|it|she|who)$/.test(prev) || isName(prev, factsOf)) return true
    const facts = factsOf(prev)
    return facts?.main === 'noun' && facts.inflection === 'none'
  },
  /** A name after it, and no `oh` before it: `dear Ben`. */
  vn: ({ before, after }, factsOf) => isName(after[0], factsOf) && before.at(-1) !== 'oh',
}
