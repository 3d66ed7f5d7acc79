// A mark of punctuation stands in the story before it is taught.

import type { Mark } from '../../src/story/types.ts'
import { defineRule } from '../../src/lint/rule.ts'
import { findStep } from '../../src/lint/taught.ts'
import { toQuoted, toWhen } from '../../src/lint/wording.ts'

/** Curly and straight quotes, and the dashes, are one mark to a child; three dots are one mark in either spelling. */
const PLAIN = { '‐': '-', '–': '—', '‘': "'", '’': "'", '“': '"', '”': '"', '...': '…' } as const satisfies Record<string, string>

export default defineRule({
  id: 'no-untaught-mark',
  summary: 'A mark of punctuation before it is taught.',
  severity: 'error',
  options: {
    allow: {
      type: 'strings',
      default: [],
      description: 'Marks that the child may meet all the same, such as `;`.',
    },
  },
  messages: { mark: '{mark} is a mark {when}' },
  create: ({ story, options, report }) => {
    const { marks } = story.knowledge
    if (marks === 'any') return {}
    const known = new Set([...marks, ...options.allow].map(toPlain))
    return {
      mark: (mark) => {
        if (known.has(toPlain(mark.text)) || isPicture(mark)) return
        const step = findStep(story.sequence, ({ adds }) => adds.marks === 'any' || adds.marks.map(toPlain).includes(toPlain(mark.text)))
        report({
          at: mark,
          messageId: 'mark',
          data: { mark: toQuoted(mark.text), when: toWhen(step, story.step) },
          reason: 'mark',
          readableAt: step ?? null,
          note: 'Leave it out, or use a mark that the child knows.',
        })
      },
    }
  },
})

function toPlain(mark: string): string {
  return Object.hasOwn(PLAIN, mark) ? PLAIN[mark as keyof typeof PLAIN] : mark
}

/** An emoji is looked at, not read. */
function isPicture({ text }: Mark): boolean {
  return /\p{Extended_Pictographic}/u.test(text)
}
