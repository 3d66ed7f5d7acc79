// Pictures, emphasis and what is for the adult. Source of what is right: remark-parse, by whose tree each place is held.

import fc from 'fast-check'
import type { Nodes, Root } from 'mdast'
import remarkParse from 'remark-parse'
import { unified } from 'unified'
import { describe, expect, it } from 'vitest'
import { readStory, remarkFrontmatter, type Story } from '../../src/story/index.ts'
import { indent, line, toMarkdown } from './generated.ts'

const seed = 20_261_129
const runs = Number(process.env['STORY_RUNS'] ?? 300)

const blocksOf = (story: Story) => story.pages.flatMap((page) => page.blocks)

/** `kind slice-of-source | slice-of-text` for each emphasis of the child's text. */
const emphasisOf = (source: string): string[] =>
  blocksOf(readStory(source)).flatMap(({ text, emphasis }) =>
    emphasis.map(
      ({ kind, start, end, textStart, textEnd }) =>
        `${kind} ${source.slice(start, end)} | ${text.slice(textStart, textEnd)}`,
    ),
  )

describe('pictures', () => {
  const picturesOf = (source: string) =>
    readStory(source).pictures.map(
      ({ source: file, alt, title, page, inNote, start, end }) =>
        `${page}${inNote ? ' note' : ''} ${file} ${alt}${title === undefined ? '' : ` (${title})`} | ${source.slice(start, end)}`,
    )

  it.each([
    ['alone', '![A hen](hen.png)\n\nA hen.', ['1 hen.png A hen | ![A hen](hen.png)']],
    ['with a title', 'A hen. ![](hen.png "by Meg")', ['1 hen.png  (by Meg) | ![](hen.png "by Meg")']],
    [
      'with escapes',
      '![A \\* &amp; b](<a b&amp;c.png>)\n\nHen.',
      ['1 a b&c.png A * & b | ![A \\* &amp; b](<a b&amp;c.png>)'],
    ],
    ['by reference', '![hen][Big  Hen]\n\nA hen.\n\n[big hen]: hen.png "x"', ['1 hen.png hen (x) | ![hen][Big  Hen]']],
    ['by the first of two definitions', '![hen]\n\nA.\n\n[hen]: a.png\n[HEN]: b.png', ['1 a.png hen | ![hen]']],
    ['without a definition', '![hen]\n\nA hen.', []],
    ['in a link', '[![hen](hen.png)](https://x.org)\n\nA hen.', ['1 hen.png hen | ![hen](hen.png)']],
    ['in a list', '- ![hen](hen.png) A hen.', ['1 hen.png hen | ![hen](hen.png)']],
    ['in a heading', '# Meg ![hen](hen.png)\n\nA hen.', ['1 hen.png hen | ![hen](hen.png)']],
    [
      'on its page',
      '![c](c.png)\n\n# Meg\n\n---\n\nA hen.\n\n---\n\nA ![d](d.png) dog.',
      ['1 c.png c | ![c](c.png)', '2 d.png d | ![d](d.png)'],
    ],
    ['after the page break, before the text', 'A hen.\n\n---\n\n![d](d.png)\n\nA dog.', ['2 d.png d | ![d](d.png)']],
    ['for the adult', 'A hen.\n\n> See ![map](map.png).', ['1 note map.png map | ![map](map.png)']],
    ['in the credits', 'A hen.\n\n---\n\nWritten by Ann Bell ![logo](l.png)', ['2 note l.png logo | ![logo](l.png)']],
    ['in code', 'A hen. `![a](b.png)`', []],
    [
      'with a byte order mark and CRLF',
      '\uFEFFA hen.\r\n\r\n![a\r\nb](b.png)\r\n',
      ['1 b.png a\r\nb | ![a\r\nb](b.png)'],
    ],
  ])('%s', (_, source, expected) => {
    expect(picturesOf(source)).toEqual(expected)
  })
})

