// A page has more words than the step, or the teacher, allows.

import { defineRule } from '../../src/lint/rule.ts'
import { toCount, toLimitText } from '../../src/lint/wording.ts'
import type { Page, Word } from '../../src/story/types.ts'

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
        const { count, first, last } = findTooMany(page, allowed)
        if (first === undefined || last === undefined) return
        report({
          at: { start: first.start, end: last.end },
          messageId: 'long',
          data: {
            page: page.number,
            found: toCount(count, 'word'),
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

/** How many words a page has, with the first that is one too many, and the last. No list is made: each page of each story is counted. */
function findTooMany({ blocks }: Page, allowed: number) {
  let count = 0
  let first: Word | undefined
  let last: Word | undefined
  for (const { sentences } of blocks) {
    for (const { words } of sentences) {
      first ??= words[allowed - count]
      last = words.at(-1) ?? last
      count += words.length
    }
  }
  return { count, first, last }
}
