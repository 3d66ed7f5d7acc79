// A word is one that the sequence teaches by heart, at a later step.

import { defineRule } from '../../src/lint/rule.ts'
import { toFaultReport, toQuoted, toWhen, toWordNote } from '../../src/lint/wording.ts'

export default defineRule({
  id: 'no-untaught-sight-word',
  summary: 'A sight word that is taught at a later step.',
  severity: 'error',
  claims: ['sight-word-later'],
  options: {
    allow: {
      type: 'strings',
      default: [],
      description: 'Sight words that the child may meet all the same, in small letters.',
    },
  },
  messages: { later: '{word} is a sight word {when}' },
  create: ({ story, options, report }) => ({
    fault: (fault) => {
      const { word, reason } = fault
      if (options.allow.includes(word.text.toLowerCase())) return
      report({
        ...toFaultReport(fault),
        messageId: 'later',
        data: { word: toQuoted(word.text), when: toWhen(reason?.taughtAt, story) },
        note: toWordNote(fault, story),
      })
    },
  }),
})
