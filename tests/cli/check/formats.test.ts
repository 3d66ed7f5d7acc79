// The reports of `check` in the formats of other programs, each held against the format's published definition.

import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import Draft4 from 'ajv-draft-04'
import addFormats from 'ajv-formats'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { main } from '../../../src/cli/main.ts'
import { createWorld, type TestWorld } from '../io.ts'

// The schema is published at https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json;
// this copy comes with Microsoft's package.
const sarifSchema = JSON.parse(
  readFileSync(
    createRequire(import.meta.url).resolve('@microsoft/jest-sarif/lib/schemas/sarif-2.1.0-rtm.5.json'),
    'utf8',
  ),
)

const STORY = '---\nstep: pink-3\n---\n\n# Meg\n\nThe 😀 night sat.\r\n\n---\n\nMeg & Sid <b> sat, 100% "wet": yes.\n'
const SHELF = {
  'battledore.yaml': 'names: [Meg, Sid]\n',
  'a story & more.md': STORY,
  'good.md': '---\nstep: pink-4\n---\n\n# A tin\n\nSid sat.\n',
  'bad.md': new Uint8Array([0xff, 0xfe, 0x41, 0x00]),
}

let world: TestWorld
beforeAll(() => {
  world = createWorld(SHELF)
})
afterAll(() => world.remove())

async function report(...args: string[]): Promise<{ code: number; out: string; err: string }> {
  const before = [world.out().length, world.err().length]
  const code = await main(['check', ...args], world.io)
  return { code, out: world.out().slice(before[0]), err: world.err().slice(before[1]) }
}

const FILES = ['a story & more.md', 'good.md', 'bad.md']

interface SarifResult {
  readonly ruleId: string
  readonly ruleIndex: number
  readonly locations: readonly [
    {
      readonly physicalLocation: {
        readonly artifactLocation: { readonly uri: string }
        readonly region: Record<string, number> & { readonly snippet: { readonly text: string } }
      }
    },
  ]
}

