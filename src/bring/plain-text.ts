// A plain text → pieces: paragraphs stand between empty lines, a form feed or a line of dashes begins a page.

import { createCollector } from './collect.ts'
import type { Brought } from './types.ts'

const PLAIN = { bold: false, italic: false }
const RULE = /^\s*(?:[-–—_=~]\s*){3,}$|^\s*(?:\*\s*){3,}$/
/** `Page 3` on a line of its own says where the reader is. */
const LABEL = /^\s*page\s+\d+\s*[.:]?\s*$/i

export function readPlainText(text: string): Brought {
  const to = createCollector()
  for (const [at, sheet] of text.replace(/\r\n?/g, '\n').split('\f').entries()) {
    if (at > 0) to.addBreak()
    readSheet(sheet, to)
  }
  to.end()
  return { pieces: to.pieces, notes: to.notes(), title: undefined }
}

/** A line by itself at the very top that does not end as a sentence does. */
const TITLE = /^\s*(\S.{0,59})(?<![.!?…,;:"”'’)\s])[^\S\n]*\n(?=\s*(?:\n|$))/

function readSheet(sheet: string, to: ReturnType<typeof createCollector>): void {
  const title = to.pieces.length === 0 ? TITLE.exec(sheet) : null
  if (title) {
    to.add(title[1] ?? '', PLAIN)
    to.end('title')
  }
  for (const line of sheet.slice(title?.[0].length ?? 0).split('\n')) {
    if (line.trim() === '') {
      to.end()
      to.end('text', true)
    } else if (RULE.test(line)) to.addBreak()
    else if (LABEL.test(line)) {
      to.addBreak()
      to.add(line, PLAIN)
      to.end('heading')
    } else to.add(line + '\n', PLAIN)
  }
  to.end()
}
