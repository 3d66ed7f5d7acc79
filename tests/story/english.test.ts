// The short way through the parser for plain text must give what the long way gives.

import fc from 'fast-check'
import type { Paragraph } from 'nlcst'
import { toString as toText } from 'nlcst-to-string'
import { ParseEnglish } from 'parse-english'
import { describe, expect, it } from 'vitest'
import { toStopKind } from '../../src/story/abbreviations.ts'
import { parseEnglish } from '../../src/story/english.ts'
import { createLines } from '../../src/story/index.ts'
import { mendParagraph } from '../../src/story/mend.ts'
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
