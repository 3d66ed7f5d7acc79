// Reads the page of a rule: its headings, its options table and its examples.
//
// An example is a fenced `markdown` block. Its info string may hold `problem`, `step=…`, `sequence=…`,
// `reduced-vowels=…`, and the options of the rule. A problem is followed by a `message` block with what must come out:
// `line:column-endLine:endColumn message`.

import { readFileSync } from 'node:fs'
import type { OptionValue, Rule, RuleOptionSpec } from '../src/lint/types.ts'

export interface Example {
  readonly isProblem: boolean
  readonly source: string
  readonly expected: string
  /** The words of the info string that are written `name=value`. */
  readonly given: Readonly<Record<string, string>>
  readonly line: number
}

const EXAMPLE = /^```markdown(.*)\n([\s\S]*?)^```\n(?:\n```message\n([\s\S]*?)^```\n)?/gmu

export function readPage(id: string): string {
  return readFileSync(new URL(`../rules/${id}/README.md`, import.meta.url), 'utf8')
}

export function findExamples(page: string): readonly Example[] {
  return [...page.matchAll(EXAMPLE)].map(({ 1: info = '', 2: source = '', 3: expected = '', index }) => {
    const words = info.trim().split(/\s+/u)
    return {
      isProblem: words.includes('problem'),
      source,
      expected: expected.trim(),
      given: Object.fromEntries(words.filter((word) => word.includes('=')).map((word) => word.split(/=(.*)/u, 2))),
      line: page.slice(0, index).split('\n').length,
    }
  })
}

/** The options of the rule among what an example gives. */
export function toRuleOptions(rule: Rule, given: Example['given']): Readonly<Record<string, OptionValue>> {
  const names = Object.keys(rule.options).filter((name) => given[name] !== undefined)
  return Object.fromEntries(names.map((name) => [name, toValue(rule.options[name], given[name] ?? '')]))
}

function toValue(spec: RuleOptionSpec | undefined, text: string): OptionValue {
  if (spec?.type === 'number') return Number(text)
  if (spec?.type === 'strings') return text.split(',')
  return spec?.type === 'boolean' ? text === 'true' : text
}
