// A word holds letters with a sound that the sequence teaches at a later step.

import { defineRule } from '../../src/lint/rule.ts'
import { findExample } from '../../src/lint/taught.ts'
import { toAsIn, toFaultReport, toQuoted, toWhen, toWordNote } from '../../src/lint/wording.ts'

export default defineRule({
  id: 'no-untaught-correspondence',
  summary: 'Letters whose sound is taught at a later step.',
  severity: 'error',
  claims: ['correspondence-later'],
  options: {
    allow: {
      type: 'strings',
      default: [],
      description: 'Letters that the child may meet all the same, such as `igh`.',
    },
  },
  messages: { later: '{word} has {letters}{example}, {when}' },
  create: ({ story, options, report }) => ({
    fault: (fault) => {
      const { word, reason } = fault
      const unit = reason?.unit
      if (unit === undefined || options.allow.includes(unit.letters)) return
      report({
        ...toFaultReport(fault),
        messageId: 'later',
        data: {
          word: toQuoted(word.text),
          letters: toQuoted(unit.letters),
          example: toAsIn(findExample(story.sequence, reason?.key ?? unit.key, word.text)),
          when: toWhen(reason?.taughtAt, story.step),
        },
        note: toWordNote(fault, story),
      })
    },
  }),
})
