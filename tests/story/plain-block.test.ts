// The short way to a block says the same as the parser, of random text and of stories.

import { readdirSync, readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { toBlock } from '../../src/story/block.ts'
import { parseEnglish } from '../../src/story/english.ts'
import { toPlainBlock } from '../../src/story/plain-block.ts'
import { appendText, createTextMap, type TextMap } from '../../src/story/text-map.ts'
import type { Block } from '../../src/story/types.ts'

const PAGE = 3

/** Lines stand apart in the source, as behind the `> ` of a quote. */
function toMap(text: string, gap = 2): TextMap {
  const map = createTextMap()
  let source = 7
  for (const part of text.split(/(\n)/)) {
    const width = part === '\n' ? 1 + gap : part.length
    appendText(map, part, source, width)
    source += width
  }
  return map
}

const toRange = (map: TextMap) => ({ start: map.sources[0] ?? 0, end: 900 })

/** All that a block says, but for its methods, which are asked. */
function toFacts(block: Block): unknown {
  const { sentences, ...rest } = block
  return {
    ...rest,
    toSource: [0, 1, block.text.length].map((at) => block.toSource(at)),
    sentences: sentences.map(({ block: own, words, ...sentence }) => ({
      ...sentence,
      isOwn: own === block,
      words: words.map(({ toSource, ...word }) => ({
        ...word,
        letters: word.text.length > 1 && toSource.call(word, 1, 2),
      })),
    })),
  }
}

const toPlain = (map: TextMap): Block | undefined => toPlainBlock('paragraph', map, toRange(map), PAGE)

function compare(text: string): boolean {
  const map = toMap(text)
  const plain = toPlain(map)
  if (plain === undefined) return false
  expect(toFacts(plain), text).toEqual(toFacts(toBlock('paragraph', map, parseEnglish(map), toRange(map), PAGE)))
  return true
}

const pieces = fc.constantFrom(
  ...[
    'Tam',
    'hen',
    'sat',
    'in',
    'I',
    'a',
    'A',
    'Mr',
    'etc',
    'No',
    'sun',
    'Jan',
    'n',
    'er',
    'em',
    'tis',
    'cause',
    'ol',
    'w',
  ],
  ...[' ', ' ', ' ', ' ', ' ', ', ', '. ', '! ', '? ', '.', '!', '?', '.\n', '\n', '  ', '; ', ': ', ' — ', '—', '–'],
  ...[
    '“',
    '”',
    '"',
    ' “',
    '” ',
    '" ',
    ' "',
    '!” ',
    '.” ',
    '?" ',
    ',” ',
    '."\n',
    '. “',
    '! "',
    '’',
    "'",
    '-',
    '’s',
    "n't",
  ],
  ...['6', '…', '(', ')', '\u00AD', 'é', '&', '/'],
)

const likely = fc
  .array(
    fc.tuple(
      fc.constantFrom(...['', '', '', '“', '"']),
      fc.constantFrom('Tam', 'The hen', 'It’s', "Don't", 'I', 'A tip-top hat', 'No', 'She said: yes'),
      fc.constantFrom(
        '',
        ' ran',
        ' sat, and ran',
        '; she hid',
        ' — off',
        '—off',
        ', "no," and',
        ' said “yes” and',
        ' in the sun',
      ),
      fc.constantFrom('.', '!', '?', '', ','),
      fc.constantFrom('', '', '', '”', '"'),
      fc.constantFrom(' ', ' ', '\n', ' said Tam. ', ' she said. ', ' Tam said. '),
    ),
    { minLength: 1, maxLength: 5 },
  )
  .map((parts) => parts.flat().join('').trim())

describe('a block of plain text', () => {
  it.each([
    'Tam sat.',
    'A hen\nsat.\nIt hid',
    '“Stop!” said Tam. “Go!”',
    '"Can I?" she said. "No," said Meg.',
    'Tam said, “Sit. Stay.” Zub sat.',
    'It’s Tam’s tip-top hat; is it? Yes: it is — a “big” one.',
  ])('is read the short way: %s', (text) => {
    expect(compare(text)).toBe(true)
  })

  it.each([
    ...[
      '',
      ' Tam',
      'Tam ',
      'Tam sat. it ran',
      'Tam sat.It ran',
      'Tam sat?!',
      'Tam sat. 6 hens',
      'Tam\n\nsat',
      'Tam\n \nsat',
    ],
    ...[
      'Mr. Hen sat.',
      'Tam T. Hen sat',
      'a.m. it was',
      'the dogs’ bowl',
      '‘Tam’',
      'Tam... ran',
      'Tam - ran',
      '“Go!”, he said',
      'Élan ran',
    ],
  ])('is read by the parser: %j', (text) => {
    expect(compare(text)).toBe(false)
  })

  it('is the same by both ways, of random text', () => {
    let taken = 0
    fc.assert(
      fc.property(
        fc.oneof(
          likely,
          fc.array(pieces, { maxLength: 14 }).map((all) => all.join('')),
        ),
        (text) => {
          if (compare(text)) taken++
        },
      ),
      { numRuns: 6000 },
    )
    expect(taken).toBeGreaterThan(600)
  })

  it('is the same by both ways, of stories', () => {
    const folders = ['fixtures/shelf', 'fixtures/stories']
    const texts = folders.flatMap((folder) =>
      readdirSync(folder)
        .filter((name) => name.endsWith('.md'))
        .flatMap((name) => readFileSync(`${folder}/${name}`, 'utf8').split(/\n{2,}/)),
    )
    expect(texts.filter(compare).length).toBeGreaterThan(20)
  })
})
