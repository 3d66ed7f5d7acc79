// Finds the picture of a word: the maker's own first, then the reviewed ones inside.

import { join, resolve } from 'node:path'
import { DATA_FOLDER } from '../../packaged/data.ts'
import {
  canDraw,
  findStored,
  type Picture,
  type PictureFile,
  readPicture,
  type Shown,
  sortOwnPictures,
} from '../../print/index.ts'
import { fail, type Result, succeed } from '../../problem/index.ts'
import { toFileProblem, toShownPath } from '../files/file-problem.ts'
import type { Io } from '../io.ts'

export interface PictureFinder {
  /** Whether there is one, without opening it. */
  has(word: string): boolean
  /** Undefined where there is none; a problem where there is one that cannot be printed. */
  find(word: string): Result<Shown | undefined>
}

export interface PictureWish {
  /** Folder of the maker's own pictures, as typed. */
  readonly folder: string | undefined
  /** Whether the pictures inside are taken. */
  readonly isSetUsed: boolean
  readonly isGrey: boolean
}

export function createPictureFinder({ folder, isSetUsed, isGrey }: PictureWish, io: Io): Result<PictureFinder> {
  const names = folder === undefined ? succeed<readonly string[]>([]) : listFolder(folder, io)
  if (!names.ok) return names
  const own = sortOwnPictures(names.value)
  const stored: PictureFile = isSetUsed
    ? (JSON.parse(io.fs.readFileSync(join(DATA_FOLDER, 'pictures.json'), 'utf8')) as PictureFile)
    : {}
  return succeed({
    has: (word) => own.find(word) !== undefined || findStored(stored, word, isGrey) !== undefined,
    find(word) {
      const name = own.find(word)
      const other = own.findOther(word)
      if (name !== undefined) return readOwn(join(folder ?? '', name), word, io)
      if (other !== undefined) return readOwn(join(folder ?? '', other), word, io)
      return succeed(findStored(stored, word, isGrey))
    },
  })
}

function listFolder(folder: string, io: Io): Result<readonly string[]> {
  try {
    return succeed(io.fs.readdirSync(resolve(io.cwd, folder)))
  } catch (error) {
    return fail(toFileProblem(folder, error))
  }
}

/** More is no picture for a card: a camera's own file has some 10 million bytes. */
const MOST_BYTES = 40 * 1024 * 1024

/** @param alt what a screen reader says */
export function readOwn(path: string, alt: string, io: Io): Result<Shown> {
  try {
    const file = resolve(io.cwd, path)
    const { size } = io.fs.statSync(file)
    if (size > MOST_BYTES)
      return fail({
        code: 'bad-picture',
        message: `${toShownPath(path)} has ${Math.round(size / 1e6)} million bytes, too many for a picture`,
        note: 'Save it smaller, 2000 dots wide at most.',
      })
    const picture = readDrawable(io.fs.readFileSync(file), io)
    if (picture.ok) return succeed({ picture: picture.value, alt })
    return fail(
      ...picture.problems.map((problem) => ({ ...problem, message: `${toShownPath(path)} ${problem.message}` })),
    )
  } catch (error) {
    return fail(toFileProblem(path, error))
  }
}

/** Some drawings that are whole still stop the drawer, so each is drawn once before anything is laid out. */
function readDrawable(bytes: Uint8Array, io: Io): Result<Picture> {
  const picture = readPicture(bytes)
  if (!picture.ok) return picture
  const font = io.fs.readFileSync(join(DATA_FOLDER, 'fonts', 'abeezee.woff'))
  if (canDraw(picture.value, font)) return picture
  return fail({ code: 'bad-picture', message: 'is a drawing that cannot be printed', note: 'Save it as PNG.' })
}
