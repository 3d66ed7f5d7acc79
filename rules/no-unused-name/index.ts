// A story allows a name that none of its pages holds.

import { readListed } from '../../src/lint/listed.ts'
import { defineRule } from '../../src/lint/rule.ts'
import { toQuoted } from '../../src/lint/wording.ts'
import type { Block } from '../../src/story/types.ts'
import { markNames } from '../../src/verdict/index.ts'

export default defineRule({
  id: 'no-unused-name',
  summary: 'A name that the story allows and never uses.',
  severity: 'warning',
  options: {},
  messages: { unused: '{name} is allowed as a name, and no page holds it' },
  create: ({ story, report }) => ({
    story: ({ pages }) => {
      for (const { text, at } of readListed(story, 'names')) {
        if (pages.some(({ blocks }) => blocks.some((block) => holdsName(block, text)))) continue
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

const holdsName = ({ sentences }: Block, name: string): boolean =>
  sentences.some(({ words }) =>
    markNames(
      words.map(({ text }) => text),
      [name],
    ).includes(true),
  )
