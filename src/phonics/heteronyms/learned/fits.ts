// Whether what the model holds likely can stand there at all: it weighs signs, and knows no grammar.

import { hasObject, hasSureObject } from '../clue.ts'
import { isAloneThing, isUnderHelper } from '../one-thing.ts'
import { isEdge, isMark, isName, isTitle, type Place } from '../place.ts'
import { isMadeAdjective } from '../things.ts'
import { type Heteronym, isInflected } from '../types.ts'
import { LEADING, needsObject } from '../valency.ts'
import { isVerbal } from '../verbs.ts'
import * as is from '../vocabulary.ts'

/** A form that is a verb and something else fits anywhere. */
export function fits({ word, forms }: Heteronym, place: Place, name: string): boolean {
  const classes = forms.find(({ form }) => form === name)?.classes ?? []
  if (classes.includes('noun') && !classes.includes('verb')) return isInflected(word) || !isOrder(place)
  if (classes.join() !== 'verb') return true
  if (isInName(place)) return false
  const isDescribed = isMadeAdjective(place.words[place.index - 1])
  return isInflected(word) ? !isDescribed : !(isDescribed && !hasObject(place)) && !isBehindOne(place)
}

const LEADS: ReadonlySet<string> = new Set(['a', 'an', 'the', 'that', 'this'])

/** `the Hill Lane Survey`, `its Hill Lane graduates`: one name, or whose. */
function isInName(place: Place): boolean {
  const { words, index } = place
  if (!isName(place, index - 1)) return false
  let at = index - 2
  while (isName(place, at)) at--
  // `the Green Street house the twins liked`, and not `did the Tansy Lane twins house it`
  const isPlace =
    at < index - 2 && is.has(LEADS, words[at]) && !is.looksPlural(words[index - 1]) && !isUnderHelper(place)
  if (isPlace && !isInflected(words[index] ?? '')) return true
  return is.POSSESSIVES.has(words[at] ?? '') || (isName(place, index) && !isTitle(place))
}

/** `Transport passengers to the moon`: the first word of a sentence that has no verb; `subject yourselves to it`. */
function isOrder(place: Place): boolean {
  const { words, index } = place
  if (hasSureObject(place)) return true
  const [word = '', after = ''] = [words[index], words[index + 1]]
  const isFirst = !words.slice(0, index).some((one) => !isMark(one))
  if (!isFirst || !needsObject(word) || isEdge(after) || /[a-z]ing$/.test(after)) return false
  return !words.slice(index + 1).some(isVerbal)
}

/** `slows down food transport a lot`: how much, and not what. */
const isALot = ({ words, index }: Place): boolean =>
  words[index + 1] === 'a' && /^(?:bit|little|lot)$/.test(words[index + 2] ?? '') && isEdge(words[index + 3])

/** `the wage increase helped`, `the Cuban rebel`, `hope, joy and progress`: behind one thing, or what describes one, stands no bare verb. */
function isBehindOne(place: Place): boolean {
  const { words, index } = place
  // `hope, joy and progress`, `a feast and protest march`
  const isLeading = is.has(is.DETERMINERS, words[index - 3]) && is.has(LEADING, words[index])
  const isJoined = (words[index - 1] === 'and' || words[index - 1] === 'or') && (isEdge(words[index + 1]) || isLeading)
  const listed = isJoined && words[index - 2] === ',' ? 3 : 2
  const at = isJoined ? index - listed : index - 1
  // `for all of us to enjoy and use`
  if ((hasObject(place) && !isALot(place)) || (isJoined && words[at - 1] === 'to')) return false
  const isPair = words[at - 1] === 'and' && (isName(place, at - 2) || isMark(words[at - 3]))
  if (isName(place, at)) return !isJoined && !isPair && !is.looksPlural(words[at]) && !isUnderHelper(place)
  return isAloneThing(place, at)
}
