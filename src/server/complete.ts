// What an editor offers while one types: words that the child can read; at the top of a story, its settings.

import { type CompletionItem, CompletionItemKind } from 'vscode-languageserver'
import type { TextDocument } from 'vscode-languageserver-textdocument'
import { DESCRIPTIONS } from '../config/descriptions.ts'
import { storyEntries } from '../config/schema.ts'
import type { Completer } from '../finder/readable-words.ts'
import type { Rule } from '../lint/types.ts'
import type { Sequence } from '../sequence/types.ts'
import type { FrontMatter } from '../story/types.ts'
import { toCaseOf } from '../words/index.ts'
import { toRange } from './ranges.ts'

const KIND_TEXTS = { decodable: 'can be sounded out', sight: 'sight word', name: 'name', unreadable: '' } as const

/** The letters before an offset. */
function findPrefix(source: string, offset: number): string {
  return /\p{L}[\p{L}’']*$/u.exec(source.slice(Math.max(0, offset - 60), offset))?.[0] ?? ''
}

export function toWordItems(document: TextDocument, offset: number, complete: Completer): CompletionItem[] {
  const prefix = findPrefix(document.getText(), offset)
  if (prefix === '') return []
  const range = toRange(document, { start: offset - prefix.length, end: offset })
  return complete(prefix).map(({ word, kind }, at) => {
    const text = kind === 'name' ? word : toCaseOf(prefix, word)
    return {
      label: text,
      kind: CompletionItemKind.Text,
      detail: KIND_TEXTS[kind],
      sortText: String(at).padStart(3, '0'),
      filterText: text,
      textEdit: { range, newText: text },
    }
  })
}

export interface SettingSources {
  /** Undefined where it cannot be found. */
  readonly sequence: Sequence | undefined
  readonly sequenceNames: readonly string[]
  readonly rules: readonly Rule[]
}

interface Offer {
  readonly label: string
  readonly detail?: string
}

/** The settings at the top of a story. */
export interface Yaml {
  /** Where they start in the story. */
  readonly start: number
  readonly whole: string
  /** Up to the caret. */
  readonly before: string
}

/** Undefined where the caret stands elsewhere. Settings whose closing `---` is still to be written end at a blank line. */
export function findYaml(source: string, frontMatter: FrontMatter | undefined, offset: number): Yaml | undefined {
  const open = frontMatter ? undefined : /^\uFEFF?---[ \t]*\r?\n/.exec(source)?.[0].length
  const start = frontMatter?.valueStart ?? open
  if (start === undefined || offset < start) return undefined
  const before = source.slice(start, offset)
  const whole = frontMatter?.value ?? /^(?:.*\S.*\r?\n?)*/.exec(source.slice(start))?.[0] ?? ''
  return before.length <= whole.length ? { start, whole, before } : undefined
}

export function toSettingItems(
  document: TextDocument,
  offset: number,
  { whole, before }: Yaml,
  sources: SettingSources,
): CompletionItem[] {
  const lines = before.split(/\r\n|\n|\r/)
  const line = lines.at(-1) ?? ''
  const [, lead = '', key, typed = ''] = /^([ \t]*)(?:([\w -]+?):[ \t]+)?(.*)$/.exec(line) ?? []
  const owner = lead === '' ? undefined : findOwner(lines)
  const offers =
    key === undefined ? toKeys(owner, whole, sources) : toValues(owner === 'rules' ? 'rules' : key, sources)
  const range = toRange(document, { start: offset - typed.length, end: offset })
  return offers.map(({ label, detail }, at) => {
    const newText = key === undefined ? `${label}: ` : label
    return {
      label,
      kind: key === undefined ? CompletionItemKind.Property : CompletionItemKind.Value,
      ...(detail ? { detail } : {}),
      sortText: String(at).padStart(3, '0'),
      textEdit: { range, newText },
    }
  })
}

/** The key that an indented line belongs to. */
function findOwner(lines: readonly string[]): string | undefined {
  return lines.findLast((line) => /^\w/.test(line))?.split(':')[0]
}

function toKeys(owner: string | undefined, whole: string, { rules }: SettingSources): readonly Offer[] {
  if (owner === 'rules') return rules.map(({ id, summary }) => ({ label: id, detail: summary }))
  if (owner !== undefined) return []
  return Object.keys(storyEntries)
    .filter((key) => !new RegExp(`^${key}[ \t]*:`, 'm').test(whole))
    .map((key) => ({ label: key, detail: DESCRIPTIONS[key as keyof typeof storyEntries] }))
}

function toValues(key: string, { sequence, sequenceNames }: SettingSources): readonly Offer[] {
  const plain = (...labels: readonly string[]): readonly Offer[] => labels.map((label) => ({ label }))
  switch (key) {
    case 'step':
      return sequence?.steps.map(({ id, title }) => ({ label: id, detail: title })) ?? []
    case 'sequence':
      return plain(...sequenceNames)
    case 'accent':
      return plain('general-american', 'southern-british')
    case 'pages':
      return plain('auto', 'rule', '1', '2', '3')
    case 'count title':
    case 'count headings':
      return plain('true', 'false')
    case 'reduced vowels':
      return plain('accept', 'flag')
    case 'rules':
      return plain('off', 'warning', 'error')
    default:
      return []
  }
}
