// At 60 columns, as in half a window or in large print: no line is wider, and no word is broken.

import { expect, it } from 'vitest'
import { main } from '../../src/cli/main.ts'
import { ROOT } from '../console.ts'
import { createWorld } from './io.ts'

const COMMANDS: readonly (readonly [name: string, line: string])[] = [
  ['check', 'check fixtures/shelf --fail-on never'],
  ['check --readers', 'check fixtures/shelf --readers fixtures/class'],
  ['explain', 'explain won beautiful --step pink-3'],
  ['help', '--help'],
  ['help of check', 'check --help'],
  ...[
    'bring',
    'explain',
    'fix',
    'init',
    'level',
    'match',
    'next',
    'print',
    'sequence',
    'serve',
    'shelf',
    'stream',
    'taught',
    'words',
  ].map((name) => [`help of ${name}`, `${name} --help`] as const),
  ['help of sequence add', 'sequence add --help'],
  ['help of sequence new', 'sequence new --help'],
  ['level', 'level fixtures/shelf'],
  ['match', 'match fixtures/shelf --readers fixtures/class'],
  ['next', 'next fixtures/class/ivo.yaml fixtures/shelf --plan --on 2026-11-24'],
  ['sequence', 'sequence england'],
  ['sequence --shelf', 'sequence --shelf fixtures/shelf'],
  ['shelf', 'shelf fixtures/shelf'],
  ['words', 'words --step green-13'],
  ['words --as sheet', 'words --step green-3 --as sheet'],
  ['words --set contrast', 'words --step green-3 --set contrast --sounds e,i'],
]

async function print(line: string, columns: number): Promise<string> {
  const world = createWorld({}, { cwd: ROOT, env: { COLUMNS: String(columns) } })
  try {
    await main(line.split(' '), world.io)
    expect(world.err()).toBe('')
    return world.out()
  } finally {
    world.remove()
  }
}

const toWords = (text: string): readonly string[] => text.match(/[\p{L}\p{N}][\p{L}\p{N}'’_-]*/gu) ?? []

/** What is to be typed stands whole on its line, however long it is. */
const isToType = (line: string): boolean => /^ {2}(?:battledore|cat|parallel) /.test(line)

it.each(COMMANDS)('%s', async (_, line) => {
  const [narrow, wide] = [await print(line, 60), await print(line, 100)]
  expect(toWords(narrow).length).toBeGreaterThan(10)
  expect(narrow.split('\n').filter((one) => one.length > 60 && !isToType(one))).toEqual([])
  // Half a word stands in no wider output.
  const whole = new Set(toWords(wide))
  expect(toWords(narrow).filter((word) => !whole.has(word))).toEqual([])
})

it('would see a word that is broken, and half a word', () => {
  expect(toWords('A Duck at t… (93 %)')).toEqual(['A', 'Duck', 'at', 't', '93'])
})
