// Whether a word that can be an abbreviation is one in its sentence: `the US`, `8 AM`, `Rev. Brown`, and not `LET US GO`.

import { startsWithCapital } from '../letter-kinds.ts'
import {
  ADVERBS,
  ALL_PREPOSITIONS,
  BE,
  CLAUSE_JOINS,
  DETERMINERS,
  has,
  LET,
  MAKE,
  MODALS,
  NUMBERS,
  OBJECT_STARTS,
  SENSE,
  SUBJECTS,
  words,
} from '../phonics/heteronyms/vocabulary.ts'
import type { Sentence, Word } from '../story/types.ts'
import { findPlaceSign } from '../verdict/index.ts'
import { isAllCapitals } from './likely-names.ts'
import { toParts } from './spoken-form.ts'

/** What stands right before and after: words, numerals and marks as written. */
interface Neighbours {
  readonly text: string
  readonly before: string | undefined
  readonly after: string | undefined
}

const SIGNS = {
  thing: (place) => isAfterDeterminer(place) || isBeforeThing(place),
  determiner: isAfterDeterminer,
  place: ({ before, after, text }) => has(ALL_PREPOSITIONS, before) && after !== text,
  'after number': ({ before }) => isNumber(before),
  'by number': ({ before, after }) => isNumeral(before) || isNumeral(after),
  'after name': ({ before = '' }) => before === '&' || before === 'and' || startsWithCapital(before),
  'before name': ({ after = '' }) => startsWithCapital(after),
} as const satisfies Record<string, (place: Neighbours) => boolean>

export function isAbbreviated(word: Word, sentence: Sentence): boolean {
  const sign = findPlaceSign(word.text)
  if (sign === undefined || (isAllCapitals(word.text) && !isAmidSmall(word, sentence))) return false
  const { parts, texts } = toParts(sentence)
  const at = parts.indexOf(word)
  // `Rev. Brown` is cut at its stop, which ends no sentence.
  const next = texts[at + 1] === '.' ? at + 2 : at + 1
  return SIGNS[sign]({ text: word.text, before: texts[at - 1], after: texts[next] })
}

/** Another word of the sentence has small letters, so that capitals mean something. */
const isAmidSmall = (word: Word, sentence: Sentence): boolean =>
  sentence.words.some((one) => one !== word && one.form === 'word' && one.text !== 'I' && !isAllCapitals(one.text))

const isNumeral = (text: string | undefined): boolean => text !== undefined && /^\d/.test(text)

const isNumber = (text: string | undefined): boolean => isNumeral(text) || text === 'one' || has(NUMBERS, text)

function isAfterDeterminer({ before }: Neighbours): boolean {
  return has(DETERMINERS, before?.toLowerCase())
}

/** `US kids`, and not `gave US a bun`, `gave US cake`, `let US go`. */
const isBeforeThing = ({ before, after }: Neighbours): boolean =>
  after !== undefined &&
  /^\p{L}/u.test(after) &&
  !isAllCapitals(after) &&
  !LITTLE.some((group) => has(group, after.toLowerCase())) &&
  !PRONOUN_FOLLOWS.some((group) => has(group, before?.toLowerCase()))

/** Little words, which no noun is among. */
const LITTLE = [ADVERBS, ALL_PREPOSITIONS, BE, CLAUSE_JOINS, MODALS, OBJECT_STARTS, SUBJECTS]

/** Somebody gets something by these. */
const GIVE: ReadonlySet<string> = words(
  'baked bring brings brought cooked fed feed feeds gave give given gives giving hand handed hands lend lent offer offered owe owed pass passed promise ' +
    'promised show showed shows tell telling tells told',
)
/** After these and a pronoun stands a verb, or a thing. */
const PRONOUN_FOLLOWS = [GIVE, LET, MAKE, SENSE]
