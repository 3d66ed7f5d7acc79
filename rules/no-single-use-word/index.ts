// A word that the story uses once only.

import { defineRule } from '../../src/lint/rule.ts'
import { toQuoted } from '../../src/lint/wording.ts'
import { toDifferentWords } from '../../src/usage/count.ts'
import { toBareName } from '../../src/usage/likely-names.ts'
import { isAllowedName } from '../../src/verdict/index.ts'

export default defineRule({
  id: 'no-single-use-word',
  summary: 'A word that the story uses once only.',
  severity: 'off',
  options: {
    allow: { type: 'strings', default: [], description: 'Words that may stand alone, in small letters.' },
    letters: { type: 'number', default: 0, minimum: 0, description: 'Words of up to so many letters may stand alone.' },
  },
  messages: { once: '{word} is used once only' },
  create: ({ story, options, report }) => ({
    story: () => {
      for (const { key, word, times } of toDifferentWords(story.count())) {
        if (times > 1 || options.allow.includes(key) || key.length <= options.letters) continue
        if (isAllowedName(toBareName(word.text), story.names)) continue
        report({
          at: word,
          word,
          messageId: 'once',
          data: { word: toQuoted(word.text) },
          note: 'Use it again, or put in its place a word that the story has already.',
        })
      }
    },
  }),
})
