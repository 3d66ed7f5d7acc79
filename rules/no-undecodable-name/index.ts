// A character has a name that the child cannot sound out.

import { defineRule } from '../../src/lint/rule.ts'
import { toQuoted } from '../../src/lint/wording.ts'
import { toBareName } from '../../src/usage/likely-names.ts'
import { toWordKey } from '../../src/verdict/index.ts'

export default defineRule({
  id: 'no-undecodable-name',
  summary: 'A name that the story allows and the child cannot sound out.',
  severity: 'off',
  options: {
    allow: { type: 'strings', default: [], description: 'Names that may stay, as written.' },
  },
  messages: { name: '{name} is an allowed name that cannot be sounded out at step {step}' },
  create: ({ story, options, report }) => ({
    story: () => {
      const reported = new Set<string>()
      for (const { word, sentence, form } of story.count().uses) {
        if (form !== 'word') continue
        const name = toBareName(word.text)
        if (reported.has(toWordKey(name)) || options.allow.includes(name)) continue
        if (story.judge(word, sentence).verdict.kind !== 'name') continue
        reported.add(toWordKey(name))
        report({
          at: word,
          word,
          messageId: 'name',
          data: { name: toQuoted(name), step: story.step },
          note: 'Give the character a name that sounds out, or say the name to the child before the book is read.',
        })
      }
    },
  }),
})
