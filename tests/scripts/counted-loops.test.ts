// Each piece of source must give the same before and after; what is no array is left as it is.

import ts from 'typescript'
import { describe, expect, test } from 'vitest'
import { countLoops } from '../../scripts/bundle/loops/count.ts'
import { flatMap } from '../../scripts/bundle/loops/flat-map.ts'

const NAME = 'piece.ts'

const OPTIONS: ts.CompilerOptions = {
  target: ts.ScriptTarget.ES2022,
  lib: ['lib.es2023.d.ts'],
  strict: true,
  types: [],
}
const host = ts.createCompilerHost(OPTIONS)
const files = new Map<string, ts.SourceFile | undefined>()

function rewrite(source: string): string {
  const file = ts.createSourceFile(NAME, source, ts.ScriptTarget.ES2022, true)
  const getSourceFile: typeof host.getSourceFile = (name, target) => {
    if (name === NAME) return file
    if (!files.has(name)) files.set(name, host.getSourceFile(name, target))
    return files.get(name)
  }
  return countLoops(file, ts.createProgram([NAME], OPTIONS, { ...host, getSourceFile }).getTypeChecker())
}

function run(source: string): unknown {
  const text = ts.transpile(source.replace(/^import .*/, ''), { target: ts.ScriptTarget.ES2022 })
  return new Function('$flatMap', `${text}; return piece()`)(flatMap)
}

/** What it is, the source, and whether an iterator is still asked for afterwards. */
const PIECES: readonly (readonly [string, string, boolean])[] = [
  ['a block', 'let n = 0; for (const x of [1, 2, 3]) { n = n * 10 + x } return n', false],
  ['one statement', 'let n = 0; for (const x of [1, 2, 3]) n = n * 10 + x; return n', false],
  [
    'a loop in a loop',
    'const m: number[] = []; for (const x of [1, 2]) for (const y of [3, 4]) m.push(x * y); return m',
    false,
  ],
  ['a list that grows', 'const l = [1]; for (const x of l) if (x < 4) l.push(x + 1); return l', false],
  [
    'a list given up meanwhile',
    'let l = [1, 2]; const m: number[] = []; for (const x of l) { l = []; m.push(x) } return m',
    false,
  ],
  [
    'continue, break and a label',
    'let n = 0; all: for (const x of [1, 2, 3]) { for (const y of [x, 9]) { if (y > 8) continue all; if (x > 2) break all; n += y } } return n',
    false,
  ],
  [
    'a new name at each turn',
    'const f: (() => number)[] = []; for (const x of [1, 2]) f.push(() => x); return f.map((one) => one())',
    false,
  ],
  ['let', 'let n = 0; for (let x of [1, 2]) { x += 1; n += x } return n', false],
  ['typed arrays', 'let n = 0; for (const x of new Uint8Array(2).fill(3)) n += x; return n', false],
  [
    'pairs',
    "const m: string[] = []; for (const [x, y] of [['a', 1], ['b', 2]] as [string, number][]) m.push(x + y); return m",
    false,
  ],
  [
    'entries of an array',
    "const m: string[] = []; for (const [at, x] of ['a', 'b'].entries()) m.push(at + x); return m",
    false,
  ],
  [
    'entries that are objects',
    'const m: number[] = []; for (const [at, { x }] of [{ x: 5 }].entries()) m.push(at + x); return m',
    false,
  ],
  ['what is found', "const [all = '', , last = '?'] = /(a)(b)?/.exec('xa') ?? []; return all + last", false],
  ['the rest', 'const [first, ...rest] = [1, 2, 3]; return [first, rest]', false],
  ['inner pairs', 'const [[x, y], { z }] = [[1, 2], { z: 3 }] as const; return x + y + z', false],
  ['null is no default', 'const [x = 1] = [null] as (number | null)[]; return x', false],
  ['a parameter', "return [['a', 1], ['b', 2]].map(([x, y]) => [y, x])", false],
  ['a parameter and a body', 'return [[1, 2]].map(([x = 0, y = 0]) => { const z = x + y; return { z } })', false],
  ['an object at once', 'return [[1, 2]].map(([x], at) => ({ x, at }))', false],
  [
    'a function as a default',
    'const [f = ([x]: number[]) => x] = [] as ((l: number[]) => number | undefined)[]; return f([7])',
    true,
  ],
  [
    'a loop in the list of a loop',
    'let n = 0; for (const x of [[1, 2]].map(([y, z]) => (y ?? 0) + (z ?? 0))) n += x; return n',
    false,
  ],
  ['flatMap', 'return [1, 2].flatMap((x, at) => [x, [at]]).flatMap<unknown>((x) => x)', false],
  ['flatMap within flatMap', 'return [[1], [2]].flatMap((l) => l.flatMap((x) => (x > 1 ? [] : x)))', false],
  ['flatMap of what may not be there', 'const l = [[1]] as number[][] | undefined; return l?.flatMap((x) => x)', false],
  ['a set', 'let n = 0; for (const x of new Set([1, 2])) n += x; return n', true],
  ['a map', 'let n = 0; for (const [x, y] of new Map([[1, 2]])) n += x * y; return n', true],
  ['entries of a map', 'let n = 0; for (const [x, y] of new Map([[1, 2]]).entries()) n += x * y; return n', true],
  ['a text', "const m: string[] = []; for (const x of 'a𝄞b') m.push(x); return m", true],
  ['an array or a set', 'let n = 0; for (const x of [1] as number[] | Set<number>) n += x; return n', true],
]

describe('counted loops', () => {
  test.each(PIECES)('%s', (_, body, isLeft) => {
    const source = `function piece() { ${body} }`
    const rewritten = rewrite(source)
    expect(run(rewritten)).toEqual(run(source))
    expect(/\bof\b|(?:const|let|\() ?\[[^=]*\](?: =|:|\))/.test(rewritten)).toBe(isLeft)
  })
})
