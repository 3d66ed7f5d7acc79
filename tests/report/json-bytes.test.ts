// The bytes that `stream` writes are those of `JSON.stringify` (ECMA-262, QuoteJSONString and SerializeJSONObject), whatever a message holds.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { CheckedStory } from '../../src/check/result.ts'
import type { Message } from '../../src/lint/types.ts'
import { createBytes } from '../../src/report/bytes.ts'
import { toFileFields } from '../../src/report/json.ts'
import { createJsonBytes } from '../../src/report/json-bytes.ts'
import { writeStreamResult } from '../../src/report/stream.ts'
import { createLines } from '../../src/story/lines.ts'

/** Letters of every length in UTF-8, halves of pairs, quotes, control characters, ends of lines. */
const text = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 12 }),
  fc.string({
    unit: fc.constantFrom('a', '"', '\\', '\n', '\u2028', '\ud83d', '\ude00', 'é', '“', '😀'),
    maxLength: 8,
  }),
)
const offset = fc.oneof(fc.nat(40), fc.nat(2_000_000_000))
const range = fc.tuple(fc.nat(30), fc.nat(30))

const message = fc.record({
  rule: text,
  severity: fc.constantFrom('error', 'warning'),
  message: text,
  start: offset,
  end: offset,
  page: fc.nat(300),
  word: fc.option(text, { nil: undefined }),
  reason: fc.constantFrom(undefined, 'correspondence-later'),
  letters: fc.array(range, { maxLength: 3 }),
  letterRanges: fc.constant([]),
  readableAt: fc.option(text),
  note: fc.option(text, { nil: undefined }),
  ruleNote: fc.constant(undefined),
  url: text,
  suggestions: fc.array(text, { maxLength: 2 }),
  canGo: fc.boolean(),
})

/** The same message in another place, or with one part changed, as the walk hands it on: with the same list of letters. */
const change = fc.record(
  {
    start: offset,
    end: offset,
    page: fc.nat(300),
    severity: fc.constantFrom('error', 'warning'),
    rule: text,
    message: text,
    word: text,
    reason: fc.constantFrom(undefined, 'not-taught'),
    note: text,
    readableAt: text,
    url: text,
    suggestions: fc.array(text, { maxLength: 2 }),
    canGo: fc.boolean(),
  },
  { requiredKeys: [] },
)

const messages = fc
  .array(fc.tuple(message, fc.array(change, { maxLength: 4 })), { maxLength: 5 })
  .map((all) => all.flatMap(([one, changes]) => [one, ...changes.map((other) => ({ ...one, ...other }) as Message)]))

const FIGURES = {
  ...{ words: 9, decodable: 5, sight: 2, names: 1, unreadable: 1 },
  ...{ decodableShare: 0.5555555555555556, readableShare: 0.8888888888888888 },
}

const toStory = (source: string, list: readonly Message[]): CheckedStory => ({
  path: 'a.md',
  sequence: { name: 'ours', title: 'Ours', asked: 'ours' },
  step: { id: '“one”', title: 'One' },
  accent: 'general-american',
  story: { source, pages: [{ number: 1, start: 0, end: source.length }] },
  options: {} as CheckedStory['options'],
  lines: createLines(source),
  figures: { pages: [FIGURES], total: FIGURES, different: FIGURES },
  messages: list,
})

const source = fc.string({ unit: fc.constantFrom('a', '\n', '\r\n', '😀'), maxLength: 40 })

describe('the line of a result', () => {
  it('has the bytes of JSON.stringify, also where the memory of earlier messages is used', () => {
    // One memory for all runs, as one stream has.
    const out = createJsonBytes()
    fc.assert(
      fc.property(source, messages, fc.oneof(text, fc.integer()), (story, list, id) => {
        const checked = toStory(story, list)
        writeStreamResult(JSON.stringify(id), checked, out)
        const wanted = `${JSON.stringify({ id, ...toFileFields(checked) })}\n`
        expect(Buffer.from(out.take()).toString('latin1')).toBe(Buffer.from(wanted).toString('latin1'))
        expect(out.size).toBe(0)
      }),
      { numRuns: 400 },
    )
  })
})

describe('bytes', () => {
  it('puts pieces together as they come, however long they get', () => {
    const piece = fc.oneof(text, fc.nat(), fc.double(), fc.constant('“long”'.repeat(30_000)))
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 8 }), (pieces) => {
        const bytes = createBytes()
        for (const one of pieces) {
          if (typeof one === 'number') bytes.number(one)
          else if (one.length % 2 === 1) bytes.add(new TextEncoder().encode(one))
          else bytes.text(one)
        }
        // Each by itself: half a character at the end of one and half at the start of the next are two halves.
        const wanted = pieces.map((one) => Buffer.from(typeof one === 'number' ? JSON.stringify(one) : one))
        expect(Buffer.compare(Buffer.from(bytes.take()), Buffer.concat(wanted))).toBe(0)
      }),
      { numRuns: 100 },
    )
  })
})
