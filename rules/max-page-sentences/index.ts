// A page has more sentences than the step, or the teacher, allows.

import { defineRule } from '../../src/lint/rule.ts'
import { toCount, toLimitText } from '../../src/lint/wording.ts'

export default defineRule({
  id: 'max-page-sentences',
  summary: 'A page with more sentences than the step allows.',
  severity: 'warning',
  options: {
    sentences: {
      type: 'number',
      default: 0,
      minimum: 0,
      description: 'A limit of your own; 0 keeps to the limit of the step.',
    },
  },
  messages: { long: 'Page {page} has {found}; {limit}' },
  create: ({ story, options, report }) => {
    const isOwn = options.sentences > 0
    const allowed = isOwn ? options.sentences : story.knowledge.limits.pageSentences
    if (allowed === undefined) return {}
    return {
      page: (page) => {
        const sentences = page.blocks.filter(({ kind }) => kind === 'paragraph').flatMap((block) => block.sentences)
        const first = sentences[allowed]
        const last = sentences.at(-1)
        if (first === undefined || last === undefined) return
        report({
          at: { start: first.start, end: last.end },
          messageId: 'long',
          data: {
            page: page.number,
            found: toCount(sentences.length, 'sentence'),
            limit: toLimitText(allowed, story.step, isOwn),
          },
          reason: 'page-sentences',
          note: 'Move the sentences from here on to a new page.',
          page: page.number,
        })
      },
    }
  },
})
