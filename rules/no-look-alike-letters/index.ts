// Letters that look alike are introduced together.

import { readListed } from '../../src/lint/listed.ts'
import { defineRule } from '../../src/lint/rule.ts'
import type { Listed, StoryContext } from '../../src/lint/types.ts'
import { toQuoted } from '../../src/lint/wording.ts'
import { findStep } from '../../src/sequence/index.ts'
import { toWordKey } from '../../src/verdict/index.ts'

export default defineRule({
  id: 'no-look-alike-letters',
  summary: 'Letters that look alike, introduced together.',
  severity: 'warning',
  options: {
    of: {
      type: 'string',
      choices: ['practises', 'step'],
      default: 'practises',
      description:
        'Which letters count as introduced: those that the story says it `practises`, or those that its `step` teaches and the story uses.',
    },
    sets: {
      type: 'strings',
      default: [],
      description: 'Letters that look alike, such as `bdpq`; none keeps to the sets of the sequence.',
    },
  },
  messages: { alike: '{letter} and {other} look alike, and {what} introduces both' },
  create: ({ story, options, report }) => ({
    story: () => {
      const sets = options.sets.length > 0 ? options.sets : story.sequence.lookAlikes
      const isOfStep = options.of === 'step'
      const introduced = (isOfStep ? findOfStep(story) : readListed(story, 'practises')).filter(
        ({ text }) => text.length === 1,
      )
      for (const [index, { text, at }] of introduced.entries()) {
        const twin = introduced
          .slice(0, index)
          .find((one) => one.text !== text && sets.some((set) => set.includes(one.text) && set.includes(text)))
        if (twin === undefined) continue
        report({
          at,
          messageId: 'alike',
          data: {
            letter: toQuoted(twin.text),
            other: toQuoted(text),
            what: isOfStep ? `step ${story.step}` : 'this story',
          },
          reason: 'look-alike-letters',
          note: 'Give each letter a story of its own before they meet in one.',
        })
      }
    },
  }),
})

/** The letters that the step of the story teaches, each where the story first has it. */
function findOfStep({ sequence, step, count }: StoryContext): readonly Listed[] {
  const taught = findStep(sequence, step)?.adds.correspondences.map(({ letters }) => letters) ?? []
  return [...new Set(taught)].flatMap((letters) => {
    const use = count().uses.find(({ text }) => toWordKey(text).includes(letters))
    return use === undefined ? [] : [{ text: letters, at: use.word }]
  })
}
