// Lists of words as programs read them: plain lines, CSV, JSON.

import { type FoundWord, toLetterPattern, toSoundPattern } from '../finder/index.ts'
import { isCut, type WordBank } from './bank.ts'
import { OBJECT_CAUTION } from './caution.ts'
import { toCsv } from './csv.ts'
import { hasCaution, type WordList } from './word-list.ts'

/** Raised when a field changes its meaning or goes; new fields may come without it. */
const WORDS_SCHEMA = 1

/** One word a line; of pairs, both on one line. */
export const toWordsPlain = ({ words, pairs, as }: WordList): string =>
  as === 'contrast'
    ? pairs.map((pair) => `${pair.map(({ word }) => word).join(' ')}\n`).join('')
    : [...new Set(words.map(({ word }) => `${word}\n`))].join('')

const COLUMNS = [
  'word',
  'kind',
  'by heart',
  'readable at',
  'letters',
  'syllables',
  'sound pattern',
  'letter pattern',
  'spellings',
  'picture',
  'object',
  'known',
  'as picture',
  'as object',
  'note',
] as const

/**
 * A header, then a row for each word. Of pairs, a last column numbers the pair of each word.
 */
export function toWordsCsv({ words, pairs, as }: WordList): string {
  const pairOf = new Map(pairs.flatMap((pair, at) => pair.map((found) => [found, String(at + 1)] as const)))
  const isPaired = as === 'contrast'
  const rows = words.map((found) => {
    const { readableAt, correspondences, ...cells } = toWordFields(found)
    const { word, kind, sight, letters, syllables, pattern, lettersPattern, picture, object, known } = cells
    const { asPicture, asObject, note } = cells
    return [
      word,
      kind,
      toYes(sight),
      readableAt ?? '',
      letters,
      syllables,
      pattern,
      lettersPattern,
      correspondences.join(' '),
      toYes(picture),
      toYes(object),
      known,
      asPicture ?? '',
      asObject ?? '',
      note ?? '',
      ...(isPaired ? [pairOf.get(found) ?? ''] : []),
    ]
  })
  return toCsv([[...COLUMNS, ...(isPaired ? ['pair'] : [])], ...rows])
}

const toYes = (value: boolean): string => (value ? 'yes' : 'no')

/** A plain value, described by schemas/words.schema.json. */
export function toWordsJson(list: WordList): unknown {
  return {
    schema: WORDS_SCHEMA,
    as: list.as,
    sequence: list.sequence.name,
    step: list.step.id,
    accent: list.accent,
    reader: list.reader,
    words:
      list.bank === null ? list.words.map((found) => ({ ...toWordFields(found), part: null })) : toBankWords(list.bank),
    pairs: list.pairs.map((pair) => pair.map(({ word }) => word)),
    more: list.more,
    relaxed: list.relaxed,
    caution: hasCaution(list) ? OBJECT_CAUTION : null,
    bank: list.bank === null ? null : { endings: list.bank.endings, names: list.bank.names, cut: isCut(list.bank) },
  }
}

/** A word stands once in each part that it belongs to. */
const toBankWords = ({ parts }: WordBank): unknown[] =>
  parts.flatMap(({ kind, words }) => words.map((found) => ({ ...toWordFields(found), part: kind })))

function toWordFields({ word, kind, isSight, readableAt, facts, pronunciation, shown }: FoundWord) {
  return {
    word,
    kind,
    sight: isSight,
    readableAt,
    letters: word.replace(/[^a-z]/gi, '').length,
    syllables: pronunciation.syllables,
    pattern: toSoundPattern(pronunciation),
    lettersPattern: toLetterPattern(word),
    correspondences: pronunciation.units.filter(({ kind }) => kind !== 'silent').map(({ key }) => key),
    picture: shown === undefined ? facts.nameable !== 'no' : shown.picture !== 'no',
    object: shown !== undefined && shown.object !== 'no',
    known: facts.known,
    asPicture: shown?.picture ?? null,
    asObject: shown?.object ?? null,
    note: shown?.note || null,
  }
}
