// A word that the program would never propose to children.

import { defineRule } from '../../src/lint/rule.ts'
import { toQuoted } from '../../src/lint/wording.ts'
import { toDifferentWords } from '../../src/usage/count.ts'
import { toBareName } from '../../src/usage/likely-names.ts'
import type { UnfitKind } from '../../src/words/fitness.ts'

/** Said of a word: it … */
const WHY = {
  added: 'is on the list of this project',
  'adult-news': 'belongs to the lives of grown-ups or to the news',
  drink: 'is about strong drink',
  drug: 'is about drugs',
  profanity: 'is, or can be, a swear word',
  'second-meaning': 'has a second meaning that is not for children',
  sexual: 'is, or can be, about sex',
  slur: 'is, or can be, an insult to people',
  violence: 'is about hurting people',
  weapon: 'is about weapons',
} as const satisfies Record<UnfitKind, string>

export default defineRule({
  id: 'no-unfit-word',
  summary: 'A word that is held unfit for children.',
  severity: 'off',
  needs: 'fitness',
  options: {
    allow: { type: 'strings', default: [], description: 'Words that your story may have, in small letters.' },
  },
  messages: { unfit: '{word} {why}' },
  create: ({ story, options, report }) => ({
    story: () => {
      const { findUnfit } = story
      if (findUnfit === undefined) return
      for (const { key, word } of toDifferentWords(story.count())) {
        const found = options.allow.includes(key) ? undefined : findUnfit(toBareName(key))
        if (found === undefined || options.allow.includes(found.base)) continue
        report({
          at: word,
          word,
          messageId: 'unfit',
          data: { word: toQuoted(word.text), why: WHY[found.kind] },
          note: `If it is right in this story, allow it; to let it be proposed too, list ${toQuoted(found.base)} under \`fit words\`.`,
        })
      }
    },
  }),
})
