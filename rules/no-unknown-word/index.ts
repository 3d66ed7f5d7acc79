// A word is not in the dictionary, so its sounds are a guess from its letters.

import { defineRule } from '../../src/lint/rule.ts'
import type { StoryContext, WordFault } from '../../src/lint/types.ts'
import { toAsIn, toFaultReport, toQuoted } from '../../src/lint/wording.ts'
import { findExample } from '../../src/sequence/taught.ts'

export default defineRule({
  id: 'no-unknown-word',
  summary: 'A word that the dictionary does not know; shows how it was read.',
  severity: 'warning',
  claims: ['guessed'],
  options: {
    allow: {
      type: 'strings',
      default: [],
      description: 'Invented words that you know about, such as `plop`.',
    },
  },
  messages: {
    guessed: '{word} is not in the dictionary; it was read by its letters: {guess}',
  },
  create: ({ story, options, report }) => ({
    fault: (fault) => {
      const { word } = fault
      if (options.allow.some((allowed) => allowed.toLowerCase() === word.text.toLowerCase())) return
      const note = 'Check the spelling. If the word is meant, nothing need be done: a child can sound it out.'
      const data = { word: toQuoted(word.text), guess: toGuess(fault, story) }
      report({ ...toFaultReport(fault), messageId: 'guessed', data, note })
    },
  }),
})

/** `z` as in `zip`, `u` as in `cup`, `b` as in `bat` */
function toGuess({ word, judged }: WordFault, { sequence }: StoryContext): string {
  const units = judged?.verdict.pronunciation?.units ?? []
  return units
    .map((unit) => {
      if (unit.kind === 'silent') return `silent ${toQuoted(unit.letters)}`
      return `${toQuoted(unit.letters)}${toAsIn(findExample(sequence, unit.key, word.text))}`
    })
    .join(', ')
}
