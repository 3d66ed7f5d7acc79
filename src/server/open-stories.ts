// The stories that are open in the editor, each with what its last check said.

import { type Diagnostic, DiagnosticSeverity } from 'vscode-languageserver'
import type { TextDocument } from 'vscode-languageserver-textdocument'
import type { PreparedStory } from '../check/check-story.ts'
import { type CheckedStory, isChecked } from '../check/result.ts'
import type { Problem } from '../config/index.ts'
import { readStory } from '../story/index.ts'
import { toDiagnostics, toLineDiagnostic } from './diagnostics.ts'
import { toFailures } from './failures.ts'
import type { Host, OpenStory } from './host.ts'
import { findSettings } from './open-settings.ts'

/**
 * The longest text that is checked while somebody types, in UTF-16 units: a check of it takes about a second, and the
 * editor waits meanwhile. A picture book has some 5,000.
 */
export const MOST_LIVE = 400_000

export interface LastCheck {
  readonly version: number
  readonly checked: CheckedStory | undefined
  readonly diagnostics: readonly Diagnostic[]
  /** What is to be mended in a config before the story can be checked. */
  readonly inConfigs: readonly Problem[]
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
    inConfigs: [],
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
  const settings = await findSettings(story, readStory(story.source).frontMatter, host)
  const isMeant = settings.chain.folders.length > 0 || namesSettings(story.source)
  const { diagnostics, inConfigs } = toFailures(document, result, settings, isMeant)
  return { ...toLastCheck(diagnostics), inConfigs }
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
