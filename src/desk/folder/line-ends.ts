// A text with `\n` alone, as the editor has it, and beside it how each line of the file ends: so that a save changes no
// byte that nobody touched.

import type { TextEdit } from './types.ts'

type LineEnd = '\n' | '\r\n' | '\r'

export interface KeptText {
  /** With `\n` alone, without a byte order mark. */
  readonly text: string
  /** One for each `\n` of the text. */
  readonly ends: readonly LineEnd[]
  readonly hasMark: boolean
}

const MARK = '\uFEFF'
const LINE_END = /\r\n|\r|\n/g

/** @param file the whole file as text, its byte order mark among it */
export function openText(file: string): KeptText {
  const hasMark = file.startsWith(MARK)
  const body = hasMark ? file.slice(1) : file
  return { text: body.replace(LINE_END, '\n'), ends: (body.match(LINE_END) ?? []) as LineEnd[], hasMark }
}

/** The file again. */
export function toFileText({ text, ends, hasMark }: KeptText): string {
  const lines = text.split('\n')
  const parts = lines.map((line, at) => {
    const end = ends[at]
    if (end === undefined) return line
    // `\r` and the `\n` of an empty line behind it would be one line end when they are read again.
    const isTorn = end === '\r' && lines[at + 1] === '' && ends[at + 1] === '\n'
    return line + (isTorn ? '\r\n' : end)
  })
  return (hasMark ? MARK : '') + parts.join('')
}

/**
 * The same text after some edits. Line ends move with their lines; a line that is parted ends twice as it ended. Throws for edits
 * that do not fit the text, since a file would be spoilt by them.
 */
export function changeText({ text, ends, hasMark }: KeptText, edits: readonly TextEdit[]): KeptText {
  const texts: string[] = []
  const kept: LineEnd[] = []
  let place = 0
  let line = 0
  for (const { start, end, text: written } of edits) {
    if (start < place || end < start || end > text.length)
      throw new RangeError(`An edit of ${start} to ${end} fits not`)
    const before = text.slice(place, start)
    const next = line + countLines(before)
    for (; line < next; line++) kept.push(ends[line] ?? '\n')
    const put = toClean(written)
    const removed = countLines(text.slice(start, end))
    const added = countLines(put)
    const like = ends[line + removed] ?? kept.at(-1) ?? ends[line] ?? '\n'
    // What replaces lines keeps their ends as far as they go.
    for (let at = 0; at < added; at++) kept.push((at < removed ? ends[line + at] : like) ?? like)
    texts.push(before, put)
    line += removed
    place = end
  }
  for (; line < ends.length; line++) kept.push(ends[line] ?? '\n')
  return { text: texts.join('') + text.slice(place), ends: kept, hasMark }
}

/** As the editor counts it: one `\n` for any line end. A NUL would make a file that nobody opens again as text. */
const toClean = (text: string): string => text.replace(LINE_END, '\n').replaceAll('\0', '\uFFFD')

function countLines(text: string): number {
  let count = 0
  for (let at = text.indexOf('\n'); at >= 0; at = text.indexOf('\n', at + 1)) count++
  return count
}
