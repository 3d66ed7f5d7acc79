// The hook in the real pre-commit framework, installed from a checkout as its users install it: clone, npm install, pack.
//
// Takes a minute or two: the checkout compiles itself, lexicon and all.

import { execFileSync } from 'node:child_process'
import { cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { basename, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { describeWith } from '../tools.ts'
import { createRepository, type Repository, toGitEnv } from './repository.ts'

const ROOT = fileURLToPath(new URL('../..', import.meta.url))
const OWN = new Set(['.git', 'node_modules', 'dist', 'coverage'])

const GOOD = '---\nstep: pink-4\n---\n\nSid sat.\n'
const BAD = '---\nstep: pink-1\n---\n\nA night.\n'

/** A repository with the sources as they are now, and nothing that was built from them. */
function copySources(folder: string): string {
  cpSync(ROOT, folder, { recursive: true, filter: (path) => !OWN.has(basename(path)) && !path.endsWith('.tmp.ts') })
  const git = (...args: string[]): string =>
    execFileSync('git', args, { cwd: folder, env: toGitEnv(folder) })
      .toString()
      .trim()
  git('init', '-q', '-b', 'main')
  git('add', '-A')
  git('commit', '-qm', 'sources')
  return git('rev-parse', 'HEAD')
}

describe('package.json', () => {
  it('has no script that makes npm 11 prepare a package in its own way', () => {
    const { scripts } = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8')) as {
      scripts: Record<string, string>
    }
    const taken = ['build', 'prepare', 'prepack', 'install', 'preinstall', 'postinstall']
    expect(Object.keys(scripts).filter((name) => taken.includes(name))).toEqual([])
  })
})

describeWith('pre-commit', 'the pre-commit framework', () => {
  let folder: string
  let repository: Repository
  const run = (...args: string[]) => repository.git(...args)

  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'battledore-hook-'))
    const source = join(folder, 'source')
    // A folder of its own, so that nothing of the person who runs the tests is touched.
    const env = { PRE_COMMIT_HOME: join(folder, 'home') }
    mkdirSync(source)
    const revision = copySources(source)
    repository = createRepository(
      {
        'battledore.yaml': 'names: [Sid]\n',
        '.pre-commit-config.yaml': `repos:\n  - repo: ${source}\n    rev: ${revision}\n    hooks:\n      - id: battledore\n        args: [--format, line, --]\n`,
      },
      env,
    )
    execFileSync('pre-commit', ['install', '--install-hooks'], {
      cwd: repository.cwd,
      env: { ...toGitEnv(folder), ...env },
    })
  }, 600_000)
  afterAll(() => {
    rmSync(folder, { recursive: true, force: true })
    repository?.remove()
  })

  it('refuses a bad story with the message, and lets a good one pass', () => {
    repository.write({ 'tam.md': BAD })
    run('add', '-A')
    const refused = run('commit', '-m', 'bad')
    expect(refused.out + refused.err).toMatch(/tam\.md:5:3-5:8: error: `night`/)
    expect(refused.status).toBe(1)
    repository.write({ 'tam.md': GOOD })
    run('add', '-A')
    const passed = run('commit', '-m', 'good')
    expect(passed.out + passed.err).toMatch(/battledore\.+Passed/)
    expect(passed.status).toBe(0)
  })

  it('judges a partly staged story by its staged text, and gives the rest back', () => {
    repository.write({ 'tam.md': `${GOOD}\nSid sat on it.\n` })
    run('add', '-A')
    repository.write({ 'tam.md': BAD })
    expect(run('commit', '-m', 'good is staged').status).toBe(0)
    expect(repository.read('tam.md')).toBe(BAD)
    run('add', '-A')
    repository.write({ 'tam.md': GOOD })
    expect(run('commit', '-m', 'bad is staged').status).toBe(1)
    expect(repository.read('tam.md')).toBe(GOOD)
    run('checkout', '-q', 'HEAD', '--', '.')
  })

  it.each(['a b.md', 'it\'s "odd".md', 'two\nlines.md', '-dash.md'])('takes the name %j', (name) => {
    repository.write({ [name]: BAD })
    run('add', '-A')
    expect(run('commit', '-m', 'bad').status).toBe(1)
    repository.write({ [name]: GOOD })
    run('add', '-A')
    expect(run('commit', '-m', 'good').status).toBe(0)
  })

  it('takes a rename and a deletion', () => {
    run('mv', 'a b.md', 'c.md')
    run('rm', '-q', 'tam.md')
    const { status, out, err } = run('commit', '-m', 'moved and gone')
    expect([status, out + err]).toEqual([0, expect.stringMatching(/Passed/)])
    expect(existsSync(join(repository.cwd, 'c.md'))).toBe(true)
  })
})
