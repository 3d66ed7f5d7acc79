// An item is added to a list of a YAML file, and every other byte stays. What comes out is read by the `yaml` package.

import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { parse, stringify } from 'yaml'
import { appendToList, applyInsertion, type YamlPath } from '../../src/yaml/append.ts'

const add = (yaml: string, path: YamlPath, ...lines: string[]): string | undefined => {
  const insertion = appendToList(yaml, path, lines)
  return insertion && applyInsertion(yaml, insertion)
}

describe('where the item goes', () => {
  it.each<readonly [what: string, before: string, path: YamlPath, after: string | undefined]>([
    ['a block list', 'a:\n  - x # one\n  - y # two\n# end\n', ['a'], 'a:\n  - x # one\n  - y # two\n  - z\n# end\n'],
    ['a list at the indent of its key', 'a:\n- x\nb: 1\n', ['a'], 'a:\n- x\n- z\nb: 1\n'],
    ['a list in brackets', 'a: [x, y] # two\n', ['a'], 'a: [x, y, z] # two\n'],
    ['an empty list in brackets', 'a: []\n', ['a'], 'a: [z]\n'],
    ['a key without a list', 'a: # none yet\nb: 1\n', ['a'], 'a: # none yet\n  - z\nb: 1\n'],
    ['no such key', 'b: 1 # one\n', ['a'], 'b: 1 # one\na:\n  - z\n'],
    ['no end of line', 'b: 1', ['a'], 'b: 1\na:\n  - z'],
    ['an empty file', '', ['a'], 'a:\n  - z\n'],
    ['Windows line ends', 'a:\r\n  - x\r\nb: 1\r\n', ['a'], 'a:\r\n  - x\r\n  - z\r\nb: 1\r\n'],
    [
      'a list deeper down',
      's:\n  - id: p\n    teach: [q]\n  - id: r # r\n',
      ['s', 1, 'teach'],
      's:\n  - id: p\n    teach: [q]\n  - id: r # r\n    teach:\n      - z\n',
    ],
    [
      'a step in the middle',
      's:\n  - id: p\n    t:\n      - q\n\n  - id: r\n',
      ['s', 0, 't'],
      's:\n  - id: p\n    t:\n      - q\n      - z\n\n  - id: r\n',
    ],
    [
      'after a text of several lines',
      'a:\n  - |\n    x\n    y\nb: 1\n',
      ['a'],
      'a:\n  - |\n    x\n    y\n  - z\nb: 1\n',
    ],
    ['a value that is no list', 'a: x\n', ['a'], undefined],
    ['a map in braces', '{ b: 1 }\n', ['a'], undefined],
    ['broken YAML', 'a: [x\n', ['a'], undefined],
  ])('%s', (_, before, path, after) => expect(add(before, path, 'z')).toBe(after))

  it('writes an item of several lines', () => {
    expect(add('a:\n  - d: 1\n', ['a'], 'd: 2', 'e: [x]')).toBe('a:\n  - d: 1\n  - d: 2\n    e: [x]\n')
  })
})

it('adds one item and changes nothing else, in generated files', () => {
  const word = fc.constantFrom('ai as in rain', 'the', '-s', "it's", 'x: y', '# no')
  const file = fc.record({ name: word, list: fc.array(word, { maxLength: 4 }), last: fc.option(fc.array(word)) })
  fc.assert(
    fc.property(file, fc.boolean(), (value, isFlow) => {
      const yaml = stringify(value, isFlow ? { collectionStyle: 'any', flowCollectionPadding: true } : {})
      const after = add(yaml, ['list'], 'new') ?? ''
      expect(parse(after)).toEqual({ ...value, list: [...value.list, 'new'] })
      expect(after.length - 'new'.length - yaml.length).toBeLessThan(8)
    }),
  )
})
