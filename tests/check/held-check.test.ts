// A check that is held while a story is edited says what a whole check says: the same messages, figures, pages and places, with the words that
// could stand there. Reference: our own whole check.

import fc from 'fast-check'
import { expect, it } from 'vitest'
import { rules } from '../../rules/index.ts'
import { type CheckInput, checkStory } from '../../src/check/check-story.ts'
import { createHeldCheck } from '../../src/check/held-check.ts'
import { type FreshStory, isChecked, type UncheckedStory } from '../../src/check/result.ts'
import { createProcessIo } from '../../src/cli/io.ts'
import { createResources } from '../../src/cli/resources.ts'
import type { Layer, RuleLayer } from '../../src/config/types.ts'
import type { OptionValue, Severity } from '../../src/lint/types.ts'
import type { Sourced } from '../../src/problem/index.ts'
import { applyEdit, session, trapSession } from '../story/edits.ts'
import { toPlain } from '../story/plain-story.ts'

const seed = 20_261_129
/** Each is a session of some ten edits. */
const runs = Number(process.env.STORY_RUNS ?? 100)
const resources = createResources(createProcessIo(process))

const say = <Value>(value: Value): Sourced<Value> => ({ value, origin: 'the test' })
const on = (options: Readonly<Record<string, OptionValue>> = {}, severity: Severity = 'error'): RuleLayer => ({
  severity: say(severity),
  options: Object.fromEntries(Object.entries(options).map(([name, value]) => [name, say(value)])),
})

/** Every rule, and options under which the quiet ones speak. */
const allRules = {
  ...Object.fromEntries(rules.map(({ id }) => [id, on()])),
  'max-new-words': on({ page: 2, book: 5 }),
  'max-page-sentences': on({ sentences: 2 }),
  'max-page-words': on({ words: 8 }),
  'max-sentence-words': on({ words: 4 }),
  'max-word-letters': on({ letters: 3 }),
  'no-look-alike-letters': on({ of: 'step' }),
}

const layers: readonly Layer[] = [
  { step: say('pink-4') },
  { step: say('green-5'), rules: allRules },
  { step: say('green-3'), names: ['Tam', 'Old Ned', 'Zub'].map(say), rules: allRules },
  { step: say('green-8'), pages: say('rule'), countTitle: say(false), sightWords: [say('the')] },
  { step: say('pink-2'), countHeadings: say(false), rules: { 'min-readable-share': on({ of: 'story', share: 1 }) } },
]

const toInput = (source: string, flags: Layer, suggest: boolean): CheckInput => ({
  path: 'hens.md',
  source,
  storyPath: '/stories/hens.md',
  chain: { folders: [], problems: [] },
  flags,
  rules,
  resources,
  suggest,
})

function toText(result: FreshStory | UncheckedStory): string {
  if (!isChecked(result)) return JSON.stringify(result)
  const { story, lines, ...rest } = result
  const places = Array.from({ length: story.source.length + 1 }, (_, offset) => lines.toPoint(offset))
  return JSON.stringify({ ...rest, story: toPlain(story), places })
}

it(
  'says of every version what a whole check says',
  async () => {
    const property = fc.asyncProperty(
      fc.oneof(session, session, trapSession),
      fc.constantFrom(...layers),
      fc.boolean(),
      async (edited, flags, suggest) => {
        const held = createHeldCheck()
        for (const source of edited.versions) {
          const input = toInput(source, flags, suggest)
          expect(toText(await held.check(input))).toBe(toText(await checkStory(input)))
        }
      },
    )
    await fc.assert(property, { seed, numRuns: runs })
  },
  60_000 + runs * 3_000,
)

it(
  'holds where the settings change from check to check',
  async () => {
    const property = fc.asyncProperty(
      fc.oneof(session, trapSession),
      fc.array(fc.nat(), { minLength: 1 }),
      async (edited, picks) => {
        const held = createHeldCheck()
        for (const [at, source] of edited.versions.entries()) {
          const pick = picks[at % picks.length] ?? 0
          const input = toInput(source, layers[pick % layers.length] ?? {}, pick % 2 === 0)
          if (pick % 3 === 0) await held.prepare(input)
          expect(toText(await held.check(input))).toBe(toText(await checkStory(input)))
        }
      },
    )
    await fc.assert(property, { seed, numRuns: Math.ceil(runs / 10) })
  },
  60_000 + runs * 3_000,
)

it('a block that comes beside one with the same text is counted for itself', async () => {
  const hens = '# Hens\n\n# Hens\n\n# Hens\n'
  const line = 'Text: Ann Bell\n\n'
  const held = createHeldCheck()
  for (const source of [hens, line + hens, line + line + hens, `\n\n${line}${hens}`, `\n\n\n\n${hens}`]) {
    const input = toInput(source, { step: say('pink-4') }, false)
    expect(toText(await held.check(input))).toBe(toText(await checkStory(input)))
  }
})

it('says the very same messages of text that an edit neither touches nor moves', async () => {
  const source = `${Array.from({ length: 40 }, (_, at) => `Tam had the light ${at}.`).join('\n\n')}\n`
  const held = createHeldCheck()
  const check = async (text: string) => {
    const result = await held.check(toInput(text, { step: say('pink-4') }, false))
    return isChecked(result) ? result.messages : []
  }
  const before = await check(source)
  const after = await check(applyEdit(source, { at: 0.5, cut: 0, put: 'x' }))
  const kept = after.filter((message) => before.includes(message))
  expect(kept.length).toBeGreaterThan(before.length / 3)
})
