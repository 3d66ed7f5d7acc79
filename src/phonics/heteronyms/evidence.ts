// What the small words round a heteronym say about its class, without a tagger.
//
// Each clue looks at one thing and answers with the classes that it leaves open, or undefined. The first answer counts, so
// the clues stand from the surest to the weakest.

import * as amounts from './amounts.ts'
import * as bare from './bare.ts'
import * as clauses from './clauses.ts'
import * as closeLive from './close-live.ts'
import {
  type Classes,
  type Clue,
  FINITE,
  hasCountedObject,
  hasObject,
  hasSureObject,
  NOMINAL,
  OPENERS,
  PREDICATE,
} from './clue.ts'
import * as governed from './governed.ts'
import * as joined from './joined.ts'
import * as longSubject from './long-subject.ts'
import * as minute from './minute.ts'
import * as namedBefore from './named-before.ts'
import { findBefore, isMark, isName, isTitle, type Place } from './place.ts'
import * as plural from './plural.ts'
import { isSpoken } from './speech.ts'
import * as things from './things.ts'
import { DESCRIBING } from './valency.ts'
import * as is from './vocabulary.ts'
import { has } from './vocabulary.ts'

export type { Classes } from './clue.ts'

/** `whatever excuses his men made`, and `whatever excuses his deed`. */
const WHAT: ReadonlySet<string> = new Set('what whatever which whichever'.split(' '))
const isDemonstrative = (word = ''): boolean => /^(?:this|that|which)$/.test(word)

/** `only compounds the trouble`, `just upsets her`: between a small adverb and an object stands a verb; `reasons, and not excuses`. */
const adverb: Clue = (place, inflected) => {
  if (!inflected || !has(is.ADVERBS, place.words[place.index - 1])) return undefined
  return place.words[place.index - 1] === 'not' ? ['noun'] : hasObject(place) ? ['verb'] : undefined
}

/** `is close`, `was read`, `are records of it`; after `there is` a noun; after `all they do is` a verb, if anything. */
const copula: Clue = (place, inflected) => {
  if (!has(is.BE, findBefore(place))) return undefined
  const second = findBefore(place, 2)
  if (second === 'do' || second === 'does' || second === 'did') return hasObject(place) ? ['verb'] : undefined
  return inflected || second === 'there' || findBefore(place) === "there's" ? NOMINAL : PREDICATE
}

/** `I use`, `they read`, `she reads`, `he wound`; not `brought to you live`. */
const subject: Clue = (place, inflected) => {
  const [before, second] = [findBefore(place), findBefore(place, 2)]
  if (second === 'to' || has(is.PREPOSITIONS, second)) return undefined
  if (has(is.SINGULAR_SUBJECTS, before)) return inflected ? ['verb'] : ['past']
  if (inflected) return before === 'who' || (isDemonstrative(before) && hasObject(place)) ? ['verb'] : undefined
  return has(is.PLURAL_SUBJECTS, before) || before === 'who' ? FINITE : undefined
}

/** `Wind the wool`, `ran up and wound it`. */
const order: Clue = (place, inflected) => {
  const [before, after] = [findBefore(place), place.words[place.index + 1]]
  // `“I am lost,” read the note`
  const first = before === undefined || (has(OPENERS, before) && (before !== '"' || isSpoken(place.words, place.index)))
  if (!inflected && first && has(is.QUESTIONS, after)) return ['verb']
  if (inflected || !hasObject(place)) return undefined
  if (first) return ['verb']
  return isMark(before) || has(is.CLAUSE_STARTS, before) ? FINITE : undefined
}

/** `came close`, `looked content`; not `come read it`. */
const linking: Clue = (place, inflected) =>
  !inflected && has(is.LINKING, findBefore(place)) && !hasObject(place) ? ['adjective', 'adverb'] : undefined

/** `very close`, `too minute`, `grew so close`. */
const degree: Clue = (place) => {
  const [before, second, after] = [findBefore(place), findBefore(place, 2), place.words[place.index + 1]]
  const isBecome = has(is.BE, second) || has(is.GROW, second)
  // `so elaborate a costume`; not `I rather suspect he forgot`
  // `a song so elaborate that he forgot it`
  const isThat = after === 'that' && has(DESCRIBING, place.words[place.index]) && !isMark(second)
  const isSo = before === 'so' && (isBecome || after === 'a' || after === 'an' || isThat)
  const isRather = (before === 'rather' || before === 'quite') && !isBecome
  const takes = isRather && (hasObject(place) || has(is.SUBJECTS, after) || isName(place, place.index + 1))
  return isSo || (has(is.DEGREES, before) && !takes) ? ['adjective', 'adverb'] : undefined
}

