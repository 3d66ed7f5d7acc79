// The letters of a word give a child no sounds: an abbreviation, or letters of another language.

import { defineRule } from '../../src/lint/rule.ts'
import { toFaultReport, toQuoted } from '../../src/lint/wording.ts'

export default defineRule({
  id: 'no-soundless-word',
  summary: 'A word whose letters give no sounds: an abbreviation, or another language.',
  severity: 'error',
  claims: ['foreign', 'unknown-word'],
  options: {
    allow: {
      type: 'strings',
      default: [],
      description: 'Words that you read out to the child, such as `TV`.',
    },
  },
  messages: {
    foreign: '{word} is not written in English letters',
    soundless: '{word} cannot be read from its letters',
  },
  create: ({ options, report }) => ({
    fault: (fault) => {
      const { word, code } = fault
      if (options.allow.some((allowed) => allowed.toLowerCase() === word.text.toLowerCase())) return
      const body = toFaultReport(fault)
      const data = { word: toQuoted(word.text) }
      if (code === 'foreign') {
        report({ ...body, messageId: 'foreign', data, note: 'A story is checked in English only.' })
      } else {
        const note = 'Write the words out in full, check the spelling, or list it under `names` if it is a name.'
        report({ ...body, messageId: 'soundless', data, note })
      }
    },
  }),
})
