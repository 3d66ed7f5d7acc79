// Another word in the place of one: the sentence reads as before but for that word, and no mark of emphasis is left over.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readStory } from '../../src/story/index.ts'
import { parseMarkdown } from '../../src/story/parse.ts'
import { createWordRanges } from '../../src/story/word-range.ts'
import { wordsOf } from './helpers.ts'

const runs = Number(process.env.STORY_RUNS ?? 300)
const seed = 20_251_124

const textsOf = (source: string): string[] =>
  readStory(source).pages.flatMap(({ blocks }) => blocks.map((it) => it.text))

/** The source with one of its words replaced; undefined where that cannot be done. */
function replace(source: string, word: string, other: string): string | undefined {
  const found = wordsOf(readStory(source)).find(({ text }) => text === word)
  if (!found) throw new Error(`no ${word} in ${source}`)
  const range = createWordRanges(source)(found)
  return range && source.slice(0, range.start) + other + source.slice(range.end)
}

it.each([
  ['Tam is **ni**ght.', 'night', 'Tam is nap.'],
  ['Tam is ni**ght**.', 'night', 'Tam is nap.'],
  ['Tam is _**ni**ght_.', 'night', 'Tam is _nap_.'],
  ['The ***ni**ght* is wet.', 'night', 'The *nap* is wet.'],
  ['A **sh**ee*p* sat.', 'sheep', 'A nap sat.'],
  ['A **sheep** sat.', 'sheep', 'A **nap** sat.'],
  ['A sh**ee**p sat.', 'sheep', 'A nap sat.'],
  ['A [**sh**eep](x.png) sat.', 'sheep', 'A [nap](x.png) sat.'],
  ['A sh<b>ee</b>p sat.', 'sheep', 'A nap sat.'],
  ['A sh<B>ee</b>p sat.', 'sheep', 'A nap sat.'],
  ['A sh<b class="a"><i>ee</i></b>p sat.', 'sheep', 'A nap sat.'],
  ['<!-- a --> A **sh**eep sat.', 'sheep', '<!-- a --> A nap sat.'],
  ['<!-- a --> <!-- b -->\n*A* **sh**eep sat.', 'sheep', '<!-- a --> <!-- b -->\n*A* nap sat.'],
  ['One.\n\n> **x**\n\nA **sh**eep.', 'sheep', 'One.\n\n> **x**\n\nA nap.'],
  ['**sh**eep', 'sheep', 'nap'],
  ['A [**sh**eep][a].\n\n[a]: x.png', 'sheep', 'A [nap][a].\n\n[a]: x.png'],
  ['# A **sh**eep', 'sheep', '# A nap'],
  ['- A hen\n- A **sh**eep', 'sheep', '- A hen\n- A nap'],
  ['A b\\-oat.', 'b-oat', 'A nap.'],
  ['\uFEFFTam.\n\nA **sh**eep.', 'sheep', '\uFEFFTam.\n\nA nap.'],
])('%j: `%s` can be replaced', (source, word, expected) => {
  expect(replace(source, word, 'nap')).toBe(expected)
})

it.each([
  ['**The ni**ght', 'night'],
  ['The ni**ght is** wet', 'night'],
  ['[The ni](x.png)ght', 'night'],
  ['A sh[ee](x.png)p sat.', 'sheep'],
  ['A sh<b>eep sat</b>.', 'sheep'],
  ['A sh<b><i>ee</b></i>p sat.', 'sheep'],
  ['A sh<b>ee</i>p sat.', 'sheep'],
  ['A sh</b>ee<b>p sat.', 'sheep'],
  ['A sh<!-- a -->eep sat.', 'sheep'],
  // What is not sure is left alone.
  ['A sh<b class="x>y">ee</b>p sat.', 'sheep'],
  ['A **a sh**eep sat.', 'sheep'],
  ['A sh**eep a** sat.', 'sheep'],
  ['A *sh**eep a*** sat.', 'sheep'],
])('%j: `%s` stays', (source, word) => {
  expect(replace(source, word, 'nap')).toBeUndefined()
})

// The source is parsed for a word with a mark between its letters, and once for all of them.
it.each([
  ['A night sat at the sea-side.', 0],
  ["Don't, don’t: 6 cafés, naïve, e\u0301.", 0],
  ['A **night** sat.', 0],
  ['A ni**ght** sat.', 1],
  ['A ni**ght** s*a*t d*o*wn.', 1],
  ['A b&eacute;d.', 1],
  ['A sh\u00ADip.', 1],
  ['<!-- a --> A ni**ght** s*a*t.', 2],
])('%j is parsed %i times', (source, times) => {
  let parsed = 0
  const find = createWordRanges(source, (text, base) => {
    parsed++
    return parseMarkdown(text, base)
  })
  for (const _ of ['once', 'again']) for (const word of wordsOf(readStory(source))) find(word)
  expect(parsed).toBe(times)
})

describe('in generated sentences', () => {
  const letters = 'Tam sat at night with the sheep'
  const place = fc.nat(letters.length)
  const span = fc.tuple(place, place, fc.constantFrom('*', '**', '_', '__', '***'))

  it('the text is that of before with one word changed', () => {
    let replaced = 0
    fc.assert(
      fc.property(fc.array(span, { minLength: 1, maxLength: 3 }), (spans) => {
        const marks = Array.from({ length: letters.length + 1 }, () => '')
        for (const [from, to, mark] of spans) {
          marks[from] += mark
          marks[to] += mark
        }
        const source = marks.map((mark, at) => mark + (letters[at] ?? '')).join('')
        const ranges = createWordRanges(source)
        const [before = ''] = textsOf(source)
        for (const { text, textStart, start, end } of wordsOf(readStory(source))) {
          const range = ranges({ start, end })
          if (!range) continue
          if (range.start !== start || range.end !== end) replaced++
          const after = `${source.slice(0, range.start)}zap${source.slice(range.end)}`
          expect(textsOf(after), `${source}\n${after}`).toEqual([
            `${before.slice(0, textStart)}zap${before.slice(textStart + text.length)}`,
          ])
        }
      }),
      { numRuns: runs, seed },
    )
    expect(replaced).toBeGreaterThan(0)
  })
})