/** `Gran attributes her long life to it`, `a warm bath contents the baby`: an object cannot follow a plural, but that of `what`. */
const beforeObject: Clue = (place, inflected) => {
  const after = place.words[place.index + 1]
  const isObject = has(is.POSSESSIVES, after) || after === 'the' || after === 'a' || after === 'an'
  const before = findBefore(place)
  if (inflected && (hasSureObject(place) || hasCountedObject(place))) return ['verb']
  // `What funny contrasts the two made!`, `with squeals and protests the pigs ran`
  const isNamed = [1, 2, 3].some((nth) => has(WHAT, findBefore(place, nth))) || before === 'and'
  return inflected && isObject && hasObject(place) && !isMark(before) && !isNamed ? ['verb'] : undefined
}

/** Who or what speaks and acts in a tale. */
const ACTORS: ReadonlySet<string> = is.words('dove wind')

/** `said Ant to Dove`, `then Wind blew`: written as a name is. */
const actor: Clue = (place) =>
  has(ACTORS, place.words[place.index]) && isName(place, place.index) && !isTitle(place) ? ['noun'] : undefined

const CLUES: readonly Clue[] = [
  actor,
  minute.time,
  minute.tiny,
  governed.infinitive,
  governed.inversion,
  governed.causative,
  governed.helper,
  governed.helped,
  governed.letLong,
  governed.relative,
  things.every,
  things.takenByOne,
  things.ledPair,
  things.behindWhich,
  things.joinedFirst,
  things.numbered,
  things.houseOf,
  governed.longInversion,
  governed.pluralInversion,
  closeLive.inverted,
  closeLive.shut,
  bare.threat,
  bare.lone,
  bare.behindSpeech,
  bare.ordered,
  bare.often,
  bare.nearlyFirst,
  clauses.bareInversion,
  clauses.inTime,
  clauses.inOpening,
  clauses.takenByPerson,
  clauses.personApart,
  clauses.joinedToPerson,
  clauses.firstMany,
  clauses.listed,
  clauses.afterDoing,
  clauses.lookedThrough,
  longSubject.growing,
  longSubject.behindPlace,
  namedBefore.relativePair,
  namedBefore.relativeMany,
  longSubject.onlyInThat,
  namedBefore.ofNamed,
  namedBefore.ofNamedByOne,
  namedBefore.alike,
  namedBefore.themselves,
  amounts.someOthers,
  amounts.asked,
  amounts.theOther,
  amounts.colours,
  amounts.pointed,
  amounts.anybody,
  amounts.useOfMany,
  amounts.counted,
  amounts.thereAre,
  amounts.given,
  amounts.quantity,
  amounts.relativePlural,
  adverb,
  things.determiner,
  things.adjective,
  bare.gerund,
  amounts.describedTwice,
  amounts.one,
  degree,
  things.preposition,
  copula,
  closeLive.placed,
  subject,
  plural.behindOpener,
  amounts.many,
  amounts.ofMany,
  plural.first,
  order,
  things.firstSubject,
  bare.firstPlural,
  things.beforeSingular,
  things.beforePlural,
  clauses.beforePast,
  things.behindOne,
  things.followedByOf,
  linking,
  things.afterVerb,
  joined.doneByPair,
  joined.afterPast,
  joined.takenByPast,
  joined.underHelper,
  joined.joinedPlural,
  joined.joinedUnderPreposition,
  joined.joinedBeforeObject,
  joined.joinedUnderHelper,
  beforeObject,
  things.behindOneThing,
  things.useOfThing,
]

/** The classes that the neighbours leave open; undefined where they say nothing. `inflected`: the word ends in its own -s. */
export function findClasses(place: Place, inflected: boolean): Classes | undefined {
  if (asked?.place !== place || asked.inflected !== inflected)
    asked = { place, inflected, classes: findFirst(place, inflected) }
  return asked.classes
}

/** The rules ask, then the model, then the tagger, all of one place. */
let asked: { readonly place: Place; readonly inflected: boolean; readonly classes: Classes | undefined } | undefined

function findFirst(place: Place, inflected: boolean): Classes | undefined {
  for (const clue of CLUES) {
    const classes = clue(place, inflected)
    if (classes) return classes
  }
  return undefined
}
