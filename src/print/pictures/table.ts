// The pictures inside: drawings of the reviewed table, by word.

import type { Shown } from '../ask.ts'

/** `dist/pictures.json`. */
export type PictureFile = Readonly<Record<string, StoredPicture>>

interface StoredPicture {
  readonly alt: string
  readonly width: number
  readonly height: number
  /** What stands inside the `<svg>`. */
  readonly body: string
  /** The same thing in black and white, where the set has it. */
  readonly grey?: string
}

export function findStored(file: PictureFile, word: string, isGrey: boolean): Shown | undefined {
  const found = Object.hasOwn(file, word.toLowerCase()) ? file[word.toLowerCase()] : undefined
  if (!found) return undefined
  const { alt, width, height, body, grey } = found
  const inside = isGrey ? (grey ?? body) : body
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}">${inside}</svg>`
  return { alt, picture: { kind: 'svg', svg, width, height } }
}
