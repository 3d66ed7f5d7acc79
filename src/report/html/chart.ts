// How much of each page can be read, as bars and as a table: the table says all that the bars show.

import type { Figures } from '../../verdict/types.ts'
import { toShareCell } from '../text.ts'

export interface PageFigures {
  readonly page: number
  readonly figures: Figures
}

const ROW = 22
const BAR = 14
const LEFT = 64
const WIDTH = 420
const RIGHT = 110

/** The hatching of what cannot be read, once for the whole document. */
export const PATTERNS =
  '<svg class="defs" aria-hidden="true" width="0" height="0"><defs><pattern id="hatch" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><rect width="6" height="6" class="hatch-ground"/><rect width="3" height="6" class="hatch-line"/></pattern></defs></svg>'

/** A bar a page, as long as the page has words; the end that cannot be read is hatched. Hidden from screen readers: the table is for them. */
export function toChart(pages: readonly PageFigures[]): string {
  const most = Math.max(1, ...pages.map(({ figures }) => figures.words))
  const height = pages.length * ROW
  const rows = pages.map(({ page, figures }, at) => {
    const y = at * ROW + (ROW - BAR) / 2
    const unit = WIDTH / most
    const readable = (figures.words - figures.unreadable) * unit
    const unread = figures.unreadable * unit
    return [
      `<text x="${LEFT - 8}" y="${y + BAR - 2}" text-anchor="end">page ${page}</text>`,
      `<rect class="readable" x="${LEFT}" y="${y}" width="${round(readable)}" height="${BAR}"/>`,
      unread > 0
        ? `<rect class="unread" x="${round(LEFT + readable)}" y="${y}" width="${round(unread)}" height="${BAR}" fill="url(#hatch)"/>`
        : '',
      `<text x="${round(LEFT + readable + unread + 8)}" y="${y + BAR - 2}">${figures.words - figures.unreadable} of ${figures.words}</text>`,
    ].join('')
  })
  const total = LEFT + WIDTH + RIGHT
  return `<figure><svg aria-hidden="true" class="chart" viewBox="0 0 ${total} ${height}" width="${total}" height="${height}">${rows.join('')}</svg><figcaption>Words on each page. Plain: the child can read them. Hatched: not yet.</figcaption></figure>`
}

const round = (value: number): number => Math.round(value * 10) / 10

const HEAD = ['words', 'decodable', 'sight', 'names', 'not readable', 'readable'] as const

export function toTable(pages: readonly PageFigures[], total: Figures): string {
  const head = ['page', ...HEAD].map((name) => `<th scope="col">${name}</th>`).join('')
  const rows = pages.map(({ page, figures }) => toRow(String(page), figures)).join('')
  return `<table><caption>Words on each page</caption><thead><tr>${head}</tr></thead><tbody>${rows}</tbody><tfoot>${toRow('all', total)}</tfoot></table>`
}

function toRow(name: string, figures: Figures): string {
  const { words, decodable, sight, names, unreadable } = figures
  const cells = [words, decodable, sight, names, unreadable, toShareCell(figures)]
    .map((value) => `<td>${value}</td>`)
    .join('')
  return `<tr><th scope="row">${name}</th>${cells}</tr>`
}
