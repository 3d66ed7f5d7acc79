// The plain reader gives what the `yaml` package gives, value by value and place by place, or gives up.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { parse } from 'yaml'
import { parseFullYaml } from '../../src/config/full-yaml.ts'
import { parseSimpleYaml } from '../../src/config/simple-yaml.ts'
import type { Tree } from '../../src/config/tree.ts'
import { toPlain } from '../../src/config/tree.ts'
import { withoutPlace } from '../../src/yaml/yaml-problems.ts'

/** Everything but the ranges of whole maps and block lists, which only the full parser rounds up to the next line. */
function toPlaces(tree: Tree, text: string): unknown {
  if (tree.kind === 'scalar') return [tree.value, tree.start, tree.end]
  if (tree.kind === 'list') {
    const isInline = text[tree.start] === '['
    return { list: tree.items.map((item) => toPlaces(item, text)), at: isInline ? [tree.start, tree.end] : [] }
  }
  return tree.entries.map((entry) => [entry.key, entry.keyAt, toPlaces(entry.value, text)])
}

const plain = fc.constantFrom(
  ...[
    'title',
    'step',
    'sight words',
    'Tam',
    "Ned's hens",
    'pink-3',
    'a',
    'true',
    'yes',
    '12',
    '1.10',
    '90%',
    '2024-02-03',
  ],
  ...['"Meg"', "'Sid'", 'a, b', 'a,b', 'é', 'A hen!', '[]', '[a, b]', '[ a,"b" , 3 ]', '[12%, 1.5]', '[Old Ned, Tam ]'],
)
const odd = fc.constantFrom(
  ...[
    'True',
    'null',
    '~',
    '007',
    '0x1F',
    '1e3',
    '.5',
    '-1',
    "'it''s'",
    '"a\\n"',
    'a: b',
    'a #b',
    '[a, [b]]',
    '[a,]',
    '{a: b}',
  ],
  ...[
    '- a',
    '&x a',
    '*x',
    '!t a',
    '|',
    '>',
    '%a',
    '@a',
    '“Hi”',
    '6 hens',
    'x:',
    '-',
    '12a',
    '[12a]',
    '[1 2]',
    "a' b",
    'Inf',
  ],
  ...[
    '3, 4',
    '[true, null]',
    '[a: b]',
    '[a #b]',
    '"a" b',
    '1.',
    '[1.]',
    '12.50',
    '[a]b',
    '? a',
    'a ?',
    '[a ?]',
    '...',
    'a;',
  ],
)
const word = fc.oneof({ weight: 8, arbitrary: plain }, { weight: 1, arbitrary: odd })
const key = fc.oneof(
  { weight: 9, arbitrary: fc.constantFrom('title', 'step', 'sight words', 'names', 'a', 'b') },
  { weight: 1, arbitrary: word },
)
const spaces = fc.constantFrom('', '', '  ', '  ', '\t')
const line = fc.oneof(
  { weight: 12, arbitrary: fc.tuple(key, fc.constantFrom(': ', ':  '), word, spaces).map((parts) => parts.join('')) },
  { weight: 2, arbitrary: fc.tuple(key, fc.constantFrom(':', ': ')).map((parts) => parts.join('')) },
  { weight: 4, arbitrary: fc.tuple(spaces, fc.constantFrom('- ', '-  '), word, spaces).map((parts) => parts.join('')) },
  { weight: 1, arbitrary: fc.tuple(spaces, word).map((parts) => parts.join('')) },
  { weight: 1, arbitrary: fc.constantFrom('', ' ', '# note', '  # note', '---', '...', '\t') },
)
const source = fc
  .tuple(fc.array(line, { maxLength: 6 }), fc.constantFrom('\n', '\r\n'), fc.boolean())
  .map(([lines, newline, isEnded]) => lines.join(newline) + (isEnded ? newline : ''))

describe('parseSimpleYaml', () => {
  it('agrees with the full parser wherever it answers', () => {
    let answered = 0
    fc.assert(
      fc.property(source, (text) => {
        const simple = parseSimpleYaml(text)
        if (!simple) return
        answered++
        const full = parseFullYaml(text, withoutPlace)
        expect(full.problems).toEqual([])
        expect(full.tree && toPlaces(full.tree, text)).toEqual(toPlaces(simple, text))
        expect(toPlain(simple)).toEqual(parse(text))
      }),
      { numRuns: 5000 },
    )
    expect(answered).toBeGreaterThan(300)
  })

  it.each([
    ['title: The Big Hen\nstep: pink-2\n', { title: 'The Big Hen', step: 'pink-2' }],
    ['names: [Tam, Meg, "Old Ned"]', { names: ['Tam', 'Meg', 'Old Ned'] }],
    ['names:\n  - Tam\n  - Old Ned\norder: 3\n', { names: ['Tam', 'Old Ned'], order: 3 }],
    ['# by Meg\r\ntitle: "Pip: a hen"\r\ncount title: false\r\n', { title: 'Pip: a hen', 'count title': false }],
    ['readable share: 0.9\ndate: 2024-02-03', { 'readable share': 0.9, date: '2024-02-03' }],
  ])('reads %j', (text, value) => {
    const tree = parseSimpleYaml(text)
    expect(tree && toPlain(tree)).toEqual(value)
  })

  it.each([
    '',
    'a: b: c',
    'a: b\n c',
    'a: b\na: c',
    'a:',
    'rules:\n  no-numeral: off',
    'a: {b: c}',
    '- a',
    'a: *b',
    'a: null',
  ])('leaves %j to the full parser', (text) => {
    expect(parseSimpleYaml(text)).toBeUndefined()
  })
})
