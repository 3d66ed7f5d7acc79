// What stands at a place of a story: its word, its block, its page.

import { describe, expect, it } from 'vitest'
import { findPageNumber } from '../../src/story/find-page.ts'
import { findBlock, findWord } from '../../src/story/find-word.ts'
import { readStory } from '../../src/story/index.ts'

/** Asks at the bar in a source. */
function at<T>(marked: string, ask: (source: string, offset: number) => T): T {
  const offset = marked.indexOf('|')
  return ask(marked.replace('|', ''), offset)
}

describe('findWord', () => {
  it.each([
    ['|Tam sat.', 'Tam', 'Tam sat.'],
    ['T|am sat.', 'Tam', 'Tam sat.'],
    ['Tam| sat.', 'Tam', 'Tam sat.'],
    ['Tam |sat.', 'sat', 'Tam sat.'],
    ['Tam sat|.', 'sat', 'Tam sat.'],
    ['Tam sat. |It hid.', 'It', 'It hid.'],
    ['Tam sat.\n\nA **h|en** hid.', 'hen', 'A hen hid.'],
    ['# Ti|p\n\nTam sat.', 'Tip', 'Tip'],
    ['# Tip\n\n---\n\nTam sat.\n\n---\n\nIt h|id.', 'hid', 'It hid.'],
  ])('%j: %s', (marked, word, text) => {
    const found = at(marked, (source, offset) => findWord(readStory(source), offset))
    expect(found?.word.text).toBe(word)
    expect(found?.sentence.block.text.slice(found.sentence.textStart, found.sentence.textEnd)).toBe(text)
  })

  it.each(['Tam sat.|', 'Tam sat. | It hid.', 'Tam sat.\n|\nIt hid.', '> T|am sat.\n\nIt hid.', 'Tam sat - | it hid.'])(
    '%j: none',
    (marked) => {
      expect(at(marked, (source, offset) => findWord(readStory(source), offset))).toBeUndefined()
    },
  )

  it('finds a title that is not counted', () => {
    const story = readStory('# Tip\n\nTam sat.', { countTitle: false })
    expect(findWord(story, 3)?.word.text).toBe('Tip')
    expect(findBlock(story, 3)?.kind).toBe('title')
    expect(findBlock(story, 8)?.text).toBe('Tam sat.')
    expect(findBlock(story, 15)?.text).toBe('Tam sat.')
    expect(findBlock(story, 6)).toBeUndefined()
  })
})

it.each([
  ['|---\na: b\n---\n\nTam.\n\n---\n\nIt hid.', 1],
  ['|Tam.\n\n---\n\nIt hid.', 1],
  ['Tam.\n|\n---\n\nIt hid.', 1],
  ['Tam.\n\n|---\n\nIt hid.', 2],
  ['Tam.\n\n---\n\nIt hid.|', 2],
  ['> Tam.|', 1],
])('the page of %j is %i', (marked, page) => {
  expect(at(marked, (source, offset) => findPageNumber(readStory(source), offset))).toBe(page)
})
