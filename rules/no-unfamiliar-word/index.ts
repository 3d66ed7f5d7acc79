// A word that the child can read and is unlikely to know.

import { defineRule } from '../../src/lint/rule.ts'
import { toQuoted } from '../../src/lint/wording.ts'
import { toDifferentWords } from '../../src/usage/count.ts'
import { toBareName } from '../../src/usage/likely-names.ts'
import { isAllowedName, toWordKey } from '../../src/verdict/index.ts'

const LEAST = { 'grade-3': 3, 'grade-4': 2, common: 1 } as const

export default defineRule({
  id: 'no-unfamiliar-word',
  summary: 'A word that can be read, and that a small child is unlikely to know.',
  severity: 'off',
  needs: 'familiarity',
  options: {
    list: {
      type: 'string',
      choices: ['common', 'grade-4', 'grade-3'],
      default: 'common',
      description:
        'Where a word must stand: on the list for `grade-3`, on that or the one for `grade-4`, or on those or among the 6,000 most used (`common`).',
    },
    allow: { type: 'strings', default: [], description: 'Words that your readers know, in small letters.' },
  },
  messages: { unfamiliar: '{word} can be read, and few small children know it' },
  create: ({ story, options, report }) => ({
    story: () => {
      const { familiarity } = story
      if (familiarity === undefined) return
      const least = LEAST[options.list as keyof typeof LEAST] ?? 1
      const names = story.likelyNames()
      for (const { key, word, uses } of toDifferentWords(story.count())) {
        const name = toBareName(word.text)
        if (options.allow.includes(key) || names.has(name) || isAllowedName(name, story.names)) continue
        const isSoundedOut = uses.some((use) => story.judge(use.word, use.sentence).verdict.kind === 'decodable')
        const known = familiarity(toWordKey(name))
        if (!isSoundedOut || known === undefined || known >= least) continue
        report({
          at: word,
          word,
          messageId: 'unfamiliar',
          data: { word: toQuoted(word.text) },
          note: 'Use a word that they know, show it in the picture, or explain it before the book is read.',
        })
      }
    },
  }),
})
