// Where a word of the table of stand-ins can stand or go, as the table writes it: signs of conditions and words next to the place, joined by +.

import { DETERMINERS, type FactsOf, isMark, nextOf, prevOf, type Surroundings } from './surroundings.ts'

export type PlaceTest = (place: Surroundings, factsOf: FactsOf) => boolean

/**
 * `be+e` asks both signs, `!A` that the sign does not hold. `<fell,off`: one of these words stands right before, `>to`: right after,
 * `=fire,lamp`: what opens after the word is about one of these, `a big red lamp`.
 *
 * @throws RangeError for a sign that the table of conditions lacks
 */
export function toPlaceTest(where: string, signs: Readonly<Record<string, PlaceTest>>): PlaceTest {
  const tests = where.split('+').map((part) => toOne(part, signs))
  const [only] = tests
  if (only !== undefined && tests.length === 1) return only
  return (place, factsOf) => tests.every((test) => test(place, factsOf))
}

function toOne(part: string, signs: Readonly<Record<string, PlaceTest>>): PlaceTest {
  const rest = part.slice(1)
  if (part.startsWith('!')) {
    const test = toOne(rest, signs)
    return (place, factsOf) => !test(place, factsOf)
  }
  const words = (): ReadonlySet<string | undefined> => new Set(rest.split(','))
  if (part.startsWith('<')) {
    const wanted = words()
    return (place) => wanted.has(prevOf(place))
  }
  if (part.startsWith('>')) {
    const wanted = words()
    return (place) => wanted.has(nextOf(place))
  }
  if (part.startsWith('~')) {
    const wanted = words()
    return ({ after }) => after.slice(0, FAR).some((word) => wanted.has(word))
  }
  if (part.startsWith('=')) {
    const wanted = words()
    return (place, factsOf) => wanted.has(headOf(place, factsOf))
  }
  const sign = Object.hasOwn(signs, part) ? signs[part] : undefined
  if (sign === undefined) throw new RangeError(`no condition is called ${part}`)
  return sign
}

/** How many words and marks after the place are not far. */
const FAR = 6

/** How many words may open and describe a thing before it is named. */
const MOST_BEFORE_HEAD = 4

/** What the phrase after the place is about: `lamp` of `a big red lamp`, and of `the oil lamp`. */
export function headOf({ after }: Surroundings, factsOf: FactsOf): string | undefined {
  let head: string | undefined
  for (const word of after.slice(0, MOST_BEFORE_HEAD)) {
    if (isMark(word)) break
    const main = factsOf(word)?.main
    if (main === 'noun') head = word
    else if (head !== undefined) break
    else if (main !== 'adjective' && !DETERMINERS.has(word) && !/'s$/.test(word)) break
  }
  return head
}
