// What a keystroke costs in a story that is held, against a whole check of it: letters typed one after another, at one place
// after another.

import { rules } from '../../rules/index.ts'
import { type CheckInput, checkStory } from '../../src/check/check-story.ts'
import { createHeldCheck } from '../../src/check/held-check.ts'
import { createProcessIo } from '../../src/cli/io.ts'
import { createResources } from '../../src/cli/resources.ts'
import { PAUSE } from '../../src/server/live-checks.ts'
import { PROGRAM } from '../root.ts'
import type { Story } from './check.ts'
import { openInEditor } from './editor.ts'
import { type Row, time, toMedian } from './measure.ts'

const STEP = { step: { value: 'green-5', origin: '--step' } }
/** What is typed at each place. */
const TYPED = 'And the old goat ran. '
const PLACES = 3

const LIMITS = [
  { size: 50_000, most: 15 },
  { size: 500_000, most: 60 },
]

export async function benchKeystroke(stories: readonly Story[], what: string): Promise<Row[]> {
  const rows: Row[] = []
  for (const { size, most } of LIMITS)
    for (const suggest of [false, true]) rows.push(await benchOne(joinPages(stories, size), { what, most, suggest }))
  rows.push(await benchServer(joinPages(stories, 50_000), what))
  return rows
}

/** From what an editor sends to the diagnostics that it is sent, through a server of its own process. */
async function benchServer(book: string, what: string): Promise<Row> {
  const editor = await openInEditor(PROGRAM, `---\nstep: ${STEP.step.value}\n---\n\n${book}`)
  const times: number[] = []
  for (const letter of TYPED.repeat(2)) times.push(await time(() => editor.type(letter)))
  editor.close()
  const late = times.slice(TYPED.length)
  const median = toMedian(late)
  return {
    what: `from didChange to publishDiagnostics, ${Math.round(book.length / 1000)} KB of ${what}`,
    figure: `${median.toFixed(0)} ms, of which the server waits ${PAUSE} ms and as long as its last check took (${Math.min(...late).toFixed(0)}–${Math.max(...late).toFixed(0)} ms)`,
    wanted: `≤ ${PAUSE + 100} ms`,
    holds: median <= PAUSE + 100,
  }
}

/** Stories as the pages of one book, as often as it takes; without front matter, which only the top of a file has. */
function joinPages(stories: readonly Story[], size: number): string {
  const texts = stories.map(({ text }) => text.replace(/^---\n[\s\S]*?\n---\n/, '').trim())
  let book = texts[0] ?? ''
  for (let at = 1; book.length < size; at++) book += `\n\n---\n\n${texts[at % texts.length]}`
  return `${book}\n`
}

interface Wanted {
  readonly what: string
  readonly most: number
  readonly suggest: boolean
}

async function benchOne(book: string, { what, most, suggest }: Wanted): Promise<Row> {
  const resources = createResources(createProcessIo(process))
  const toInput = (source: string): CheckInput => ({
    path: 'book.md',
    source,
    storyPath: '/book.md',
    chain: { folders: [], problems: [] },
    flags: STEP,
    rules,
    resources,
    suggest,
  })
  const held = createHeldCheck()
  const keystrokes: number[] = []
  const wholes: number[] = []
  let source = book
  await held.check(toInput(source))
  // Twice: first to warm up.
  for (const isCounted of [false, true])
    for (let place = 0; place < PLACES; place++) {
      const at = source.indexOf(' ', Math.floor((source.length * (place + 0.5)) / PLACES)) + 1
      for (const [index, letter] of [...TYPED].entries()) {
        source = source.slice(0, at + index) + letter + source.slice(at + index)
        const input = toInput(source)
        const took = await time(() => held.check(input))
        if (isCounted) keystrokes.push(took)
        if (index === 0) wholes.push(await time(() => checkStory(input)))
      }
    }
  return toRow(keystrokes, wholes, { what, most, suggest, size: book.length })
}

function toRow(
  keystrokes: readonly number[],
  wholes: readonly number[],
  wanted: Wanted & { readonly size: number },
): Row {
  const { what, most, suggest, size } = wanted
  const median = toMedian(keystrokes)
  const sorted = [...keystrokes].sort((one, other) => one - other)
  const late = sorted[Math.floor(sorted.length * 0.95)] ?? 0
  const whole = toMedian(wholes)
  const offers = suggest ? 'with offers' : 'without offers'
  return {
    what: `a keystroke in ${Math.round(size / 1000)} KB of ${what}, ${offers}, held ÷ whole check`,
    figure: `${(median / whole).toFixed(3)} × (${median.toFixed(1)} ms, 95 % of them ≤ ${late.toFixed(1)} ms; whole ${whole.toFixed(0)} ms)`,
    wanted: `≤ ${most} ms`,
    holds: median <= most,
  }
}
