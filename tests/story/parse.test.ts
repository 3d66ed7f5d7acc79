// Reading a source part by part, its plain blocks without the Markdown parser, gives the tree that remark-parse gives.
// Reference: remark-parse 11 on the whole source (npm, https://spec.commonmark.org/0.31.2/).

import fc from 'fast-check'
import type { Nodes } from 'mdast'
import remarkParse from 'remark-parse'
import { unified } from 'unified'
import { describe, expect, it } from 'vitest'
import { remarkFrontmatter } from '../../src/story/front-matter.ts'
import { findInlineCuts } from '../../src/story/inline-cuts.ts'
import { type ParsedPiece, parseMarkdown, parsePart } from '../../src/story/parse.ts'
import { parseStretches } from '../../src/story/parse-stretches.ts'
import { cutParts } from '../../src/story/parts.ts'
import { readPlainBlock } from '../../src/story/plain.ts'
import { outlinePieces } from '../../src/story/read.ts'

const seed = 20_261_125
const runs = Number(process.env.STORY_RUNS ?? 2000)

const plain = unified().use(remarkParse).freeze()
const withFrontMatter = unified().use(remarkParse).use(remarkFrontmatter).freeze()

/** A node with its offsets in the source; lines and columns of parts count from the part. */
function toPlain(node: Nodes, base: number): unknown {
  const { position, ...rest } = node
  const children = 'children' in node ? { children: node.children.map((it) => toPlain(it, base)) } : {}
  // Code in an indent may end with blank lines, which are of no part.
  const ends = node.type === 'code' ? [position?.start] : [position?.start, position?.end]
  const places = ends.map((it) => base + (it?.offset ?? Number.NaN))
  return { ...rest, ...children, places }
}

const byParts = (source: string): unknown[] =>
  [...parseMarkdown(source)].flatMap(({ root, base }) => root.children.map((it) => toPlain(it, base)))

const atOnce = (source: string): unknown[] =>
  toReference(source)
    .parse(source)
    .children.map((it) => toPlain(it, source.startsWith('\uFEFF') ? 1 : 0))

/** The extension misreads `---\nTam\n\nTam\n>`, where front matter is never closed, so it reads only what is closed. */
const toReference = (source: string) =>
  /^\uFEFF?---[ \t]*\r?\n(?:[\s\S]*?\n)?---[ \t]*(?:\r|\n|$)/.test(source) ? withFrontMatter : plain

