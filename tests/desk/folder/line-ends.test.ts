// Files and edits that were not chosen by hand: no byte changes that nobody touched. DESK_RUNS=20000 for more of them.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { toDifference } from '../../../src/desk/difference.ts'
import { changeText, openText, toFileText } from '../../../src/desk/folder/line-ends.ts'
import { openBytes, toBytes } from '../../../src/desk/folder/open-bytes.ts'
import type { TextEdit } from '../../../src/desk/folder/types.ts'

const runs = Number(process.env['DESK_RUNS'] ?? 1000)

const END = fc.constantFrom('\n', '\r\n', '\r')
const LINE = fc.oneof(
  fc.constantFrom('', '---', 'Tam had a hat.', '> For the grown-up', 'Zoë won 🦆.', '\u2028', '\u0085'),
  fc.string({ unit: 'binary', maxLength: 6 }),
)
/** Any mix of line ends, with or without a byte order mark, with or without a last line end. */
const FILE = fc
  .tuple(fc.boolean(), fc.array(fc.tuple(LINE, END), { maxLength: 12 }), LINE)
  .map(([hasMark, lines, last]) => (hasMark ? '\uFEFF' : '') + lines.flat().join('') + last)
  .filter((file) => !file.includes('\0'))
const WRITTEN = fc.oneof(
  fc.constantFrom('', 'x', '\n', 'a\nb', '\n\n\n', 'a\r\nb', '🦆'),
  fc.string({ unit: 'binary', maxLength: 4 }).filter((text) => !text.includes('\0')),
)
const toText = (file: string): string => file.replace(/^\uFEFF/, '').replace(/\r\n?/g, '\n')
/** Where the editor may put an edit: never inside a letter of two units. */
const toWhole = (text: string, at: number): number => (/[\uDC00-\uDFFF]/.test(text[at] ?? '') ? at + 1 : at)

function toEdit(text: string, [one, other, written]: readonly [number, number, string]): TextEdit {
  const places = [one, other].map((place) => toWhole(text, place % (text.length + 1)))
  return { start: Math.min(...places), end: Math.max(...places), text: written }
}
const DRAWN = fc.tuple(fc.nat(), fc.nat(), WRITTEN)

/** Where a place of the editor's text stands in the file. */
function toFilePlace(file: string, place: number): number {
  let at = file.startsWith('\uFEFF') ? 1 : 0
  for (let left = place; left > 0; left--) at += file.startsWith('\r\n', at) ? 2 : 1
  return at
}

describe('generated files', () => {
  it('come back byte for byte', () => {
    fc.assert(
      fc.property(FILE, (file) => {
        const bytes = new TextEncoder().encode(file)
        const opened = openBytes('hat.md', bytes)
        if (!opened.ok) throw new Error(opened.problems[0]?.message)
        expect(opened.value.locked).toBeUndefined()
        expect(opened.value.kept.text).toBe(toText(file))
        expect(toBytes(opened.value.kept)).toEqual(bytes)
      }),
      { numRuns: runs },
    )
  })

  it('keep every byte that an edit does not touch', () => {
    fc.assert(
      fc.property(FILE, DRAWN, (file, drawn) => {
        const before = openText(file)
        const edit = toEdit(before.text, drawn)
        const after = toFileText(changeText(before, [edit]))
        const head = file.slice(0, toFilePlace(file, edit.start))
        const tail = file.slice(toFilePlace(file, edit.end))
        expect(after.startsWith(head)).toBe(true)
        expect(after.endsWith(tail)).toBe(true)
        // A `\r` that comes to stand before a `\n` would melt with it; one more byte keeps them apart.
        expect(after.length).toBeLessThanOrEqual(file.length + 2 * edit.text.length + 1)
      }),
      { numRuns: runs },
    )
  })

  it('have the text of the editor after any edits, and again when they are opened', () => {
    fc.assert(
      fc.property(FILE, fc.array(DRAWN, { maxLength: 8 }), (file, all) => {
        let kept = openText(file)
        let text = kept.text
        for (const drawn of all) {
          const edit = toEdit(text, drawn)
          kept = changeText(kept, [edit])
          text = text.slice(0, edit.start) + edit.text.replace(/\r\n?/g, '\n') + text.slice(edit.end)
        }
        expect(kept.text).toBe(text)
        expect(kept.ends).toHaveLength(text.split('\n').length - 1)
        const again = openText(toFileText(kept))
        // A byte order mark that was typed in at the top is one.
        expect((again.hasMark && !kept.hasMark ? '\uFEFF' : '') + again.text).toBe(text)
      }),
      { numRuns: runs },
    )
  })

  it('take many edits at once as one after another', () => {
    fc.assert(
      fc.property(FILE, fc.array(DRAWN, { maxLength: 5 }), (file, all) => {
        const before = openText(file)
        const sorted = all.map((drawn) => toEdit(before.text, drawn)).sort((one, other) => one.start - other.start)
        const edits = sorted.filter((edit, at) => at === 0 || edit.start > (sorted[at - 1]?.end ?? 0))
        const apart = sorted.length === edits.length ? edits : edits.slice(0, 1)
        const one = changeText(before, apart)
        const each = apart.toReversed().reduce((kept, edit) => changeText(kept, [edit]), before)
        expect(one.text).toBe(each.text)
      }),
      { numRuns: runs },
    )
  })

  it('become one another by one edit', () => {
    fc.assert(
      fc.property(FILE, FILE, (one, other) => {
        const [before, after] = [openText(one), openText(other)]
        const edits = toDifference(before.text, after.text)
        expect(changeText(before, edits).text).toBe(after.text)
        for (const { start, end } of edits)
          expect([toWhole(before.text, start), toWhole(before.text, end)]).toEqual([start, end])
      }),
      { numRuns: runs },
    )
  })
})