describe('SARIF', () => {
  it('holds to the schema, for findings, for none and for files that cannot be read', async () => {
    const ajv = new Draft4.default({ strict: false, allErrors: true, unicodeRegExp: false })
    addFormats.default(ajv as never)
    const validate = ajv.compile(sarifSchema)
    for (const files of [FILES, ['good.md'], ['bad.md']]) {
      const { out } = await report(...files, '--format', 'sarif')
      const isValid = validate(JSON.parse(out))
      expect(validate.errors ?? []).toEqual([])
      expect(isValid).toBe(true)
    }
    expect(validate({ version: '2.1.0', runs: [{}] }), 'the schema refuses what is wrong').toBe(false)
  })

  it('counts columns in UTF-16 units and points at the words', async () => {
    const { out } = await report(...FILES, '--format', 'sarif')
    const [run] = JSON.parse(out).runs
    expect(run.columnKind).toBe('utf16CodeUnits')
    const lines = STORY.split(/\r\n|\n/)
    const results: readonly SarifResult[] = run.results
    const night = results.find(({ locations }) => locations[0].physicalLocation.region.snippet.text === 'night')
    const region = night?.locations[0].physicalLocation.region
    expect(
      lines[(region?.['startLine'] ?? 0) - 1]?.slice(
        (region?.['startColumn'] ?? 0) - 1,
        (region?.['endColumn'] ?? 0) - 1,
      ),
    ).toBe('night')
    // 😀 takes two units: the word begins in column 8, not 7.
    expect(region?.['startColumn']).toBe(8)
    expect(night?.locations[0].physicalLocation.artifactLocation.uri).toBe('a%20story%20%26%20more.md')
    for (const { ruleId, ruleIndex } of results) expect(run.tool.driver.rules[ruleIndex].id).toBe(ruleId)
    expect(run.invocations[0].executionSuccessful).toBe(false)
    expect(run.invocations[0].toolExecutionNotifications[0].message.text).toContain('UTF-16')
  })

  it('gives paths from the top of the checkout, of absolute arguments too', async () => {
    const inside = createWorld(SHELF)
    inside.write({ 'stories/02 a.md': STORY, 'stories/bad.md': SHELF['bad.md'] })
    const toUris = async (workspace: string, ...paths: string[]): Promise<readonly string[]> => {
      const before = inside.out().length
      const io = { ...inside.io, env: { GITHUB_WORKSPACE: workspace }, cwd: `${inside.cwd}/stories` }
      await main(['check', ...paths, '--format', 'sarif'], io)
      const report = inside.out().slice(before)
      return [...new Set([...report.matchAll(/"uri": "([^"]*)"/g)].map(([, uri = '']) => uri))].sort()
    }
    const uris = ['good.md', 'stories/02%20a.md', 'stories/bad.md']
    for (const workspace of ['..', inside.cwd]) {
      expect(await toUris(workspace, '.', '../good.md')).toEqual(uris)
      const absolute = [`${inside.cwd}/stories`, `${inside.cwd}/good.md`]
      expect(await toUris(workspace, ...absolute)).toEqual(uris)
    }
    expect(await toUris(`${inside.cwd}/stories`, `${inside.cwd}/good.md`)).toEqual([`file://${inside.cwd}/good.md`])
    inside.remove()
  })

  it('gives each result of a story a fingerprint of its own that does not change when lines move', async () => {
    const prints = async (): Promise<string[]> => {
      const { out } = await report('a story & more.md', '--format', 'sarif')
      return JSON.parse(out).runs[0].results.map(
        (result: { partialFingerprints: Record<string, string> }) =>
          result.partialFingerprints['ruleWordOccurrence/v1'],
      )
    }
    const before = await prints()
    expect(new Set(before).size).toBe(before.length)
    world.write({ 'a story & more.md': STORY.replace('# Meg', '\n\n\n# Meg') })
    expect(await prints()).toEqual(before)
    world.write({ 'a story & more.md': STORY })
  })
})

describe('workflow annotations', () => {
  // The rules of https://github.com/actions/toolkit/blob/main/packages/core/src/command.ts, read backwards.
  const unescapeData = (text: string): string =>
    text.replaceAll('%0D', '\r').replaceAll('%0A', '\n').replaceAll('%25', '%')
  const unescapeProperty = (text: string): string => unescapeData(text.replaceAll('%3A', ':').replaceAll('%2C', ','))
  const read = (line: string) => {
    const [, kind = '', list = '', text = ''] = /^::(\w+) ([^:]*)::(.*)$/.exec(line) ?? []
    return {
      kind,
      text: unescapeData(text),
      ...Object.fromEntries(
        list
          .split(',')
          .map((one) => [one.slice(0, one.indexOf('=')), unescapeProperty(one.slice(one.indexOf('=') + 1))]),
      ),
    } as Record<string, string>
  }

  it('say the same as the JSON report, whatever characters a path has', async () => {
    const path = 'odd, 100%25: b.md'
    world.write({ [path]: STORY })
    const json = JSON.parse((await report(path, '--format', 'json')).out)
    const lines = (await report(path, '--format', 'github')).out
      .trim()
      .split('\n')
      .filter((line) => !line.startsWith('::notice'))
    const messages: readonly Record<string, unknown>[] = json.files[0].messages
    expect(lines.length).toBe(messages.length)
    lines.forEach((line, at) => {
      const { kind, file, title, text, line: row, col } = read(line)
      expect({ kind, file, title, row: Number(row) }).toEqual({
        kind: messages[at]?.['severity'],
        file: path,
        title: messages[at]?.['rule'],
        row: messages[at]?.['line'],
      })
      if (col !== undefined) expect(Number(col)).toBe(messages[at]?.['column'])
      expect(text?.split('\n')[0]).toBe(messages[at]?.['message'])
    })
  })

  it('keeps to ten errors and ten warnings, and says how many more there are', async () => {
    world.write({ 'many.md': `---\nstep: pink-1\n---\n\n${'The night light might fight. '.repeat(5)}\n` })
    const { out } = await report('many.md', '--format', 'github')
    const { out: json } = await report('many.md', '--format', 'json')
    const errors = JSON.parse(json).files[0].messages.filter(
      (one: { severity: string }) => one.severity === 'error',
    ).length
    const lines = out.trim().split('\n')
    expect(errors).toBeGreaterThan(15)
    expect(lines.filter((line) => line.startsWith('::error'))).toHaveLength(10)
    expect(lines.filter((line) => line.startsWith('error many.md'))).toHaveLength(errors - 10)
    expect(lines.at(-1)).toMatch(/^::notice title=battledore::\d+ further messages are not shown/)
  })

  it('gives paths from the top of the checkout', async () => {
    const inside = createWorld(SHELF, { env: {} })
    const nested = { ...inside.io, env: { GITHUB_WORKSPACE: inside.cwd }, cwd: `${inside.cwd}/stories` }
    inside.write({ 'stories/a.md': STORY })
    await main(['check', 'a.md', '--format', 'github'], nested)
    expect(inside.out()).toContain('file=stories/a.md,')
    inside.remove()
  })
})

describe('several reports', () => {
  it('go each to its file, whole or not at all', async () => {
    const { code, out } = await report(
      'good.md',
      '--format',
      'line',
      '--format',
      'json=out.json',
      '--format',
      'junit=out.xml',
    )
    expect([code, out]).toEqual([0, ''])
    expect(JSON.parse(world.read('out.json')).files[0].path).toBe('good.md')
    expect(world.read('out.xml')).toContain('<testsuites')
    expect((await report('good.md', '--format', 'json', '--output', 'x.json')).out).toBe('')
    expect(JSON.parse(world.read('x.json')).schema).toBe(2)
  })

  it.each([
    [['--format', 'jsom'], 'There is no format `jsom`. Did you mean `json`?'],
    [['--format', 'json', '--format', 'sarif'], 'Of several formats, all but one need a file: --format sarif=FILE.'],
    [['--format', 'json='], '--format NAME=FILE needs the name of a file after `=`.'],
    [['--format', 'json=a', '--output', 'b'], '--output is not needed: each --format names its file.'],
    [['--max-warnings', '-1'], '--max-warnings is a whole number; this is `-1`.'],
    [['--fail-on', 'no'], '--fail-on is error, warning or never; this is `no`.'],
    [['--format', 'json', '--output', 'no/such/folder.json'], '`no/such/folder.json` is not there.'],
  ])('%s is one clear line', async (args, message) => {
    const { code, err } = await report('good.md', ...args)
    expect([code, err]).toEqual([2, `battledore: ${message}\n`])
  })
})

describe('a report that is written story by story', () => {
  // Reference: JSON.stringify of the whole value (ECMA-262, 25.5.2), which nobody holds.
  it.each(['json', 'sarif'])('is in %s the text of JSON.stringify', async (format) => {
    for (const files of [FILES, ['good.md'], ['bad.md'], ['bad.md', 'good.md', 'a story & more.md']]) {
      const { out } = await report(...files, '--format', format)
      expect(out).toBe(`${JSON.stringify(JSON.parse(out), null, 2)}\n`)
    }
  })

  it('names the first sequence, and all that could not be checked at the end', async () => {
    const { out } = await report('bad.md', ...FILES, '--format', 'json')
    const { files, failures, sequence } = JSON.parse(out)
    expect(files.map(({ path }: { path: string }) => path)).toEqual(['a story & more.md', 'good.md'])
    expect([sequence, failures.length]).toEqual([files[0].sequence, 1])
    expect(JSON.parse((await report('bad.md', '--format', 'json')).out)).toMatchObject({ sequence: null, files: [] })
  })
})

describe('what fails', () => {
  const warned = { 'warned.md': '---\nstep: pink-3\n---\n\nSid sat.\n\nSid sat.\n\nSid sat.\n\nSid sat.\n' }
  it('--max-warnings, --quiet and --fail-on', async () => {
    world.write(warned)
    const json = JSON.parse((await report('warned.md', '--format', 'json')).out)
    const severities = json.files[0].messages.map((one: { severity: string }) => one.severity)
    expect(severities.length).toBeGreaterThan(0)
    expect(new Set(severities)).toEqual(new Set(['warning']))
    expect((await report('warned.md')).code).toBe(0)
    expect((await report('warned.md', '--fail-on', 'warning')).code).toBe(1)
    expect((await report('warned.md', '--max-warnings', String(severities.length))).code).toBe(0)
    expect((await report('warned.md', '--max-warnings', String(severities.length - 1))).code).toBe(1)
    const quiet = await report('warned.md', '--quiet', '--max-warnings', '0')
    const count = severities.length === 1 ? '1 warning' : `${severities.length} warnings`
    expect(quiet).toEqual({ code: 1, out: '', err: `${count}, more than --max-warnings 0 allows.\n` })
    const strict = await report('warned.md', '--quiet', '--fail-on', 'warning')
    expect(strict).toEqual({ code: 1, out: '', err: `${count}, and --fail-on warning allows none.\n` })
    expect(await report('warned.md', '--quiet', '--max-warnings', '9')).toEqual({ code: 0, out: '', err: '' })
    world.write({ 'both.md': `${warned['warned.md']}\nA night.\n` })
    const { out } = await report('both.md', '--quiet')
    expect(out).toContain('error')
    expect((await report('both.md', '--quiet', '--max-warnings', '0')).err).toBe('')
    expect(out).not.toContain('max-page')
    expect(out).toMatch(/1 error and [1-9]\d* warnings? in 1\s+story/)
    expect((await report('both.md', '--quiet', '--format', 'line')).out.trim().split('\n')).toHaveLength(1)
  })
})
