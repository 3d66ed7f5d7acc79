// Sentences of a story, one a strip; the same once more in loose words; and the pictures as cards to match.

import { fail, type Result, succeed } from '../../problem/index.ts'
import { type Ask, count, type Laid, type Shown } from '../ask.ts'
import { type GridSpec, layGrid, toPlace } from '../lay/grid.ts'
import { cut } from '../lay/lines.ts'
import { onSide } from '../lay/paper.ts'
import { inset, putPicture } from '../lay/pictures.ts'
import { LEAST, toBaseline, toFittingSize, toXHeight } from '../lay/sizes.ts'
import { type MarkedText, putText, toWidth } from '../lay/words.ts'
import type { Item, Sheet } from '../sheet.ts'
import { type LooseRow, putRows } from './loose-words.ts'

export interface Strips {
  readonly sentences: readonly MarkedText[]
  readonly pictures: readonly Shown[]
}

const STRIP = { columns: 1, rows: 6, width: 255, height: 28 } as const
const PICTURE = { columns: 3, rows: 2, width: 85, height: 84 } as const
const SIDE = 8
const ABOVE = 4

export function layStrips({ sentences, pictures }: Strips, isCutInWords: boolean, ask: Ask): Result<Laid> {
  const { letters } = ask
  const grid: GridSpec = { paper: onSide(ask.paper), ...STRIP }
  const size = toSize(sentences, ask)
  const least = typeof ask.size === 'number' ? Math.min(ask.size, LEAST) : LEAST
  const long = sentences.find(
    (text) => toWidth(text, 1, letters) * (least / letters.xHeight) > STRIP.width - 2 * SIDE + 1e-6,
  )
  if (long)
    return fail({
      code: 'does-not-fit',
      message: `“${long.text}” is too long for a strip, even in the smallest letters`,
      note: 'Make two sentences of it.',
    })
  const whole = layGrid(sentences, grid, ask, (text, place, number) =>
    putText(text, place.x + SIDE, toBaseline(place.y, place.height, size, letters), {
      ...{ letters, size },
      readAs: { part: Math.floor(number / STRIP.rows), at: number, role: 'P' },
    }),
  )
  const loose = isCutInWords ? layLoose(sentences, grid, size, whole.length, ask) : []
  const shown = layPictures(pictures, loose.length + whole.length, ask)
  return succeed({
    sheets: [...whole, ...loose, ...shown],
    counts: [
      count(sentences.length, 'strip'),
      ...(isCutInWords
        ? [
            count(
              sentences.reduce((sum, text) => sum + toWords(text).length, 0),
              'loose word',
            ),
          ]
        : []),
      ...(pictures.length > 0 ? [count(pictures.length, 'picture')] : []),
    ],
  })
}

/** The largest at which the longest sentence stays on one line. */
function toSize(sentences: readonly MarkedText[], { letters, size: wish, pageWords }: Ask): number {
  const usual = toXHeight(pageWords) * 1.5
  const most = typeof wish === 'number' ? wish : wish === 'small' ? toXHeight(pageWords) : wish === 'large' ? 12 : usual
  const space = { width: STRIP.width - 2 * SIDE, height: STRIP.height - 2 * ABOVE }
  return toFittingSize(sentences, space, letters, most / letters.xHeight)
}

/** The words with what stands close to them: the full stop stays with its word. */
const toWords = (text: MarkedText): readonly MarkedText[] =>
  [...text.text.matchAll(/\S+/g)].map(({ 0: word, index }) => cut(text, index, index + word.length))

/** A, B, C … Z, AA: says which strip a loose word is from. */
const toSign = (number: number): string =>
  number < 26 ? String.fromCharCode(65 + number) : toSign(Math.floor(number / 26) - 1) + toSign(number % 26)

function layLoose(
  sentences: readonly MarkedText[],
  grid: GridSpec,
  size: number,
  firstPart: number,
  ask: Ask,
): readonly Sheet[] {
  const rows = sentences.flatMap((sentence, number) =>
    putRows(toWords(sentence), toSign(number), {
      width: STRIP.width,
      height: STRIP.height,
      size,
      letters: ask.letters,
    }),
  )
  return layGrid(rows, grid, ask, (row: LooseRow, place, number): readonly Item[] =>
    row.draw(place, { part: firstPart + Math.floor(number / STRIP.rows), at: number * 100, role: 'P' }),
  )
}

function layPictures(pictures: readonly Shown[], firstPart: number, ask: Ask): readonly Sheet[] {
  const grid: GridSpec = { paper: onSide(ask.paper), ...PICTURE }
  const each = PICTURE.columns * PICTURE.rows
  return layGrid(pictures, grid, ask, (picture, _, number) => [
    putPicture(picture, inset(toPlace(grid, number % each), 4), {
      part: firstPart + Math.floor(number / each),
      at: number,
    }),
  ])
}
