// Lists of words as people and programs read them.

import {
  type FoundWord,
  type Pair,
  type Relaxed,
  type ShowAs,
  toLetterPattern,
  toSoundPattern,
} from '../finder/index.ts'
import { isCut, toBankLines, type WordBank } from './bank.ts'
import { OBJECT_CAUTION } from './caution.ts'
import { toCsv } from './csv.ts'
import type { Paint } from './paint.ts'
import { toShownLines } from './shown-words.ts'
import { toStepName } from './step.ts'
import { pad, toColumnCount, wrap } from './text.ts'

/** Raised when a field changes its meaning or goes; new fields may come without it. */
const WORDS_SCHEMA = 1

/** What was asked and what was found: the one record from which every output is made. */
export interface WordList {
  readonly as: 'list' | 'box' | 'contrast' | 'mixed' | 'sheet'
  readonly sequence: { readonly name: string; readonly title: string }
  readonly step: { readonly id: string; readonly title: string }
  readonly accent: string
  /** The name of the reader, where a reader's file was given. */
  readonly reader: string | null
  readonly words: readonly FoundWord[]
  /** Of `contrast`: the words two by two. */
  readonly pairs: readonly Pair[]
  /** Whether more words fit than were asked for. */
  readonly more: boolean
  readonly relaxed: readonly Relaxed[]
  /** Whether small objects are listed. */
  readonly hasObjects: boolean
  /** Whether a set holds every word that fits, so that no rule of the set has kept one out. */
  readonly isAll: boolean
  /** As what the words are to be shown, where that was asked for. */
  readonly showAs: ShowAs | null
  /** What a set that came out empty could be instead. */
  readonly instead: string | null
  /** Of `sheet`: the words by part, and what else can be used. */
  readonly bank: WordBank | null
  /** Spellings asked for that the reader has not been taught, each with the step that teaches it. */
  readonly untaught: readonly { readonly spelling: string; readonly step: string | undefined }[]
}

export interface WordsView {
  /** Columns. */
  readonly width: number
  readonly paint: Paint
}

const RELAXED: Readonly<Record<Relaxed, string>> = {
  letters: 'Some letters that look a little alike, such as m and n, could not be kept apart.',
  first: 'Some words begin with the same letter.',
  fewer: 'No more words fit together: letters that look alike, such as b and d, are kept apart.',
}

const MORE = 'There are more: --count all shows them.'
const MORE_IN_SET = 'A child says each of these at first sight. For others that need a word from you: --count 6.'

const MORE_SUCH = 'For more of them: --count 6.'

const isFine = ({ words, showAs }: WordList): boolean =>
  words.every(({ shown }) => showAs !== null && shown?.[showAs] === 'fine')

/** In place of `fewer`, where no rule of the set has kept a word out. */
const ALL = 'These are all the words that fit.'

export function toWordsText(list: WordList, view: WordsView): string {
  const body =
    list.bank !== null
      ? toBankLines(list.bank, view)
      : list.as === 'contrast'
        ? toPairLines(list)
        : toListLines(list, view)
  const lines = [
    ...toHead(list, view),
    '',
    ...(list.words.length === 0 ? toNothing(list, view) : body),
    ...toNotes(list, view),
  ]
  return `${lines.join('\n').trimEnd()}\n`
}

function toHead({ sequence, step, reader, as }: WordList, { width, paint }: WordsView): string[] {
  const who = reader === null ? '' : `${reader}, `
  const what = {
    list: 'Words to read',
    box: 'A box of words',
    contrast: 'Pairs of words',
    mixed: 'A box of mixed vowels',
    sheet: 'A word bank for writing',
  }[as]
  return wrap(`${what}: ${who}step ${toStepName(step)} of ${sequence.title}`, width).map((line) => paint.strong(line))
}

function toNothing(list: WordList, { width }: WordsView): string[] {
  return wrap(toNothingLine(list), width)
}

function toNothingLine({ as, untaught, showAs, instead }: WordList): string {
  if (instead !== null) return instead
  const hint = untaught.length > 0 ? '' : ' Ask for less at once, or for a later step.'
  if (as === 'contrast') return `No pair of words that can be read at this step fits.${hint}`
  const what = { object: 'small object', picture: 'picture' }
  return showAs === null
    ? `No word that can be read at this step fits.${hint}`
    : `No word that can be read at this step and fits can be shown as a ${what[showAs]}.${hint}`
}

/** `ai` is taught at step green-2. */
const toUntaughtLines = ({ untaught, sequence }: WordList): string[] =>
  untaught.map(({ spelling, step }) =>
    step === undefined
      ? `\`${spelling}\` is taught at no step of ${sequence.title}.`
      : `\`${spelling}\` is taught at step ${step}.`,
  )

/** What a person must know of a list of which a format prints the words alone. */
export const toWordsAside = (list: WordList, format: 'plain' | 'csv' | 'json'): string[] => [
  ...(list.words.length === 0 ? toUntaughtLines(list) : []),
  ...(list.words.length === 0 && list.showAs !== null ? [toNothingLine(list)] : []),
  ...(format === 'plain' && list.as !== 'list' ? toShownLines(list) : []),
  ...(hasCaution(list) && format !== 'json' ? [`Caution: ${OBJECT_CAUTION}`] : []),
]

/** No caution over nothing. */
const hasCaution = ({ hasObjects, words }: WordList): boolean => hasObjects && words.length > 0

function toListLines({ words }: WordList, { width, paint }: WordsView): string[] {
  const sounded = words.filter(({ isSight }) => !isSight)
  const byHeart = words.filter(({ isSight }) => isSight).map(({ word }) => word)
  return [
    ...toGrid(
      sounded.map(({ word }) => word),
      width,
    ),
    ...(byHeart.length > 0 && sounded.length > 0 ? [''] : []),
    ...(byHeart.length > 0
      ? wrap(`Known by heart: ${byHeart.join(', ')}`, width).map((line) => paint.quiet(line))
      : []),
  ]
}

const toPairLines = ({ pairs }: WordList): string[] => {
  const wide = Math.max(...pairs.map(([{ word }]) => toColumnCount(word)))
  return pairs.map(([one, other]) => `${pad(one.word, wide, 'left')}  ${other.word}`)
}

function toNotes(list: WordList, { width, paint }: WordsView): string[] {
  const { relaxed, more, as, words, isAll } = list
  const notes = [
    ...toUntaughtLines(list),
    ...toShownLines(list),
    ...(words.length === 0 ? [] : relaxed.map((rule) => (rule === 'fewer' && isAll ? ALL : RELAXED[rule]))),
    ...(more && as === 'list' ? [MORE] : []),
    ...(more && (as === 'box' || as === 'mixed') ? [isFine(list) ? MORE_IN_SET : MORE_SUCH] : []),
    ...(hasCaution(list) ? [`Caution: ${OBJECT_CAUTION}`] : []),
  ]
  return notes.flatMap((note) => ['', ...wrap(note, width).map((line) => paint.quiet(line))])
}

/** Words in columns of one width, read line by line. */
function toGrid(words: readonly string[], width: number): string[] {
  const wide = Math.max(0, ...words.map(toColumnCount)) + 2
  const across = Math.max(1, Math.floor((width + 2) / wide))
  const lines: string[] = []
  for (let at = 0; at < words.length; at += across) {
    lines.push(
      words
        .slice(at, at + across)
        .map((word) => pad(word, wide, 'left'))
        .join('')
        .trimEnd(),
    )
  }
  return lines
}

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
