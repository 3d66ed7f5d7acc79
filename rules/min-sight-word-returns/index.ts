// A sight word that the story introduces comes back too seldom to stick.

import { readListed } from '../../src/lint/listed.ts'
import { defineRule } from '../../src/lint/rule.ts'
import { toCount, toQuoted } from '../../src/lint/wording.ts'
import { toWordCounts } from '../../src/usage/count.ts'
import { toWordKey } from '../../src/verdict/index.ts'

export default defineRule({
  id: 'min-sight-word-returns',
  summary: 'A sight word that the story introduces and uses too seldom.',
  severity: 'warning',
  options: {
    times: {
      type: 'number',
      default: 4,
      minimum: 1,
      description: 'How often the story must use it, its first use among them.',
    },
  },
  messages: { seldom: '{word} is introduced here and used {found}; at least {wanted} are wanted' },
  create: ({ story, options, report }) => ({
    story: () => {
      const listed = readListed(story, 'introduces')
      if (listed.length === 0) return
      const counts = toWordCounts(story.count())
      for (const { text, at } of listed) {
        const found = counts.get(toWordKey(text)) ?? 0
        if (found >= options.times) continue
        report({
          at,
          messageId: 'seldom',
          data: { word: toQuoted(text), found: toCount(found, 'time'), wanted: options.times },
          reason: 'sight-word-returns',
          note: 'Let it come back on more pages, or introduce it in another book.',
        })
      }
    },
  }),
})
