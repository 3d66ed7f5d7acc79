// A vowel is worn down in speech, as the `i` of `rabbit`, and the sequence asks to have such vowels flagged.

import { defineRule } from '../../src/lint/rule.ts'
import { toFaultReport, toQuoted, toWordNote } from '../../src/lint/wording.ts'

export default defineRule({
  id: 'no-reduced-vowel',
  summary: 'A weak vowel, where the sequence flags them.',
  severity: 'error',
  claims: ['reduced-vowel'],
  options: {},
  messages: { weak: '{word} has a weak vowel: its {letters} is not said in full' },
  create: ({ story, report }) => ({
    fault: (fault) =>
      report({
        ...toFaultReport(fault),
        messageId: 'weak',
        data: { word: toQuoted(fault.word.text), letters: toQuoted(fault.reason?.unit?.letters ?? '') },
        note: toWordNote(fault, story),
      }),
  }),
})
