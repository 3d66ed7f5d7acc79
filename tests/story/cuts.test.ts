// Where long sources are cut for the parser. The other tests hold that a cut source reads as the whole does; these hold that it is cut
// at all, and that a cut stands nowhere else: without cuts a long list, quote or paragraph takes a time that grows with its square.
// A place is marked by `¦`. Rules: CommonMark 0.31.2, what ends a block and what closes emphasis, code, links and HTML.

import remarkParse from 'remark-parse'
import { unified } from 'unified'
import { describe, expect, it } from 'vitest'
import { findInlineCuts, type Gap } from '../../src/story/inline-cuts.ts'
import { parsePart } from '../../src/story/parse.ts'
import { parseStretches } from '../../src/story/parse-stretches.ts'
import { cutParts, isOnePart, isOnePartNow } from '../../src/story/parts.ts'

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
  '1) a `b`\n¦2) c `d`',
  '1) a `b`\n2. c `d`',
  '1. a `b`\n¦123456789. c',
  '1. a `b`\n1234567890. c',
  '1. a `b`\n¦- c',
  '- a `b`\n1. c',
  // What stands in the indent of its item belongs to it.
  '1. a `b`\n   c\n¦2. d',
  '1.   a `b`\n     c\n¦2. d',
  '10. a `b`\n   c\n2. d',
  '1. a `b`\n  c\n2. d',
  // So does text at the margin behind text; behind what may be something else that is not sure.
  '1. a `b`\nc\n¦2. d',
  '1. a `b`\nc\nd\n¦2. e',
  '1. a `b`\n“c\n¦2. d',
  '1. `b`\nc\n2. d',
  '1. a `b`\n   c\nd\n2. e',
  '1. a `b`\n-c\n2. d',
  '1. a `b`\n6 c\n2. d',
  // No item: no blank, five blanks, nothing behind the number.
  '1.a `b`\n2. c',
  '1.     a `b`\n2. c',
  '1. a `b`\n2.\n3. c',
  '1. a `b`\n2.     c',
  '1. a `b`\n¦2.    c',
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

describe('what reaches across', () => {
  it.each(['```', '~~~', '<script>', '<PRE', '<style', '<textarea', '<?a', '<!A', '<![CDATA[', ']:', 'a\rb'])(
    'is %j',
    (text) => {
      expect(isOnePart(`a ${text} b`)).toBe(true)
    },
  )

  it.each(['``', '~~', '<!-- a -->', '<b>', '< script', '<div>', '] :', 'a\r\nb', '[a](b)'])('is not %j', (text) => {
    expect(isOnePart(`a ${text} b`)).toBe(false)
  })

  // Of a source that could be cut, only the stretch around an edit can hold anything new: far from it nothing is looked at.
  it.each([
    ['before it', `\`\`\`${'a'.repeat(20)}|x|${'b'.repeat(20)}`],
    ['behind it', `${'a'.repeat(20)}|x|${'b'.repeat(20)}\`\`\``],
  ])('is not looked for far %s', (_, marked) => {
    const [before = '', put = '', after = ''] = marked.split('|')
    const change = { start: before.length, oldEnd: before.length, newEnd: before.length + put.length }
    expect(isOnePart(before + put + after)).toBe(true)
    expect(isOnePartNow(before + put + after, change)).toBe(false)
  })

  it.each([
    ['in it', `${'a'.repeat(20)}|\`\`\`|b`],
    ['at its start', `${'a'.repeat(20)}\`\`|\`|${'b'.repeat(20)}`],
    ['at its end', `${'a'.repeat(20)}|<|textarea${'b'.repeat(20)}`],
    ['in a long one', `a|${'b'.repeat(40)}\`\`\`${'b'.repeat(40)}|a`],
    ['where something went', `${'a'.repeat(20)}]||:${'b'.repeat(20)}`],
    ['at the very start', `|\`|\`\`${'a'.repeat(40)}`],
  ])('is found %s', (_, marked) => {
    const [before = '', put = '', after = ''] = marked.split('|')
    const change = { start: before.length, oldEnd: before.length, newEnd: before.length + put.length }
    expect(isOnePartNow(before + put + after, change)).toBe(true)
  })

  it('is no comment that begins where the look ends', () => {
    const source = `x${'y'.repeat(14)}<!-- a -->`
    expect(isOnePartNow(source, { start: 0, oldEnd: 0, newEnd: 1 })).toBe(false)
  })
})

