// A story that is held while it is edited reads as one that is read anew. Reference: our own whole reading, which the other tests hold
// against remark-parse.

import fc from 'fast-check'
import { expect, it } from 'vitest'
import { createHeldStory } from '../../src/story/held.ts'
import { type Block, readStory, type Story, type StoryOptions } from '../../src/story/index.ts'
import { applyEdit, session, toVersions } from './edits.ts'

const seed = 20_261_129
/** Each is a session of some ten edits. */
const runs = Number(process.env.STORY_RUNS ?? 300)

/** Plain values: functions are asked, and a sentence's way back to its block is left out. */
function toPlain(story: Story): unknown {
  const toBlock = ({ sentences, toSource, ...block }: Block) => ({
    ...block,
    places: [...block.text].map((_, at) => toSource(at)).concat(toSource(block.text.length)),
    sentences: sentences.map(({ block: _, words, ...sentence }) => ({
      ...sentence,
      words: words.map((word) => ({ ...word, letters: [...word.text].map((_, at) => word.toSource(at, at + 1)) })),
    })),
  })
  const { title, pages, notes, ...rest } = story
  return {
    ...rest,
    title: title && toBlock(title),
    pages: pages.map((page) => ({ ...page, blocks: page.blocks.map(toBlock) })),
    notes: notes.map(({ toSource, ...note }) => ({ ...note, places: [...note.text].map((_, at) => toSource(at)) })),
  }
}

const toText = (story: Story): string => JSON.stringify(toPlain(story), null, 1)

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
    fc.property(session, fc.constantFrom(...options), (edited, given) => {
      const held = createHeldStory()
      for (const source of toVersions(edited))
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
