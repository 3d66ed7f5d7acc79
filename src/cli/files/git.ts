// Asks git, and turns what it complains about into one clear line.

import { spawnSync } from 'node:child_process'
import { fail, type Result, succeed } from '../../problem/index.ts'
import type { Io } from '../io.ts'

/** What git prints. */
export type GitAnswer = Result<Buffer>

const toGitFailure = (message: string): GitAnswer => fail({ code: 'git', message })

/** More than any list of changes or batch of stories needs. */
const MOST_BYTES = 1024 * 1024 * 1024

/** Hooks hand git's place over in the environment (GIT_DIR, GIT_INDEX_FILE), so it is passed on. */
export function askGit(args: readonly string[], { cwd, env }: Pick<Io, 'cwd' | 'env'>, input?: string): GitAnswer {
  const { error, status, stdout, stderr } = spawnSync('git', args, {
    cwd,
    env: { ...env, LC_ALL: 'C', GIT_OPTIONAL_LOCKS: '0' },
    maxBuffer: MOST_BYTES,
    ...(input === undefined ? {} : { input }),
  })
  if (error) return toGitFailure(toStartMessage(error))
  return status === 0 ? succeed(stdout) : toGitFailure(toMessage(stderr.toString()))
}

function toStartMessage(error: Error): string {
  const isMissing = 'code' in error && error.code === 'ENOENT'
  return isMissing
    ? 'git is not installed, or not where programs are looked for'
    : `git could not be run: ${error.message}`
}

function toMessage(stderr: string): string {
  const lines = stderr
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '')
  if (lines.some((line) => /not a git repository|--no-index/i.test(line)))
    return 'This folder is not in a git repository'
  const said = lines.findLast((line) => /^(?:fatal|error): /.test(line)) ?? lines[0] ?? 'it ended without a word'
  return `git could not answer: ${said.replace(/^(?:fatal|error): /, '').replace(/[.]$/, '')}`
}
