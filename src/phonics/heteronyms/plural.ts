// What a plural right before a heteronym makes of it: its verb.

import { type Clue, FINITE, hasObject, OPENERS } from './clue.ts'
import { isEdge, type Place } from './place.ts'
import { isPresent } from './verbs.ts'
import * as is from './vocabulary.ts'
import { has } from './vocabulary.ts'

/** No verb and no small word that ends in an s. */
function isBehindPlural({ words, index }: Place): boolean {
  const before = words[index - 1] ?? ''
  const isSmall = [is.ADVERBS, is.BE, is.HAVE, is.MODALS].some((group) => has(group, before)) || isPresent(before)
  return has(is.PLURALS, before) || (is.looksPlural(before) && !isSmall)
}

/** `the voice that grown-ups use`, `where the giants live`: behind a plural that opens a clause. */
export const behindOpener: Clue = (place, inflected) => {
  if (inflected || !isBehindPlural(place)) return undefined
  const [after, second] = [place.words[place.index + 1], place.words[place.index - 2]]
  const opens =
    has(is.CLAUSE_OPENERS, second) || (second === 'the' && has(is.CLAUSE_OPENERS, place.words[place.index - 3]))
  const closes = [is.PREPOSITIONS, is.CLAUSE_JOINS, is.BE].some((group) => has(group, after))
  const ends = isEdge(after) || hasObject(place) || closes
  return opens && ends ? FINITE : undefined
}

const MANY_OR_THE = is.words('the my your our their his her its all these those some many most two three')
/** Can stand behind the thing that they describe: `The children present, and the others too`. */
const POSTPOSED = is.words('close content live present')

/** `Clams close their shells`, `The puppets bow, and …`: behind a plural that begins a sentence. */
export const first: Clue = (place, inflected) => {
  if (inflected || !isBehindPlural(place)) return undefined
  const [word, after] = [place.words[place.index], place.words[place.index + 1]]
  const start = place.words[place.index - (has(MANY_OR_THE, place.words[place.index - 2]) ? 3 : 2)]
  if (start !== undefined && !has(OPENERS, start)) return undefined
  if (has(is.POSSESSIVES, after)) return FINITE
  return !has(POSTPOSED, word) && (after === 'the' || after === 'a' || isEdge(after)) ? FINITE : undefined
}
