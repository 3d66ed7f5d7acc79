// How a sentence uses a word: as which part of speech, and in which inflected form.

import { hasLetter } from '../letter-kinds.ts'
import type { PartOfSpeech, WordFacts } from './facts.ts'
import { type Inflection, toBases } from './inflect.ts'
import {
  BEFORE_BASE,
  DEGREES,
  DETERMINERS,
  endsClause,
  type FactsOf,
  isAfterBe,
  isAfterDegree,
  isAfterHave,
  isAfterHelper,
  isAfterLink,
  isEdge,
  nextOf,
  OBJECTS,
  PARTICLES,
  PREPOSITIONS,
  prevOf,
  type Surroundings,
} from './surroundings.ts'

export interface WordUse {
  readonly part: PartOfSpeech
  readonly inflection: Inflection
}

/** Words after which a doing word stands, and those of them that take an -s on it. */
const DOERS: ReadonlySet<string> = new Set('he i it she they we who you'.split(' '))
const SINGLE: ReadonlySet<string> = new Set('he it she'.split(' '))

/** After these, `to` leads somewhere: `went to work`. */
const GOING = /^(?:back|came|come|comes|coming|drove|gets?|go|goes|going|gone|got|ran|rode|run|walk(?:ed|s)?|went)$/

/**
 * What the word is by itself and by the words around it; undefined where that does not tell: then no word can be put in
 * its place with any certainty.
 */
export function findUse(word: string, facts: WordFacts, place: Surroundings, factsOf: FactsOf): WordUse | undefined {
  const part = findPart(word, facts, place, factsOf)
  if (part === undefined) return undefined
  const use = toUse(word, part, facts)
  return part === 'verb' ? toVerbUse(word, use, place, factsOf) : use
}

/** All uses that a sentence could tell. */
export function toUses(word: string, { partsOfSpeech, inflection }: WordFacts): readonly WordUse[] {
  const forms = new Set<Inflection>([inflection, 'none', ...toBases(word).map((base) => base.inflection)])
  // The past and the participle of most verbs look alike.
  if (forms.has('past')) forms.add('participle')
  if (forms.has('participle')) forms.add('past')
  return partsOfSpeech.flatMap((part) =>
    [...forms]
      .filter((form) => form === 'none' || FORMS[part].includes(form))
      .map((form) => ({ part, inflection: form })),
  )
}

