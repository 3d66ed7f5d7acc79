// JUnit XML, for services that show test results: a suite is a story, a test is a page. A page fails when it holds an error.
//
// Follows the schema junit-4.xsd of the Jenkins xUnit plugin. No times and no host: the same stories give the same report.

import { type CheckedStory, isChecked, type UncheckedStory } from '../check/result.ts'
import type { Message } from '../lint/types.ts'
import type { Place } from '../problem/index.ts'
import { createOnce, type ShownProblem, toNewProblems, toShownProblem } from './problems.ts'
import type { Reporter } from './reporter.ts'
import { toCount } from './text.ts'

interface Suite {
  readonly xml: string
  readonly tests: number
  readonly failures: number
  readonly errors: number
}

/** The head counts all tests, so it waits for them. Mistakes of other files, each once, are suites at the end. */
export function createJunitReporter(): Reporter {
  const isNew = createOnce()
  const reported: ShownProblem[] = []
  const stories = new Set<string>()
  const sum = { tests: 0, failures: 0, errors: 0 }
  const add = ({ xml, tests, failures, errors }: Suite): string => {
    sum.tests += tests
    sum.failures += failures
    sum.errors += errors
    return xml
  }
  let others: string | undefined
  const addOthers = (): string => {
    others ??= toOthers(reported, stories).map(add).join('')
    return others
  }
  return {
    story(result) {
      stories.add(result.path)
      if (isChecked(result)) return add(toSuite(result))
      reported.push(...toNewProblems(result, isNew))
      return add(toBrokenSuite(result))
    },
    head() {
      addOthers()
      return `<?xml version="1.0" encoding="UTF-8"?>\n<testsuites${toAttributes({ name: 'battledore', ...sum })}>\n`
    },
    end: () => `${addOthers()}</testsuites>\n`,
  }
}

function toOthers(reported: readonly ShownProblem[], stories: ReadonlySet<string>): readonly Suite[] {
  const files = new Set(reported.map(({ path }) => path).filter((path) => !stories.has(path)))
  return [...files].map((file) =>
    toErrorSuite(
      file,
      reported.filter(({ path }) => path === file),
    ),
  )
}

/** A story without pages still has one test: that it was read. */
function toSuite(story: CheckedStory): Suite {
  const numbers = story.story.pages.length > 0 ? story.story.pages.map(({ number }) => number) : [1]
  const pages = numbers.map((page) => ({ page, messages: story.messages.filter((message) => message.page === page) }))
  const failures = pages.filter(({ messages }) => messages.some(isError)).length
  const head = toAttributes({ name: story.path, tests: pages.length, failures, errors: 0 })
  const properties = toProperties({ sequence: story.sequence.name, step: story.step.id, accent: story.accent })
  const cases = pages.map(({ page, messages }) => toCase(page, messages, story)).join('')
  return {
    xml: `  <testsuite${head}>\n${properties}${cases}  </testsuite>\n`,
    tests: pages.length,
    failures,
    errors: 0,
  }
}

function toCase(page: number, messages: readonly Message[], story: CheckedStory): string {
  const head = toAttributes({ classname: story.path, name: `page ${page}` })
  const errors = messages.filter(isError)
  const warnings = messages.filter((message) => !isError(message))
  const toText = (list: readonly Message[]): string =>
    escapeXml(list.map((message) => toLine(message, story)).join('\n'))
  const failure =
    errors.length === 0
      ? ''
      : `      <failure${toAttributes({ type: 'error', message: toCount(errors.length, 'error') })}>${toText(errors)}</failure>\n`
  const output = warnings.length === 0 ? '' : `      <system-out>${toText(warnings)}</system-out>\n`
  const body = failure + output
  return body === '' ? `    <testcase${head}/>\n` : `    <testcase${head}>\n${body}    </testcase>\n`
}

/** Its own mistakes are errors; where all lie in other files, which have suites of their own, the story is passed over. */
function toBrokenSuite({ path, problems }: UncheckedStory): Suite {
  const all = problems.map((problem) => toShownProblem(problem, path))
  const own = all.filter((shown) => shown.path === path)
  if (own.length > 0) return toErrorSuite(path, own)
  const message = `could not be checked: see ${[...new Set(all.map((shown) => shown.path))].join(', ')}`
  return toOneTest(path, `      <skipped${toAttributes({ message })}/>\n`, 0)
}

function toErrorSuite(path: string, problems: readonly ShownProblem[]): Suite {
  const lines = problems.map(({ place, text }) => `${path}${place ? toPointText(place) : ''}: ${text}`)
  const message = problems[0]?.text ?? ''
  const head = toAttributes({ type: 'could not be checked', message })
  return toOneTest(path, `      <error${head}>${escapeXml(lines.join('\n'))}</error>\n`, 1)
}

const toPointText = ({ start }: Place): string => `:${start.line}:${start.column}`

function toOneTest(path: string, body: string, errors: number): Suite {
  const test = `    <testcase${toAttributes({ classname: path, name: 'the whole file' })}>\n${body}    </testcase>\n`
  const skipped = errors === 0 ? { skipped: 1 } : {}
  return {
    xml: `  <testsuite${toAttributes({ name: path, tests: 1, failures: 0, errors, ...skipped })}>\n${test}  </testsuite>\n`,
    tests: 1,
    failures: 0,
    errors,
  }
}

const isError = ({ severity }: Message): boolean => severity === 'error'

function toLine({ start, severity, message, rule }: Message, { path, lines }: CheckedStory): string {
  const { line, column } = lines.toPoint(start)
  return `${path}:${line}:${column}: ${severity}: ${message} [${rule}]`
}

const toProperties = (values: Readonly<Record<string, string>>): string =>
  `    <properties>\n${Object.entries(values)
    .map(([name, value]) => `      <property${toAttributes({ name, value })}/>\n`)
    .join('')}    </properties>\n`

const toAttributes = (values: Readonly<Record<string, string | number>>): string =>
  Object.entries(values)
    .map(([name, value]) => ` ${name}="${escapeXml(String(value)).replaceAll('\n', '&#10;')}"`)
    .join('')

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&apos;',
}

/** Characters that no XML document may hold become the replacement character; tabs and carriage returns stay what they are. */
function escapeXml(text: string): string {
  return text
    .replace(/[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu, '\uFFFD')
    .replace(/[&<>"']/g, (character) => ENTITIES[character] ?? character)
    .replace(/[\t\r]/g, (character) => `&#${character.charCodeAt(0)};`)
}
