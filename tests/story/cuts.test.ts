// Where long sources are cut for the parser. The other tests hold that a cut source reads as the whole does; these hold that it is cut
// at all, and that a cut stands nowhere else: without cuts a long list, quote or paragraph takes a time that grows with its square.
// A place is marked by `¦`. Rules: CommonMark 0.31.2, what ends a block and what closes emphasis, code, links and HTML.

import { describe, expect, it } from 'vitest'
import { findInlineCuts } from '../../src/story/inline-cuts.ts'
import { cutParts } from '../../src/story/parts.ts'

const toParts = (source: string, length: number): string =>
  [...cutParts(source, 0, length)].map(({ start, end }) => source.slice(start, end)).join('¦')

/** Plain stories are read without the parser, so each line here has what only the parser knows. */
const BLOCKS = [
  // Items at the margin, of each sign; an inner item belongs to its own.
  '- a `b`\n¦- c `d`\n¦- e',
  '* a `b`\n¦* c `d`',
  '+ a `b`\n¦+ c `d`',
  '- a `b`\n  - c\n¦- d',
  // Not an item: no blank behind the sign, or five of them.
  '- a `b`\n-c `d`',
  // Headings.
  'a `b`\n¦# c\nd `e`',
  'a `b`\n¦###### c\nd `e`',
  'a `b`\n####### c',
  'a `b`\n#c',
  // What follows a line of hyphens.
  'a `b`\n---\n¦c `d`',
  // A quote behind its own blank line.
  '> a `b`\n>\n¦> c',
  '> a `b`\n> c',
  // Numbers, where all lines before belong to the list.
  '1. a `b`\n¦2. c `d`',
  'a `b`\n2. c `d`',
  // HTML may reach further: no cut behind it.
  '- a `b`\n¦- c <b>\n- d',
] as const

describe('blocks', () => {
  it.each(BLOCKS)('%j', (marked) => {
    expect(toParts(marked.replaceAll('¦', ''), 1)).toBe(marked)
  })

  it('keeps together what is shorter than asked, and cuts before the first place behind that', () => {
    const items = Array.from({ length: 9 }, (_, at) => `- \`${at}\` b`)
    const source = items.join('\n')
    expect(source.length).toBe(9 * 8 - 1)
    expect(toParts(source, 20)).toBe(
      [items.slice(0, 3), items.slice(3, 6), items.slice(6)].map((some) => some.join('\n')).join('\n¦'),
    )
    expect(toParts(source, 1000)).toBe(source)
  })

  it('gives a line that is long in itself a part of its own', () => {
    const long = `- \`a\` ${'b '.repeat(40)}c`
    expect(toParts(`- \`a\`\n${long}\n- \`d\``, 20)).toBe(`- \`a\`\n¦${long}\n¦- \`d\``)
  })

  it('starts a new run behind a blank line at the margin once the run is long enough', () => {
    expect(toParts('a `b`\n\nc `d`\n\ne `f`', 8)).toBe('a `b`\n\nc `d`\n¦e `f`')
    // In an indent it may belong to what stands before it.
    expect(toParts('- `b`\n\n  c `d`\n\n  e `f`', 4)).toBe('- `b`\n\n  c `d`\n\n  e `f`')
  })

  it('starts a new run behind a very long gap, even in an indent', () => {
    expect(toParts(`- \`b\`${'\n'.repeat(502)}  c \`d\``, 4096)).toBe('- `b`\n¦  c `d`')
    expect(toParts(`- \`b\`${'\n'.repeat(501)}  c \`d\``, 4096)).not.toContain('¦')
  })

  it.each([
    // A comment that is open at a blank line holds what follows.
    ['a <!-- b\n\nc -->\n\nd `e`', ['a <!-- b\n\nc -->\n', 'd `e`']],
    ['a <!-- b -->\n\nc `d`', ['a <!-- b -->\n', 'c `d`']],
    ['a <!-- b --> <!-- c\n\nd --> e\n\nf `g`', ['a <!-- b --> <!-- c\n\nd --> e\n', 'f `g`']],
    ['a <!-- b\n\nc `d`', ['a <!-- b\n\nc `d`']],
    // A blank line may hold blanks.
    ['a `b`\n \t\nc `d`', ['a `b`\n', 'c `d`']],
    ['a `b`\r\n\r\nc `d`', ['a `b`\r\n', 'c `d`']],
  ])('ends a block at a blank line outside comments: %j', (source, expected) => {
    expect([...cutParts(source, 0, 1)].map(({ start, end }) => source.slice(start, end))).toEqual(expected)
  })

  it.each([
    '```\na\n```\n\nb `c`',
    '~~~\na\n\nb',
    '<pre>\na\n\nb',
    '<!DOCTYPE a>\n\nb',
    '[a]: b\n\nc `d`',
    'a `b`\r\rc',
  ])('cuts nothing where something reaches across blank lines: %j', (source) => {
    expect(toParts(source, 1)).toBe(source)
  })
})

