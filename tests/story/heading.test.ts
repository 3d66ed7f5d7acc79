// What a story calls itself, for lists of stories and the names of windows: its first heading as Markdown has it, in one line.

import { expect, it } from 'vitest'
import { toHeading } from '../../src/story/heading.ts'
import { readStory } from '../../src/story/index.ts'

it.each([
  ['# Tip *top*\n\nA hen', 'Tip top'],
  // A heading of two lines, and one with a break in it.
  ['Tip\ntop\n===\n\nA hen', 'Tip top'],
  ['One\ntwo\nthree\n===\n\nA hen', 'One two three'],
  ['# ![x](y) Tip <br>\n\nA hen', 'Tip'],
  // None, or nothing that is read.
  ['A hen', undefined],
  ['## Tip\n\nA hen', undefined],
  ['# https://tansy.org\n\nA hen', undefined],
])('of %j is %j', (source, expected) => {
  expect(toHeading(readStory(source))).toBe(expected)
})
