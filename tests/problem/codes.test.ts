// The codes of problems are the same in the type and in the page for people.

import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { ROOT } from '../console.ts'

const read = (path: string): string => readFileSync(join(ROOT, path), 'utf8')

const codes = [...read('src/problem/types.ts').matchAll(/^ {2}\| '([a-z0-9-]+)'$/gm)].map(([, code]) => code)

it('stand in order in the type', () => {
  expect(codes.length).toBeGreaterThan(20)
  expect(codes).toEqual([...new Set(codes)].sort())
})

it('have a row each in docs/problems.md', () => {
  const [, table = ''] = read('docs/problems.md').split('| code | what is wrong |')
  expect([...table.matchAll(/^\| `([a-z0-9-]+)` \|/gm)].map(([, code]) => code)).toEqual(codes)
})
