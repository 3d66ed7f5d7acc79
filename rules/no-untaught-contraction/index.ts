// A word is two words drawn together, as `can't`, before that is taught.

import { defineRule } from '../../src/lint/rule.ts'
import { toFaultReport, toQuoted, toWhen, toWordNote } from '../../src/lint/wording.ts'

export default defineRule({
  id: 'no-untaught-contraction',
  summary: "A contraction such as `can't` before it is taught.",
  severity: 'error',
  claims: ['contraction'],
  options: {},
  messages: { later: '{word} is two words drawn together, {when}' },
  create: ({ story, report }) => ({
    fault: (fault) =>
      report({
        ...toFaultReport(fault),
        messageId: 'later',
        data: { word: toQuoted(fault.word.text), when: toWhen(fault.reason?.taughtAt, story) },
        note: `Write the two words in full. ${toWordNote(fault, story)}`,
      }),
  }),
})
