// A page has more words than the step, or the teacher, allows.

import { defineRule } from '../../src/lint/rule.ts'
import { toCount, toLimitText } from '../../src/lint/wording.ts'

export default defineRule({
  id: 'max-page-words',
  summary: 'A page with more words than the step allows.',
  severity: 'warning',
  options: {
    words: {
      type: 'number',
      default: 0,
      minimum: 0,
      description: 'A limit of your own; 0 keeps to the limit of the step.',
    },
  },
  messages: { long: 'Page {page} has {found}; {limit}' },
  create: ({ story, options, report }) => {
    const isOwn = options.words > 0
    const allowed = isOwn ? options.words : story.knowledge.limits.pageWords
    if (allowed === undefined) return {}
    return {
      page: (page) => {
        const words = page.blocks.flatMap((block) => block.sentences.flatMap((sentence) => sentence.words))
        const first = words[allowed]
        const last = words.at(-1)
        if (first === undefined || last === undefined) return
        report({
          at: { start: first.start, end: last.end },
          messageId: 'long',
          data: {
            page: page.number,
            found: toCount(words.length, 'word'),
            limit: toLimitText(allowed, story.step, isOwn),
          },
          reason: 'page-words',
          note: 'Move the words from here on to a new page.',
          page: page.number,
        })
      },
    }
  },
})