// Lines that mean something to Markdown beside lines that only look so, in any order.
const line = fc.constantFrom(
  ...['Tam sat.', 'Did Meg run?', '“Stop!” said Sid.', '(It was wet.)', '"No," said Tam; a big - bad - hen:', 'é', 'A'],
  ...[
    'Tam sat. ',
    'Tam sat.  ',
    ' Tam sat.',
    '   Tam',
    '    Tam',
    '\tTam',
    'Tam\tsat',
    'Tam \\',
    '6 hens',
    '6. hens',
    '6) a',
  ],
  ...[
    '---',
    '--- ',
    '---\t',
    ' ---',
    '- - -',
    '--',
    '-',
    '- hen',
    '***',
    '* hen',
    '+ hen',
    '1. hen',
    '1)',
    '===',
    '=',
    '_a_',
  ],
  ...['# Tam', '#Tam', '# Tam #', '#', '##', '## ', '##  Tam', '####### Tam', '## 6', ' # Tam', '# - Tam', '#\tTam'],
  ...[
    '> Tam',
    '>',
    '*Tam* sat',
    '**T**am',
    'Tam *sat* on **the mat**, sh**ee**p.',
    '*a**b*',
    '**a*b**',
    'a *b c*d',
    'a*b*c*d*',
    '***a***',
    '*(a)* *b *',
    "**Tam's**",
    'T_a_m',
    '`a`',
    '`a',
    '``',
    '<b>',
    '<div>',
    '</div>',
    '<a',
    'a <b',
    'a > b',
  ],
  ...[
    '[a](b)',
    '[a]',
    '![a](b)',
    'a!',
    'b&amp;c',
    '&',
    'a\\*',
    '<http://a.b>',
    'http://a.b/c',
    'a@b.c',
    '~~a~~',
    'a | b',
    ':-',
  ],
  ...[
    '<!-- a',
    'b -->',
    '<!-- a -->',
    'a <!-- b',
    '<!-->',
    '<!--->',
    '--> Tam',
    '<!-- a --> Tam',
    'שלום',
    '😀',
    'cafe\u0301',
  ],
  ...['title: Tam', '...', '…', '- a\n\n  b', '1. a\n\n   b\n\n2. c', '\u00A0', '\u00A0Tam', 'Tam\u00A0', '\u00AD'],
)
const rare = fc.constantFrom('```', '~~~', '[a]: b', '<script>', '</script>', '<?', '?>', '<!A', '\rTam')
const source = fc
  .tuple(
    fc.array(fc.tuple(fc.oneof({ weight: 40, arbitrary: line }, { weight: 1, arbitrary: rare }), fc.nat(9)), {
      maxLength: 12,
    }),
    fc.constantFrom('\n', '\r\n'),
    fc.constantFrom('', '', '', '\uFEFF', '\n', '---\n', '---\ntitle: Tam\n\nno: 1\n---\n', ' \n', '\t\n\n'),
    fc.constantFrom('', '\n', '\n\n', '\n \n'),
  )
  .map(([lines, end, start, last]) => {
    const joined = lines.map(([text, gap], at) => (at === 0 ? text : `${'\n'.repeat(toGap(gap))}${text}`)).join('')
    return (start + joined + last).replaceAll('\n', end)
  })

/** Most lines stand alone between blank lines, as those of a story do. */
const toGap = (gap: number): number => (gap < 3 ? 1 : gap < 9 ? 2 : 3)

describe('part by part', () => {
  it('gives the tree of remark-parse', () => {
    fc.assert(
      fc.property(source, (text) => {
        expect(byParts(text)).toEqual(atOnce(text))
      }),
      { seed, numRuns: runs },
    )
  }, 600_000)

  it('gives the tree of remark-parse for any text of the letters that Markdown knows', () => {
    const letters = fc.constantFrom(...'aT6 .!"\'(-#:/\n\n\n*_`[]<>&\\~=+é\t')
    const noise = fc.array(letters, { maxLength: 60 }).map((it) => it.join(''))
    fc.assert(
      fc.property(noise, (text) => {
        expect(byParts(text)).toEqual(atOnce(text))
      }),
      { seed, numRuns: runs },
    )
  }, 600_000)
})

it('reads a list that is cut between its items as remark-parse reads it whole', () => {
  const lines = fc.array(fc.oneof({ weight: 1, arbitrary: line }, { weight: 2, arbitrary: item }), { maxLength: 14 })
  const long = fc.tuple(lines, fc.constantFrom('\n', '\r\n')).map(([all, end]) => all.join(end))
  fc.assert(
    fc.property(long, fc.integer({ min: 1, max: 30 }), (text, length) => {
      const parts = [...cutParts(text, 0, length)].map((part) => parsePart(text, part))
      expect(toOutlined(text, parts)).toEqual(toOutlined(text, [{ root: plain.parse(text), base: 0 }]))
    }),
    { seed, numRuns: runs },
  )
}, 600_000)

const item = fc.constantFrom(
  ...[
    '- a hen',
    '- *a* hen',
    '* a',
    '+ a',
    '-   a',
    '- - a',
    '-',
    '- `a',
    '  - a',
    '  a',
    '1. a',
    '2. a',
    '> - a',
    '* * *',
  ],
  ...[
    '3. a',
    '10) a',
    '2.  a',
    '2. *a',
    '   a',
    '   - a',
    '     a',
    '> a',
    '>',
    '> > a',
    '>  ',
    '# a',
    '---',
    'a',
    'Tam sat',
  ],
  ...['- <!-- a', '- b -->', '- <div>', '- a  ', '- a\\', '- # A', '- ---', '    - a', '-     a', '- 1. a', '- > a'],
)

