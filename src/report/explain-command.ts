// The command that shows how a word says its sounds, as the reader of a report may type it: with the same sequence and accent.

import { DEFAULT_SEQUENCE } from '../check/read-text.ts'
import type { Accent } from '../phonics/types.ts'

/** By whom and in which English a text was judged; the sequence by its name or the path of its file. */
export interface JudgedBy {
  readonly asked: string
  readonly accent: Accent
}

/** Said without `--accent`; England's curriculum brings its own. */
const OWN_ACCENT: Readonly<Record<string, Accent>> = { england: 'southern-british' }

export function toExplainCommand(word: string, { asked, accent }: JudgedBy, step?: string): string {
  const parts = [`battledore explain ${word}`]
  if (step !== undefined) parts.push(`--step ${toArgument(step)}`)
  if (asked !== DEFAULT_SEQUENCE) parts.push(`--sequence ${toArgument(asked)}`)
  if (accent !== (OWN_ACCENT[asked] ?? 'general-american')) parts.push(`--accent ${accent}`)
  return parts.join(' ')
}

const toArgument = (value: string): string => (/^[\w@%+=:,./\\-]+$/.test(value) ? value : `"${value}"`)
