// Quick fixes for the messages under the cursor: another word, an allowed name, a sight word, a switch.

import { type CodeAction, CodeActionKind, type TextEdit } from 'vscode-languageserver'
import type { TextDocument } from 'vscode-languageserver-textdocument'
import type { PreparedStory } from '../check/check-story.ts'
import { findCures } from '../fix/cures.ts'
import type { Edit } from '../fix/edit.ts'
import { addToList } from '../fix/head-list.ts'
import { createSlots, type FindSlot, putIn, takeOut } from '../fix/put-in.ts'
import { switchOff } from '../fix/switch-off.ts'
import type { Message } from '../lint/types.ts'
import { toDiagnostic } from './diagnostics.ts'
import { toRange } from './ranges.ts'

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
  const { word, rule } = message
  const fixes: Fix[] = toReplacements(message, story.source, slots)
  const slot = message.canGo ? slots(message.start) : undefined
  if (slot) fixes.push({ title: `Leave out “${slot.word}”`, edit: takeOut(slot, story.source), isPreferred: true })
  const { name, heart, canBeKept } = findCures(message, context.names)
  if (name !== undefined) {
    fixes.push({
      title: `Allow the name “${name}” in this story`,
      edit: await addToList(story, 'names', name),
      isPreferred: message.reason === 'unlisted-name',
    })
  }
  if (heart !== undefined) {
    fixes.push({
      title: `Make “${heart}” a sight word of this story`,
      edit: await addToList(story, 'sight words', heart),
    })
  }
  if (canBeKept) {
    const about = word === undefined ? '' : ` for “${word}”`
    fixes.push({
      title: `Switch off ${rule}${about} here`,
      edit: switchOff(story, message.start, rule, word),
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
