// Finds where a long paragraph can be cut, so that the parser reads it in stretches: its time for emphasis and brackets grows
// with the square of their number.
//
// A cut stands between two words of plain text, where nothing open before it is closed behind it. What is uncertain is not cut.

import { createMarkScanner } from './inline-marks.ts'

/** What stands between two stretches: one blank, or a line end with the indent behind it. */
export interface Gap {
  readonly start: number
  /** After the blank or the line end. */
  readonly end: number
  /** Where the next word begins. */
  readonly next: number
}

/** What may start a line of a paragraph without ending it, and without being more than text. */
const safe = String.raw`(?:[A-Za-z"'(.,;:!?/$%@)&\\[\u00A1-\uFFFF]|\`(?!\`\`)|\d(?!\d{0,8}[.)])|[*_]{1,3}[A-Za-z0-9"'“‘([&\\!])`
const safeStart = new RegExp(safe, 'y')
const unsafeLine = new RegExp(String.raw`\r?\n(?![ \t]*${safe})`)
const marker = /(?:[-*+]|\d{1,9}[.)]) {1,4}(?=\S)/y

/**
 * A blank or a line end between two words; no break stands there, for the first word ends in no blank and no backslash. Made
 * where there is something long to cut: few stories have that.
 */
const toGap = (): RegExp => /[\p{L}0-9,;.!?]( |\r?\n[ \t]*)(?=\p{L})/gu

/**
 * Cuts at least `spacing` apart in the block at `from`, which stands at the margin after a blank line; none where it is no
 * paragraph and no item of a list that holds one.
 */
export function findInlineCuts(source: string, from: number, to: number, spacing: number): readonly Gap[] {
  const item = matchAt(marker, source, from)
  const start = from + item.length
  if (matchAt(safeStart, source, start) === '') return []
  const text = source.slice(start, to).trimEnd()
  const unsafe = text.search(unsafeLine)
  // What follows in an item would leave the list.
  if (unsafe !== -1 && item !== '') return []
  const found = findGaps(text, unsafe === -1 ? text.length : unsafe, spacing)
  return found.map((one) => ({ start: start + one.start, end: start + one.end, next: start + one.next }))
}

function matchAt(pattern: RegExp, source: string, at: number): string {
  pattern.lastIndex = at
  return pattern.exec(source)?.[0] ?? ''
}

interface OpenGap extends Gap {
  /** How much stood open there. */
  readonly open: number
}

function findGaps(text: string, stop: number, spacing: number): readonly Gap[] {
  const marks = createMarkScanner(text, stop)
  const found: OpenGap[] = []
  for (;;) {
    const plain = marks.toNext()
    addGaps(found, text, plain, spacing, marks.open())
    if (plain.isLast) break
    const isSure = marks.read()
    while ((found.at(-1)?.open ?? 0) > marks.open()) found.pop()
    if (!isSure) return found.filter(({ open }) => open === 0)
  }
  // What is open at the very end was never closed. A line that may end the paragraph leaves that open.
  return stop === text.length ? found : found.filter(({ open }) => open === 0)
}

function addGaps(
  found: OpenGap[],
  text: string,
  plain: { readonly start: number; readonly end: number },
  spacing: number,
  open: number,
): void {
  const gap = toGap()
  for (;;) {
    const from = Math.max(plain.start, (found.at(-1)?.next ?? 0) + spacing)
    if (from >= plain.end) return
    gap.lastIndex = 0
    const one = gap.exec(text.slice(from, plain.end))
    if (!one) return
    const next = from + gap.lastIndex
    const start = next - (one[1]?.length ?? 0)
    const end = next - (/[ \t]*$/.exec((one[1] ?? '').slice(1))?.[0].length ?? 0)
    found.push({ start, end, next, open })
  }
}
