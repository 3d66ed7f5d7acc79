// A world for tests of the commands: a folder of its own on the real disk, with all that is printed kept.

import * as fs from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import type { Io, Output } from '../../src/cli/io.ts'

export interface TestWorld {
  readonly io: Io
  readonly cwd: string
  out(): string
  err(): string
  /** Writes files below the folder; a text or bytes. */
  write(files: Readonly<Record<string, string | Uint8Array>>): void
  read(path: string): string
  remove(): void
}

export function createWorld(
  files: Readonly<Record<string, string | Uint8Array>> = {},
  given: { readonly stdin?: string; readonly isTTY?: boolean; readonly columns?: number } & Partial<
    Omit<Io, 'stdin'>
  > = {},
): TestWorld {
  const { stdin = '', isTTY = false, columns, ...more } = given
  const cwd = fs.realpathSync(fs.mkdtempSync(join(tmpdir(), 'battledore-')))
  // A folder with `.git` is where ignore files begin to count.
  fs.mkdirSync(join(cwd, '.git'))
  const [stdout, stderr] = [createOutput(isTTY, columns), createOutput(isTTY, columns)]
  const io: Io = {
    ...{ cwd, env: {}, stdinIsTTY: false, stdout, stderr, fs, now: () => performance.now(), today: () => '2026-11-29' },
    stdin: async function* () {
      yield new TextEncoder().encode(stdin)
    },
    ...more,
  }
  const write: TestWorld['write'] = (all) => {
    for (const [path, text] of Object.entries(all)) {
      fs.mkdirSync(dirname(join(cwd, path)), { recursive: true })
      fs.writeFileSync(join(cwd, path), text)
    }
  }
  write(files)
  return {
    ...{ io, cwd, write, out: stdout.text, err: stderr.text },
    read: (path) => fs.readFileSync(join(cwd, path), 'utf8'),
    remove: () => fs.rmSync(cwd, { recursive: true, force: true }),
  }
}

function createOutput(isTTY: boolean, columns: number | undefined): Output & { text(): string } {
  let written = ''
  return {
    write: (text) => {
      written += typeof text === 'string' ? text : new TextDecoder('latin1').decode(text)
    },
    isTTY,
    columns,
    text: () => written,
  }
}
