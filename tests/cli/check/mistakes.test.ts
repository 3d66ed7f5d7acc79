// A mistake in a sequence stands in every report at its own place in its own file, once, whatever the folder is called.

import { afterEach, describe, expect, it } from 'vitest'
import { main } from '../../../src/cli/main.ts'
import { createWorld, type TestWorld } from '../io.ts'

const SEQUENCE = 'name: mine\nsteps:\n  - id: one\n    teach:\n      - a as in cat\n      - y as in cat\n'
const STORY = '---\nsequence: mine.yaml\nstep: one\n---\n\nA cat.\n'
const MESSAGE = '`cat` does not hold the letters `y` (its letters: c, a, t)'
const TEXT = `${MESSAGE}. Did you mean \`c as in cat\`?`

/** `#` may not stand in a file name of Windows, brackets and blanks may. */
const FOLDERS = ['.', 'Year (1)', 'a:1:2 (set in b)']

let world: TestWorld | undefined
afterEach(() => world?.remove())

async function report(folder: string, ...args: readonly string[]): Promise<{ code: number; out: string; err: string }> {
  world = createWorld({
    [`${folder}/mine.yaml`]: SEQUENCE,
    [`${folder}/tam.md`]: STORY,
    [`${folder}/meg.md`]: STORY,
  })
  const code = await main(['check', folder, ...args], world.io)
  return { code, out: world.out(), err: world.err() }
}

describe.each(FOLDERS)('in the folder %j', (folder) => {
  const path = folder === '.' ? 'mine.yaml' : `${folder}/mine.yaml`

  it('pretty: once on standard error', async () => {
    const { code, err } = await report(folder)
    expect(code).toBe(2)
    expect(err).toBe(`battledore: ${path}:6:9: error: ${TEXT}\n`)
  })

  it('line: once, for a problem matcher', async () => {
    const { out } = await report(folder, '--format', 'line')
    expect(out).toBe(`${path}:6:9-6:20: error: ${TEXT} [not-checked]\n`)
  })

  it('github: one annotation', async () => {
    const { out } = await report(folder, '--format', 'github')
    const escaped = path.replaceAll(':', '%3A')
    expect(out.trim().split('\n')).toEqual([
      expect.stringMatching(
        /^::error file=.*,line=6,endLine=6,col=9,endColumn=20,title=could not be checked::`cat` does/,
      ),
    ])
    expect(out).toContain(`file=${escaped},`)
  })

  it('sarif: one notification about how the tool is set', async () => {
    const { out } = await report(folder, '--format', 'sarif')
    const [invocation] = JSON.parse(out).runs[0].invocations
    expect(invocation).toMatchObject({
      executionSuccessful: false,
      toolExecutionNotifications: [],
      toolConfigurationNotifications: [
        {
          level: 'error',
          descriptor: { id: 'bad-example' },
          locations: [
            {
              physicalLocation: {
                artifactLocation: { uri: path.split('/').map(encodeURIComponent).join('/') },
                region: { startLine: 6, startColumn: 9, endLine: 6, endColumn: 20 },
              },
            },
          ],
        },
      ],
    })
    expect(invocation.toolConfigurationNotifications).toHaveLength(1)
  })

  it('json: with lines and columns, under each story', async () => {
    const { out } = await report(folder, '--format', 'json')
    const { schema, failures } = JSON.parse(out)
    const problem = {
      ...{ code: 'bad-example', severity: 'error', message: MESSAGE, expected: ['c as in cat'], note: null },
      ...{ path, line: 6, column: 9, endLine: 6, endColumn: 20, setBy: 'top of the story, line 2' },
    }
    expect(schema).toBe(2)
    expect(failures.map((one: { problems: unknown }) => one.problems)).toEqual([[problem], [problem]])
  })

  it('junit: a suite of its own, and the stories are passed over', async () => {
    const { out } = await report(folder, '--format', 'junit')
    expect(out.match(/<error/g)).toHaveLength(1)
    expect(out.match(/<skipped/g)).toHaveLength(2)
    expect(out).toContain(`<testsuite name="${path}" tests="1" failures="0" errors="1">`)
    expect(out).toContain(`${path}:6:9: \`cat\` does not hold`)
  })
})

it('what a flag names is told once for all stories, and nothing is glued to it', async () => {
  world = createWorld({ 'tam.md': 'A cat.\n', 'meg.md': 'A cat.\n' })
  expect(await main(['check', '.', '--sequence', 'mine.yaml'], world.io)).toBe(2)
  expect(world.err()).toBe('battledore: `mine.yaml` is not there (set in --sequence).\n')
})

it('a sequence that is not there is told where the story names it', async () => {
  world = createWorld({ 'tam.md': STORY })
  expect(await main(['check', '.', '--format', 'line'], world.io)).toBe(2)
  expect(world.out()).toBe('tam.md:2:11-2:20: error: `mine.yaml` is not there [not-checked]\n')
})

it('a step that a config names is told in the config, once', async () => {
  world = createWorld({ 'battledore.yaml': 'step: pnik-4\n', 'tam.md': 'A cat.\n', 'meg.md': 'A cat.\n' })
  expect(await main(['check', '.'], world.io)).toBe(2)
  expect(world.err()).toBe(
    'battledore: battledore.yaml:1:7: error: The sequence `series` has no step `pnik-4`. Did you mean `pink-4`?\n',
  )
})