describe('line ends', () => {
  const change = (file: string, start: number, end: number, text: string): string =>
    toFileText(changeText(openText(file), [{ start, end, text }]))

  it('of a line that is parted are its own; at the end of the file, those of the line above', () => {
    expect(change('a\r\nb\nc', 1, 1, '\nx')).toBe('a\r\nx\r\nb\nc')
    expect(change('a\r\nb\rc\n', 3, 3, '\nx')).toBe('a\r\nb\rx\rc\n')
    expect(change('a\nb\r\nc', 5, 5, '\nx\ny')).toBe('a\nb\r\nc\r\nx\r\ny')
    expect(change('a\r\nb', 0, 0, 'x\n')).toBe('x\r\na\r\nb')
    expect(change('a', 1, 1, '\nb')).toBe('a\nb')
  })

  it('that would melt into one are kept apart', () => {
    expect(change('a\rb\nc', 2, 3, '')).toBe('a\r\n\nc')
    expect(openText('a\r\n\nc').text).toBe('a\n\nc')
  })

  it('of lines that are replaced stay', () => {
    expect(change('a\r\nb\r\nc\n', 0, 4, 'x\ny\n')).toBe('x\r\ny\r\nc\n')
  })

  it('are not taken out of edits that do not fit', () => {
    expect(() => change('a', 0, 2, '')).toThrow(RangeError)
    expect(() =>
      changeText(openText('abc'), [
        { start: 2, end: 2, text: '' },
        { start: 1, end: 1, text: '' },
      ]),
    ).toThrow()
  })
})

describe('what is no text to write in', () => {
  const open = (bytes: readonly number[] | Uint8Array) => openBytes('hat.md', Uint8Array.from(bytes))

  it('is read only where it is not UTF-8', () => {
    const opened = open([0x63, 0x61, 0x66, 0xe9, 0x92, 0x0d, 0x0a])
    expect(opened).toMatchObject({ ok: true, value: { kept: { text: 'café’\n' }, locked: { code: 'binary' } } })
    expect(open([0xff, 0xfe, 0x61, 0x00])).toMatchObject({ ok: true, value: { kept: { text: 'a' } } })
  })

  it('is refused where it is binary', () => {
    expect(open([0x61, 0x00, 0x62])).toMatchObject({ ok: false, problems: [{ code: 'binary' }] })
  })

  it('is read only where it is too long', () => {
    expect(open(new Uint8Array(400_000).fill(97))).not.toHaveProperty('value.locked')
    expect(open(new Uint8Array(400_001).fill(97))).toMatchObject({ value: { locked: { code: 'too-large' } } })
    expect(open(new Uint8Array(11 * 1024 * 1024).fill(97))).toMatchObject({ ok: false })
  })

  it('never comes about by what somebody pastes', () => {
    const kept = changeText(openText('ab'), [{ start: 1, end: 1, text: '\0\ud800' }])
    expect(openBytes('hat.md', toBytes(kept))).toMatchObject({ ok: true, value: { kept: { text: 'a\uFFFD\uFFFDb' } } })
  })
})
