import { describe, expect, test } from 'vitest'
import { rules } from '../../rules/index.ts'
import { defineRule } from '../../src/lint/rule.ts'
import { runRules } from '../../src/lint/run.ts'
import type { Message, Rule, RuleSettings } from '../../src/lint/types.ts'
import { toContext } from './hand-made.ts'

function run(
  page: string | readonly string[],
  settings: RuleSettings = {},
  more: Parameters<typeof toContext>[1] = {},
): readonly Message[] {
  const pages = typeof page === 'string' ? [page] : page
  return runRules(toContext(pages, more), rules, { 'min-readable-share': { severity: 'off' }, ...settings })
}

const toRules = (messages: readonly Message[]): readonly string[] => messages.map(({ rule }) => rule)

describe('one word, one message', () => {
  test('a word that can be read has none', () => {
    expect(run('hen ran.')).toEqual([])
  })

  test('the first fault speaks, the others go into its note', () => {
    const [message, ...others] = run('duck ran.')
    expect(others).toEqual([])
    expect(message).toMatchObject({
      rule: 'no-untaught-correspondence',
      word: 'duck',
      start: 0,
      end: 4,
      readableAt: 'two',
    })
    expect(message?.letters).toEqual([[2, 4]])
    expect(message?.letterRanges).toEqual([{ start: 2, end: 4 }])
    expect(message?.note).toBe('Use another word, or keep this one for step two. Also: 4 letters (at most 3 allowed).')
  })

  test('where its rule is off, the next fault speaks', () => {
    const off = { 'no-untaught-correspondence': { severity: 'off' } } as const
    const messages = run('duck ran.', off)
    expect(toRules(messages)).toEqual(['max-word-letters'])
    expect(messages[0]?.note).not.toContain('Also')
  })

  test('where its rule lets the word pass, the next fault speaks', () => {
    const allow = { 'no-untaught-correspondence': { options: { allow: ['ck'] } } }
    expect(toRules(run('duck ran.', allow))).toEqual(['max-word-letters'])
  })

  test('a fault whose rule is off is not named in a note', () => {
    const [message] = run('duck ran.', { 'max-word-letters': { severity: 'off' } })
    expect(message?.rule).toBe('no-untaught-correspondence')
    expect(message?.note).not.toContain('Also')
  })

  test('no word has two messages', () => {
    const words = run('Duck met the Frog, 6 said.').filter(({ word }) => word !== undefined)
    expect(new Set(words.map(({ start }) => start)).size).toBe(words.length)
    expect(words.map(({ word }) => word)).toEqual(['Duck', 'the', 'Frog', '6', 'said'])
  })
})

describe('severity', () => {
  test('is the one of the rule, or the one that is set', () => {
    expect(run('duck ran.')[0]?.severity).toBe('error')
    expect(run('duck ran.', { 'no-untaught-correspondence': { severity: 'warning' } })[0]?.severity).toBe('warning')
  })

  test('a rule that is off is not even made', () => {
    const rule: Rule = defineRule({
      id: 'no-run',
      summary: '',
      severity: 'off',
      options: {},
      messages: {},
      create: () => {
        throw new Error('made')
      },
    })
    expect(runRules(toContext(['hen ran.']), [rule])).toEqual([])
  })
})

describe('messages', () => {
  test('stand in order of place, whatever the order of the rules', () => {
    const messages = run(['hen, ran, in bed, in bed.\nhen; duck.', 'the frog.'])
    expect(messages.map(({ start }) => start)).toEqual(messages.map(({ start }) => start).toSorted((a, b) => a - b))
    expect(messages.map(({ page }) => page)).toContain(2)
    expect(runRules(toContext(['duck, frog.']), [...rules].reverse())).toEqual(
      runRules(toContext(['duck, frog.']), rules),
    )
  })

  test('carry the page of their rule', () => {
    expect(run('duck ran.')[0]?.url).toBe('rules/no-untaught-correspondence/README.md')
  })

  test('hold no newline and no two spaces in a row, in text and note', () => {
    const rule = defineRule({
      id: 'no-gap',
      summary: '',
      severity: 'error',
      options: {},
      messages: { gap: 'a  {text}  ' },
      create: ({ report }) => ({
        word: (word) => report({ at: word, messageId: 'gap', data: { text: 'b\n c' }, note: 'd \n e' }),
      }),
    })
    expect(runRules(toContext(['hen']), [rule])[0]).toMatchObject({ message: 'a b c', note: 'd e' })
  })
})

describe('names', () => {
  test('a capital in mid-sentence makes a name of a word that cannot be read, there and where it opens a sentence', () => {
    const messages = run('hen met Priya.\nPriya ran.')
    expect(toRules(messages)).toEqual(['no-unlisted-name', 'no-unlisted-name'])
  })

  test('a capital at the start of a sentence or of speech does not', () => {
    expect(toRules(run('Priya ran.'))).not.toContain('no-unlisted-name')
    expect(toRules(run('hen said “Priya ran”'))).not.toContain('no-unlisted-name')
  })

  test('nor does a word that stands in small letters too', () => {
    expect(toRules(run('hen met Priya.\npriya ran.'))).not.toContain('no-unlisted-name')
  })

  test('a listed name has no message, not even for its capital', () => {
    expect(run('hen met Priya.', {}, { names: ['Priya'] })).toEqual([])
  })
})

test('a guess that can be read is told once', () => {
  expect(run('zub ran.\nzub ran.').map(({ rule, severity, start }) => ({ rule, severity, start }))).toEqual([
    { rule: 'no-unknown-word', severity: 'warning', start: 0 },
  ])
})

test('a listener is called in order of place, and the story last', () => {
  const calls: string[] = []
  const rule = defineRule({
    id: 'no-call',
    summary: '',
    severity: 'error',
    options: {},
    messages: {},
    create: () => ({
      story: () => void calls.push('story'),
      mark: ({ text }) => void calls.push(text),
      word: ({ text }) => void calls.push(text),
      sentence: () => void calls.push('sentence'),
      block: () => void calls.push('block'),
      page: ({ number }) => void calls.push(`page ${number}`),
    }),
  })
  runRules(toContext(['hen ran.', 'in']), [rule])
  expect(calls).toEqual([
    'page 1',
    'block',
    'sentence',
    'hen',
    'ran',
    '.',
    'page 2',
    'block',
    'sentence',
    'in',
    'story',
  ])
})
