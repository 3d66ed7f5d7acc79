// Runs every page of the rules: what a problem shows must come out, and nothing of any other example.

import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { rules } from '../rules/index.ts'
import { findRuleIds, toGeneratedFiles } from '../scripts/generate-rules.ts'
import type { Layer } from '../src/config/index.ts'
import type { Rule } from '../src/lint/types.ts'
import type { Sourced } from '../src/problem/index.ts'
import { type Example, findExamples, readPage, toRuleOptions } from './rule-pages.ts'
import { check } from './unified/pipeline.ts'

const HEADINGS = ['Why it matters', 'At a glance', 'Options', 'Examples']

const flag = <T>(value: T): Sourced<T> => ({ value, origin: 'example' })

function toFlags(rule: Rule, given: Example['given']): Layer {
  const { step = '', sequence, 'reduced-vowels': reducedVowels } = given
  const options = Object.entries(toRuleOptions(rule, given)).map(([name, value]) => [name, flag(value)] as const)
  const severity = flag(rule.severity === 'off' ? 'warning' : rule.severity)
  return {
    step: flag(step),
    ...(sequence && { sequence: flag(sequence) }),
    ...(reducedVowels && { reducedVowels: flag(reducedVowels as 'accept' | 'flag') }),
    rules: { [rule.id]: { severity, options: Object.fromEntries(options) } },
  }
}

async function run(rule: Rule, { source, given }: Example): Promise<string> {
  const { messages, toPlaceText } = await check(source, toFlags(rule, given))
  const own = messages.filter((message) => message.rule === rule.id)
  return own.map((message) => `${toPlaceText(message)} ${message.message}`).join('\n')
}

describe.each(rules.map((rule) => [rule.id, rule] as const))('%s', (id, rule) => {
  const page = readPage(id)
  const examples = findExamples(page)

  test('its page has its parts in order', () => {
    expect(page.startsWith(`# ${id}\n\n${rule.summary}\n\n## `)).toBe(true)
    expect([...page.matchAll(/^## (.*)$/gmu)].map(([, heading]) => heading)).toEqual(HEADINGS)
  })

  test('its page has a problem and an example without one, and uses every option', () => {
    expect(examples.some(({ isProblem }) => isProblem)).toBe(true)
    expect(examples.some(({ isProblem }) => !isProblem)).toBe(true)
    const used = examples.flatMap(({ given }) => Object.keys(given))
    expect(Object.keys(rule.options).filter((name) => !used.includes(name))).toEqual([])
  })

  test.each(examples.map((example) => [example.line, example] as const))(
    'the example on line %i',
    async (_, example) => {
      if (example.isProblem) expect(example.expected).toMatch(/^\d+:\d+-\d+:\d+ .+$/u)
      expect(await run(rule, example)).toBe(example.isProblem ? example.expected : '')
    },
  )
})

test('every folder of a rule is in the index, sorted, under its own name', () => {
  expect(rules.map(({ id }) => id)).toEqual(findRuleIds())
  expect(findRuleIds().every((id) => /^(?:no|max|min|require)-/u.test(id))).toBe(true)
})

test('no fault of a word is claimed by two rules', () => {
  const claims = rules.flatMap((rule) => rule.claims ?? [])
  expect(new Set(claims).size).toBe(claims.length)
})

test('what is generated from the rules is up to date', async () => {
  for (const [name, text] of Object.entries(await toGeneratedFiles())) {
    expect(readFileSync(new URL(`../rules/${name}`, import.meta.url), 'utf8'), name).toBe(text)
  }
})
