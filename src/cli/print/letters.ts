// The letters that are printed with: those of the package by name, or a font of the maker's own.

import { join, resolve } from 'node:path'
import { findNearest } from '../../nearest.ts'
import { DATA_FOLDER } from '../../packaged/data.ts'
import { LETTER_FILES, LETTER_SHAPES, type Letters, openLetters, SPACINGS } from '../../print/index.ts'
import { fail, type Result, toExpected } from '../../problem/index.ts'
import { toFileProblem } from '../files/file-problem.ts'
import type { Io } from '../io.ts'

export interface LettersWish {
  readonly letters: string
  readonly letterShapes?: string
  readonly spacing: keyof typeof SPACINGS
}

export function loadLetters({ letters: name, letterShapes, spacing }: LettersWish, io: Io): Result<Letters> {
  const features = readShapes(letterShapes ?? '')
  if (!features.ok) return features
  const inside = LETTER_FILES[name.toLowerCase()]
  const read = (path: string): Uint8Array => io.fs.readFileSync(path)
  if (inside) {
    const folder = join(DATA_FOLDER, 'fonts')
    const bold = inside.bold === undefined ? undefined : read(join(folder, inside.bold))
    return withName(
      openLetters({ plain: read(join(folder, inside.plain)), bold }, features.value, SPACINGS[spacing]),
      name,
    )
  }
  if (!/[./\\]/.test(name)) return toUnknownLetters(name)
  try {
    return withName(openLetters({ plain: read(resolve(io.cwd, name)) }, features.value, SPACINGS[spacing]), name)
  } catch (error) {
    return fail(toFileProblem(name, error))
  }
}

const withName = (letters: Result<Letters>, name: string): Result<Letters> =>
  letters.ok
    ? letters
    : fail(...letters.problems.map((problem) => ({ ...problem, message: `\`${name}\`: ${problem.message}` })))

function toUnknownLetters(name: string): Result<never> {
  const names = Object.keys(LETTER_FILES)
  return fail({
    code: 'bad-value',
    message: `--letters can be ${names.join(', ')}, or the path of a font; this is \`${name}\``,
    expected: toExpected(findNearest(name, names)),
  })
}

function readShapes(text: string): Result<readonly string[]> {
  const names = text
    .split(',')
    .map((name) => name.trim().toLowerCase())
    .filter((name) => name !== '')
  const known = new Map(Object.entries(LETTER_SHAPES))
  const unknown = names.find((name) => !known.has(name))
  if (unknown !== undefined)
    return fail({
      code: 'bad-value',
      message: `\`${unknown}\` is no shape of a letter; there are ${[...known.keys()].join(', ')}`,
      expected: toExpected(findNearest(unknown, [...known.keys()])),
    })
  return { ok: true, value: names.map((name) => known.get(name)?.feature ?? '') }
}
