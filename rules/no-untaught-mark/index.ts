// A mark of punctuation stands in the story before it is taught.

import { defineRule } from '../../src/lint/rule.ts'
import { toQuoted, toWhen } from '../../src/lint/wording.ts'
import { findStep } from '../../src/sequence/taught.ts'
import { findMarks } from '../../src/sequence/vocabulary.ts'
import type { Mark } from '../../src/story/types.ts'

export default defineRule({
  id: 'no-untaught-mark',
  summary: 'A mark of punctuation before it is taught.',
  severity: 'error',
  options: {
    allow: {
      type: 'strings',
      default: [],
      description: 'Marks that the child may meet all the same, such as `;` or `semicolon`.',
    },
  },
  messages: { mark: '{mark} is a mark {when}' },
  create: ({ story, options, report }) => {
    const { marks } = story.knowledge
    if (marks === 'any') return {}
    const known = new Set([...marks, ...options.allow.flatMap((written) => findMarks(written) ?? [written])])
    return {
      mark: (mark) => {
        if (known.has(mark.text) || isPicture(mark)) return
        const step = findStep(story.sequence, ({ adds }) => adds.marks === 'any' || adds.marks.includes(mark.text))
        report({
          at: mark,
          messageId: 'mark',
          data: { mark: toQuoted(mark.text), when: toWhen(step, story) },
          reason: 'mark',
          readableAt: step ?? null,
          note: 'Leave it out, or use a mark that the child knows.',
        })
      },
    }
  },
})

/** An emoji is looked at, not read. */
function isPicture({ text }: Mark): boolean {
  return /\p{Extended_Pictographic}/u.test(text)
}
