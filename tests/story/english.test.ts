// The short way through the parser for plain text must give what the long way gives.

import fc from 'fast-check'
import type { Nodes, Paragraph } from 'nlcst'
import { toString as toText } from 'nlcst-to-string'
import { ParseEnglish } from 'parse-english'
import { describe, expect, it, vi } from 'vitest'
import { toStopKind } from '../../src/story/abbreviations.ts'
import { parseEnglish } from '../../src/story/english.ts'
import { createLines } from '../../src/story/index.ts'
import { mendParagraph } from '../../src/story/mend.ts'
import { mendWord } from '../../src/story/mend-words.ts'
import { arePlainSentences, hasInnerMark } from '../../src/story/plain-english.ts'
import { appendText, createTextMap } from '../../src/story/text-map.ts'

const toShape = (it: Paragraph) =>
  it.children.map((child) =>
    child.type === 'SentenceNode'
      ? child.children.map((node) => [node.type, toText(node), node.position])
      : [child.type, toText(child)],
  )

function short(text: string): Paragraph {
  const map = createTextMap()
  appendText(map, text, 0, text.length)
  return parseEnglish(map, createLines(text))
}

function long(text: string): Paragraph {
  const paragraph = new ParseEnglish().tokenizeParagraph(text)
  mendParagraph(paragraph)
  return paragraph
}

describe('parseEnglish', () => {
  it('gives for any text of words and stops what the whole parser gives', () => {
    const word = fc.constantFrom(
      'Tam',
      'hen',
      'sat',
      'in',
      'I',
      'A',
      'a',
      'Mr',
      'etc',
      'it',
      'The',
      'sun',
      'tip-top',
      "don't",
      '6',
      'St',
    )
    const gap = fc.constantFrom(' ', ' ', '. ', '. ', '! ', '? ', ', ', '\n', '.\n', '... ', '” “', '?! ')
    const text = fc.array(fc.tuple(word, gap), { minLength: 1, maxLength: 14 }).map((it) => it.flat().join('').trim())
    fc.assert(
      fc.property(text, (it) => {
        expect(toShape(short(it))).toEqual(toShape(long(it)))
      }),
      { seed: 6, numRuns: 2000 },
    )
  })

  it('gives sentences without places when no lines are given', () => {
    const map = createTextMap()
    appendText(map, 'A hen sat. It hid.', 0, 18)
    expect(JSON.stringify(parseEnglish(map))).not.toContain('position')
    expect(parseEnglish(map).type).toBe('ParagraphNode')
  })
})

describe('toStopKind', () => {
  it.each([
    ['Mr', 'title'],
    ['mr', 'word'],
    ['eg', 'title'],
    ['e.g', 'initials'],
    ['p.m', 'tail'],
    ['etc', 'tail'],
    ['U.S', 'initials'],
    ['T', 'initial'],
    ['I', 'word'],
    ['sat', 'word'],
  ])('%s is %s', (value, kind) => {
    expect(toStopKind(value)).toBe(kind)
  })
})

describe('the short way', () => {
  it.each(['Tam sat.', 'Did it sit? No! It ran, and hid', 'A hen\nsat.\nIt hid.', 'a'])('is taken by %j', (text) => {
    expect(arePlainSentences(text)).toBe(true)
  })

  it.each([
    // The next sentence has no capital, or no space before it.
    ...['Tam sat. it ran', 'Tam sat.It ran', 'Tam sat!\nit ran', 'Tam sat.  It ran', 'Tam sat?!', 'Tam sat. 6 hens'],
    // Other marks, a gap within a block, no letter to begin with.
    ...['Tam; sat', 'Tam\n\nsat', '6 hens', ' Tam', '“Tam”', 'don’t', 'Élan ran', 'Tam sat. “It ran', ''],
    // Words that keep their stop.
    ...['Mr. Hen sat.', 'Tam T. Hen sat', 'A hen etc. Tam sat.'],
  ])('is not taken by %j', (text) => {
    expect(arePlainSentences(text)).toBe(false)
  })

  it.each([..."'’&-/@=_·‐‑‧\u00AD"])('leaves no step for words out where %j stands in one', (mark) => {
    expect(hasInnerMark(`Tam ran to${mark}day`)).toBe(true)
  })

  it.each(['1.5', '2:30', 'a?b', 'sat.The', 'sat.Élan', 'о.о', 'e.\u0301', '१.१'])(
    'leaves none out in %j, where a stop stands between letters or digits',
    (text) => {
      expect(hasInnerMark(text)).toBe(true)
    },
  )

  it.each(['Tam sat. Meg (and Sid) ran!', 'Stop!Go', 'a;b', 'Élan sat. Meg…', '“Yes.” Meg', 'הלך. בא', '*a* + b'])(
    'leaves the steps for words out in %j',
    (text) => {
      expect(hasInnerMark(text)).toBe(false)
    },
  )

  it('asks the parser for no such step where it is taken, and for all where it is not', () => {
    const steps = vi.fn()
    const before = ParseEnglish.prototype.tokenizeSentencePlugins
    ParseEnglish.prototype.tokenizeSentencePlugins = [steps]
    try {
      short('Tam sat. Meg ran.')
      expect(steps).not.toHaveBeenCalled()
      short('Tam sat to-day. Meg ran.')
      expect(steps).toHaveBeenCalled()
    } finally {
      ParseEnglish.prototype.tokenizeSentencePlugins = before
    }
  })
})

