// Sheets that are made of words: finds the words and their pictures, marks their letters, and lays them out.

import { findSpelling } from '../../finder/index.ts'
import type { Unit } from '../../phonics/types.ts'
import {
  isOneOf,
  type Laid,
  layCards,
  layList,
  laySight,
  laySlips,
  layTags,
  layWall,
  type MarkedText,
  type Marking,
  markWord,
  unmarked,
  type WordPiece,
} from '../../print/index.ts'
import { fail, type Result, succeed } from '../../problem/index.ts'
import { knowledgeAt, withReader } from '../../sequence/index.ts'
import type { Io } from '../io.ts'
import type { FoundReader } from '../list-reader.ts'
import type { Prepared, PrintContext } from './context.ts'
import { toGroups } from './groups.ts'
import type { PrintOptions } from './options.ts'
import { createPictureFinder, type PictureFinder } from './pictures.ts'
import { findWanted, type WordKindOfSheet } from './wanted.ts'

export async function layWords(context: PrintContext, io: Io): Promise<Result<Prepared>> {
  const { options, wishes, ask, reader } = context
  const kind = context.kind as WordKindOfSheet
  const finder = createPictureFinder({ folder: options.pictures, isSetUsed: options.ownSet, isGrey: wishes.isGrey }, io)
  if (!finder.ok) return finder
  const wanted = await findWanted({ kind, options, reader, hasPicture: finder.value.has }, io)
  if (!wanted.ok) return wanted
  const { words, notices } = wanted.value
  const missing = ask.letters.findMissing(words)
  if (missing.length > 0)
    return fail({
      code: 'missing-letter',
      message: `${ask.letters.family} has no ${missing.map((letter) => `\`${letter}\``).join(', ')}`,
      note: 'Take another font with --letters.',
    })
  const pieces = toPieces(words, toMarking(context), reader, kind === 'cards' ? finder.value : undefined)
  if (!pieces.ok) return pieces
  const laid = lay(kind, pieces.value, context)
  if (!laid.ok) return laid
  return succeed({
    laid: laid.value,
    title: toTitle(kind, context),
    name: [kind, reader.isStepNamed ? reader.step : undefined, ...toAskedFor(options)],
    notices: [...notices, ...(kind === 'cards' ? toEmptyFrames(pieces.value) : [])],
  })
}

function lay(kind: WordKindOfSheet, pieces: readonly WordPiece[], context: PrintContext): Result<Laid> {
  const { ask, options, reader } = context
  switch (kind) {
    case 'cards':
      return layCards(pieces, ask)
    case 'list':
      return layList(pieces, toTitle(kind, context), ask)
    case 'sight':
      return laySight(pieces, ask)
    case 'slips':
      return laySlips(
        pieces.map(({ text }) => text),
        ask,
      )
    case 'wall':
      return layWall(toGroups(pieces, options.group, reader), ask)
    default:
      return layTags(pieces, ask)
  }
}

function toPieces(
  words: readonly string[],
  marking: Marking,
  { phonics }: FoundReader,
  finder: PictureFinder | undefined,
): Result<readonly WordPiece[]> {
  const pieces: WordPiece[] = []
  for (const word of words) {
    const text: MarkedText = word.includes(' ') ? unmarked(word) : markWord(word, phonics.read(word), marking)
    const picture = finder?.find(word) ?? succeed(undefined)
    if (!picture.ok) return picture
    pieces.push({ text, picture: picture.value })
  }
  return succeed(pieces)
}

function toMarking({ wishes, options, reader }: PrintContext): Marking {
  const { sequence, step, extra } = reader
  const known = knowledgeAt(sequence, step)
  const asked = [options.vowel, options.with, options.first, options.last].flatMap((text) => text?.split(',') ?? [])
  const adds = sequence.steps.find(({ id }) => id === step)?.adds.correspondences ?? []
  return {
    wish: wishes.mark,
    knowledge: extra === undefined ? known : withReader(known, extra),
    isPractised: asked.length > 0 ? toAskedTest(asked, reader) : isOneOf(new Set(adds.map(({ key }) => key))),
  }
}

/** A test for the letters that the maker asks for by --vowel, --with and so on. */
function toAskedTest(asked: readonly string[], { sequence, phonics }: FoundReader): (unit: Unit) => boolean {
  const tests = asked.flatMap((text) => {
    const found = findSpelling(text, sequence, phonics)
    return 'problem' in found || 'letters' in found.spelling ? [] : found.spelling
  })
  return (unit) => tests.some((test) => test(unit))
}

const toEmptyFrames = (pieces: readonly WordPiece[]): readonly string[] => {
  const empty = pieces.filter(({ picture }) => picture === undefined).map(({ text }) => text.text)
  if (empty.length === 0) return []
  return [
    `${pieces.length - empty.length} of ${pieces.length} cards have a picture. No picture for ${empty.join(', ')}: an empty frame to draw in. Your own go into a folder, named by word (${empty[0]}.jpg): --pictures DIR.`,
  ]
}

const TITLES: Readonly<Record<WordKindOfSheet, string>> = {
  cards: 'Picture cards with tags',
  list: 'Words to read',
  sight: 'Words to know by heart',
  slips: 'Slips to read silently',
  tags: 'Word tags',
  wall: 'Words for the wall',
}

const toTitle = (kind: WordKindOfSheet, { reader, options }: PrintContext): string =>
  [TITLES[kind], ...(reader.isStepNamed ? [reader.step] : []), ...toAskedFor(options)].join(', ')

/** What was asked for beyond the step, as it goes into names. */
export const toAskedFor = ({
  vowel,
  first,
  last,
  with: held,
  family,
  rhymesWith,
  kind,
  newAtStep,
}: PrintOptions): string[] =>
  [vowel, first, last, held, family, rhymesWith, kind, newAtStep ? 'new' : undefined].flatMap((text) => text ?? [])
