// A story that is held while it is edited reads as one that is read anew. Reference: our own whole reading, which the other tests hold
// against remark-parse.

import fc from 'fast-check'
import { expect, it } from 'vitest'
import { createHeldStory } from '../../src/story/held.ts'
import { readStory, type Story, type StoryOptions } from '../../src/story/index.ts'
import { applyEdit, session, trapSession } from './edits.ts'
import { toPlain } from './plain-story.ts'

const seed = 20_261_129
/** Each is a session of some ten edits. */
const runs = Number(process.env.STORY_RUNS ?? 200)

const toText = (story: Story): string => JSON.stringify(toPlain(story))

const options: readonly StoryOptions[] = [
  {},
  {},
  {},
  { pages: 'rule' },
  { countTitle: false },
  { countHeadings: false, pages: 2 },
]

it('reads every version as it is read anew', () => {
  fc.assert(
    fc.property(fc.oneof(session, trapSession), fc.constantFrom(...options), (edited, given) => {
      const held = createHeldStory()
      for (const source of edited.versions)
        expect(toText(held.read(source, given))).toBe(toText(readStory(source, given)))
    }),
    { seed, numRuns: runs },
  )
}, 600_000)

it('keeps the blocks that an edit does not touch, wherever they move', () => {
  const source = Array.from({ length: 50 }, (_, at) => `Tam **sat** on hen ${at}.`).join('\n\n')
  const held = createHeldStory()
  const toHomes = ({ pages }: Story) => pages.flatMap(({ blocks }) => blocks.map((block) => held.homeOf(block).block))
  const before = toHomes(held.read(source))
  const after = toHomes(held.read(applyEdit(source, { at: 0.5, cut: 0, put: 'x' })))
  expect(after.filter((block) => !before.includes(block))).toHaveLength(1)
})