// Reference: remark-parse on the whole paragraph.
it('joins the stretches of a long paragraph to the tree of remark-parse', () => {
  const pieces = fc.oneof(
    {
      weight: 14,
      arbitrary: fc.constantFrom('Tam sat', 'Meg', 'é', ' ', ' ', ' ', '\n', '\r\n', '\n  ', ', ', '. ', 'a b c'),
    },
    { weight: 2, arbitrary: fc.constantFrom('*', '**', '_', '__', '***', '*a*', '**a b**', '_a_', ' *', '* ', 'a_b') },
    {
      weight: 2,
      arbitrary: fc.constantFrom('[', ']', '[a b]', '](b)', '](b "t")', '![a](b)', '(', ')', '](', '[a](<b c>)'),
    },
    {
      weight: 1,
      arbitrary: fc.constantFrom('`', '``', '`a b`', '\\', '\\*', '\\`', '&amp;', '&#42;', '  \n', '\\\n', '<', '>'),
    },
    {
      weight: 1,
      arbitrary: fc.constantFrom(
        '<b>',
        '</b>',
        '<a b="c d">',
        '<!-- a b -->',
        '<!-- *a -->',
        '<!--',
        '<a:b c>',
        '<b *',
        '6',
      ),
    },
    {
      weight: 1,
      arbitrary: fc.constantFrom(
        '\n- a',
        '\n1. a',
        '\n2) a',
        '\n# a',
        '\n===',
        '\n---',
        '\n> a',
        '\n<div>',
        '\n6 a',
        '\n+',
        '!',
      ),
    },
  )
  const texts = fc.tuple(fc.constantFrom('', '', '', '- ', '12. ', '*a* '), fc.array(pieces, { maxLength: 40 }))
  const long = texts.map(([first, all]) => first + all.join(''))
  let joined = 0
  fc.assert(
    fc.property(long, fc.integer({ min: 1, max: 12 }), (text, length) => {
      const cuts = findInlineCuts(text, 0, text.length, length)
      if (cuts.length === 0 || !isOneBlock(text)) return
      joined += 1
      const root = parseStretches(text, { start: 0, end: text.length, cuts }, (part) => plain.parse(part))
      expect(root?.children).toEqual(plain.parse(text).children)
    }),
    { seed, numRuns: 3 * runs },
  )
  expect(joined).toBeGreaterThan(runs / 4)
}, 120_000)

it('closes no emphasis where a mark of the other kind stands before it', () => {
  const text = '*_a_*a*[Tam sat*'
  expect(findInlineCuts(text, 0, text.length, 1)).toEqual([])
})

it('keeps what stands in an indent with the list before it', () => {
  const text = 'Tam sat\n1. a\n\n   b\n\n2. c'
  expect([...cutParts(text, 0, 1)].map(({ start, end }) => text.slice(start, end))).toEqual([
    text.slice(0, text.indexOf('\n2.')),
    '2. c',
  ])
})

