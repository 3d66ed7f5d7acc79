// A sentence has more words than the step, or the teacher, allows.

import { defineRule } from '../../src/lint/rule.ts'
import { toCount, toLimitText } from '../../src/lint/wording.ts'

export default defineRule({
  id: 'max-sentence-words',
  summary: 'A sentence with more words than the step allows.',
  severity: 'warning',
  options: {
    words: {
      type: 'number',
      default: 0,
      minimum: 0,
      description: 'A limit of your own; 0 keeps to the limit of the step.',
    },
  },
  messages: { long: 'The sentence has {found}; {limit}' },
  create: ({ story, options, report }) => {
    const isOwn = options.words > 0
    const allowed = isOwn ? options.words : story.knowledge.limits.sentenceWords
    if (allowed === undefined) return {}
    return {
      sentence: (sentence, page) => {
        const found = sentence.words.length
        if (found <= allowed) return
        report({
          at: sentence,
          messageId: 'long',
          data: { found: toCount(found, 'word'), limit: toLimitText(allowed, story.step, isOwn) },
          reason: 'sentence-words',
          note: 'Cut it into two sentences.',
          page: page.number,
        })
      },
    }
  },
})
