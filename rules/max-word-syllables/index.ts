// A word has more syllables than the step allows.

import { defineRule } from '../../src/lint/rule.ts'
import { toCount, toFaultReport, toLimitText, toQuoted, toWordNote } from '../../src/lint/wording.ts'

export default defineRule({
  id: 'max-word-syllables',
  summary: 'A word with more syllables than the step allows.',
  severity: 'error',
  claims: ['too-many-syllables'],
  options: {},
  messages: { long: '{word} has {found}{cut}; {limit}' },
  create: ({ story, report }) => ({
    fault: (fault) => {
      const { word, reason, judged } = fault
      const syllables = judged?.verdict.pronunciation?.syllables ?? []
      report({
        ...toFaultReport(fault),
        messageId: 'long',
        data: {
          word: toQuoted(word.text),
          found: toCount(Number(reason?.found), 'syllable'),
          cut: syllables.length > 1 ? ` (${syllables.join('-')})` : '',
          limit: toLimitText(Number(reason?.allowed), story.step, false),
        },
        note: toWordNote(fault, story),
      })
    },
  }),
})