/** As stretches are cut of: without blank lines, and nothing in it reaches across them. */
const isOneBlock = (text: string): boolean => !/\n[ \t]*(?:\r?\n|$)|\r(?!\n)|`{3}|\]:/.test(text) && !/^\s/.test(text)

/** What a story takes of a tree; a list is as good as two. */
const toOutlined = (text: string, pieces: Iterable<ParsedPiece>) => {
  const { frontMatter: _, ...rest } = outlinePieces(text, pieces)
  return rest
}

it('gives the tree of remark-parse for any text with words between asterisks', () => {
  const pieces = fc.constantFrom(
    'a',
    'b',
    'a b',
    ' ',
    '*',
    '**',
    '*',
    '**',
    '.',
    ',',
    '-',
    '(',
    "'",
    'é',
    '6',
    '\n',
    '\n\n',
  )
  const noise = fc.array(pieces, { maxLength: 30 }).map((it) => it.join(''))
  fc.assert(
    fc.property(noise, (text) => {
      expect(byParts(text)).toEqual(atOnce(text))
    }),
    { seed, numRuns: runs },
  )
}, 600_000)

it('counts a byte order mark in the middle, which the parser drops', () => {
  for (const text of ['Tam\n\n\uFEFF*Meg*', '---\na: b\n---\n\uFEFFMeg']) {
    const [meg] = byParts(text).slice(-1) as { places: readonly number[] }[]
    expect(text.slice(...(meg?.places ?? [])).replaceAll('*', '')).toBe('Meg')
  }
})

it('gives the tree of remark-parse for any lists under headings', () => {
  const pieces = fc.constantFrom(
    ...[
      '##\n',
      '##\n* ',
      '# Tam\n- ',
      '\n* ',
      '\n* ',
      '\n- ',
      '\n+ ',
      '\n',
      '\n\n',
      '\n\n* ',
      '\n\n  ',
      '\n \n',
      '\r\n* ',
    ],
    ...[
      'Tam',
      'hens',
      ' ',
      ': ',
      ', ',
      '[CC-BY]',
      '[a',
      'b]',
      '(c)',
      '](',
      '!',
      '[a] ',
      '6',
      '1. ',
      '  ',
      '-',
      '#',
      'é',
      '*',
    ],
  )
  const noise = fc.array(pieces, { maxLength: 24 }).map((it) => it.join(''))
  fc.assert(
    fc.property(noise, (text) => {
      expect(byParts(text)).toEqual(atOnce(text))
    }),
    { seed, numRuns: 2 * runs },
  )
}, 600_000)

describe('a plain block', () => {
  it.each([
    ['Tam sat.', 1],
    ['Tam sat.\nMeg ran.', 1],
    ['“Stop,” said Tam\r\n(and Meg).', 1],
    ['# Tam and the Hat', 1],
    ['##\nTam sat.\n---', undefined],
    ['##\nTam sat.\n## Two\n---', 4],
    ['##\nTam sat.\n## Two', 3],
    ['---', 1],
    ['---\nTam sat.', 2],
    ['Tam sat.  \nMeg ran.', undefined],
    ['6. Tam sat.', undefined],
    ['- Tam sat.', undefined],
    ['T*a*m sat.', 1],
    ['**Tam** sat\n*on* a mat.', 1],
    ['T*a**m* sat.', undefined],
    ['* Tam sat.', undefined],
    ['Tam *sat.', undefined],
    ['Tam &amp; Meg', undefined],
    ['##\n* Text: Tam\n* License: [CC-BY]', 2],
    ['##\n* Tam\n- Meg', undefined],
    ['##\n* Tam\nMeg', undefined],
    ['##\n* Tam\n\n* Meg', undefined],
    ['##\n* Tam\n\n  Meg', undefined],
    ['##\n* [a](b)', undefined],
    ['##\n* 6. hens', undefined],
    [' Tam sat.', undefined],
  ])('%j has %s nodes', (text, nodes) => {
    expect(readPlainBlock(`\n\n${text}\n\nMore.`, 2)?.nodes.length).toBe(nodes)
  })

  it('has the places of remark-parse, lines and columns too', () => {
    for (const text of [
      '##\n* Text: Tam\r\n* a [a] é',
      '## Tam\n“Stop!”\nsaid Meg.\n##   Two',
      '**Stop**, said\n*Meg* to T**a**m.\r\n*No*',
    ])
      expect(readPlainBlock(text, 0)?.nodes).toEqual(plain.parse(text).children)
  })
})
