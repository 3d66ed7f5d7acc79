// A throw-away git repository for tests of what is checked at a commit.

import { spawnSync } from 'node:child_process'
import { chmodSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { createWorld, type TestWorld } from './io.ts'
import { PROGRAM } from './program.ts'

export interface Repository extends TestWorld {
  git(...args: readonly string[]): { readonly status: number | null; readonly out: string; readonly err: string }
  /** Puts a hook in place that runs this program with the arguments. */
  hook(args: string): void
}

/** Nothing of the person who runs the tests counts: no settings, no templates, no hooks, and not the repository they stand in. */
export function toGitEnv(home: string): Record<string, string> {
  const clean = Object.entries(process.env).filter(
    ([name, value]) => value !== undefined && !name.startsWith('GIT_') && name !== 'FORCE_COLOR',
  )
  return {
    ...(Object.fromEntries(clean) as Record<string, string>),
    ...{ GIT_CONFIG_NOSYSTEM: '1', GIT_CONFIG_GLOBAL: join(home, 'no-settings'), NO_COLOR: '1' },
    ...{
      GIT_AUTHOR_NAME: 'Meg',
      GIT_AUTHOR_EMAIL: 'meg@example.org',
      GIT_COMMITTER_NAME: 'Meg',
      GIT_COMMITTER_EMAIL: 'meg@example.org',
    },
  }
}

/** `more` is added to the environment of git and its hooks. */
export function createRepository(
  files: Readonly<Record<string, string | Uint8Array>> = {},
  more: Readonly<Record<string, string>> = {},
): Repository {
  const world = createWorld(files)
  rmSync(join(world.cwd, '.git'), { recursive: true })
  const env = { ...toGitEnv(world.cwd), ...more }
  const git: Repository['git'] = (...args) => {
    const { status, stdout, stderr } = spawnSync('git', args, { cwd: world.cwd, env })
    return { status, out: stdout.toString(), err: stderr.toString() }
  }
  git('init', '-q', '-b', 'main')
  return {
    ...world,
    io: { ...world.io, env },
    git,
    hook: (args) => {
      const quoted = [process.execPath, ...PROGRAM].map((part) => `'${part}'`).join(' ')
      world.write({ 'hooks/pre-commit': `#!/bin/sh\nexec ${quoted} ${args}\n` })
      chmodSync(join(world.cwd, 'hooks/pre-commit'), 0o755)
      git('config', 'core.hooksPath', 'hooks')
    },
  }
}
