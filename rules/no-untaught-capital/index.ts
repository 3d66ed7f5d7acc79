// A word has a capital letter, or is all in capitals, before the child has been taught to read them.

import { defineRule } from '../../src/lint/rule.ts'
import { toFaultReport, toQuoted, toWhen } from '../../src/lint/wording.ts'
import { findCapitalStep } from '../../src/sequence/taught.ts'

export default defineRule({
  id: 'no-untaught-capital',
  summary: 'A capital letter, or a word all in capitals, before it is taught.',
  severity: 'error',
  claims: ['all-capitals', 'capital'],
  options: {},
  messages: {
    all: '{word} is all in capitals, {when}',
    first: '{word} has a capital letter, {when}',
  },
  create: ({ story, report }) => ({
    fault: (fault) => {
      const isAll = fault.code === 'all-capitals'
      const step = findCapitalStep(story.sequence, isAll ? 'all' : 'first')
      const word = fault.word.text
      report({
        ...toFaultReport(fault),
        letters: isAll ? [[0, word.length]] : toCapitals(word),
        messageId: isAll ? 'all' : 'first',
        data: { word: toQuoted(word), when: toWhen(step, story) },
        readableAt: step ?? null,
        note: `Write ${toQuoted(isAll ? word.charAt(0) + word.slice(1).toLowerCase() : word.toLowerCase())} instead.`,
      })
    },
  }),
})

function toCapitals(word: string): readonly (readonly [number, number])[] {
  return [...word.matchAll(/\p{Lu}/gu)].map(({ index, 0: letter }) => [index, index + letter.length] as const)
}
