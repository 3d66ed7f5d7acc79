// A word holds letters with a sound that the sequence teaches at a later step, or not at all though it is an ordinary one.

import { defineRule } from '../../src/lint/rule.ts'
import { toSeen } from '../../src/lint/seen.ts'
import { toUntaughtText } from '../../src/lint/untaught.ts'
import { toFaultReport, toQuoted, toWhen, toWordNote } from '../../src/lint/wording.ts'

export default defineRule({
  id: 'no-untaught-correspondence',
  summary: 'Letters whose sound is taught at a later step, or not in this sequence.',
  severity: 'error',
  claims: ['correspondence-later', 'correspondence-untaught'],
  options: {
    allow: {
      type: 'strings',
      default: [],
      description: 'Letters that the child may meet all the same, such as `igh`.',
    },
  },
  messages: {
    untaught: '{word} has {letters}, {when}',
  },
  create: ({ story, options, report }) => ({
    fault: (fault) => {
      const { word, reason } = fault
      const unit = reason?.unit
      if (unit === undefined) return
      const { letters } = toSeen(word.text, unit, reason)
      if (options.allow.includes(unit.letters) || options.allow.includes(letters)) return
      const body = { ...toFaultReport(fault), note: toWordNote(fault, story) }
      const data = {
        word: toQuoted(word.text),
        letters: toUntaughtText(word.text, unit, reason, story),
        when: toWhen(reason?.taughtAt, story),
      }
      report({ ...body, messageId: 'untaught', data })
    },
  }),
})