function findPart(word: string, facts: WordFacts, place: Surroundings, factsOf: FactsOf): PartOfSpeech | undefined {
  const { partsOfSpeech, main, inflection } = facts
  if (main === undefined || main === 'little') return main
  const open: readonly PartOfSpeech[] = partsOfSpeech.filter((part) => part !== 'little')
  if (open.length === 1) return main
  const can = (part: PartOfSpeech): PartOfSpeech | undefined => (open.includes(part) ? part : undefined)
  const [prev, next] = [prevOf(place), nextOf(place)]
  if (isGerund(word, place, factsOf)) return can('verb')
  if (DEGREES.has(word) && next !== undefined && factsOf(next)?.main === 'adjective') return can('adverb')
  const isLed = next !== undefined && leadsNoun(next, factsOf)
  const describing = (): PartOfSpeech | undefined =>
    can(isLed ? 'adjective' : 'noun') ?? can('noun') ?? can('adjective')
  // `went to visit him`, but `went to work`
  if (prev === 'to' && isAsked(next) && !PARTICLES.has(next ?? '') && can('verb') && inflection === 'none')
    return 'verb'
  if (prev === 'to' && GOING.test(place.before.at(-2) ?? '') && can('noun'))
    return main === 'noun' || (main === 'verb' && word !== 'work') ? main : undefined
  if ((isAfterHelper(place) || isLet(place, factsOf)) && inflection === 'none') return can('verb')
  if (main === 'noun' && next === 'of') return 'noun'
  if (prev === 'you' && isLed && can('adjective') && main !== 'verb') return 'adjective'
  if (prev !== undefined && DOERS.has(prev)) return can('verb')
  if (isAfterHave(place) && /^(?:past|participle)$/.test(inflection)) return can('verb')
  if (isAfterDegree(place)) return can('adjective') ?? can('adverb')
  if (prev !== undefined && (DETERMINERS.has(prev) || /'s$/.test(prev))) return describing()
  if (isAfterLink(place)) return inflection === 'ing' ? can('verb') : (can('adjective') ?? can('noun'))
  const before = prev === undefined ? undefined : factsOf(prev)
  if (before?.main === 'adjective' || (prev !== undefined && PREPOSITIONS.has(prev))) return describing()
  if (isDoneTo(word, next) && can('verb')) return 'verb'
  // `caused trouble for me`
  if (main === 'noun' && before?.main === 'verb' && (endsClause(next) || PREPOSITIONS.has(next ?? ''))) return 'noun'
  if (isLed && before?.partsOfSpeech.includes('adjective')) return can('adjective')
  // `Cook the rice.`, `Come in.`
  if (mayOpen(prev) && main === 'verb' && inflection === 'none' && isAsked(next)) return 'verb'
  if (isEdge(prev) && main === 'noun' && next !== undefined && isFiniteForm(factsOf(next))) return 'noun'
  // `Ben loves the cow`
  if (prev !== undefined && isNamed(prev, factsOf) && /^(?:past|third)$/.test(toUse(word, 'verb', facts).inflection)) {
    if (next !== undefined && (DETERMINERS.has(next) || OBJECTS.has(next)) && can('verb')) return 'verb'
  }
  // `her hands just touch the cloth`
  if (main === 'verb' && before?.main === 'adverb' && next !== undefined && DETERMINERS.has(next)) return 'verb'
  // After a name or a naming word, a form that only doing words have is one.
  if (main === 'verb' && inflection !== 'none' && inflection !== 'ing') return can('verb')
  if (open.length !== 2 || can('adverb') === undefined) return undefined
  // `worked hard`, and `far and wide`; but `big and strong`.
  const leader = prev === 'and' ? factsOf(place.before.at(-2) ?? '') : before
  if (main === 'adjective' && leader?.main === 'verb') return 'adverb'
  return main === 'adjective' && leader?.main === 'adverb' ? undefined : main
}

/** `let us look`, `made her laugh` */
const isLet = ({ before }: Surroundings, factsOf: FactsOf): boolean =>
  /^(?:help|helped|helps|let|lets|made|make|makes)$/.test(before.at(-2) ?? '') &&
  (OBJECTS.has(before.at(-1) ?? '') || isNamed(before.at(-1) ?? '', factsOf))

/** A form in -ed, and what it is done to or where to: `and hurried home`. */
const isDoneTo = (word: string, next: string | undefined): boolean => /[^e]ed$/.test(word) && isAsked(next)

/** Nothing before it, or what joins a clause: `hurry up and take it`. */
const mayOpen = (prev: string | undefined): boolean => isEdge(prev) || /^(?:and|but|or|please|then)$/.test(prev ?? '')

/** What follows a doing word by which somebody is asked: `Take the hat.` */
const isAsked = (next: string | undefined): boolean =>
  next !== undefined && (DETERMINERS.has(next) || OBJECTS.has(next) || PARTICLES.has(next))

/** A form that only says what somebody does or did: `gives`, `gave`. */
const isFiniteForm = (facts: WordFacts | undefined): boolean =>
  facts?.main === 'verb' && (facts.inflection === 'third' || facts.inflection === 'past')

/** After these a form in -ing says what is done: `stopped crying`. */
const ASPECTS =
  /^(?:began|begin|begins|busy|enjoy|enjoyed|enjoys|finish|finished|go|goes|going|hate|hated|keep|keeps|kept|like|liked|likes|love|loved|loves|start|started|starting|starts|stop|stopped|stops|went)$/

/** `for guarding the hut`, `stopped crying`, `fell down, scaring the men`. */
function isGerund(word: string, place: Surroundings, factsOf: FactsOf): boolean {
  if (!/[a-z]{2}ing$/.test(word)) return false
  const [prev, next] = [prevOf(place), nextOf(place)]
  if (prev !== undefined && ASPECTS.test(prev)) return true
  const isActing = next !== undefined && (DETERMINERS.has(next) || OBJECTS.has(next))
  const isLed = prev !== undefined && (PREPOSITIONS.has(prev) || prev === ',' || factsOf(prev)?.main === 'noun')
  if (isLed && isActing) return true
  // `heard her crying`, `a dog barking at me`
  const isOne = prev !== undefined && (/^(?:her|him|it|me|them|us|you)$/.test(prev) || isNamed(prev, factsOf))
  return isOne && factsOf(word)?.main !== 'noun' && (endsClause(next) || PREPOSITIONS.has(next ?? ''))
}

const isNamed = (word: string, factsOf: FactsOf): boolean => {
  const facts = factsOf(word)
  return hasLetter(word) && (facts === undefined || facts.main === undefined || facts.main === 'noun')
}

/** Whether a word opens what a describing word before it can describe. */
function leadsNoun(next: string, factsOf: FactsOf): boolean {
  const main = factsOf(next)?.main
  return main === 'noun' || main === 'adjective'
}

/** Past forms that look like the base, and participles that look like past forms, go by what stands before. */
function toVerbUse(word: string, use: WordUse, place: Surroundings, factsOf: FactsOf): WordUse | undefined {
  const isLed = isAfterHave(place) || isAfterBe(place)
  // `have come`: the participle of a few looks like the base.
  const isBaseToo = toBases(word).some(({ base, inflection }) => base === word && inflection === 'participle')
  if (isBaseToo && use.inflection === 'none' && isAfterHave(place)) return { part: 'verb', inflection: 'participle' }
  if (use.inflection === 'past' && isLed) return { part: 'verb', inflection: 'participle' }
  // `Took his walk.`: what does it is not said, and a participle would look the same.
  const prev = prevOf(place)
  const isFree = prev === undefined || !(hasLetter(prev) || /["”’']/.test(prev))
  // `The man, picking up his hat, rushed out.`
  const goesOn = prev === ',' && place.before.length > 3 && PARTICLES.has(nextOf(place) ?? '')
  if (use.inflection === 'past' && isFree && !goesOn) return undefined
  // `the visiting queen`: it describes.
  if (prev !== undefined && DETERMINERS.has(prev) && prev !== 'that') return undefined
  const isTwofold = toBases(word).some(({ base, inflection }) => base === word && inflection === 'past')
  if (!isTwofold || use.inflection !== 'none') return use
  if (isLed) return { part: 'verb', inflection: 'participle' }
  if (prev === undefined || BEFORE_BASE.has(prev)) return use
  return SINGLE.has(prev) || factsOf(prev)?.main === 'noun' ? { part: 'verb', inflection: 'past' } : undefined
}

/** The forms of each, beside the base. */
export const FORMS: Readonly<Record<PartOfSpeech, readonly Inflection[]>> = {
  noun: ['plural'],
  verb: ['third', 'past', 'participle', 'ing'],
  adjective: ['comparative', 'superlative'],
  adverb: ['comparative', 'superlative'],
  little: [],
}

/** The form of a part of speech that the word has, where it is not its main one: `runs` as a naming word is a plural. */
function toUse(word: string, part: PartOfSpeech, { main, inflection }: WordFacts): WordUse {
  if (part === main) return { part, inflection }
  if (inflection === 'none' && !(part === 'verb' && /[a-z]{2}(?:ing|[^e]ed)$/.test(word))) return { part, inflection }
  const found = toBases(word.toLowerCase()).find((base) => FORMS[part].includes(base.inflection))
  return { part, inflection: found?.inflection ?? 'none' }
}
