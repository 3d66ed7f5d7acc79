// Lists of words as people read them.

import type { Relaxed } from '../finder/index.ts'
import { toBankLines } from './bank.ts'
import { OBJECT_CAUTION } from './caution.ts'
import type { Paint } from './paint.ts'
import { toShownLines } from './shown-words.ts'
import { toStepName } from './step.ts'
import { pad, toColumnCount, wrap } from './text.ts'
import { hasCaution, type WordList } from './word-list.ts'

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
