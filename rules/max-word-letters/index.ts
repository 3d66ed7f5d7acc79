// A word has more letters than the step, or the teacher, allows.

import { toLetters } from '../../src/apostrophe.ts'
import { defineRule } from '../../src/lint/rule.ts'
import { toCount, toFaultReport, toLimitText, toQuoted, toWordNote } from '../../src/lint/wording.ts'

export default defineRule({
  id: 'max-word-letters',
  summary: 'A word with more letters than the step allows.',
  severity: 'error',
  claims: ['too-many-letters'],
  options: {
    letters: {
      type: 'number',
      default: 0,
      minimum: 0,
      description: 'A limit of your own, for words that could be read otherwise; 0 keeps to the limit of the step.',
    },
  },
  messages: { long: '{word} has {found}; {limit}' },
  create: ({ story, options, report }) => ({
    fault: (fault) => {
      const { word, reason } = fault
      report({
        ...toFaultReport(fault),
        messageId: 'long',
        data: {
          word: toQuoted(word.text),
          found: toCount(Number(reason?.found), 'letter'),
          limit: toLimitText(Number(reason?.allowed), story.step, false),
        },
        note: toWordNote(fault, story),
      })
    },
    ...(options.letters > 0 && {
      word: (word, sentence) => {
        const letters = toLetters(word.text).length
        if (word.form !== 'word' || letters <= options.letters || !story.judge(word, sentence).verdict.readable) return
        report({
          at: word,
          word,
          reason: 'too-many-letters',
          messageId: 'long',
          data: {
            word: toQuoted(word.text),
            found: toCount(letters, 'letter'),
            limit: toLimitText(options.letters, story.step, true),
          },
          note: 'Use a shorter word.',
        })
      },
    }),
  }),
})
