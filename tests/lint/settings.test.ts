import { expect, test } from 'vitest'
import { rules } from '../../rules/index.ts'
import { defineRule } from '../../src/lint/rule.ts'
import { readRuleSetting, toOptions } from '../../src/lint/settings.ts'
import { toProblemText } from '../../src/problem/index.ts'

const rule = defineRule({
  id: 'max-pond-ducks',
  summary: '',
  severity: 'error',
  options: {
    ducks: { type: 'number', default: 3, minimum: 0, maximum: 9, description: '' },
    kind: { type: 'string', default: 'mallard', choices: ['mallard', 'teal'], description: '' },
    named: { type: 'strings', default: [], description: '' },
  },
  messages: {},
  create: () => ({}),
})

test('options that are not given have their default', () => {
  expect(toOptions(rule, { ducks: 0 })).toEqual({ ducks: 0, kind: 'mallard', named: [] })
})

test.each([
  ['off', { severity: 'off' }],
  [{ severity: 'warning' }, { severity: 'warning', options: {} }],
  [
    { severity: 'error', ducks: 4, kind: 'teal' },
    { severity: 'error', options: { ducks: 4, kind: 'teal' } },
  ],
  [{ named: ['Zub'] }, { options: { named: ['Zub'] } }],
])('%j is read', (given, setting) => {
  expect(readRuleSetting(rule, given)).toEqual({ setting, problems: [] })
})

test.each([
  ['loud', undefined, '`max-pond-ducks` is set by `off`, `warning` or `error`, or by its options; this is `loud`'],
  [7, undefined, '`max-pond-ducks` is set by `off`, `warning` or `error`, or by its options; this is `7`'],
  [{ severity: 'loud' }, 'severity', '`severity` of `max-pond-ducks` is `off`, `warning` or `error`; this is `loud`'],
  [{ duks: 3 }, 'duks', '`max-pond-ducks` has no option `duks`. Did you mean `ducks`?'],
  [{ toString: 3 }, 'toString', '`max-pond-ducks` has no option `toString`'],
  [{ ducks: 'many' }, 'ducks', '`ducks` of `max-pond-ducks` is a number from 0 to 9; this is `many`'],
  [{ ducks: 10 }, 'ducks', '`ducks` of `max-pond-ducks` is a number from 0 to 9; this is `10`'],
  [{ kind: 'swan' }, 'kind', '`kind` of `max-pond-ducks` is `mallard` or `teal`; this is `swan`'],
  [{ named: 'Zub' }, 'named', '`named` of `max-pond-ducks` is a list of words; this is `Zub`'],
])('%j is told', (given, key, message) => {
  const { setting, problems } = readRuleSetting(rule, given)
  expect(problems.map((problem) => [problem.key, toProblemText(problem)])).toEqual([[key, message]])
  expect(setting.options ?? {}).toEqual({})
})

test('the default of every option of every rule is a value that the option takes', () => {
  for (const each of rules) {
    const defaults = Object.fromEntries(Object.entries(each.options).map(([name, spec]) => [name, spec.default]))
    expect(readRuleSetting(each, defaults).problems, each.id).toEqual([])
  }
})
