// A story is called the same in the bar, on the shelf and in print: by its heading, else its setting, else its file.

import { expect, it } from 'vitest'
import { findTitle } from '../../src/desk/title.ts'

it.each([
  ['---\ntitle: Of the settings\n---\n\n# Of the page\n', 'Of the page'],
  ['---\nstep: pink-4\ntitle: "Of the settings"\n---\n\nTam sat.\n', 'Of the settings'],
  ['# Of the page\n', 'Of the page'],
  ['Tam sat.\n', 'tam.md'],
])('%j', (text, title) => {
  expect(findTitle({ name: 'tam.md', text: () => text })).toBe(title)
})
