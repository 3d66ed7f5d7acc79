// A word carries an ending, or changes its spelling before one, in a way that is not taught yet.

import { findChangeText, toEnding } from '../../src/lint/endings.ts'
import { defineRule } from '../../src/lint/rule.ts'
import { toFaultReport, toQuoted, toWhen, toWordNote } from '../../src/lint/wording.ts'

export default defineRule({
  id: 'no-untaught-ending',
  summary: 'An ending such as `-s` or `-ed` before it is taught.',
  severity: 'error',
  claims: ['ending'],
  options: {
    allow: {
      type: 'strings',
      default: [],
      description: "Endings that the child may meet all the same, such as `-s` or `'s`.",
    },
  },
  messages: {
    change: '{word} {change} before its ending, {when}',
    later: '{word} has the ending {ending}, {when}',
  },
  create: ({ story, options, report }) => ({
    fault: (fault) => {
      const { word, reason } = fault
      const body = { ...toFaultReport(fault), note: toWordNote(fault, story) }
      const data = { word: toQuoted(word.text), when: toWhen(reason?.taughtAt, story) }
      const change = findChangeText(reason)
      if (change !== undefined) {
        report({ ...body, messageId: 'change', data: { ...data, change } })
        return
      }
      const ending = toEnding(word.text, reason)
      if (options.allow.includes(ending)) return
      report({ ...body, messageId: 'later', data: { ...data, ending: toQuoted(ending) } })
    },
  }),
})