describe('notes', () => {
  const notesOf = (source: string) =>
    readStory(source).notes.map(
      ({ kind, page, text, start, end }) => `${kind} ${page} ${text} | ${source.slice(start, end)}`,
    )

  it.each([
    ['a quote', 'A hen.\n\n> Point at *it*.', ['quote 1 Point at it. | Point at *it*.']],
    [
      'its paragraphs one by one',
      'A hen.\n\n> One.\n>\n> Two\n> more.',
      ['quote 1 One. | One.', 'quote 1 Two\nmore. | Two\n> more.'],
    ],
    ['its heading and list', 'A hen.\n\n> # Ask\n>\n> - Who?', ['quote 1 Ask | # Ask', 'quote 1 Who? | Who?']],
    ['a quote in a quote', 'A hen.\n\n> > In\n> > it.', ['quote 1 In\nit. | In\n> > it.']],
    ['a quote in a list', '- A hen.\n  > Ask.', ['quote 1 Ask. | Ask.']],
    ['a lazy line', 'A hen.\n\n> Ask\nagain.', ['quote 1 Ask\nagain. | Ask\nagain.']],
    ['on its page', 'A hen.\n\n---\n\n> Ask.\n\nA dog.\n\n---\n\nA cat.', ['quote 2 Ask. | Ask.']],
    ['before all', '> Ask.\n\n# Meg\n\nA hen.\n\n---\n\nA dog.', ['quote 1 Ask. | Ask.']],
    ['at the end', 'A hen.\n\n---\n\nA dog.\n\n---\n\n> Ask.', ['quote 2 Ask. | Ask.']],
    [
      'credits',
      '# Meg\n\nA hen.\n\n---\n\nText: **Ann** Bell\n\nLicense: CC-BY',
      ['credits 1 Text: Ann Bell | Text: **Ann** Bell', 'credits 1 License: CC-BY | License: CC-BY'],
    ],
    ['a picture alone is none', 'A hen.\n\n> ![a](b.png)', []],
  ])('%s', (_, source, expected) => {
    expect(notesOf(source)).toEqual(expected)
  })

  it('know the place of each letter', () => {
    const source = 'A hen.\n\n> A fox\n> in \\*a\\* b&eacute;d.'
    const [note] = readStory(source).notes
    expect(note?.text).toBe('A fox\nin *a* béd.')
    expect([...(note?.text ?? '')].map((_, at) => source[note?.toSource(at) ?? 0]).join('')).toBe(
      'A fox\nin \\a\\ b&d.',
    )
  })
})

describe('emphasis', () => {
  it.each([
    ['of letters', 'A **sh**ip.', ['strong **sh** | sh']],
    ['of words', '*The ship* is _wet_.', ['emphasis *The ship* | The ship', 'emphasis _wet_ | wet']],
    ['in emphasis', '***big*** dog', ['emphasis ***big*** | big', 'strong **big** | big']],
    ['in a heading', '# The **sh**ip\n\nA hen.', ['strong **sh** | sh']],
    ['over a line end', 'A **big\ndog** sat.', ['strong **big\ndog** | big\ndog']],
    ['beside a character reference', '&eacute;t **&amp;a** b', ['strong **&amp;a** | &a']],
    ['of letters joined in print', 'ﬁn **ﬁsh** ﬀ', ['strong **ﬁsh** | fish']],
    ['of an address', 'See https://adult.org and **wet** mud.', ['strong **wet** | wet']],
    ['around a picture and words', '**![a](b.png) wet**', ['strong **![a](b.png) wet** |  wet']],
    ['of a picture alone is none', 'A **![a](b.png)** hen.', []],
    ['of code alone is none', 'A **`x`** hen.', []],
    ['none', 'A hen \\*sat\\*.', []],
  ])('%s', (_, source, expected) => {
    expect(emphasisOf(source)).toEqual(expected)
  })
})

const parser = unified().use(remarkParse).use(remarkFrontmatter).freeze()

interface Expected {
  readonly pictures: string[]
  readonly notes: string[]
  readonly emphasis: string[]
  /** Where the parser sees HTML: text that a comment begins is read all the same. */
  readonly html: (readonly [number, number])[]
}

