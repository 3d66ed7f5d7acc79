// Sheets that are made of words: marks their letters, and lays them out with their pictures.

import { findSpelling } from '../finder/index.ts'
import type { Unit } from '../phonics/types.ts'
import {
  type Ask,
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
} from '../print/index.ts'
import { type Result, succeed } from '../problem/index.ts'
import { knowledgeAt, withReader } from '../sequence/index.ts'
import { type GroupWish, toGroups } from './groups.ts'
import { findMissingLetters } from './missing-letters.ts'
import type { AskedWords, FindPicture, Prepared, SheetReader, Wishes, WordSheetKind } from './types.ts'

export interface WordAsk {
  readonly kind: WordSheetKind
  readonly words: readonly string[]
  readonly asked: AskedWords
  readonly mark: Wishes['mark']
  /** By what the word wall is put in groups. */
  readonly group: GroupWish
  readonly reader: SheetReader
  readonly ask: Ask
  /** Asked for cards only. */
  readonly findPicture: FindPicture
}

export function layWords(wish: WordAsk): Result<Prepared> {
  const { kind, words, ask, reader, asked, findPicture } = wish
  const missing = findMissingLetters(ask, words)
  if (missing) return missing
  const pieces = toPieces(words, toMarking(wish), reader, kind === 'cards' ? findPicture : undefined)
  if (!pieces.ok) return pieces
  const laid = lay(pieces.value, wish)
  if (!laid.ok) return laid
  return succeed({
    laid: laid.value,
    title: toTitle(wish),
    name: [kind, reader.isStepNamed ? reader.step : undefined, ...toAskedFor(asked)],
    notices: kind === 'cards' ? toEmptyFrames(pieces.value) : [],
  })
}

function lay(pieces: readonly WordPiece[], wish: WordAsk): Result<Laid> {
  const { kind, ask, group, reader } = wish
  switch (kind) {
    case 'cards':
      return layCards(pieces, ask)
    case 'list':
      return layList(pieces, toTitle(wish), ask)
    case 'sight':
      return laySight(pieces, ask)
    case 'slips':
      return laySlips(
        pieces.map(({ text }) => text),
        ask,
      )
    case 'wall':
      return layWall(toGroups(pieces, group, reader), ask)
    default:
      return layTags(pieces, ask)
  }
}

function toPieces(
  words: readonly string[],
  marking: Marking,
  { phonics }: SheetReader,
  findPicture: FindPicture | undefined,
): Result<readonly WordPiece[]> {
  const pieces: WordPiece[] = []
  for (const word of words) {
    const text: MarkedText = word.includes(' ') ? unmarked(word) : markWord(word, phonics.read(word), marking)
    const picture = findPicture?.(word) ?? succeed(undefined)
    if (!picture.ok) return picture
    pieces.push({ text, picture: picture.value })
  }
  return succeed(pieces)
}

function toMarking({ mark, asked: words, reader }: WordAsk): Marking {
  const { sequence, step, extra } = reader
  const known = knowledgeAt(sequence, step)
  const asked = [words.vowel, words.with, words.first, words.last].flatMap((text) => text?.split(',') ?? [])
  const adds = sequence.steps.find(({ id }) => id === step)?.adds.correspondences ?? []
  return {
    wish: mark,
    knowledge: extra === undefined ? known : withReader(known, extra),
    isPractised: asked.length > 0 ? toAskedTest(asked, reader) : isOneOf(new Set(adds.map(({ key }) => key))),
  }
}

/** A test for the letters that the maker asks for by --vowel, --with and so on. */
function toAskedTest(asked: readonly string[], { sequence, phonics }: SheetReader): (unit: Unit) => boolean {
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

const TITLES: Readonly<Record<WordSheetKind, string>> = {
  cards: 'Picture cards with tags',
  list: 'Words to read',
  sight: 'Words to know by heart',
  slips: 'Slips to read silently',
  tags: 'Word tags',
  wall: 'Words for the wall',
}

const toTitle = ({ kind, reader, asked }: WordAsk): string =>
  [TITLES[kind], ...(reader.isStepNamed ? [reader.step] : []), ...toAskedFor(asked)].join(', ')

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
}: AskedWords): string[] =>
  [vowel, first, last, held, family, rhymesWith, kind, newAtStep ? 'new' : undefined].flatMap((text) => text ?? [])