/** Cuts stand at the gap between two words; `¦` is the blank there. */
const PARAGRAPHS = [
  'Tam¦sat¦on¦a¦mat',
  'Tam¦sat,¦and¦so;¦on.¦Meg!¦So?¦Yes',
  'a 6¦b',
  // Not within emphasis that is closed further on.
  'a¦b *c d* e¦f',
  'a¦b **c d** e¦f',
  'a¦b _c d_ e¦f',
  'a¦b ***c d*** e¦f',
  'a¦b *c **d e** f* g¦h',
  // Emphasis that nobody closes is none; what might close other emphasis is not sure.
  'a¦b *c¦d',
  'a¦b **c d* e',
  // A mark between blanks is a sign.
  'a¦b * c¦d',
  'a¦b_c¦d',
  'a¦b _ c¦d',
  // Code.
  'a¦b `c d` e¦f',
  'a¦b ``c ` d`` e¦f',
  'a¦b ` c¦d',
  'a¦b `*c` d¦e',
  // Not in links and pictures.
  'a¦b [c d](e) f¦g',
  'a¦b [c d] e¦f',
  'a¦b [c d](e "f g") h¦i',
  'a¦b ![c d](e) f¦g',
  // No address: what would be one is text.
  'a¦b [c d](e f) g',
  'a¦b ] c¦d',
  'a¦b [c [d] e] f',
  // HTML and addresses.
  'a¦b <c> d¦e',
  'a¦b <c d="e f"> g¦h',
  'a¦b <!-- c d --> e¦f',
  'a¦b <!-- c d',
  'a¦b < c¦d',
  'a¦b <c *d',
  // A backslash takes the meaning of the mark behind it.
  String.raw`a¦b \*c¦d`,
  String.raw`a¦b \[c¦d`,
  String.raw`a¦b \`c¦d`,
  String.raw`a¦b *c\* d`,
] as const

describe('paragraphs', () => {
  it.each(PARAGRAPHS)('%s', (marked) => {
    const source = marked.replaceAll('¦', ' ')
    const cuts = findInlineCuts(source, 0, source.length, 0)
    const shown = cuts.reduce((text, { start }) => `${text.slice(0, start)}¦${text.slice(start + 1)}`, source)
    expect(shown).toBe(marked)
  })

  it('keeps cuts as far apart as asked', () => {
    const source = 'ab cd ef gh ij kl'
    expect(findInlineCuts(source, 0, source.length, 6).map(({ start }) => start)).toEqual([8])
    expect(findInlineCuts(source, 0, source.length, 2).map(({ start }) => start)).toEqual([5, 11])
    expect(findInlineCuts(source, 0, source.length, 100)).toEqual([])
  })

  it('counts from the source, and tells the gap, its line end with it, and where the next word begins', () => {
    expect(findInlineCuts('Meg.\n\n- ab cd', 6, 13, 0)).toEqual([{ start: 10, end: 11, next: 11 }])
    expect(findInlineCuts('ab\n  cd', 0, 7, 0)).toEqual([{ start: 2, end: 3, next: 5 }])
    expect(findInlineCuts('ab\r\ncd', 0, 6, 0)).toEqual([{ start: 2, end: 4, next: 4 }])
  })

  it.each(['# ab cd', '> ab cd', '| ab cd', '<div> ab cd', '=== ab cd', '+ab cd'])(
    'leaves alone what is no paragraph: %s',
    (source) => {
      expect(findInlineCuts(source, 0, source.length, 0)).toEqual([])
    },
  )

  it.each([
    // A line that may end the paragraph: no cut at it or behind it.
    ['ab cd\n- ef gh', [2]],
    ['ab cd\n# ef gh', [2]],
    ['ab cd\n===', [2]],
    ['ab cd\n1. ef gh', [2]],
    ['ab xy *cd ef\n- gh* ij', [2]],
    ['- ab cd\n- ef', []],
  ])('%j is cut before its first line of another kind', (source, starts) => {
    expect(findInlineCuts(source, 0, source.length, 0).map(({ start }) => start)).toEqual(starts)
  })
})
