// What long blocks of every shape cost: the processor's time at 0.25, 0.5 and 1 MB, which says whether it is linear.

import { readStory } from '../../src/story/read.ts'
import type { Row } from './measure.ts'

/** A line or a sentence that is repeated without a blank line between; the number of the line where it shows one. */
const SHAPES: Readonly<Record<string, (line: number) => string>> = {
  addresses: () => 'Tam sat <http://a.b> on the mat and Meg ran to it. ',
  'blanks at line ends': () => 'Tam sat on the mat and Meg ran.  \n',
  'backslashes at line ends': () => 'Tam sat on the mat and Meg ran.\\\n',
  'bold words': () => 'Tam **sat & ran** on the mat and ***Meg*** ran to it. ',
  'character references': () => 'Tam &amp; Meg sat on the mat &eacute; and ran. ',
  code: () => 'Tam `sat` on the mat and Meg `ran` to it. ',
  comments: () => 'Tam sat <!-- a --> on the mat and Meg ran to it. ',
  'escaped marks': () => 'Tam \\& Meg sat\\! on the \\*mat and ran\\* to it. ',
  'headings with emphasis': () => '# Tam sat on the *mat*\n',
  HTML: () => 'Tam <b>sat</b> on the mat and Meg <i>ran</i> to it. ',
  'inner lists': () => '- Tam sat\n  - on the *mat*\n  - and Meg ran.\n',
  'inner lists of a numbered list': (line) => `${line}. Tam sat\n   - on the *mat*\n   - and Meg ran.\n`,
  'items of a list with emphasis': () => '- Tam sat on the *mat* and Meg ran.\n',
  'items of a numbered list with emphasis': (line) => `${line}. Tam sat on the *mat* and Meg ran.\n`,
  'italics in one line': () => 'Tam *sat* on the mat and _Meg ran_ to the pond. ',
  'lines that end as on Windows': () => 'Tam sat on the *mat* & Meg ran.\r\n',
  links: () => 'Tam [sat](a.png) on the mat and [Meg](b.html "T") ran to it. ',
  pictures: () => 'Tam ![sat](a.png) on the mat and Meg ran to it. ',
  'quotes in quotes': () => '> Tam sat on the mat.\n>\n> > Meg ran to it.\n>\n',
  tables: () => '| Tam | sat | on |\n',
  'words in brackets': () => 'Tam [sat] on the mat and Meg ran to it. ',
}

const SIZES = [256, 512, 1024] as const

function grow(shape: (line: number) => string, kilobytes: number): string {
  const lines: string[] = []
  for (let length = 0; length < kilobytes * 1024; )
    length += (lines[lines.push(shape(lines.length + 1)) - 1] ?? '').length
  return lines.join('')
}

/** Milliseconds of the processor; the better of two, since whatever else runs only adds to it. */
function measure(text: string): number {
  const once = (): number => {
    const before = process.cpuUsage()
    readStory(text)
    const { user, system } = process.cpuUsage(before)
    return (user + system) / 1000
  }
  return Math.min(once(), once())
}

export function benchShapes(): Row[] {
  // Code of the parser that has run seldom is slow.
  for (const shape of Object.values(SHAPES)) measure(grow(shape, 32))
  return Object.entries(SHAPES).map(([what, shape]): Row => {
    const [quarter = 0, half = 0, whole = 0] = SIZES.map((size) => measure(grow(shape, size)))
    const ratio = whole / quarter
    return {
      what: `1 MB of ${what} in one block, read ÷ 256 KB`,
      figure: `${ratio.toFixed(1)} × (512 KB ${(half / quarter).toFixed(1)} ×; 1 MB takes ${whole.toFixed(0)} ms of the processor)`,
      wanted: '≤ 6 × (linear: 4 ×)',
      holds: ratio <= 6,
    }
  })
}
