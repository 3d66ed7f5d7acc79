// A word that cannot be read has a capital in mid-sentence: most likely a name that nobody listed.

import { defineRule } from '../../src/lint/rule.ts'
import { toFaultReport, toQuoted, toUnsureNameNote } from '../../src/lint/wording.ts'
import { toBareName } from '../../src/usage/likely-names.ts'

export default defineRule({
  id: 'no-unlisted-name',
  summary: 'A word that cannot be read and looks like a name, but is not listed as one.',
  severity: 'error',
  claims: ['unlisted-name'],
  options: {},
  messages: {
    unlisted: '{word} cannot be read yet; is it a name?',
    unsure: 'it is not known how {word} is said; is it a name?',
  },
  create: ({ report }) => ({
    fault: (fault) => {
      const name = toBareName(fault.word.text)
      const isUnsure = fault.judged?.pronunciations.unsure === true
      report({
        ...toFaultReport(fault),
        messageId: isUnsure ? 'unsure' : 'unlisted',
        data: { word: toQuoted(fault.word.text) },
        note: isUnsure
          ? toUnsureNameNote(name)
          : `If it is, tell it to the child and list ${toQuoted(name)} under \`names\` at the top of the story; if not, use another word.`,
      })
    },
  }),
})
