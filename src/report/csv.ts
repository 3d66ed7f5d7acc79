// Tables for spreadsheets: RFC 4180 (2005), every line ends with CR and LF, and what needs quotes has them.

export type Cell = string | number | null | undefined

/** The first row is the head. */
export function toCsv(rows: readonly (readonly Cell[])[]): string {
  return rows.map((row) => `${row.map(toCell).join(',')}\r\n`).join('')
}

function toCell(cell: Cell): string {
  if (cell === null || cell === undefined) return ''
  const text = typeof cell === 'number' ? String(cell) : toHarmless(cell)
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text
}

/**
 * A text that a spreadsheet would take for a formula gets an apostrophe before it, as OWASP advises on CSV injection: a title or
 * a file name can come from anybody. Figures stay figures.
 */
function toHarmless(text: string): string {
  return /^[=+\-@\t\r]/.test(text) ? `'${text}` : text
}

/** A share of 0 to 1 with at most four places. */
export function toShareFigure(share: number): number {
  return Math.round(share * 10_000) / 10_000
}