describe('parts', () => {
  const toTexts = (source: string, length: number, from = 0) =>
    [...cutParts(source, from, length)].map(({ start, end }) => source.slice(start, end))

  it('hold no blank lines before, between or behind them', () => {
    expect(toTexts('\n \t\na `b`\n\n \n\nTam sat.\n\n\t\n  ', 1)).toEqual(['a `b`\n', 'Tam sat.'])
    expect(toTexts('\r\n\r\na `b`\r\n \r\n', 1)).toEqual(['a `b`\r\n'])
    expect(toTexts('', 1)).toEqual([])
    expect(toTexts(' \n\t', 1)).toEqual([])
  })

  it('begin where they are asked to', () => {
    expect(toTexts('---\na: `b`\n---\nc `d`', 1, 14)).toEqual(['c `d`'])
    expect(toTexts('---\na: b\n---\n```\nc\n```', 1, 12)).toEqual(['\n```\nc\n```'])
  })

  it('of plain text tell what stands there, those for the parser do not', () => {
    const parts = [...cutParts('Tam sat.\n\na `b`\n\nMeg ran.', 0, 1)]
    expect(parts.map(({ nodes }) => nodes?.map(({ type }) => type))).toEqual([['paragraph'], undefined, ['paragraph']])
  })

  it('that the parser must see are joined up to the next plain one', () => {
    expect(toTexts('a `b`\n\nc `d`\n\nTam sat.\n\ne `f`', 100)).toEqual(['a `b`\n\nc `d`\n', 'Tam sat.', 'e `f`'])
  })

  // Cut into stretches where it is more than twice as long as asked.
  it.each([
    ['twice as long', 'a `b` cd ef gh ij kl', 10, undefined],
    ['longer by one', 'a `b` cd ef gh ij klm', 10, [11]],
    ['with a text at the margin behind it', 'a `b` cd ef gh ij klm\n\nTam', 10, [11]],
    ['with a text in an indent behind it', 'a `b` cd ef gh ij klm\n\n  `Tam`', 10, undefined],
    ['of plain letters', 'Tam sat on a mat and Meg ran to it.', 10, undefined],
    ['of nothing that could be cut', 'a [cd ef gh ij kl](m)', 10, undefined],
  ])('a paragraph %s', (_, source, length, starts) => {
    const [first] = cutParts(source, 0, length)
    expect(first?.cuts?.map(({ start }) => start)).toEqual(starts)
  })

  it('that are long stand alone among others', () => {
    const long = 'a `b` cd ef gh ij klm no'
    expect(toTexts(`c \`d\`\n\n${long}\n\ne \`f\``, 10)).toEqual(['c `d`\n', `${long}\n`, 'e `f`'])
  })
})

