import { expect, test } from 'vitest'
import { rules } from '../../rules/index.ts'
import { defineRule } from '../../src/lint/rule.ts'
import { readRuleSetting, toKind, toOptions } from '../../src/lint/settings.ts'
import { toProblemText } from '../../src/problem/index.ts'

const rule = defineRule({
  id: 'max-pond-ducks',
  summary: '',
  severity: 'error',
  options: {
    ducks: { type: 'number', default: 3, minimum: 0, maximum: 9, description: '' },
    kind: { type: 'string', default: 'mallard', choices: ['mallard', 'teal'], description: '' },
    named: { type: 'strings', default: [], description: '' },
    wild: { type: 'boolean', default: true, description: '' },
    pond: { type: 'string', default: 'Long Pond', description: '' },
    geese: { type: 'number', default: 1, description: '' },
  },
  messages: {},
  create: () => ({}),
})

test('options that are not given have their default', () => {
  expect(toOptions(rule, { ducks: 0 })).toEqual({
    ducks: 0,
    kind: 'mallard',
    named: [],
    wild: true,
    pond: 'Long Pond',
    geese: 1,
  })
  expect(toOptions(rule, { wild: false, pond: '', geese: 0 })).toMatchObject({ wild: false, pond: '', geese: 0 })
  expect(toOptions(rule)).toMatchObject({ ducks: 3 })
})

test.each([
  ['off', { severity: 'off' }],
  [{ severity: 'warning' }, { severity: 'warning', options: {} }],
  [
    { severity: 'error', ducks: 4, kind: 'teal' },
    { severity: 'error', options: { ducks: 4, kind: 'teal' } },
  ],
  [{ named: ['Zub'] }, { options: { named: ['Zub'] } }],
  [{ named: [] }, { options: { named: [] } }],
  [{ ducks: 0 }, { options: { ducks: 0 } }],
  [{ ducks: 9 }, { options: { ducks: 9 } }],
  [{ wild: false, pond: 'any', geese: -1e9 }, { options: { wild: false, pond: 'any', geese: -1e9 } }],
  [{}, { options: {} }],
])('%j is read', (given, setting) => {
  expect(readRuleSetting(rule, given)).toEqual({ setting, problems: [] })
})

test.each([
  ['loud', undefined, '`max-pond-ducks` is set by `off`, `warning` or `error`, or by its options; this is `loud`'],
  [7, undefined, '`max-pond-ducks` is set by `off`, `warning` or `error`, or by its options; this is `7`'],
  [
    'of',
    undefined,
    '`max-pond-ducks` is set by `off`, `warning` or `error`, or by its options; this is `of`. Did you mean `off`?',
  ],
  [null, undefined, '`max-pond-ducks` is set by `off`, `warning` or `error`, or by its options; this is `null`'],
  [['off'], undefined, '`max-pond-ducks` is set by `off`, `warning` or `error`, or by its options; this is `["off"]`'],
  [
    { severity: 'eror' },
    'severity',
    '`severity` of `max-pond-ducks` is `off`, `warning` or `error`; this is `eror`. Did you mean `error`?',
  ],
  [{ severity: 2 }, 'severity', '`severity` of `max-pond-ducks` is `off`, `warning` or `error`; this is `2`'],
  [{ ducks: -1 }, 'ducks', '`ducks` of `max-pond-ducks` is a number from 0 to 9; this is `-1`'],
  [{ ducks: '3' }, 'ducks', '`ducks` of `max-pond-ducks` is a number from 0 to 9; this is `3`'],
  [{ geese: Number.NaN }, 'geese', '`geese` of `max-pond-ducks` is a number; this is `null`'],
  [{ geese: Infinity }, 'geese', '`geese` of `max-pond-ducks` is a number; this is `null`'],
  [{ wild: 'true' }, 'wild', '`wild` of `max-pond-ducks` is true or false; this is `true`'],
  [{ pond: 3 }, 'pond', '`pond` of `max-pond-ducks` is a word; this is `3`'],
  [{ named: ['Zub', 3] }, 'named', '`named` of `max-pond-ducks` is a list of words; this is `["Zub",3]`'],
  [{ severty: 'off' }, 'severty', '`max-pond-ducks` has no option `severty`. Did you mean `severity`?'],
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

test.each([
  [{ minimum: 0 }, 'a number, 0 or more'],
  [{ maximum: 9 }, 'a number, 9 or less'],
  [{ minimum: 0, maximum: 1 }, 'a number from 0 to 1'],
  [{}, 'a number'],
])('what a number may be is told: %j', (limits, text) => {
  expect(toKind({ type: 'number', default: 0, description: '', ...limits })).toBe(text)
})

test('what is right beside a mistake is kept, and each problem has its kind', () => {
  const { setting, problems } = readRuleSetting(rule, { severity: 'off', ducks: 4, geese: 'many', swans: 1 })
  expect(setting).toEqual({ severity: 'off', options: { ducks: 4 } })
  expect(problems.map(({ code, key, severity }) => [code, key, severity])).toEqual([
    ['bad-value', 'geese', 'error'],
    ['unknown-key', 'swans', 'error'],
  ])
})

test('the default of every option of every rule is a value that the option takes', () => {
  for (const each of rules) {
    const defaults = Object.fromEntries(Object.entries(each.options).map(([name, spec]) => [name, spec.default]))
    expect(readRuleSetting(each, defaults).problems, each.id).toEqual([])
  }
})
