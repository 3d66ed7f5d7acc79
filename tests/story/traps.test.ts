// The traps in the libraries, one by one, with the places that an editor shows for each word.

import { fromMarkdown } from 'mdast-util-from-markdown'
import { describe, expect, it } from 'vitest'
import { createLines, readStory } from '../../src/story/index.ts'
import { readInlines } from '../../src/story/inlines.ts'
import { toSourceEnd, toSourceStart } from '../../src/story/text-map.ts'
import { placeOf, placesOf, wordsOf, wordTexts } from './helpers.ts'

/** Where a word of the paragraph in a block quote stands: such text is not read, but its places must be right. */
function placeInQuote(source: string, word: string): string {
  const quote = fromMarkdown(source).children[0]
  const paragraph = quote?.type === 'blockquote' ? quote.children[0] : undefined
  if (paragraph?.type !== 'paragraph') throw new Error('no paragraph in a quote')
  const none = () => undefined
  const { map } = readInlines(
    paragraph.children,
    { source, base: 0, quotes: 1 },
    { html: none, picture: none, tooDeep: none },
  )
  const at = map.text.indexOf(word)
  const lines = createLines(source)
  const start = lines.toPoint(toSourceStart(map, at))
  const end = lines.toPoint(toSourceEnd(map, at + word.length))
  return `${start.line}:${start.column}-${end.line}:${end.column}`
}

describe('columns', () => {
  it('after a quote mark on a continuation line', () => {
    expect(placeInQuote('> A fox\n> in a box', 'box')).toBe('2:8-2:11')
    expect(placeInQuote('> A fox\n>   in a box', 'box')).toBe('2:10-2:13')
    expect(placeInQuote('> A fox\nin a box', 'box')).toBe('2:6-2:9')
    expect(placeInQuote('> A fox\nin a box', 'in')).toBe('2:1-2:3')
    expect(placeInQuote('> A fox\n>in a box', 'in')).toBe('2:2-2:4')
    expect(placeInQuote('> A fox  \r\n> in a box', 'box')).toBe('2:8-2:11')
    expect(placeInQuote('> A fox\n> \\> in a box', 'box')).toBe('2:11-2:14')
  })

  it('after a list indent on a continuation line', () => {
    expect(placeOf('- A fox\n  in a box', 'box')).toBe('2:8-2:11')
    expect(placeOf('1. A fox\n   in a box\n   in a pond', 'pond')).toBe('3:9-3:13')
    expect(placeOf('- A fox\n\n  in a box', 'box')).toBe('3:8-3:11')
    expect(placeOf('- - A fox\n    in a box', 'box')).toBe('2:10-2:13')
    expect(placeOf('-\tA fox\n\tin a box', 'box')).toBe('2:7-2:10')
  })

  it('after an indent and a trailing space in a paragraph', () => {
    expect(placeOf('A fox \n   in a box', 'box')).toBe('2:9-2:12')
    expect(placeOf('A fox  \n   in a box', 'box')).toBe('2:9-2:12')
    expect(placeOf('A fox\\\n  in a box', 'box')).toBe('2:8-2:11')
  })

  it('after a backslash escape', () => {
    expect(placeOf('A \\* on a box', 'box')).toBe('1:11-1:14')
    expect(placeOf('A \\\\ on a box', 'box')).toBe('1:11-1:14')
    expect(placeOf('A \\ on a box', 'box')).toBe('1:10-1:13')
  })

  it('after a character reference', () => {
    expect(placeOf('Tom &amp; Sam', 'Sam')).toBe('1:11-1:14')
    expect(placeOf('Tom &#38; Sam', 'Sam')).toBe('1:11-1:14')
    expect(placeOf('Tom &#x26; Sam', 'Sam')).toBe('1:12-1:15')
    expect(placeOf('Tom &amp;amp; Sam', 'Sam')).toBe('1:15-1:18')
    expect(placeOf('Tom &nope; Sam', 'Sam')).toBe('1:12-1:15')
    expect(placeOf('Tom & Sam', 'Sam')).toBe('1:7-1:10')
  })

  it('in a word that holds a character reference', () => {
    expect(placesOf('A caf&eacute; is hot')).toEqual(['A 1:1-1:2', 'café 1:3-1:14', 'is 1:15-1:17', 'hot 1:18-1:21'])
    expect(placeOf('Don&rsquo;t hop', 'Don’t')).toBe('1:1-1:12')
  })

  it('with CRLF and a byte order mark', () => {
    expect(placesOf('\uFEFFA fox\r\nin a *box*')).toEqual([
      'A 1:1-1:2',
      'fox 1:3-1:6',
      'in 2:1-2:3',
      'a 2:4-2:5',
      'box 2:7-2:10',
    ])
    expect(placeOf('\uFEFF# Hat\r\n\r\n##\r\n- A fox\r\n  in a box\r\n', 'box')).toBe('5:8-5:11')
  })

  it('after pictures, code, tags, comments, links and emoji', () => {
    expect(placeOf('![a pig](p.png) A hen', 'hen')).toBe('1:19-1:22')
    expect(placeOf('A `pig` and a hen', 'hen')).toBe('1:15-1:18')
    expect(placeOf('A <b>pig</b> and a <!-- cow --> hen', 'hen')).toBe('1:33-1:36')
    expect(placesOf('A [red hen](https://x.y/pig "cow") sat')).toEqual([
      'A 1:1-1:2',
      'red 1:4-1:7',
      'hen 1:8-1:11',
      'sat 1:36-1:39',
    ])
    expect(placeOf('😀 A hen', 'hen')).toBe('1:6-1:9')
  })
})

