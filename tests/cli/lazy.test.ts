// What a plain check of one file loads besides the program: nothing, whether the story is good or has a word to mend.
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
  'night.md': '---\nstep: pink-4\n---\n\nA hen at night.\n',
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

it('loads no part for a plain check, and each rare one only when it is needed', () => {
  expect(toLoaded('hen.md')).toEqual([])
  expect(toLoaded('night.md')).toEqual([])
  expect(toLoaded('*.md')).toContain('tinyglobby')
  expect(toLoaded('odd.md')).toEqual(['config-full-yaml'])
  world.write({ '.gitignore': 'x\n' })
  expect(toLoaded('hen.md')).toEqual(['ignore'])
})

it('keeps out of the program what only a part needs: each would cost every run', () => {
  const program = readFileSync(join(CLI, '..', 'program.cjs'), 'utf8')
  for (const sign of ['PDFDocument', 'BrotliDecompress', 'mammoth']) expect(program).not.toContain(sign)
  expect(program.length).toBeLessThan(1_000_000)
})
