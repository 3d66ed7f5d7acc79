// Answers to what an editor asks of an open story: a hover, quick fixes, what could be written next.

import {
  type CodeAction,
  CodeActionKind,
  type CompletionItem,
  type CompletionList,
  type Range,
} from 'vscode-languageserver'
import type { TextDocument } from 'vscode-languageserver-textdocument'
import { rules } from '../../rules/index.ts'
import type { PreparedStory } from '../check/check-story.ts'
import { withSuggestions } from '../check/suggest.ts'
import { toFitness } from '../check/who-reads.ts'
import { findCompleter } from '../finder/readable-words.ts'
import type { Message } from '../lint/types.ts'
import { readStory } from '../story/index.ts'
import { toActions } from './actions.ts'
import { findYaml, type SettingSources, toSettingItems, toWordItems, type Yaml } from './complete.ts'
import type { Host } from './host.ts'
import { type HoverText, toHover } from './hover.ts'
import type { LiveChecks, ReportError } from './live-checks.ts'
import { findSettings, type OpenSettings } from './open-settings.ts'
import { isStory, MOST_LIVE, prepare, toOpenStory } from './open-stories.ts'
import { isTouching, toBlamed } from './ranges.ts'

export interface Answers {
  hover(document: TextDocument, offset: number): Promise<HoverText | undefined>
  actions(document: TextDocument, range: Range, only: readonly string[] | undefined): Promise<CodeAction[]>
  complete(document: TextDocument, offset: number): Promise<CompletionList | CompletionItem[] | null>
}

export function createAnswers(host: Host, checks: LiveChecks, reportError: ReportError): Answers {
  return {
    async hover(document, offset) {
      const prepared = await prepare(document, host)
      return prepared && toHover(prepared, offset)
    },
    async actions(document, range, only) {
      if (only && !only.some((kind) => CodeActionKind.QuickFix.startsWith(kind))) return []
      const messages = (await checks.find(document))?.checked?.messages ?? []
      const asked = { start: document.offsetAt(range.start), end: document.offsetAt(range.end) }
      const under = messages.filter((message) => isTouching(toBlamed(message), asked))
      const prepared = under.length > 0 ? await prepare(document, host) : undefined
      if (!prepared) return []
      return toActions(await addSuggestions(under, prepared, host, reportError), { document, prepared })
    },
    async complete(document, offset) {
      const source = document.getText()
      if (!isStory(document) || source.length > MOST_LIVE) return null
      const yaml = findYaml(source, readStory(source).frontMatter, offset)
      if (yaml) return toSettingItems(document, offset, yaml, await toSettingSources(document, yaml, host))
      const prepared = await prepare(document, host)
      return prepared
        ? { isIncomplete: true, items: completeWord(document, offset, prepared, host, reportError) }
        : null
    },
  }
}

/** Without the data of words, all else still works. */
function completeWord(
  document: TextDocument,
  offset: number,
  { sequence, step, reader, context, settings }: PreparedStory,
  host: Host,
  reportError: ReportError,
): CompletionItem[] {
  try {
    const phonics = host.resources.phonicsFor(context.accent)
    const names = settings.names.map(({ value }) => value)
    const words = { ...host.words(), ...toFitness(settings) }
    return toWordItems(document, offset, findCompleter({ ...words, sequence, step, reader, phonics, names }))
  } catch (error) {
    reportError(error)
    return []
  }
}

async function addSuggestions(
  messages: readonly Message[],
  { sequence, step, reader, context, settings }: PreparedStory,
  { resources }: Host,
  reportError: ReportError,
): Promise<readonly Message[]> {
  try {
    const help = await resources.wordHelp?.()
    if (!help) return messages
    const suggester = help.suggesterFor({ sequence, step, reader, ...toFitness(settings) })
    return withSuggestions(messages, context, { suggester })
  } catch (error) {
    reportError(error)
    return messages
  }
}

/** With the sequence that holds for the story, even where its step is still to be written. */
async function toSettingSources(document: TextDocument, yaml: Yaml, host: Host): Promise<SettingSources> {
  const story = toOpenStory(document, host)
  const find = (value: string): Promise<OpenSettings> =>
    findSettings(story, { value, valueStart: yaml.start, start: 0, end: yaml.start + value.length }, host)
  // Without its closing line, the top of the story may reach into the text, which is no YAML.
  const { settings } = await find(yaml.whole).then(async (whole) =>
    Object.keys(whole.own.raw).length > 0 ? whole : await find(yaml.before),
  )
  const sequence = await host.resources.sequence(settings.sequence.value, settings.accent.value)
  return { sequence: sequence.ok ? sequence.value : undefined, sequenceNames: host.builtIns(), rules }
}
