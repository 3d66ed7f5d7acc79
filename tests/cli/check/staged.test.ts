// What is checked at a commit: the staged text of the staged stories, and nothing else. In real repositories.

import { rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterEach, describe, expect, it } from 'vitest'
import { main } from '../../../src/cli/main.ts'
import { createWorld } from '../io.ts'
import { createRepository, type Repository, toGitEnv } from '../repository.ts'

const GOOD = '---\nstep: pink-4\n---\n\nSid sat.\n'
const BAD = '---\nstep: pink-1\n---\n\nA night.\n'
const BEFORE = { 'battledore.yaml': 'names: [Sid]\n' }

let repository: Repository
afterEach(() => repository?.remove())

/** The exit code, and the paths that have messages. */
async function checkStaged(
  ...more: readonly string[]
): Promise<{ code: number; paths: readonly string[]; err: string }> {
  const before = repository.out().length
  const code = await main(['check', '--staged', '--format', 'json', ...more], repository.io)
  const report = JSON.parse(repository.out().slice(before)) as {
    files: readonly { path: string; messages: readonly unknown[] }[]
  }
  return {
    code,
    paths: report.files.filter(({ messages }) => messages.length > 0).map(({ path }) => path),
    err: repository.err(),
  }
}

describe('check --staged', () => {
  it('checks staged stories only, also before the first commit', async () => {
    repository = createRepository({ ...BEFORE, 'bad.md': BAD, 'good.md': GOOD, 'notes.txt': BAD })
    expect(await checkStaged()).toEqual({ code: 0, paths: [], err: '' })
    repository.git('add', 'good.md', 'notes.txt')
    expect((await checkStaged()).code).toBe(0)
    repository.git('add', 'bad.md')
    expect(await checkStaged()).toEqual({ code: 1, paths: ['bad.md'], err: '' })
  })

  it('refuses a made word in capitals as it refuses it in small letters', async () => {
    const story = (word: string) => `---\nstep: pink-1\n---\n\n${word}.\n`
    repository = createRepository({ ...BEFORE, 'loud.md': story('DIT'), 'small.md': story('dit') })
    repository.git('add', '.')
    const { code, paths } = await checkStaged()
    expect([code, paths]).toEqual([1, ['loud.md', 'small.md']])
  })

  it('judges a partly staged story by its staged text', async () => {
    repository = createRepository({ ...BEFORE, 'one.md': GOOD, 'two.md': BAD })
    repository.git('add', '.')
    repository.write({ 'one.md': BAD, 'two.md': GOOD })
    expect((await checkStaged()).paths).toEqual(['two.md'])
  })

  it('judges a story by its staged text that is not on the disk any more', async () => {
    repository = createRepository({ ...BEFORE, 'gone.md': BAD })
    repository.git('add', '.')
    rmSync(join(repository.cwd, 'gone.md'))
    expect((await checkStaged()).paths).toEqual(['gone.md'])
  })

  it.each([
    'a b.md',
    'it\'s "odd".md',
    'two\nlines.md',
    'Käfer 🐞.md',
    '-dash.md',
    'tab\there.md',
    'star*[x].md',
    'back\\slash.md',
  ])('takes the name %j', async (name) => {
    repository = createRepository({ ...BEFORE, [name]: BAD })
    repository.git('add', '-A')
    expect(await checkStaged()).toEqual({ code: 1, paths: [name], err: '' })
  })

  it('checks a renamed story by its new name, and no deleted one', async () => {
    repository = createRepository({ ...BEFORE, 'old.md': BAD, 'gone.md': BAD })
    repository.git('add', '-A')
    repository.git('commit', '-qm', 'first')
    expect((await checkStaged()).paths).toEqual([])
    repository.git('mv', 'old.md', 'new.md')
    repository.git('rm', '-q', 'gone.md')
    expect((await checkStaged()).paths).toEqual(['new.md'])
  })

  it('keeps to a folder or a file that is named, and to the folder where it runs', async () => {
    repository = createRepository({ ...BEFORE, 'a/one.md': BAD, 'b/two.md': BAD })
    repository.git('add', '-A')
    expect((await checkStaged('a')).paths).toEqual(['a/one.md'])
    const io = { ...repository.io, cwd: join(repository.cwd, 'b') }
    const before = repository.out().length
    expect(await main(['check', '--staged', '--format', 'line'], io)).toBe(1)
    expect(repository.out().slice(before)).toMatch(/^two\.md:/)
  })

  it('checks a folder or a file that is named beside the folder where it runs', async () => {
    repository = createRepository({ ...BEFORE, 'a/one.md': BAD, 'b/two.md': BAD, 'b/c/three.md': BAD })
    repository.git('add', '-A')
    const top = repository
    const at = (folder: string): void => {
      repository = { ...top, io: { ...top.io, cwd: join(top.cwd, folder) } }
    }
    at('a')
    expect((await checkStaged('../b')).paths).toEqual(['../b/c/three.md', '../b/two.md'])
    expect((await checkStaged('..')).paths).toEqual(['one.md', '../b/c/three.md', '../b/two.md'])
    expect((await checkStaged('../b/two.md', '.')).paths).toEqual(['one.md', '../b/two.md'])
    expect((await checkStaged(join(top.cwd, 'b/c'))).paths).toEqual(['../b/c/three.md'])
    expect((await checkStaged(join(top.cwd, 'a'))).paths).toEqual(['one.md'])
    expect((await checkStaged(':/b/c')).paths).toEqual(['../b/c/three.md'])
    at('b')
    expect((await checkStaged('*.md')).paths).toEqual(['c/three.md', 'two.md'])
    expect(await main(['check', '--staged', '/'], repository.io)).toBe(2)
    expect(repository.err()).toMatch(/^battledore: git could not answer: [^\n]+\n$/)
  })

  it('goes into no hidden folder that nobody named, as without --staged', async () => {
    repository = createRepository({
      ...BEFORE,
      '.github/ISSUE_TEMPLATE/bug.md': BAD,
      'a/.notes/one.md': BAD,
      'node_modules/x/two.md': BAD,
      'a/.drafts/three.md': BAD,
      '.battledoreignore': '!.drafts/\n',
      'a/four.md': BAD,
    })
    repository.git('add', '-A', '-f')
    const plain = async (...args: readonly string[]): Promise<readonly string[]> => {
      const before = repository.out().length
      await main(['check', '--format', 'json', ...args], repository.io)
      const { files } = JSON.parse(repository.out().slice(before)) as { files: readonly { path: string }[] }
      return files.map(({ path }) => path)
    }
    for (const args of [
      [],
      ['.'],
      ['a'],
      ['.github'],
      ['a/.notes'],
      ['a/.notes/one.md', 'a'],
      ['.github/**/*.md'],
      ['node_modules/x'],
    ])
      expect([...(await checkStaged(...args)).paths].sort(), args.join(' ')).toEqual([...(await plain(...args))].sort())
    expect((await checkStaged()).paths).toEqual(['a/.drafts/three.md', 'a/four.md'])
  })

  it('passes over links, README files and what the ignore files leave out', async () => {
    repository = createRepository({
      ...BEFORE,
      'README.md': BAD,
      '.battledoreignore': 'draft.md\n',
      'draft.md': BAD,
      'real.txt': BAD,
    })
    symlinkSync('real.txt', join(repository.cwd, 'link.md'))
    repository.git('add', '-A')
    expect(await checkStaged()).toEqual({ code: 0, paths: [], err: '' })
  })

  it('works on a detached HEAD', async () => {
    repository = createRepository({ ...BEFORE, 'good.md': GOOD })
    repository.git('add', '-A')
    repository.git('commit', '-qm', 'first')
    repository.git('checkout', '-q', '--detach')
    repository.write({ 'bad.md': BAD })
    repository.git('add', '-A')
    expect((await checkStaged()).paths).toEqual(['bad.md'])
  })

  it('says in one line what is wrong outside a repository, with a broken index, and without git', async () => {
    const outside = createWorld({ 'bad.md': BAD })
    rmSync(join(outside.cwd, '.git'), { recursive: true })
    expect(await main(['check', '--staged'], { ...outside.io, env: toGitEnv(outside.cwd) })).toBe(2)
    expect(outside.err()).toBe('battledore: This folder is not in a git repository.\n')
    outside.remove()

    repository = createRepository({ 'bad.md': BAD })
    repository.git('add', '-A')
    writeFileSync(join(repository.cwd, '.git/index'), 'no index')
    expect(await main(['check', '--staged'], repository.io)).toBe(2)
    expect(repository.err()).toMatch(/^battledore: git could not answer: [^\n]*index[^\n]*\.\n$/)

    const before = repository.err().length
    expect(await main(['check', '--staged'], { ...repository.io, env: { PATH: repository.cwd } })).toBe(2)
    expect(repository.err().slice(before)).toBe(
      'battledore: git is not installed, or not where programs are looked for.\n',
    )
  })

  it('names a staged file that is no text, and still checks the others', async () => {
    repository = createRepository({ ...BEFORE, 'bytes.md': new Uint8Array([0x41, 0, 0xff]), 'bad.md': BAD })
    repository.git('add', '-A')
    const { code, paths, err } = await checkStaged()
    expect([code, paths]).toEqual([2, ['bad.md']])
    expect(err).toBe('battledore: `bytes.md` is not a text: it holds bytes that no text has.\n')
  })
})

describe('a hook of git', () => {
  it('refuses a bad story with the message, and lets a good one pass', () => {
    repository = createRepository({ ...BEFORE, 'tam\'s "hat".md': BAD })
    repository.hook('check --staged --format line')
    repository.git('add', '-A')
    const refused = repository.git('commit', '-qm', 'bad')
    expect(refused.status).toBe(1)
    expect(refused.out + refused.err).toMatch(/tam's "hat"\.md:5:3-5:8: error: `night` .*\[no-/)
    expect(repository.git('log').status).not.toBe(0)
    repository.write({ 'tam\'s "hat".md': GOOD })
    expect(repository.git('commit', '-qm', 'still bad: not staged').status).toBe(1)
    repository.git('add', '-A')
    expect(repository.git('commit', '-qm', 'good').status).toBe(0)
    // `commit FILE` hands the hook an index of its own.
    repository.write({ 'tam\'s "hat".md': BAD })
    expect(repository.git('commit', '-qm', 'bad', '-a').status).toBe(1)
  })
})
