// What the YAML parser finds wrong, in a teacher's words and at the place to mend.

import { type Found, type Problem, type Range, toProblem } from '../problem/index.ts'

/** Gives what is found at offsets of the YAML its place in the file. */
export type ToProblemAt = (at: Range, found: Found) => Problem

/** For who only wants to know whether there is a problem. */
export const withoutPlace: ToProblemAt = (_, found) => toProblem(found)

/** As the `yaml` package tells it. */
export interface YamlError {
  readonly code: string
  readonly message: string
  readonly pos: readonly [number, number]
}

const TOO_DEEP = 'this is nested too deep to read'

const CLEAR_MESSAGES: Readonly<Record<string, string>> = {
  BAD_DQ_ESCAPE: 'a backslash in double quotes is the start of a sign: use single quotes',
  BAD_INDENT: 'the indent of this line does not fit the lines above it',
  BAD_SCALAR_START: 'a text cannot start with this mark: put it in quotes',
  BLOCK_AS_IMPLICIT_KEY: 'a colon too many on this line: put the text in quotes',
  BLOCK_IN_FLOW: 'a colon too many between the brackets: put the text in quotes',
  DUPLICATE_KEY: 'this key is given twice',
  MISSING_CHAR: 'a closing quote, bracket or comma is missing',
  MULTILINE_IMPLICIT_KEY: 'a colon is missing after the key, or a quote or bracket is not closed',
  MULTIPLE_DOCS: 'a second `---` starts a new document: keep one',
  TAB_AS_INDENT: 'this line is indented with a tab: use spaces',
  TAG_RESOLVE_FAILED: 'a text cannot start with `!`: put it in quotes',
  UNEXPECTED_TOKEN: 'this does not fit what stands before it: put the whole text in quotes',
}

/** What one code stands for is known only from the parser's own words. */
const CLEARER: readonly (readonly [found: RegExp, message: string])[] = [
  [/^Missing closing .quote/, 'a closing quote is missing, here or above'],
  [/^Implicit map keys need/, 'a colon is missing after the key'],
  [/^Sequence item without -/, 'this line does not line up with the lines above it'],
  [/^Unexpected block-seq-ind on same line/, 'a list begins on a line of its own: put the `-` below the key'],
  [/^Unexpected flow-seq-end/, 'there is a `]` too many'],
  [/^Unexpected flow-map-end/, 'there is a `}` too many'],
]

const CLOSERS = { ']': { opener: '[', what: 'list' }, '}': { opener: '{', what: 'map' } } as const

/** Keys that are given twice, and the first of all else: what comes after it is mostly its echo. */
export function findYamlProblems(
  errors: readonly YamlError[],
  text: string,
  toProblemAt: ToProblemAt,
): readonly Problem[] {
  const first = errors.find(({ code }) => code !== 'DUPLICATE_KEY')
  return errors
    .filter((error) => error === first || error.code === 'DUPLICATE_KEY')
    .map((error) => toYamlProblem(error, text, toProblemAt))
}

/** Nested deeper than the parser can go, at the beginning of the text. */
export const toTooDeep = (text: string, toProblemAt: ToProblemAt): Problem =>
  toProblemAt({ start: 0, end: Math.min(1, text.length) }, { code: 'too-deep', message: TOO_DEEP })

function toYamlProblem(error: YamlError, text: string, toProblemAt: ToProblemAt): Problem {
  // The parser catches its own overflow and tells it as an error of the text.
  if (error.message.includes('call stack')) return toTooDeep(text, toProblemAt)
  const start = Math.min(error.pos[0], text.length)
  const end = Math.min(Math.max(error.pos[1], start), text.length)
  const closer = /must (?:be sufficiently indented and )?end with a ([\]}])/.exec(error.message)?.[1]
  if (closer === ']' || closer === '}') return toUnclosed(closer, start, text, toProblemAt)
  const code = error.code === 'DUPLICATE_KEY' ? 'repeated' : 'broken-yaml'
  return toProblemAt({ start, end }, { code, message: toMessage(error, text.slice(start)) })
}

/** The parser stumbles over the line below; what is missing belongs behind the last word before it. */
function toUnclosed(closer: keyof typeof CLOSERS, from: number, text: string, toProblemAt: ToProblemAt): Problem {
  const { opener, what } = CLOSERS[closer]
  const at = text.slice(0, from).trimEnd().length
  const next = /[[\]{}]/.exec(text.slice(at))?.[0]
  const message =
    next === closer
      ? `the lines from \`${opener}\` to \`${closer}\` must be set in further than the key before them`
      : `the ${what} that \`${opener}\` opens is not closed: put a \`${closer}\` here`
  return toProblemAt({ start: at, end: at }, { code: 'broken-yaml', message })
}

function toMessage({ code, message }: YamlError, rest: string): string {
  const plain = message.split('\n')[0] ?? ''
  const clearer = CLEARER.find(([found]) => found.test(plain))?.[1]
  if (clearer !== undefined) return clearer
  const [line = ''] = rest.split('\n', 1)
  if (code === 'BLOCK_AS_IMPLICIT_KEY' && !/:(?:\s|$)/.test(line))
    return 'the next line is set in too far: begin it below the line it belongs to'
  return CLEAR_MESSAGES[code] ?? `not valid YAML: ${plain.charAt(0).toLowerCase()}${plain.slice(1)}`
}
