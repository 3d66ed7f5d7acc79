// `npm run new-rule` in a copy of the project: the new rule passes the tests of the rules before anybody has changed a letter.

import { spawnSync } from 'node:child_process'
import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { ROOT } from '../console.ts'

const COPIED = ['fixtures', 'package.json', 'rules', 'schemas', 'scripts', 'src', 'tests', 'vitest.config.ts']
const LINKED = ['dist', 'node_modules']

const copy = mkdtempSync(join(tmpdir(), 'new-rule-'))
const run = (...args: readonly string[]) => {
  const env = { ...process.env, VITEST: undefined, VITEST_WORKER_ID: undefined }
  const { status, stdout, stderr } = spawnSync(process.execPath, args, { cwd: copy, encoding: 'utf8', env })
  return { status, output: stdout + stderr }
}
const make = (id: string) => run('--import', 'tsx', 'scripts/new-rule.ts', id)

beforeAll(() => {
  for (const name of COPIED) cpSync(join(ROOT, name), join(copy, name), { recursive: true })
  for (const name of LINKED) symlinkSync(join(ROOT, name), join(copy, name))
})
afterAll(() => rmSync(copy, { recursive: true }))

it('makes a rule whose tests pass', () => {
  const made = make('max-something')
  expect(made.status, made.output).toBe(0)
  expect(readFileSync(join(copy, 'fixtures/stories/max-something.expected'), 'utf8')).toContain('[max-something]')
  const tests = ['tests/rules.test.ts', 'tests/lint/stories.test.ts', 'tests/schemas.test.ts']
  const { status, output } = run('node_modules/vitest/vitest.mjs', 'run', ...tests)
  expect(status, output).toBe(0)
})

it('makes nothing under a name that no rule may have, or that one has', () => {
  expect(make('silly-hat')).toMatchObject({ status: 2, output: expect.stringContaining('This is "silly-hat"') })
  expect(make('max-page-words')).toMatchObject({ status: 2, output: expect.stringContaining('already') })
})
