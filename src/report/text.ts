// Laying out text for a terminal: wrapped lines, columns, shares, plurals.

import { eastAsianWidth } from 'get-east-asian-width'

/** Letters that are one column wide each: Latin with its accents, IPA, Greek, Cyrillic, and common punctuation. */
const PLAIN = /^[\u0020-\u007e\u00a0-\u00ac\u00ae-\u02ff\u0370-\u0482\u048a-\u04ff\u2010-\u2027\u2030-\u205e]*$/
const isUnseen = (character: string): boolean => /[\p{M}\p{Cf}\p{Cc}]/u.test(character)

/**
 * Columns that a text takes on a terminal. The package string-width would cost a third of a short run: it builds an
 * Intl.Segmenter and a table of all emoji when it is loaded, so only its own table of wide characters is used.
 */
export function toColumnCount(text: string): number {
  if (PLAIN.test(text)) return text.length
  let count = 0
  for (const character of text) if (!isUnseen(character)) count += eastAsianWidth(character.codePointAt(0) ?? 0)
  return count
}

/** Spaces that stand side by side or at an end: such a text is cut word by word. */
const ODD_SPACES = /^ | {2}| $/

/** Breaks a text at spaces so that no line is wider than `width`, where its words allow. */
export function wrap(text: string, width: number): string[] {
  if (!PLAIN.test(text) || (text.length > width && ODD_SPACES.test(text))) return wrapWords(text, width)
  const lines: string[] = []
  let start = 0
  while (text.length - start > width) {
    const last = text.lastIndexOf(' ', start + width)
    // A word that is wider than a line has one of its own.
    const end = last > start ? last : text.indexOf(' ', start + 1)
    if (end < 0) break
    lines.push(text.slice(start, end))
    start = end + 1
  }
  lines.push(text.slice(start))
  return lines
}

/** The same where letters are not all one column wide. */
function wrapWords(text: string, width: number): string[] {
  const lines: string[] = []
  let line = ''
  let columns = 0
  for (const word of text.split(' ')) {
    const wide = toColumnCount(word)
    if (line === '') {
      line = word
      columns = wide
    } else if (columns + 1 + wide > width) {
      lines.push(line)
      line = word
      columns = wide
    } else {
      line += ` ${word}`
      columns += 1 + wide
    }
  }
  return [...lines, line]
}

/** Shortened between two words where it is wider than `width`; a single long word is cut. */
export function toCut(text: string, width: number): string {
  if (toColumnCount(text) <= width) return text
  const [first = ''] = wrap(text, width - 2)
  return toColumnCount(first) <= width - 2 ? `${first} …` : `${text.slice(0, width - 1)}…`
}

export type Align = 'left' | 'right'

/** Rows as lines with aligned columns, two spaces between them. */
export function toColumns(rows: readonly (readonly string[])[], aligns: readonly Align[]): string[] {
  const counts = rows.map((row) => aligns.map((_, at) => toColumnCount(row[at] ?? '')))
  const widths = aligns.map((_, at) => counts.reduce((most, row) => Math.max(most, row[at] ?? 0), 0))
  return rows.map((row, k) => {
    let line = ''
    for (const [at, align] of aligns.entries()) {
      const gap = ' '.repeat((widths[at] ?? 0) - (counts[k]?.[at] ?? 0))
      const text = row[at] ?? ''
      line += `${at > 0 ? '  ' : ''}${align === 'right' ? gap + text : text + gap}`
    }
    return line.trimEnd()
  })
}

export function pad(text: string, width: number, align: Align): string {
  const gap = ' '.repeat(Math.max(0, width - toColumnCount(text)))
  return align === 'right' ? gap + text : text + gap
}

/** A share of 0 to 1 as whole percents. Not quite all is never shown as all, nor almost none as none. */
export function toPercent(share: number): string {
  const percent = Math.round(share * 100)
  if (percent === 100 && share < 1) return '99 %'
  if (percent === 0 && share > 0) return '1 %'
  return `${percent} %`
}

/** The share of a page without words is no share. */
export const toShareCell = ({ words, readableShare }: { words: number; readableShare: number }): string =>
  words === 0 ? '–' : toPercent(readableShare)

export const toCount = (count: number, one: string, many = `${one}s`): string => `${count} ${count === 1 ? one : many}`

/** `a`, `a and b`, `a, b and c` */
export function toList(items: readonly string[], last = 'and'): string {
  return items.length < 2 ? (items[0] ?? '') : `${items.slice(0, -1).join(', ')} ${last} ${items.at(-1)}`
}

/** With a full stop, unless it ends with a mark of its own. */
export const toSentence = (text: string): string => (/[.?!]$/.test(text) ? text : `${text}.`)

/** Makes control characters of a path or a text harmless on a terminal. */
export function toPrintable(text: string): string {
  return text.replace(/[\u0000-\u001f\u007f-\u009f]/g, (character) => JSON.stringify(character).slice(1, -1))
}

/** `once`, `twice`, `3 times`. */
export const toTimes = (times: number): string => (times === 1 ? 'once' : times === 2 ? 'twice' : `${times} times`)