// The parser's time grows with the square of the length of what it is given.
describe('a very long block', () => {
  /** The lengths that the parser is asked for. */
  function toLengths(text: string): readonly number[] {
    const empty: Paragraph = { type: 'ParagraphNode', children: [] }
    const asked = vi.spyOn(ParseEnglish.prototype, 'tokenizeParagraph').mockImplementation(() => empty)
    short(text)
    const given = asked.mock.calls.map(([part]) => String(part))
    asked.mockRestore()
    expect(given.join('') === text).toBe(true)
    return given.map((part) => part.length)
  }

  it('is given to the parser as it is up to 6000 letters', () => {
    expect(toLengths('x'.repeat(6000))).toEqual([6000])
    expect(toLengths('')).toEqual([])
  })

  it('is cut after the first sentence that ends in the second half of so many', () => {
    const sentence = 'Tam sat. '
    const first = Math.ceil(3000 / sentence.length) * sentence.length
    expect(toLengths(sentence.repeat(700))).toEqual([first, 700 * sentence.length - first])
  })

  it.each([
    ...['Go. Tam', 'Go! Tam', 'Go? Tam', 'Go… Tam', 'Go.\n \nTam', 'Go.” “Tam', 'Go.’ ‘Tam', 'Go!") ("Tam'],
    ...["Go.' 'Tam", 'Go.] [Tam', 'Go. Élan', 'Go.”’ “‘Tam'],
  ])('is cut in the gap of %j', (end) => {
    const filler = 'a b '.repeat(800)
    const gap = filler.length + end.search(/\s+\S*$/) + (/\s+/.exec(end)?.[0].length ?? 0)
    expect(toLengths(`${filler}${end}${' a b'.repeat(800)}`)[0]).toBe(gap)
  })

  it.each(['Go. tam', 'Go, Tam', 'Mr. Tam', 'T. Tam', 'Go.Tam', 'Go: Tam', 'Go. 6'])(
    'is not cut in %j, but at the last blank',
    (end) => {
      const filler = 'a b '.repeat(800)
      expect(toLengths(`${filler}${end}${' a b'.repeat(800)}`)[0]).toBeGreaterThan(5990)
    },
  )

  it('is cut at the next sentence where the first ends in a title', () => {
    const filler = 'a b '.repeat(800)
    expect(toLengths(`${filler}Mr. Tam sat. Meg ran${' a b'.repeat(800)}`)[0]).toBe(
      filler.length + 'Mr. Tam sat. '.length,
    )
  })

  it('is cut before a blank, else anywhere, but in no character', () => {
    expect(toLengths(`${'x'.repeat(4000)} ${'y'.repeat(7000)}`)).toEqual([4000, 6000, 1001])
    expect(toLengths('x'.repeat(6001))).toEqual([6000, 1])
    expect(toLengths(`${'x'.repeat(5999)}\u{1F600}${'x'.repeat(9)}`)).toEqual([5999, 11])
    expect(toLengths(`${'x'.repeat(5998)}\u{1F600}${'x'.repeat(9)}`)).toEqual([6000, 9])
  })
})

// https://github.com/syntax-tree/nlcst: what nodes hold. Nothing is lost, put in or left without text, whatever stands in a block.
it('the nodes of any text are all of it, in its order, each with text of its own', () => {
  const piece = fc.constantFrom(
    ...['Tam', 'hen', 'a', 'T', '6', 'Mr', 'don’t', "'Er", 'é', '😀', '\u200B', '\u00AD'],
    ...['.', '!', '?', ',', '...', '-', '—', '“', '”', "'", '’', '(', ')', '&', '@', ' ', ' ', ' ', '\n', '\n\n'],
  )
  const collect = (node: Nodes): readonly Nodes[] =>
    'children' in node ? [node, ...node.children.flatMap(collect)] : [node]
  fc.assert(
    fc.property(fc.array(piece, { minLength: 1, maxLength: 16 }), (pieces) => {
      const text = pieces.join('')
      const paragraph = short(text)
      expect(toText(paragraph)).toBe(text)
      for (const node of collect(paragraph)) {
        const { start, end } = node.position ?? {}
        expect(toText(node)).not.toBe('')
        expect(text.slice(start?.offset, end?.offset)).toBe(toText(node))
      }
    }),
    { seed: 7, numRuns: 600 },
  )
})

it.each(["'", '.', '&', '-', '’'])('a word of %j alone is that mark', (value) => {
  const mark = { type: 'PunctuationNode', value } as const
  expect(mendWord({ type: 'WordNode', children: [mark] })).toEqual([mark])
})

describe('mending', () => {
  const parse = (text: string) => new ParseEnglish().tokenizeParagraph(text)

  it.each([
    ...['Tam sat', 'Tam sat!', 'Tam sat on a mat. Did Meg?', 'Hop! Hop!', 'It is don’t, not do.'],
    ...['Meg has a tip-top hat.', 'Tam, Meg; Sid: a (wet) hen.', 'It is 3.5 and 9:30.'],
  ])('leaves what needs none as it is: %s', (text) => {
    const paragraph = parse(text)
    const { children } = paragraph
    const before = JSON.stringify(paragraph)
    mendParagraph(paragraph)
    expect(paragraph.children).toBe(children)
    expect(JSON.stringify(paragraph)).toBe(before)
  })
})
