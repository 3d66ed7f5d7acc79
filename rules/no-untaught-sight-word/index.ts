// A word is one that the sequence teaches by heart, at a later step.

import { defineRule } from '../../src/lint/rule.ts'
import type { WordFault } from '../../src/lint/types.ts'
import { toFaultReport, toQuoted, toWhen, toWordNote } from '../../src/lint/wording.ts'
import { toSightKey } from '../../src/sequence/knowledge.ts'
import type { Sequence } from '../../src/sequence/types.ts'

export default defineRule({
  id: 'no-untaught-sight-word',
  summary: 'A sight word that is taught at a later step.',
  severity: 'error',
  claims: ['sight-word-later'],
  options: {
    allow: {
      type: 'strings',
      default: [],
      description: 'Sight words that the child may meet all the same, in small letters.',
    },
  },
  messages: {
    later: '{word} is a sight word {when}',
    parts: '{word} is put together of {parts}, not both readable before step {taughtAt}; this story is at {step}',
  },
  create: ({ story, options, report }) => ({
    fault: (fault) => {
      const { word, reason } = fault
      if (options.allow.includes(word.text.toLowerCase())) return
      const parts = findParts(fault, story.sequence)
      const taughtAt = reason?.taughtAt
      if (parts !== undefined && taughtAt !== undefined) {
        const data = { word: toQuoted(word.text), parts, taughtAt, step: story.step }
        report({ ...toFaultReport(fault), messageId: 'parts', data, note: toWordNote(fault, story) })
        return
      }
      report({
        ...toFaultReport(fault),
        messageId: 'later',
        data: { word: toQuoted(word.text), when: toWhen(reason?.taughtAt, story) },
        note: toWordNote(fault, story),
      })
    },
  }),
})

/** What a word such as `someone` is made of, where no step names the word itself. */
function findParts({ word, judged }: WordFault, { steps }: Sequence): string | undefined {
  const parts = judged?.pronunciations.parts
  const key = toSightKey(word.text)
  const isNamed = steps.some(({ adds }) => adds.sightWords.some((one) => toSightKey(one) === key))
  if (parts === undefined || isNamed) return undefined
  return parts.map((part) => toQuoted(typeof part === 'string' ? part : part.word)).join(' and ')
}
