// Mistakes in YAML, told in a teacher's words and at the place to mend.

import { describe, expect, it } from 'vitest'
import { parseDocument } from 'yaml'
import { toPlace, toProblem } from '../../src/problem/index.ts'
import { createLines } from '../../src/story/index.ts'
import { findYamlProblems, type ToProblemAt } from '../../src/yaml/yaml-problems.ts'

const toPlaced =
  (text: string): ToProblemAt =>
  (at, found) =>
    toProblem({ ...found, place: toPlace(at, createLines(text)) })

const tell = (text: string) =>
  findYamlProblems(parseDocument(text, { prettyErrors: false, logLevel: 'silent' }).errors, text, toPlaced(text)).map(
    ({ place, message }) => `${place?.start.line}:${place?.start.column} ${message}`,
  )

const NO_SQUARE = 'the list that `[` opens is not closed: put a `]` here'
const NO_CURLY = 'the map that `{` opens is not closed: put a `}` here'
const TOO_FAR = 'the next line is set in too far: begin it below the line it belongs to'

describe('a mistake in YAML', () => {
  it.each([
    ['step: [pink-6\n', `1:14 ${NO_SQUARE}`],
    ['rules: [\n', `1:9 ${NO_SQUARE}`],
    ['names: [Tam, Meg  \n\nstep: x\n', `1:17 ${NO_SQUARE}`],
    ['steps: [a\nlook-alikes: [bd]\n', `1:10 ${NO_SQUARE}`],
    ['[a\n', `1:3 ${NO_SQUARE}`],
    ['limits: {letters: 1\n', `1:20 ${NO_CURLY}`],
    ['{a: 1, b\n', `1:9 ${NO_CURLY}`],
    ['names:\n  [Tam,\nMeg]\n', '2:8 the lines from `[` to `]` must be set in further than the key before them'],
    ['title: Pip: a hen\n', '1:8 a colon too many on this line: put the text in quotes'],
    ['steps:\n  - id: one\n     title: First\n', `2:9 ${TOO_FAR}`],
    ['steps:\n  - id: one\n   title: First\n', '3:1 this line does not line up with the lines above it'],
    ['name\ntitle: x\n', '1:1 a colon is missing after the key, or a quote or bracket is not closed'],
    ['title: "Tam\nstep: x\n', '3:1 a closing quote is missing, here or above'],
    ['a:\n\tb: c\n', '2:1 this line is indented with a tab: use spaces'],
    ['a: @x\n', '1:4 a text cannot start with this mark: put it in quotes'],
    ['teach: - a as in cat\n', '1:8 a list begins on a line of its own: put the `-` below the key'],
    ['a: [b]]\n', '1:7 there is a `]` too many'],
    ['a: {b: c}}\n', '1:10 there is a `}` too many'],
    ['a: "x" y\n', '1:8 this does not fit what stands before it: put the whole text in quotes'],
    ['a: "\\q"\n', '1:5 a backslash in double quotes is the start of a sign: use single quotes'],
    ['step: a\nstep: b\n', '2:1 this key is given twice'],
  ])('%j', (text, problem) => {
    expect(tell(text)).toEqual([problem])
  })

  it('is told once, though the parser stumbles on', () => {
    expect(tell('names: [Tam, "Meg]\n')).toHaveLength(1)
    expect(tell('a: b\na: c\nd: e: f\n')).toHaveLength(2)
  })

  it('of a text nested too deep is told as that', () => {
    const error = { code: 'IMPOSSIBLE', message: 'Maximum call stack size', pos: [7, 9] } as const
    expect(findYamlProblems([error], 'a: [[[', toPlaced('a: [[['))).toMatchObject([
      {
        code: 'too-deep',
        message: 'this is nested too deep to read',
        place: { start: { offset: 0 }, end: { offset: 1 } },
      },
    ])
  })
})
