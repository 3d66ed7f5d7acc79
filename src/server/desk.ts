// The stories that are open in the editor, each with what its last check said.

import { type Diagnostic, DiagnosticSeverity } from 'vscode-languageserver'
import type { TextDocument } from 'vscode-languageserver-textdocument'
import type { PreparedStory } from '../check/check-story.ts'
import { type CheckedStory, isChecked } from '../check/result.ts'
import { toDiagnostics, toFailures, toLineDiagnostic } from './diagnostics.ts'
import type { Host, OpenStory } from './host.ts'

/**
 * The longest text that is checked while somebody types, in UTF-16 units: a check of it takes about a second, and the
 * editor waits meanwhile. A picture book has some 5,000.
 */
export const MOST_LIVE = 400_000

export interface Looked {
  readonly version: number
  readonly checked: CheckedStory | undefined
  readonly diagnostics: readonly Diagnostic[]
  /** Milliseconds that the check took. */
  readonly took: number
}

export const isStory = ({ uri, languageId }: TextDocument): boolean =>
  languageId === 'markdown' || /\.(?:md|markdown)$/i.test(uri)

export function toOpenStory(document: TextDocument, host: Host): OpenStory {
  const storyPath = host.toPath(document.uri)
  return { path: host.show(storyPath), storyPath, source: document.getText() }
}

export async function look(document: TextDocument, host: Host): Promise<Looked> {
  const { version } = document
  const start = host.now()
  const toLooked = (diagnostics: readonly Diagnostic[], checked?: CheckedStory): Looked => ({
    version,
    checked,
    diagnostics,
    took: host.now() - start,
  })
  const story = toOpenStory(document, host)
  if (!isStory(document) || (await host.isLeftOut(story.storyPath))) return toLooked([])
  const { length } = story.source
  if (length > MOST_LIVE)
    return toLooked([toLineDiagnostic(document, 0, toTooLong(length), DiagnosticSeverity.Warning)])
  const result = await host.check(story)
  if (result === undefined) return toLooked([])
  if (isChecked(result)) return toLooked(toDiagnostics(document, result), result)
  const isMeant = (await host.findChain(story.storyPath)).folders.length > 0 || namesSettings(story.source)
  // A text in Markdown that nobody calls a story gets a quiet hint, not an error.
  return toLooked(toFailures(document, result, isMeant ? DiagnosticSeverity.Error : DiagnosticSeverity.Hint))
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
  return 'failures' in prepared ? undefined : prepared
}
