// What the desk says of a story, brought into the form of `battledore check --format json`, so that both can be compared.

import type { Answer, Kind, Question } from '../../../src/desk/core/questions.ts'

type Ask = <K extends Kind>(question: Question<K>) => Promise<Answer<K>>

export interface Said {
  readonly sequence: string
  readonly step: string
  readonly accent: string
  readonly pages: readonly { readonly page: number; readonly words: number; readonly unreadable: number }[]
  readonly totals: { readonly words: number; readonly unreadable: number; readonly readableShare: number }
  readonly messages: readonly object[]
}

/** Undefined with the texts of the problems where it cannot be checked. */
export async function sayByDesk(ask: Ask, path: string, text: string, reader?: string): Promise<Said | string[]> {
  const story = { path, text, version: 1, ...(reader !== undefined && { reader }) }
  const checked = await ask({ kind: 'check', story })
  if (!checked.checked) return checked.problems.map(({ message }) => message)
  const messages: object[] = []
  for (const [at, place] of checked.places.entries()) {
    const card = await ask({ kind: 'card', story, place: at })
    if (!card.ok) throw new Error(card.problems[0]?.message)
    const { start, end, page, severity, word, message, rule, reason, letters, readableAt, line } = place
    messages.push({
      ...{ rule, severity, message, line, offset: start, endOffset: end, page, word, reason, letters, readableAt },
      note: card.value.note,
      suggestions: card.value.fixes.flatMap((fix) => (fix.kind === 'replace' ? [fix.word] : [])),
      leaveOut: card.value.fixes.some(({ kind }) => kind === 'out'),
    })
  }
  const { words, notYet, readableShare } = checked.total
  return {
    sequence: checked.sequence.name,
    step: checked.step.id,
    accent: checked.accent,
    pages: checked.pages.map((page) => ({ page: page.number, words: page.words, unreadable: page.notYet })),
    totals: { words, unreadable: notYet, readableShare },
    messages,
  }
}

interface JsonMessage {
  readonly [key: string]: unknown
  readonly suggestions: readonly string[]
}

interface JsonFile extends Said {
  readonly messages: readonly JsonMessage[]
}

/** Of a file of the report, what the page shows. */
export function pickShown({ sequence, step, accent, pages, totals, messages }: JsonFile): Said {
  return {
    ...{ sequence, step, accent },
    pages: pages.map(({ page, words, unreadable }) => ({ page, words, unreadable })),
    totals: { words: totals.words, unreadable: totals.unreadable, readableShare: totals.readableShare },
    messages: messages.map(({ column: _, endColumn: _end, endLine: _line, url: _url, ...message }) => message),
  }
}
