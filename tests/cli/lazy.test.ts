// What a plain check of one file loads: neither the matcher of patterns nor that of ignore files, no full YAML, no tagger, no colours.
// Seen from outside: the real program, with a hook that notes which parts of it are read.

import { spawnSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterAll, expect, it } from 'vitest'
import { createWorld } from './io.ts'

const CLI = fileURLToPath(new URL('../../dist/cli.cjs', import.meta.url))
const TRACE = `
const { Module } = require('node:module')
const { appendFileSync } = require('node:fs')
const load = Module._load
Module._load = function (name, ...rest) {
  const part = /parts\\/([\\w-]+)\\.cjs$/.exec(name)
  if (part) appendFileSync(process.env.TRACE_FILE, part[1] + '\\n')
  return load.call(this, name, ...rest)
}`

const world = createWorld({
  'hen.md': '---\nstep: pink-4\n---\n\nA hen.\n',
  'odd.md': '---\nstep: pink-4\nrules: { no-untaught-mark: off }\n---\n\nA hen.\n',
  'battledore.yaml': 'names:\n  - Tam\n',
  'trace.cjs': TRACE,
})
afterAll(world.remove)

function toLoaded(...args: string[]): string[] {
  world.write({ 'trace.txt': '' })
  const { status, stderr } = spawnSync(
    process.execPath,
    ['--require', join(world.cwd, 'trace.cjs'), CLI, 'check', ...args, '--format', 'line'],
    {
      cwd: world.cwd,
      encoding: 'utf8',
      env: { ...process.env, TRACE_FILE: join(world.cwd, 'trace.txt') },
    },
  )
  expect(stderr).toBe('')
  expect(status).toBeLessThan(2)
  return [
    ...new Set(
      readFileSync(join(world.cwd, 'trace.txt'), 'utf8')
        .split('\n')
        .filter((name) => name !== ''),
    ),
  ]
}

it('loads each rare part only when it is needed', () => {
  const rare = ['tinyglobby', 'ignore', 'full-yaml', 'tagger', 'compromise-two', 'chalk', 'load']
  const toRare = (...args: string[]) => toLoaded(...args).filter((name) => rare.includes(name))
  expect(toRare('hen.md')).toEqual([])
  expect(toRare('*.md')).toContain('tinyglobby')
  expect(toRare('odd.md')).toEqual(['full-yaml'])
  world.write({ '.gitignore': 'x\n' })
  expect(toRare('hen.md')).toEqual(['ignore'])
})
