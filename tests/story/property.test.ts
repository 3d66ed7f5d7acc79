// Generated Markdown: whatever stands around a word, its place in the source holds the word and nothing else.

import fc from 'fast-check'
import { decodeString } from 'micromark-util-decode-string'
import { describe, expect, it } from 'vitest'
import { type Range, readStory, type Story } from '../../src/story/index.ts'
import { markdown } from './generated.ts'

// Fixed, so that a failure is the same for everyone; change it by hand to look further.
const seed = 20_251_124
const runs = Number(process.env.STORY_RUNS ?? 300)

/** A slice of the source as a reader sees it: tags, marks of emphasis and link parts away, references decoded. */
function strip(slice: string): string {
  const text = slice
    .replace(/\]\([^)]*\)|\[/g, '')
    .replace(/<[^>]*>/g, '')
    .replace(/(?<!\\)[*]+/g, '')
  return decodeString(text).replaceAll('\u00AD', '').replaceAll('ﬁ', 'fi').replaceAll('ﬀ', 'ff').normalize('NFC')
}

const isWithin = (inner: Range, outer: Range) => inner.start >= outer.start && inner.end <= outer.end

function check(source: string, story: Story): void {
  let last = 0
  for (const page of story.pages) {
    for (const block of page.blocks) {
      expect(isWithin(block, page)).toBe(true)
      for (const sentence of block.sentences) {
        expect(isWithin(sentence, block)).toBe(true)
        for (const word of sentence.words) {
          expect(isWithin(word, sentence)).toBe(true)
          expect(word.start).toBeGreaterThanOrEqual(last)
          expect(strip(source.slice(word.start, word.end))).toBe(word.text.normalize('NFC'))
          expect(word.toSource(0, word.text.length)).toEqual({ start: word.start, end: word.end })
          expect(word.page).toBe(page.number)
          last = word.end
        }
        for (const mark of sentence.marks) expect(isWithin(mark, sentence)).toBe(true)
      }
    }
  }
}

describe('generated Markdown', () => {
  it('gives every word its exact place', () => {
    fc.assert(
      fc.property(markdown, (source) => check(source, readStory(source))),
      { seed, numRuns: runs },
    )
  })

  it('never reads what is for the adult', () => {
    fc.assert(
      fc.property(markdown, (source) => {
        const story = readStory(source)
        const texts = story.pages.flatMap((page) => page.blocks.map((it) => it.text))
        expect(texts.join(' ')).not.toContain('adult')
      }),
      { seed, numRuns: runs },
    )
  })

  it('never throws, whatever the text', () => {
    const noise = fc.array(
      fc.oneof(
        fc.string({ unit: 'binary', maxLength: 8 }),
        fc.constantFrom(
          '*',
          '_',
          '[',
          ']',
          '(',
          '`',
          '<!--',
          '-->',
          '>',
          '\n',
          '\r',
          '\t',
          '&',
          ';',
          '\\',
          '#',
          '- ',
          '---\n',
          '|',
          '.',
          "'",
          '’',
        ),
      ),
      { maxLength: 60 },
    )
    fc.assert(
      fc.property(noise, (parts) => {
        const source = parts.join('')
        const story = readStory(source)
        for (const page of story.pages) {
          for (const block of page.blocks) {
            for (const sentence of block.sentences) {
              for (const word of sentence.words) expect(isWithin(word, block)).toBe(true)
            }
          }
        }
      }),
      { seed, numRuns: runs },
    )
  })
})
