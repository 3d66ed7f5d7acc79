// A story allows a name that none of its pages holds.

import { readListed } from '../../src/lint/listed.ts'
import { defineRule } from '../../src/lint/rule.ts'
import { toQuoted } from '../../src/lint/wording.ts'
import type { Story } from '../../src/story/types.ts'
import { markNames } from '../../src/verdict/index.ts'

export default defineRule({
  id: 'no-unused-name',
  summary: 'A name that the story allows and never uses.',
  severity: 'warning',
  options: {},
  messages: { unused: '{name} is allowed as a name, and no page holds it' },
  create: ({ story, report }) => ({
    story: () => {
      const listed = readListed(story, 'names')
      if (listed.length === 0) return
      const sentences = toSentences(story.story)
      for (const { text, at } of listed) {
        if (sentences.some((words) => markNames(words, [text]).includes(true))) continue
        report({
          at,
          messageId: 'unused',
          data: { name: toQuoted(text) },
          reason: 'unused-name',
          note: 'Take it off the list, or mend its spelling.',
        })
      }
    },
  }),
})

function toSentences({ pages }: Story): readonly (readonly string[])[] {
  const sentences = pages.flatMap(({ blocks }) => blocks.flatMap((block) => block.sentences))
  return sentences.map(({ words }) => words.map(({ text }) => text))
}
