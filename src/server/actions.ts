// Quick fixes for the messages under the cursor: another word, an allowed name, a sight word, a switch.

import { type CodeAction, CodeActionKind, type TextEdit } from 'vscode-languageserver'
import type { TextDocument } from 'vscode-languageserver-textdocument'
import { toStraight } from '../apostrophe.ts'
import type { PreparedStory } from '../check/check-story.ts'
import { FRONT_MATTER, TEXT } from '../check/check-story.ts'
import { addToList, type Edit, switchOff } from '../fix/edits.ts'
import { createSlots, type FindSlot, putIn } from '../fix/put-in.ts'
import type { Message } from '../lint/types.ts'
import { toBareName } from '../usage/likely-names.ts'
import { isAllowedName, REASON_CODES } from '../verdict/index.ts'
import { toDiagnostic } from './diagnostics.ts'
import { toRange } from './ranges.ts'

/** Faults that a word no longer has once it is known by heart. Nobody teaches a slip by heart. */
const CURED_BY_HEART: ReadonlySet<string> = new Set(REASON_CODES.filter((code) => code !== 'misspelt'))

/** Faults that a word no longer has once it is an allowed name. */
const CURED_BY_NAME: ReadonlySet<string> = new Set([...CURED_BY_HEART, 'guessed', 'unlisted-name'])

const SWITCH_RULES: ReadonlySet<string> = new Set(['no-unused-switch', 'no-unknown-switch'])

interface Fix {
  readonly title: string
  readonly edit: Edit | undefined
  readonly isPreferred?: boolean
}

export interface ActionSources {
  readonly document: TextDocument
  readonly prepared: Pick<PreparedStory, 'context' | 'story'>
}

export async function toActions(messages: readonly Message[], sources: ActionSources): Promise<CodeAction[]> {
  const all: CodeAction[] = []
  const slots = createSlots(sources.prepared.story)
  for (const message of messages) {
    const diagnostics = [toDiagnostic(sources.document, message)]
    for (const { title, edit, isPreferred } of await toFixes(message, sources, slots)) {
      if (!edit) continue
      const change: TextEdit = { range: toRange(sources.document, edit), newText: edit.text }
      all.push({
        title,
        kind: CodeActionKind.QuickFix,
        diagnostics,
        ...(isPreferred ? { isPreferred } : {}),
        edit: { changes: { [sources.document.uri]: [change] } },
      })
    }
  }
  return all
}

async function toFixes(
  message: Message,
  { prepared: { context, story } }: ActionSources,
  slots: FindSlot,
): Promise<Fix[]> {
  const { word, reason = '' } = message
  const fixes: Fix[] = toReplacements(message, story.source, slots)
  const name = word === undefined ? '' : toBareName(word)
  if (isNameLike(name) && CURED_BY_NAME.has(reason) && !isAllowedName(name, context.names)) {
    fixes.push({
      title: `Allow the name “${name}” in this story`,
      edit: await addToList(story, 'names', name),
      isPreferred: reason === 'unlisted-name',
    })
  }
  if (word !== undefined && (CURED_BY_HEART.has(reason) || reason === 'unlisted-name')) {
    const sight = word.toLowerCase()
    fixes.push({
      title: `Make “${sight}” a sight word of this story`,
      edit: await addToList(story, 'sight words', sight),
    })
  }
  if (message.rule !== FRONT_MATTER && message.rule !== TEXT && !SWITCH_RULES.has(message.rule)) {
    const about = word === undefined ? '' : ` for “${word}”`
    fixes.push({
      title: `Switch off ${message.rule}${about} here`,
      edit: switchOff(story, message.start, message.rule, word),
    })
  }
  return fixes
}

/** None for a word whose emphasis reaches beyond it: without its marks, the rest would read otherwise. */
function toReplacements({ word, start, end, suggestions }: Message, source: string, slots: FindSlot): Fix[] {
  const slot = word === undefined || suggestions.length === 0 ? undefined : slots(start)
  return suggestions.map((text, at) => ({
    title: word === undefined ? `Change it to “${text}”` : `Use “${text}” instead of “${word}”`,
    edit: word === undefined ? { start, end, text } : slot && putIn(slot, source, text),
    isPreferred: at === 0,
  }))
}

/** One capital, at the front: `Zub`, not `STOP`. `O'Hara` has two. */
const isNameLike = (word: string): boolean => /^(?:\p{Lu}')?\p{Lu}[^\p{Lu}]*\p{Ll}/u.test(toStraight(word))
