// `shan't` is one word, whichever apostrophe it is written with. The characters are those of Unicode's "Apostrophe"
// notes (The Unicode Standard, 6.2: U+0027, U+2019, U+02BC; cited from memory), and U+2018, which word processors set at
// a word's front. U+02BC never closes a quotation, so behind a word it is always part of it, as the others need not be.

import { describe, expect, it } from 'vitest'
import { APOSTROPHES, findApostrophe, hasApostrophe, toStraight } from '../src/apostrophe.ts'
import { createResources } from '../src/cli/resources.ts'
import { createWorld } from './cli/io.ts'
import { check } from './unified/pipeline.ts'

const STORY = "It's Tam's hat. Tam can't nap. Shan't Tam sit? The boy's pet didn't nap. \n"

describe('a story', () => {
  it.each([...APOSTROPHES].filter((mark) => mark !== '‘'))('is the same with %s', async (mark) => {
    for (const step of ['pink-4', 'blue-4', 'green-4', 'green-9']) {
      const write = (sign: string) => `---\nstep: ${step}\nnames: [Tam]\n---\n\n${STORY.replaceAll("'", sign)}`
      const toTold = async (sign: string) =>
        (await check(write(sign))).messages.map(({ message, rule, start, end }) => [
          rule,
          start,
          end,
          toStraight(message),
        ])
      expect(await toTold(mark)).toEqual(await toTold("'"))
    }
  })
})

it('every one of them reads as the straight one does', async () => {
  const world = createWorld()
  const phonics = createResources(world.io).phonicsFor('general-american')
  for (const word of ["shan't", "it's", "dog's", "they've"])
    for (const mark of APOSTROPHES)
      expect(phonics.read(word.replace("'", mark)).pronunciations).toEqual(phonics.read(word).pronunciations)
  world.remove()
})

it('they are found and made straight', () => {
  expect([...APOSTROPHES].map((mark) => toStraight(`shan${mark}t`))).toEqual(["shan't", "shan't", "shan't", "shan't"])
  expect([...APOSTROPHES].every(hasApostrophe)).toBe(true)
  expect([hasApostrophe('sit'), findApostrophe('sit'), findApostrophe('itʼs')]).toEqual([false, -1, 2])
})
