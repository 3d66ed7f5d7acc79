// SARIF 2.1.0, for code scanning services: https://docs.oasis-open.org/sarif/sarif/v2.1.0/sarif-v2.1.0.html

import { FRONT_MATTER } from '../check/check-story.ts'
import { type CheckedStory, isChecked } from '../check/result.ts'
import type { Message } from '../lint/types.ts'
import type { Place } from '../problem/index.ts'
import type { Range } from '../story/types.ts'
import { toIndented } from './json.ts'
import { createOnce, type ShownProblem, toNewProblems } from './problems.ts'
import type { Reporter } from './reporter.ts'
import { toSentence } from './text.ts'

export interface SarifRule {
  readonly id: string
  readonly summary: string
  readonly severity: 'off' | 'warning' | 'error'
}

const SCHEMA = 'https://json.schemastore.org/sarif-2.1.0.json'

/** What mistakes in front matter are told as: they belong to no rule. It is listed where it is met. */
const TOP: SarifRule = { id: FRONT_MATTER, summary: 'What the top of a story says must be right.', severity: 'error' }

/**
 * `toFile` gives the path from the top of the checkout, as code scanning services want it. The list of files and what could not
 * be checked stand before the results, so they are held; results are not.
 */
export function createSarifReporter(
  rules: readonly SarifRule[],
  version: string,
  toFile: (path: string) => string,
): Reporter {
  const indexOf = new Map([...rules, TOP].map(({ id }, at) => [id, at]))
  const isNew = createOnce()
  const failed: ShownProblem[] = []
  const paths: string[] = []
  let [hasTop, hasResults] = [false, false]
  const toFrame = (): readonly [before: string, behind: string] => {
    const text = toText({ known: hasTop ? [...rules, TOP] : rules, version, failed, paths, toFile })
    const at = text.lastIndexOf(RESULTS) + RESULTS.length - 1
    return [text.slice(0, at), `${hasResults ? '\n      ' : ''}${text.slice(at)}`]
  }
  return {
    story(result) {
      paths.push(result.path)
      if (!isChecked(result)) {
        failed.push(...toNewProblems(result, isNew))
        return ''
      }
      hasTop ||= result.messages.some(({ rule }) => rule === TOP.id)
      const found = toResults(result, indexOf, { uri: toUri(toFile(result.path)), index: paths.length - 1 })
      return found
        .map((one) => {
          const text = `${hasResults ? ',' : ''}\n        ${toIndented(one, 8)}`
          hasResults = true
          return text
        })
        .join('')
    },
    head: () => toFrame()[0],
    end: () => toFrame()[1],
  }
}

interface Frame {
  readonly known: readonly SarifRule[]
  readonly version: string
  readonly failed: readonly ShownProblem[]
  readonly paths: readonly string[]
  toFile(path: string): string
}

const RESULTS = '"results": []'

function toText({ known, version, failed, paths, toFile }: Frame): string {
  const stories = new Set(paths)
  const [inStories, elsewhere] = [true, false].map((isStory) =>
    failed.filter(({ path }) => stories.has(path) === isStory).map((shown) => toNotification(shown, toFile)),
  )
  const log = {
    $schema: SCHEMA,
    version: '2.1.0',
    runs: [
      {
        tool: { driver: { name: 'battledore', ...toVersion(version), rules: known.map(toDescriptor) } },
        columnKind: 'utf16CodeUnits',
        // What is wrong with a sequence or a config is about how the tool was set, not about its run over a story.
        invocations: [
          {
            executionSuccessful: failed.length === 0,
            toolExecutionNotifications: inStories,
            ...(elsewhere?.length ? { toolConfigurationNotifications: elsewhere } : {}),
          },
        ],
        artifacts: paths.map((path) => ({ location: { uri: toUri(toFile(path)) } })),
        results: [],
      },
    ],
  }
  return `${JSON.stringify(log, null, 2)}\n`
}

const toVersion = (version: string) =>
  /^\d+\.\d+\.\d+$/.test(version) ? { version, semanticVersion: version } : { version }

const toDescriptor = ({ id, summary, severity }: SarifRule) => ({
  id,
  shortDescription: { text: summary },
  defaultConfiguration: severity === 'off' ? { enabled: false } : { level: severity },
})

interface Artifact {
  readonly uri: string
  readonly index: number
}

function toResults(story: CheckedStory, indexOf: ReadonlyMap<string, number>, location: Artifact) {
  const seen = new Map<string, number>()
  return story.messages.map((message) => {
    const key = `${message.rule}:${message.word ?? ''}`
    const nth = (seen.get(key) ?? 0) + 1
    seen.set(key, nth)
    return {
      ruleId: message.rule,
      ruleIndex: indexOf.get(message.rule) ?? -1,
      level: message.severity,
      message: {
        text: message.note === undefined ? message.message : `${toSentence(message.message)} ${message.note}`,
      },
      locations: [{ physicalLocation: { artifactLocation: location, region: toRegion(message, story) } }],
      ...toLetters(message, story, location),
      // Without line numbers, so that a note keeps its identity when the story grows above it.
      partialFingerprints: { 'ruleWordOccurrence/v1': `${key}:${nth}` },
      properties: {
        page: message.page,
        word: message.word ?? null,
        readableAt: message.readableAt,
        suggestions: message.suggestions,
      },
    }
  })
}

/** The blamed letters, where they are not the whole word. */
function toLetters(message: Message, story: CheckedStory, artifactLocation: Artifact) {
  const letters = message.letterRanges.filter(({ start, end }) => start > message.start || end < message.end)
  if (letters.length === 0) return {}
  return {
    relatedLocations: letters.map((range, at) => ({
      id: at + 1,
      message: { text: 'these letters' },
      physicalLocation: { artifactLocation, region: toRegion(range, story) },
    })),
  }
}

function toRegion(range: Range, { lines, story }: CheckedStory) {
  const start = lines.toPoint(range.start)
  const end = lines.toPoint(range.end)
  return {
    startLine: start.line,
    startColumn: start.column,
    endLine: end.line,
    endColumn: end.column,
    charOffset: range.start,
    charLength: range.end - range.start,
    snippet: { text: story.source.slice(range.start, range.end) },
  }
}

const toNotification = ({ path, place, text, problem }: ShownProblem, toFile: (path: string) => string) => ({
  level: problem.severity,
  message: { text },
  descriptor: { id: problem.code },
  locations: [
    {
      physicalLocation: {
        artifactLocation: { uri: toUri(toFile(path)) },
        ...(place && { region: toPlaceRegion(place) }),
      },
    },
  ],
})

const toPlaceRegion = ({ start, end }: Place) => ({
  startLine: start.line,
  startColumn: start.column,
  endLine: end.line,
  endColumn: end.column,
})

/** A path as a URI reference: relative ones count from the top of the checkout, else from the folder where the check ran. */
export function toUri(path: string): string {
  const encoded = path.split('/').map(encodeURIComponent).join('/')
  // The colon of a drive stays; the server of a share is the host.
  if (/^[A-Za-z]:\//.test(path)) return `file:///${encoded.replace('%3A', ':')}`
  if (path.startsWith('//')) return `file:${encoded}`
  return path.startsWith('/') ? `file://${encoded}` : encoded
}
