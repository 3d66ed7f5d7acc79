// A word holds letters with a sound that the sequence never teaches for them.

import { toByHeart } from '../../src/lint/by-heart.ts'
import { defineRule } from '../../src/lint/rule.ts'
import { toMeantNote } from '../../src/lint/slips.ts'
import { toFaultReport, toLettersText, toQuoted } from '../../src/lint/wording.ts'
import { findSoundExample } from '../../src/sequence/taught.ts'
import type { Reason } from '../../src/verdict/types.ts'

export default defineRule({
  id: 'no-irregular-word',
  summary: 'Letters that say a sound which the sequence never teaches for them.',
  severity: 'error',
  claims: ['irregular'],
  options: {},
  messages: {
    other: '{word} breaks the rules: its {letters} sounds like the {other} in {example}, and no step teaches that',
    silent: '{word} breaks the rules: its {letters} says nothing, and no step teaches that',
    weak: '{word} breaks the rules: its {letters} is a weak vowel, hardly said, and no step teaches that',
    unusual: '{word} breaks the rules: its {letters} does not say its usual sound, and no step teaches that',
  },
  create: ({ story, report }) => ({
    fault: (fault) => {
      const { word, reason } = fault
      const body = {
        ...toFaultReport(fault),
        note:
          toMeantNote(fault, story) ??
          `Use another word, or teach ${toQuoted(toByHeart(word.text, story))} by heart and list it under \`sight words\`.`,
      }
      const data = { word: toQuoted(word.text), letters: toQuoted(toBlamed(word.text, reason)) }
      const key = reason?.key ?? reason?.unit?.key
      const other = key === undefined ? undefined : findSoundExample(story.sequence, key, word.text)
      if (reason?.unit?.kind === 'silent') report({ ...body, messageId: 'silent', data })
      // `uh` is in so many spellings that another word for it would only puzzle: the `ai` of `mountain` for `minute`.
      else if (reason?.unit?.sound === 'ə') report({ ...body, messageId: 'weak', data })
      else if (other === undefined) report({ ...body, messageId: 'unusual', data })
      else {
        const more = { other: toQuoted(other.letters), example: toQuoted(other.example) }
        report({ ...body, messageId: 'other', data: { ...data, ...more } })
      }
    },
  }),
})

function toBlamed(word: string, reason: Reason | undefined): string {
  return reason?.unit?.letters ?? toLettersText(word, reason?.letters ?? [])
}
