// A number is written in digits before numerals are taught.

import { defineRule } from '../../src/lint/rule.ts'
import { toFaultReport, toQuoted, toWhen } from '../../src/lint/wording.ts'
import { findStep } from '../../src/sequence/taught.ts'

export default defineRule({
  id: 'no-untaught-numeral',
  summary: 'A number in digits before numerals are taught.',
  severity: 'error',
  claims: ['numeral'],
  options: {
    upTo: {
      type: 'number',
      default: 0,
      minimum: 0,
      description: 'Whole numbers from 0 up to this one are allowed; 0 allows none.',
    },
  },
  messages: { numeral: '{word} is a number in digits, {when}' },
  create: ({ story, options, report }) => ({
    fault: (fault) => {
      const { word } = fault
      if (options.upTo > 0 && /^\d+$/u.test(word.text) && Number(word.text) <= options.upTo) return
      const step = findStep(story.sequence, ({ adds }) => adds.numerals === true)
      report({
        ...toFaultReport(fault),
        letters: [[0, word.text.length]],
        messageId: 'numeral',
        data: { word: toQuoted(word.text), when: toWhen(step, story) },
        readableAt: step ?? null,
        note: 'Write the number as a word that the child can read, or leave it out.',
      })
    },
  }),
})
