// The stories that are open in the editor, each with what its last check said.

import { type Diagnostic, DiagnosticSeverity } from 'vscode-languageserver'
import type { TextDocument } from 'vscode-languageserver-textdocument'
import type { PreparedStory } from '../check/check-story.ts'
import { type CheckedStory, isChecked } from '../check/result.ts'
import type { Problem } from '../problem/index.ts'
import { toDiagnostics, toLineDiagnostic } from './diagnostics.ts'
import type { Host, OpenStory } from './host.ts'
import { toReasons } from './reasons.ts'

/**
 * The longest text that is checked while somebody types, in UTF-16 units: a check of it takes about a second, and the
 * editor waits meanwhile. A picture book has some 5,000.
 */
export const MOST_LIVE = 400_000

export interface LastCheck {
  readonly version: number
  readonly checked: CheckedStory | undefined
  readonly diagnostics: readonly Diagnostic[]
  /** What is to be mended in other files, a config or a sequence, before the story can be checked. */
  readonly elsewhere: readonly Problem[]
  /** Milliseconds that the check took. */
  readonly took: number
}

export const isStory = ({ uri, languageId }: TextDocument): boolean =>
  languageId === 'markdown' || /\.(?:md|markdown)$/i.test(uri)

export function toOpenStory(document: TextDocument, host: Host): OpenStory {
  const storyPath = host.toPath(document.uri)
  return { path: host.show(storyPath), storyPath, source: document.getText() }
}

export async function checkOpenStory(document: TextDocument, host: Host): Promise<LastCheck> {
  const { version } = document
  const start = host.now()
  const toLastCheck = (diagnostics: readonly Diagnostic[], checked?: CheckedStory): LastCheck => ({
    version,
    checked,
    diagnostics,
    elsewhere: [],
    took: host.now() - start,
  })
  const story = toOpenStory(document, host)
  if (!isStory(document) || (await host.isLeftOut(story.storyPath))) return toLastCheck([])
  const { length } = story.source
  if (length > MOST_LIVE)
    return toLastCheck([toLineDiagnostic(document, 0, toTooLong(length), DiagnosticSeverity.Warning)])
  const result = await host.check(story)
  if (result === undefined) return toLastCheck([])
  if (isChecked(result)) return toLastCheck(toDiagnostics(document, result), result)
  const isMeant = namesSettings(story.source) || (await host.findChain(story.storyPath)).folders.length > 0
  const { diagnostics, elsewhere } = toReasons(document, result, isMeant)
  return { ...toLastCheck(diagnostics), elsewhere }
}

function toTooLong(length: number): string {
  const grouped = (number: number): string => String(number).replace(/\B(?=(?:\d{3})+$)/g, ',')
  return `This text has ${grouped(length)} characters, too many to check while you type; the most is ${grouped(MOST_LIVE)}. \`battledore check\` checks longer ones.`
}

const namesSettings = (source: string): boolean =>
  /^\uFEFF?---\r?\n(?:(?!---).*\r?\n)*?(?:step|sequence)[ \t]*:/.test(source)

export async function prepare(document: TextDocument, host: Host): Promise<PreparedStory | undefined> {
  const story = toOpenStory(document, host)
  if (!isStory(document) || story.source.length > MOST_LIVE) return undefined
  const prepared = await host.prepare(story)
  return 'problems' in prepared ? undefined : prepared
}
