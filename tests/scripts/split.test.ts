// Cutting a program into parts, on a small program of its own: every module has one state, wherever it is asked from.

import { execFileSync } from 'node:child_process'
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { splitProgram, toPartName } from '../../scripts/bundle/split.ts'

const SOURCES: Readonly<Record<string, string>> = {
  'src/start.js': `
    import { add } from './count.js'
    add('program')
    export async function start() {
      const { one } = await import('./one.js')
      const { two } = await import('./two/index.js')
      const { three } = await import('./kept.js')
      const { default: old } = await import('old')
      return [one(), two(), three(), old.name, old === (await import('./one.js')).old]
    }`,
  'src/count.js': 'const seen = []\nexport const add = (name) => [...seen, seen.push(name)].length',
  'src/shared.js': "import { add } from './count.js'\nexport const marks = new Set()\nadd('shared')",
  'src/beside.js': "import { add } from './count.js'\nadd('beside')\nexport const beside = {}",
  'src/one.js': `
    import old from 'old'
    import { add } from './count.js'
    import { marks } from './shared.js'
    import { beside } from './beside.js'
    export { old }
    export const one = () => (marks.add(beside), add('one'))`,
  'src/two/index.js': `
    import { add } from '../count.js'
    import { marks } from '../shared.js'
    import { beside } from '../beside.js'
    export const two = () => [marks.has(beside), add('two')]`,
  'src/kept.js': `
    import { add } from './count.js'
    import { beside } from './beside.js'
    export const three = () => [add('three'), beside === globalThis.never]`,
  'node_modules/old/package.json': '{"name":"old","main":"index.js"}',
  'node_modules/old/index.js': "module.exports = function oldStyle() {}\nmodule.exports.dir = require('path').sep",
}

let root: string

beforeAll(async () => {
  root = mkdtempSync(join(tmpdir(), 'battledore split é '))
  for (const [path, text] of Object.entries(SOURCES)) {
    mkdirSync(dirname(join(root, path)), { recursive: true })
    writeFileSync(join(root, path), text)
  }
  const options = { bundle: true, platform: 'node', absWorkingDir: root, minifyWhitespace: true } as const
  const cjs = { ...options, format: 'cjs', supported: { 'dynamic-import': false } } as const
  await splitProgram(options, cjs, { entry: 'src/start.js', kept: new Set(['src/kept.js']) })
})
afterAll(() => rmSync(root, { recursive: true, force: true }))

it('gives each module one state, across the program, its parts and what they share', () => {
  const code = "require('./dist/program.cjs').start().then((all) => console.log(JSON.stringify(all)))"
  const out = execFileSync(process.execPath, ['-e', code], { cwd: root, encoding: 'utf8' })
  // The second number of each is how many had been counted: program, beside, shared, one, two, three.
  expect(JSON.parse(out)).toEqual([4, [true, 5], [6, false], 'oldStyle', true])
})

it('writes no code twice, and what is kept lies in the program', () => {
  const parts = readdirSync(join(root, 'dist', 'parts'))
  expect(parts.filter((name) => !name.startsWith('chunk-')).sort()).toEqual(['old.cjs', 'one.cjs', 'two.cjs'])
  const program = readFileSync(join(root, 'dist', 'program.cjs'), 'utf8')
  const all = program + parts.map((name) => readFileSync(join(root, 'dist', 'parts', name), 'utf8')).join('')
  for (const mark of ['"program"', '"shared"', '"beside"', '"one"', '"two"', '"three"', 'oldStyle'])
    expect(all.split(mark).length - 1, mark).toBe(1)
  for (const mark of ['"program"', '"beside"', '"three"']) expect(program).toContain(mark)
})

it('names a part after its source or its package', () => {
  expect(toPartName('src/cli/words/run.ts')).toBe('cli-words-run')
  expect(toPartName('src/report/html/index.ts')).toBe('report-html')
  expect(toPartName('node_modules/a/node_modules/@b/c/dist/index.mjs')).toBe('b-c')
})
