// Which words are printed: those that the finder finds, or those that the maker names.

import { resolve } from 'node:path'
import { DATA_FOLDER, loadLexicon } from '../../packaged/data.ts'
import { fail, type Result, succeed } from '../../problem/index.ts'
import { knowledgeAt, toSightKey, withReader } from '../../sequence/index.ts'
import { toShownFirst, type WordSheetKind } from '../../sheets/index.ts'
import { findReadableAt, judge } from '../../verdict/index.ts'
import { readTextFile } from '../files/read.ts'
import type { Io } from '../io.ts'
import type { FoundReader } from '../list-reader.ts'
import { makeList } from '../words/run.ts'
import type { PrintOptions } from './options.ts'

export interface WantedWords {
  readonly words: readonly string[]
  /** What the maker must know, one line each. */
  readonly notices: readonly string[]
  /** Whether small objects are meant. */
  readonly hasObjects: boolean
}

/** More would be a mistake of the keys: a printer would be at it for an hour. */
const MOST = 500

/** How many words each kind of sheet has where nobody says: one sheet, or two. */
const USUAL: Readonly<Record<WordSheetKind, number>> = {
  cards: 8,
  list: 8,
  sight: Infinity,
  slips: 8,
  tags: 16,
  wall: 12,
}

/** Cards and tags are for things; a slip says something to fetch or to do; a list has words of every kind. */
const KIND_OF_WORDS: Readonly<Record<WordSheetKind, { readonly picture?: true; readonly kind?: string }>> = {
  cards: { picture: true },
  list: {},
  sight: {},
  slips: { kind: 'naming,doing' },
  tags: { picture: true },
  wall: {},
}

export interface Want {
  readonly kind: WordSheetKind
  readonly options: PrintOptions
  readonly reader: FoundReader
  /** Whether a picture is there for a word: those come first where pictures are printed. */
  hasPicture(word: string): boolean
}

export async function findWanted(want: Want, io: Io): Promise<Result<WantedWords>> {
  const { kind, options } = want
  const found =
    options.words !== undefined || options.wordsFrom !== undefined
      ? findNamed(want, io)
      : kind === 'sight'
        ? findSight(want)
        : await findByWish(want, io)
  if (!found.ok) return found
  const { length } = found.value.words
  if (length === 0) return fail({ code: 'no-words', message: 'There is no word to print', note: toHint(want) })
  if (length > MOST)
    return fail({
      code: 'too-large',
      message: `These are ${length} words; at most ${MOST} are printed at once`,
      note: 'Ask for fewer with --count.',
    })
  return found
}

const toHint = ({ kind, options }: Want): string =>
  kind === 'sight'
    ? options.newAtStep
      ? 'This step brings no sight word. Without --new-at-step come all that are known by then.'
      : 'No sight word is taught up to this step.'
    : 'Ask for less at once, or for a later step.'

async function findByWish({ kind, options, reader, hasPicture }: Want, io: Io): Promise<Result<WantedWords>> {
  const wanted = options.count ?? String(options.set === undefined ? USUAL[kind] : 6)
  const number = wanted === 'all' ? Infinity : Number(wanted)
  if (!(number > 0))
    return fail({ code: 'bad-value', message: `--count is a number from 1 on, or all; this is \`${wanted}\`` })
  const asked = {
    ...options,
    ...(options.set === undefined ? { count: 'all' } : { count: wanted }),
    ...(options.kind === undefined ? KIND_OF_WORDS[kind] : {}),
    format: 'plain' as const,
    known: options.known ?? true,
  }
  const list = await makeList(asked, { ...reader, lexicon: loadLexicon(), folder: DATA_FOLDER, width: 80 }, io)
  if ('problem' in list) return fail({ code: 'bad-value', message: list.problem.replace(/\.$/, '') })
  // What is known by heart has cards of its own.
  const all = list.words.filter(({ isSight }) => !isSight).map(({ word }) => word)
  const isShown = kind === 'cards' && options.set === undefined
  const inOrder = isShown ? toShownFirst(all, hasPicture, options.count !== undefined) : all
  const notices = list.untaught.map(({ spelling, step }) =>
    step === undefined ? `\`${spelling}\` is taught at no step.` : `\`${spelling}\` is taught at step ${step}.`,
  )
  return succeed({ words: inOrder.slice(0, number), notices, hasObjects: list.hasObjects })
}

/** Sight words known at the step, the reader's own among them; with --new-at-step only those that the step brings. */
function findSight({ options, reader: { sequence, step, extra } }: Want): Result<WantedWords> {
  const known = knowledgeAt(sequence, step)
  const { sightWords } = extra === undefined ? known : withReader(known, extra)
  const at = sequence.steps.findIndex(({ id }) => id === step)
  const isNew = new Set(sequence.steps[at]?.adds.sightWords.map(toSightKey))
  const words = [...sightWords].filter((word) => !options.newAtStep || isNew.has(word))
  const count = options.count === undefined || options.count === 'all' ? Infinity : Number(options.count)
  return succeed({ words: words.slice(0, count), notices: [], hasObjects: false })
}

/** Printed as they are written; what cannot be read at the step is noticed, with the step that makes it readable. */
function findNamed({ options, reader }: Want, io: Io): Result<WantedWords> {
  const { wordsFrom } = options
  const file = wordsFrom === undefined ? undefined : readTextFile(resolve(io.cwd, wordsFrom), io, wordsFrom)
  if (file && !file.ok) return file
  const text = [options.words ?? '', file?.value.replace(/^\uFEFF/, '') ?? ''].join('\n')
  const words = [
    ...new Set(
      text
        .split(/[,;\n\r]/)
        .map((word) => word.trim().replace(/\s+/g, ' ').normalize('NFC'))
        .filter((word) => word !== ''),
    ),
  ]
  return succeed({
    words,
    notices: reader.isStepNamed
      ? words.flatMap((word) => toUnreadable(word, reader))
      : words.length > 0
        ? [NOT_JUDGED]
        : [],
    hasObjects: false,
  })
}

const NOT_JUDGED =
  'No step is named, so nothing was judged: the words are printed as they are. With --step it is said which can be read.'

function toUnreadable(text: string, { phonics, sequence, step, extra, settings }: FoundReader): readonly string[] {
  const known = knowledgeAt(sequence, step)
  const knowledge = extra === undefined ? known : withReader(known, extra)
  const names = settings.names.map(({ value }) => value)
  return text.split(' ').flatMap((word) => {
    const pronunciations = phonics.read(word)
    if (judge(pronunciations, knowledge, names).readable) return []
    const readableAt = findReadableAt(pronunciations, sequence, { names, ...(extra && { reader: extra }) })
    return [
      readableAt === undefined
        ? `\`${word}\` cannot be read at ${step}, nor at a later step. It is printed all the same.`
        : `\`${word}\` cannot be read at ${step}: it can from ${readableAt} on. It is printed all the same.`,
    ]
  })
}