// CommonMark 0.31.2: entity and numeric character references (2.5), backslash escapes (2.4), hard and soft line breaks (6.7, 6.8).
describe('the text of a block, and the source of its words', () => {
  const textOf = (source: string) => readStory(source).pages[0]?.blocks[0]?.text
  const slicesOf = (source: string) => wordsOf(readStory(source)).map((it) => source.slice(it.start, it.end))

  it.each([
    ['A fox\r\nran', 'A fox\nran', ['A', 'fox', 'ran']],
    ['A fox \t \n            ran', 'A fox\nran', ['A', 'fox', 'ran']],
    ['- A\r\n  \tfox\r\n  ran', 'A\nfox\nran', ['A', 'fox', 'ran']],
    ['a\\\r\n   b', 'a\nb', ['a', 'b']],
    ['A &amp;&amp; b', 'A && b', ['A', 'b']],
    ['A \\&amp; b', 'A &amp; b', ['A', 'amp', 'b']],
    ['A \\\\&amp; b', 'A \\& b', ['A', 'b']],
    ['&amp;amp; x', '&amp; x', ['amp', 'x']],
    ['&#65;b &#x42;c &#0; d', 'Ab Bc \uFFFD d', ['&#65;b', '&#x42;c', 'd']],
    ['A &notaref; c & d &', 'A &notaref; c & d &', ['A', 'notaref', 'c', 'd']],
    ['a &AMP; b &copy c', 'a & b &copy c', ['a', 'b', 'copy', 'c']],
    ['a &lt;b&gt; c', 'a <b> c', ['a', 'b', 'c']],
    ['a\\b \\# c \\', 'a\\b # c \\', ['a', 'b', 'c']],
    ['don&#39;t &rsquo;tis', "don't \u2019tis", ['don&#39;t', '&rsquo;tis']],
    ['&#x1F600;hen &#128512; fox', '😀hen 😀 fox', ['hen', 'fox']],
    ['&fjlig;ord x', 'fjord x', ['&fjlig;ord', 'x']],
    ['*a*\\*b*c*', 'a*bc', ['a', 'b*c']],
  ])('%j', (source, text, slices) => {
    expect(textOf(source)).toBe(text)
    expect(slicesOf(source)).toEqual(slices)
  })
})

it('two letters alike behind an escape, a reference or a line end have a place each', () => {
  for (const source of ['\\*oops', '&amp;oops', 'a&amp;\noops', '- a\n  oops'])
    for (const word of wordsOf(readStory(source)).filter(({ text }) => text === 'oops'))
      expect([...'oops'].map((_, at) => word.toSource(at, at + 1).start - source.indexOf('oops'))).toEqual([0, 1, 2, 3])
})

describe('emphasis inside a word', () => {
  it('leaves one word', () => {
    expect(placesOf('A sh**ee**p hid')).toEqual(['A 1:1-1:2', 'sheep 1:3-1:12', 'hid 1:13-1:16'])
    expect(wordTexts('**sh**ip *c*at sh<b>o</b>p')).toEqual(['ship', 'cat', 'shop'])
  })

  it('points at single letters through the marks', () => {
    const source = 'A sh**ee**p hid'
    const word = readStory(source).pages[0]?.blocks[0]?.sentences[0]?.words[1]
    const letters = word?.toSource(2, 4)
    expect(source.slice(letters?.start, letters?.end)).toBe('ee')
    const ends = [word?.toSource(0, 2), word?.toSource(4, 5)].map((it) => source.slice(it?.start, it?.end))
    expect(ends).toEqual(['sh', 'p'])
  })
})