describe('stretches', () => {
  const parser = unified().use(remarkParse).freeze()
  /** The paragraph that is cut at each `¦`, and the gap of a line end at each `↵`. */
  const parse = (marked: string, lineEnd = '\n') => {
    const source = marked.replaceAll('¦', ' ').replaceAll('↵', lineEnd)
    const cuts: Gap[] = []
    let at = 0
    for (const part of marked.split(/(?<=[¦↵] *)(?! )/)) {
      const [, text = '', gap = '', indent = ''] = /^([^¦↵]*)([¦↵]?)( *)$/.exec(part) ?? []
      const start = at + text.length
      const end = start + (gap === '↵' ? lineEnd.length : gap.length)
      if (gap !== '') cuts.push({ start, end, next: end + indent.length })
      at = end + indent.length
    }
    const asked: string[] = []
    const root = parseStretches(source, { start: 0, end: source.length, cuts }, (text) => {
      asked.push(text)
      return parser.parse(text)
    })
    return { root, asked, whole: parser.parse(source) }
  }

  // Reference: remark-parse 11 on the whole, places with lines and columns too.
  it.each([
    'Tam¦sat',
    'Tam¦sat¦on¦a mat',
    'Tam *ran* up. Meg¦sat',
    'Tam¦sat *on* a¦mat **up** to¦top',
    'Tam↵sat *on* a¦mat',
    'Tam↵  sat *on* a¦mat',
    '- Tam¦sat *up* to¦top',
    '12. Tam↵sat *on* up↵   a¦mat',
    '> Tam¦sat',
    // What ends the paragraph stands in the last stretch.
    'Tam¦sat\n===',
    'Tam¦sat *up*\n---\nMeg ran',
    'Tam¦sat\n# Meg\nran',
    'Tam¦sat\n- a\n- b',
  ])('%j joined are the whole', (marked) => {
    for (const lineEnd of ['\n', '\r\n']) {
      const { root, asked, whole } = parse(marked, lineEnd)
      expect(root?.children).toEqual(whole.children)
      expect(asked.length).toBe(marked.split(/[¦↵]/).length)
    }
  })

  // Undefined, so that the whole is parsed.
  it.each([
    ['a heading before the cut', '# Tam¦sat'],
    ['no text before it', 'Tam *ran*¦sat'],
    ['no text behind it', 'Tam¦*ran*'],
    ['a list behind it', 'Tam↵- sat'],
    ['a rule before it', '***↵Tam'],
    ['an item with more behind it', '- Tam¦sat\n\n  up'],
    ['a heading in an item', '- Tam¦sat\n  ==='],
  ])('that were cut wrongly are not joined: %s', (_, marked) => {
    expect(parse(marked).root).toBeUndefined()
  })

  it('that were cut wrongly are parsed as a whole', () => {
    const source = 'Tam *ran* up a hill'
    const cuts = [{ start: 9, end: 10, next: 10 }]
    const { root } = parsePart(source, { start: 0, end: source.length, nodes: undefined, cuts })
    expect(root.children).toEqual(parser.parse(source).children)
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
  String.raw`a¦b \\*c d* e¦f`,
  String.raw`a¦b [c](d "e \" f") g h`,
  'a¦b¦c\\\nd¦e',
  // What stands beside a mark tells whether it opens or closes (CommonMark 0.31.2, 6.2), what begins a line whether it ends the paragraph.
  'a¦b _(c d)_ e¦f',
  'a¦b (_c d_) e¦f',
  'a¦b¦c_(d¦e) f',
  'a¦b "_c d_" e¦f',
  'a¦b *"c d"* e¦f',
  'a¦b¦c*"d¦e¦f',
  'a¦b _c_d e_ f¦g',
  'a¦b __c d_ e f',
  'a¦b *c _d* e f',
  'a¦b * c* d¦e',
  'a¦b *c * d* e¦f',
  'a¦b *c * d e* f¦g',
  'a¦b **c ** d e** f¦g',
  'a¦b _c _ d e_ f¦g',
  'a¦b $_c d_ e¦f',
  'a¦b ```c d``` e¦f',
  'a¦b `c¦d',
  'a¦b `c``d e` f¦g',
  'a¦b <!-->c d',
  'a¦b <!--->c d',
  'a¦b <!DOCTYPE c d> e¦f',
  'a¦b </c> d¦e',
  'a¦b <?c d?> e¦f',
  'a¦b <c> <d> e¦f',
  'a¦b [c](<d e>) f g',
  'a¦b [c]( d ) e¦f',
  'a¦b [c]() d¦e',
  'a¦b [c] (d¦e) f',
  'a¦b [c][d e] f¦g',
  'a¦b [c¦d',
  'a¦b *c [d e* f] g h',
  'a¦b [c *d] e* f g',
  'a¦b¦c  \nd¦e',
  'a¦é¦ü¦b',
  'a 😀 b¦c',
  '*a b* c¦d',
  '_a b_ c¦d',
  '*a¦b',
  '1) a¦b¦c',
  '10. a¦b',
  '-  a¦b¦c',
  '-     a b',
  '&amp;¦b¦c',
  '“a¦b” c¦d',
  '6¦a¦b',
  '6. a¦b¦c',
  '(a¦b) c',
  '`a` b¦c',
  '``` a b',
  '~ a b',
  'a¦b\n| c d',
  'a¦b\n~~~',
  'a¦b\n`c` d¦e',
  'a¦b\n6¦c¦d',
  'a¦b\n6) c',
  'a¦b\n1234567890.¦c¦d',
  'a¦b\n*** c',
  'a¦b\n***c d*** e¦f',
  'a¦b\n<c> d e',
  'a¦b\n[c] d¦e',
  'a¦b\n+c d',
  'a¦b\n=c d',
  'a¦b\n!c¦d¦e',
  'a¦b\n,¦c¦d',
] as const

describe('paragraphs', () => {
  it.each(PARAGRAPHS)('%s', (marked) => {
    const source = marked.replaceAll('¦', ' ')
    const cuts = findInlineCuts(source, 0, source.length, 0)
    const shown = cuts.reduce((text, { start }) => `${text.slice(0, start)}¦${text.slice(start + 1)}`, source)
    expect(shown).toBe(marked)
    // Reference: remark-parse 11 on the whole.
    const parse = (text: string) => unified().use(remarkParse).parse(text)
    if (cuts.length === 0) return
    const joined = parseStretches(source, { start: 0, end: source.length, cuts }, parse)
    expect(joined?.children).toEqual(parse(source).children)
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
