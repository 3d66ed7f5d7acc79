// The server and a client that nobody here wrote: neovim's own, headless.

import { spawnSync } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import { afterAll, describe, expect, it } from 'vitest'
import { createWorld } from '../cli/io.ts'
import { PROGRAM } from '../cli/program.ts'

const found = spawnSync('nvim', ['--version'], { encoding: 'utf8' })
const hasNeovim = found.status === 0
if (!hasNeovim)
  process.stderr.write('tests/server/neovim.test.ts is left out: neovim is not installed (apt-get install neovim).\n')

const SCRIPT = fileURLToPath(new URL('./neovim/client.lua', import.meta.url))

interface Mark {
  readonly line: number
  readonly column: number
  readonly endLine: number
  readonly endColumn: number
  readonly message: string
  readonly code: string
  readonly source: string
}

interface Result {
  readonly error?: string
  readonly diagnostics: readonly Mark[]
  readonly hover: { readonly contents: { readonly value: string } }
  readonly actions: readonly string[]
  readonly text: string
  readonly after: readonly Mark[] | Record<string, never>
}

const world = createWorld({
  'battledore.yaml': 'names: [Tam]\nrules:\n  no-untaught-mark: off\n',
  'a story.md': '---\nstep: pink-4\n---\n\n# Tam\n\n“Tam” sat at night.\n',
})
afterAll(() => world.remove())

/** Opens the story, and asks about the place (line and column from 0; the column in bytes of UTF-8 is neovim's affair). */
function runNeovim(story: string, line: number, column: number): Result {
  const { status, stdout, stderr } = spawnSync(
    'nvim',
    ['--headless', '-u', 'NONE', '-n', story, '-c', `luafile ${SCRIPT}`],
    {
      cwd: world.cwd,
      encoding: 'utf8',
      timeout: 50_000,
      env: {
        ...process.env,
        XDG_STATE_HOME: world.cwd,
        XDG_CACHE_HOME: world.cwd,
        XDG_DATA_HOME: world.cwd,
        BATTLEDORE_COMMAND: JSON.stringify([process.execPath, ...PROGRAM, 'serve', '--stdio']),
        BATTLEDORE_LINE: String(line),
        BATTLEDORE_COLUMN: String(column),
      },
    },
  )
  const last = stdout.trim().split('\n').at(-1) ?? ''
  if (status !== 0 || !last.startsWith('{')) throw new Error(`neovim: exit ${status}\n${stdout}\n${stderr}`)
  return JSON.parse(last) as Result
}

describe.runIf(hasNeovim)('in neovim', () => {
  let result: Result | undefined
  const run = (): Result => (result ??= runNeovim('a story.md', 6, 15))

  it('marks the letters, after letters that are several bytes long', () => {
    expect(run().error).toBeUndefined()
    // neovim gives columns in bytes: each curly quote has three.
    const column = Buffer.byteLength('“Tam” sat at n')
    expect(run().diagnostics).toMatchObject([
      {
        line: 6,
        column,
        endLine: 6,
        endColumn: column + 3,
        code: 'no-untaught-correspondence',
        source: 'battledore',
        message: expect.stringContaining('`igh`'),
      },
    ])
  })

  it('shows the sounds of the word under the cursor', () => {
    expect(run().hover.contents.value).toMatch(/n +igh +t/)
    expect(run().hover.contents.value).toContain('/naɪt/')
  })

  it('offers the fixes, and one of them, put in by the editor, takes the mark away', () => {
    expect(run().actions).toEqual(
      expect.arrayContaining([
        'Make “night” a sight word of this story',
        'Switch off no-untaught-correspondence for “night” here',
      ]),
    )
    expect(run().text).toContain('step: pink-4\nsight words: [night]\n---')
    expect(Object.values(run().after)).toEqual([])
  })
})