const letters = (text: string): string => text.normalize('NFKC').replace(/[^\p{L}\p{N}]/gu, '')

/** Text that a child or an adult reads: code, addresses and pictures left out. */
function toText(node: Nodes): string {
  if (node.type === 'text') return node.value
  const isAddress = node.type === 'link' && node.children.length === 1 && toText(node.children[0] as Nodes) === node.url
  return 'children' in node && !isAddress ? node.children.map(toText).join('') : ''
}

function expectOf(source: string): Expected {
  const found: Expected = { pictures: [], notes: [], emphasis: [], html: [] }
  const base = source.startsWith('\uFEFF') ? 1 : 0
  const visit = (node: Nodes, isNote: boolean): void => {
    const range = [base + (node.position?.start.offset ?? 0), base + (node.position?.end.offset ?? 0)] as const
    if (node.type === 'html') found.html.push(range)
    if (node.type === 'image') found.pictures.push(`${range} ${node.url} ${node.alt} ${isNote}`)
    if (isNote && (node.type === 'paragraph' || node.type === 'heading') && toText(node).trim() !== '')
      found.notes.push(`${range} ${letters(toText(node))}`)
    if ((node.type === 'strong' || node.type === 'emphasis') && letters(toText(node)) !== '')
      found.emphasis.push(`${node.type} ${range} ${letters(toText(node))}`)
    if ('children' in node) for (const child of node.children) visit(child, isNote || node.type === 'blockquote')
  }
  visit(parser.parse(source) as Root, false)
  return found
}

function foundOf(source: string): Omit<Expected, 'html'> {
  const story = readStory(source)
  const toEmphasis = ({ text, emphasis }: Pick<Story['notes'][number], 'text' | 'emphasis'>): string[] =>
    emphasis.map(
      ({ kind, start, end, textStart, textEnd }) =>
        `${kind} ${start},${end} ${letters(text.slice(textStart, textEnd))}`,
    )
  return {
    pictures: story.pictures.map(
      ({ start, end, source: url, alt, inNote }) => `${start},${end} ${url} ${alt} ${inNote}`,
    ),
    notes: story.notes.map(({ start, end, text }) => `${start},${end} ${letters(text)}`),
    emphasis: [...blocksOf(story), ...story.notes].flatMap(toEmphasis).filter((one) => !one.endsWith(' ')),
  }
}

/** No addresses: what is left out of them is held by other tests. */
const plainLine = line.filter((text) => !/adult(?:\.|@)|www|[*]ﬀ/.test(text))
const some = fc.oneof(
  plainLine,
  plainLine.map((text) => indent(text, '> ', '> ')),
  plainLine.map((text) => indent(text, '> > ', '> > ')),
  plainLine.map((text) => indent(text, '- > ', '  > ')),
  plainLine.map((text) => indent(text, '- ', '  ')),
  plainLine.map((text) => indent(text, '> - ', '>   ')),
  plainLine.map((text) => `## ${text.replaceAll(/\\?\n/g, ' ')}`),
  fc.constantFrom(
    '---',
    '![Meg](meg.png)',
    '![M\\*g \\[a\\]](<m g.png> "t") big ![](b.png)',
    '> ![map](map.png)',
    '*a **b** ![c](d) e*',
  ),
)

it('stand where remark-parse says, in generated Markdown', () => {
  let seen = 0
  fc.assert(
    fc.property(toMarkdown(some), (source) => {
      const expected = expectOf(source)
      const found = foundOf(source)
      const isInHtml = (one: string): boolean => {
        const at = Number(/\d+/.exec(one)?.[0])
        return expected.html.some(([start, end]) => start <= at && at < end)
      }
      for (const what of ['pictures', 'notes', 'emphasis'] as const) {
        seen += expected[what].length
        expect(found[what].filter((one) => !isInHtml(one)).sort()).toEqual(expected[what].sort())
      }
    }),
    { seed, numRuns: runs },
  )
  expect(seen).toBeGreaterThan(5 * runs)
})
