// A pattern that the story says it practises is hardly in it.

import { readListed } from '../../src/lint/listed.ts'
import { defineRule } from '../../src/lint/rule.ts'
import type { Listed } from '../../src/lint/types.ts'
import { toCount, toQuoted } from '../../src/lint/wording.ts'
import { toDifferentWords } from '../../src/usage/count.ts'
import type { Pattern } from '../../src/verdict/index.ts'
import { findPattern, findPatternLines } from '../../src/verdict/index.ts'

export default defineRule({
  id: 'min-practised-words',
  summary: 'A pattern that the story says it practises, in too few words.',
  severity: 'warning',
  options: {
    words: { type: 'number', default: 4, minimum: 0, description: 'How many running words must have it.' },
    different: { type: 'number', default: 3, minimum: 0, description: 'How many different words must have it.' },
  },
  messages: {
    few: '{pattern} is practised here and stands in {found}; at least {wanted} are wanted',
    alike: '{pattern} is practised here in {found} only; at least {wanted} are wanted',
    later: '{pattern} is practised here, and it is taught at step {taught}; this story is at {step}',
    unknown: '{pattern} is practised here, and no step of the sequence {sequence} teaches it',
  },
  create: ({ story, options, report }) => {
    const check = ({ text, at }: Listed, pattern: Pattern): void => {
      const having = toDifferentWords(story.count()).flatMap(({ uses }) => {
        const times = uses
          .filter(
            ({ form, word, sentence }) =>
              form === 'word' && pattern.isPractised(word.text, story.judge(word, sentence).verdict),
          )
          .reduce((sum, use) => sum + use.times, 0)
        return times > 0 ? [times] : []
      })
      const words = having.reduce((sum, times) => sum + times, 0)
      const body = {
        at,
        reason: 'practised-words' as const,
        note: 'Use more words that have it: `battledore sequence` shows examples.',
      }
      if (pattern.taughtAt !== undefined && words < options.words) {
        const data = { pattern: toQuoted(text), taught: pattern.taughtAt, step: story.step }
        const note = `Take it out of \`practises\`, or write this story for step ${pattern.taughtAt}.`
        report({ ...body, messageId: 'later', data, note })
      } else if (words < options.words) {
        report({
          ...body,
          messageId: 'few',
          data: { pattern: toQuoted(text), found: toCount(words, 'word'), wanted: options.words },
        })
      } else if (having.length < options.different) {
        const found = toCount(having.length, 'different word')
        report({ ...body, messageId: 'alike', data: { pattern: toQuoted(text), found, wanted: options.different } })
      }
    }
    return {
      story: () => {
        for (const listed of readListed(story, 'practises')) {
          const pattern = findPattern(listed.text, story.sequence, story.step)
          if (pattern !== undefined) check(listed, pattern)
          else {
            const data = { pattern: toQuoted(listed.text), sequence: toQuoted(story.sequence.name) }
            report({
              at: listed.at,
              messageId: 'unknown',
              data,
              reason: 'practised-words',
              note: toUnknownNote(findPatternLines(listed.text, story.sequence)),
            })
          }
        }
      },
    }
  },
})

function toUnknownNote(lines: readonly string[]): string {
  if (lines.length === 0) return 'Write letters (`ai`), an ending (`-ed`) or a shape (`CVCC`) that a step teaches.'
  return `Write ${lines.map(toQuoted).join(' or ')}.`
}
