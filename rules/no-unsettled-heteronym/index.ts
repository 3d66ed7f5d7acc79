// A word can be said in two ways, only one of them readable at this step, and its sentence does not settle which.

import { toChoiceNote } from '../../src/lint/meanings.ts'
import { defineRule } from '../../src/lint/rule.ts'
import { toFaultReport, toQuoted } from '../../src/lint/wording.ts'

export default defineRule({
  id: 'no-unsettled-heteronym',
  summary: 'A word with two pronunciations that its sentence does not settle.',
  severity: 'warning',
  claims: ['unsettled-heteronym'],
  options: {},
  messages: { unsettled: '{word} can be said in more than one way, and the sentence does not settle which' },
  create: ({ report }) => ({
    fault: (fault) => {
      report({
        ...toFaultReport(fault),
        messageId: 'unsettled',
        data: { word: toQuoted(fault.word.text) },
        note: `${toChoiceNote(fault.judged)} Make the sentence plainer, or use another word.`,
      })
    },
  }),
})
