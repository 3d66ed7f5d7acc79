// A word carries an ending, or changes its spelling before one, in a way that is not taught yet.

import type { Reason } from '../../src/reading/types.ts'
import { findChange } from '../../src/reading/unit.ts'
import { defineRule } from '../../src/lint/rule.ts'
import { toFaultReport, toLettersText, toQuoted, toWhen, toWordNote } from '../../src/lint/wording.ts'

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
      const data = { word: toQuoted(word.text), when: toWhen(reason?.taughtAt, story.step) }
      const change = findChangeText(reason)
      if (change !== undefined) {
        report({ ...body, messageId: 'change', data: { ...data, change } })
        return
      }
      const ending = toEnding(toLettersText(word.text, reason?.letters ?? []))
      if (options.allow.includes(ending)) return
      report({ ...body, messageId: 'later', data: { ...data, ending: toQuoted(ending) } })
    },
  }),
})

/** What the ending did to the word before it: the `nn` of `running`, the lost `e` of `baking`, the `i` of `cried`. */
function findChangeText(reason: Reason | undefined): string | undefined {
  const { unit } = reason ?? {}
  if (unit?.base === undefined || unit.kind === 'inflection') return undefined
  const change = findChange(unit.letters, unit.base)
  if (change === 'double') return `doubles its ${toQuoted(unit.base)}`
  if (change === 'drop-e') return 'drops its `e`'
  return 'turns its `y` into `i`'
}

function toEnding(letters: string): string {
  const plain = letters.toLowerCase().replace(/[’‘]/gu, "'")
  return plain.startsWith("'") ? plain : `-${plain}`
}
